"""Dangers and permits that are still possible, and when they may go."""

import numpy as np

from idkey.engine.evidence import Flags
from idkey.engine.matrix import Matrix
from idkey.engine.result import Caution, Stake
from idkey.engine.weighing import Weighing, bare_odds, opposed, separators, tally

NET = 2
"""Separating groups that must stand against a taxon, beyond those that speak for it."""

FAINT = 1e-4
"""Odds against the leader, with a flat prior and on characters both are scored for, that it
must be under besides. With either condition alone 0.2 to 0.8 % of dangerous animals lost their
caution at some step in simulation, with both none of 1,500 did (docs/truth.md)."""


def cautions(matrix: Matrix, weighing: Weighing) -> tuple[Caution, ...]:
    """The cautions to show, dangers first.

    A taxon keeps its caution until two independent findings more speak against it than for
    it, and it is very unlikely on what it is scored for; never because it is unscored, and
    never because of a prior.
    """
    gone = dismissed(matrix, weighing)
    taxa = matrix.key.taxa
    dangerous = np.array([taxon.dangerous for taxon in taxa], bool)
    listed = np.array([taxon.listed for taxon in taxa], bool)
    found = (
        _caution(matrix, weighing, Stake.HAZARD, dangerous, gone),
        _caution(matrix, weighing, Stake.PERMIT, listed, gone),
    )
    return tuple(caution for caution in found if caution is not None)


def dismissed(matrix: Matrix, weighing: Weighing) -> Flags:
    """Taxa whose dangers and permits no longer matter, shape (taxa,)."""
    leader = weighing.leader
    taxa = len(matrix.taxa)
    against = tally(separators(matrix, weighing, leader), taxa)
    favour = tally(opposed(matrix, weighing, leader), taxa)
    gone = (against - favour >= NET) & (bare_odds(matrix, weighing, leader) < FAINT)
    gone[leader] = False
    return np.asarray(gone, bool)


def _caution(
    matrix: Matrix, weighing: Weighing, stake: Stake, concerned: Flags, gone: Flags
) -> Caution | None:
    rows = np.flatnonzero(concerned & ~gone)
    if not len(rows):
        return None
    support = weighing.support[:-1]
    ranked = rows[np.argsort(-support[rows], kind="stable")]
    return Caution(
        stake=stake,
        taxa=tuple(matrix.taxa[row] for row in ranked),
        support=float(support[rows].sum()),
        certain=bool(gone[~concerned].all()),
    )
