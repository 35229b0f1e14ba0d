"""Tiles about the claw: its build, its relief, its colour, its hairs."""

import cmath
import math
from functools import partial

from idkey.figures.drawing import Item, Line, Part, group, placed
from idkey.figures.fields import hairs, scatter
from idkey.figures.geometry import Outline, Place, Point, bounds, ellipse, moved, smooth
from idkey.figures.ink import EDGE, HAIR_WEIGHT, SUBJECT, blended, skin
from idkey.figures.marks import arrow, bar, glow
from idkey.figures.rod import rod
from idkey.figures.scorpion import claw as forms
from idkey.figures.scorpion.claw import Form, claw, claw_drawing
from idkey.figures.scorpion.surface import beaded, granules, hollow, keel, net
from idkey.figures.tile import PLAIN, SHOWN, Colours, Rows, Tiles, tiles_of, tone


def on_page(base: Point, degrees: float = 0) -> Place:
    """Puts a claw with its base there, its inner side up, pointing along `degrees`."""
    return Place(0j, cmath.rect(1, math.radians(degrees)), base)


def _robust(ratio: float, form: Form, thick: float, _: Colours) -> Item:
    build = claw(196, 196 / ratio, form)
    wrist, elbow = 112 + 148j, 60 + 220j
    place = on_page(wrist, -13)
    low, high = (place(p) for p in build.widest)
    along = (wrist - elbow) / abs(wrist - elbow)
    middle = wrist - along * 50
    across = along * 0.54j * thick
    return group(
        Part(outline=rod(elbow, wrist, thick * 0.95, thick, belly=0.05), skin=PLAIN),
        placed(claw_drawing(build, SHOWN, SHOWN), place),
        bar(low, high, tick=5),
        bar(middle - across, middle + across, tick=5),
    )


def _shape(form: Form, ratio: float, section: Outline, _: Colours) -> Item:
    build = claw(240, 240 / ratio, form)
    low, high = bounds(build.hand.flat(4))
    place = on_page(complex(68, 94 + (low.imag + high.imag) / 2))
    cut = build.widest[1].real + 68
    ends = (complex(cut, place(high).imag - 11), complex(cut, 232))
    near, far = bounds(section.flat(4))
    shift = complex(cut, 206) - (near + far) / 2
    return group(
        Line(outline=smooth(ends, closed=False), colour=EDGE, weight=1.4, dash=(5, 4), haloed=True),
        placed(claw_drawing(build, SHOWN, SHOWN), place),
        Line(outline=smooth(ends, closed=False), colour=EDGE, weight=1.4, dash=(5, 4)),
        Part(outline=section.placed(moved(shift)), skin=skin(blended(SUBJECT, "#ffffff", 0.35))),
    )


_DIAMOND_CUT = smooth((0j, 26 - 22j, 52 + 0j, 26 + 22j), sharp=(0, 1, 2, 3))
_LOBE_CUT = (0j, 12 - 13j, 40 - 17j, 70 - 9j, 84 - 1j, 70 + 7j, 40 + 15j, 12 + 12j)


def _lobe_cut(across: float, deep: float) -> Outline:
    return smooth([complex(p.real * across / 84, p.imag * deep / 32) for p in _LOBE_CUT])


_SHAPES: dict[str, tuple[str, Form, float, Outline]] = {
    "strongly_lobiform": (
        "Hand very broad, its inner edge strongly lobed",
        forms.LOBED_STRONGLY,
        1.66,
        _lobe_cut(86, 30),
    ),
    "lobiform": ("Hand with a lobed inner edge", forms.LOBED, 2.05, _lobe_cut(70, 32)),
    "weakly_lobiform": ("Hand weakly lobed", forms.LOBED_WEAKLY, 2.5, _lobe_cut(58, 34)),
    "rounded_bulged": ("Hand round and bulged", forms.ROUND, 2.2, ellipse(0j, 29, 28)),
    "diamond_ridged": (
        "Hand with one ridge, diamond in section",
        forms.DIAMOND,
        2.75,
        _DIAMOND_CUT,
    ),
    "elongate": ("Hand long and narrow, parallel-sided", forms.ELONGATE, 3.9, ellipse(0j, 17, 13)),
    "slender_oval": ("Hand a small, slim oval", forms.SLENDER, 4.8, ellipse(0j, 11, 11)),
}


