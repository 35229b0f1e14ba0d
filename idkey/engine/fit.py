"""Whether the findings are plausible under a taxon in themselves.

A high support only says that one taxon beats the others. So the likelihood of the findings is
held against its own distribution under the taxon, exactly, by convolution on a fine grid.
"""

import numpy as np

from idkey.engine.confusion import DOUBT
from idkey.engine.evidence import Evidence
from idkey.engine.matrix import Matrix
from idkey.engine.normal import Array
from idkey.engine.spans import heights
from idkey.engine.weighing import Weighing

GRID = 0.01
"""Width of a step of the grid, in nats."""

POINTS = 256
"""Points at which a density is sampled."""


def fit_p(matrix: Matrix, weighing: Weighing, row: int) -> float | None:
    """P(findings less likely than these | the taxon in `row`), ties counting half.

    Only findings on characters the taxon is scored for count.

    Returns:
        A share in (0, 1], about uniform under the taxon; None without such findings.

    Source: the mid-p value, Lancaster 1961, J. Amer. Statist. Assoc. 56: 223-234.
    """
    total, mass, offset = 0.0, np.ones(1), 0.0
    tested = [one for one in weighing.evidence if matrix.whole[row, one.number]]
    for one in tested:
        shares, levels = _outcomes(matrix, one, row)
        levels = one.weight * levels
        total += one.weight * float(np.log(one.likelihood[row]))
        mass, offset = _add(mass, offset, shares, levels)
    if not tested:
        return None
    steps = np.arange(len(mass)) * GRID + offset
    slack = GRID * (len(tested) / 2 + 0.5)
    lower = mass[steps < total - slack].sum()
    tie = mass[np.abs(steps - total) <= slack].sum()
    return float(min(1.0, max(lower + tie / 2, 1e-12)))


def _add(mass: Array, offset: float, shares: Array, levels: Array) -> tuple[Array, float]:
    """The distribution of a sum with one more independent term."""
    low = float(levels.min())
    steps = np.rint((levels - low) / GRID).astype(int)
    grid = np.bincount(steps, weights=shares)
    return np.convolve(mass, grid), offset + low


def _outcomes(matrix: Matrix, one: Evidence, row: int) -> tuple[Array, Array]:
    """What could have been found: the share of each outcome and its log-likelihood."""
    if one.number in matrix.numbers:
        return _number_outcomes(matrix, one, row)
    doubt = DOUBT[one.finding.certainty]
    seen = np.asarray(matrix.seen[row, matrix.columns(one.number)], dtype=float)
    if len(one.finding.states) == 1 and not one.finding.negated:
        shares = (1 - doubt) * seen + doubt / len(seen)
    else:
        hit = float(one.likelihood[row])
        shares = np.array([hit, max(1 - hit, 1e-12)])
    shares = shares[shares > 0]
    return shares / shares.sum(), np.log(shares)


def _number_outcomes(matrix: Matrix, one: Evidence, row: int) -> tuple[Array, Array]:
    bells = matrix.numbers[one.number]
    grid = np.linspace(bells.range[0], bells.range[1], POINTS)
    sd = np.hypot(bells.sd[:, row], bells.beyond(one.finding.uncertainty))
    tops = heights(bells.low[:, row, None], bells.high[:, row, None], sd[:, None], grid)
    high = (bells.share[:, row, None] * tops).sum(axis=0)
    doubt = DOUBT[one.finding.certainty]
    density = (1 - doubt) * ((1 - bells.error) * high + bells.error * bells.flat)
    density += doubt * bells.flat
    return density / density.sum(), np.log(density)
