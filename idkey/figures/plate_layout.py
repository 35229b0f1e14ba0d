"""How an orientation plate is laid out: names with their lines, and the rings to click on."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from idkey.figures.drawing import Group, Item, Part, group, pieces
from idkey.figures.geometry import Point, Points, area
from idkey.figures.plates import LETTER, Names, label
from idkey.figures.svg import Sheet, svg

SMALLEST = 26.0
"""Area below which a piece is no place to click on."""

_LETTER_WIDTH = 0.62
"""Mean width of a letter against its size; a name gets a box that holds its longest wording."""


@dataclass(frozen=True, slots=True)
class Tag:
    """Where a name stands, and the points its line runs through.

    Attributes:
        part: Part id.
        at: Where the name starts or ends, on its middle height.
        to: Points of the line from the name to the part.
        anchor: ``"start"``, ``"middle"`` or ``"end"``.
    """

    part: str
    at: Point
    to: Points
    anchor: str


def labelled(sheet: Sheet, drawn: Group, tags: Sequence[Tag], names: Mapping[str, Names]) -> str:
    """A drawn animal with English names around it, as SVG text."""
    labels = [
        label(tag.part, names[tag.part]["en"], at=tag.at, to=tag.to, anchor=tag.anchor)
        for tag in tags
    ]
    return svg(sheet, (drawn, group(*labels, name="labels")))


def rings(drawn: Group, *names: str) -> list[Points]:
    """Rings around the pieces of the groups or parts with those names, specks left out."""
    return [
        piece.outline.flat(2)
        for name in names
        for item in _named(drawn, name)
        for piece in pieces((item,))
        if isinstance(piece, Part) and abs(area(piece.outline.flat(3))) > SMALLEST
    ]


def _named(item: Item, name: str) -> list[Item]:
    if isinstance(item, Group | Part) and item.name == name:
        return [item]
    if not isinstance(item, Group):
        return []
    return [found for inner in item.items for found in _named(inner, name)]


def box(tag: Tag, names: Mapping[str, Names]) -> Points:
    """Ring around a name, wide enough for each of its languages."""
    wide = max(len(name) for name in names[tag.part].values()) * LETTER * _LETTER_WIDTH + 12
    left = tag.at.real - {"start": 6, "middle": wide / 2, "end": wide - 6}[tag.anchor]
    top, foot = tag.at.imag - LETTER * 0.9, tag.at.imag + LETTER * 0.9
    corners = (complex(left, top), complex(left + wide, top))
    return (*corners, complex(left + wide, foot), complex(left, foot))
