"""How to measure and how to count on a leafy sprig."""

from idkey.figures.drawing import Item, group
from idkey.figures.ink import EDGE
from idkey.figures.leaf.blade import (
    LEAF,
    STEM,
    Blade,
    blade_drawing,
    half_width,
    lying,
    stalk_drawing,
)
from idkey.figures.marks import bar, end_point, guide, letter
from idkey.figures.tile import Colours, Tile, Tiles


def _joint(_: Colours) -> Item:
    stem = stalk_drawing(190 + 228j, 190 + 20j, 18, STEM)
    blade = Blade(length=98, width=58)
    leaves: list[Item] = []
    for degrees, foot in ((-24, 200 + 118j), (204, 180 + 118j)):
        leaves.append(blade_drawing(blade, LEAF, lying(foot, degrees)))
    return group(*leaves, stem, letter("1", 250 + 160j, size=20), letter("2", 130 + 160j, size=20))


def _length(_: Colours) -> Item:
    blade = Blade(length=220, width=104)
    foot = 78 + 106j
    tip = foot + 220
    return group(
        stalk_drawing(62 + 106j, foot + 3, 6, STEM),
        blade_drawing(blade, LEAF, lying(foot, 0)),
        *(guide(p, complex(p.real, 196)) for p in (foot, tip)),
        bar(complex(foot.real, 202), complex(tip.real, 202)),
        end_point(foot),
        end_point(tip),
        letter("mm", 188 + 222j, size=15),
    )


def _ratio(_: Colours) -> Item:
    blade = Blade(length=220, width=104)
    foot = 78 + 106j
    tip = foot + 220
    share = max((i / 50 for i in range(50)), key=half_width)
    half = 1j * half_width(share) * 104
    widest = foot + share * 220
    return group(
        stalk_drawing(62 + 106j, foot + 3, 6, STEM),
        blade_drawing(blade, LEAF, lying(foot, 0)),
        *(guide(p, complex(p.real, 196)) for p in (foot, tip)),
        bar(complex(foot.real, 202), complex(tip.real, 202), "A", side=1),
        bar(widest - half, widest + half),
        letter("B", widest + (16 - 14j), colour=EDGE),
        letter("A : B", 36 + 222j, size=18),
    )


TILES: Tiles = {
    ("leaves_per_joint", "measure"): Tile("Counting the leaves at one joint", ("stem",), _joint),
    ("blade_length", "measure"): Tile("Length of the blade", ("blade",), _length),
    ("length_to_width", "measure"): Tile("Length of blade to width", ("blade",), _ratio),
}