def _dent(dented: bool, _: Colours) -> Item:
    build = claw(244, 112, forms.LOBED)
    place = on_page(66 + 120j)
    items: list[Item] = [placed(claw_drawing(build, SHOWN, SHOWN), place)]
    spot = place(complex(0.5 * 244, 0.16 * 112))
    profile = (
        96 + 212j,
        130 + 199j,
        168 + 196j,
        spot.real + 209j,
        226 + 203j,
        262 + 206j,
        300 + 213j,
    )
    if dented:
        items.append(hollow(ellipse(spot, 26, 17, 20), SHOWN))
    else:
        profile = (
            96 + 212j,
            130 + 199j,
            168 + 195j,
            spot.real + 197j,
            226 + 202j,
            262 + 206j,
            300 + 213j,
        )
    floor = (*profile, 300 + 216j, 96 + 216j)
    items.append(Part(outline=smooth(floor, sharp=(0, 6, 7, 8)), skin=SHOWN, shaded=False))
    items.append(arrow(spot.real + (205j if dented else 193j), 90, 20))
    return group(*items)


def _surface(kind: str, _: Colours) -> Item:
    build = claw(254, 142, forms.LOBED)
    place = on_page(58 + 132j)
    ring = build.manus.placed(place).flat(10)
    return group(placed(claw_drawing(build, SHOWN, SHOWN), place), _RELIEF[kind](ring))


def _few(ring: tuple[Point, ...]) -> Item:
    return granules(scatter(ring, 40, margin=16)[1::2], SHOWN, 2.8)


def _netted(ring: tuple[Point, ...]) -> Item:
    return net(ring, SHOWN, 21, 4)


def _edged(ring: tuple[Point, ...]) -> Item:
    low, high = bounds(ring)
    ways = ((0.10, 0.33), (0.24, 0.17), (0.48, 0.13), (0.72, 0.2), (0.9, 0.3))
    outer = ((0.08, 0.66), (0.24, 0.80), (0.48, 0.86), (0.72, 0.83), (0.88, 0.76))
    size = high - low
    return group(
        *(
            keel([low + complex(x * size.real, y * size.imag) for x, y in way], SHOWN, 4.4)
            for way in (ways, outer)
        )
    )


def _rounded(ring: tuple[Point, ...]) -> Item:
    return granules(scatter(ring, 15.5, margin=7, jitter=0.22), SHOWN, 3.9, vary=0.35)


def _in_rows(ring: tuple[Point, ...]) -> Item:
    low, high = bounds(ring)
    size = high - low
    rows = (
        ((0.12, 0.38), (0.32, 0.2), (0.6, 0.2), (0.88, 0.36)),
        ((0.10, 0.48), (0.34, 0.38), (0.62, 0.38), (0.92, 0.47)),
        ((0.10, 0.56), (0.34, 0.55), (0.62, 0.56), (0.93, 0.58)),
        ((0.11, 0.64), (0.32, 0.72), (0.60, 0.74), (0.9, 0.68)),
    )
    return group(
        *(
            beaded([low + complex(x * size.real, y * size.imag) for x, y in row], SHOWN, 3.6, 8.2)
            for row in rows
        )
    )


def _emperor(ring: tuple[Point, ...]) -> Item:
    return granules(scatter(ring, 9.2, margin=5, jitter=0.34), SHOWN, 3.0, vary=0.45)


def _merging(ring: tuple[Point, ...]) -> Item:
    low, high = bounds(ring)
    start = low.real + (high.real - low.real) * 0.46
    spots = [p for p in scatter(ring, 13, margin=6) if p.real > start]
    return group(
        net([p if p.real > start else complex(start, p.imag) for p in ring], SHOWN, 14, 5),
        granules(spots, SHOWN, 3.0),
    )


