"""Every tile of the key to kitchen leaves that can be drawn."""

import cmath
import math
from functools import partial

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group
from idkey.figures.fields import fringe, scatter
from idkey.figures.geometry import Point, ellipse, smooth, straight
from idkey.figures.ink import EDGE, HAIR_WEIGHT, LINE_WEIGHT, Skin, blended, lightened, skin
from idkey.figures.leaf import measures
from idkey.figures.leaf.blade import (
    GREEN,
    LEAF,
    STEM,
    Blade,
    blade_drawing,
    blade_outline,
    lying,
    stalk_drawing,
)
from idkey.figures.marks import glow
from idkey.figures.tile import PLAIN, Colours, Rows, Tiles, tiles_of, tone

_FOOT: Point = 76 + 150j


def _single(blade: Blade, paint: Skin, *, stalk: bool = True, name: str = "") -> Group:
    drawn = blade_drawing(blade, paint, lying(_FOOT), name=name)
    root = _FOOT - cmath.rect(16, math.radians(-14))
    return group(stalk_drawing(root, _FOOT + 3, 6, STEM), drawn) if stalk else drawn


def _build(kind: str, _: Colours) -> Item:
    if kind == "one_blade":
        return _single(Blade(length=224, width=118), LEAF)
    if kind == "tube":
        return _tube()
    if kind == "needle":
        edge = (70 + 170j, 120 + 146j, 220 + 108j, 304 + 84j, 224 + 122j, 126 + 162j)
        seam = smooth((82 + 164j, 180 + 128j, 286 + 92j), closed=False)
        return group(
            Part(outline=smooth(edge, sharp=(3,)), skin=LEAF),
            Line(outline=seam, colour=LEAF.detail, weight=1.6),
        )
    return _leaflets()


def _tube() -> Group:
    edge = (64 + 192j, 140 + 144j, 236 + 86j, 306 + 40j, 246 + 102j, 152 + 166j, 78 + 214j)
    foot, dark = 71 + 204j, lightened(GREEN, -30)
    return group(
        Part(outline=smooth(edge, sharp=(0, 3, 6)), skin=LEAF),
        Part(outline=ellipse(foot, 9, 13, -38), skin=LEAF),
        Patch(outline=ellipse(foot, 4.5, 8, -38), colour=dark),
    )


def _leaflets() -> Group:
    items: list[Item] = [stalk_drawing(62 + 200j, 214 + 100j, 6, STEM)]
    places = ((118, 164, 58), (118, 164, -128), (168, 130, 40), (168, 130, -110), (212, 102, -34))
    for x, y, turn in places:
        small = Blade(length=82, width=54, teeth=3, depth=0.5)
        items.append(blade_drawing(small, LEAF, lying(complex(x, y), turn), veins=3))
    return group(*items)


def _section(square: bool, _: Colours) -> Item:
    middle = 190 + 122j
    if square:
        corners = [middle + 92 * cmath.rect(1, math.radians(a)) for a in (45, 135, 225, 315)]
        dents = [middle + 56 * cmath.rect(1, math.radians(a)) for a in (90, 180, 270, 0)]
        ring = [p for pair in zip(corners, dents, strict=True) for p in pair]
        outer, inner = smooth(ring, sharp=(0, 2, 4, 6)), 40.0
    else:
        outer, inner = ellipse(middle, 82), 44.0
    core = skin("#d9dcb4")
    pores = scatter(ellipse(middle, inner - 6).flat(8), 15)
    return group(
        Part(outline=outer, skin=LEAF),
        Part(outline=ellipse(middle, inner), skin=core, weight=1.4),
        *(Patch(outline=ellipse(p, 3), colour=core.detail) for p in pores),
    )


_MARGINS = {
    "even": Blade(length=226, width=124),
    "toothed": Blade(length=226, width=128, teeth=11, depth=0.13),
    "lobed": Blade(length=226, width=150, teeth=4, depth=0.62, rounded=True),
}
_TEETH = {
    "pointed": Blade(length=226, width=130, teeth=9, depth=0.2),
    "rounded": Blade(length=226, width=130, teeth=9, depth=0.16, rounded=True),
}


