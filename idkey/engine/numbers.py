"""Numeric characters: densities for judging a number, bins for choosing the next question."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from idkey.engine.normal import Array
from idkey.engine.spans import REACH, bell, heights, limits, shares_below
from idkey.model.character import Character, Kind
from idkey.model.score import Score, Spans

BINS = 32
"""Bins of equal mass that stand for a number when the next question is chosen."""

NOISE_SHARE = 0.02
"""Standard uncertainty of a measurement, as a share of the column's middle value, where the
character gives none. Source: common practice, no source."""

NOISE_COUNT = 0.2
"""The same for a count, in units: slips of one are rare and mostly caught by the error rate."""

Part = tuple[float, Score | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class Bells:
    """Densities of one numeric character over all taxa.

    Attributes:
        share: Share of each part of a cell, shape (parts, taxa); zero where there is no part.
        low: Start of the flat stretch, same shape.
        high: End of the flat stretch, same shape.
        sd: Blur, same shape; `noise` is in it.
        least: Smallest value that does not conflict, shape (taxa,); minus infinity if unknown.
        most: Largest value that does not conflict, shape (taxa,); infinity if unknown.
        printed: Smallest and largest printed value, shape (2, taxa); an open bound is infinite,
            an unscored taxon has infinity below minus infinity.
        edges: Inner edges of the bins, shape (bins - 1,).
        range: From where to where values of this character can lie.
        error: Share of slips, which fall anywhere in `range`.
        noise: Standard uncertainty of an ordinary measurement.
    """

    share: Array
    low: Array
    high: Array
    sd: Array
    least: Array
    most: Array
    printed: Array
    edges: Array
    range: tuple[float, float]
    error: float
    noise: float

    @property
    def flat(self) -> float:
        """Density of "anywhere in the range"."""
        return 1.0 / (self.range[1] - self.range[0])

    def beyond(self, uncertainty: float | None) -> float:
        """Standard uncertainty beyond `noise`; never negative."""
        if uncertainty is None:
            return 0.0
        return float(max(uncertainty**2 - self.noise**2, 0.0) ** 0.5)

    def at(self, value: float, uncertainty: float | None = None) -> Array:
        """Density of `value` per taxon, slips included, shape (taxa,)."""
        sd = np.hypot(self.sd, self.beyond(uncertainty))
        top = (self.share * heights(self.low, self.high, sd, value)).sum(axis=0)
        return np.asarray((1 - self.error) * top + self.error * self.flat)

    def conflict(self, value: float, uncertainty: float | None = None) -> NDArray[np.bool_]:
        """Whether `value` lies beyond what a taxon can show, shape (taxa,)."""
        slack = REACH * self.beyond(uncertainty)
        return np.asarray((value < self.least - slack) | (value > self.most + slack))


def number_column(
    character: Character, cells: tuple[tuple[Part, ...], ...], absent: Array, *, error: float
) -> tuple[Bells, Array]:
    """Densities of a numeric character and the share of each bin.

    Args:
        character: A numeric character.
        cells: Parts per taxon; None is unknown.
        absent: Taxa that lack the part, shape (taxa,).
        error: Chance of a slip.

    Returns:
        The densities, and shares of shape (taxa, bins) that sum to one for scored taxa.
    """
    edge = _edge(cells)
    noise = _noise(character, edge)
    count = character.kind is Kind.COUNT
    share, low, high, sd = _bells(cells, edge, noise=noise, count=count)
    reach = _range(share, low, high, sd, edge)
    least, most = _limits(cells, absent, noise=noise, count=count)
    edges = _edges(share, low, high, sd, reach)
    bells = Bells(
        share=share,
        low=low,
        high=high,
        sd=sd,
        least=least,
        most=most,
        printed=_printed(cells),
        edges=edges,
        range=reach,
        error=error,
        noise=noise,
    )
    return bells, _bin_shares(bells)


def _bells(
    cells: tuple[tuple[Part, ...], ...], edge: tuple[float, float], *, noise: float, count: bool
) -> tuple[Array, Array, Array, Array]:
    """Share, start, end and blur of each part of each cell, each of shape (parts, taxa)."""
    deep = max((len(cell) for cell in cells), default=1)
    share, low, high = (np.zeros((deep, len(cells))) for _ in range(3))
    sd = np.ones((deep, len(cells)))
    for taxon, cell in enumerate(cells):
        spans = [(s, score.value) for s, score in cell if score and isinstance(score.value, Spans)]
        total = sum(s for s, _ in spans)
        for part, (weight, value) in enumerate(spans):
            one = bell(value, noise=noise, count=count, edge=edge)
            share[part, taxon] = weight / total
            low[part, taxon], high[part, taxon], sd[part, taxon] = one.low, one.high, one.sd
    return share, low, high, sd


def _edge(cells: tuple[tuple[Part, ...], ...]) -> tuple[float, float]:
    """Lowest and highest number printed anywhere in the column."""
    numbers = [
        x
        for cell in cells
        for _, score in cell
        if score is not None and isinstance(score.value, Spans)
        for x in (score.value.low, score.value.high, score.value.mean)
        if x is not None
    ]
    return (min(numbers), max(numbers)) if numbers else (0.0, 1.0)


def _noise(character: Character, edge: tuple[float, float]) -> float:
    if character.uncertainty is not None:
        return character.uncertainty
    if character.kind is Kind.COUNT:
        return NOISE_COUNT
    return NOISE_SHARE * max(abs(edge[0]), abs(edge[1])) or 1e-6


def _range(
    share: Array, low: Array, high: Array, sd: Array, edge: tuple[float, float]
) -> tuple[float, float]:
    if not share.any():
        return edge[0] - 0.5, edge[1] + 0.5
    there = share > 0
    return float((low - 4 * sd)[there].min()), float((high + 4 * sd)[there].max())


def _limits(
    cells: tuple[tuple[Part, ...], ...], absent: Array, *, noise: float, count: bool
) -> tuple[Array, Array]:
    least, most = np.full(len(cells), -np.inf), np.full(len(cells), np.inf)
    for taxon, cell in enumerate(cells):
        if absent[taxon]:
            least[taxon], most[taxon] = np.inf, -np.inf
        elif all(score is not None for _, score in cell):
            ends = [
                limits(score.value, noise=noise, count=count)
                for _, score in cell
                if score and isinstance(score.value, Spans)
            ]
            least[taxon] = min((a for a, _ in ends), default=np.inf)
            most[taxon] = max((b for _, b in ends), default=-np.inf)
    return least, most


def _printed(cells: tuple[tuple[Part, ...], ...]) -> Array:
    ends = np.array([[np.inf] * len(cells), [-np.inf] * len(cells)])
    for taxon, cell in enumerate(cells):
        for _, score in cell:
            if score is not None and isinstance(score.value, Spans):
                low, high = _ends(score.value)
                ends[0, taxon] = min(ends[0, taxon], low)
                ends[1, taxon] = max(ends[1, taxon], high)
    return ends


def _ends(spans: Spans) -> tuple[float, float]:
    """The range as printed; a lone mean stands for itself."""
    if spans.low is None and spans.high is None and spans.mean is not None:
        return spans.mean, spans.mean
    low = -np.inf if spans.low is None else spans.low
    return low, np.inf if spans.high is None else spans.high


def _edges(share: Array, low: Array, high: Array, sd: Array, reach: tuple[float, float]) -> Array:
    """Inner edges that cut the mixture of all taxa into bins of equal mass."""
    grid = np.linspace(reach[0], reach[1], 32 * BINS + 1)
    there = share > 0
    if not there.any():
        return grid[32:-1:32]
    risen = shares_below(low[there], high[there], sd[there], grid)
    mixture = np.average(risen, axis=0, weights=share[there])
    return np.asarray(np.interp(np.arange(1, BINS) / BINS, mixture, grid))


def _bin_shares(bells: Bells) -> Array:
    """P(bin | taxon), slips included; zero rows for taxa without a range."""
    deep, taxa = bells.share.shape
    risen = shares_below(bells.low.ravel(), bells.high.ravel(), bells.sd.ravel(), bells.edges)
    below = (bells.share[:, :, None] * risen.reshape(deep, taxa, -1)).sum(axis=0)
    there = bells.share.sum(axis=0)[:, None]
    full = np.hstack([np.zeros((taxa, 1)), below, there])
    shares = np.diff(full, axis=1).clip(min=0.0)
    flat = np.diff(np.concatenate([[bells.range[0]], bells.edges, [bells.range[1]]])) * bells.flat
    return np.asarray((1 - bells.error) * shares + bells.error * flat * there)
