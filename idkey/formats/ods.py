"""The sheets of an OpenDocument spreadsheet, as rows of text."""

import io
import zipfile
import zlib
from collections.abc import Iterator
from xml.etree.ElementTree import Element, ParseError

import defusedxml.ElementTree as SafeTree
from defusedxml.common import DefusedXmlException

from idkey.errors import IdKeyError

MOST_REPEATED = 200_001
"""Empty rows and cells are stored as one with a count, which may be anything."""

MOST_ACROSS = 1_000_001
"""A row that is longer is cut; whoever reads it refuses it."""

_TABLE = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
_OFFICE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
_TEXT = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"


def ods_sheets(raw: bytes, name: str) -> Iterator[tuple[str, Iterator[list[str]]]]:
    """Name and rows of each sheet.

    Args:
        raw: The file.
        name: Its name.

    Raises:
        IdKeyError: It is damaged.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(raw)) as archive:
            root = SafeTree.fromstring(archive.read("content.xml"), forbid_dtd=True)
    except (
        zipfile.BadZipFile, zlib.error, KeyError, ValueError, OSError, EOFError, RuntimeError,
        NotImplementedError, ParseError, DefusedXmlException, LookupError,
    ) as err:  # fmt: skip
        raise IdKeyError(f"{name} is damaged, or no ODS.", "Save the sheet again.") from err
    for table in root.iter(f"{_TABLE}table"):
        yield table.get(f"{_TABLE}name") or "sheet", _rows(table)


def _rows(table: Element) -> Iterator[list[str]]:
    empty = 0
    for row in table.iter(f"{_TABLE}table-row"):
        cells = _cells(row)
        count = _count(row, "number-rows-repeated")
        if not cells:
            empty += count  # told only when something follows
            continue
        yield from [[]] * min(empty, MOST_REPEATED)
        empty = 0
        for _ in range(count):
            yield cells


def _cells(row: Element) -> list[str]:
    found: list[str] = []
    empty = 0
    for cell in row:
        if cell.tag not in (f"{_TABLE}table-cell", f"{_TABLE}covered-table-cell"):
            continue
        text = _content(cell)
        count = _count(cell, "number-columns-repeated")
        if not text:
            empty += count
            continue
        found += [""] * min(empty, MOST_REPEATED)
        empty = 0
        found += [text] * count
        if len(found) > MOST_ACROSS:
            return found[:MOST_ACROSS]
    return found


def _content(cell: Element) -> str:
    kind = cell.get(f"{_OFFICE}value-type")
    if kind in ("float", "percentage", "currency"):
        number = cell.get(f"{_OFFICE}value") or ""
        return number.removesuffix(".0")
    if kind in ("date", "time"):
        return f"\x00date {cell.get(f'{_OFFICE}{kind}-value') or ''}"
    return "\n".join("".join(_words(line)) for line in cell.findall(f"{_TEXT}p")).strip()


def _words(element: Element) -> Iterator[str]:
    yield element.text or ""
    for child in element:
        if child.tag == f"{_TEXT}s":
            yield " " * min(_number(child.get(f"{_TEXT}c")), 100)
        elif child.tag == f"{_TEXT}tab":
            yield "\t"
        elif child.tag == f"{_TEXT}line-break":
            yield "\n"
        elif child.tag != f"{_OFFICE}annotation":
            yield from _words(child)
        yield child.tail or ""


def _count(element: Element, name: str) -> int:
    return min(_number(element.get(f"{_TABLE}{name}")), MOST_REPEATED)


def _number(text: str | None) -> int:
    return int(text) if text is not None and text.isascii() and text.isdecimal() else 1
