"""A key as a spreadsheet: its matrix as CSV, or the whole of it as XLSX or ODS.

The matrix has a row a taxon and a column a character; `cell_text` says how a cell is written.
CSV holds the matrix alone. XLSX and ODS have further sheets for the rest and are lossless.
"""

import csv
import io
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import Any

from openpyxl import Workbook
from openpyxl.styles import Font
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.worksheet import Worksheet

from idkey.errors import IdKeyError
from idkey.formats.cell_safe import LONGEST_CELL, safe
from idkey.formats.cell_text import cell_text
from idkey.formats.ods_writing import ods_bytes
from idkey.formats.plain import canonical, documents
from idkey.formats.replacing import replacing
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.source import Basis

MATRIX = "matrix"
REMARKS = "remarks"
KEY = "key"
LISTS = ("characters", "taxa", "labels", "couplets", "sources", "checks")
"""Sheets that hold one entry of the key a row, with its fields as columns."""

HEAD = ("taxon", "name", "authority", "family")
REMARK_HEAD = ("taxon", "character", "sex", "stage", "basis", "sources", "note")

_WIDEST = 60
_BOLD = Font(bold=True)


def matrix_rows(key: Key) -> Iterator[tuple[str, ...]]:
    """The matrix: a heading, then a row a taxon."""
    yield (*HEAD, *(safe(character.id) for character in key.characters))
    for taxon in key.taxa:
        about = (taxon.id, taxon.name, taxon.authority, taxon.family)
        cells = (
            cell_text(key.cells.get((taxon.id, c.id), ()), c.state_ids) for c in key.characters
        )
        yield tuple(safe(text) if text else "" for text in (*about, *cells))


def write_csv(key: Key, file: Path) -> tuple[str, ...]:
    """Write the matrix to `file` as CSV in UTF-8; returns what has no place in it.

    Raises:
        IdKeyError: The file cannot be written.
    """
    key = canonical(key)
    text = io.StringIO()
    csv.writer(text, lineterminator="\r\n").writerows(matrix_rows(key))
    _write(file, b"\xef\xbb\xbf" + text.getvalue().encode())
    return tuple(_left_out(key))


def _left_out(key: Key) -> Iterator[str]:
    if any(s.sources or s.note or s.basis is not Basis.SOURCE for s in key.scores):
        yield "Sources, remarks and the basis of scores have no place in a CSV matrix."
    lost = {
        "labels": key.labels,
        "couplets": key.couplets,
        "checks": key.checks,
        "cautions": key.cautions,
        "glossary": key.glossary,
        "authors": key.authors,
    }
    if named := [name for name, value in lost.items() if value]:
        yield f"The key's {', '.join(named)} have no place in a CSV matrix."
    yield "Characters are named by their ids; what is said about them is left out."
    yield (
        "Of taxa only name, authority and family are written; dangers, permits and the rest "
        "are left out."
    )


def write_xlsx(key: Key, file: Path) -> tuple[str, ...]:
    """Write the whole key to `file` as XLSX; returns what has no place in it, which is nothing.

    Raises:
        IdKeyError: A text is too long for a cell, or the file cannot be written.
    """
    book = Workbook()
    first = book.active
    if not isinstance(first, Worksheet):
        raise TypeError("a new workbook has a sheet")
    for title, rows in key_sheets(key):
        sheet = first if title == MATRIX else book.create_sheet()
        sheet.title = title
        _fill(sheet, rows)
    out = io.BytesIO()
    book.save(out)
    _write(file, out.getvalue())
    return ()


def write_ods(key: Key, file: Path) -> tuple[str, ...]:
    """Write the whole key to `file` as ODS; as `write_xlsx`."""
    sheets = [(title, [*map(_fitting(title), rows)]) for title, rows in key_sheets(key)]
    _write(file, ods_bytes(sheets))
    return ()


def key_sheets(key: Key) -> Iterator[tuple[str, Iterable[tuple[str, ...]]]]:
    """Name and rows of every sheet of a whole key; the matrix comes first."""
    key = canonical(key)
    yield MATRIX, matrix_rows(key)
    yield REMARKS, _remark_rows(key)
    whole = documents(key)
    lists = {name: whole.pop(name) for name in LISTS}
    yield KEY, [("field", "value"), *((n, safe(v)) for n, v in whole.items())]
    for name, entries in lists.items():
        yield name, _entry_rows(_listed(entries))


def _listed(entries: Any) -> list[dict[str, Any]]:
    if isinstance(entries, dict):
        return [{"id": own, **entry} for own, entry in entries.items()]
    return [{n: v for n, v in entry.items() if n != "scores"} for entry in entries]


def _entry_rows(entries: list[dict[str, Any]]) -> Iterator[tuple[str, ...]]:
    fields = tuple(dict.fromkeys(field for entry in entries for field in entry)) or ("id",)
    yield fields
    for entry in entries:
        yield tuple(safe(entry[field]) if field in entry else "" for field in fields)


def _remark_rows(key: Key) -> Iterator[tuple[str, ...]]:
    yield REMARK_HEAD
    for score in key.scores:
        if row := _remark(score):
            yield row


def _remark(score: Score) -> tuple[str, ...] | None:
    if not (score.sources or score.note) and score.basis is Basis.SOURCE:
        return None
    said = (score.taxon, score.character, score.sex, score.stage)
    basis = None if score.basis is Basis.SOURCE else score.basis
    sources = safe(list(score.sources)) if score.sources else ""
    words = tuple("" if word is None else safe(str(word)) for word in (*said, basis))
    return (*words, sources, safe(score.note) if score.note else "")


def _fitting(title: str) -> Callable[[tuple[str, ...]], tuple[str, ...]]:
    """Refuses rows of a sheet in which a text is too long for a cell."""

    def row(cells: tuple[str, ...]) -> tuple[str, ...]:
        for text in cells:
            if len(text) > LONGEST_CELL:
                raise IdKeyError(
                    f"A text of {len(text)} characters is too long for a cell of the sheet "
                    f"'{title}': {text[:40]}…",
                    "Shorten it, or hand the key over as a package.",
                )
        return cells

    return row


def _fill(sheet: Worksheet, rows: Iterable[tuple[str, ...]]) -> None:
    widths: dict[int, int] = {}
    for number, row in enumerate(map(_fitting(sheet.title), rows), start=1):
        for column, text in enumerate(row, start=1):
            if not text:
                continue
            cell = sheet.cell(number, column)
            cell.value = text
            cell.data_type = "s"  # a text, whatever it looks like
            if number == 1:
                cell.font = _BOLD
            widths[column] = max(widths.get(column, 0), len(text))
    for column, width in widths.items():
        sheet.column_dimensions[get_column_letter(column)].width = min(width + 2, _WIDEST)
    sheet.freeze_panes = "C2" if sheet.title == MATRIX else "B2"


def _write(file: Path, raw: bytes) -> None:
    with replacing(file) as new:
        new.write_bytes(raw)
