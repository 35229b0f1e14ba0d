"""Drawings as pixmaps: state tiles and portraits, rendered once per size."""

from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, QSize, Signal, Slot
from PySide6.QtGui import QPixmap

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.rendering import rendered, scaled_bitmap
from idkey.app.parts.words import credit_words
from idkey.errors import IdKeyError
from idkey.figures.lineup import Lineup, found_share, lineup
from idkey.figures.own import shown_figure, supplied
from idkey.figures.plates import Plate, plate_text, read_plates
from idkey.figures.portrait import View, length_found, portrait, portrait_of_findings
from idkey.figures.traits import traits_of_case
from idkey.model.case import Case
from idkey.model.character import Character, State
from idkey.model.key import Key

LONE = View(width=520, height=240)
"""A portrait by itself, with its bar."""

KEPT = 800
"""How many rendered pictures are kept."""

DRAWN = 400
"""How many portraits are kept as drawings."""

PAPER = (400.0, 200.0)
"""Paper of the portraits of a line-up, in the proportions of its rows."""

UNSCALED = View(width=PAPER[0], height=PAPER[1], bar=False)
"""An animal of unknown length beside a line-up."""

ZOOMS = (1.0, 1.2, 1.4, 1.7, 2.0, 2.4)
"""By how much portraits grow when the large ones are not among them: in steps, so that they are not
rendered anew with each finding."""

Place = tuple[Hashable, ...]


