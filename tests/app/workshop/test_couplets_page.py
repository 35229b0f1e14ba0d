"""Couplets edited as a graph and as text: both say the same, and nothing typed is lost."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication

from idkey.app.parts.desk import Desk
from idkey.app.workshop.couplet_bar import View
from idkey.app.workshop.couplet_page import CoupletPage
from idkey.app.workshop.couplet_text import couplets_text
from idkey.app.workshop.couplet_text_view import text_place
from idkey.app.workshop.forms_entries import EntryKind
from idkey.app.workshop.forms_places import shows_place
from idkey.app.workshop.forms_typed import TypedField
from idkey.app.workshop.forms_unread import unread_of
from idkey.engine.audit import Remark, Weakness
from tests.app.workshop.table import Table


@pytest.fixture
def page(qtbot, table: Table, desk: Desk) -> CoupletPage:
    made = CoupletPage(table.state, desk)
    qtbot.addWidget(made)
    made.resize(1000, 700)
    made.show()
    return made


def drag(qtbot, page: CoupletPage, start: QPoint, end: QPoint) -> None:
    view = page.graph.viewport()
    qtbot.mousePress(view, Qt.MouseButton.LeftButton, pos=start)
    qtbot.mouseMove(view, start + QPoint(12, 4))
    qtbot.mouseMove(view, end)
    qtbot.mouseRelease(view, Qt.MouseButton.LeftButton, pos=end)


def type_text(page: CoupletPage, text: str) -> None:
    page.text.text.setFocus()
    page.text.text.setPlainText(text)


def test_a_lead_dragged_onto_a_couplet_goes_on_there(qtbot, table: Table, page: CoupletPage):
    start, end = page.graph.point_of("1", 1), page.graph.point_of("3", -1)

    drag(qtbot, page, start, end)

    assert page.chosen == ("1", 1)
    assert table.editing.key.couplet["1"].leads[1].to == "3"
    assert "no lead comes to: 10" in page.bar.facts.text()
    table.state.undo()
    assert table.editing.key == table.editing.saved
    drag(qtbot, page, start, start + QPoint(2, 2))
    drag(qtbot, page, start, QPoint(5, 5))
    assert not table.editing.dirty


def test_the_graph_is_walked_and_cut_with_the_keyboard(qtbot, table: Table, page: CoupletPage):
    page.focus_first()
    for key in (Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Down):
        qtbot.keyClick(page.graph, key)
    assert page.chosen == ("3", 1)
    assert "3 b. Sting bulb clearly narrower" in page.graph.accessibleDescription()
    for key in (Qt.Key.Key_Left, Qt.Key.Key_Left):
        qtbot.keyClick(page.graph, key)
    assert page.chosen == ("1", 0)

    page.choose("3")
    qtbot.keyClick(page.graph, Qt.Key.Key_Delete)

    assert "3" not in table.editing.key.couplet
    assert len(table.editing.key.couplet["1"].leads[0].taxa) == 5
    qtbot.keyClick(page.graph, Qt.Key.Key_Return)
    assert page.head.isAncestorOf(QApplication.focusWidget())


def test_what_is_written_of_a_lead_shows_in_the_text(qtbot, table: Table, page: CoupletPage):
    page.choose("2", 0)
    field = page.form.fields["statement"]
    assert isinstance(field, TypedField)
    field.control.setFocus()
    qtbot.keyClick(field.control, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(field.control, "Plate runs to a point.")

    page.bar.show_view(View.TEXT)

    assert table.editing.key.couplet["2"].leads[0].statement == "Plate runs to a point."
    assert "2 a. Plate runs to a point. -> 4" in page.text.text.toPlainText()
    assert page.text.text.textCursor().block().text().startswith("2 a.")


def test_the_matrix_speaks_against_a_lead_at_once(table: Table, page: CoupletPage):
    page.choose("2", 0)
    assert page.form.agreement.text().startswith("✓")

    row = page.form.sees.rows[0]
    row.states["pentagonal"].click()
    row.states["triangular"].click()

    assert table.editing.key.couplet["2"].leads[0].sees[0].states == ("pentagonal",)
    assert "Centruroides gracilis" in page.form.agreement.text()
    assert "leads against the scores: 1" in page.bar.facts.text()


def test_where_a_lead_goes_is_chosen_from_a_list(table: Table, page: CoupletPage):
    page.choose("1", 0)
    box = page.form.goal.way.control

    box.setCurrentIndex(0)
    box.activated.emit(0)
    ends = table.editing.key.couplet["1"].leads[0].taxa
    assert len(ends) == 5
    page.form.goal.taxa.chips[0].click()
    assert table.editing.key.couplet["1"].leads[0].taxa == ends[1:]
    row = next(n for n in range(box.count()) if box.value(n) == "8")
    box.setCurrentIndex(row)
    box.activated.emit(row)

    assert table.editing.key.couplet["1"].leads[0].to == "8"


def test_text_is_taken_over_when_it_can_be_read(qtbot, table: Table, page: CoupletPage):
    page.bar.show_view(View.TEXT)
    text = couplets_text(table.editing.key.couplets)

    type_text(page, text.replace("Sternum triangular.", "Sternum pointed."))
    qtbot.waitUntil(lambda: table.editing.dirty, timeout=3000)

    assert table.editing.key.couplet["2"].leads[0].statement == "Sternum pointed."
    table.state.undo()
    assert "Sternum triangular." in page.text.text.toPlainText()
    assert not table.editing.dirty


def test_text_with_mistakes_is_kept_over_undo_and_a_new_start(
    qtbot, table: Table, page: CoupletPage, desk: Desk
):
    page.bar.show_view(View.TEXT)
    wrong = couplets_text(table.editing.key.couplets).replace("-> 4", "-> 44x")
    type_text(page, wrong)
    page.close_work()

    assert "Line 8: There is no couplet or taxon '44x'" in page.text.list.item(0).text()
    unread, place = unread_of(table.state), text_place(table.editing.folder)
    assert unread.text(place) == wrong
    assert not table.editing.dirty
    table.state.change(replace(table.editing.key, title="Other"), "Title")
    assert page.text.text.toPlainText() == wrong

    again = CoupletPage(table.state, desk)
    qtbot.addWidget(again)
    again.show()
    assert again.text.text.toPlainText() == wrong
    again.bar.show_view(View.TEXT)
    again.text.list.setCurrentRow(0)
    again.text.list.itemActivated.emit(again.text.list.item(0))
    assert again.text.text.textCursor().blockNumber() == 7
    again.text.drop.click()

    assert again.text.text.toPlainText() == couplets_text(table.editing.key.couplets)
    assert unread.text(place) is None


def test_couplets_grow_from_nothing(table: Table, page: CoupletPage):
    page.change((), "None")
    assert page.bar.buttons["start"].isVisible()
    page.bar.buttons["start"].click()
    page.choose("1", 0)
    page.bar.buttons["below"].click()
    assert page.chosen == ("2", 0)
    page.bar.buttons["lead"].click()
    assert page.chosen == ("2", 2)
    page.bar.buttons["up"].click()
    assert page.chosen == ("2", 1)
    table.checked()

    couplets = table.editing.key.couplets
    assert [(one.id, len(one.leads)) for one in couplets] == [("1", 2), ("2", 3)]
    assert not [one for one in table.editing.problems if one.severity == "error"]


def test_a_number_follows_and_numbers_are_given_anew(qtbot, table: Table, page: CoupletPage):
    page.choose("3")
    field = page.head.fields["id"]
    assert isinstance(field, TypedField)
    field.control.setFocus()
    qtbot.keyClick(field.control, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(field.control, "buthids")
    qtbot.keyClick(field.control, Qt.Key.Key_Return)

    assert table.editing.key.couplet["1"].leads[0].to == "buthids"
    page.bar.buttons["number"].click()
    assert page.chosen == ("3", -1)
    assert table.editing.key.couplets == table.editing.saved.couplets


def test_the_key_can_start_at_another_couplet(table: Table, page: CoupletPage):
    assert not page.bar.buttons["here"].isEnabled()
    page.choose("2")

    page.bar.buttons["here"].click()

    assert table.editing.key.couplets[0].id == "2"
    assert "no lead comes to: 1" in page.bar.facts.text()


def test_one_is_led_to_the_lead_a_mistake_or_a_remark_is_about(table: Table, page: CoupletPage):
    key = table.editing.key
    leads = key.couplet["2"].leads
    broken = replace(key.couplet["2"], leads=(leads[0], replace(leads[1], to="99")))
    page.bar.show_view(View.TEXT)
    page.change(tuple(broken if one.id == "2" else one for one in key.couplets), "Break")
    table.checked()
    problem = next(one for one in table.editing.problems if "'99'" in one.problem)

    assert shows_place(EntryKind.COUPLET)(problem)
    page.show_place(problem)

    assert page.bar.view is View.GRAPH
    assert page.chosen == ("2", 1)
    assert "'99'" in page.form.goal.said
    assert "not there" in page.form.agreement.text()
    remark = Remark(weakness=Weakness.COUPLET_AGAINST_MATRIX, about=("5", "2"))
    page.show_place(remark)
    assert page.chosen == ("5", 1)
