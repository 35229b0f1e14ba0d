"""New keys: from a spreadsheet, column by column; empty; from the small leaf key."""

from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from idkey.app.library.new_dialog import NewDialog
from idkey.app.library.part import New
from idkey.app.library.state import LibraryState
from idkey.app.library.view import LibraryView
from idkey.formats.folder import read_key
from idkey.formats.sheet_guess import Role
from idkey.model.character import Kind
from idkey.model.score import Shows, Spans
from idkey.model.taxon import Danger

BEETLES = """\
Species,Author,Colour,Length (mm),Spots,Remark
Alpha prima,Novak 1900,red; brown,3.5-4.2,7,
Beta secunda,,red,4-5,2,
Gamma tertia,,brown,about 6,10 to 12,
Delta quarta,,black,,0,
"""


def settle(view: LibraryView, state: LibraryState, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not state.busy and not state.sheet.busy, timeout=20_000)


@pytest.fixture
def sheet(view: LibraryView, state: LibraryState, qtbot: QtBot, tmp_path: Path) -> LibraryView:
    """The library with a spreadsheet that says nothing of keys."""
    file = tmp_path / "beetles.csv"
    file.write_text(BEETLES, "utf-8")
    view.take_in(file)
    settle(view, state, qtbot)
    assert view.stack.currentWidget() is view.sheet
    return view


def test_each_column_says_what_it_seems_to_be_and_why(sheet: LibraryView, qtbot: QtBot):
    model = sheet.sheet.model
    QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Warning)
    across = Qt.Orientation.Horizontal
    heads = [model.headerData(n, across) for n in range(model.columnCount())]

    assert heads == [
        "Species\nNames of the taxa",
        "Author\nAuthorities",
        "Colour\n3 states",
        "Length\nMeasurement in mm",
        "Spots\nCount",
        "Remark\nLeft out",
    ]
    qtbot.keyClick(sheet.sheet.table, Qt.Key.Key_End)
    assert sheet.sheet.panel.why.text() == "It has no values."


def test_a_cell_that_does_not_fit_is_listed_reached_corrected_and_the_key_made(
    sheet: LibraryView, state: LibraryState, own: Path, qtbot: QtBot
):
    page = sheet.sheet
    assert not page.make.isEnabled()
    (problem,) = page.problems.rows
    assert "cell D4: 'about 6' is no number" in problem.problem

    page.list.setFocus()
    page.list.setCurrentIndex(page.problems.index(0))
    page.list.activated.emit(page.list.currentIndex())
    place = page.table.currentIndex()
    assert (place.row(), place.column()) == (2, 3)
    assert place.data() == "◆ about 6"
    assert page.panel.heading.text() == "Length"

    override = QKeyEvent(
        QEvent.Type.ShortcutOverride, Qt.Key.Key_F2, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(page.table, override)
    assert override.isAccepted(), "F2 belongs to the window otherwise"
    qtbot.keyClick(page.table, Qt.Key.Key_Return)
    field = page.table.findChild(QLineEdit)
    field.selectAll()
    qtbot.keyClicks(field, "6")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: place.data() == "6")
    settle(sheet, state, qtbot)
    assert page.said.text().startswith("Makes a key with 4 taxa, 3 characters")
    assert "medically significant" in page.said.text()
    page.name.clear()
    qtbot.keyClicks(page.name, "Four beetles")
    with qtbot.waitSignal(sheet.edit_asked, timeout=10_000) as heard:
        page.make.click()
    settle(sheet, state, qtbot)

    key = read_key(heard.args[0])
    assert heard.args[0] == own / "four-beetles"
    assert key.title == "Four beetles"
    assert key.taxon["alpha_prima"].hazard.level is Danger.SIGNIFICANT
    (colour,) = key.cells["alpha_prima", "colour"]
    assert isinstance(colour.value, Shows)
    assert set(colour.value.states) == {"red", "brown"}
    (length,) = key.cells["gamma_tertia", "length"]
    assert length.value == Spans(low=6, high=6)
    assert "four-beetles" in state.keys


def test_a_person_may_say_otherwise_by_keyboard(
    sheet: LibraryView, state: LibraryState, qtbot: QtBot
):
    page = sheet.sheet
    page.table.setCurrentIndex(page.model.index(0, 4))
    qtbot.keyClick(page.panel.role, Qt.Key.Key_End)
    settle(sheet, state, qtbot)
    assert state.sheet.session.columns[4].role is Role.SKIP
    assert page.panel.why.text() == "You said so."
    assert not page.panel.kind.isVisible()

    page.table.setCurrentIndex(page.model.index(0, 2))
    page.panel.kind.setCurrentIndex(list(Kind).index(Kind.ORDINAL))
    page.panel.states.setPlainText("red\nbrown\nblack\n")
    qtbot.waitUntil(lambda: state.sheet.session.columns[2].states == ("red", "brown", "black"))
    settle(sheet, state, qtbot)
    assert state.sheet.session.columns[2].kind is Kind.ORDINAL


def test_what_was_said_of_columns_outlives_the_look(
    sheet: LibraryView, state: LibraryState, desk, qtbot: QtBot
):
    state.sheet.set_title("Half done")
    sheet.hide()
    again = LibraryView(state, desk)
    qtbot.addWidget(again)

    assert again.stack.currentWidget() is again.sheet
    assert again.sheet.name.text() == "Half done"
    assert again.sheet.model.rowCount() == 4
    again.close_work()


@pytest.mark.parametrize(
    ("new", "taxa", "drawn"),
    [
        pytest.param(New.EMPTY, 1, 0, id="an empty key"),
        pytest.param(New.LEAVES, 12, 31, id="from the small leaf key"),
    ],
)
def test_a_new_key_is_made_under_its_title_and_opened(
    view: LibraryView, state: LibraryState, own: Path, qtbot: QtBot, new: New, taxa: int,
    drawn: int,
):  # fmt: skip
    view.head.new_asked.emit(new)
    (dialog,) = view.findChildren(NewDialog)
    qtbot.keyClicks(dialog.title, "My  first key")
    with qtbot.waitSignal(view.edit_asked, timeout=10_000) as heard:
        qtbot.keyClick(dialog.title, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not state.busy)

    key = read_key(heard.args[0])
    assert heard.args[0] == own / "my-first-key"
    assert (key.title, key.version, len(key.taxa)) == ("My first key", "0.1.0", taxa)
    assert len(list(heard.args[0].glob("images/*/*"))) == drawn
