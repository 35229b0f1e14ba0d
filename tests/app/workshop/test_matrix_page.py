"""The matrix as a grid: typed into, copied, filled, searched, by keyboard."""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from idkey.app.parts.desk import Desk
from idkey.app.workshop.matrix_model import MatrixModel
from idkey.app.workshop.matrix_page import MatrixPage
from idkey.app.workshop.matrix_search import Sought
from idkey.app.workshop.mistakes_dialog import MistakesDialog
from idkey.app.workshop.state import WorkshopState
from idkey.engine.audit import Remark, Weakness
from idkey.formats.folder import read_key
from idkey.model.score import Inapplicable, Shows, Spans
from idkey.model.source import Basis

KEY, CTRL, SHIFT = Qt.Key, Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def page(workshop: WorkshopState, own: Path, desk: Desk, qtbot: QtBot) -> MatrixPage:
    workshop.open(own)
    made = MatrixPage(workshop, desk)
    qtbot.addWidget(made)
    made.resize(1000, 700)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    made.focus_first()
    return made


def said(page: MatrixPage, row: int, column: int) -> str:
    return page.model.data(page.model.index(row, column))


def presses(qtbot: QtBot, keys: str, control: Qt.KeyboardModifier | None = None) -> None:
    """Press a key on whatever has the focus, or type a text there."""
    focus = QApplication.focusWidget()
    if control is not None:
        qtbot.keyClick(focus, keys, control)
        return
    for sign in keys:
        qtbot.keyClick(QApplication.focusWidget(), sign)


def press(qtbot: QtBot, key: Qt.Key, control: Qt.KeyboardModifier | None = None) -> None:
    widget = QApplication.focusWidget()
    assert isinstance(widget, QWidget)
    if control is None:
        qtbot.keyClick(widget, key)
    else:
        qtbot.keyClick(widget, key, control)


def test_the_matrix_is_a_sound_model(
    own: Path, desk: Desk, qtmodeltester: ModelTester, qapp: QApplication
):
    key = read_key(own)
    model = MatrixModel(desk.language)
    model.show_key(key, key.taxa, key.characters)

    qtmodeltester.check(model)
    assert model.rowCount() == len(key.taxa)
    spoken = model.data(model.index(0, 0), Qt.ItemDataRole.AccessibleTextRole)
    assert key.taxa[0].name in spoken
    assert key.characters[0].name in spoken


