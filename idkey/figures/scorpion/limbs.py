"""Walking legs, the arm of the pedipalp and the chelicerae, from above."""

from collections.abc import Sequence

from idkey.figures.drawing import Group, Item, Line, Part, group
from idkey.figures.geometry import Place, Point, smooth
from idkey.figures.ink import EDGE, LINE_WEIGHT, Skin
from idkey.figures.rod import rod

LEGS = (
    ((0.42, 0.42), (0.98, 0.14), (1.36, -0.12), (1.63, -0.42), (1.77, -0.64), (1.84, -0.79)),
    ((0.47, 0.6), (1.08, 0.5), (1.45, 0.34), (1.78, 0.12), (1.98, -0.05), (2.11, -0.14)),
    ((0.48, 0.8), (1.1, 1.0), (1.5, 1.06), (1.88, 1.24), (2.12, 1.36), (2.26, 1.41)),
    ((0.44, 0.98), (1.04, 1.52), (1.46, 1.84), (1.78, 2.3), (1.97, 2.64), (2.04, 2.84)),
)
"""Joints of the right legs I to IV from the body to the tip, in carapace lengths and widths."""

_THICK = (0.17, 0.155, 0.115, 0.085, 0.06)


def legs_drawing(size: float, skin: Skin, *, place: Place, name: str = "") -> Group:
    """The four legs of one side.

    Args:
        size: Length of the carapace.
        skin: What they are painted with.
        place: Where the front of the carapace goes; a mirror gives the left side.
        name: Prefix of the ids.
    """
    legs: list[Item] = []
    for index in (3, 2, 1, 0):
        points = [place(complex(x, y) * size) for x, y in LEGS[index]]
        thick = [w * size * (0.9 + 0.06 * index) for w in _THICK]
        legs.append(leg(points, thick, skin, name=f"{name}_{index + 1}" if name else ""))
    return group(*legs)


def leg(points: Sequence[Point], thick: Sequence[float], skin: Skin, name: str = "") -> Group:
    """One leg through its joints, the tip first in painting order, with two claws."""
    last = points[-1] - points[-2]
    unit = last / abs(last)
    items: list[Item] = []
    for side in (-1, 1):
        reach = unit * thick[-1] * 1.1
        tip = points[-1] + reach + reach * 0.55j * side
        way = smooth((points[-1], points[-1] + reach * complex(0.6, 0.2 * side), tip), closed=False)
        items.append(Line(outline=way, colour=EDGE, weight=LINE_WEIGHT * 1.2, haloed=True))
    for index in range(len(points) - 2, -1, -1):
        after = thick[min(index + 1, len(thick) - 1)]
        outline = rod(points[index], points[index + 1], thick[index], after, belly=0.1)
        items.append(Part(outline=outline, skin=skin))
    return group(*items, name=name)


def chelicera_drawing(size: float, skin: Skin, *, place: Place, name: str = "") -> Group:
    """The right chelicera, base at 0, pointing to y < 0; a mirror gives the left one.

    Args:
        size: Its length.
        skin: What it is painted with.
        place: Where it goes.
        name: Its id.
    """
    block = (0.0 + 0j, 0.3 - 0.02j, 0.34 - 0.3j, 0.28 - 0.6j, 0.02 - 0.6j, -0.02 - 0.3j)
    outer = (0.3 - 0.5j, 0.31 - 0.72j, 0.2 - 0.95j, 0.12 - 1.0j, 0.17 - 0.78j, 0.16 - 0.56j)
    inner = (0.15 - 0.56j, 0.12 - 0.74j, 0.07 - 0.92j, 0.0 - 0.88j, 0.01 - 0.7j, 0.03 - 0.55j)
    items = [
        Part(outline=smooth(points, sharp=sharp).placed(place), skin=skin)
        for points, sharp in (
            (tuple(p * size for p in outer), (3,)),
            (tuple(p * size for p in inner), (3,)),
            (tuple(p * size for p in block), ()),
        )
    ]
    return group(*items, name=name)
