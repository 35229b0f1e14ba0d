"""One character of the matrix: what each taxon is likely to show for it."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from idkey.engine.applicable import JUVENILE_SHARE, doubtful, never_arises, parts
from idkey.engine.confusion import confusion, error_rate
from idkey.engine.numbers import Bells, number_column
from idkey.model.case import Care, Specimen
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows

Part = tuple[float, Score | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """One compiled character over all taxa.

    Attributes:
        shown: P(recorded state or bin | taxon), shape (taxa, width); zero where `known` is not.
        known: Cells with at least one score that may hold, shape (taxa,).
        whole: Cells where no part is unknown, shape (taxa,).
        absent: Cells of taxa that lack the part, shape (taxa,).
        possible: States a taxon can show, the unknown included, shape (width, taxa).
        bells: Densities of a numeric character; None otherwise.
    """

    shown: NDArray[np.float64]
    known: NDArray[np.bool_]
    whole: NDArray[np.bool_]
    absent: NDArray[np.bool_]
    possible: NDArray[np.bool_]
    bells: Bells | None


def compiled_column(key: Key, character: Character, specimen: Specimen, care: Care) -> Column:
    """The column of `character` for that kind of specimen.

    Taxa that lack the part get a column of their own at the end ("nothing to record"), and so
    do those whose `requires` character never shows what is asked for.
    """
    cells = tuple(_cell(key, taxon.id, character, specimen) for taxon in key.taxa)
    absent = np.array(
        [
            _absent(cell) or _ruled_by_requirement(key, t.id, character, cell)
            for t, cell in zip(key.taxa, cells, strict=True)
        ],
        bool,
    )
    known = np.array([any(s for _, s in cell) for cell in cells], bool) | absent
    whole = np.array([all(s for _, s in cell) for cell in cells], bool) | absent
    error = error_rate(character, care)
    doubt = JUVENILE_SHARE if doubtful(character, specimen) else 0.0
    if character.kind.numeric:
        bells, shown = number_column(character, cells, absent, error=error + doubt * (1 - error))
        possible = np.ones((shown.shape[1], len(cells)), bool)
    else:
        bells = None
        shares = np.array([_shares(character, cell) for cell in cells])
        possible = ((shares > 0) | ~whole[:, None]).T
        shown = shares @ confusion(character, error)
        shown = (1 - doubt) * shown + doubt * shares.sum(axis=1, keepdims=True) / shown.shape[1]
    if absent.any():
        shown, possible = _with_absent(shown, possible, absent, error)
    return Column(
        shown=shown * known[:, None],
        known=known,
        whole=whole,
        absent=absent,
        possible=possible,
        bells=bells,
    )


def _cell(key: Key, taxon: str, character: Character, specimen: Specimen) -> tuple[Part, ...]:
    return parts(key.cells.get((taxon, character.id), ()), character, specimen)


def _absent(cell: tuple[Part, ...]) -> bool:
    return all(s is not None and isinstance(s.value, Inapplicable) for _, s in cell)


def _ruled_by_requirement(
    key: Key, taxon: str, character: Character, cell: tuple[Part, ...]
) -> bool:
    """Whether an unscored cell is inapplicable because the required state never occurs."""
    return never_arises(key, taxon, character) and not any(s for _, s in cell)


def _shares(character: Character, cell: tuple[Part, ...]) -> NDArray[np.float64]:
    """Share per state; what is unknown is spread evenly, an absent part shows nothing."""
    place = {state: number for number, state in enumerate(character.state_ids)}
    row = np.zeros(len(place))
    for share, score in cell:
        if score is None:
            row += share / len(place)
        elif isinstance(score.value, Shows):
            for state, often in score.value.shares().items():
                row[place[state]] += share * often
    return row


def _with_absent(
    shown: NDArray[np.float64],
    possible: NDArray[np.bool_],
    absent: NDArray[np.bool_],
    error: float,
) -> tuple[NDArray[np.float64], NDArray[np.bool_]]:
    width = shown.shape[1]
    shown = np.where(absent[:, None], error / width, shown)
    last = np.where(absent, 1 - error, 0.0)[:, None]
    return np.hstack([shown, last]), np.vstack([possible & ~absent, absent])
