"""Spreadsheets as rows of text, bounded: CSV, XLSX, ODS."""

import csv
import io
import warnings
import zipfile
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from typing import Any
from zlib import error as zlib_error

import openpyxl
from defusedxml.common import DefusedXmlException

from idkey.errors import IdKeyError
from idkey.formats.ods import ods_sheets

LARGEST_SHEET_FILE = 32 * 2**20
LARGEST_UNPACKED = 128 * 2**20
MOST_ROWS = 200_000
MOST_CELLS = 1_000_000
MOST_SHEETS = 50
MOST_ABOVE = 20

DATE = "\x00date "
"""What a cell starts with that the spreadsheet took for a date; the rest is the ISO date."""

_DELIMITERS = ",;\t|"
_SMALLER = "Split it, or remove rows and columns that are not needed."
_ENDINGS = ".csv, .tsv, .xlsx or .ods"


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet.

    Attributes:
        name: Its name; the file's for CSV.
        rows: Its cells as text, without empty rows and cells at the end; rows differ in length.
        above: How many rows stand above them in the file, such as a title.
    """

    name: str
    rows: tuple[tuple[str, ...], ...]
    above: int = 0

    def cell(self, row: int, column: int) -> str:
        """The text there, counted from 0; empty beyond the end."""
        cells = self.rows[row] if row < len(self.rows) else ()
        return cells[column] if column < len(cells) else ""


def headed(sheet: Sheet) -> Sheet:
    """The sheet from its headings on, without the title and empty rows that stand above them."""
    filled = [sum(map(bool, row)) for row in sheet.rows[:MOST_ABOVE]]
    first = next((number for number, cells in enumerate(filled) if cells > 1), 0)
    return replace(sheet, rows=sheet.rows[first:], above=sheet.above + first)


def reference(row: int, column: int) -> str:
    """The name of a cell, such as "C4", for a row and a column counted from 0."""
    letters = ""
    number = column + 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(65 + rest) + letters
    return f"{letters}{row + 1}"


def parse_sheets(raw: bytes, name: str, ending: str = "") -> tuple[Sheet, ...]:
    """The sheets in `raw`; at least one with at least one row.

    Args:
        raw: The file.
        name: Its name.
        ending: What kind it is, such as ``".ods"``; empty goes by the name.

    Raises:
        IdKeyError: It is no spreadsheet, damaged, empty, or larger than any key.
    """
    if len(raw) > LARGEST_SHEET_FILE:
        size = LARGEST_SHEET_FILE // 2**20
        raise IdKeyError(f"{name} is larger than {size} MB.", _SMALLER)
    ending = ending or name[name.rfind(".") :].lower()
    readers = {".csv": _csv, ".tsv": _csv, ".txt": _csv, ".xlsx": _xlsx, ".ods": _ods}
    if ending not in readers:
        raise IdKeyError(f"{name} is no kind of spreadsheet.", f"Save it as {_ENDINGS}.")
    sheets = tuple(sheet for sheet in readers[ending](raw, name) if sheet.rows)
    if not sheets:
        raise IdKeyError(f"{name} is empty.", "Choose another file.")
    return sheets


def _trimmed(name: str, file: str, rows: Iterable[Iterable[Any]]) -> Sheet:
    """The sheet of these rows; stops reading as soon as there are too many."""
    kept: list[tuple[str, ...]] = []
    count = 0
    for number, row in enumerate(rows):
        cells = [_text(value) for value in row]
        count += len(cells)
        if number >= MOST_ROWS or count > MOST_CELLS:
            problem = f"The sheet '{name[:40]}' in {file} has more rows or cells than any key."
            raise IdKeyError(problem, _SMALLER)
        while cells and not cells[-1]:
            cells.pop()
        kept.append(tuple(cells))
    while kept and not kept[-1]:
        kept.pop()
    return Sheet(name, tuple(kept))


def _text(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, float):
        return repr(int(value)) if value.is_integer() and abs(value) < 2**53 else repr(value)
    if isinstance(value, date | datetime | time):
        return f"{DATE}{value.isoformat()}"
    if isinstance(value, timedelta):
        return f"{DATE}{value}"
    return str(value).strip()


def _csv(raw: bytes, name: str) -> Iterator[Sheet]:
    text = _decoded(raw)
    if "\x00" in text:
        raise IdKeyError(f"{name} is no text.", f"Save the sheet as {_ENDINGS}.")
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=_delimiter(text), strict=False)
    try:
        yield _trimmed(name, name, reader)
    except csv.Error as err:
        raise IdKeyError(
            f"{name}, line {reader.line_num}, is no CSV: {err}.", "Save the sheet again."
        ) from err


def _decoded(raw: bytes) -> str:
    if raw[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return raw.decode("utf-16", "replace")
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError:
        return raw.decode("cp1252", "replace")


def _delimiter(text: str) -> str:
    """The sign that most often parts the cells of the first lines, outside of quotes."""
    start = "".join(part for n, part in enumerate(text[:20_000].split('"')) if n % 2 == 0)
    first = "\n".join(start.splitlines()[:5])
    return max(_DELIMITERS, key=lambda sign: (first.count(sign), -_DELIMITERS.index(sign)))


def _xlsx(raw: bytes, name: str) -> Iterator[Sheet]:
    try:
        _check_zip(raw, name)
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # it warns of styles it does not know
            found = list(_sheets_of(raw, name))
    except IdKeyError:
        raise
    except (
        zipfile.BadZipFile, KeyError, ValueError, TypeError, AttributeError, IndexError, OSError,
        EOFError, NotImplementedError, RuntimeError, SyntaxError, DefusedXmlException,
        OverflowError, zlib_error,
    ) as err:  # fmt: skip
        raise IdKeyError(f"{name} is damaged, or no XLSX.", "Save the sheet again.") from err
    yield from found


def _sheets_of(raw: bytes, name: str) -> Iterator[Sheet]:
    book = openpyxl.load_workbook(io.BytesIO(raw), read_only=True, data_only=True, keep_links=False)
    if len(book.worksheets) > MOST_SHEETS:
        raise IdKeyError(f"{name} has more than {MOST_SHEETS} sheets.", _SMALLER)
    for sheet in book.worksheets:
        yield _trimmed(sheet.title, name, sheet.iter_rows(values_only=True))


def _ods(raw: bytes, name: str) -> Iterator[Sheet]:
    _check_zip(raw, name)
    for title, rows in ods_sheets(raw, name):
        yield _trimmed(title, name, rows)


def _check_zip(raw: bytes, name: str) -> None:
    """Refuse a zip that unpacks to more than any spreadsheet of a key."""
    try:
        entries = zipfile.ZipFile(io.BytesIO(raw)).infolist()
    except (zipfile.BadZipFile, ValueError, OSError, NotImplementedError) as err:
        raise IdKeyError(f"{name} is damaged.", "Save the sheet again.") from err
    total = sum(entry.file_size for entry in entries)
    if len(entries) > 1000 or total > LARGEST_UNPACKED:
        raise IdKeyError(f"{name} unpacks to more than any key needs.", _SMALLER)
