"""What a person drew on a picture, as plain data that is kept with the finding."""

import json
from dataclasses import dataclass, replace
from enum import StrEnum

from idkey.engine.measure import Lie, Setting
from idkey.engine.strokes import Edge
from idkey.engine.tilt import Stroke, Tilt
from idkey.photo.faults import PictureError
from idkey.store.codec import Form, UnreadableRecord, canonical

Point = tuple[float, float]
Box = tuple[float, float, float, float]
"""Left, top, width, height, in pixels of the upright picture."""


class Neutral(StrEnum):
    """The thing without colour that lies in the same light."""

    GREY_CARD = "grey_card"
    WHITE_PAPER = "white_paper"
    OTHER = "other"

    @property
    def reflectance(self) -> float | None:
        """Share of light it sends back; None when unknown.

        Source: 18 % is what grey cards are made to; 85 % for plain office paper is from memory.
        """
        return {"grey_card": 0.18, "white_paper": 0.85, "other": None}[self]


@dataclass(frozen=True, slots=True)
class Spot:
    """One counted thing.

    Attributes:
        x: In pixels of the upright picture.
        y: The same, downwards.
        doubtful: Whether it may be none.
    """

    x: float
    y: float
    doubtful: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Marks:
    """Everything drawn on one picture for one character.

    Attributes:
        picture: Id of the picture.
        character: Id of the character.
        lines: Repeats of the measured line, or of the upper line of a ratio; pixels.
        others: Repeats of the ruler, or of the lower line of a ratio.
        ruler: Length of the ruler line in the unit of the character; 0 when not told.
        ruler_error: Standard uncertainty of `ruler`.
        tilt: How far the part leans.
        lie: Whether both lines lie in one plane.
        edge: How well end points can be seen.
        spots: Counted things, in the order they were marked.
        patch: Where the colour or the surface was looked at.
        neutral: Where the neutral thing is.
        reference: What the neutral thing is.
        moulted: Whether the animal moulted within the last days.
    """

    picture: str
    character: str
    lines: tuple[Stroke, ...] = ()
    others: tuple[Stroke, ...] = ()
    ruler: float = 0.0
    ruler_error: float = 0.0
    tilt: Tilt = Tilt.FLAT
    lie: Lie = Lie.TOGETHER
    edge: Edge = Edge.ORDINARY
    spots: tuple[Spot, ...] = ()
    patch: Box | None = None
    neutral: Box | None = None
    reference: Neutral = Neutral.GREY_CARD
    moulted: bool = False

    def setting(self, width: int, height: int) -> Setting:
        """How the picture was taken, for a picture of that size."""
        return Setting(width=width, height=height, tilt=self.tilt, lie=self.lie, edge=self.edge)

    @property
    def empty(self) -> bool:
        """Whether nothing is drawn."""
        return not (self.lines or self.others or self.spots or self.patch or self.neutral)


_FORM = Form(Marks)


def text_of(marks: Marks) -> str:
    """The marks as JSON, points to a hundredth of a pixel; `marks_of` reads it again."""
    return canonical(_FORM.plain(_rounded(marks)))


def marks_of(text: str) -> Marks:
    """The marks in a text made by `text_of`.

    Raises:
        PictureError: It is something else, or a newer program wrote it.
    """
    try:
        record = json.loads(text)
        return _FORM.value_from(record)
    except UnreadableRecord as err:
        raise PictureError(
            f"The marks on a picture cannot be read. {err.problem}", err.remedy
        ) from err
    except (ValueError, TypeError, AttributeError) as err:
        raise PictureError(
            "The marks on a picture cannot be read: they are not what was saved.",
            "The number stands; draw the marks again to see them.",
        ) from err


def _rounded(marks: Marks) -> Marks:
    return replace(
        marks,
        lines=tuple(_stroke(stroke) for stroke in marks.lines),
        others=tuple(_stroke(stroke) for stroke in marks.others),
        spots=tuple(replace(s, x=round(s.x, 2), y=round(s.y, 2)) for s in marks.spots),
        patch=_box(marks.patch),
        neutral=_box(marks.neutral),
    )


def _stroke(stroke: Stroke) -> Stroke:
    return tuple((round(x, 2), round(y, 2)) for x, y in stroke)


def _box(box: Box | None) -> Box | None:
    if box is None:
        return None
    left, top, width, height = (round(side, 2) for side in box)
    return left, top, width, height