class Pictures(QObject):
    """Renders the drawings of keys.

    Args:
        images: Folder of the drawings.
        parent: Owner.
        libraries: Folders with one folder per key, where a key may have pictures of its own.

    Signals:
        arrived(): A portrait that was asked for has been drawn; ask again.
    """

    arrived = Signal()

    def __init__(
        self, images: Path, parent: QObject | None = None, *, libraries: Iterable[Path] = ()
    ) -> None:
        super().__init__(parent)
        self._images = images
        self._libraries = tuple(libraries)
        self._jobs = Jobs(threads=1, parent=self)
        self._portraits: OrderedDict[Place, bytes | None] = OrderedDict()
        self._paths: dict[Place, Path | None] = {}
        self._lineups: dict[Place, Lineup] = {}
        self._found: dict[Place, float] = {}
        self._wanted: tuple[Place, Callable[[], str]] | None = None
        self._in_hand: Place | None = None
        self._plates: dict[str, tuple[Plate, ...]] = {"": ()}
        self._kept: OrderedDict[Place, QPixmap] = OrderedDict()

    def has_tile(self, key: Key, character: Character, state: State) -> bool:
        """Whether a drawing shows the state."""
        return self._path(key, character, state.id) is not None

    def tile(
        self, key: Key, character: Character, state: State, *, size: QSize, ratio: float
    ) -> QPixmap | None:
        """The drawing of a state, fitted into `size` (device-independent pixels)."""
        path = self._path(key, character, state.id)
        return self._of_file(path, size, ratio) if path else None

    def credit(self, key: Key, character: Character, state: State) -> str:
        """Who made the picture of a state, and its licence; empty for the shipped drawing."""
        path = self._path(key, character, state.id)
        theirs = supplied(self._images, key, character.id, state.id, figure=path)
        return credit_words(state) if theirs else ""

    def measure(
        self, key: Key, character: Character, *, size: QSize, ratio: float
    ) -> QPixmap | None:
        """The drawing of how a number is taken, fitted into `size`."""
        path = self._path(key, character, "")
        return self._of_file(path, size, ratio) if path else None

    def zoom(self, key: Key, taxa: Iterable[str], case: Case | None = None) -> float | None:
        """How much larger than on their paper portraits may be shown that stand together.

        Args:
            key: The key.
            taxa: The taxa that stand together.
            case: A case whose animal stands with them; None for none.

        Returns:
            A factor of at least 1, in steps; None while that is not known.
        """
        known = self._lineups.get((key.id, key.digest))
        shares = [known.shares.get(taxon, 1.0) for taxon in taxa] if known else []
        if case is not None:
            shares.append(self._found.get(_found_place(key, case), 0.0))
        if not shares or 0.0 in shares:
            return None
        return max((step for step in ZOOMS if step * max(shares) <= 1.0), default=1.0)

    def portrait(
        self,
        key: Key,
        taxon: str,
        *,
        size: QSize,
        ratio: float,
        scaled: bool = True,
        zoom: float = 1.0,
    ) -> QPixmap | None:
        """The portrait of a taxon, fitted into `size`; None while it is being drawn.

        Args:
            key: The key.
            taxon: Taxon id.
            size: Room in device-independent pixels.
            ratio: Device pixels per such pixel.
            scaled: Whether all taxa of the key share one scale; else it fills the paper.
            zoom: How much larger than at that scale.
        """

        def drawn() -> str:  # on a pool thread
            return portrait(key, taxon, view=self._lineup(key).view if scaled else LONE)

        place = (key.id, key.digest, taxon, scaled) if key.body_plan else ()
        return self._portrait(place, drawn, size=size, ratio=ratio, zoom=zoom)

    def found(
        self, key: Key, case: Case, *, size: QSize, ratio: float, zoom: float = 1.0
    ) -> QPixmap | None:
        """The animal as found so far, fitted into `size`; None while it is being drawn.

        It stands at the scale of the line-up once its length is known, else it fills the paper.

        Args:
            key: The key.
            case: The case.
            size: Room in device-independent pixels.
            ratio: Device pixels per such pixel.
            zoom: How much larger than at that scale.
        """
        place = _found_place(key, case)

        def drawn() -> str:  # on a pool thread
            view = self._lineup(key).view if length_found(key, case) else UNSCALED
            self._found[place] = found_share(key, case, view)
            return portrait_of_findings(key, case, view=view)

        if place not in self._portraits:
            self._wanted = place, drawn
            self._draw_wanted()
            return None
        return self._portrait(place, drawn, size=size, ratio=ratio, zoom=zoom)

    def plates(self, key: Key) -> tuple[Plate, ...]:
        """The orientation plates of a key; none when its body plan has none.

        Raises:
            IdKeyError: The list of plates is damaged.
        """
        if key.body_plan not in self._plates:
            self._plates[key.body_plan] = read_plates(self._images, key.body_plan)
        return self._plates[key.body_plan]

    def plate_drawing(self, plate: Plate, *, language: str, ink: str, lines: str) -> bytes:
        """A plate as SVG, its names in a language and in colours (``#rrggbb``)."""
        text = plate_text(self._images, plate, language=language, ink=ink, lines=lines)
        return text.encode("utf-8")

    @property
    def busy(self) -> bool:
        """Whether a portrait is being drawn."""
        return self._jobs.busy

    def close(self) -> None:
        """Let go of drawing under way."""
        self._jobs.close()

    def _portrait(
        self, place: Place, drawn: Callable[[], str], *, size: QSize, ratio: float, zoom: float
    ) -> QPixmap | None:
        if not place:
            return None
        if place not in self._portraits:
            self._portraits[place] = None
            self._draw(place, drawn)
        self._portraits.move_to_end(place)
        source = self._portraits[place]
        if source is None:
            return None
        made = partial(rendered, source, size, ratio, zoom)
        return self._kept_or((*place, zoom), made, size, ratio)

    def _draw_wanted(self) -> None:
        """Draw the animal as found last, one at a time: whoever is quick waits for no older one."""
        if self._wanted is None or self._in_hand is not None:
            return
        (self._in_hand, drawn), self._wanted = self._wanted, None
        self._portraits[self._in_hand] = None
        self._draw(self._in_hand, drawn)

    def _draw(self, place: Place, drawn: Callable[[], str]) -> None:
        def work(tick: Tick) -> tuple[Place, bytes]:  # on a pool thread
            tick(0, 1)
            try:
                return place, drawn().encode("utf-8")
            except IdKeyError:
                return place, b""

        job = Job(work)
        job.succeeded.connect(self._on_drawn)
        job.failed.connect(self._on_not_drawn)
        self._jobs.start(job)

    @Slot(object)
    def _on_not_drawn(self, _: BaseException) -> None:
        self._in_hand = None  # the next one is tried
        self._draw_wanted()

    @Slot(object)
    def _on_drawn(self, drawn: tuple[Place, bytes]) -> None:
        place, source = drawn
        self._portraits[place] = source
        while len(self._portraits) > DRAWN:
            gone, _ = self._portraits.popitem(last=False)
            self._found.pop(gone, None)
        if place == self._in_hand:
            self._in_hand = None
            self._draw_wanted()
        self.arrived.emit()

    def _lineup(self, key: Key) -> Lineup:  # on a pool thread
        place = (key.id, key.digest)
        if place not in self._lineups:
            taxa = [taxon.id for taxon in key.taxa]
            self._lineups[place] = lineup(key, taxa, width=PAPER[0], height=PAPER[1])
        return self._lineups[place]

    def _path(self, key: Key, character: Character, state: str) -> Path | None:
        place = (key.id, key.digest, character.id, state)
        if place not in self._paths:
            self._paths[place] = shown_figure(
                self._images, self._libraries, key, character=character.id, state=state or None
            )
        return self._paths[place]

    def _of_file(self, path: Path, size: QSize, ratio: float) -> QPixmap | None:
        def made() -> QPixmap:
            if path.suffix == ".svg":
                return rendered(path.read_bytes(), size, ratio)
            return scaled_bitmap(path, size, ratio)

        try:
            changed = path.stat().st_mtime_ns  # an author may have put another in its place
        except OSError:
            return None
        return self._kept_or((path, changed), made, size, ratio)

    def _kept_or(
        self, name: Place, made: Callable[[], QPixmap], size: QSize, ratio: float
    ) -> QPixmap | None:
        place = (*name, size.width(), size.height(), ratio)
        found = self._kept.pop(place, None)
        if found is None:
            found = made()
        self._kept[place] = found
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return None if found.isNull() else found


def _found_place(key: Key, case: Case) -> Place:
    """What the drawing of an animal as found depends on."""
    traits = frozenset(traits_of_case(key, case).items())
    return (key.id, key.digest, traits, case.specimen) if key.body_plan else ()
