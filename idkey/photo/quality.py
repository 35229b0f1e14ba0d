"""Whether a part of a picture is sharp and lit well enough to show what is asked of it."""

from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view
from PIL import Image

from idkey.engine.normal import Array
from idkey.photo.marks import Box

SHARP_PX = 5.0
"""Widest edge, in pixels, at which granules and fine hairs are still drawn.

Source: rendered granules of 9 pixels; see docs/photo-accuracy.md.
"""

LEAST_PX = 120
"""Shortest side of a patch that shows a surface."""

DARK_LEVEL = 14.0
GLARE_SHARE = 0.08
GRAIN_LEVEL = 6.0
"""Middle brightness, share of blown-out pixels, and noise (levels of 255) that spoil a surface.

Source: common practice, no source.
"""

_CONTRAST = 25.0
_INNER, _OUTER = 16, 40
_WINDOW = 480


class Fault(StrEnum):
    """Why a patch cannot show a fine surface."""

    SMALL = "small"
    BLURRED = "blurred"
    UNJUDGED = "unjudged"
    DARK = "dark"
    GLARE = "glare"
    GRAINY = "grainy"


@dataclass(frozen=True, slots=True, kw_only=True)
class Fitness:
    """How a patch is drawn.

    Attributes:
        edge_px: Width of the sharpest edges in and around the patch, in pixels; None where no
            edge is strong enough to tell.
        brightness: Middle brightness of the patch, 0 to 255.
        glare: Share of blown-out pixels in it.
        grain: Noise of the picture, in levels of 255.
        faults: What keeps it from showing a fine surface; empty when nothing does.
    """

    edge_px: float | None
    brightness: float
    glare: float
    grain: float
    faults: tuple[Fault, ...]

    @property
    def shows_surface(self) -> bool:
        """Whether granules, hairs and lustre could be seen in it if they are there."""
        return not self.faults


def fitness(picture: Image.Image, patch: Box) -> Fitness:
    """How well a patch of a picture is drawn.

    Args:
        picture: The picture, upright.
        patch: The part looked at; cut to the picture.

    Raises:
        ValueError: The patch lies outside the picture.
    """
    inside = cropped(picture, patch)
    light = np.asarray(inside.convert("L"), dtype=float)
    colours = np.asarray(inside.convert("RGB"))
    brightness = float(np.median(light))
    glare = float((colours >= 253).any(axis=-1).mean())
    grain = _grain(picture)
    edge = edge_px(_around(picture, patch), grain)
    faults = {
        Fault.SMALL: min(inside.size) < LEAST_PX,
        Fault.BLURRED: edge is not None and edge > SHARP_PX,
        Fault.UNJUDGED: edge is None,
        Fault.DARK: brightness < DARK_LEVEL,
        Fault.GLARE: glare > GLARE_SHARE,
        Fault.GRAINY: grain > GRAIN_LEVEL,
    }
    return Fitness(
        edge_px=edge,
        brightness=brightness,
        glare=glare,
        grain=grain,
        faults=tuple(fault for fault, there in faults.items() if there),
    )


def cropped(picture: Image.Image, box: Box) -> Image.Image:
    """The part of a picture inside a box.

    Raises:
        ValueError: Nothing of the box lies in the picture.
    """
    left, top, width, height = box
    right, bottom = (
        min(picture.width, round(left + width)),
        min(picture.height, round(top + height)),
    )
    left, top = max(0, round(left)), max(0, round(top))
    if right <= left or bottom <= top:
        raise ValueError("the box lies outside the picture")
    return picture.crop((left, top, right, bottom))


def edge_px(part: Image.Image, grain: float) -> float | None:
    """Width of the sharpest edges: contrast around a place over its steepest slope.

    Args:
        part: Part of a picture.
        grain: Noise of the picture; edges must stand out from it.

    Returns:
        Pixels; about 2.5 times the standard deviation of a blur. None without a clear edge.
    """
    light = np.asarray(part.convert("L"), dtype=float)
    if min(light.shape) < _OUTER + 6:
        return None
    calm = sliding_window_view(light, (3, 3)).mean(axis=(2, 3))
    slope = np.hypot(calm[1:-1, 2:] - calm[1:-1, :-2], calm[2:, 1:-1] - calm[:-2, 1:-1]) / 2
    calm, rim, step = calm[1:-1, 1:-1], (_OUTER - _INNER) // 2, _INNER // 2
    around = sliding_window_view(calm, (_OUTER, _OUTER))[::step, ::step]
    low, high = np.percentile(around, [2, 98], axis=(2, 3))
    steepest = sliding_window_view(slope[rim:-rim, rim:-rim], (_INNER, _INNER))[::step, ::step]
    contrast, slopes = high - low, steepest.max(axis=(2, 3))
    clear = (contrast > _CONTRAST + 4 * grain) & (slopes > 0)
    if clear.sum() < 3:
        return None
    return float(np.percentile(contrast[clear] / slopes[clear], 10))


def _around(picture: Image.Image, patch: Box) -> Image.Image:
    """The patch with as much around it again, cut to a size that is quick to look through."""
    left, top, width, height = patch
    wide = min(max(2 * width, 2 * _OUTER), _WINDOW)
    high = min(max(2 * height, 2 * _OUTER), _WINDOW)
    middle_x, middle_y = left + width / 2, top + height / 2
    return cropped(picture, (middle_x - wide / 2, middle_y - high / 2, wide, high))


def _grain(picture: Image.Image) -> float:
    """Noise of the calmest tenth of the picture, in levels.

    Source: Immerkær 1996, Comput. Vis. Image Underst. 64: 300-302, on tiles (mask from memory).
    """
    calm = []
    for row in range(8):
        for column in range(8):
            x = (picture.width - 18) * column // 7
            y = (picture.height - 18) * row // 7
            tile = np.asarray(picture.crop((x, y, x + 18, y + 18)).convert("L"), dtype=float)
            calm.append(np.abs(_ripple(tile)).mean())
    return float(np.percentile(calm, 10) * np.sqrt(np.pi / 2) / 6)


def _ripple(tile: Array) -> Array:
    rows = tile[:-2] - 2 * tile[1:-1] + tile[2:]
    return np.asarray(rows[:, :-2] - 2 * rows[:, 1:-1] + rows[:, 2:])
