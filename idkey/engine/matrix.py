"""The matrix of a key, compiled for one kind of specimen."""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from idkey.engine.entropy import surprise_bits
from idkey.engine.gaps import Layout, Single, filled
from idkey.engine.numbers import Bells
from idkey.model.case import Care, Specimen
from idkey.model.key import Key

BACKGROUND = 0.05
"""Prior share of "something that is not in this key"."""


MOST_BITS = 64
"""Most states of a character, the unknown included, that a set of bits can hold."""


@dataclass(frozen=True)
class Matrix:
    """A key compiled for a sex, a stage and a care: taxa in rows, states and bins in columns.

    Attributes:
        key: The key; characters keep its order.
        specimen: Sex and stage it is compiled for.
        care: How the looking is done.
        layout: Columns per character.
        seen: P(recorded state or bin | taxon), gaps filled, shape (taxa + 1, columns), float32;
            the last row is the background, which shows anything.
        whole: Whether a cell has a score for every sex and stage that may apply, shape
            (taxa, characters); only such cells separate or conflict.
        absent: Whether the taxon lacks the part, shape (taxa, characters).
        possible: Whether a taxon can show a state, the unknown included, shape (columns, taxa).
        numbers: Densities of numeric characters, by character number.
    """

    key: Key
    specimen: Specimen
    care: Care
    layout: Layout
    seen: Single
    whole: NDArray[np.bool_]
    absent: NDArray[np.bool_]
    possible: NDArray[np.bool_]
    numbers: dict[int, Bells]

    @cached_property
    def masks(self) -> NDArray[np.uint64] | None:
        """What each taxon can show as a set of bits per character, shape (taxa, characters).

        None where a character has more states than fit.
        """
        found = np.zeros(self.whole.shape, np.uint64)
        for number in range(len(self.key.characters)):
            shown = self.possible[self.columns(number)]
            if len(shown) > MOST_BITS:
                return None
            bits = np.uint64(1) << np.arange(len(shown), dtype=np.uint64)
            found[:, number] = (shown.T * bits).sum(axis=1, dtype=np.uint64)
        return found

    @cached_property
    def entropy(self) -> Single:
        """Entropy of each cell in bits, shape (taxa + 1, characters), float32."""
        return np.asarray(np.add.reduceat(surprise_bits(self.seen), self.layout.starts, axis=1))

    @cached_property
    def whole_by(self) -> NDArray[np.bool_]:
        """`whole` turned: one character in a row, shape (characters, taxa)."""
        return np.ascontiguousarray(self.whole.T)

    @cached_property
    def absent_by(self) -> NDArray[np.bool_]:
        """`absent` turned: one character in a row, shape (characters, taxa)."""
        return np.ascontiguousarray(self.absent.T)

    @cached_property
    def taxa(self) -> tuple[str, ...]:
        """Taxon ids, in row order."""
        return tuple(taxon.id for taxon in self.key.taxa)

    @cached_property
    def row(self) -> dict[str, int]:
        """Row number by taxon id."""
        return {taxon: row for row, taxon in enumerate(self.taxa)}

    @cached_property
    def number(self) -> dict[str, int]:
        """Character number by character id."""
        return {c.id: number for number, c in enumerate(self.key.characters)}

    def columns(self, number: int) -> slice:
        """The columns of a character."""
        first = int(self.layout.starts[number])
        return slice(first, first + int(self.layout.widths[number]))

    def rows(self, taxa: tuple[str, ...]) -> NDArray[np.intp]:
        """Row numbers of those taxa."""
        return np.array([self.row[taxon] for taxon in taxa], np.intp)


def assembled(
    key: Key, specimen: Specimen, care: Care, cells: "Cells", *, kin: NDArray[np.intp]
) -> Matrix:
    """The matrix over compiled cells: fills the gaps, adds the background.

    Args:
        key: The key the cells come from.
        specimen: Sex and stage.
        care: How the looking is done.
        cells: What is scored.
        kin: Genus number per taxon, shape (taxa,).
    """
    full = filled(cells.shown, cells.known, cells.layout, kin)
    even = np.repeat(1.0 / cells.layout.widths, cells.layout.widths).astype(np.float32)
    return Matrix(
        key=key,
        specimen=specimen,
        care=care,
        layout=cells.layout,
        seen=np.vstack([full, even]),
        whole=cells.whole,
        absent=cells.absent,
        possible=cells.possible,
        numbers=cells.numbers,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Cells:
    """What is scored, side by side for all characters, before gaps are filled.

    Attributes:
        layout: Columns per character.
        shown: Shape (taxa, columns), float32; zero where not `known`.
        known: Shape (taxa, characters).
        whole: Shape (taxa, characters).
        absent: Shape (taxa, characters).
        possible: Shape (columns, taxa).
        numbers: Densities of numeric characters, by character number.
    """

    layout: Layout
    shown: Single
    known: NDArray[np.bool_]
    whole: NDArray[np.bool_]
    absent: NDArray[np.bool_]
    possible: NDArray[np.bool_]
    numbers: dict[int, Bells]
