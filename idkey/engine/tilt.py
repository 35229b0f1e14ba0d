"""What a tilted plane does to lengths in a picture, as a distribution over unknown tilts.

A person says in words how far a part leans away from the camera. That stands for a range of
angles; the direction of the lean and the distance of the camera are not known at all. Lengths
are followed through every one of a set of such views, so that parallel lines, which shorten
alike, and crossed lines, which do not, each get what is due to them.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from idkey.engine.normal import Array

Stroke = tuple[tuple[float, float], ...]
"""Points of one line in pixels, x to the right, y down; at least two."""

NEAREST, FARTHEST = 0.7, 4.0
"""Distance of the camera, as a multiple of the long side of what the picture shows.

0.7 is the whole picture of a phone's main camera, 4 a narrow cut from it or a long lens; any
between is held to be equally likely on a logarithmic scale. Source: common practice, no source.
"""

_DISTANCES = 8

_LEANS = 12
_DIRECTIONS = 20
_STEPS = 40


class Tilt(StrEnum):
    """How far a flat part leans away from a camera that looks straight at it."""

    FLAT = "flat"
    SLIGHT = "slight"
    CLEAR = "clear"

    @property
    def degrees(self) -> tuple[float, float]:
        """Smallest and largest lean; any between is held to be equally likely.

        The ranges overlap, since people judge tilts by eye. Source: common practice, no source.
        """
        return {"flat": (0.0, 10.0), "slight": (5.0, 25.0), "clear": (15.0, 45.0)}[self]

    @property
    def shortest(self) -> float:
        """Foreshortening bound: the least that is left of a length that leans most."""
        return math.cos(math.radians(self.degrees[1]))


@dataclass(frozen=True, slots=True)
class Views:
    """Equally likely ways in which a plane may lie before the camera.

    Attributes:
        normals: Unit normals of the plane, shape (views, 3); z points to the camera.
        distances: Distance of the camera in pixels, shape (views,).
        centre: Middle of the picture in pixels.
    """

    normals: Array
    distances: Array
    centre: tuple[float, float]


def views(tilt: Tilt, width: float, height: float) -> Views:
    """The views that a person's words stand for.

    Args:
        tilt: What the person said.
        width: Of the picture, in pixels.
        height: Of the picture, in pixels.
    """
    low, high = tilt.degrees
    lean = np.radians(low + (high - low) * (np.arange(_LEANS) + 0.5) / _LEANS)
    turn = 2 * np.pi * np.arange(_DIRECTIONS) / _DIRECTIONS
    shares = (np.arange(_DISTANCES) + 0.5) / _DISTANCES
    far = NEAREST * (FARTHEST / NEAREST) ** shares * max(width, height)
    lean, turn, far = (grid.ravel() for grid in np.meshgrid(lean, turn, far, indexing="ij"))
    normals = np.stack(
        (np.sin(lean) * np.cos(turn), np.sin(lean) * np.sin(turn), np.cos(lean)), axis=-1
    )
    return Views(normals, far, (width / 2, height / 2))


def stretch(
    strokes: Sequence[Stroke], seen: Views, pivot: tuple[float, float] | None = None
) -> Array:
    """Logarithm of true length over length in the picture, in each view.

    Args:
        strokes: The line, as often as it was drawn; the mean over them is taken.
        seen: The views.
        pivot: Point of the plane that lies at the same distance in every view; None takes the
            middle of the picture. Only differences between lines with one pivot mean anything.

    Returns:
        Shape (views,).
    """
    anchor = np.array([pivot if pivot is not None else seen.centre])
    scale = _depths(anchor, seen)
    total = np.zeros(len(seen.distances))
    for stroke in strokes:
        points = np.array(stroke, dtype=float)
        depths = _depths(points, seen) / scale
        flat = np.hypot(*np.diff(points, axis=0).T).sum()
        rays = np.concatenate(
            (
                np.broadcast_to(points - seen.centre, (len(depths), *points.shape)),
                np.broadcast_to(seen.distances[:, None, None], (len(depths), len(points), 1)),
            ),
            axis=-1,
        )
        steps = np.diff(rays * depths[..., None], axis=1)
        total += np.log(np.sqrt((steps**2).sum(axis=-1)).sum(axis=-1) / flat)
    return np.asarray(total / len(strokes))


def _depths(points: Array, seen: Views) -> Array:
    """Distance along the camera's axis at which rays meet the plane, shape (views, points).

    In units of the distance at the middle of the picture; rays that graze the plane are held
    at three times that distance, since no part reaches further back.
    """
    rays = np.column_stack((points - seen.centre, np.zeros(len(points))))
    slopes = rays @ seen.normals.T / (seen.distances * seen.normals[:, 2])
    return np.asarray(1 / np.maximum(1 + slopes.T, 1 / 3))


def summed(one: Array, other: Array, half_width: float = 0.0) -> Array:
    """Equally likely values of the sum of two independent quantities.

    Args:
        one: Equally likely values of the first.
        other: Equally likely values of the second.
        half_width: A third, evenly spread from minus to plus this.
    """
    third = half_width * (2 * (np.arange(9) + 0.5) / 9 - 1) if half_width else np.zeros(1)
    parts = thinned(one)[:, None, None], thinned(other)[None, :, None], third[None, None, :]
    return np.asarray((parts[0] + parts[1] + parts[2]).ravel())


def thinned(values: Array, to: int = _STEPS) -> Array:
    """So many equally likely values, in order, that stand for all of them."""
    return np.asarray(np.quantile(values, (np.arange(to) + 0.5) / to))
