"""From lines on a picture to a number with its uncertainty.

Clicks, repeats, the ruler, bends and tilt are combined by the law of propagation (JCGM 100:2008,
"GUM", clause 5). The 95 % interval comes from the distributions themselves (JCGM 101:2008),
since a tilt is not normal and a ratio of short lines is not either: for a ratio without tilt it
is Fieller's (Fieller 1954, J. R. Statist. Soc. B 16: 175-185), which holds also where the
standard uncertainty of the lower line exceeds 5 % of it.
"""

import math
from dataclasses import dataclass, field
from enum import StrEnum

import numpy as np

from idkey.engine.normal import Array
from idkey.engine.ratios import Z95, quantiles, student95
from idkey.engine.strokes import LONGEST_DOUBT, Edge, Line, clicks, drawn
from idkey.engine.tilt import Tilt, stretch, summed, thinned, views

HEIGHT = 0.05
"""Half width of the relative error of a length against a thing that lies higher or lower.

15 mm at 300 mm from the camera. Source: similar triangles; the height is common practice.
"""


class Lie(StrEnum):
    """How two measured things lie to each other."""

    TOGETHER = "together"
    APART = "apart"


class Cause(StrEnum):
    """Where a part of the uncertainty comes from."""

    CLICKS = "clicks"
    BENDS = "bends"
    TILT = "tilt"
    SCALE = "scale"


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """How a picture was taken, in the words of the person.

    Attributes:
        width: Of the picture, in pixels.
        height: Of the picture, in pixels.
        tilt: How far the part leans.
        lie: Whether both lines (or part and ruler) lie in one plane.
        edge: How well end points can be seen.
    """

    width: float
    height: float
    tilt: Tilt = Tilt.FLAT
    lie: Lie = Lie.TOGETHER
    edge: Edge = Edge.ORDINARY


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """The length of the thing the scale is taken from.

    Attributes:
        length: In the unit wanted.
        uncertainty: Standard uncertainty of it.
    """

    length: float
    uncertainty: float = 0.0

    def __post_init__(self) -> None:
        if not self.length > 0 or self.uncertainty < 0:
            raise ValueError("a known length is positive and its uncertainty not negative")


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """A number and how far it can be trusted.

    Attributes:
        value: Best estimate: half of the distribution lies below.
        low: Lower end of the 95 % interval.
        high: Upper end.
        budget: Standard uncertainty by cause, in the unit of `value`; empty parts are left out.
        click_px: Click error that was used.
        restless: Whether repeats scatter more than the stated click error explains; then they
            alone say how exact the clicks were.
    """

    value: float
    low: float
    high: float
    budget: tuple[tuple[Cause, float], ...] = field(default=())
    click_px: float = 0.0
    restless: bool = False

    @property
    def combined(self) -> float:
        """Combined standard uncertainty: the root of the summed squares of the budget."""
        return math.hypot(*(part for _, part in self.budget))

    @property
    def uncertainty(self) -> float:
        """Standard uncertainty to hand on.

        It is `combined`, or that of a normal distribution with a 95 % interval as wide as this
        one where that is larger.
        """
        return max(self.combined, (self.high - self.low) / (2 * Z95))


def ratio(upper: Line, lower: Line, setting: Setting, factor: float = 1.0) -> Measured:
    """How many times longer `upper` is than `lower`.

    Args:
        upper: One line.
        lower: The other, on the same picture.
        setting: How the picture was taken.
        factor: 100 for per cent.

    Raises:
        ValueError: A line is too short for how exactly it can be clicked.
    """
    tilts = (setting.tilt, setting.tilt)
    return _measured(upper, lower, setting=setting, tilts=tilts, known=Known(length=factor))


def length(line: Line, ruler: Line, known: Known, setting: Setting) -> Measured:
    """Length of `line` in the unit of `known`.

    Args:
        line: The line.
        ruler: A line along the thing of known length, on the same picture.
        known: How long that thing is.
        setting: How the picture was taken; a ruler that lies apart is held to be flat.

    Raises:
        ValueError: A line is too short for how exactly it can be clicked.
    """
    tilts = (setting.tilt, Tilt.FLAT)
    return _measured(line, ruler, setting=setting, tilts=tilts, known=known)


def count(sure: int, doubtful: int = 0) -> Measured:
    """A count in which each doubtful mark is there or not with the same chance."""
    if sure < 0 or doubtful < 0:
        raise ValueError("a count is not negative")
    spread = math.sqrt(doubtful) / 2
    budget = ((Cause.CLICKS, spread),) if doubtful else ()
    return Measured(value=sure + doubtful / 2, low=sure, high=sure + doubtful, budget=budget)


def quotient(
    upper: tuple[float, float], lower: tuple[float, float], *, correlation: float = 0.0
) -> Measured:
    """Ratio of two estimates, each given with its standard uncertainty.

    Raises:
        ValueError: The lower one is not set apart from zero.
    """
    (a, ua), (b, ub) = upper, lower
    if ub > LONGEST_DOUBT * b:
        raise ValueError("the lower number is not set apart from zero")
    mixed = 2 * correlation * ua * ub / (a * b)
    spread = a / b * math.sqrt((ua / a) ** 2 + (ub / b) ** 2 - mixed)
    low, middle, high = quantiles(upper, lower, np.zeros(1), correlation)
    return Measured(value=middle, low=low, high=high, budget=((Cause.CLICKS, spread),))


def _measured(
    upper: Line, lower: Line, *, setting: Setting, tilts: tuple[Tilt, Tilt], known: Known
) -> Measured:
    shaky = clicks((upper, lower), setting.edge.click_px)
    one, two = drawn(upper, shaky.px), drawn(lower, shaky.px)
    stretches = _stretches(upper, lower, setting, tilts)
    share = {
        Cause.CLICKS: math.hypot(one.click / one.length, two.click / two.length),
        Cause.BENDS: math.hypot(one.bend / one.length, two.bend / two.length),
        Cause.TILT: float(np.std(stretches)),
        Cause.SCALE: known.uncertainty / known.length,
    }
    # Welch & Satterthwaite (GUM G.4.1): of all parts only the clicks are not known well.
    total = math.hypot(*share.values())
    freedom = shaky.freedom * (total / share[Cause.CLICKS]) ** 4
    widen = student95(freedom) / Z95
    beside = share[Cause.SCALE] * one.length
    low, middle, high = (
        known.length * x
        for x in quantiles(
            (one.length, widen * math.hypot(one.click, one.bend, beside)),
            (two.length, widen * math.hypot(two.click, two.bend)),
            thinned(stretches, 200),
        )
    )
    return Measured(
        value=middle,
        low=low,
        high=high,
        budget=tuple((cause, part * middle) for cause, part in share.items() if part),
        click_px=shaky.px,
        restless=shaky.restless,
    )


def _stretches(upper: Line, lower: Line, setting: Setting, tilts: tuple[Tilt, Tilt]) -> Array:
    """Equally likely logarithms of what tilt does to the ratio of two lines."""
    one = views(tilts[0], setting.width, setting.height)
    if setting.lie is Lie.TOGETHER:
        return np.asarray(stretch(upper.strokes, one) - stretch(lower.strokes, one))
    two = views(tilts[1], setting.width, setting.height)
    return summed(
        stretch(upper.strokes, one, _middle(upper)),
        -stretch(lower.strokes, two, _middle(lower)),
        HEIGHT,
    )


def _middle(line: Line) -> tuple[float, float]:
    x, y = np.mean([np.mean(np.array(stroke), axis=0) for stroke in line.strokes], axis=0)
    return float(x), float(y)
