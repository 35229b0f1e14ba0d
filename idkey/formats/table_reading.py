"""Reads a key back from a spreadsheet: the whole of it from our XLSX, or a matrix into a key."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from idkey.errors import IdKeyError
from idkey.formats.cell_safe import unsafe
from idkey.formats.cell_text import CellError, cell_scores
from idkey.formats.draft import drafted
from idkey.formats.folder import checked
from idkey.formats.imported import Imported, imported
from idkey.formats.problem import KeyProblems, Problem, hint
from idkey.formats.sheet import DATE, Sheet, reference
from idkey.formats.table import HEAD, KEY, LISTS, MATRIX, REMARKS
from idkey.formats.texts import Texts
from idkey.formats.yaml_text import YamlText
from idkey.model.character import Character, Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.source import Basis

_DATED = "The spreadsheet took the cell for a date."
_AS_TEXT = "Format the column as text and write the value again."


def whole_key(sheets: tuple[Sheet, ...]) -> bool:
    """Whether the sheets are those of a whole key, as `write_xlsx` writes them."""
    return {KEY, "characters", "taxa"} <= {sheet.name for sheet in sheets}


def matrix_of(sheets: tuple[Sheet, ...], key: Key) -> bool:
    """Whether the first sheet, or the one named matrix, is a matrix of the key."""
    sheet = next((one for one in sheets if one.name == MATRIX), sheets[0])
    head = [str(_plain(text)) for text in sheet.rows[0] if text]
    own = [text for text in head if text in key.character]
    return head[:1] == [HEAD[0]] and bool(own) and {*head} <= {*HEAD, *own}


def table_of(sheets: tuple[Sheet, ...], file: Path, base: Key | None = None) -> Imported:
    """The key that the sheets of a spreadsheet of ours say.

    Args:
        sheets: Its sheets; at least one.
        file: The spreadsheet, for messages.
        base: The key whose matrix it is; None needs the sheets that `write_xlsx` writes.

    Raises:
        KeyProblems: Cells cannot be understood; each is named.
        IdKeyError: It holds no whole key and no base was given.
    """
    named = {sheet.name: sheet for sheet in sheets}
    if base is None:
        base = _whole(named, file)
    matrix = named.get(MATRIX) or sheets[0]
    problems: list[Problem] = []
    scores = _matrix(matrix, base, file, problems)
    if REMARKS in named:
        scores = _remarked(scores, named[REMARKS], file, problems)
    else:
        scores = _remembered(scores, base)
    if problems:
        raise KeyProblems(file.name, problems)
    return imported(replace(base, scores=scores), (), file.name)


def cell_problem(
    file: Path, sheet: Sheet, place: tuple[int, int], problem: str, remedy: str
) -> Problem:
    """A mistake in a cell.

    Args:
        file: The spreadsheet.
        sheet: The sheet.
        place: Row and column, counted from 0 at the headings.
        problem: What is wrong.
        remedy: What to do.
    """
    row, column = place
    line = row + sheet.above
    return Problem(
        file=file,
        line=line + 1,
        column=column + 1,
        problem=f"{sheet.name}, cell {reference(line, column)}: {problem}",
        remedy=remedy,
        loc=(sheet.name, row, column),
    )


def read_cell(
    sheet: Sheet, place: tuple[int, int], taxon: str, character: Character
) -> tuple[Score, ...]:
    """The scores that a cell says.

    Args:
        sheet: The sheet.
        place: Row and column, counted from 0.
        taxon: Id of its taxon.
        character: Its character.

    Raises:
        CellError: It cannot be understood.
    """
    text = sheet.cell(*place)
    if text.startswith(DATE):
        raise CellError(_DATED, _AS_TEXT)
    try:
        return cell_scores(str(unsafe(text)), taxon, character) if text else ()
    except CellError:
        raise
    except ValueError as err:
        raise CellError(f"{err}", "Correct it.") from err


def _matrix(sheet: Sheet, key: Key, file: Path, problems: list[Problem]) -> tuple[Score, ...]:
    columns: dict[int, Character] = {}
    names = {c.name.casefold(): c for c in key.characters}
    for column, raw in enumerate(sheet.rows[0]):
        text = str(_plain(raw))
        character = key.character.get(text) or names.get(text.casefold())
        if character is not None:
            columns[column] = character
        elif text and text not in HEAD:
            remedy = hint(text, list(key.character), "Remove the column, or add the character.")
            problems.append(
                cell_problem(file, sheet, (0, column), f"Unknown character '{text}'.", remedy)
            )
    scores: list[Score] = []
    seen: dict[str, int] = {}
    for row in range(1, len(sheet.rows)):
        taxon = str(_plain(sheet.cell(row, 0)))
        if not taxon:
            continue
        if taxon not in key.taxon or taxon in seen:
            problem = (
                f"The taxon '{taxon}' is twice." if taxon in seen else f"Unknown taxon '{taxon}'."
            )
            remedy = hint(taxon, list(key.taxon), "Remove the row, or add the taxon to the key.")
            problems.append(cell_problem(file, sheet, (row, 0), problem, remedy))
            continue
        seen[taxon] = row
        for column, character in columns.items():
            try:
                scores += read_cell(sheet, (row, column), taxon, character)
            except CellError as err:
                place = (row, column)
                problems.append(cell_problem(file, sheet, place, err.problem, err.remedy))
    kept = (s for s in key.scores if s.taxon not in seen or _absent(s, columns.values()))
    return (*scores, *kept)


def _absent(score: Score, characters: Iterable[Character]) -> bool:
    """Whether the sheet has no column for the score, so that the key's own stands."""
    return all(character.id != score.character for character in characters)