def _blade(blade: Blade, _: Colours) -> Item:
    return _single(blade, LEAF)


def _hairy(count: int, length: float, _: Colours) -> Item:
    blade = Blade(length=224, width=120)
    outline = blade_outline(blade).placed(lying(_FOOT))
    paint = LEAF if count < 90 else skin(blended(GREEN, "#e6e8dc", 0.35))
    items: list[Item] = [_single(blade, paint)]
    if not count:
        return group(*items)
    gap = 22.0 if count < 90 else 11.0
    for root in scatter(outline.flat(8), gap, margin=6):
        way = smooth((root, root + complex(length * 0.5, -length)), closed=False)
        items.append(Line(outline=way, colour="#f4f5ee", weight=1.3))
    edge = smooth(outline.flat(6), closed=False)
    items += [
        Line(outline=way, colour=EDGE, weight=HAIR_WEIGHT, haloed=True)
        for way in fringe(edge, count, length=length, side=1, lean=0.2)
    ]
    return group(*items)


def _turned(state: str, colours: Colours) -> Item:
    """Two leaves, the lower one turned over."""
    upper = skin(tone(colours, "underside", "same_green"))
    lower = skin(tone(colours, "underside", state))
    blade = Blade(length=190, width=84)
    first, second = lying(86 + 86j, -10), lying(86 + 186j, -10)
    return group(
        stalk_drawing(70 + 89j, 90 + 86j, 5, STEM),
        blade_drawing(blade, upper, first),
        glow(blade_outline(blade).placed(second)),
        stalk_drawing(70 + 189j, 90 + 186j, 5, STEM),
        blade_drawing(blade, lower, second, name="subject"),
    )


def _relief(kind: str, _: Colours) -> Item:
    blade = Blade(length=224, width=126)
    drawn = _single(blade, LEAF)
    place = lying(_FOOT)
    extra: list[Item] = []
    if kind == "puckered":
        ring = blade_outline(Blade(length=206, width=106)).placed(lying(_FOOT + (8 - 2j)))
        for spot in scatter(ring.flat(8), 19, margin=7, jitter=0.2):
            shadow = ellipse(spot + (1.4 + 1.8j), 7.6, 6.2)
            extra.append(Patch(outline=shadow, colour=lightened(GREEN, -17)))
            extra.append(Patch(outline=ellipse(spot, 6.6, 5.2), colour=lightened(GREEN, 6)))
    if kind == "domed":
        for share, tint in ((0.82, 4), (0.6, 9), (0.36, 14)):
            small = blade_outline(Blade(length=224 * share, width=96 * share))
            foot = place(complex(112 * (1 - share), -6))
            extra.append(Patch(outline=small.placed(lying(foot)), colour=lightened(GREEN, tint)))
    heights = {"flat": 0.0, "puckered": 5.0, "domed": 30.0}
    return group(drawn, *extra, _profile(heights[kind], waves=7 if kind == "puckered" else 1))


def _profile(height: float, *, waves: int) -> Item:
    """The blade cut across, under the leaf."""
    steps = 8 * waves
    heights = [height * abs(math.sin(math.pi * waves * i / steps)) for i in range(steps + 1)]
    top = [complex(96 + 190 * i / steps, 222 - high) for i, high in enumerate(heights)]
    return Line(outline=smooth(top, closed=False), colour=EDGE, weight=3.4, haloed=True)


_FINGER = (66 + 126j, 116 + 120j, 146 + 128j, 152 + 146j, 138 + 162j, 100 + 166j, 64 + 168j)


def _stiff(kind: str, _: Colours) -> Item:
    """A leaf held level over a finger, from the side."""
    courses = {
        "soft": (104 + 112j, 150 + 108j, 196 + 120j, 222 + 160j, 230 + 214j),
        "firm": (104 + 112j, 160 + 102j, 214 + 100j, 262 + 110j, 300 + 132j),
        "leathery": (104 + 112j, 168 + 106j, 232 + 100j, 304 + 94j),
    }
    way = courses[kind]
    thick = {"soft": 7.0, "firm": 10.0, "leathery": 15.0}[kind]
    under = [p + complex(0, thick) * (1 - i / len(way)) for i, p in enumerate(way)]
    blade = smooth((*way, *reversed(under[:-1])), sharp=(0, len(way) - 1))
    finger = smooth(_FINGER, sharp=(0, 6))
    nail = smooth((128 + 126j, 144 + 130j, 148 + 142j, 134 + 138j))
    return group(
        Part(outline=finger, skin=PLAIN),
        Part(outline=nail, skin=PLAIN, weight=LINE_WEIGHT, shaded=False),
        stalk_drawing(70 + 112j, 110 + 114j, 5, STEM),
        Part(outline=blade, skin=LEAF),
        *_crack(kind),
    )


