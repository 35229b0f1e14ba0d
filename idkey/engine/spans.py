"""What a printed range says about the next animal.

A printed range is no limit: it is what somebody saw on n animals. So support takes a normal where
mean and sd or n are known, and otherwise a flat range with soft shoulders; a number conflicts only
beyond what n animals leave unseen.
"""

from dataclasses import dataclass

import numpy as np

from idkey.engine.normal import Array, below, density
from idkey.model.score import Spans

UNKNOWN_N = 5
"""Animals a range counts for when its source does not say."""

SHOULDER = 0.15
"""Shoulder of a flat range as a share of its width."""

REACH = 2.576
"""Standard deviations from the middle beyond which a number conflicts (99 % inside)."""

COUNT_SLACK = 0.4
"""Room around a whole number; with an ordinary counting error one tooth off conflicts."""

_SIZES = (2, 3, 4, 5, 10, 15, 20, 30, 50, 100)
_D2 = (1.128, 1.693, 2.059, 2.326, 3.078, 3.472, 3.735, 4.086, 4.498, 5.015)


def expected_width(n: int) -> float:
    """Expected range of n normal values, in standard deviations.

    Source: Tippett 1925, Biometrika 17: 364-387, table X (the control-chart constant d2);
    values between the listed n are interpolated on log n, beyond 100 held.
    """
    return float(np.interp(np.log(max(n, 2)), np.log(_SIZES), _D2))


@dataclass(frozen=True, slots=True)
class Bell:
    """The density of one cell: a flat stretch from `low` to `high` blurred by `sd`.

    A plain normal is a stretch of no width. All in the unit of the character.
    """

    low: float
    high: float
    sd: float

    def spread(self) -> tuple[float, float]:
        """From where to where practically all of it lies."""
        return self.low - 4 * self.sd, self.high + 4 * self.sd


def bell(spans: Spans, *, noise: float, count: bool, edge: tuple[float, float]) -> Bell:
    """The density that a printed range stands for.

    Args:
        spans: What the source prints.
        noise: Standard uncertainty of one measurement.
        count: Whether the character is a count: whole numbers, half a unit on either side.
        edge: Where an open bound ends, as (lowest, highest) of the whole column.
    """
    if spans.mean is not None and spans.sd is not None:
        return _normal(spans.mean, spans.sd * (1 + 1 / (spans.n or UNKNOWN_N)) ** 0.5, noise)
    low = min(edge[0], _least(spans)) if spans.low is None else spans.low
    high = max(edge[1], _most(spans)) if spans.high is None else spans.high
    if low < high and spans.n and spans.low is not None and spans.high is not None:
        middle = (low + high) / 2 if spans.mean is None else spans.mean
        return _normal(middle, (high - low) / expected_width(spans.n), noise)
    if spans.low is None and spans.high is None and spans.mean is not None:
        return _normal(spans.mean, 0.1 * abs(spans.mean), noise)
    half = 0.5 if count else 0.0
    shoulder = ((SHOULDER * (high - low)) ** 2 + noise**2) ** 0.5
    return Bell(low - half, high + half, max(shoulder, 1e-9))


def _normal(mean: float, sd: float, noise: float) -> Bell:
    return Bell(mean, mean, max((sd**2 + noise**2) ** 0.5, 1e-9))


def _least(spans: Spans) -> float:
    return min(x for x in (spans.low, spans.high, spans.mean) if x is not None)


def _most(spans: Spans) -> float:
    return max(x for x in (spans.low, spans.high, spans.mean) if x is not None)


def limits(spans: Spans, *, noise: float, count: bool = False) -> tuple[float, float]:
    """The smallest and largest value that does not conflict; infinite where open.

    Args:
        spans: What the source prints.
        noise: Standard uncertainty of the measurement at hand.
        count: Whether the character is a count.
    """
    n = spans.n or UNKNOWN_N
    slack = COUNT_SLACK if count else 0.0
    if spans.mean is not None and spans.sd is not None:
        reach = REACH * (spans.sd**2 * (1 + 1 / n) + noise**2) ** 0.5
        return spans.mean - reach, spans.mean + reach
    if spans.low is not None and spans.high is not None:
        sd = (spans.high - spans.low) / expected_width(n)
        middle = (spans.low + spans.high) / 2
        reach = max(REACH * (sd**2 + noise**2) ** 0.5, (spans.high - spans.low) / 2)
        return middle - reach - slack, middle + reach + slack
    if spans.low is None and spans.high is None:
        mean = spans.mean or 0.0
        reach = REACH * ((0.1 * mean) ** 2 + noise**2) ** 0.5
        return mean - reach, mean + reach
    if spans.high is not None:
        return -np.inf, spans.high + slack + REACH * (_unseen(spans.high) ** 2 + noise**2) ** 0.5
    low = spans.low or 0.0
    return low - slack - REACH * (_unseen(low) ** 2 + noise**2) ** 0.5, np.inf


def _unseen(bound: float) -> float:
    """Scatter behind a single bound: 5 % of it. Source: common practice, no source."""
    return 0.05 * abs(bound)


def printed(spans: Spans, value: float) -> bool:
    """Whether `value` lies in the range as printed, ends included; open bounds are open."""
    return (spans.low is None or spans.low <= value) and (spans.high is None or value <= spans.high)


def heights(low: Array, high: Array, sd: Array, value: Array | float) -> Array:
    """Density at `value` of cells with these bells; all arguments broadcast together."""
    width = high - low
    flat = below((high - value) / sd) - below((low - value) / sd)
    wide = flat / np.where(width > 0, width, 1.0)
    return np.asarray(np.where(width > 1e-9 * sd, wide, density((value - low) / sd) / sd))


def shares_below(low: Array, high: Array, sd: Array, edges: Array) -> Array:
    """P(value <= edge) per cell and edge.

    Args:
        low: Shape (n,).
        high: Shape (n,).
        sd: Shape (n,).
        edges: Shape (k,).

    Returns:
        Shape (n, k).
    """
    low, high, sd = low[:, None], high[:, None], sd[:, None]
    a, b = (edges - low) / sd, (edges - high) / sd
    width = (high - low) / sd
    area = a * below(a) + density(a) - b * below(b) - density(b)
    return np.asarray(np.where(width > 1e-9, area / np.where(width > 0, width, 1.0), below(a)))
