"""The fewest characters that tell a taxon from every other."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from idkey.engine.matrix import Matrix
from idkey.engine.separation import surely

NODES = 200_000
"""Steps of the exact search before it settles for the smallest found."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Cover:
    """A set of tests that covers all demands.

    Attributes:
        chosen: Numbers of the tests, in the order given.
        proved: Whether no smaller set exists; otherwise it is the smallest found.
    """

    chosen: tuple[int, ...]
    proved: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Diagnosis:
    """The fewest characters that separate a taxon from all others.

    Attributes:
        taxon: Taxon id.
        characters: Character ids.
        margin: Characters that were wanted against each rival.
        thin: Rivals that fewer characters than `margin` separate, with how many do.
        proved: Whether no smaller set exists.
    """

    taxon: str
    characters: tuple[str, ...]
    margin: int
    thin: tuple[tuple[str, int], ...]
    proved: bool


def diagnosis(matrix: Matrix, taxon: str, margin: int = 1) -> Diagnosis:
    """The fewest characters under which `taxon` differs surely from every other taxon.

    Args:
        matrix: The compiled key.
        taxon: Taxon id.
        margin: Characters wanted against each rival; 2 stands one mistake.
    """
    apart = surely(matrix, matrix.row[taxon])
    enough = apart.sum(axis=1)
    enough[matrix.row[taxon]] = margin
    effort = [character.least_effort for character in matrix.key.characters]
    order = sorted(range(len(effort)), key=lambda n: effort[n])
    masks = [_bits(apart[:, n]) for n in order]
    found = smallest_cover(masks, margin)
    names = tuple(sorted(order[n] for n in found.chosen))
    thin = tuple((matrix.taxa[r], int(enough[r])) for r in np.flatnonzero(enough < margin))
    return Diagnosis(
        taxon=taxon,
        characters=tuple(matrix.key.characters[n].id for n in names),
        margin=margin,
        thin=thin,
        proved=found.proved,
    )


def _bits(flags: np.ndarray[tuple[int, ...], np.dtype[np.bool_]]) -> int:
    return int.from_bytes(np.packbits(flags, bitorder="little").tobytes(), "little")


def smallest_cover(masks: Sequence[int], margin: int = 1, nodes: int = NODES) -> Cover:
    """The fewest tests that cover every element `margin` times, or as often as all tests do.

    Greedy with pruning for a start, then branch and bound on bit sets: the scarcest element
    is covered first, and a branch ends when even the widest tests could not beat the best.

    Args:
        masks: One bit set of elements per test; earlier tests win ties.
        margin: How often each element is to be covered.
        nodes: Steps after which the search gives up proving.
    """
    need = _demands(masks, margin)
    best = _pruned(masks, need, _greedy(masks, need))
    search = _Search(masks, best, nodes)
    search.go(need, (), set())
    return Cover(chosen=tuple(sorted(search.best)), proved=search.left > 0)


def _demands(masks: Sequence[int], margin: int) -> tuple[int, ...]:
    """Bit sets of elements that still want at least 1, 2 … covers."""
    levels = [0] * margin
    for mask in masks:
        for level in range(margin - 1, 0, -1):
            levels[level] |= levels[level - 1] & mask
        levels[0] |= mask
    return tuple(levels)


def _after(need: tuple[int, ...], mask: int) -> tuple[int, ...]:
    """The demands left once a test is taken."""
    above = (*need[1:], 0)
    return tuple((level & ~mask) | (more & mask) for level, more in zip(need, above, strict=True))


def _gain(need: tuple[int, ...], mask: int) -> int:
    return (need[0] & mask).bit_count()


def _greedy(masks: Sequence[int], need: tuple[int, ...]) -> tuple[int, ...]:
    chosen: list[int] = []
    while need[0]:
        number = max(
            (n for n in range(len(masks)) if n not in chosen),
            key=lambda n: (_gain(need, masks[n]), -n),
        )
        chosen.append(number)
        need = _after(need, masks[number])
    return tuple(chosen)


def _pruned(
    masks: Sequence[int], need: tuple[int, ...], chosen: tuple[int, ...]
) -> tuple[int, ...]:
    """Without tests that the others make superfluous, latest chosen kept longest."""
    for number in chosen:
        rest = tuple(n for n in chosen if n != number)
        left = need
        for other in rest:
            left = _after(left, masks[other])
        if not left[0]:
            chosen = rest
    return chosen


class _Search:
    """Depth-first search for a smaller cover."""

    def __init__(self, masks: Sequence[int], best: tuple[int, ...], nodes: int) -> None:
        self.masks = masks
        self.best = best
        self.left = nodes

    def go(self, need: tuple[int, ...], chosen: tuple[int, ...], closed: set[int]) -> None:
        """Extend `chosen`; tests in `closed` were tried on the way here."""
        self.left -= 1
        if self.left <= 0:
            return
        if not need[0]:
            if len(chosen) < len(self.best):
                self.best = chosen
            return
        open_ = [n for n in range(len(self.masks)) if n not in closed and n not in chosen]
        if len(chosen) + self._bound(need, open_) >= len(self.best):
            return
        tried: set[int] = set()
        for number in self._branches(need, open_):
            self.go(_after(need, self.masks[number]), (*chosen, number), closed | tried)
            tried.add(number)

    def _bound(self, need: tuple[int, ...], open_: list[int]) -> int:
        """Tests needed at the least: the widest ones together must meet the whole demand."""
        wanted = sum(level.bit_count() for level in need)
        widths = sorted((_gain(need, self.masks[n]) for n in open_), reverse=True)
        for number, width in enumerate(widths, start=1):
            wanted -= width
            if wanted <= 0:
                return number
        return len(self.masks) + 1

    def _branches(self, need: tuple[int, ...], open_: list[int]) -> list[int]:
        """Tests that cover the scarcest element of the highest demand, widest first."""
        top = next(level for level in reversed(need) if level)
        scarce, fewest = 0, len(open_) + 1
        while top and fewest > 1:
            bit = top & -top
            top ^= bit
            count = sum(1 for n in open_ if self.masks[n] & bit)
            if count < fewest:
                scarce, fewest = bit, count
        found = [n for n in open_ if self.masks[n] & scarce]
        return sorted(found, key=lambda n: -_gain(need, self.masks[n]))
