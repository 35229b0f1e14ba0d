"""Dangers and permits that are still possible, and when they may go."""

from dataclasses import replace

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
caution at some step in simulation; with both one of some 4,500 did, for one step and while
another danger kept the caution up (docs/truth.md)."""

MOST = 0.9
"""Support from which a danger or a permit is called likely, not only possible."""


def cautions(matrix: Matrix, weighing: Weighing, *, unknown: bool = False) -> tuple[Caution, ...]:
    """The cautions to show, dangers first.

    A taxon keeps its caution until two independent findings more speak against it than for
    it, and it is very unlikely on what it is scored for; never because it is unscored, never
    because of a prior, and never because of a rule of thumb.

    Args:
        matrix: The compiled key.
        weighing: All taxa weighed.
        unknown: Whether the animal may be none of the key's taxa; then every danger and every
            permit of the key stands.
    """
    taxa = matrix.key.taxa
    gone = np.zeros(len(taxa), bool) if unknown else dismissed(matrix, weighing)
    dangerous = np.array([taxon.dangerous for taxon in taxa], bool)
    listed = np.array([taxon.listed for taxon in taxa], bool)
    found = (
        _caution(matrix, weighing, Stake.HAZARD, dangerous, gone),
        _caution(matrix, weighing, Stake.PERMIT, listed, gone),
    )
    standing = (caution for caution in found if caution is not None)
    if unknown:
        return tuple(replace(caution, certain=False, likely=False) for caution in standing)
    return tuple(standing)


def dismissed(matrix: Matrix, weighing: Weighing) -> Flags:
    """Taxa whose dangers and permits no longer matter, shape (taxa,).

    What shops lean on more than it can bear lets nobody go: the rest has to do it alone, too.
    """
    gone = dismissed_by_all(matrix, weighing)
    sound = without_thumbs(matrix, weighing)
    if sound is not weighing:
        gone &= _gone(matrix, sound, weighing.leader)
    return gone


def dismissed_by_all(matrix: Matrix, weighing: Weighing) -> Flags:
    """The same if rules of thumb counted like any other finding, shape (taxa,)."""
    return _gone(matrix, weighing, weighing.leader)


def _gone(matrix: Matrix, weighing: Weighing, leader: int) -> Flags:
    taxa = len(matrix.taxa)
    against = tally(separators(matrix, weighing, leader), taxa)
    favour = tally(opposed(matrix, weighing, leader), taxa)
    gone = (against - favour >= NET) & (bare_odds(matrix, weighing, leader) < FAINT)
    gone[leader] = False
    return np.asarray(gone, bool)


def without_thumbs(matrix: Matrix, weighing: Weighing) -> Weighing:
    """The weighing with the evidence of rules of thumb taken out, its support untouched.

    The same one where there is none. What hangs together with one is weighed for itself.
    """
    known = matrix.key.characters
    kept = [one for one in weighing.evidence if not known[one.number].rule_of_thumb]
    if len(kept) == len(weighing.evidence):
        return weighing
    groups = [one.group for one in kept]
    evidence = (replace(one, weight=1.0 / groups.count(one.group)) for one in kept)
    return replace(weighing, evidence=tuple(evidence))


def _caution(
    matrix: Matrix, weighing: Weighing, stake: Stake, concerned: Flags, gone: Flags
) -> Caution | None:
    rows = np.flatnonzero(concerned & ~gone)
    if not len(rows):
        return None
    support = weighing.support[:-1]
    ranked = rows[np.argsort(-support[rows], kind="stable")]
    certain, held = bool(gone[~concerned].all()), float(support[rows].sum())
    return Caution(
        stake=stake,
        taxa=tuple(matrix.taxa[row] for row in ranked),
        support=held,
        certain=certain,
        likely=held >= MOST and bool(weighing.evidence) and not certain,
    )
