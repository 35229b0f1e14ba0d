"""Entropy and information, in bits.

Source: Shannon 1948, A Mathematical Theory of Communication, Bell Syst. Tech. J. 27, section 6.
"""

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.floating]


def entropy_bits(shares: Floats) -> float:
    """Entropy of a distribution.

    Args:
        shares: Probabilities, shape (n,); zeros are allowed.

    Returns:
        ``-sum(p log2 p)``, at least 0.
    """
    return float(np.sum(surprise_bits(np.asarray(shares, dtype=float))))


def surprise_bits(shares: Floats) -> Floats:
    """``-p log2 p`` for each share, 0 where p is 0; same shape and precision as `shares`."""
    tiny = np.finfo(shares.dtype).tiny
    return -shares * np.log2(np.maximum(shares, tiny))


def information_bits(joint: Floats) -> float:
    """Mutual information of the rows and columns of a joint distribution, shape (rows, columns)."""
    table = np.asarray(joint, dtype=float)
    table = table / table.sum()
    rows = entropy_bits(table.sum(axis=1))
    return rows + entropy_bits(table.sum(axis=0)) - entropy_bits(table.ravel())
