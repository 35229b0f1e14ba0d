"""Tiles about the legs of a tarantula, from above."""

from collections.abc import Mapping
from dataclasses import replace
from functools import partial

from idkey.figures.drawing import Group, Item, Line, Part, group
from idkey.figures.fields import fringe
from idkey.figures.geometry import Point, smooth
from idkey.figures.ink import CONTEXT, SUBJECT, skin
from idkey.figures.marks import arrow, glow
from idkey.figures.rod import rod
from idkey.figures.spider.leg import (
    SEGMENTS,
    WIDTHS,
    Limb,
    Pelt,
    limb_drawing,
    segment_drawing,
)
from idkey.figures.spider.tones import KNEES, ORANGE, SHADE_HAIR, SHINS, pelt, plain_leg
from idkey.figures.tile import Colours, Rows, Tiles, tiles_of, tone

STRETCHED = (62 + 168j, 134 + 122j, 168 + 112j, 224 + 122j, 270 + 146j, 298 + 168j)
"""Joints of a leg across the tile."""
CONTEXT_PELT = Pelt(skin=skin(CONTEXT), hair=SHADE_HAIR)
SHOWN_PELT = Pelt(skin=skin(SUBJECT), hair=SHADE_HAIR)


def stretched(pelts: Mapping[str, Pelt], *, shown: str = "", width: float = 42) -> Group:
    """A leg across the tile; with `shown`, that segment is the subject and glows."""
    limb = Limb(joints=STRETCHED, width=width)
    drawn = limb_drawing(limb, pelts, shown=shown, name="" if shown else "subject")
    if not shown:
        return drawn
    index = SEGMENTS.index(shown)
    ring = rod(
        STRETCHED[index],
        STRETCHED[index + 1],
        width * WIDTHS[index],
        width * WIDTHS[min(index + 1, 4)],
        belly=0.04,
    )
    return group(glow(ring), drawn)


def close_up(segment: str, shown: Pelt, around: Pelt = CONTEXT_PELT) -> Group:
    """One segment at large, between the ends of its neighbours."""
    index = SEGMENTS.index(segment)
    joints: tuple[Point, ...] = (62 + 176j, 116 + 148j, 250 + 117j, 294 + 126j)
    wide = 92 * WIDTHS[index]
    before, after = wide / WIDTHS[index] * WIDTHS[max(index - 1, 0)], wide * 0.94
    thick = ((before, wide), (wide, after), (after, after * 0.95))
    parts: list[Item] = []
    for place in (2, 0, 1):
        ends = (joints[place], joints[place + 1])
        coat = shown if place == 1 else around
        drawn = segment_drawing(ends, thick[place], coat, scale=wide * 0.8)
        parts.append(Group(drawn.items, "subject" if place == 1 else ""))
    return group(*parts)


def _layout(kind: str, _: Colours) -> Item:
    knee = {"rings": "ring_orange_then_pale", "solid_coloured_segments": "all_orange_or_red"}
    shin = {"rings": "dark_with_pale_distal_ring", "solid_coloured_segments": "all_orange"}
    pelts = plain_leg("#2b2320")
    pelts["patella"] = pelt(*KNEES[knee.get(kind, "plain_dark")])
    for segment in ("tibia", "metatarsus"):
        pelts[segment] = pelt(*SHINS[shin.get(kind, "plain_dark")])
    return stretched(pelts)


def _knee(state: str, _: Colours) -> Item:
    return close_up("patella", pelt(*KNEES[state], hairs=12))


def _shin(segment: str, state: str, _: Colours) -> Item:
    coat = pelt(*SHINS[state], hairs=14)
    if state == "dark_with_long_orange_hairs":
        coat = replace(coat, hair=ORANGE, hairs=26, length=0.62)
    return close_up(segment, coat)


def _hue(state: str, colours: Colours) -> Item:
    return stretched(plain_leg(tone(colours, "leg_hue", state)), width=48)


