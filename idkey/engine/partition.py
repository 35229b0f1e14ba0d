"""Whether the evidence carries a part of the key: one taxon, a genus, what a label covers."""

from dataclasses import dataclass

import numpy as np

from idkey.engine.evidence import Flags
from idkey.engine.fit import fit_p
from idkey.engine.matrix import Matrix
from idkey.engine.result import Need, Unmet
from idkey.engine.weighing import Weighing, bare_odds, opposed, separators, tally

SUPPORT = 0.99
"""Support a name needs, with "not in this key" among the candidates."""

SEPARATORS = 2
"""Separating dependence groups a name needs against every rival."""

FIT = 0.05
"""p-value below which the findings do not fit the leader."""

ANSWERS = 10
"""Answers a name needs; see `FEWER`."""

FEWER = 8
"""Answers it needs where the key or the animal offers no more; below that never."""

PART_ANSWERS = 6
"""Answers a part of the key needs (a genus, a family, what a label covers)."""

AGAINST_ANSWERS = 4
"""Answers it takes to speak against everything a label covers."""

AGAINST_ODDS = 1e-3
"""Odds against the leader that each of those taxa must be under."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Grounds:
    """What the conditions are held against, computed once per assessment.

    Attributes:
        matrix: The compiled key.
        weighing: All taxa weighed.
        leader: Row of the best-supported taxon.
        apart: Separating groups of the leader against each taxon, by group, shape (taxa,).
        counts: How many groups set each taxon apart from the leader, shape (taxa,).
        fit: p-value of the findings under the leader; None without findings that test it.
        answers: Findings that say something.
        more: Whether a question worth asking is left.
    """

    matrix: Matrix
    weighing: Weighing
    leader: int
    apart: dict[str, Flags]
    counts: "np.ndarray[tuple[int, ...], np.dtype[np.int_]]"
    fit: float | None
    answers: int
    more: bool = True

    @property
    def answers_wanted(self) -> int:
        """Answers a name needs here."""
        return ANSWERS if self.more else FEWER


def grounds(matrix: Matrix, weighing: Weighing) -> Grounds:
    """What the conditions are held against, before anyone has looked for more questions."""
    leader = weighing.leader
    apart = separators(matrix, weighing, leader)
    return Grounds(
        matrix=matrix,
        weighing=weighing,
        leader=leader,
        apart=apart,
        counts=tally(apart, len(matrix.taxa)),
        fit=fit_p(matrix, weighing, leader),
        answers=len(weighing.evidence),
    )


def unmet(held: Grounds, members: Flags, *, answers: int) -> tuple[Unmet, ...]:
    """The conditions under which the part `members` is not carried yet; empty when it is.

    Args:
        held: The evidence.
        members: The taxa of the part, shape (taxa,).
        answers: Answers wanted.
    """
    taxa, missing = held.matrix.taxa, []
    support = float(held.weighing.support[:-1][members].sum())
    if held.answers < answers:
        missing.append(Unmet(need=Need.ANSWERS, have=held.answers, want=answers))
    near = _rivals(held, members, taxa)
    if support < SUPPORT:
        missing.append(Unmet(need=Need.SUPPORT, have=support, want=SUPPORT, rivals=near[:3]))
    close = np.flatnonzero(~members & (held.counts < SEPARATORS))
    if len(close):
        rank = close[np.argsort(-held.weighing.support[:-1][close], kind="stable")]
        fewest = int(held.counts[close].min())
        names = tuple(taxa[row] for row in rank[:6])
        missing.append(Unmet(need=Need.SEPARATORS, have=fewest, want=SEPARATORS, rivals=names))
    if held.fit is None or held.fit < FIT:
        missing.append(Unmet(need=Need.FIT, have=held.fit or 0.0, want=FIT))
    return tuple(missing)


def _rivals(held: Grounds, members: Flags, taxa: tuple[str, ...]) -> tuple[str, ...]:
    outside = np.flatnonzero(~members)
    rank = outside[np.argsort(-held.weighing.support[:-1][outside], kind="stable")]
    return tuple(taxa[row] for row in rank)


def carried(held: Grounds, members: Flags, *, answers: int = PART_ANSWERS) -> bool:
    """Whether the evidence carries the part `members`, of which the leader is one."""
    return bool(members[held.leader]) and not unmet(held, members, answers=answers)


def refuted(held: Grounds, members: Flags, *, answers: int = AGAINST_ANSWERS) -> bool:
    """Whether the evidence speaks firmly against every taxon in `members`.

    Two separating groups more against each of them than for it, long odds on what both are
    scored for, and a leader the findings fit. In simulation 2 answers contradicted 1.4 % of
    right labels by separators alone; these conditions none of 651 (docs/truth.md).
    """
    if held.answers < answers or members[held.leader] or not members.any():
        return False
    matrix, weighing = held.matrix, held.weighing
    favour = tally(opposed(matrix, weighing, held.leader), len(matrix.taxa))
    odds = bare_odds(matrix, weighing, held.leader)
    return (
        bool((held.counts - favour >= SEPARATORS)[members].all())
        and bool((odds[members] < AGAINST_ODDS).all())
        and float(weighing.support[:-1][members].sum()) <= 1 - SUPPORT
        and weighing.background <= 0.5
        and held.fit is not None
        and held.fit >= FIT
    )
