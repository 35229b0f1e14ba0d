"""Changes of many cells at once: a key and a block of cells become another key. No Qt."""

import csv
import io
from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from idkey.formats.cell_text import CellError, cell_scores, cell_text
from idkey.model.character import Character, Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Score

Cell = tuple[str, str]
"""Taxon id and character id."""

Cells = Mapping[Cell, tuple[Score, ...]]

MOST_PASTED = 2**22
"""Signs that are read from a clipboard; a thousand taxa by a hundred characters fit."""

Place = tuple[str, int, int, int]
"""Where a score stands: taxon, number of the character, sex, stage."""

_SEXES = (None, Sex.MALE, Sex.FEMALE)
_STAGES = (None, Stage.JUVENILE, Stage.ADULT)


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """A rectangle of cells as it stands on the screen.

    Attributes:
        taxa: Taxon ids, from top to bottom.
        characters: Character ids, from left to right.
    """

    taxa: tuple[str, ...]
    characters: tuple[str, ...]

    @property
    def cells(self) -> tuple[Cell, ...]:
        """Its cells, row by row."""
        return tuple((taxon, character) for taxon in self.taxa for character in self.characters)


@dataclass(frozen=True, slots=True, kw_only=True)
class CellMistake:
    """Why a cell cannot take what was to be put into it.

    Attributes:
        cell: The cell; empty ids when there is none at that place.
        text: What was to be put there.
        problem: What is wrong, as a sentence.
        remedy: What to do, as a sentence.
    """

    cell: Cell
    text: str
    problem: str
    remedy: str


@dataclass(frozen=True, slots=True)
class Edit:
    """What came of a change.

    Attributes:
        cells: New scores per changed cell; empty when something was wrong.
        mistakes: Every cell that could not take its value; then nothing was changed.
    """

    cells: Cells
    mistakes: tuple[CellMistake, ...] = ()


def with_cells(key: Key, cells: Cells) -> Key:
    """The key with other scores in some cells; the same key when they say the same.

    Scores in canonical order stay so: taxa by id, characters as printed, within a cell by sex
    and stage.
    """
    found = {cell: scores for cell, scores in cells.items() if key.cells.get(cell, ()) != scores}
    if not found:
        return key
    order = {character.id: n for n, character in enumerate(key.characters)}

    def place(score: Score) -> Place:
        within = (_SEXES.index(score.sex), _STAGES.index(score.stage))
        return score.taxon, order.get(score.character, len(order)), *within

    new = sorted((score for scores in found.values() for score in scores), key=place)
    quick = _exchanged(key, found, new, place)
    if quick is None:
        kept = (score for score in key.scores if (score.taxon, score.character) not in found)
        return replace(key, scores=tuple(sorted([*kept, *new], key=place)), digest="")
    after = replace(key, scores=quick, digest="")
    # What the key works out for itself when asked, carried on: of 100,000 cells few changed.
    carried = {**key.cells, **found}
    for cell, scores in found.items():
        if not scores:
            carried.pop(cell, None)
    vars(after)["cells"] = carried
    return after


def _exchanged(
    key: Key, found: Cells, new: Sequence[Score], place: Callable[[Score], Place]
) -> tuple[Score, ...] | None:
    """The scores with those of some cells exchanged; None where they are not in order."""
    scores = list(key.scores)
    own: dict[str, list[Score]] = {}
    for score in new:
        own.setdefault(score.taxon, []).append(score)
    for taxon in {taxon for taxon, _ in found}:  # the others need not be looked at
        start = bisect_left(scores, taxon, key=_taxon)
        end = bisect_right(scores, taxon, key=_taxon)
        kept = [score for score in scores[start:end] if (taxon, score.character) not in found]
        scores[start:end] = sorted([*kept, *own.get(taxon, ())], key=place)
    gone = sum(len(key.cells.get(cell, ())) for cell in found)
    return tuple(scores) if len(scores) == len(key.scores) - gone + len(new) else None


def _taxon(score: Score) -> str:
    return score.taxon


def cleared(block: Block) -> Edit:
    """Make every cell unknown."""
    return Edit(dict.fromkeys(block.cells, ()))


def grounded(key: Key, block: Block, like: Score) -> Edit:
    """Let every score of a block rest on what one of them rests on; values and notes stay."""

    def same(one: Score) -> Score:
        return replace(one, basis=like.basis, sources=like.sources)

    filled = (cell for cell in block.cells if cell in key.cells)
    return Edit({cell: tuple(map(same, key.cells[cell])) for cell in filled})


def filled_down(key: Key, block: Block) -> Edit:
    """Give every row what the first one has, with its sources and notes."""
    first = block.taxa[0]
    rows = ((cell, (first, cell[1])) for cell in block.cells if cell[0] != first)
    return _carried(key, rows)


def filled_right(key: Key, block: Block) -> Edit:
    """Give every column what the first one has, where its character can show that."""
    first = block.characters[0]
    columns = ((cell, (cell[0], first)) for cell in block.cells if cell[1] != first)
    return _carried(key, columns)


