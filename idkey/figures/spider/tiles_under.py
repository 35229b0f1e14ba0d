"""Tiles about the markings of an ornamental tarantula from below."""

from functools import partial

from idkey.figures.drawing import Group, Item, group, placed
from idkey.figures.geometry import Point, moved
from idkey.figures.ink import skin
from idkey.figures.marks import glow, letter
from idkey.figures.rod import rod
from idkey.figures.spider.below import belly_drawing
from idkey.figures.spider.leg import Mark, Pelt, segment_drawing
from idkey.figures.spider.tiles_legs import CONTEXT_PELT, close_up, stretched
from idkey.figures.spider.tones import BLACK, pelt, plain_leg
from idkey.figures.tile import Colours, Rows, Tiles, tiles_of, tone

_LEMON = "#e4c21c"
_PALE_GREY = "#8b949c"
_CREAM = "#efe6cf"


def _ground(character: str, state: str, colours: Colours) -> Item:
    return stretched(plain_leg(tone(colours, character, state)), width=46)


FIRST_FEMUR: dict[str, tuple[str, tuple[Mark, ...]]] = {
    "none": (_LEMON, ()),
    "very_narrow": (_LEMON, (Mark(start=0.47, end=0.55, colour=BLACK),)),
    "distal_black_then_thin_yellow": (_LEMON, (Mark(start=0.42, end=0.88, colour=BLACK),)),
    "broad": (_LEMON, (Mark(start=0.12, end=0.86, colour=BLACK),)),
    "entire": (BLACK, (Mark(start=0.9, end=0.95, colour=_CREAM),)),
}
"""Ground and marks of the underside of femur I by state."""
FIRST_TIBIA: dict[str, tuple[str, tuple[Mark, ...]]] = {
    "thick_band": (_LEMON, (Mark(start=0.34, end=0.72, colour=BLACK),)),
    "none": (_LEMON, ()),
}
"""The same of tibia I."""
LAST_FEMUR: dict[str, tuple[str, tuple[Mark, ...]]] = {
    "no_band": (_PALE_GREY, ()),
    "thin_broken_band": (_PALE_GREY, (Mark(start=0.48, end=0.58, colour=BLACK, shape="broken"),)),
    "continuous_band": (_PALE_GREY, (Mark(start=0.45, end=0.6, colour=BLACK),)),
    "wedge": (_CREAM, (Mark(start=0.1, end=0.85, colour=BLACK, shape="wedge"),)),
    "pale_spot_on_black": (BLACK, (Mark(start=0.4, end=0.7, colour=_CREAM, shape="spot"),)),
    "distal_black_then_thin_yellow": (_LEMON, (Mark(start=0.42, end=0.88, colour=BLACK),)),
    "alternating_bands": (
        _CREAM,
        tuple(Mark(start=s, end=s + 0.13, colour=BLACK) for s in (0.1, 0.37, 0.64)),
    ),
    "all_black": (BLACK, ()),
}
"""The same of femur IV."""


def thigh(coat: Pelt) -> Group:
    """A femur at large, with the root of the leg and the knee."""
    joints: tuple[Point, ...] = (60 + 178j, 88 + 166j, 244 + 112j, 290 + 106j)
    parts: list[Item] = []
    for place, widths in ((0, (74.0, 82.0)), (2, (84.0, 78.0)), (1, (90.0, 84.0))):
        ends = (joints[place], joints[place + 1])
        around = coat if place == 1 else CONTEXT_PELT
        drawn = segment_drawing(ends, widths, around, scale=70)
        parts.append(Group(drawn.items, "subject" if place == 1 else ""))
    return group(glow(rod(joints[1], joints[2], 90, 84, belly=0.03)), *parts)


def _first_femur(state: str, _: Colours) -> Item:
    return thigh(pelt(*FIRST_FEMUR[state], hairs=14))


def _last_femur(state: str, _: Colours) -> Item:
    return thigh(pelt(*LAST_FEMUR[state], hairs=14))


