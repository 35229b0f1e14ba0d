"""The one style of all drawings: weights, tones, and what a colour turns into on a body."""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from idkey.engine.colour import hex_of_rgb, lab_of_hex, rgb_of_lab

EDGE = "#231d19"
"""Outlines."""
HALO = "#faf6ee"
"""Thin rim outside the outlines; it keeps dark parts apart from a dark ground."""
CONTEXT = "#d8d1c4"
"""Parts that are shown only to find one's way."""
SUBJECT = "#e6b366"
"""The part in question, where its natural colour is not the matter."""
GLOW = "#f0a63a"
"""Soft highlight around the part in question."""
MEASURE = "#2286ca"
"""Dimension lines and numbers; at least 3.9:1 on white and on #1e1e1e."""
SHADOW = "#8b8376"
"""Small silhouettes that say where on the animal a part sits; readable on both grounds."""
POINTER = "#e0701c"
"""The part in question on such a silhouette, and marks to look at."""

EDGE_WEIGHT = 2.0
LINE_WEIGHT = 1.1
HAIR_WEIGHT = 0.9
HALO_WEIGHT = 1.5


@dataclass(frozen=True, slots=True)
class Skin:
    """What a part is painted with.

    Attributes:
        fill: Ground colour, as ``#rrggbb``.
        shade: Side away from the light.
        light: Side toward the light.
        detail: Lines and marks on the part, dark on light grounds and light on dark ones.
        hatched: Whether the colour is unknown: hatching instead of shade and light.
        dashed: Whether the shape is unknown: a dashed outline.
    """

    fill: str
    shade: str
    light: str
    detail: str
    hatched: bool = False
    dashed: bool = False


@lru_cache(maxsize=512)
def skin(colour: str, *, hatched: bool = False, dashed: bool = False) -> Skin:
    """What `colour` turns into on a rounded, evenly lit body."""
    tone = float(lab_of_hex(colour)[0])
    dark = tone < 38
    return Skin(
        fill=colour,
        shade=lightened(colour, -5.5 if dark else -9),
        light=lightened(colour, 18 if dark else 7),
        detail=lightened(colour, 32) if dark else lightened(colour, -38),
        hatched=hatched,
        dashed=dashed,
    )


@lru_cache(maxsize=1024)
def lightened(colour: str, by: float) -> str:
    """`colour` with its lightness L* changed by `by`, hue and chroma kept where sRGB allows."""
    lab = lab_of_hex(colour)
    lightness = float(np.clip(lab[0] + by, 2, 98))
    keep = 1.0 if by > 0 else lightness / max(float(lab[0]), 1)
    return hex_of_rgb(rgb_of_lab((lightness, lab[1] * max(keep, 0.6), lab[2] * max(keep, 0.6))))


UNKNOWN = skin("#cfc8bb", hatched=True)
"""A part whose colour is not known."""


def blended(one: str, two: str, share: float) -> str:
    """A colour between two, `share` of the way to the second, in CIELAB."""
    return hex_of_rgb(rgb_of_lab(lab_of_hex(one) * (1 - share) + lab_of_hex(two) * share))
