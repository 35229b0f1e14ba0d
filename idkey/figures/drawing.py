"""What a drawing is made of, before it becomes SVG."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import overload

from idkey.figures.geometry import Outline, Place, Point
from idkey.figures.ink import EDGE_WEIGHT, LINE_WEIGHT, Skin


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """A piece of the animal: filled, shaded, outlined.

    Attributes:
        outline: Its closed outline.
        skin: What it is painted with.
        name: Id in the drawing; empty for none.
        weight: Weight of the outline.
        gloss: Strength of the light, from 0 (matt) to 2 (mirror).
        shaded: Whether light and shade are drawn.
    """

    outline: Outline
    skin: Skin
    name: str = ""
    weight: float = EDGE_WEIGHT
    gloss: float = 1.0
    shaded: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """A line without a fill.

    Attributes:
        outline: Its way.
        colour: As ``#rrggbb``.
        weight: Its weight.
        haloed: Whether it gets a light rim, for lines that leave the body.
        dash: Dash and gap lengths; empty for none.
    """

    outline: Outline
    colour: str
    weight: float = LINE_WEIGHT
    haloed: bool = False
    dash: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Patch:
    """A filled area without an outline.

    Attributes:
        outline: Its closed outline.
        colour: As ``#rrggbb``.
        opacity: From 0 to 1.
        haloed: Whether it gets a light rim.
        name: Id in the drawing; empty for none.
    """

    outline: Outline
    colour: str
    opacity: float = 1.0
    haloed: bool = False
    name: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Dot:
    """A filled circle whose size is that of a mark, not of the animal.

    Attributes:
        at: Its middle.
        radius: Its radius; it stays when the drawing is placed elsewhere.
        colour: As ``#rrggbb``.
    """

    at: Point
    radius: float
    colour: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Words:
    """A word, a letter or a number.

    Attributes:
        text: What it says.
        at: Where the middle of its base line lies, or its start or end by `anchor`.
        size: Font size.
        colour: As ``#rrggbb``.
        anchor: ``"middle"``, ``"start"`` or ``"end"``.
        bold: Whether bold.
        italic: Whether italic.
        name: Id in the drawing; empty for none.
    """

    text: str
    at: Point
    size: float
    colour: str
    anchor: str = "middle"
    bold: bool = True
    italic: bool = False
    name: str = ""


@dataclass(frozen=True, slots=True)
class Group:
    """Items in painting order.

    Attributes:
        items: What it holds.
        name: Id in the drawing; empty for none.
    """

    items: tuple["Item", ...]
    name: str = ""


Piece = Part | Line | Patch | Dot | Words
Item = Piece | Group


def group(*items: Item, name: str = "") -> Group:
    """The items as one."""
    return Group(tuple(items), name)


@overload
def placed(item: Group, place: Place) -> Group: ...
@overload
def placed(item: Item, place: Place) -> Item: ...
def placed(item: Item, place: Place) -> Item:
    """The item elsewhere; weights and letter sizes stay as they are."""
    if isinstance(item, Group):
        return Group(tuple(placed(inner, place) for inner in item.items), item.name)
    if isinstance(item, Words | Dot):
        return replace(item, at=place(item.at))
    return replace(item, outline=item.outline.placed(place))


def pieces(items: Iterable[Item]) -> Iterator[Piece]:
    """Everything drawn, without the groups, in painting order."""
    for item in items:
        if isinstance(item, Group):
            yield from pieces(item.items)
        else:
            yield item