def _first_tibia(state: str, _: Colours) -> Item:
    return close_up("tibia", pelt(*FIRST_TIBIA[state], hairs=14))


def _belly(banded: bool, _: Colours) -> Item:
    size = 196.0
    band = "#f0e4cb" if banded else ""
    drawn = belly_drawing(size, 1.02, skin("#5d564d"), band=band)
    return placed(drawn, moved(190 + 10j))


def _alike(alike: bool, _: Colours) -> Item:
    first = plain_leg(_LEMON)
    first["femur"] = pelt(*FIRST_FEMUR["broad"], hairs=6)
    first["tibia"] = pelt(*FIRST_TIBIA["thick_band"], hairs=6)
    last = dict(first)
    if not alike:
        last = plain_leg(_PALE_GREY)
        last["femur"] = pelt(*LAST_FEMUR["continuous_band"], hairs=6)
    upper = placed(stretched(first, width=38), moved(-4 - 72j))
    lower = placed(stretched(last, width=38), moved(-4 + 36j))
    return group(upper, lower, letter("I", 36 + 98j, size=22), letter("IV", 36 + 206j, size=22))


_GROUNDS = {
    "yellow": "yellow",
    "white": "white",
    "black": "black",
    "grey": "grey",
    "bluish_grey_or_grey": "grey or bluish grey",
}
_FIRST = {
    "none": "First femur without a band",
    "very_narrow": "First femur with a very narrow band",
    "distal_black_then_thin_yellow": "First femur with a black end and a thin yellow rim",
    "broad": "First femur with a broad band",
    "entire": "First femur dark all along",
}
_LAST = {
    "no_band": "Last femur without a band",
    "thin_broken_band": "Last femur with a thin, broken band",
    "continuous_band": "Last femur with a band without a gap",
    "wedge": "Last femur with a wedge",
    "pale_spot_on_black": "Last femur black with a pale spot",
    "distal_black_then_thin_yellow": "Last femur with a black end and a thin yellow rim",
    "alternating_bands": "Last femur with dark and pale bands in turn",
    "all_black": "Last femur black all over",
}
_SHINS: Rows = {
    "thick_band": ("First tibia with a thick black band", partial(_first_tibia, "thick_band")),
    "none": ("First tibia without a band", partial(_first_tibia, "none")),
}
_BELLIES: Rows = {
    "present": ("A pale band across the front of the belly", partial(_belly, True)),
    "absent": ("No pale band across the belly", partial(_belly, False)),
}
_PAIRS: Rows = {
    "yes": ("First and last leg marked alike", partial(_alike, True)),
    "no": ("First and last leg marked differently", partial(_alike, False)),
}


def _grounds(character: str, which: str, *states: str) -> Rows:
    return {
        state: (f"{which} leg {_GROUNDS[state]} below", partial(_ground, character, state))
        for state in states
    }


TILES: Tiles = {
    **tiles_of(
        "v_leg1_ground",
        _grounds("v_leg1_ground", "First", "yellow", "white", "black", "grey"),
        "leg_1",
        below=True,
    ),
    **tiles_of(
        "v_leg4_ground",
        _grounds("v_leg4_ground", "Last", "bluish_grey_or_grey", "yellow", "white", "black"),
        "leg_4",
        below=True,
    ),
    **tiles_of(
        "v_fem1_band",
        {s: (t, partial(_first_femur, s)) for s, t in _FIRST.items()},
        "leg_1_femur",
        below=True,
    ),
    **tiles_of(
        "v_fem4_mark",
        {s: (t, partial(_last_femur, s)) for s, t in _LAST.items()},
        "leg_4_femur",
        below=True,
    ),
    **tiles_of("v_tib1_band", _SHINS, "leg_1_tibia", below=True),
    **tiles_of("v_abd_band", _BELLIES, "abdomen", below=True),
    **tiles_of("legs_alike", _PAIRS, "leg_1", "leg_4", below=True),
}
"""Of the key to the ornamental ones."""
