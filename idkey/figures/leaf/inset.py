"""A small sprig that says where on the plant a figure is."""

from collections.abc import Sequence

from idkey.figures.drawing import Group, Item, Line, Patch, group
from idkey.figures.geometry import Place, Point, smooth
from idkey.figures.ink import POINTER, SHADOW
from idkey.figures.leaf.blade import Blade, blade_outline

_JOINTS = (60, 42, 24)


def inset(parts: Sequence[str], *, below: bool = False, corner: Point = 5 + 4j) -> Group:
    """The small sprig with some parts marked.

    Args:
        parts: Of stem, blade, leaf.
        below: Not used; a sprig has no side of its own.
        corner: Upper left corner of its box, 52 wide and 78 high.
    """
    del below
    marked = set(parts)
    foot, top = corner + 26 + 78j, corner + 26 + 12j
    items: list[Item] = [_way((foot, top), 3.0, "stem" in marked)]
    small = Blade(length=17, width=9)
    for height in _JOINTS:
        at = corner + complex(26, height)
        for side in (-1, 1):
            stalk = at + complex(side * 5, -3)
            chosen = height == _JOINTS[1] and side > 0
            items.append(_way((at, stalk), 1.6, "leaf" in marked and chosen))
            turn = complex(side * 0.88, -0.47)
            ring = blade_outline(small).placed(Place(turn, 0j, stalk))
            tint = POINTER if marked & {"leaf", "blade"} and chosen else SHADOW
            items.append(Patch(outline=ring, colour=tint))
    tip = blade_outline(Blade(length=14, width=7)).placed(Place(-1j, 0j, top + 1j))
    return group(*items, Patch(outline=tip, colour=SHADOW), name="inset")


def _way(points: tuple[Point, Point], weight: float, marked: bool) -> Line:
    colour = POINTER if marked else SHADOW
    return Line(outline=smooth(points, closed=False), colour=colour, weight=weight)