def _spine(present: bool, _: Colours) -> Item:
    drawn = close_up("patella", replace(SHOWN_PELT, hairs=6))
    foot, tip = 176 + 86j, 196 + 48j
    if not present:
        return group(drawn, arrow(foot - 6j, 90, 30))
    points = (foot - 7 + 6j, (foot + tip) / 2 - 4, tip, (foot + tip) / 2 + 4 + 3j, foot + 8 + 4j)
    thorn = Part(outline=smooth(points, sharp=(0, 2, 4)), skin=skin("#4a3020"))
    return group(thorn, drawn, arrow(tip + (10 - 2j), 160, 30))


def _brush(count: int, length: float, _: Colours) -> Item:
    ends, widths = (64 + 150j, 300 + 112j), (78.0, 70.0)
    lines: list[Item] = []
    for side in (1, -1):
        shift = 30j * -side
        way = smooth(
            (ends[0] + 14 + shift, (ends[0] + ends[1]) / 2 + shift * 1.15, ends[1] - 12 + shift),
            closed=False,
        )
        lines += [
            Line(outline=hair, colour=SHADE_HAIR, weight=1.3, haloed=True)
            for hair in fringe(way, count, length=length, side=side, lean=0.5)
        ]
    drawn = segment_drawing(ends, widths, replace(SHOWN_PELT, hair=""), scale=60)
    return group(*lines, drawn)


_LAYOUTS = {
    "rings": "Legs ringed",
    "solid_coloured_segments": "Whole leg segments coloured",
    "none": "Legs plain",
}
_KNEES = {
    "plain_dark": "Knee plain dark",
    "ring_orange_then_pale": "Knee orange, then pale",
    "flame_red": "Knee with a red flame",
    "all_orange_or_red": "Knee orange or red all over",
}
_TIBIAE = {
    "plain_dark": "Tibia plain dark",
    "dark_with_pale_distal_ring": "Tibia dark with a pale ring at its end",
    "all_orange": "Tibia orange all over",
    "brown": "Tibia brown",
}
_METATARSI = {
    "plain_dark": "Metatarsus plain dark",
    "dark_with_pale_distal_ring": "Metatarsus dark with a pale ring at its end",
    "all_orange": "Metatarsus orange all over",
    "dark_with_long_orange_hairs": "Metatarsus dark with long orange hairs",
}
_HUES = {
    "bluish_black": "Legs bluish black",
    "black_to_reddish_black": "Legs black to reddish black",
}
_SPINES: Rows = {
    "present": ("A spine on the first knee", partial(_spine, True)),
    "absent": ("No spine on the first knee", partial(_spine, False)),
}
_BRUSHES: Rows = {
    "prominent": ("Femur with conspicuous brushes of hair", partial(_brush, 90, 44.0)),
    "not_prominent": ("Femur without conspicuous brushes", partial(_brush, 16, 16.0)),
}

AMERICAN: Tiles = {
    **tiles_of("leg_rings", {s: (t, partial(_layout, s)) for s, t in _LAYOUTS.items()}, "legs"),
    **tiles_of("patella", {s: (t, partial(_knee, s)) for s, t in _KNEES.items()}, "patellae"),
    **tiles_of("tibia", {s: (t, partial(_shin, "tibia", s)) for s, t in _TIBIAE.items()}, "tibiae"),
    **tiles_of(
        "metatarsus",
        {s: (t, partial(_shin, "metatarsus", s)) for s, t in _METATARSI.items()},
        "metatarsi",
    ),
    **tiles_of("leg_hue", {s: (t, partial(_hue, s)) for s, t in _HUES.items()}, "legs"),
    **tiles_of("patella1_spine", _SPINES, "leg_1_patella"),
}
"""Of the American key."""
ORNAMENTAL: Tiles = {**tiles_of("fem_brush", _BRUSHES, "femora")}
"""Of the key to the ornamental ones."""
TILES: Tiles = {**AMERICAN, **ORNAMENTAL}
