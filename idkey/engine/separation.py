"""Which characters tell which taxa apart, by their scores alone."""

from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from idkey.engine.matrix import Matrix


class Apart(IntEnum):
    """How far a character tells two taxa apart."""

    UNKNOWN = 0
    SAME = 1
    PARTLY = 2
    SURELY = 3


def surely(matrix: Matrix, row: int) -> NDArray[np.bool_]:
    """Characters under which no animal of the taxon in `row` can pass for another taxon.

    Both cells are scored and share no state; or the ranges, widened by what their specimens
    leave unseen, do not overlap.

    Returns:
        Shape (taxa, characters); the row of the taxon itself is False.
    """
    masks = matrix.masks
    if masks is None:
        shared = matrix.possible & matrix.possible[:, row, None]
        apart = ~np.logical_or.reduceat(shared, matrix.layout.starts, axis=0).T
    else:
        apart = (masks & masks[row]) == 0
    for number, bells in matrix.numbers.items():
        gap = (bells.least > bells.most[row]) | (bells.most < bells.least[row])
        absent = matrix.absent[:, number] != matrix.absent[row, number]
        apart[:, number] = gap | absent
    apart &= matrix.whole & matrix.whole[row]
    apart[row] = False
    return np.asarray(apart, bool)


def by_print(matrix: Matrix, row: int) -> NDArray[np.bool_]:
    """Characters on which the scores as printed have nothing in common, `surely` included.

    Printed ranges that do not overlap count here even where few specimens stand behind them.

    Returns:
        Shape (taxa, characters); the row of the taxon itself is False.
    """
    return printed_apart(matrix, row, surely(matrix, row))


def printed_apart(matrix: Matrix, row: int, sure: NDArray[np.bool_]) -> NDArray[np.bool_]:
    """The same, from what tells the taxon in `row` apart for sure."""
    apart = sure.copy()
    for number, bells in matrix.numbers.items():
        low, high = bells.printed
        gap = (low > high[row]) | (high < low[row])
        apart[:, number] |= gap & matrix.whole[:, number] & matrix.whole[row, number]
    apart[row] = False
    return apart


def partly(matrix: Matrix, row: int, least: float = 0.25) -> NDArray[np.bool_]:
    """Characters whose shown values differ by at least `least` in total variation.

    Returns:
        Shape (taxa, characters), `surely` included.
    """
    gap = np.abs(matrix.seen[:-1] - matrix.seen[row]) / 2
    far = np.add.reduceat(gap, matrix.layout.starts, axis=1) >= least
    both = matrix.whole & matrix.whole[row]
    found = far & both | surely(matrix, row)
    found[row] = False
    return np.asarray(found, bool)


def compared(matrix: Matrix, one: int, other: int) -> tuple[Apart, ...]:
    """How each character tells two taxa apart, in the order of the key."""
    sure = surely(matrix, one)[other]
    part = partly(matrix, one)[other]
    both = matrix.whole[one] & matrix.whole[other]
    return tuple(
        Apart.SURELY if s else Apart.PARTLY if p else Apart.SAME if b else Apart.UNKNOWN
        for s, p, b in zip(sure, part, both, strict=True)
    )
