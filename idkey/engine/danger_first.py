"""Couplets that tell dangerous animals from the rest before anything else."""

import numpy as np
from numpy.typing import NDArray

from idkey.engine.entropy import surprise_bits
from idkey.engine.matrix import Matrix
from idkey.engine.tree import DIGITS, GAIN, Ground, Pool, Weights


class DangerFirst:
    """Prefers what separates medically significant taxa, and never what means handling them.

    Args:
        matrix: The compiled key.
        ground: Its divisions.
    """

    def __init__(self, matrix: Matrix, ground: Ground) -> None:
        self._ground = ground
        self._dangerous = np.array([taxon.dangerous for taxon in matrix.key.taxa], bool)
        handling = np.array([c.handling for c in matrix.key.characters], bool)
        self._handling = handling[ground.splits.character]

    def without_handling(self, pool: Pool, worth: Weights) -> Weights:
        """`worth` without divisions that mean handling, while a taxon in `pool` is dangerous.

        The same array where there is no such taxon, or where nothing else would be left.
        """
        if not self._dangerous[pool.rows].any() or not self._handling.any():
            return worth
        safe: Weights = np.where(self._handling, 0.0, worth)
        return safe if safe.max() > GAIN else worth

    def division(self, pool: Pool, worth: Weights) -> int | None:
        """The division that says most about danger per effort.

        None where all of `pool` is dangerous or none is, or where no division with any
        `worth` says anything about it.
        """
        dangerous = self._dangerous[pool.rows]
        if dangerous.all() or not dangerous.any():
            return None
        gain = np.where(worth > GAIN, self._told(pool, dangerous), 0.0)
        best = int(np.argmax(gain))
        return best if gain[best] > GAIN else None

    def _told(self, pool: Pool, dangerous: NDArray[np.bool_]) -> Weights:
        """Bits about danger per effort of each division; unscored taxa tell nothing."""
        splits = self._ground.splits
        weight = pool.weights / pool.weight
        share, known = splits.share[pool.rows], splits.known[pool.rows].astype(float)
        told = np.zeros(len(splits.starts))
        for part, sign in ((weight, 1), (weight * dangerous, -1), (weight * ~dangerous, -1)):
            spread = np.add.reduceat(surprise_bits(part @ share), splits.starts)
            told += sign * (spread - surprise_bits(part @ known))
        return np.round(told / splits.effort, DIGITS)
