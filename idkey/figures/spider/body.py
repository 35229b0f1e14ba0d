"""Carapace and jaws of a tarantula from above; the front of the carapace at 0."""

import cmath
import math
from dataclasses import dataclass

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group
from idkey.figures.geometry import (
    MIRROR,
    Outline,
    Place,
    bounds,
    ellipse,
    mirrored,
    moved,
    scaled,
    smooth,
)
from idkey.figures.ink import EDGE, LINE_WEIGHT, Skin, skin

FOVEA = 0.62j
"""The pit in the middle, in carapace lengths from the front."""
WIDE = 0.94
"""Width of the carapace, in its own lengths."""

_HALF = (
    -0.02j,
    0.17 - 0.015j,
    0.28 + 0.05j,
    0.335 + 0.2j,
    0.445 + 0.37j,
    0.5 + 0.57j,
    0.465 + 0.78j,
    0.34 + 0.94j,
    0.13 + 1.0j,
    0.985j,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Shield:
    """How a carapace is coloured.

    Attributes:
        skin: Its ground.
        border: Colour of the margin; empty for none.
        rays: Colour of the rays from the pit; empty for none.
        rays_reach: How far the rays go toward the margin, 0 to 1.
        eye_patches: Colour of two patches beside the eyes; empty for none.
        triangle: Colour of a triangle from the eyes backwards; empty for none.
        lines: Colour of two lines along the middle; empty for none.
    """

    skin: Skin
    border: str = ""
    rays: str = ""
    rays_reach: float = 0.8
    eye_patches: str = ""
    triangle: str = ""
    lines: str = ""


def shield_outline(size: float) -> Outline:
    """The outline of a carapace of that length."""
    return smooth(mirrored(_HALF)).placed(scaled(size * WIDE, size))


def shield_drawing(size: float, shield: Shield, *, name: str = "") -> Group:
    """A carapace with its pattern, pit, furrows and eyes."""
    outline = shield_outline(size)
    ground = skin(shield.border) if shield.border else shield.skin
    items: list[Item] = [Part(outline=outline, skin=ground, name=name)]
    if shield.border:
        inner = _shrunk(outline, 0.8)
        items.append(Patch(outline=inner, colour=shield.skin.fill))
    items += _pattern(size, shield)
    items += _furrows(size, shield)
    items += _eyes(size, shield.skin)
    return group(*items)


def _shrunk(outline: Outline, share: float) -> Outline:
    low, high = bounds(outline.flat(4))
    middle = (low + high) / 2
    return outline.placed(moved(middle).after(scaled(share)).after(moved(-middle)))


def _pattern(size: float, shield: Shield) -> list[Item]:
    items: list[Item] = []
    if shield.rays:
        items += [Patch(outline=ray, colour=shield.rays) for ray in _rays(size, shield.rays_reach)]
    for side in (Place(), MIRROR):
        place = scaled(size).after(side)
        if shield.eye_patches:
            ring = smooth((0.05 + 0.03j, 0.2 + 0.05j, 0.24 + 0.16j, 0.15 + 0.26j, 0.06 + 0.16j))
            items.append(Patch(outline=ring.placed(place), colour=shield.eye_patches))
        if shield.lines:
            ring = smooth(
                (0.08 + 0.13j, 0.14 + 0.14j, 0.2 + 0.5j, 0.17 + 0.92j, 0.11 + 0.92j, 0.12 + 0.5j)
            )
            items.append(Patch(outline=ring.placed(place), colour=shield.lines))
    if shield.triangle:
        half = (0.0j, 0.2 + 0.02j, 0.27 + 0.12j, 0.12 + 0.36j, 0.6j)
        ring = smooth(mirrored(half), sharp=(4,))
        items.append(Patch(outline=ring.placed(scaled(size)), colour=shield.triangle))
    return items


_ANGLES = (-58, -30, 2, 34, 66, 90, 114, 146, 178, 210, 238)


def _rays(size: float, reach: float) -> list[Outline]:
    """Wedges from the pit toward the margin."""
    found = []
    ring = [p / size for p in shield_outline(size).flat(10)]
    for angle in _ANGLES:
        unit = cmath.rect(1, math.radians(angle))
        far = max(
            ((p - FOVEA) * unit.conjugate()).real
            for p in ring
            if abs(cmath.phase((p - FOVEA) / unit)) < 0.2
        )
        tip = FOVEA + unit * far * reach
        foot = FOVEA + unit * 0.07
        across = unit * 1j
        points = (foot, tip - unit * 0.06 + across * 0.055, tip, tip - unit * 0.06 - across * 0.055)
        found.append(smooth([p * size for p in points], sharp=(0,)))
    return found


def _furrows(size: float, shield: Shield) -> list[Item]:
    items: list[Item] = []
    for angle in (-40, 10, 48, 132, 170, 220):
        unit = cmath.rect(1, math.radians(angle))
        ends = (FOVEA + unit * 0.12, FOVEA + unit * 0.3)
        way = smooth([p * size for p in ends], closed=False)
        items.append(Line(outline=way, colour=shield.skin.detail, weight=LINE_WEIGHT))
    pit = smooth(
        [p * size for p in (FOVEA - 0.075 + 0.012j, FOVEA - 0.012j, FOVEA + 0.075 + 0.012j)],
        closed=False,
    )
    items.append(Line(outline=pit, colour=EDGE, weight=max(1.4, size * 0.016)))
    return items


def _eyes(size: float, ground: Skin) -> list[Item]:
    at = 0.075j * size
    items: list[Item] = [
        Part(outline=ellipse(at, size * 0.085, size * 0.05), skin=ground, weight=LINE_WEIGHT)
    ]
    for x, y, r in ((0.028, -0.004, 0.019), (0.064, -0.012, 0.013), (0.066, 0.018, 0.011)):
        for side in (-1, 1):
            eye = at + complex(side * x, y) * size
            items.append(Patch(outline=ellipse(eye, r * size), colour=EDGE))
            items.append(
                Patch(
                    outline=ellipse(eye - r * size * (0.3 + 0.3j), r * size * 0.3),
                    colour=ground.light,
                )
            )
    return items


def jaws_drawing(size: float, ground: Skin, *, name: str = "") -> Group:
    """The two chelicerae, in front of a carapace of that length."""
    half = (
        0.01 + 0.06j,
        0.01 - 0.24j,
        0.06 - 0.325j,
        0.16 - 0.345j,
        0.255 - 0.27j,
        0.285 - 0.08j,
        0.25 + 0.08j,
    )
    outline = smooth([p * size for p in half])
    return group(
        *(Part(outline=outline.placed(side), skin=ground) for side in (Place(), MIRROR)), name=name
    )
