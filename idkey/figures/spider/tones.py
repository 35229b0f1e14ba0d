"""Colours of tarantulas where a key names none: chosen by eye, no source prints them."""

from idkey.figures.ink import skin
from idkey.figures.spider.leg import SEGMENTS, Mark, Pelt

DARK = "#2b2320"
BROWN = "#6e4c33"
ORANGE = "#cf6a2f"
RED = "#b5321f"
PALE = "#dcbf8f"
GOLD = "#c8a25c"
GREY = "#77736a"
BLUE = "#2f5f9e"
BLACK = "#1e1b1a"
PINK = "#b98878"
HAIR = "#6b5546"
"""Hairs on dark ground."""
SHADE_HAIR = "#3a302a"
"""Hairs on pale ground."""

KNEES: dict[str, tuple[str, tuple[Mark, ...]]] = {
    "plain_dark": (DARK, ()),
    "ring_orange_then_pale": (
        DARK,
        (Mark(start=0.06, end=0.56, colour=ORANGE), Mark(start=0.56, end=0.92, colour=PALE)),
    ),
    "flame_red": (DARK, (Mark(start=0.06, end=0.58, colour=RED, shape="flame"),)),
    "all_orange_or_red": (ORANGE, ()),
}
"""Ground and marks of the patella by state."""
SHINS: dict[str, tuple[str, tuple[Mark, ...]]] = {
    "plain_dark": (DARK, ()),
    "dark_with_pale_distal_ring": (DARK, (Mark(start=0.76, end=0.96, colour=PALE),)),
    "all_orange": (ORANGE, ()),
    "brown": (BROWN, ()),
    "dark_with_long_orange_hairs": (DARK, ()),
}
"""Ground and marks of tibia and metatarsus by state."""


def pelt(ground: str, marks: tuple[Mark, ...] = (), *, hairs: int = 9) -> Pelt:
    """A pelt with hairs that stand out from its ground."""
    tint = HAIR if skin(ground).detail > ground else SHADE_HAIR
    return Pelt(skin=skin(ground), marks=marks, hair=tint, hairs=hairs)


def plain_leg(ground: str) -> dict[str, Pelt]:
    """A leg of one colour."""
    return {segment: pelt(ground) for segment in SEGMENTS}