_RELIEF = {
    "smooth": _few,
    "smooth_reticulate": _netted,
    "smooth_carinae_margins": _edged,
    "rounded_granules": _rounded,
    "granules_forming_carinae": _in_rows,
    "granular": _emperor,
    "smooth_basally_anastomosing_distally": _merging,
}
_RELIEF_TITLES = {
    "smooth": "Hand smooth, with a few tubercles",
    "smooth_reticulate": "Hand mostly smooth, with a net of low keels",
    "smooth_carinae_margins": "Hand mostly smooth, smooth keels near the margins",
    "rounded_granules": "Hand covered with separate round granules",
    "granules_forming_carinae": "Granules of the hand run together into keels",
    "granular": "Hand densely granular",
    "smooth_basally_anastomosing_distally": "Hand smooth near the base, granules merging in front",
}


def _coloured(hand: str, fingers: str, arm: str) -> Item:
    build = claw(196, 92, forms.LOBED)
    wrist, elbow = 116 + 150j, 64 + 214j
    place = on_page(wrist, -20)
    return group(
        glow(build.hand.placed(place)),
        glow(build.finger.placed(place)),
        Part(outline=rod(elbow, wrist, 36, 40, belly=0.08), skin=skin(arm)),
        placed(claw_drawing(build, skin(hand), skin(fingers), name="subject"), place),
    )


def _colour(state: str, colours: Colours) -> Item:
    hand = tone(colours, "chela_colour", state)
    if state == "pale_with_dark_fingers":
        return _coloured(hand, tone(colours, "chela_colour", state, 1), hand)
    return _coloured(hand, hand, tone(colours, "body_colour", "black"))


def _finger_hair(count: int, length: float, _: Colours) -> Item:
    build = claw(232, 110, forms.LOBED)
    place = on_page(62 + 132j)
    drawn = placed(claw_drawing(build, SHOWN, SHOWN), place)
    found: list[Item] = []
    for outline, start, end in (
        (build.finger, 0.0, 0.98),
        (build.hand, 0.16, 0.76),
    ):
        ring = outline.placed(place)
        for hair in hairs(ring, count, length=length, start=start, end=end):
            found.append(Line(outline=hair, colour=EDGE, weight=HAIR_WEIGHT, haloed=True))
    return group(drawn, *found)


_ROBUST: Rows = {
    "slender": (
        "Claw slender, hardly wider than the patella",
        partial(_robust, 4.7, forms.SLENDER, 37.0),
    ),
    "intermediate": ("Claw of middling build", partial(_robust, 3.2, forms.LOBED_WEAKLY, 40.0)),
    "robust": (
        "Claw robust, far wider than the patella",
        partial(_robust, 1.95, forms.LOBED, 43.0),
    ),
}
_DENT: Rows = {
    "absent": ("No hollow at the base of the fixed finger", partial(_dent, False)),
    "present": ("A hollow at the base of the fixed finger", partial(_dent, True)),
}
_HAIR: Rows = {
    "sparse": ("Fingers with few hairs", partial(_finger_hair, 7, 13.0)),
    "moderate": ("Fingers moderately hairy", partial(_finger_hair, 22, 17.0)),
    "dense": ("Fingers densely hairy", partial(_finger_hair, 64, 22.0)),
}
_TINTS = {
    "dark": "Claw dark as the body",
    "reddish": "Claw reddish to red-brown",
    "yellow": "Claw yellow or pale",
    "pale_with_dark_fingers": "Hand pale, fingers dark",
}

TILES: Tiles = {
    **tiles_of("chela_robustness", _ROBUST, "chela"),
    **tiles_of("male_manus_depression", _DENT, "chela"),
    **tiles_of("chela_finger_setation", _HAIR, "chela"),
    **tiles_of(
        "manus_shape",
        {s: (row[0], partial(_shape, row[1], row[2], row[3])) for s, row in _SHAPES.items()},
        "chela",
    ),
    **tiles_of(
        "manus_surface",
        {s: (title, partial(_surface, s)) for s, title in _RELIEF_TITLES.items()},
        "hand",
    ),
    **tiles_of(
        "chela_colour", {s: (title, partial(_colour, s)) for s, title in _TINTS.items()}, "chela"
    ),
}
