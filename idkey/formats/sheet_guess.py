"""A new key from somebody's spreadsheet: what each column seems to be, and the key it makes."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum
from pathlib import Path

from idkey.formats.cell_safe import unsafe
from idkey.formats.cell_text import CellError, parts_of, spans
from idkey.formats.imported import (
    HAZARD_UNTOLD,
    LOOKS_UNTOLD,
    UNKNOWN_HAZARD,
    Ids,
    Imported,
    imported,
)
from idkey.formats.problem import KeyProblems, Problem
from idkey.formats.sheet import DATE, Sheet
from idkey.formats.table_reading import cell_problem, read_cell
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.taxon import Taxon

MOST_STATES = 34
_TAXON = frozenset(("taxon", "species", "name", "scientific name", "scientificname", "taxa"))
_ABOUT = {"authority": "authority", "author": "authority", "family": "family", "genus": "skip"}
_UNIT = re.compile(r"^(.*\S)\s*[(\[]\s*(mm|cm|m|µm|um|g|mg|kg|°|deg|%)\s*[)\]]\s*$")
_UNKNOWN = frozenset(("", "?", "-", "na", "n.a.", "unknown", "n/k"))
_HEAD = re.compile(r"^(?:juvenile |adult )?(?:female|male|adult|juvenile)?:\s*", re.IGNORECASE)
_SHARE_TEXT = 0.6


class Role(StrEnum):
    """What a column holds."""

    TAXON = "taxon"
    AUTHORITY = "authority"
    FAMILY = "family"
    CHARACTER = "character"
    SKIP = "skip"


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """What a column of the sheet seems to be; a person may change all of it.

    Attributes:
        index: Its number, counted from 0.
        heading: Its heading.
        role: What it holds.
        kind: Kind of its character.
        unit: Unit of its numbers.
        states: Labels of its states, in the order they should have.
        why: Why it was guessed so, as a sentence.
    """

    index: int
    heading: str
    role: Role
    kind: Kind = Kind.CATEGORICAL
    unit: str = ""
    states: tuple[str, ...] = ()
    why: str = ""


def guess(sheet: Sheet) -> tuple[Column, ...]:
    """What each column of a sheet with headings in its first row seems to be."""
    width = max(len(row) for row in sheet.rows)
    found = [_column(sheet, index) for index in range(width)]
    if all(column.role is not Role.TAXON for column in found):
        first = next((c for c in found if _distinct(sheet, c.index)), found[0])
        why = "The first column in which every cell differs."
        found[first.index] = replace(first, role=Role.TAXON, why=why)
    return tuple(found)


def _values(sheet: Sheet, index: int) -> list[str]:
    cells = (_plain(sheet.cell(row, index)) for row in range(1, len(sheet.rows)))
    return [text for text in cells if text.lower() not in _UNKNOWN]


def _plain(text: str) -> str:
    try:
        return str(unsafe(text)).strip()
    except ValueError:
        return text


def _distinct(sheet: Sheet, index: int) -> bool:
    values = _values(sheet, index)
    return bool(values) and len(set(values)) == len(sheet.rows) - 1


def _column(sheet: Sheet, index: int) -> Column:
    heading = _plain(sheet.cell(0, index))
    word = heading.lower().replace("_", " ")
    if word in _TAXON:
        return Column(index=index, heading=heading, role=Role.TAXON, why="By its heading.")
    if word in _ABOUT:
        return Column(index=index, heading=heading, role=Role(_ABOUT[word]), why="By its heading.")
    values = _values(sheet, index)
    if not heading or not values:
        why = "It has no heading." if not heading else "It has no values."
        return Column(index=index, heading=heading, role=Role.SKIP, why=why)
    if all(_numeric(text) for text in values):
        return _number(index, heading, values)
    return _states(index, heading, values)


def _numeric(text: str) -> bool:
    try:
        spans(text)
    except ValueError:
        return False
    return True


def _number(index: int, heading: str, values: list[str]) -> Column:
    unit = _UNIT.match(heading)
    if unit:
        kind, why = Kind.MEASUREMENT, "Numbers, with a unit in the heading."
    elif all(re.fullmatch(r"[\d\s–—to.,-]*", text) and "." not in text for text in values):
        kind, why = Kind.COUNT, "Whole numbers without a unit."
    else:
        kind, why = Kind.RATIO, "Numbers without a unit."
    return Column(
        index=index,
        heading=unit[1] if unit else heading,
        role=Role.CHARACTER,
        kind=kind,
        unit=unit[2] if unit else "",
        why=why,
    )


def _states(index: int, heading: str, values: list[str]) -> Column:
    labels: dict[str, str] = {}
    for text in values:
        for part in re.split(r"\s*;\s*", text):
            for label in parts_of(_HEAD.sub("", part)):
                labels.setdefault(" ".join(label.split()).casefold(), " ".join(label.split()))
    labels.pop("n/a", None)
    column = Column(
        index=index,
        heading=heading,
        role=Role.CHARACTER,
        states=tuple(sorted(labels.values(), key=str.casefold)),
        why=f"{len(labels)} different words.",
    )
    if any(text.startswith(DATE) for text in values):
        return replace(column, role=Role.SKIP, why="The spreadsheet took cells for dates.")
    if len(labels) > max(6, len(values) * _SHARE_TEXT) or len(labels) > MOST_STATES:
        return replace(column, role=Role.SKIP, why="Nearly every cell differs: a text.")
    if len(labels) < 2:
        return replace(column, role=Role.SKIP, why="All cells say the same.")
    return column


def key_from_sheet(sheet: Sheet, columns: tuple[Column, ...], file: Path) -> Imported:
    """A new key from a sheet.

    Args:
        sheet: The sheet; its first row holds headings.
        columns: What each column is; one of them holds the taxa.
        file: The spreadsheet, for messages and the title.

    Raises:
        KeyProblems: Cells do not fit their columns; each is named.
    """
    problems: list[Problem] = []
    taxa = _taxa(sheet, columns, file, problems)
    unfit = list(_unfit(sheet, columns, file))
    problems += unfit
    characters = {} if unfit else dict(_characters(columns))
    scores: list[Score] = []
    for row, taxon in taxa.items():
        for index, character in characters.items():
            if _plain(sheet.cell(row, index)).lower() in _UNKNOWN:
                continue
            try:
                scores += read_cell(sheet, (row, index), taxon.id, character)
            except CellError as err:
                place = (row, index)
                problems.append(cell_problem(file, sheet, place, err.problem, err.remedy))
    if problems:
        raise KeyProblems(file.name, problems)
    key = Key(
        id=Ids("key").new(file.stem),
        title=file.stem or "New key",
        version="0.1.0",
        taxa=tuple(taxa.values()),
        characters=tuple(characters.values()),
        scores=tuple(scores),
    )
    skipped = ", ".join(f"'{c.heading}'" for c in columns if c.role is Role.SKIP and c.heading)
    notes = (f"Columns left out: {skipped}.",) if skipped else ()
    return imported(key, (*notes, LOOKS_UNTOLD, HAZARD_UNTOLD), file.name)


def _taxa(
    sheet: Sheet, columns: tuple[Column, ...], file: Path, problems: list[Problem]
) -> dict[int, Taxon]:
    roles = {column.role: column.index for column in reversed(columns)}
    named = roles.get(Role.TAXON)
    if named is None:
        remedy = "Mark the column with their names."
        problems.append(cell_problem(file, sheet, (0, 0), "No column holds the taxa.", remedy))
        return {}
    ids = Ids("taxon")
    found: dict[int, Taxon] = {}
    seen: set[str] = set()
    for row in range(1, len(sheet.rows)):
        name = _plain(sheet.cell(row, named))
        if not name:
            if any(sheet.rows[row]):
                remedy = "Write a name, or empty the row."
                problems.append(cell_problem(file, sheet, (row, named), "No name.", remedy))
            continue
        if name.casefold() in seen:
            problem = f"The taxon '{name[:60]}' is there already."
            problems.append(cell_problem(file, sheet, (row, named), problem, "Join the rows."))
        seen.add(name.casefold())
        found[row] = Taxon(
            id=ids.new(name),
            name=name,
            authority=_plain(sheet.cell(row, roles.get(Role.AUTHORITY, len(columns)))),
            family=_plain(sheet.cell(row, roles.get(Role.FAMILY, len(columns)))),
            hazard=UNKNOWN_HAZARD,
        )
    if not found and not problems:
        problems.append(cell_problem(file, sheet, (1, named), "There are no taxa.", "Add rows."))
    return found


def _unfit(sheet: Sheet, columns: tuple[Column, ...], file: Path) -> Iterator[Problem]:
    """Columns that cannot be characters as they are marked."""
    marked = [column for column in columns if column.role is Role.CHARACTER]
    if not marked:
        remedy = "Mark at least one column as a character."
        yield cell_problem(file, sheet, (0, 0), "No column is a character.", remedy)
    for column in marked:
        place = (0, column.index)
        if column.kind is Kind.MEASUREMENT and not column.unit:
            problem = f"'{column.heading}' is a measurement without a unit."
            yield cell_problem(file, sheet, place, problem, "Give its unit, such as mm.")
        elif not column.kind.numeric and len(column.states) < 2:
            problem = f"'{column.heading}' needs two states or more."
            yield cell_problem(file, sheet, place, problem, "Name its states, or skip it.")


def _characters(columns: tuple[Column, ...]) -> Iterator[tuple[int, Character]]:
    ids = Ids("character")
    for column in columns:
        if column.role is not Role.CHARACTER:
            continue
        state_ids = Ids("state")
        numeric = column.kind.numeric
        states = () if numeric else column.states
        yield (
            column.index,
            Character(
                id=ids.new(column.heading),
                name=column.heading or f"Column {column.index + 1}",
                question=f"{column.heading}: {'how much?' if numeric else 'which applies?'}",
                kind=column.kind,
                looks=(Look.LENS,),
                states=tuple(State(id=state_ids.new(label), label=label) for label in states),
                unit=column.unit if numeric else "",
            ),
        )
