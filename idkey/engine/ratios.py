"""The distribution of a ratio of two uncertain numbers, and Student's t."""

import math
from collections.abc import Callable

import numpy as np

from idkey.engine.normal import Array, below

Z95 = 1.959963984540054
"""Half width of the 95 % interval of a standard normal."""


def quantiles(
    upper: tuple[float, float],
    lower: tuple[float, float],
    stretches: Array,
    correlation: float = 0.0,
) -> tuple[float, float, float]:
    """2.5, 50 and 97.5 % points of a ratio times exp(stretch).

    P(ratio <= x) is the chance that upper - x lower is negative, a normal one; its points
    without stretch are Fieller's limits.
    """
    (a, ua), (b, ub) = upper, lower

    def risen(x: float) -> float:
        at = x * np.exp(-stretches)
        spread = np.sqrt(ua**2 - 2 * correlation * ua * ub * at + (at * ub) ** 2)
        return float(np.mean(below((at * b - a) / np.maximum(spread, 1e-12 * a))))

    wide = 8 * math.hypot(ua / a, ub / b)
    ends = a / b * np.exp([stretches.min(), stretches.max()])
    bottom, top = float(ends[0]) / (1 + wide), float(ends[1]) * (1 + wide)
    return (
        _solved(risen, 0.025, bottom, top),
        _solved(risen, 0.5, bottom, top),
        _solved(risen, 0.975, bottom, top),
    )


def _solved(risen: Callable[[float], float], share: float, low: float, high: float) -> float:
    """Where the rising function reaches `share`, by halving."""
    for _ in range(48):
        middle = (low + high) / 2
        low, high = (middle, high) if risen(middle) < share else (low, middle)
    return (low + high) / 2


def student95(freedom: float) -> float:
    """Half width of the 95 % interval of Student's t; within 0.2 % from three degrees on.

    Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, formula 26.7.5.
    """
    z, n = Z95, 4 * freedom
    terms = (
        z,
        (z**3 + z) / n,
        (5 * z**5 + 16 * z**3 + 3 * z) / (6 * n**2),
        (3 * z**7 + 19 * z**5 + 17 * z**3 - 15 * z) / (6 * n**3),
        (79 * z**9 + 776 * z**7 + 1482 * z**5 - 1920 * z**3 - 945 * z) / (360 * n**4),
    )
    return sum(terms)
