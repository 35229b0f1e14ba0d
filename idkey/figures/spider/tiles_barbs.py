"""Tiles about the barbed hairs of the abdomen, which both tarantula keys have."""

from functools import partial

from idkey.figures.drawing import Item, Line, Part, Patch, group
from idkey.figures.fields import hair
from idkey.figures.geometry import Point, ellipse, smooth
from idkey.figures.ink import EDGE, LINE_WEIGHT, skin
from idkey.figures.tile import Colours, Tiles, tiles_of

_SKIN_PATCH = ellipse(192 + 122j, 118, 104)


def _barbed(present: bool, _: Colours) -> Item:
    ground = skin("#e9dcc2")
    items: list[Item] = [Part(outline=_SKIN_PATCH, skin=ground, shaded=False, weight=3.2)]
    for index, root in enumerate(_roots()):
        items.append(Patch(outline=ellipse(root, 2.6), colour=ground.detail))
        if not present:
            way = hair(root, complex(10, -34))
            items.append(Line(outline=way, colour=ground.detail, weight=1.6))
        elif index % 2:
            items += _type_one(root)
        else:
            items += _type_three(root)
    return group(*items)


def _roots() -> list[Point]:
    return [
        complex(116 + 42 * column + 20 * (row % 2), 110 + 36 * row)
        for row, columns in enumerate((4, 4, 4))
        for column in range(columns)
    ]


def _type_one(root: Point) -> list[Item]:
    """A short stout hair, barbed along its upper half."""
    tip = root + (6 - 30j)
    return [_shaft(root, tip, 2.4), *_barbs(root + (tip - root) * 0.45, tip, 4, 5.0)]


def _type_three(root: Point) -> list[Item]:
    """A long slim hair, barbed all along."""
    tip = root + (14 - 52j)
    return [_shaft(root, tip, 1.6), *_barbs(root + (tip - root) * 0.12, tip, 8, 4.0)]


def _shaft(root: Point, tip: Point, weight: float) -> Line:
    return Line(outline=smooth((root, tip), closed=False), colour=EDGE, weight=weight)


def _barbs(start: Point, end: Point, count: int, reach: float) -> list[Item]:
    unit = (end - start) / abs(end - start)
    found: list[Item] = []
    for index in range(count):
        at = start + (end - start) * (index + 0.5) / count
        for side in (-1j, 1j):
            way = smooth((at, at - unit * reach * 0.7 + unit * side * reach), closed=False)
            found.append(Line(outline=way, colour=EDGE, weight=LINE_WEIGHT))
    return found


TILES: Tiles = tiles_of(
    "urticating",
    {
        "types_i_and_iii": ("Barbed hairs of types I and III", partial(_barbed, True)),
        "none": ("No barbed hairs", partial(_barbed, False)),
    },
    "abdomen",
)
