"""Entropy and information, in bits.

Source: Shannon 1948, A Mathematical Theory of Communication, Bell Syst. Tech. J. 27, section 6.
"""

import heapq

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


def huffman_length(shares: Floats, leads: int = 2) -> float:
    """Mean number of questions of the best key if any division were possible.

    Args:
        shares: Share per taxon, shape (n,); sums to one.
        leads: Most leads of a couplet, at least 2.

    Source: Huffman 1952, Proc. IRE 40: 1098-1101.
    """
    heap = [float(share) for share in shares]
    heapq.heapify(heap)
    size, total = 2 + (len(heap) - 2) % (leads - 1), 0.0
    while len(heap) > 1:
        merged = sum(heapq.heappop(heap) for _ in range(min(size, len(heap))))
        size, total = leads, total + merged
        heapq.heappush(heap, merged)
    return total
