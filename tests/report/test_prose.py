"""Lines of text on a sheet."""

import io
from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pypdf import PdfReader

from idkey.report.paper.prose import Piece, Type, broken, paragraph, pieces
from idkey.report.paper.sheet import Sheet
from idkey.report.paper.table import Column, table

KIND = Type(size=9)


@pytest.fixture(scope="module")
def sheet() -> Iterator[Sheet]:
    """A sheet to measure on."""
    sheet = Sheet()
    yield sheet
    sheet.close()


def _text(lines: tuple[tuple[Piece, ...], ...]) -> str:
    return "\n".join("".join(text for text, _ in line) for line in lines)


def _wide(sheet: Sheet, line: tuple[Piece, ...]) -> float:
    total = 0.0
    for text, style in line:
        sheet.font(KIND.size, style)
        total += sheet.get_string_width(text)
    return total


@settings(max_examples=60)
@given(
    content=st.lists(
        st.tuples(st.text("ab -.\n漢ß", max_size=30), st.sampled_from(["", "B", "I"])), max_size=4
    ),
    width=st.floats(12, 60),
)
def test_breaking_loses_no_sign_and_no_line_is_too_wide(
    sheet: Sheet, content: list[Piece], width: float
):
    block = broken(sheet, content, width, KIND)
    set_text = _text(block.lines).replace("\n", "").replace(" ", "")
    given_text = sheet.printable("".join(text for text, _ in content))

    assert set_text == given_text.replace("\n", "").replace(" ", "")
    assert all(_wide(sheet, line) <= width + 0.1 for line in block.lines)


def test_no_line_starts_with_the_comma_after_a_name(sheet: Sheet):
    content = pieces(("Lampa rubra",), "established as Lampa rubra, not Lampa nigra")

    for width in range(15, 60):
        lines = _text(broken(sheet, content, width, KIND).lines).splitlines()
        assert not [line for line in lines if line.startswith(",")]


def test_signs_the_font_lacks_are_written_as_their_code(sheet: Sheet):
    assert sheet.printable("black 漢\t🦂") == "black [U+6F22] [U+1F982]"


def _read(sheet: Sheet) -> PdfReader:
    return PdfReader(io.BytesIO(sheet.finished()))


def test_a_long_paragraph_runs_over_pages_without_loss():
    sheet = Sheet()
    paragraph(sheet, (("word " * 4000, ""),), KIND)
    pages = [page.extract_text() for page in _read(sheet).pages]

    assert len(pages) > 2
    assert sum(text.count("word") for text in pages) == 4000


def test_the_head_of_a_table_comes_again_on_each_page():
    sheet = Sheet()
    columns = (Column(head="Left", share=0.5), Column(head="Right", share=0.5))
    table(sheet, columns, [((("cell", ""),), (("b", "B"),))] * 120)
    pages = [page.extract_text() for page in _read(sheet).pages]

    assert len(pages) > 1
    assert all(text.count("Right") == 1 for text in pages)
    assert sum(text.count("cell") for text in pages) == 120
