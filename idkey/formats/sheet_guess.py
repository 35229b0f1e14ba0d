"""Somebody's spreadsheet that is to become a key: what each column seems to be."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum

from idkey.formats.cell_safe import unsafe
from idkey.formats.cell_text import parts_of, spans
from idkey.formats.sheet import DATE, Sheet
from idkey.model.character import Kind

MOST_STATES = 34
_TAXON = frozenset(
    ("taxon", "species", "name", "scientific name", "scientificname", "taxa", "art", "arten")
)
_ABOUT = {
    **dict.fromkeys(("authority", "author", "autor"), "authority"),
    **dict.fromkeys(("family", "familie"), "family"),
    **dict.fromkeys(("genus", "gattung"), "genus"),
}
"""Headings, in English and German."""

_ASIDE = frozenset(
    (
        *("source", "sources", "reference", "references", "remark", "remarks", "note", "notes"),
        *("quelle", "quellen", "literatur", "bemerkung", "bemerkungen", "anmerkung", "notiz"),
    )
)
"""Headings of columns that say nothing about the looks of a taxon."""

_UNIT = re.compile(
    r"^(?P<name>.*[^\s,])\s*(?:[(\[]\s*(?P<unit>mm|cm|m|µm|um|g|mg|kg|°|deg|%)\s*[)\]]"
    r"|,?\s(?:in\s)?(?P<bare>mm|cm|µm|um|mg|kg))\s*$"
)
_MEASURED = re.compile(r"^(.*\d)\s*(mm|cm|m|µm|um|g|mg|kg|°|%)$")
UNKNOWN = frozenset(
    ("", "?", "-", "–", "—", "na", "n.a.", "unknown", "n/k", "unbekannt", "k.a.", "k. a.")
)
"""Cells that say nothing, in small letters."""

HEAD = re.compile(r"^(?:juvenile |adult )?(?:female|male|adult|juvenile)?:\s*", re.IGNORECASE)
"""What stands before a score for one sex or stage."""

_SHARE_TEXT = 0.6
_FEW = 5
_STRAY = 0.2


class Role(StrEnum):
    """What a column holds."""

    TAXON = "taxon"
    GENUS = "genus"
    AUTHORITY = "authority"
    FAMILY = "family"
    CHARACTER = "character"
    SKIP = "skip"


ONCE = (Role.TAXON, Role.GENUS, Role.AUTHORITY, Role.FAMILY)
"""What one column at most may hold."""


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
    return tuple(_once(sheet, found))


def _once(sheet: Sheet, columns: list[Column]) -> Iterator[Column]:
    """The columns, with one of names, genera, authorities and families each.

    Of several with names the one counts in which most are of two words; ids are of one.
    """

    def words(column: Column) -> int:
        return sum(" " in text for text in _values(sheet, column.index))

    chosen: dict[Role, Column] = {}
    for column in columns:
        before = chosen.get(column.role)
        if before is None or (column.role is Role.TAXON and words(column) > words(before)):
            chosen[column.role] = column
    for column in columns:
        if column.role in ONCE and chosen[column.role] is not column:
            why = f"'{chosen[column.role].heading}' says it already."
            yield replace(column, role=Role.SKIP, why=why)
        else:
            yield column


def _values(sheet: Sheet, index: int) -> list[str]:
    cells = (plain_text(sheet.cell(row, index)) for row in range(1, len(sheet.rows)))
    return [text for text in cells if text.lower() not in UNKNOWN]


def plain_text(text: str) -> str:
    """What a cell says, without the quotes that keep it from being worked out."""
    try:
        return str(unsafe(text)).strip()
    except ValueError:
        return text


def _distinct(sheet: Sheet, index: int) -> bool:
    values = _values(sheet, index)
    return bool(values) and len(set(values)) == len(sheet.rows) - 1


def _column(sheet: Sheet, index: int) -> Column:
    heading = plain_text(sheet.cell(0, index))
    word = heading.lower().replace("_", " ")
    if word in _TAXON:
        return Column(index=index, heading=heading, role=Role.TAXON, why="By its heading.")
    if word in _ABOUT:
        return Column(index=index, heading=heading, role=Role(_ABOUT[word]), why="By its heading.")
    values = _values(sheet, index)
    if not heading or not values:
        why = "It has no heading." if not heading else "It has no values."
        return Column(index=index, heading=heading, role=Role.SKIP, why=why)
    if word in _ASIDE:
        return Column(index=index, heading=heading, role=Role.SKIP, why="By its heading.")
    name, unit = _with_unit(heading, values)
    bare = [without_unit(text, unit) for text in values]
    numbers = [text for text in bare if _numeric(text)]
    others = len(values) - len(numbers)
    if not others or _mostly_numbers(unit, others, len(values)):
        found = _number(index, name, unit, numbers, in_heading=name != heading)
        why = f"{found.why} Cells that are none: {others}." if others else found.why
        return replace(found, why=why)
    return _states(index, heading, values)


def _with_unit(heading: str, values: list[str]) -> tuple[str, str]:
    """The heading without the unit in it, and the unit: from the heading, or from the cells."""
    name, unit = parted_heading(heading)
    if unit:
        return name, unit
    units = {found[2] for text in values if (found := _MEASURED.match(text))}
    return heading, units.pop() if len(units) == 1 else ""


def without_unit(text: str, unit: str) -> str:
    """What a cell says, without the unit that its column has."""
    found = _MEASURED.match(text.strip()) if unit else None
    return found[1] if found and found[2] == unit else text


def _mostly_numbers(unit: str, others: int, cells: int) -> bool:
    """Whether a few cells that are no numbers are rather mistakes than states."""
    if unit:
        return others <= cells / 2
    return cells >= _FEW and others <= cells * _STRAY


def _numeric(text: str) -> bool:
    try:
        spans(text)
    except ValueError:
        return False
    return True


def _number(index: int, heading: str, unit: str, values: list[str], *, in_heading: bool) -> Column:
    if unit:
        place = "heading" if in_heading else "cells"
        kind, why = Kind.MEASUREMENT, f"Numbers, with a unit in the {place}."
    elif all(re.fullmatch(r"[\d\s–—to.,-]*", text) and "." not in text for text in values):
        kind, why = Kind.COUNT, "Whole numbers without a unit."
    else:
        kind, why = Kind.RATIO, "Numbers without a unit."
    return Column(index=index, heading=heading, role=Role.CHARACTER, kind=kind, unit=unit, why=why)


def _states(index: int, heading: str, values: list[str]) -> Column:
    labels: dict[str, str] = {}
    for text in values:
        for part in re.split(r"\s*;\s*", text):
            for label in parts_of(HEAD.sub("", part)):
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


def parted_heading(heading: str) -> tuple[str, str]:
    """A heading without the unit in it, and the unit; empty for none."""
    unit = _UNIT.match(heading)
    return (unit["name"], unit["unit"] or unit["bare"]) if unit else (heading, "")
