"""Which cells of the matrix are looked for: empty ones, doubtful ones, those with a word."""

from collections.abc import Iterable
from enum import StrEnum

from idkey.app.workshop.matrix_edit import Cell
from idkey.app.workshop.matrix_model import MatrixModel
from idkey.formats.problem import Problem
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.source import Basis


class Sought(StrEnum):
    """Which cells are shown strongly."""

    ALL = "all"
    EMPTY = "empty"
    MEMORY = "memory"
    UNSOURCED = "unsourced"
    WRONG = "wrong"
    PAIR = "pair"


EVERYWHERE = (Sought.ALL, Sought.PAIR)
"""With these no cell is looked for."""


_MEMORY = (Basis.MEMORY, Basis.PARTLY_MEMORY)


def fits(sought: Sought, scores: tuple[Score, ...], *, wrong: bool) -> bool:
    """Whether a cell is among those that are looked for."""
    if sought is Sought.EMPTY:
        return not scores
    if sought is Sought.MEMORY:
        return any(score.basis in _MEMORY for score in scores)
    if sought is Sought.UNSOURCED:
        return any(not score.sources for score in scores)
    return wrong if sought is Sought.WRONG else True


def sought_cells(key: Key, sought: Sought, wrong: frozenset[Cell]) -> frozenset[Cell]:
    """All cells of a key that are looked for."""
    every = ((taxon.id, character.id) for taxon in key.taxa for character in key.characters)
    return frozenset(
        cell for cell in every if fits(sought, key.cells.get(cell, ()), wrong=cell in wrong)
    )


def sought_names(
    key: Key, sought: Sought, wrong: frozenset[Cell], *, pair: tuple[str, ...]
) -> tuple[frozenset[str], frozenset[str]]:
    """Ids of the taxa and of the characters in which something is looked for."""
    if sought in EVERYWHERE:
        taxa = pair if sought is Sought.PAIR else key.taxon
        return frozenset(taxa), frozenset(key.character)
    cells = sought_cells(key, sought, wrong)
    return frozenset(cell[0] for cell in cells), frozenset(cell[1] for cell in cells)


def wrong_cells(problems: Iterable[Problem]) -> frozenset[Cell]:
    """Cells that have a mistake."""
    found = (cell_of(problem) for problem in problems)
    return frozenset(cell for cell in found if cell is not None)


def cell_of(problem: Problem) -> Cell | None:
    """The cell that a mistake is in; None when it is elsewhere."""
    loc = problem.loc
    if problem.file.parent.name != "taxa" or len(loc) < 2 or loc[0] != "scores":
        return None
    return problem.file.stem, str(loc[1])


def by_region(characters: tuple[Character, ...]) -> tuple[Character, ...]:
    """The characters with those of one body region side by side, regions as they first come."""
    rank: dict[str, int] = {}
    for character in characters:
        rank.setdefault(character.part, len(rank))
    return tuple(sorted(characters, key=lambda character: rank[character.part]))


def next_match(model: MatrixModel, words: str, start: Cell) -> Cell | None:
    """The next cell, row by row, that holds all the words; None when there is none.

    Words are looked for in the taxon, the character, what the cell shows, its sources and notes.

    Args:
        model: The matrix as it is shown.
        words: What is looked for.
        start: The cell after which to look; the search goes on at the beginning.
    """
    wanted = words.casefold().split()
    if not wanted or not model.taxa or not model.characters:
        return None
    across, down = len(model.characters), len(model.taxa)
    index = model.place(start)
    first = index.row() * across + index.column() + 1 if index.isValid() else 0
    for step in range(across * down):
        row, column = divmod((first + step) % (across * down), across)
        text = _haystack(model, row, column)
        if all(word in text for word in wanted):
            return model.cell(row, column)
    return None


def _haystack(model: MatrixModel, row: int, column: int) -> str:
    taxon, character = model.taxa[row], model.characters[column]
    parts = [taxon.name, taxon.id, character.name, character.id, *character.words]
    parts.append(model.face(row, column).text)
    for score in model.scores((taxon.id, character.id)):
        parts += [score.note, *score.sources]
    return " ".join(parts).casefold()
