"""How much of a key's matrix is filled, and what the filled cells rest on."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from idkey.engine.applicable import never_arises
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.source import Basis


class Ground(StrEnum):
    """What a cell rests on, strongest first."""

    PRINT = "print"
    PARTLY_MEMORY = "partly_memory"
    MEMORY = "memory"
    UNTOLD = "untold"
    EMPTY = "empty"


_GROUNDS = {
    Basis.SOURCE: Ground.PRINT,
    Basis.INFERRED: Ground.PRINT,
    Basis.PARTLY_MEMORY: Ground.PARTLY_MEMORY,
    Basis.MEMORY: Ground.MEMORY,
    Basis.COMMON_PRACTICE: Ground.MEMORY,
}


@dataclass(frozen=True, slots=True)
class Coverage:
    """The cells of a matrix by what they rest on.

    Attributes:
        cells: Number of cells per ground; all grounds are there.
    """

    cells: Mapping[Ground, int]

    @property
    def total(self) -> int:
        """Cells that could be filled."""
        return sum(self.cells.values())

    @property
    def filled(self) -> float:
        """Share of filled cells, from 0 to 1; 1 when there are none to fill."""
        return 1.0 - self.share(Ground.EMPTY)

    def share(self, ground: Ground) -> float:
        """Share of the cells that rest on a ground, from 0 to 1."""
        return self.cells[ground] / self.total if self.total else 0.0


def coverage(key: Key) -> Coverage:
    """How much of the matrix is filled.

    A cell counts once, by the weakest of its scores; one that claims to be from print and names
    no source is told to be without one. A cell that is not scored because the taxon
    lacks what the character depends on counts as no cell at all.
    """
    counts: Counter[Ground] = Counter()
    for taxon in key.taxa:
        for character in key.characters:
            scores = key.cells.get((taxon.id, character.id), ())
            if scores:
                counts[_weakest(scores)] += 1
            elif not never_arises(key, taxon.id, character):
                counts[Ground.EMPTY] += 1
    return Coverage({ground: counts[ground] for ground in Ground})


def _weakest(scores: tuple[Score, ...]) -> Ground:
    order = list(Ground)
    return max(map(_ground, scores), key=order.index)


def _ground(score: Score) -> Ground:
    ground = _GROUNDS[score.basis]
    return Ground.UNTOLD if ground is Ground.PRINT and not score.sources else ground
