"""What the photo tool shows at one moment, and what a picture and its marks say."""

from dataclasses import dataclass, field, replace

from PIL import Image

from idkey.app.photo.levels import Levels, levels_of
from idkey.app.photo.sketch import Pen, Sketch
from idkey.engine.measure import Measured
from idkey.errors import IdKeyError
from idkey.model.character import Character, Kind
from idkey.photo.colour_sample import Sample, Suggestion, sampled, suggestions
from idkey.photo.faults import PictureError
from idkey.photo.intake import Picture
from idkey.photo.marks import Marks
from idkey.photo.quality import Fitness, fitness
from idkey.photo.reading import line_names, measured
from idkey.photo.shelf import Condition, PictureShelf


@dataclass(frozen=True, slots=True)
class Loaded:
    """A picture that is open.

    Attributes:
        picture: What is known of it.
        image: The picture.
        levels: The same, ready for the screen.
    """

    picture: Picture
    image: Image.Image
    levels: Levels


@dataclass(frozen=True, slots=True)
class Entry:
    """A picture on offer.

    Attributes:
        id: Its id.
        condition: Whether it is still there and whole; None before that is known.
        thumbnail: A small JPEG; None when there is none.
    """

    id: str
    condition: Condition | None = None
    thumbnail: bytes | None = None


@dataclass(frozen=True, slots=True)
class Looked:
    """What a patch says.

    Attributes:
        marks: The marks it is about.
        sample: Its colour; None without a neutral thing, or where colours are not asked for.
        suggestions: States by distance of their colours.
        fitness: Whether it can show a surface; None without a patch.
        problem: Why the colour cannot be read; None when it can.
    """

    marks: Marks
    sample: Sample | None = None
    suggestions: tuple[Suggestion, ...] = ()
    fitness: Fitness | None = None
    problem: IdKeyError | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PhotoSession:
    """One moment of the photo tool.

    Attributes:
        character: What is looked at.
        entries: Pictures on offer, in the order they were added.
        shown: Id of the picture shown; empty for none.
        loaded: The picture shown; None while it is read, or where it is gone.
        sketch: The marks on it.
        found: The number they stand for; None while something is missing.
        looked: What the patch says; None before it is known.
        problem: What stands in the way; None when nothing does.
        busy: Whether a picture is being read.
    """

    character: Character
    entries: tuple[Entry, ...] = ()
    shown: str = ""
    loaded: Loaded | None = None
    sketch: Sketch
    found: Measured | None = None
    looked: Looked | None = None
    problem: BaseException | None = None
    busy: bool = field(default=False)

    @property
    def ids(self) -> tuple[str, ...]:
        """Ids of the pictures on offer."""
        return tuple(entry.id for entry in self.entries)

    @property
    def condition(self) -> Condition | None:
        """How the picture shown was found; None for none, or before that is known."""
        return next((entry.condition for entry in self.entries if entry.id == self.shown), None)

    def with_entry(self, entry: Entry) -> "PhotoSession":
        """With a picture on offer, in its place if it is there already."""
        if entry.id not in self.ids:
            return replace(self, entries=(*self.entries, entry))
        kept = tuple(entry if one.id == entry.id else one for one in self.entries)
        return replace(self, entries=kept)

    @property
    def names(self) -> dict[Pen, str]:
        """What stands on the marks."""
        upper, lower = line_names(self.character)
        return {Pen.LINE: upper, Pen.OTHER: lower, Pen.PATCH: "patch", Pen.NEUTRAL: "neutral"}


def first_pen(character: Character) -> Pen:
    """The pen one starts with."""
    if character.kind is Kind.COUNT:
        return Pen.SPOT
    return Pen.LINE if character.kind.numeric else Pen.PATCH


def coloured(character: Character) -> bool:
    """Whether states of the character have reference colours."""
    return any(state.colours for state in character.states)


def number_of(
    sketch: Sketch, character: Character, picture: Picture | None
) -> tuple[Measured | None, PictureError | None]:
    """The number that marks stand for, or why there is none."""
    if picture is None or not character.kind.numeric:
        return None, None
    try:
        return measured(sketch.marks, character, picture), None
    except PictureError as err:
        return None, err


def entry_of(shelf: PictureShelf, picture_id: str) -> Entry:  # on a pool thread
    """What is known of a picture on offer."""
    return Entry(picture_id, shelf.condition(picture_id), shelf.thumbnail(picture_id))


def opened(shelf: PictureShelf, picture_id: str) -> Loaded:  # on a pool thread
    """A picture, read.

    Raises:
        Gone: It is missing or damaged.
    """
    image = shelf.image(picture_id)
    known = shelf.picture(picture_id)
    assert known is not None, "a picture that was read is known"
    return Loaded(known, image, levels_of(image))


def alternated(sketch: Sketch, before: Sketch, character: Character) -> Sketch:
    """After a finished line, the pen of the line that was drawn less often, or the first."""
    lines, others = len(sketch.marks.lines), len(sketch.marks.others)
    grown = lines + others > len(before.marks.lines) + len(before.marks.others)
    if not grown or character.kind not in (Kind.RATIO, Kind.MEASUREMENT):
        return sketch
    return replace(sketch, pen=Pen.OTHER if others < lines else Pen.LINE)


def looked_at(loaded: Loaded, marks: Marks, character: Character) -> Looked:  # on a pool thread
    """What the patch of some marks says."""
    if marks.patch is None:
        return Looked(marks)
    try:
        fit = fitness(loaded.image, marks.patch)
        if marks.neutral is None or not coloured(character):
            return Looked(marks, fitness=fit)
        sample = sampled(
            loaded.image,
            marks.patch,
            marks.neutral,
            reference=marks.reference,
            moulted=marks.moulted,
        )
    except PictureError as err:
        return Looked(marks, problem=err)
    except ValueError as err:
        return Looked(marks, problem=PictureError(f"The patch cannot be read: {err}."))
    return Looked(marks, sample=sample, suggestions=suggestions(sample, character), fitness=fit)
