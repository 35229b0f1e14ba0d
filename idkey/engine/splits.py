"""The ways a set of taxa can be divided by one character."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from idkey.engine.gaps import Single
from idkey.engine.matrix import Matrix
from idkey.engine.spans import shares_below
from idkey.model.character import Character, Kind
from idkey.model.couplet import Sees

CUTS = 8
"""Most thresholds tried per numeric character."""

FAINT_SHARE = 0.02
"""Share of a range beyond a threshold that is not worth a branch of its own."""


@dataclass(frozen=True)
class Splits:
    """All divisions, their branches side by side.

    Attributes:
        share: P(branch | taxon), shape (taxa, branches), float32; a division's branches sum to 1
            for scored taxa and are 0 for unscored ones.
        known: Whether a taxon is scored for a division, shape (taxa, divisions).
        lacking: Whether a taxon has no such part, shape (taxa, divisions).
        starts: First branch of each division, shape (divisions,).
        effort: Trouble of each division, shape (divisions,).
        sees: What each branch stands for.
        character: Character number of each division, shape (divisions,).
    """

    share: Single
    known: NDArray[np.bool_]
    lacking: NDArray[np.bool_]
    starts: NDArray[np.intp]
    effort: NDArray[np.float64]
    sees: tuple[Sees, ...]
    character: NDArray[np.intp]

    def branches(self, division: int) -> slice:
        """The branches of a division."""
        ends = (*self.starts[1:], len(self.sees))
        return slice(int(self.starts[division]), int(ends[division]))


@dataclass(frozen=True, slots=True)
class _Division:
    sees: tuple[Sees, ...]
    share: Single
    effort: float
    number: int


def splits(matrix: Matrix, *, many_leads: bool = True, dead: bool = False) -> Splits:
    """The divisions a printed key may use.

    Args:
        matrix: The compiled key; characters its specimen cannot show are left out.
        many_leads: One lead per state; otherwise two leads, one state or step against the rest.
        dead: Whether characters that only a dead animal shows may be used.
    """
    pure = pure_shares(matrix)
    found: list[_Division] = []
    for number, character in enumerate(matrix.key.characters):
        if not _printable(matrix, character, dead=dead):
            continue
        if character.kind.numeric:
            ways = _cuts(matrix, number, character)
        else:
            part = state_shares(matrix, pure, number)
            ways = _state_ways(character, part, many_leads=many_leads)
        effort = character.least_effort
        found += [_Division(s, p.astype(np.float32), effort, number) for s, p in ways]
    if not found:
        raise ValueError("no character can be used in a printed key")
    widths = np.array([len(d.sees) for d in found])
    known = np.column_stack([matrix.whole[:, d.number] for d in found])
    share = np.hstack([d.share for d in found])
    return Splits(
        share=np.where(np.repeat(known, widths, axis=1), share, np.float32(0)),
        known=known,
        lacking=np.column_stack([matrix.absent[:, d.number] for d in found]),
        starts=np.concatenate([[0], np.cumsum(widths)[:-1]]).astype(np.intp),
        effort=np.array([d.effort for d in found]),
        sees=tuple(s for d in found for s in d.sees),
        character=np.array([d.number for d in found], np.intp),
    )


def _printable(matrix: Matrix, character: Character, *, dead: bool) -> bool:
    if not character.suits(matrix.specimen.sex, matrix.specimen.stage):
        return False
    if character.sex is not None and matrix.specimen.sex is None:
        return False
    return dead or not character.only_dead


def pure_shares(matrix: Matrix) -> Single:
    """P(state | taxon) without slips: possible states in the ratios of the compiled table.

    Slips are left out by keeping only what a taxon can show.
    """
    return np.where(matrix.possible.T, matrix.seen[:-1], 0.0).astype(np.float32)


def state_shares(matrix: Matrix, pure: Single, number: int) -> Single:
    """The part of `pure_shares` on one character, shape (taxa, states); its rows sum to one."""
    part = pure[:, matrix.columns(number)][:, : len(matrix.key.characters[number].states)]
    return np.asarray(part / np.maximum(part.sum(axis=1, keepdims=True), 1e-9))


def _state_ways(
    character: Character, share: Single, *, many_leads: bool
) -> list[tuple[tuple[Sees, ...], Single]]:
    """Ways to divide by states: all of them, or two sides each."""
    ids = character.state_ids
    if many_leads or len(ids) == 2:
        return [(tuple(Sees(character=character.id, states=(s,)) for s in ids), share)]
    if character.kind is Kind.ORDINAL:
        sides = [tuple(range(cut)) for cut in range(1, len(ids))]
    else:
        sides = [(n,) for n in range(len(ids))]
    found = []
    for side in sides:
        rest = tuple(n for n in range(len(ids)) if n not in side)
        both = np.column_stack([share[:, side].sum(axis=1), share[:, rest].sum(axis=1)])
        sees = tuple(
            Sees(character=character.id, states=tuple(ids[n] for n in part))
            for part in (side, rest)
        )
        found.append((sees, both))
    return found


def _cuts(
    matrix: Matrix, number: int, character: Character
) -> list[tuple[tuple[Sees, ...], Single]]:
    """Thresholds between the ranges of the taxa."""
    bells = matrix.numbers[number]
    there = bells.share.sum(axis=0) > 0
    ends = np.unique(np.concatenate([bells.low[:, there].ravel(), bells.high[:, there].ravel()]))
    middles = (ends[1:] + ends[:-1]) / 2
    if len(middles) > CUTS:
        middles = middles[np.linspace(0, len(middles) - 1, CUTS).astype(int)]
    cuts = np.array([_round(float(x), character.kind) for x in middles])
    if not len(cuts):
        return []
    below = below_cuts(matrix, number, cuts)
    below = np.where(below < FAINT_SHARE, 0.0, np.where(below > 1 - FAINT_SHARE, 1.0, below))
    below[~there] = 0.5
    found: list[tuple[tuple[Sees, ...], Single]] = []
    for place, cut in enumerate(cuts):
        sees = (
            Sees(character=character.id, high=float(cut)),
            Sees(character=character.id, low=float(cut)),
        )
        found.append((sees, _two(below[:, place])))
    return found


def below_cuts(matrix: Matrix, number: int, cuts: NDArray[np.float64]) -> NDArray[np.float64]:
    """Share of each taxon's range below each threshold, shape (taxa, thresholds)."""
    bells = matrix.numbers[number]
    deep, taxa = bells.share.shape
    risen = shares_below(bells.low.ravel(), bells.high.ravel(), bells.sd.ravel(), cuts)
    return np.asarray((bells.share[:, :, None] * risen.reshape(deep, taxa, -1)).sum(axis=0))


def _two(below: NDArray[np.float64]) -> Single:
    return np.column_stack([below, 1 - below]).astype(np.float32)


def _round(value: float, kind: Kind) -> float:
    """A threshold that falls between whole numbers, or on three digits."""
    return round(value - 0.5) + 0.5 if kind is Kind.COUNT else float(f"{value:.3g}")
