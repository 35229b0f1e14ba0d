"""The colour of a patch under neutral light, and how far it is from the colours of states.

What comes out is a suggestion in order of distance. It never becomes a finding by itself: the
person looks, and says which state it is.
"""

from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from PIL import Image

from idkey.engine.colour import (
    ciede2000,
    hex_of_rgb,
    lab_of_hex,
    lab_of_linear,
    linear_of_rgb,
    neutralised,
    rgb_of_lab,
)
from idkey.engine.normal import Array
from idkey.model.character import Character, State
from idkey.photo.faults import PictureError
from idkey.photo.marks import Box, Neutral
from idkey.photo.quality import SHARP_PX, cropped, fitness

BLOWN = 253
"""Level of 255 from which on a channel says nothing more."""

BLOWN_SHARE = 0.01
LEAST_PIXELS = 100
UNEVEN = 0.10
UNDEREXPOSED = 0.25
TINTED = 0.35
PATCHY = 12.0
FAR = 15.0
TOO_ALIKE = 5.0
"""Where warnings begin: share of blown-out pixels; pixels of a patch; spread of the light over
the reference; exposure below full; weakest over strongest channel of the reference; spread of
a patch, distance of the nearest state and lead over the next one in CIEDE2000.

Source: common practice, no source; the lead of 5 is somewhat above the mean error of corrected
colours under other lights than daylight, measured in docs/photo-accuracy.md.
"""

SHADES = 20.0
"""Colours of a state that are nearer than this (CIEDE2000) are the ends of one range."""

EXPOSURES = np.geomspace(0.5, 2.0, 9)
"""What an unknown neutral thing may do to the exposure."""


MOST_PIXELS = 5000
"""About how many pixels of a box are looked at."""


class Warn(StrEnum):
    """What makes a colour less sure."""

    CLIPPED = "clipped"
    REFERENCE_CLIPPED = "reference_clipped"
    DARK = "dark"
    TINTED = "tinted"
    UNEVEN = "uneven"
    BLURRED = "blurred"
    PATCHY = "patchy"
    SMALL = "small"
    NO_EXPOSURE = "no_exposure"
    MOULTED = "moulted"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sample:
    """The colour of a patch.

    Attributes:
        lab: Mean CIELAB (D65) as under neutral light.
        spread: Mean CIEDE2000 of its pixels from that mean.
        exposed: Whether its lightness is known, too.
        warnings: What makes it less sure, worst first.
    """

    lab: tuple[float, float, float]
    spread: float
    exposed: bool
    warnings: tuple[Warn, ...]

    @property
    def hex(self) -> str:
        """The colour as ``#rrggbb``."""
        return hex_of_rgb(rgb_of_lab(self.lab))


@dataclass(frozen=True, slots=True)
class Suggestion:
    """How far a patch is from a state.

    Attributes:
        state: The state.
        distance: CIEDE2000 to the nearest of its colours.
        colour: That colour, as ``#rrggbb``.
    """

    state: State
    distance: float
    colour: str


def sampled(
    picture: Image.Image,
    patch: Box,
    neutral: Box,
    *,
    reference: Neutral = Neutral.GREY_CARD,
    moulted: bool = False,
) -> Sample:
    """The colour of a patch, corrected by a neutral thing in the same light.

    Args:
        picture: The picture, upright, sRGB.
        patch: Where the colour is.
        neutral: Where the neutral thing is.
        reference: What it is; its reflectance sets the exposure.
        moulted: Whether the animal moulted within the last days.

    Raises:
        PictureError: A box lies outside the picture, or the neutral thing is black.
    """
    try:
        of_patch, of_neutral = (_levels(picture, box) for box in (patch, neutral))
        labs = _corrected(of_patch, of_neutral, reference.reflectance)
    except ValueError as err:
        raise PictureError(
            f"The colour cannot be read: {err}.",
            "Mark the patch and the neutral thing again, well inside their edges.",
        ) from err
    mean = labs.mean(axis=0)
    there = _warnings(of_patch, of_neutral, reference) | {
        Warn.PATCHY: (spread := float(ciede2000(labs, mean).mean())) > PATCHY,
        Warn.BLURRED: (fitness(picture, patch).edge_px or 0.0) > 2 * SHARP_PX,
        Warn.MOULTED: moulted,
    }
    return Sample(
        lab=tuple(mean.tolist()),
        spread=spread,
        exposed=reference.reflectance is not None,
        warnings=tuple(warn for warn in Warn if there[warn]),
    )