def _carried(key: Key, pairs: Iterable[tuple[Cell, Cell]]) -> Edit:
    found: dict[Cell, tuple[Score, ...]] = {}
    mistakes: list[CellMistake] = []
    for cell, source in pairs:
        scores = key.cells.get(source, ())
        text = copied_cell(key, source)
        values = _scores(key, cell, text, mistakes) if cell[1] != source[1] else scores
        values = sorted_cell(values)
        about = {(score.sex, score.stage): score for score in scores}
        found[cell] = tuple(
            replace(about[one.sex, one.stage], taxon=cell[0], character=cell[1], value=one.value)
            for one in values
        )
    return Edit({} if mistakes else found, tuple(mistakes))


def copied(key: Key, block: Block) -> str:
    """The cells as tab-separated text, a row a taxon, as a spreadsheet takes them."""
    out = io.StringIO()
    rows = ([copied_cell(key, (taxon, c)) for c in block.characters] for taxon in block.taxa)
    csv.writer(out, dialect="excel-tab", lineterminator="\n").writerows(rows)
    return out.getvalue()


def copied_cell(key: Key, cell: Cell) -> str:
    """The text of one cell; empty when nothing is known."""
    character = key.character[cell[1]]
    return cell_text(key.cells.get(cell, ()), character.state_ids)


def pasted(key: Key, text: str, at: Block, room: Block) -> Edit:
    """Put tab-separated text into the grid.

    A single value fills the whole of the chosen block; a larger text starts at its corner. What
    a cell says already keeps its sources and notes; a value that is new there has none.

    Args:
        key: The key.
        text: As a spreadsheet or `copied` gives it.
        at: The chosen block.
        room: All cells from the corner of that block to the end of the grid.
    """
    if len(text) > MOST_PASTED:
        problem = "This is more text than a matrix holds."
        return Edit({}, (_nowhere(text[:40], problem, "Paste it in parts."),))
    rows = list(csv.reader(io.StringIO(text, newline=""), dialect="excel-tab"))
    if not rows:
        return Edit({})
    if len(rows) == 1 and len(rows[0]) <= 1:
        only = rows[0][0] if rows[0] else ""
        rows = [[only] * len(at.characters) for _ in at.taxa]
    return _put(key, rows, room)


def _put(key: Key, rows: Sequence[Sequence[str]], room: Block) -> Edit:
    found: dict[Cell, tuple[Score, ...]] = {}
    mistakes: list[CellMistake] = []
    for down, row in enumerate(rows):
        for right, text in enumerate(row):
            if down >= len(room.taxa) or right >= len(room.characters):
                if text.strip():
                    remedy = "Start further up or to the left, or copy fewer cells."
                    mistakes.append(_nowhere(text, "It would stand outside the matrix.", remedy))
                continue
            cell = (room.taxa[down], room.characters[right])
            found[cell] = kept_grounds(key, _scores(key, cell, text, mistakes))
    return Edit({} if mistakes else found, tuple(mistakes))


def typed(key: Key, cell: Cell, text: str) -> Edit:
    """Put what somebody typed into a cell; states may be cut short where that is clear.

    The grounds of what the cell said stay: it is the same place that is looked at again.
    """
    character = key.character[cell[1]]
    mistakes: list[CellMistake] = []
    scores = _scores(key, cell, completed(text, character), mistakes)
    if mistakes:
        return Edit({}, (replace(mistakes[0], text=text),))
    about = {(score.sex, score.stage): score for score in key.cells.get(cell, ())}
    kept = (
        replace(about[s.sex, s.stage], value=s.value) if (s.sex, s.stage) in about else s
        for s in scores
    )
    return Edit({cell: tuple(kept)})


def kept_grounds(key: Key, scores: tuple[Score, ...]) -> tuple[Score, ...]:
    """The scores; those that the key has in the same words stay with their sources and notes."""
    found = []
    for score in scores:
        there = key.cells.get((score.taxon, score.character), ())
        same = (
            s for s in there if (s.sex, s.stage, s.value) == (score.sex, score.stage, score.value)
        )
        found.append(next(same, score))
    return tuple(found)


def completed(text: str, character: Character) -> str:
    """Text in which a state that was cut short is written out, where only one can be meant."""
    if character.kind.numeric or ";" in text or ":" in text:
        return text
    parts = text.split("|")
    return "|".join(_whole_state(part.strip(), character) for part in parts)


def _whole_state(part: str, character: Character) -> str:
    wanted = part.casefold()
    labels = {state.id: state.label for state in character.states}
    if not wanted or wanted in (own.casefold() for own in (*labels, *labels.values())):
        return part
    for fits in (str.startswith, str.__contains__):
        found = [
            own
            for own, label in labels.items()
            if fits(label.casefold(), wanted) or fits(own.casefold(), wanted)
        ]
        if found:
            return found[0] if len(found) == 1 else part
    return part


def sorted_cell(scores: Iterable[Score]) -> tuple[Score, ...]:
    """Scores of one cell in canonical order."""
    return tuple(sorted(scores, key=lambda s: (_SEXES.index(s.sex), _STAGES.index(s.stage))))


def _scores(key: Key, cell: Cell, text: str, mistakes: list[CellMistake]) -> tuple[Score, ...]:
    try:
        return sorted_cell(cell_scores(text, cell[0], key.character[cell[1]]))
    except CellError as err:
        mistakes.append(CellMistake(cell=cell, text=text, problem=err.problem, remedy=err.remedy))
        return ()


def _nowhere(text: str, problem: str, remedy: str) -> CellMistake:
    return CellMistake(cell=("", ""), text=text, problem=problem, remedy=remedy)
