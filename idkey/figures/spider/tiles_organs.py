"""Tiles about what only a moult, a lens or a dead animal shows: pouches, bulbs, hooks."""

from functools import partial

from idkey.figures.drawing import Item, Line, Part, group
from idkey.figures.geometry import (
    Outline,
    Point,
    Points,
    ellipse,
    mirrored,
    moved,
    smooth,
)
from idkey.figures.ink import EDGE, LINE_WEIGHT, blended, skin
from idkey.figures.marks import arrow
from idkey.figures.rod import rod
from idkey.figures.tile import PLAIN, SHOWN, Colours, Rows, Tiles, tiles_of

_AT = 190 + 0j
_PAPER = skin("#ece1cb")
"""Thin skin of a moult."""


def _moult() -> list[Item]:
    """A piece of abdomen skin with the edges of the front book lungs."""
    edge = (88 + 26j, 138 + 20j, 250 + 22j, 296 + 36j, 304 + 150j, 296 + 216j)
    sheet = smooth((*edge, 194 + 228j, 84 + 218j, 74 + 140j, 78 + 74j))
    folds = [
        smooth((92 + 213j, 120 + 204j, 152 + 212j), closed=False),
        smooth((232 + 212j, 264 + 204j, 298 + 214j), closed=False),
    ]
    lines = [Line(outline=fold, colour=_PAPER.detail, weight=LINE_WEIGHT) for fold in folds]
    return [Part(outline=sheet, skin=_PAPER, shaded=False, weight=1.4), *lines]


def _furrow() -> Line:
    way = smooth((82 + 185j, 130 + 178j, 190 + 176j, 250 + 178j, 304 + 186j), closed=False)
    return Line(outline=way, colour=_PAPER.detail, weight=2.2)


_ARC: Points = (56j, 38 + 62j, 66 + 92j, 76 + 132j, 80 + 172j, 174j)
_DENT: Points = (88j, 14 + 74j, 42 + 60j, 68 + 88j, 77 + 130j, 80 + 172j, 174j)
_RIM: Points = (62j, 40 + 66j, 62 + 90j, 66 + 130j, 72 + 172j, 174j)


def _pouch(half: Points) -> Outline:
    sharp = (0,) if half is _DENT else ()
    count = len(half) * 2 - 2
    return smooth(mirrored(half), sharp=(*sharp, len(half) - 2, count - len(half) + 2)).placed(
        moved(_AT)
    )


def _spermatheca(kind: str, _: Colours) -> Item:
    items = _moult()
    if kind == "two_receptacles":
        items += [Part(outline=_receptacle(side), skin=SHOWN) for side in (-1, 1)]
    elif kind == "single_apex_swollen_p_section":
        items += _swollen()
    else:
        half = _DENT if kind == "single_median_dent" else _ARC
        items.append(Part(outline=_pouch(half), skin=SHOWN))
    return group(*items, _furrow())


def _receptacle(side: int) -> Outline:
    half = (20 + 172j, 22 + 120j, 18 + 92j, 30 + 70j, 54 + 66j, 72 + 84j, 66 + 112j, 60 + 172j)
    ring = [_AT + complex(side * p.real, p.imag) for p in half]
    return smooth(ring, sharp=(0, 7))


_P = (272 + 176j, 272 + 98j, 276 + 72j, 294 + 66j, 302 + 84j, 294 + 102j, 282 + 108j, 282 + 176j)


def _swollen() -> list[Item]:
    """A pouch with a thick rim, and beside it its outline from the side."""
    left = moved(-28 + 0j)
    rim = smooth(mirrored((50j, 44 + 52j, 76 + 76j, 74 + 98j, 52 + 92j, 86j)))
    return [
        Part(outline=_pouch(_RIM).placed(left), skin=SHOWN),
        Part(outline=rim.placed(moved(_AT - 28)), skin=SHOWN),
        Part(outline=smooth(_P, sharp=(0, 7)), skin=SHOWN),
    ]


def _baseplate(kind: str, _: Colours) -> Item:
    items = [*_moult(), Part(outline=_pouch(_small(_ARC)), skin=PLAIN)]
    if kind == "elliptical":
        items.append(Part(outline=ellipse(_AT + 174j, 84, 26), skin=SHOWN))
    elif kind == "divided_subtriangular":
        for side in (-1, 1):
            ring = [
                _AT + complex(side * x, y) for x, y in ((7, 196), (10, 150), (88, 182), (84, 194))
            ]
            items.append(Part(outline=smooth(ring, sharp=(0, 1, 2, 3)), skin=SHOWN))
    else:
        way = smooth((118 + 176j, 160 + 172j, 220 + 172j, 262 + 176j), closed=False)
        items.append(Line(outline=way, colour=_PAPER.detail, weight=1.6, dash=(6, 5)))
        items.append(arrow(_AT + 182j, -90, 30))
    return group(*items)


