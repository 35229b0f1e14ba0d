"""The key that somebody's spreadsheet makes, once it is known what each column is."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from pathlib import Path

from idkey.formats.cell_text import CellError
from idkey.formats.imported import (
    HAZARD_UNTOLD,
    LOOKS_UNTOLD,
    UNKNOWN_HAZARD,
    Ids,
    Imported,
    imported,
)
from idkey.formats.new_key import FIRST_VERSION
from idkey.formats.problem import KeyProblems, Problem
from idkey.formats.sheet import Sheet
from idkey.formats.sheet_guess import HEAD, ONCE, UNKNOWN, Column, Role, plain_text, without_unit
from idkey.formats.table_reading import cell_problem, read_cell
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.taxon import Taxon


def _plain(sheet: Sheet, columns: tuple[Column, ...]) -> Sheet:
    """The sheet with bars between states where people wrote semicolons, and without units.

    In our own cells a semicolon parts the sexes; people who name none mean "or".
    """
    units = {c.index: c.unit for c in columns if c.role is Role.CHARACTER and c.kind.numeric}
    ours = {c.index for c in columns if c.role is Role.CHARACTER and not c.kind.numeric}

    def cell(index: int, text: str) -> str:
        text = without_unit(text, units.get(index, ""))
        parts = [part.strip() for part in text.split(";") if part.strip()]
        plain = index in ours and len(parts) > 1 and text[:1] not in '"[{'
        return " | ".join(parts) if plain and not any(map(HEAD.match, parts)) else text

    first, *rest = sheet.rows
    rows = (tuple(cell(n, text) for n, text in enumerate(row)) for row in rest)
    return replace(sheet, rows=(first, *rows))


def key_from_sheet(
    sheet: Sheet,
    columns: tuple[Column, ...],
    file: Path,
    *,
    tick: Callable[[int, int], None] | None = None,
) -> Imported:
    """A new key from a sheet.

    Args:
        sheet: The sheet; its first row holds headings.
        columns: What each column is; one of them holds the taxa.
        file: The spreadsheet, for messages and the title.
        tick: Told (done, total) after each row; may raise to stop.

    Raises:
        KeyProblems: Cells do not fit their columns; each is named.
    """
    problems: list[Problem] = []
    sheet = _plain(sheet, columns)
    taxa = _taxa(sheet, columns, file, problems)
    unfit = list(_unfit(sheet, columns, file))
    problems += unfit
    characters = {} if unfit else dict(_characters(columns))
    scores = _scores(sheet, taxa, characters, file, problems=problems, tick=tick)
    if problems:
        raise KeyProblems(file.name, problems)
    key = Key(
        id=Ids("key").new(file.stem),
        title=file.stem or "New key",
        version=FIRST_VERSION,
        taxa=tuple(taxa.values()),
        characters=tuple(characters.values()),
        scores=tuple(scores),
    )
    skipped = ", ".join(f"'{c.heading}'" for c in columns if c.role is Role.SKIP and c.heading)
    notes = (f"Columns left out: {skipped}.",) if skipped else ()
    return imported(key, (*notes, LOOKS_UNTOLD, HAZARD_UNTOLD), file.name)


def _scores(
    sheet: Sheet,
    taxa: Mapping[int, Taxon],
    characters: Mapping[int, Character],
    file: Path,
    *,
    problems: list[Problem],
    tick: Callable[[int, int], None] | None,
) -> list[Score]:
    scores: list[Score] = []
    for row, taxon in taxa.items():
        if tick is not None:
            tick(row, len(sheet.rows))
        for index, character in characters.items():
            if plain_text(sheet.cell(row, index)).lower() in UNKNOWN:
                continue
            try:
                scores += read_cell(sheet, (row, index), taxon.id, character)
            except CellError as err:
                place = (row, index)
                problems.append(cell_problem(file, sheet, place, err.problem, err.remedy))
    return scores


def _taxa(
    sheet: Sheet, columns: tuple[Column, ...], file: Path, problems: list[Problem]
) -> dict[int, Taxon]:
    roles = {column.role: column.index for column in reversed(columns)}
    named = roles.get(Role.TAXON)
    if named is None:
        remedy = "Mark the column with their names."
        problems.append(cell_problem(file, sheet, (0, 0), "No column holds the taxa.", remedy))
        return {}

    def cell(row: int, role: Role) -> str:
        return plain_text(sheet.cell(row, roles[role])) if role in roles else ""

    ids = Ids("taxon")
    found: dict[int, Taxon] = {}
    seen: set[str] = set()
    for row in range(1, len(sheet.rows)):
        name = _name(plain_text(sheet.cell(row, named)), cell(row, Role.GENUS))
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
            authority=cell(row, Role.AUTHORITY),
            family=cell(row, Role.FAMILY),
            hazard=UNKNOWN_HAZARD,
        )
    if not found and not problems:
        problems.append(cell_problem(file, sheet, (1, named), "There are no taxa.", "Add rows."))
    return found


def _name(name: str, genus: str) -> str:
    """The name with its genus before it, unless it has that already."""
    whole = not genus or not name or name.casefold().startswith(f"{genus.casefold()} ")
    return name if whole else f"{genus} {name}"


def _unfit(sheet: Sheet, columns: tuple[Column, ...], file: Path) -> Iterator[Problem]:
    """Columns that cannot be characters as they are marked."""
    marked = [column for column in columns if column.role is Role.CHARACTER]
    if not marked:
        remedy = "Mark at least one column as a character."
        yield cell_problem(file, sheet, (0, 0), "No column is a character.", remedy)
    for role in ONCE:
        for column in [column for column in columns if column.role is role][1:]:
            problem = f"Another column holds the same as '{column.heading}': {role}."
            yield cell_problem(file, sheet, (0, column.index), problem, "Leave one of them out.")
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
