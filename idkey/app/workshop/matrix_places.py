"""Which places of a key the matrix can show: cells, and pairs of taxa that are too much alike."""

from idkey.app.workshop.matrix_edit import Cell
from idkey.app.workshop.matrix_search import cell_of
from idkey.engine.audit import Remark, Weakness
from idkey.formats.problem import Problem
from idkey.model.key import Key

_PAIRS = (Weakness.INSEPARABLE, Weakness.FRAGILE)


def place_cell(place: object) -> Cell | None:
    """The cell that a mistake or a remark is about; None when it is about something else."""
    if isinstance(place, Problem):
        return cell_of(place)
    if isinstance(place, Remark) and place.weakness is Weakness.UNSOURCED:
        return place.about[0], place.about[1]
    return None


def place_pair(place: object) -> tuple[str, str] | None:
    """The two taxa that a remark calls too much alike; None when it is about something else."""
    if isinstance(place, Remark) and place.weakness in _PAIRS:
        return place.about[0], place.about[1]
    return None


def pair_cell(place: Remark, key: Key) -> Cell:
    """Where to go on with two taxa: what tells them apart, or else the first gap of theirs."""
    known = [name for name in place.detail if name in key.character]
    gaps = (
        (taxon, character.id)
        for character in key.characters
        for taxon in place.about
        if (taxon, character.id) not in key.cells
    )
    return (place.about[0], known[0]) if known else next(gaps, (place.about[0], ""))


def shows_cell(place: object) -> bool:
    """Whether a place is in the matrix."""
    return place_cell(place) is not None or place_pair(place) is not None