def _corrected(patch: Array, neutral: Array, reflectance: float | None) -> Array:
    """CIELAB of the pixels of a patch under neutral light; blown-out ones are left out."""
    kept = patch[~_blown(patch)]
    seen = linear_of_rgb((kept if len(kept) else patch) / 255)
    white = linear_of_rgb(neutral / 255).mean(axis=0)
    return lab_of_linear(neutralised(seen, white, reflectance))


def suggestions(sample: Sample, character: Character) -> tuple[Suggestion, ...]:
    """States that have reference colours, nearest first; none when no state has any."""
    found = [_nearest(sample, state) for state in character.states if state.colours]
    return tuple(sorted(found, key=lambda one: one.distance))


def decided(found: tuple[Suggestion, ...]) -> bool:
    """Whether the nearest state is near, and clearly nearer than the next one."""
    if not found or found[0].distance > FAR:
        return False
    return len(found) == 1 or found[1].distance - found[0].distance > TOO_ALIKE


def _nearest(sample: Sample, state: State) -> Suggestion:
    marks = _shades(state.colours)
    lab = np.array(sample.lab)
    seen = lab[None, :] if sample.exposed else _exposed(lab)
    distances = ciede2000(seen[:, None, :], marks[None, :, :]).min(axis=0)
    best = int(distances.argmin())
    return Suggestion(state, float(distances[best]), hex_of_rgb(rgb_of_lab(marks[best])))


def _shades(colours: tuple[str, ...]) -> Array:
    """The colours of a state, with what lies between those that are shades of one another."""
    labs = np.array([lab_of_hex(colour) for colour in colours])
    found = [labs]
    for one, other in pairwise(labs):
        if float(ciede2000(one, other)) < SHADES:
            share = np.linspace(0, 1, 7)[1:-1, None]
            found.append(one * (1 - share) + other * share)
    return np.concatenate(found)


def _exposed(lab: Array) -> Array:
    """The colour as it would be in more or less light: L*, a* and b* of scaled XYZ."""
    factor = np.cbrt(EXPOSURES)[:, None]
    scaled = lab[None, :] * factor
    scaled[:, 0] = (lab[0] + 16) * factor[:, 0] - 16
    return np.asarray(scaled)


def _levels(picture: Image.Image, box: Box) -> Array:
    """Pixels of a box, evenly thinned to what is plenty for a mean, shape (pixels, 3)."""
    levels = np.asarray(cropped(picture, box).convert("RGB"), dtype=float)
    step = max(1, round((levels.shape[0] * levels.shape[1] / MOST_PIXELS) ** 0.5))
    return np.asarray(levels[::step, ::step].reshape(-1, 3))


def _blown(levels: Array) -> NDArray[np.bool_]:
    return np.asarray((levels >= BLOWN).any(axis=1))


def _warnings(patch: Array, neutral: Array, reference: Neutral) -> dict[Warn, bool]:
    light = linear_of_rgb(neutral / 255)
    mean = light.mean(axis=0)
    brightness = light @ np.array([0.2126, 0.7152, 0.0722])
    exposure = float(brightness.mean()) / (reference.reflectance or 0.18)
    return {
        Warn.CLIPPED: bool(_blown(patch).mean() > BLOWN_SHARE),
        Warn.REFERENCE_CLIPPED: bool(_blown(neutral).mean() > BLOWN_SHARE),
        Warn.DARK: exposure < UNDEREXPOSED,
        Warn.TINTED: bool(mean.min() < TINTED * mean.max()),
        Warn.UNEVEN: float(brightness.std()) > UNEVEN * float(brightness.mean()),
        Warn.SMALL: min(len(patch), len(neutral)) < LEAST_PIXELS,
        Warn.NO_EXPOSURE: reference.reflectance is None,
    }
