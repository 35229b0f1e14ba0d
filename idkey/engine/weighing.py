"""Support, conflicts and separators of all taxa at once, on arrays."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from idkey.engine.evidence import Evidence, Flags, evidence
from idkey.engine.matrix import BACKGROUND, Matrix
from idkey.engine.normal import Array
from idkey.model.case import Case

Prior = Mapping[str, float]

RATIO = 5.0 * (1 - 1e-9)
"""A finding separates two taxa when it is at least this much likelier under one of them: five
times, or what is that but for rounding."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighing:
    """All taxa weighed against the findings of a case.

    Attributes:
        evidence: The findings that say something.
        support: P(taxon | findings), background last, shape (taxa + 1,); sums to one.
        firm: Conflicts that may rule out alone, shape (taxa,).
        soft: Conflicts that may only rule out together, shape (taxa,).
        ruled_out: Taxa with more conflicts than the case tolerates, shape (taxa,).
        order: Rows, standing ones by support, then ruled-out ones by conflicts, shape (taxa,).
    """

    evidence: tuple[Evidence, ...]
    support: Array
    firm: NDArray[np.int_]
    soft: NDArray[np.int_]
    ruled_out: Flags
    order: NDArray[np.intp]

    @property
    def leader(self) -> int:
        """Row of the best-supported taxon, ruled out or not."""
        return int(np.argmax(self.support[:-1]))

    @property
    def background(self) -> float:
        """Support of "not in this key"."""
        return float(self.support[-1])


def weigh(matrix: Matrix, case: Case, prior: Prior | None = None) -> Weighing:
    """Weigh all taxa against the findings.

    Args:
        matrix: The compiled key.
        case: The case; its order of findings does not matter.
        prior: Share per taxon id; None is flat. Taxa that are not named share what is left.

    Source: normalised likelihoods as in Willcox, Lapage & Holmes 1980, Antonie van Leeuwenhoek
    46: 233-299.
    """
    found = evidence(matrix, case)
    log = np.log(prior_shares(matrix, prior))
    taxa = len(matrix.taxa)
    firm, soft = np.zeros(taxa, int), np.zeros(taxa, int)
    for one in found:
        log = log + one.weight * np.log(one.likelihood)
        if one.firm:
            firm += one.conflict
        elif one.counts:
            soft += one.conflict
    # Rounded, so that equals are equal on every processor, and the first of them leads.
    log = np.round(log, 9)
    support = np.exp(log - log.max())
    support = _rounded(support / support.sum())
    ruled_out = (firm > case.tolerance) | (firm + soft > case.tolerance + 1)
    order = np.lexsort((-log[:-1], np.where(ruled_out, firm + soft, 0), ruled_out))
    return Weighing(
        evidence=found, support=support, firm=firm, soft=soft, ruled_out=ruled_out, order=order
    )


def _rounded(shares: Array) -> Array:
    """Shares that others may equal, to twelve digits: none becomes nothing, none becomes all."""
    digits, exponent = np.frexp(shares)
    return np.where(shares < 0.5, np.ldexp(np.round(digits, 12), exponent), shares)


def prior_shares(matrix: Matrix, prior: Prior | None) -> Array:
    """Prior per row, background last, shape (taxa + 1,); sums to one.

    Raises:
        ValueError: A share is not above 0, or the shares sum to more than 1.
    """
    taxa = len(matrix.taxa)
    if not prior:
        flat = np.full(taxa + 1, (1 - BACKGROUND) / taxa)
        flat[-1] = BACKGROUND
        return flat
    named = np.array([prior.get(taxon, 0.0) for taxon in matrix.taxa])
    if (named < 0).any() or named.sum() > 1 + 1e-9:
        raise ValueError("prior shares must be positive and sum to at most 1")
    rest = int((named == 0).sum())
    named = np.where(named == 0, max(1 - named.sum(), 1e-6 * rest) / max(rest, 1), named)
    return np.append(named / named.sum() * (1 - BACKGROUND), BACKGROUND)


def separators(matrix: Matrix, weighing: Weighing, row: int) -> dict[str, Flags]:
    """Which taxa each dependence group sets apart from the taxon in `row`, in its favour.

    A finding separates when both cells are scored, it is no guess, and it is at least five
    times likelier under `row`.

    Returns:
        Shape (taxa,) per dependence group; only groups that separate anything.
    """
    return _apart(matrix, weighing, row, against=False)


def opposed(matrix: Matrix, weighing: Weighing, row: int) -> dict[str, Flags]:
    """Which taxa each dependence group favours over the taxon in `row`, five to one."""
    return _apart(matrix, weighing, row, against=True)


def _apart(matrix: Matrix, weighing: Weighing, row: int, *, against: bool) -> dict[str, Flags]:
    groups: dict[str, Flags] = {}
    for one in weighing.evidence:
        if not one.counts or not matrix.whole[row, one.number]:
            continue
        ratio = one.likelihood[row] / one.likelihood[:-1]
        far = (ratio <= 1 / RATIO) if against else (ratio >= RATIO)
        apart = matrix.whole_by[one.number] & far
        if apart.any():
            groups[one.group] = groups.get(one.group, np.zeros_like(apart)) | apart
    return groups


def tally(groups: Mapping[str, Flags], taxa: int) -> NDArray[np.int_]:
    """How many dependence groups set each taxon apart, shape (taxa,)."""
    total = np.zeros(taxa, int)
    for apart in groups.values():
        total += apart
    return total


def bare_odds(matrix: Matrix, weighing: Weighing, leader: int) -> Array:
    """Odds of each taxon against the leader on characters both are scored for, flat prior."""
    log = np.zeros(len(matrix.taxa))
    for one in weighing.evidence:
        if one.counts and matrix.whole[leader, one.number]:
            ratio = np.log(one.likelihood[:-1] / one.likelihood[leader])
            log += np.where(matrix.whole_by[one.number], one.weight * ratio, 0.0)
    return np.asarray(np.exp(log))
