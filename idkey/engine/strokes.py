"""Lines drawn on a picture: how long they are, and how exactly their points were clicked."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

import numpy as np

from idkey.engine.normal import Array
from idkey.engine.tilt import Stroke

CLICK_DOUBT = 0.2
"""Relative uncertainty of a stated click error; by GUM G.4.2 it is worth 12.5 degrees of freedom.

Source: common practice, no source.
"""

LONGEST_DOUBT = 0.25
"""Largest relative standard uncertainty of a line that is still used."""


class Edge(StrEnum):
    """How well the end points of a line can be seen."""

    SHARP = "sharp"
    ORDINARY = "ordinary"
    SOFT = "soft"

    @property
    def click_px(self) -> float:
        """Standard uncertainty of one click, per axis. Source: common practice, no source."""
        return {"sharp": 1.0, "ordinary": 2.0, "soft": 5.0}[self]


@dataclass(frozen=True, slots=True)
class Line:
    """One line, as often as it was drawn.

    Attributes:
        strokes: The repeats; at least one, each with at least two points that differ.
    """

    strokes: tuple[Stroke, ...]

    def __post_init__(self) -> None:
        if not self.strokes or any(length_px(stroke) <= 0 for stroke in self.strokes):
            raise ValueError("a line needs two points that differ")


def length_px(stroke: Stroke) -> float:
    """Length of a line in the picture, along all its points."""
    return sum(math.dist(a, b) for a, b in pairwise(stroke))


@dataclass(frozen=True, slots=True)
class Drawn:
    """The lengths of one line, put together.

    Attributes:
        length: Best estimate, in pixels.
        click: Standard uncertainty from clicks.
        bend: Standard uncertainty from cut corners.
    """

    length: float
    click: float
    bend: float


@dataclass(frozen=True, slots=True)
class Clicks:
    """How exactly points were clicked.

    Attributes:
        px: Standard uncertainty of one click, per axis.
        freedom: Degrees of freedom of it.
        restless: Whether repeats scatter more than what was stated explains.
    """

    px: float
    freedom: float
    restless: bool


def clicks(lines: Sequence[Line], stated_px: float) -> Clicks:
    """The click error from what was stated and from how repeats scatter, pooled (GUM 4.2.4)."""
    stated, freedom = stated_px**2, 0.5 / CLICK_DOUBT**2
    squares, repeats = 0.0, 0
    for line in lines:
        lengths = [length_px(stroke) for stroke in line.strokes]
        if len(lengths) > 1:
            gain = float(np.mean([_gain(stroke) for stroke in line.strokes]))
            squares += (len(lengths) - 1) * float(np.var(lengths, ddof=1)) / gain
            repeats += len(lengths) - 1
    if repeats > 1 and squares / repeats > stated * _chance(repeats):
        return Clicks(math.sqrt(squares / repeats), repeats, restless=True)
    pooled = (freedom * stated + squares) / (freedom + repeats)
    return Clicks(math.sqrt(pooled), freedom + repeats, restless=False)


def _chance(freedom: int) -> float:
    """What a variance over the true one exceeds once in a thousand.

    Source: Wilson & Hilferty 1931, Proc. Natl. Acad. Sci. 17: 684-688.
    """
    return (1 - 2 / (9 * freedom) + 3.0902 * math.sqrt(2 / (9 * freedom))) ** 3


def _gain(stroke: Stroke) -> float:
    """Variance of a length for a click variance of one: sum of squared derivatives."""
    steps = np.diff(np.array(stroke), axis=0)
    ways = steps / np.maximum(np.hypot(*steps.T), 1e-9)[:, None]
    return 2.0 + float((np.diff(ways, axis=0) ** 2).sum())


def drawn(line: Line, click_px: float) -> Drawn:
    """Mean length, cleared of what shaky clicks and cut corners do to it on average.

    Two shaky points lie farther apart than the true ones by variance over distance; a curve is
    longer than its polyline by up to step times turn squared over 24 at each step.
    """
    lengths, bends = [], []
    for stroke in line.strokes:
        steps = np.diff(np.array(stroke), axis=0)
        far = np.hypot(*steps.T)
        shaky = float((click_px**2 / np.maximum(far, click_px * 2)).sum())
        bend = _bend(steps, far)
        lengths.append(float(far.sum()) - shaky + bend / 2)
        bends.append(bend)
    gain = float(np.mean([_gain(stroke) for stroke in line.strokes]))
    whole = Drawn(
        length=float(np.mean(lengths)),
        click=click_px * math.sqrt(gain / len(lengths)),
        bend=float(np.mean(bends)) / math.sqrt(12),
    )
    if whole.click > LONGEST_DOUBT * whole.length:
        raise ValueError("the line is too short for how exactly it can be clicked")
    return whole


def _bend(steps: Array, far: Array) -> float:
    """Bound of what cutting the corners of a smooth curve takes off its length."""
    if len(steps) < 2:
        return 0.0
    ways = np.arctan2(steps[:, 1], steps[:, 0])
    turns = np.abs((np.diff(ways) + np.pi) % (2 * np.pi) - np.pi)
    inner = (turns[:-1] + turns[1:]) / 2
    per_step = np.concatenate((turns[:1], inner, turns[-1:]))
    return float((far * np.minimum(per_step, 1.0) ** 2 / 24).sum())
