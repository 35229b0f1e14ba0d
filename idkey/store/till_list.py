"""Sales as a table: read what a till writes, under its own column names, and write our own."""

import csv
import io
import json
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, fields, replace

from idkey.errors import IdKeyError
from idkey.store.book import Store
from idkey.store.cells import harmless, told
from idkey.store.day import iso_day
from idkey.store.faults import Missing
from idkey.store.record import Papers, Sale, StoredCase
from idkey.store.words import plain_words

SALE_FIELDS = ("number", "date", "price", "buyer", "note")
PAPER_FIELDS = tuple(field.name for field in fields(Papers))
FIELDS = ("case", *SALE_FIELDS, *(f"papers_{name}" for name in PAPER_FIELDS))
"""What a column can hold."""

_SETTING = "till columns"
_OWN: tuple[tuple[str, Callable[[StoredCase], str]], ...] = (
    ("case", lambda s: s.case.id),
    ("revision", lambda s: str(s.revision.number)),
    ("label", lambda s: s.case.claim.text),
    ("supplier", lambda s: s.case.claim.supplier),
    ("verdict", lambda s: s.summary.kind if s.summary else ""),
    ("name", lambda s: s.summary.name if s.summary else ""),
    ("cautions", lambda s: " ".join(s.summary.cautions) if s.summary else ""),
    ("key", lambda s: f"{s.case.key} {s.case.key_version}".strip()),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class TillLine:
    """One line of a till's table.

    Attributes:
        line: Line of the file, counted from 1.
        case_id: The case it names; empty when the table has no such column.
        sale: What it says; fields that the table lacks are empty.
    """

    line: int
    case_id: str
    sale: Sale


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenIn:
    """What became of a till's table.

    Attributes:
        attached: Ids of the cases that have a new or corrected sale.
        unmatched: Lines that name no case of the book.
        problems: What could not be read, as sentences with the line.
    """

    attached: tuple[str, ...]
    unmatched: tuple[TillLine, ...]
    problems: tuple[str, ...]


def columns_in(content: bytes) -> tuple[str, ...]:
    """The column names of a till's table.

    Raises:
        IdKeyError: There is no line with names.
    """
    return tuple(_table(content)[0])


def first_line(content: bytes) -> Mapping[str, str]:
    """What the first line below the column names says, per column; to recognise them by.

    Raises:
        IdKeyError: There is no line with names.
    """
    columns, rows = _table(content)
    told_ = rows[0][1] if rows else {}
    return {column: told_.get(column, "").strip() for column in columns}


def remembered(store: Store, columns: Sequence[str]) -> Mapping[str, str]:
    """Which column holds which field, as it was set for a table with these columns last time.

    Args:
        store: The book.
        columns: Column names of the table.

    Returns:
        Column name per field of `FIELDS`; without a memory, columns named as a field.
    """
    kept = json.loads(store.setting(_SETTING) or "{}")
    named = {"_".join(plain_words(column)): column for column in reversed(columns)}
    guess = {field: named[field] for field in FIELDS if field in named}
    return dict(kept.get(_signature(columns), guess))


def remember(store: Store, columns: Sequence[str], mapping: Mapping[str, str]) -> None:
    """Keep which column holds which field for tables with these columns.

    Raises:
        ValueError: A field or a column does not exist, or there is none for the sale's number.
    """
    if set(mapping) - set(FIELDS) or set(mapping.values()) - set(columns):
        raise ValueError("a mapping goes from known fields to columns of the table")
    if "number" not in mapping:
        raise ValueError("the number of the sale needs a column")
    kept = json.loads(store.setting(_SETTING) or "{}")
    kept[_signature(columns)] = dict(mapping)
    store.put_setting(_SETTING, json.dumps(kept))


def take_in(store: Store, content: bytes, mapping: Mapping[str, str], by: str = "") -> TakenIn:
    """Attach the sales of a till's table to their cases.

    A line belongs to the case it names, else to the cases that have a sale of that number
    already. What a line leaves empty stays as it was noted.

    Args:
        store: The book.
        content: The file: UTF-8 or Windows-1252; comma, semicolon or tab.
        mapping: Column name per field.
        by: Who takes it in.

    Raises:
        IdKeyError: The file is no table, or has no column for the number.
    """
    lines, problems = till_lines(content, mapping)
    attached: dict[str, None] = {}
    unmatched = []
    for line in lines:
        found = (line.case_id,) if line.case_id else store.cases_of_sale(line.sale.number)
        for case_id in found:
            try:
                _attach(store, case_id, line.sale, by)
            except Missing:
                found = ()
            else:
                attached[case_id] = None
        if not found:
            unmatched.append(line)
    return TakenIn(attached=tuple(attached), unmatched=tuple(unmatched), problems=tuple(problems))


def till_lines(
    content: bytes, mapping: Mapping[str, str]
) -> tuple[tuple[TillLine, ...], tuple[str, ...]]:
    """The lines of a till's table, and what could not be read of it.

    Raises:
        IdKeyError: The file is no table, or has no column for the number.
    """
    columns, rows = _table(content)
    number = mapping.get("number")
    if number not in columns:
        raise IdKeyError(
            f"The table has no column {number!r} for the number of the sale.",
            f"Choose one of its columns: {', '.join(columns)}.",
        )
    lines, problems = [], []
    for line, row in rows:
        cells = {f: told(row.get(column, "")).strip() for f, column in mapping.items()}
        if not cells["number"]:
            problems.append(f"Line {line} has no sale number and was left out.")
            continue
        day = iso_day(cells.get("date", ""))
        if day is None:
            problems.append(f"Line {line}: {cells['date']!r} is no date; it was left empty.")
        papers = Papers(**{name: cells.get(f"papers_{name}", "") for name in PAPER_FIELDS})
        plain = {name: cells.get(name, "") for name in SALE_FIELDS}
        sale = Sale(**{**plain, "date": day or ""}, papers=papers)
        lines.append(TillLine(line=line, case_id=cells.get("case", ""), sale=sale))
    return tuple(lines), tuple(problems)


def sale_table(store: Store, case_ids: Iterable[str], *, buyers: bool = False) -> str:
    """The sales of cases as CSV, one line a sale, safe to open in a spreadsheet.

    Args:
        store: The book.
        case_ids: The cases, in the order of the lines; those without a sale have one line.
        buyers: Whether to write who bought.
    """
    fields_told = [f for f in FIELDS[1:] if buyers or f != "buyer"]
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow([name for name, _ in _OWN] + fields_told)
    for case_id in case_ids:
        stored = store.case(case_id)
        for sale in store.sales(case_id) or (None,):
            writer.writerow(map(harmless, _cells(stored, sale, fields_told)))
    return text.getvalue()


def _cells(stored: StoredCase, sale: Sale | None, told_fields: Sequence[str]) -> list[str]:
    cells = [own(stored) for _, own in _OWN]
    for name in told_fields:
        if sale is None:
            cells.append("")
        elif name in SALE_FIELDS:
            cells.append(getattr(sale, name))
        else:
            cells.append(getattr(sale.papers, name.removeprefix("papers_")))
    return cells


def _attach(store: Store, case_id: str, sale: Sale, by: str) -> None:
    known = next((one for one in store.sales(case_id) if one.number == sale.number), None)
    if known is not None:
        given = {n: getattr(sale, n) for n in SALE_FIELDS if getattr(sale, n)}
        papers = {n: getattr(sale.papers, n) for n in PAPER_FIELDS if getattr(sale.papers, n)}
        sale = replace(known, **given, papers=replace(known.papers, **papers))
    store.attach_sale(case_id, sale, by)


def _table(content: bytes) -> tuple[list[str], list[tuple[int, dict[str, str]]]]:
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError:
        text = content.decode("cp1252", "replace")
    first = next((line for line in text.splitlines() if line.strip()), "")
    delimiter = max(",;\t", key=first.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    rows = [(reader.line_num, row) for row in reader if any(cell.strip() for cell in row)]
    if not rows or len(rows[0][1]) < 2:
        raise IdKeyError(
            "The file is no table: its first line names no columns.",
            "Save it as CSV with a line of column names at the top.",
        )
    columns = [told(cell).strip() for cell in rows[0][1]]
    return columns, [(line, dict(zip(columns, row, strict=False))) for line, row in rows[1:]]


def _signature(columns: Sequence[str]) -> str:
    return "|".join(columns)