def _plain(text: str) -> Any:
    try:
        return unsafe(text)
    except ValueError:
        return text


def _remembered(scores: tuple[Score, ...], base: Key) -> tuple[Score, ...]:
    """The scores with the sources and remarks that unchanged ones had."""
    old = {(s.taxon, s.character, s.sex, s.stage): s for s in base.scores}
    found = []
    for score in scores:
        before = old.get((score.taxon, score.character, score.sex, score.stage))
        same = before is not None and before.value == score.value
        found.append(before if before is not None and same else score)
    return tuple(found)


def _remarked(
    scores: tuple[Score, ...], sheet: Sheet, file: Path, problems: list[Problem]
) -> tuple[Score, ...]:
    remarks: dict[tuple[str, ...], dict[str, Any]] = {}
    head = sheet.rows[0]
    for row in range(1, len(sheet.rows)):
        said = {name: _plain(sheet.cell(row, n)) for n, name in enumerate(head)}
        place = tuple(str(said.get(n) or "") for n in ("taxon", "character", "sex", "stage"))
        if said.get("basis") and said["basis"] not in list(Basis):
            remedy = hint(str(said["basis"]), list(Basis))
            problem = f"'{said['basis']}' is no basis."
            problems.append(cell_problem(file, sheet, (row, 0), problem, remedy))
            continue
        remarks[place] = said
    return tuple(_with_remark(score, remarks) for score in scores)


def _with_remark(score: Score, remarks: Mapping[tuple[str, ...], Mapping[str, Any]]) -> Score:
    sex = score.sex.value if isinstance(score.sex, Sex) else ""
    stage = score.stage.value if isinstance(score.stage, Stage) else ""
    said = remarks.get((score.taxon, score.character, sex, stage))
    if said is None:
        return score
    sources = said.get("sources") or []
    return replace(
        score,
        basis=Basis(said.get("basis") or Basis.SOURCE),
        sources=tuple(map(str, sources)) if isinstance(sources, list) else (str(sources),),
        note=str(said.get("note") or ""),
    )


def _whole(sheets: Mapping[str, Sheet], file: Path) -> Key:
    """The key without scores that the other sheets of our XLSX say."""
    if KEY not in sheets or any(name not in sheets for name in ("characters", "taxa")):
        raise IdKeyError(
            f"{file.name} holds a matrix, but no whole key.",
            "Open the key it belongs to first, or make a new key from it in the workshop.",
        )
    head = {row[0]: _plain(row[1]) for row in sheets[KEY].rows[1:] if len(row) > 1}
    lists = {name: _entries(sheets[name]) for name in LISTS if name in sheets}
    texts = Texts(files={"key.yaml": YamlText(file, "", head)})
    for name, entries in lists.items():
        if name == "taxa":
            for entry in entries:
                own = f"taxa/{entry.get('id')}.yaml"
                if own in texts.files:
                    problem = f"The taxon '{entry.get('id')}' is twice in {file.name}."
                    raise IdKeyError(problem, "Remove one.")
                texts.files[own] = YamlText(file, "", entry)
        else:
            texts.files[f"{name}.yaml"] = YamlText(file, "", {name: _named(name, entries)})
    texts.names = set(texts.files)
    key, problems = checked(drafted(file, texts))
    if key is None:
        raise KeyProblems(file.name, problems)
    return key


def _entries(sheet: Sheet) -> list[dict[str, Any]]:
    head = sheet.rows[0]
    found = []
    for row in sheet.rows[1:]:
        said = {name: _plain(text) for name, text in zip(head, row, strict=False) if text and name}
        if said:
            found.append(said)
    return found


def _named(name: str, entries: list[dict[str, Any]]) -> Any:
    if name != "sources":
        return entries
    return {str(e.get("id")): {n: v for n, v in e.items() if n != "id"} for e in entries}
