"""How alike two taxa are over mixed characters."""

import numpy as np
from numpy.typing import NDArray

from idkey.engine.matrix import Matrix
from idkey.engine.normal import Array


def gower(
    values: Array, ranges: Array, *, matching: NDArray[np.bool_], weights: Array | None = None
) -> Array:
    """Gower's general similarity of every pair of rows.

    Args:
        values: Shape (taxa, characters); NaN is unknown and leaves the pair's comparison out.
        ranges: Range of each numeric character, shape (characters,); ignored for matching ones.
        matching: Characters that match or not; the others count 1 - |x - y| / range.
        weights: Weight per character, shape (characters,); None is 1 each.

    Returns:
        Shape (taxa, taxa), in [0, 1]; NaN for pairs without a common character.

    Source: Gower 1971, Biometrics 27: 857-871.
    """
    weight = np.ones(values.shape[1]) if weights is None else np.asarray(weights, dtype=float)
    both = ~(np.isnan(values)[:, None, :] | np.isnan(values)[None, :, :])
    apart = np.abs(values[:, None, :] - values[None, :, :])
    span = np.where(ranges > 0, ranges, 1.0)
    same = np.where(matching, apart == 0, 1.0 - apart / span)
    total = (both * weight).sum(axis=2)
    alike = np.where(both, same, 0.0) @ weight
    return np.asarray(np.divide(alike, total, out=np.full_like(alike, np.nan), where=total > 0))


def lookalikes(matrix: Matrix, taxon: str, most: int = 4) -> tuple[tuple[str, float], ...]:
    """The taxa most like `taxon`, with their likeness, over the characters both are scored for.

    Per character the share that two animals drawn from both would have in common; averaged as
    Gower does, with one comparison of half likeness added so that few characters prove little.
    """
    row = matrix.row[taxon]
    gap = np.abs(matrix.seen[:-1] - matrix.seen[row]) / 2
    alike = 1.0 - np.add.reduceat(gap, matrix.layout.starts, axis=1)
    both = matrix.whole & matrix.whole[row]
    likeness = ((alike * both).sum(axis=1) + 0.5) / (both.sum(axis=1) + 1.0)
    likeness[row] = -1.0
    ranked = np.argsort(-likeness, kind="stable")[:most]
    return tuple((matrix.taxa[n], float(likeness[n])) for n in ranked if n != row)
