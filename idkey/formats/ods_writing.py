"""Sheets of text as an OpenDocument spreadsheet."""

import io
import re
import zipfile
from collections.abc import Iterable, Iterator
from xml.sax.saxutils import escape, quoteattr

from idkey.formats.archive import entry_of
from idkey.formats.xml_nodes import legal

MEDIA = "application/vnd.oasis.opendocument.spreadsheet"

_URN = "urn:oasis:names:tc:opendocument:xmlns"
_SPACES = "".join(f' xmlns:{n}="{_URN}:{n}:1.0"' for n in ("office", "table", "text"))
_HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n'
_MANIFEST = (
    f'{_HEAD}<manifest:manifest xmlns:manifest="{_URN}:manifest:1.0" manifest:version="1.3">'
    f'<manifest:file-entry manifest:full-path="/" manifest:media-type="{MEDIA}"/>'
    '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>'
    "</manifest:manifest>\n"
)
_RUN = re.compile(r"^ +|(?<= ) +")

Rows = Iterable[tuple[str, ...]]


def ods_bytes(sheets: Iterable[tuple[str, Rows]]) -> bytes:
    """A spreadsheet of texts; the same sheets give the same bytes.

    Args:
        sheets: Name and rows of each sheet.
    """
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        # The kind of document comes first and unpacked, so that it can be told from the start.
        archive.writestr(entry_of("mimetype"), MEDIA, zipfile.ZIP_STORED)
        content = "".join(_content(sheets))
        archive.writestr(entry_of("content.xml"), content, zipfile.ZIP_DEFLATED)
        archive.writestr(entry_of("META-INF/manifest.xml"), _MANIFEST, zipfile.ZIP_DEFLATED)
    return out.getvalue()


def _content(sheets: Iterable[tuple[str, Rows]]) -> Iterator[str]:
    yield f'{_HEAD}<office:document-content{_SPACES} office:version="1.3"><office:body>'
    yield "<office:spreadsheet>"
    for title, rows in sheets:
        yield f"<table:table table:name={quoteattr(legal(title))}>"
        for row in rows:
            cells = "".join(map(_cell, row)) or "<table:table-cell/>"
            yield f"<table:table-row>{cells}</table:table-row>\n"
        yield "</table:table>"
    yield "</office:spreadsheet></office:body></office:document-content>\n"


def _cell(text: str) -> str:
    if not text:
        return "<table:table-cell/>"
    lines = "".join(f"<text:p>{_line(line)}</text:p>" for line in text.split("\n"))
    return f'<table:table-cell office:value-type="string">{lines}</table:table-cell>'


def _line(line: str) -> str:
    """A line in which blanks that stand together are kept, and tabs."""
    parts = []
    last = 0
    for run in _RUN.finditer(line):
        parts += [escape(legal(line[last : run.start()])), f'<text:s text:c="{len(run[0])}"/>']
        last = run.end()
    parts.append(escape(legal(line[last:])))
    return "".join(parts).replace("\t", "<text:tab/>")