def _small(half: Points) -> Points:
    return tuple(complex(p.real * 0.86, 44 + (p.imag - 56) * 0.86) for p in half)


def _bulb(broad: bool, _: Colours) -> Item:
    body = smooth(
        (78 + 132j, 84 + 88j, 122 + 66j, 164 + 78j, 184 + 112j, 172 + 150j, 130 + 172j, 94 + 162j)
    )
    wide = 30.0 if broad else 11.0
    blade = (
        168 + 90j,
        complex(220, 96 - wide * 0.5),
        complex(266, 116 - wide * 0.75),
        complex(306, 150 if broad else 158),
        complex(264, 128 + wide * 0.75),
        complex(222, 120 + wide * 0.55),
        168 + 136j,
    )
    duct = smooth((128 + 120j, 176 + 112j, 228 + 112j, 274 + 130j, 298 + 150j), closed=False)
    neck = rod(60 + 218j, 108 + 150j, 44, 34)
    return group(
        Part(outline=neck, skin=PLAIN),
        Part(outline=smooth(blade, sharp=(0, 3, 6)), skin=SHOWN),
        Part(outline=body, skin=PLAIN),
        Line(outline=duct, colour=blended(SHOWN.fill, EDGE, 0.6), weight=1.4, dash=(4, 3)),
    )


def hook(*, forked: bool) -> list[Item]:
    """The end of the first tibia of a male from the side, with its hook below."""
    tibia = rod(62 + 96j, 214 + 100j, 82, 88, belly=0.02)
    foot = rod(212 + 104j, 310 + 150j, 58, 52, belly=0.02)
    items: list[Item] = [Part(outline=foot, skin=PLAIN)]
    if forked:
        items += [Part(outline=branch, skin=SHOWN) for branch in BRANCHES]
    items.append(Part(outline=tibia, skin=PLAIN))
    return items


_INNER = (150 + 132j, 172 + 130j, 176 + 160j, 188 + 190j, 178 + 198j, 160 + 176j)
_OUTER = (180 + 132j, 206 + 130j, 214 + 160j, 240 + 184j, 236 + 196j, 208 + 186j, 188 + 164j)
BRANCHES = (smooth(_INNER), smooth(_OUTER))
"""Inner and outer branch of the hook."""


def _hook(forked: bool, _: Colours) -> Item:
    tip: Point = 196 + 208j if forked else 190 + 152j
    return group(*hook(forked=forked), arrow(tip, -90, 24 if forked else 34))


_POUCHES = {
    "single_even_arc_or_undivided": "Sperm pouch of one piece with an even edge",
    "single_median_dent": "Sperm pouch of one piece with a dent",
    "two_receptacles": "Two separate sperm pouches",
    "single_apex_swollen_p_section": "Sperm pouch with a swollen rim, like a P from the side",
}
_PLATES = {
    "elliptical": "Base plate oval",
    "divided_subtriangular": "Base plate divided, roughly triangular",
    "absent_or_weak": "No base plate, or a faint one",
}
_BULBS: Rows = {
    "broad": ("Embolus broad", partial(_bulb, True)),
    "narrow": ("Embolus narrow", partial(_bulb, False)),
}
_HOOKS: Rows = {
    "two_branched": ("Forked hook on the first tibia", partial(_hook, True)),
    "absent": ("No hook on the first tibia", partial(_hook, False)),
}

HOOKS: Tiles = tiles_of("tibial_apophysis", _HOOKS, "leg_1_tibia")
"""Tiles of the hook, which both keys have."""
AMERICAN: Tiles = {
    **tiles_of(
        "spermatheca",
        {s: (t, partial(_spermatheca, s)) for s, t in _POUCHES.items()},
        "abdomen",
        below=True,
    ),
    **tiles_of(
        "baseplate",
        {s: (t, partial(_baseplate, s)) for s, t in _PLATES.items()},
        "abdomen",
        below=True,
    ),
    **tiles_of("bulb_width", _BULBS, "palps"),
    **HOOKS,
}
"""Of the American key."""
TILES: Tiles = AMERICAN
