"""Filling unscored cells from the most similar taxa, so that silence neither helps nor hurts."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

Single = NDArray[np.float32]
Double = NDArray[np.float64]

SHARPNESS = 12.0
"""How fast the weight falls with dissimilarity; weights are exp(-12 d)."""

KIN = 3.0
"""How much more a taxon of the same genus counts."""

DOUBT = 0.15
"""Share of a filled cell that is spread evenly: it is less certain than a scored one."""

BLOCK = 1024


@dataclass(frozen=True, slots=True)
class Layout:
    """Where each character's columns stand in a wide table.

    Attributes:
        starts: First column of each character, shape (characters,).
        widths: Number of columns of each character, shape (characters,).
    """

    starts: NDArray[np.intp]
    widths: NDArray[np.intp]

    @property
    def width(self) -> int:
        """Number of columns in all."""
        return int(self.widths.sum())

    def spread(self, cells: NDArray[Any]) -> NDArray[Any]:
        """A (taxa, characters) table repeated over each character's columns."""
        return np.repeat(cells, self.widths, axis=1)


def similarity(shown: Double, scored: NDArray[np.bool_], rows: slice) -> Double:
    """Likeness of the taxa in `rows` to all taxa, over the characters both have scores for.

    Per character the overlap sum of root products, 1 for the same distribution and 0 for
    disjoint ones (Bhattacharyya 1943, Bull. Calcutta Math. Soc. 35: 99), averaged as Gower
    does over the characters that can be compared (Gower 1971, Biometrics 27: 857). One
    comparison of half likeness is added, so that few common characters prove little.

    Args:
        shown: Shape (taxa, columns): share per state, zero where unscored.
        scored: Shape (taxa, characters).
        rows: Which taxa.

    Returns:
        Shape (rows, taxa), in (0, 1).
    """
    roots = np.sqrt(shown)
    known = scored.astype(float)
    return np.asarray((roots[rows] @ roots.T + 0.5) / (known[rows] @ known.T + 1.0))


def filled(
    shown: Single, scored: NDArray[np.bool_], layout: Layout, kin: NDArray[np.intp]
) -> Single:
    """The table with unscored cells filled from similar taxa.

    Reckoned in double precision, so that every processor comes to the same table in single: a
    rationale is held against what another machine makes of the record.

    Args:
        shown: Shape (taxa, columns); zero in unscored cells.
        scored: Shape (taxa, characters).
        layout: Columns per character.
        kin: Genus number per taxon, shape (taxa,).

    Returns:
        Shape (taxa, columns), float32; the columns of a cell sum to one.
    """
    table = shown.copy()
    even = np.repeat(1.0 / layout.widths, layout.widths)
    known, exact = scored.astype(float), shown.astype(float)
    for first in range(0, len(shown), BLOCK):
        rows = slice(first, min(first + BLOCK, len(shown)))
        if scored[rows].all():
            continue
        weight = np.exp(-SHARPNESS * (1.0 - similarity(exact, scored, rows)))
        weight *= np.where(kin[rows, None] == kin[None, :], KIN, 1.0)
        total = layout.spread(weight @ known)
        fill = np.where(total > 0, weight @ exact / np.maximum(total, 1e-30), even)
        fill = (1.0 - DOUBT) * fill + DOUBT * even
        table[rows] = np.where(layout.spread(scored[rows]), shown[rows], fill)
    return table