def _crack(kind: str) -> list[Item]:
    if kind != "leathery":
        return []
    way = straight((236 + 98j, 232 + 104j, 240 + 108j, 235 + 116j), closed=False)
    return [Line(outline=way, colour=EDGE, weight=2.0)]


def _stalked(stalk: bool, _: Colours) -> Item:
    stem = stalk_drawing(96 + 226j, 112 + 20j, 17, STEM)
    foot = 158 + 112j if stalk else 112 + 126j
    blade = Blade(length=150 if stalk else 186, width=84)
    leaf = blade_drawing(blade, LEAF, lying(foot, -20))
    link = [stalk_drawing(104 + 132j, foot + 2, 7, LEAF)] if stalk else []
    return group(*link, leaf, stem)


def _hue(state: str, colours: Colours) -> Item:
    paint = skin(tone(colours, "upper_colour", state))
    blade = Blade(length=226, width=124)
    ring = blade_outline(blade).placed(lying(_FOOT))
    return group(glow(ring), _single(blade, paint, name="subject"))


_BUILDS = {
    "one_blade": "Leaf of one blade",
    "leaflets": "Leaf of several leaflets",
    "needle": "Leaf a needle",
    "tube": "Leaf a tube",
}
_SECTIONS: Rows = {
    "square": ("Stem square", partial(_section, True)),
    "round": ("Stem round", partial(_section, False)),
}
_HAIRS: Rows = {
    "bare": ("Upper side bare", partial(_hairy, 0, 0.0)),
    "downy": ("Upper side downy", partial(_hairy, 60, 8.0)),
    "felted": ("Upper side felted", partial(_hairy, 150, 11.0)),
}
_UNDERSIDES = {
    "same_green": "Underside of the same green",
    "paler_green": "Underside of a paler green",
    "white_or_grey": "Underside white or grey",
}
_SURFACES = {s: f"Upper side {s}" for s in ("flat", "puckered", "domed")}
_STIFF = {s: f"Blade {s}" for s in ("soft", "firm", "leathery")}
_STALKS: Rows = {
    "stalked": ("Leaf with a stalk", partial(_stalked, True)),
    "sitting": ("Leaf sitting on the stem", partial(_stalked, False)),
}
_HUES = {
    "bright_green": "Upper side bright green",
    "dark_green": "Upper side dark green",
    "grey_green": "Upper side grey green",
}

TILES: Tiles = {
    **tiles_of("leaf_build", {s: (t, partial(_build, s)) for s, t in _BUILDS.items()}, "leaf"),
    **tiles_of("stem_section", _SECTIONS, "stem"),
    **tiles_of(
        "margin",
        {s: (f"Margin {s}", partial(_blade, blade)) for s, blade in _MARGINS.items()},
        "blade",
    ),
    **tiles_of(
        "tooth_form",
        {s: (f"Teeth {s}", partial(_blade, blade)) for s, blade in _TEETH.items()},
        "blade",
    ),
    **tiles_of("hairiness", _HAIRS, "blade"),
    **tiles_of("underside", {s: (t, partial(_turned, s)) for s, t in _UNDERSIDES.items()}, "blade"),
    **tiles_of("surface", {s: (t, partial(_relief, s)) for s, t in _SURFACES.items()}, "blade"),
    **tiles_of("stiffness", {s: (t, partial(_stiff, s)) for s, t in _STIFF.items()}, "blade"),
    **tiles_of("leaf_stalk", _STALKS, "leaf"),
    **tiles_of("upper_colour", {s: (t, partial(_hue, s)) for s, t in _HUES.items()}, "blade"),
    **measures.TILES,
}