def test_typing_takes_a_state_and_goes_down(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    cell = page.grid.cell
    character = page.model.characters[0]
    other = next(s for s in character.states if s.label not in said(page, 0, 0))
    presses(qtbot, other.label)
    press(qtbot, KEY.Key_Return)

    (score,) = workshop.editing.key.cells[cell]
    assert score.value == Shows({other.id: None})
    assert page.grid.currentIndex().row() == 1
    assert workshop.editing.past[-1].words == f"{character.name}: {page.model.taxa[0].name}"
    workshop.undo()
    assert not workshop.editing.dirty


def test_what_changed_while_nobody_saw_it_is_there_when_one_comes_back(
    page: MatrixPage, workshop: WorkshopState
):
    page.hide()
    key = workshop.editing.key
    renamed = replace(key.taxa[0], name="Another name")
    workshop.change(replace(key, taxa=(renamed, *key.taxa[1:])), "A name")
    rested = page.model.taxa == key.taxa
    page.show()

    assert rested
    assert page.model.taxa == workshop.editing.key.taxa


def test_what_no_state_says_stays_in_the_field_and_is_explained(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    presses(qtbot, "zzz")
    press(qtbot, KEY.Key_Return)

    assert page.entry.isVisible()
    assert page.entry.text() == "zzz"
    assert "is no state" in page.entry.hint.text()
    assert workshop.editing.past == ()
    press(qtbot, KEY.Key_Escape)
    assert not page.entry.isVisible()


def test_delete_fill_and_paste_are_one_step_each(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    before = workshop.editing.key
    press(qtbot, KEY.Key_C, CTRL)
    for _ in range(2):
        press(qtbot, KEY.Key_Down, SHIFT)
    press(qtbot, KEY.Key_Delete)
    assert [said(page, row, 0) for row in range(3)] == ["?", "?", "?"]
    press(qtbot, KEY.Key_V, CTRL)
    filled = [said(page, row, 0) for row in range(3)]
    assert len(set(filled)) == 1
    assert "?" not in filled
    assert len(workshop.editing.past) == 2

    press(qtbot, KEY.Key_Space, SHIFT)
    assert page.grid.block.characters == tuple(c.id for c in page.model.characters)
    press(qtbot, KEY.Key_A, CTRL)
    press(qtbot, KEY.Key_D, CTRL)
    cells = workshop.editing.key.cells
    for taxon, character in page.grid.block.cells:
        above = cells.get((page.model.taxa[0].id, character), ())
        values = [score.value for score in cells.get((taxon, character), ())]
        assert values == [score.value for score in above]
    for _ in range(3):
        workshop.undo()
    assert workshop.editing.key is before


def test_pasted_nonsense_changes_nothing_and_lists_the_cells(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    QApplication.clipboard().setText("zzz\tyyy\n")
    press(qtbot, KEY.Key_V, CTRL)
    dialog = next(w for w in QApplication.topLevelWidgets() if isinstance(w, MistakesDialog))

    assert len(dialog.rows.rows) == 2
    assert "'zzz' is no state" in dialog.rows.index(0).data()
    assert workshop.editing.past == ()
    dialog.accept()


def test_the_editor_of_a_cell_tells_every_change_at_once(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    cell = page.grid.cell
    press(qtbot, KEY.Key_Return)
    editor = page.editor
    assert editor.isVisible()
    assert editor.isAncestorOf(QApplication.focusWidget())

    grounds = editor.grounds
    grounds.note.setFocus()
    qtbot.keyClicks(grounds.note, "p. 12")
    press(qtbot, KEY.Key_Tab)
    assert workshop.editing.key.cells[cell][0].note == "p. 12"
    grounds.basis.setCurrentIndex(list(Basis).index(Basis.MEMORY))
    grounds.basis.activated.emit(list(Basis).index(Basis.MEMORY))
    assert workshop.editing.key.cells[cell][0].basis is Basis.MEMORY
    editor._another.click()
    assert len(workshop.editing.key.cells[cell]) == 2
    editor._less.click()
    assert len(workshop.editing.key.cells[cell]) == 1
    editor.known._group.button(1).click()
    assert workshop.editing.key.cells[cell][0].value == Inapplicable()
    editor.known._group.button(2).click()
    assert cell not in workshop.editing.key.cells
    assert len(workshop.editing.past) == 6
    press(qtbot, KEY.Key_Escape)
    assert QApplication.focusWidget() is page.grid


def test_a_range_that_is_half_typed_is_there_when_one_comes_back(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    numeric = next(c for c in page.model.characters if c.kind.numeric)
    cell, other = ((taxon.id, numeric.id) for taxon in page.model.taxa[:2])
    page.grid.go_to(cell)
    press(qtbot, KEY.Key_Return)
    fields = page.editor.value.fields
    fields["low"].selectAll()
    qtbot.keyClicks(fields["low"], "9999")
    fields["high"].setFocus()
    assert "no range" in page.editor.value.wrong.text()
    page.grid.go_to(other)
    assert page.editor.value.fields["low"].text() != "9999"
    page.grid.go_to(cell)

    assert page.editor.value.fields["low"].text() == "9999"
    assert workshop.editing.past == ()


def test_only_what_is_looked_for_is_shown_strongly(page: MatrixPage, workshop: WorkshopState):
    page.tools.which.choose(Sought.EMPTY)
    page._on_sought()
    key = workshop.editing.key
    empty = len(key.taxa) * len(key.characters) - len(key.cells)
    assert len(page.grid.delegate.strong) == empty
    assert str(empty) in page.counts.text()

    page.tools.which.choose(Sought.ALL)
    page._on_sought()
    assert page.grid.delegate.strong is None
    assert page.model.rowCount() == len(key.taxa)


def test_a_word_is_found_wherever_it_stands(page: MatrixPage, qtbot: QtBot):
    taxon, character = page.model.taxa[-1], page.model.characters[-1]
    press(qtbot, KEY.Key_F, CTRL)
    assert QApplication.focusWidget() is page.tools.finder
    qtbot.keyClicks(page.tools.finder, f"{taxon.id} {character.id}")
    press(qtbot, KEY.Key_Return)

    assert page.grid.cell == (taxon.id, character.id)
    assert QApplication.focusWidget() is page.grid
    press(qtbot, KEY.Key_Return)
    page.editor.grounds.note.setFocus()
    press(qtbot, KEY.Key_F, CTRL)
    assert QApplication.focusWidget() is page.tools.finder


def test_a_mistake_leads_to_its_cell_and_is_marked(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    qtbot.waitUntil(lambda: not workshop.busy, timeout=10_000)
    numeric = next(c for c in page.model.characters if c.kind.numeric)
    taxon = page.model.taxa[2].id
    page.grid.go_to((taxon, numeric.id))
    press(qtbot, KEY.Key_Return)
    page.editor.grounds.sources.setText("no-such-source")
    page.editor.grounds.sources.editingFinished.emit()
    qtbot.waitUntil(lambda: bool(workshop.editing.problems), timeout=10_000)

    (problem,) = [p for p in workshop.editing.problems if "no-such-source" in p.problem]
    page.grid.go_to(page.model.cell(0, 0))
    page.show_place(problem)
    assert page.grid.cell == (taxon, numeric.id)
    index = page.grid.currentIndex()
    assert page.model.face(index.row(), index.column()).wrong


def test_a_score_without_a_source_leads_to_its_cell(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    cell = page.grid.cell
    press(qtbot, KEY.Key_Return)
    page.editor.grounds.sources.setText("")
    page.editor.grounds.sources.editingFinished.emit()
    qtbot.waitUntil(lambda: not workshop.busy, timeout=10_000)
    remark = next(r for r in workshop.editing.remarks if r.weakness is Weakness.UNSOURCED)
    page.grid.go_to(page.model.cell(3, 3))
    page.show_place(remark)

    assert page.grid.cell == cell


def test_taxa_that_are_too_much_alike_are_shown_as_a_pair_where_something_can_be_told(
    page: MatrixPage, workshop: WorkshopState
):
    first, second = page.model.taxa[1].id, page.model.taxa[4].id
    place = Remark(weakness=Weakness.INSEPARABLE, about=(first, second))
    page.show_place(place)

    assert {taxon.id for taxon in page.model.taxa} == {first, second}
    assert page.grid.cell[0] in {first, second}
    character = page.model.characters[3].id
    page.show_place(replace(place, weakness=Weakness.FRAGILE, detail=(character,)))
    assert page.grid.cell == (first, character)
    page.tools.which.choose(Sought.ALL)
    page.tools.which.activated.emit(0)
    assert page.model.taxa == workshop.editing.key.taxa


def test_all_chosen_cells_can_rest_on_the_same_in_one_step(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    before = workshop.editing.key
    source = before.sources[-1].id
    press(qtbot, KEY.Key_A, CTRL)
    press(qtbot, KEY.Key_Return)
    page.editor.grounds.sources.setText(source)
    page.editor.grounds.sources.editingFinished.emit()
    qtbot.mouseClick(page.editor.grounds.spread, Qt.MouseButton.LeftButton)
    after = workshop.editing.key

    assert {score.sources for score in after.scores} == {(source,)}
    assert [s.value for s in after.scores] == [s.value for s in before.scores]
    workshop.undo()
    workshop.undo()
    assert workshop.editing.key.scores == before.scores
    page.grid.go_to(page.model.cell(2, 2))
    assert not page.editor.grounds.spread.isVisible()


def test_what_is_being_typed_into_a_cell_is_there_when_one_saves(
    page: MatrixPage, workshop: WorkshopState, qtbot: QtBot
):
    numeric = next(c for c in page.model.characters if c.kind.numeric)
    cell = page.model.taxa[0].id, numeric.id
    page.grid.go_to(cell)
    press(qtbot, KEY.Key_Return)
    page.editor.grounds.note.setFocus()
    qtbot.keyClicks(page.editor.grounds.note, "page 12 ")
    page.flush()
    page.editor.value.fields["n"].setFocus()
    qtbot.keyClicks(page.editor.value.fields["n"], "7")
    page.flush()

    (score,) = workshop.editing.key.cells[cell]
    assert (score.note, score.value.n) == ("page 12", 7)
    press(qtbot, KEY.Key_Escape)
    qtbot.keyClicks(page.grid, "7")
    page.flush()
    assert workshop.editing.key.cells[cell][0].value == Spans(low=7, high=7)
