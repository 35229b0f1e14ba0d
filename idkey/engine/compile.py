"""From a key to its matrix."""

from functools import lru_cache

import numpy as np

from idkey.engine.column import compiled_column
from idkey.engine.gaps import Layout
from idkey.engine.matrix import Cells, Matrix, assembled
from idkey.model.case import Care, Specimen
from idkey.model.key import Key

_ANY = Specimen()


def compile_key(key: Key, specimen: Specimen = _ANY, care: Care = Care.ORDINARY) -> Matrix:
    """The matrix of `key` for a specimen of that sex and stage.

    Args:
        key: A key with at least one taxon and one character, whose cross-references hold.
        specimen: Sex and stage; what is unknown is mixed from the possible ones.
        care: How the looking is done; scales the chance of slips.

    Raises:
        ValueError: The key has no taxon or no character.
    """
    if not key.taxa or not key.characters:
        raise ValueError(f"key {key.id!r} has nothing to compare")
    columns = [compiled_column(key, c, specimen, care) for c in key.characters]
    widths = np.array([column.shown.shape[1] for column in columns], np.intp)
    cells = Cells(
        layout=Layout(np.concatenate([[0], np.cumsum(widths)[:-1]]).astype(np.intp), widths),
        shown=np.hstack([c.shown for c in columns]).astype(np.float32),
        known=np.column_stack([c.known for c in columns]),
        whole=np.column_stack([c.whole for c in columns]),
        absent=np.column_stack([c.absent for c in columns]),
        possible=np.vstack([c.possible for c in columns]),
        numbers={n: c.bells for n, c in enumerate(columns) if c.bells is not None},
    )
    genera = {genus: n for n, genus in enumerate(dict.fromkeys(t.genus for t in key.taxa))}
    kin = np.array([genera[taxon.genus] for taxon in key.taxa], np.intp)
    return assembled(key, specimen, care, cells, kin=kin)


@lru_cache(maxsize=8)
def compiled(key: Key, specimen: Specimen, care: Care) -> Matrix:
    """The same, with the latest few kept: for case after case judged with one key."""
    return compile_key(key, specimen, care)
