"""The printed key: what one sees is what one gets."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt

from idkey.app.parts.desk import Desk
from idkey.app.workshop.print_page import PrintPage
from idkey.app.workshop.printing import Form
from tests.app.workshop.table import Table


@pytest.fixture
def table(qtbot, tmp_path: Path) -> Iterator[Table]:
    made = Table(qtbot, tmp_path, "red-kneed-tarantulas")
    yield made
    made.state.close()


@pytest.fixture
def page(qtbot, table: Table, desk: Desk) -> PrintPage:
    made = PrintPage(table.state, desk)
    qtbot.addWidget(made)
    made.show()
    return made


def written(qtbot, page: PrintPage, form: Form, file: Path) -> Path:
    page.write(form, file)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    return file


def test_what_was_edited_is_shown_and_written_in_every_form(
    qtbot, table: Table, page: PrintPage, tmp_path: Path
):
    key = table.editing.key
    lead = replace(key.couplets[0].leads[0], statement="Legs <b>banded</b> & bold")
    first = replace(key.couplets[0], leads=(lead, *key.couplets[0].leads[1:]))
    table.state.change(replace(key, couplets=(first, *key.couplets[1:])), "A lead")
    assert "Legs <b>banded</b> & bold" in page.preview.toPlainText()

    page.figures.setChecked(False)
    pdf = written(qtbot, page, Form.PDF, tmp_path / "key.pdf")
    html = written(qtbot, page, Form.HTML, tmp_path / "key.html")
    text = written(qtbot, page, Form.TEXT, tmp_path / "key.txt")

    assert "Legs <b>banded</b> & bold" in PdfReader(pdf).pages[0].extract_text()
    assert "Legs &lt;b&gt;banded&lt;/b&gt; &amp; bold" in html.read_text("utf-8")
    assert "Legs <b>banded</b> & bold" in text.read_text("utf-8")
    assert str(text) in page.said.text()


def test_the_layout_and_the_drawings_are_those_one_chose(qtbot, table: Table, page: PrintPage):
    with_drawings = page.preview.toHtml().count("<img ")
    indented = next(b for b in page.layout_choice._group.buttons() if b.text() == "Indented")
    qtbot.mouseClick(indented, Qt.MouseButton.LeftButton)
    page.figures.setChecked(False)

    assert with_drawings > len(table.editing.key.couplets)
    assert page.preview.toHtml().count("<img ") == 0
    assert "1′" in page.preview.toPlainText()


def test_a_folder_that_is_gone_and_a_key_without_couplets_are_told(
    qtbot, table: Table, page: PrintPage, tmp_path: Path
):
    written(qtbot, page, Form.TEXT, tmp_path / "gone" / "key.txt")
    said = page.said.text()
    table.state.change(replace(table.editing.key, couplets=()), "No couplets")

    assert "cannot be written" in said
    assert "no couplets yet" in page.preview.toPlainText()
    assert not any(save.isEnabled() for save in page.saves.values())
