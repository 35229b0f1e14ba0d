"""Entries of a key edited in place with the keyboard: nothing typed is lost, everything follows."""

import gc
import weakref
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QWidget,
)

from idkey.app.parts.desk import Desk
from idkey.app.workshop.character_form import CharacterPage
from idkey.app.workshop.check_form import CheckPage
from idkey.app.workshop.couplet_page import CoupletPage
from idkey.app.workshop.forms_page import EntryPage
from idkey.app.workshop.forms_text_box import TextBox
from idkey.app.workshop.forms_typed import TypedField
from idkey.app.workshop.key_form import KeyPage
from idkey.app.workshop.label_form import LabelPage
from idkey.app.workshop.pages import workshop_pages
from idkey.app.workshop.source_form import SourcePage
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.taxon_form import TaxonPage
from idkey.app.workshop.view import WorkshopView
from idkey.engine.audit import Weakness
from idkey.formats.folder import read_key
from idkey.model.character import Kind, Look
from idkey.model.key import Key
from tests.app.workshop.table import Table

Open = Callable[[type], EntryPage]
PAGES = (CharacterPage, TaxonPage, LabelPage, SourcePage, CheckPage)


@pytest.fixture
def opened(qtbot, table: Table, desk: Desk) -> Open:
    def made(kind: type) -> EntryPage:
        page = kind(table.state, desk)
        qtbot.addWidget(page)
        page.resize(900, 700)
        page.show()
        page.activateWindow()
        return page

    return made


def typed(page: EntryPage, path: str) -> QLineEdit | TextBox:
    field = page.form.fields[path]
    assert isinstance(field, TypedField)
    return field.control


def write(qtbot, control: QWidget, text: str) -> None:
    control.setFocus()
    qtbot.keyClick(control, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(control, text)


def test_a_pause_makes_one_step_and_the_caret_stays(qtbot, table: Table, opened: Open):
    page = opened(CharacterPage)
    box = typed(page, "question")
    assert isinstance(box, TextBox)
    box.setFocus()
    cursor = box.textCursor()
    cursor.setPosition(5)
    box.setTextCursor(cursor)

    qtbot.keyClicks(box, "abc")
    assert not table.editing.dirty
    qtbot.waitUntil(lambda: table.editing.dirty, timeout=3000)
    table.checked()

    assert table.editing.key.characters[0].question.startswith("What abcshape")
    assert box.textCursor().position() == 8
    assert [step.words for step in table.editing.past] == [
        "Question in plain words of Sternum shape"
    ]


def test_leaving_a_field_makes_a_step_that_can_be_taken_back(qtbot, table: Table, opened: Open):
    page = opened(TaxonPage)
    line = typed(page, "authority")
    before = table.editing.key.taxa[0].authority

    write(qtbot, line, "Somebody, 1900")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert table.editing.key.taxa[0].authority == "Somebody, 1900"
    table.state.undo()

    assert table.editing.key == table.editing.saved
    assert line.text() == before


def test_a_new_id_follows_everywhere_in_one_step(qtbot, table: Table, opened: Open):
    page = opened(TaxonPage)
    page.list.choose("pandinus_imperator")
    line = typed(page, "id")

    write(qtbot, line, "emperor")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    table.checked()

    key = table.editing.key
    assert "pandinus_imperator" not in repr((key.taxa, key.scores, key.labels, key.couplets))
    assert len(table.editing.past) == 1
    assert page.list.current == "emperor"
    assert not [one for one in table.editing.problems if one.severity == "error"]


def test_what_cannot_be_read_stays_typed_until_it_is_mended(
    qtbot, table: Table, opened: Open, desk: Desk
):
    page = opened(CharacterPage)
    line = typed(page, "error")
    write(qtbot, line, "often")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert "no number" in page.form.fields["error"].said
    assert not table.editing.dirty

    page.list.choose(table.editing.key.characters[1].id)
    assert (line.text(), page.form.fields["error"].said) == ("", "")
    page.list.choose(table.editing.key.characters[0].id)
    assert line.text() == "often"
    assert "no number" in page.form.fields["error"].said
    started_again = WorkshopState(table.editing.folder.parent / "drafts")
    started_again.open(table.editing.folder)
    again = CharacterPage(started_again, desk)
    qtbot.addWidget(again)
    assert typed(again, "error").text() == "often"
    started_again.close()

    write(qtbot, line, "0,07")
    qtbot.keyClick(line, Qt.Key.Key_Return)

    assert table.editing.key.characters[0].error == 0.07
    assert page.form.fields["error"].said == ""
    write(qtbot, line, "never")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    qtbot.keyClick(line, Qt.Key.Key_Escape)
    assert (line.text(), page.form.fields["error"].said) == ("0.07", "")


def test_a_mistake_is_said_at_its_field_and_one_can_go_there(qtbot, table: Table, opened: Open):
    page = opened(CharacterPage)
    second = table.editing.key.characters[1]
    page.list.choose(second.id)
    assert isinstance(page, CharacterPage)
    label = page.states.one.form.fields["label"]
    assert isinstance(label, TypedField)
    line = typed(page, "name")

    write(qtbot, line, " ")
    qtbot.keyClick(line, Qt.Key.Key_Backspace)
    qtbot.keyClick(line, Qt.Key.Key_Return)
    write(qtbot, label.control, "x")
    qtbot.keyClick(label.control, Qt.Key.Key_Backspace)
    qtbot.keyClick(label.control, Qt.Key.Key_Return)
    table.checked()

    assert "empty" in page.form.fields["name"].said
    assert "empty" in label.said
    assert page.list.rows.rows[1].wrong
    assert not page.list.rows.rows[0].wrong

    page.list.choose(table.editing.key.characters[0].id)
    assert page.form.fields["name"].said == ""
    problem = next(one for one in table.editing.problems if one.loc[-1] == "label")
    page.show_place(problem)

    assert page.list.current == second.id
    assert QApplication.focusWidget() is label.control


def test_removing_asks_only_where_others_would_lose_something(qtbot, table: Table, opened: Open):
    page = opened(TaxonPage)
    page.list.choose("scorpio_fuscus")
    page.list.view.setFocus()
    qtbot.keyClick(page.list.view, Qt.Key.Key_Delete)
    assert page.confirm.isVisible()
    assert "checks K01, K02" in page.confirm.text.text()
    assert "scorpio_fuscus" in table.editing.key.taxon

    qtbot.keyClick(page.confirm.go, Qt.Key.Key_Space)
    table.checked()

    assert "scorpio_fuscus" not in repr(table.editing.key)
    assert not [one for one in table.editing.problems if one.severity == "error"]
    labels = opened(LabelPage)
    first = table.editing.key.labels[0].id
    labels.list.choose(first)
    qtbot.keyClick(labels.list.view, Qt.Key.Key_Delete)
    assert first not in table.editing.key.label
    assert labels.list.current == table.editing.key.labels[0].id


def test_entries_are_added_copied_and_found(qtbot, table: Table, opened: Open):
    for kind in PAGES:
        page = opened(kind)
        count = len(page.ids())

        page.list.view.setFocus()
        qtbot.keyClick(page.list.view, Qt.Key.Key_Insert)
        new = page.list.current
        page.list.copy.click()
        copy = page.list.current

        assert len(page.ids()) == count + 2
        assert len({new, copy}) == 2
        page.list.search.setText(copy)
        assert [row.id for row in page.list.rows.rows] == [copy]
        page.hide()
    table.checked()
    assert not [one for one in table.editing.problems if one.severity == "error"]


def test_a_new_entry_takes_its_id_from_its_name_once(qtbot, table: Table, opened: Open):
    page = opened(TaxonPage)
    qtbot.waitUntil(page.isActiveWindow)
    page.add()
    line = QApplication.focusWidget()
    assert line is typed(page, "name")

    qtbot.keyClicks(line, "Pandinus novus")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    assert page.list.current == "pandinus_novus"
    assert table.editing.key.taxon["pandinus_novus"].name == "Pandinus novus"
    write(qtbot, line, "Pandinus other")
    qtbot.keyClick(line, Qt.Key.Key_Return)

    assert table.editing.key.taxon["pandinus_novus"].name == "Pandinus other"


def test_characters_are_put_in_order(qtbot, table: Table, opened: Open):
    page = opened(CharacterPage)
    first, second = (one.id for one in table.editing.key.characters[:2])
    page.list.view.setFocus()

    qtbot.keyClick(page.list.view, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)

    assert [one.id for one in table.editing.key.characters[:2]] == [second, first]
    assert page.list.current == first


def test_between_states_and_numbers_one_is_asked_first(qtbot, table: Table, opened: Open):
    page = opened(CharacterPage)
    field = page.form.fields["kind"]
    box = field.focusProxy()
    assert isinstance(box, QComboBox)
    box.setFocus()

    box.setCurrentIndex(3)
    box.activated.emit(3)
    assert page.confirm.isVisible()
    assert table.editing.key.characters[0].kind is Kind.CATEGORICAL
    assert box.currentIndex() == 0
    page.confirm.go.click()

    changed = table.editing.key.characters[0]
    assert (changed.kind, changed.states) == (Kind.MEASUREMENT, ())
    table.checked()
    assert {one.problem for one in table.editing.problems if one.severity == "error"} == {
        "'sternum_shape' is a measurement without a unit."
    }


def test_a_way_of_looking_is_always_left(qtbot, table: Table, opened: Open):
    page = opened(CharacterPage)
    looks = page.form.fields["looks"]

    for _ in range(4):
        qtbot.keyClick(looks.chips[0], Qt.Key.Key_Delete)  # type: ignore[attr-defined]

    assert table.editing.key.characters[0].looks == (Look.MOULT,)


def test_a_state_gets_another_id_and_keeps_its_drawing(qtbot, table: Table, opened: Open):
    page = opened(CharacterPage)
    assert isinstance(page, CharacterPage)
    field = page.states.one.form.fields["id"]
    assert isinstance(field, TypedField)

    write(qtbot, field.control, "three_cornered")
    qtbot.keyClick(field.control, Qt.Key.Key_Return)

    key = table.editing.key
    state = key.characters[0].states[0]
    assert (state.id, state.figure_licence) == ("three_cornered", "CC-BY-4.0")
    assert state.figure == "figures/large-dark-scorpions/sternum_shape/triangular.svg"
    assert "'triangular'" not in repr((key.scores, key.couplets, key.checks))
    assert page.states.grid.tiles[0].picture is not None
    table.checked()
    assert not [one for one in table.editing.problems if "states" in one.loc]


def test_a_picture_of_ones_own_is_taken_in_and_asks_who_made_it(
    table: Table, opened: Open, tmp_path: Path
):
    page = opened(CharacterPage)
    assert isinstance(page, CharacterPage)
    failed: list[object] = []
    table.state.failed.connect(failed.append)
    hostile = tmp_path / "hostile.svg"
    hostile.write_text('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>')
    good = tmp_path / "good.png"
    QImage(40, 30, QImage.Format.Format_RGB32).save(str(good))

    page.states.one.take_in(hostile)
    assert "does more than draw" in str(failed)
    assert not table.editing.dirty
    page.states.one.take_in(good)
    table.checked()

    state = table.editing.key.characters[0].states[0]
    assert state.figure == "sternum_shape/triangular.png"
    assert (table.editing.folder / "images" / state.figure).read_bytes() == good.read_bytes()
    assert page.states.grid.tiles[0].picture is not None
    assert "who made it" in page.states.one.form.wrong.text()


def test_the_label_says_at_once_what_the_bench_would_say(qtbot, table: Table, opened: Open):
    page = opened(LabelPage)
    assert isinstance(page, LabelPage)
    line = typed(page, "text")

    write(qtbot, line, "Forest king")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    shares = page.rates.form.fields["shares"]
    assert isinstance(shares, TypedField)
    write(qtbot, shares.control, "Pandinus imperator 0.6")
    shares.flush()

    rates = table.editing.key.labels[0].rates
    assert rates is not None
    assert rates.shares == {"pandinus_imperator": 0.6}
    assert "“Forest king” properly covers" in page.preview.text()
    assert "60 %" in page.preview.text()


def test_a_check_says_beside_it_whether_the_matrix_agrees(qtbot, table: Table, opened: Open):
    page = opened(CheckPage)
    assert isinstance(page, CheckPage)
    assert page.result.text().startswith("✓")

    chip = next(one for one in page.exclude.chips if one.value == "scorpio_fuscus")
    qtbot.keyClick(chip, Qt.Key.Key_Delete)
    page.remain.adder.picked.emit("scorpio_fuscus")

    assert page.result.text() == "✗ The matrix rules out what must stay: Scorpio fuscus."
    assert page.list.rows.rows[0].title.startswith("✗ K01")
    table.checked()
    remark = next(r for r in table.editing.remarks if r.weakness is Weakness.FAILED_CHECK)
    page.list.choose("K05")
    page.show_place(remark)
    assert page.list.current == "K01"


def test_states_asked_are_chosen_from_lists(qtbot, table: Table, opened: Open):
    page = opened(CheckPage)
    assert isinstance(page, CheckPage)
    row = page.sees.rows[0]

    qtbot.keyClick(row.states["type_A"], Qt.Key.Key_Space)
    page.sees.adder.picked.emit("total_length")
    low = page.sees.rows[-1].low
    assert low is not None
    qtbot.keyClicks(low.control, "90")
    qtbot.keyClick(low.control, Qt.Key.Key_Return)

    sees = table.editing.key.checks[0].sees
    assert sees[0].states == ("type_A", "type_C_neo")
    assert (sees[-1].character, sees[-1].low, sees[-1].high) == ("total_length", 90, None)


def test_the_portrait_follows_the_scores(qtbot, table: Table, opened: Open):
    page = opened(TaxonPage)
    assert isinstance(page, TaxonPage)
    qtbot.waitUntil(lambda: page.portrait.is_drawn, timeout=5000)
    before = page.portrait.grab().toImage()
    taxon = table.editing.key.taxa[0].id
    kept = tuple(score for score in table.editing.key.scores if score.taxon != taxon)

    table.state.change(replace(table.editing.key, scores=kept), "No scores")
    qtbot.waitUntil(lambda: page.portrait.grab().toImage() != before, timeout=5000)

    assert page.portrait.is_drawn


def test_the_key_itself_is_edited_and_its_mistakes_are_said(qtbot, table: Table, desk: Desk):
    page = KeyPage(table.state, desk)
    qtbot.addWidget(page)
    page.show()
    version = page.form.fields["version"]
    assert isinstance(version, TypedField)

    write(qtbot, version.control, "two")
    qtbot.keyClick(version.control, Qt.Key.Key_Return)
    table.checked()

    assert table.editing.key.version == "two"
    assert "semantic version" in version.said
    page.form.fields["title"].setFocus()
    page.show_place(next(p for p in table.editing.problems if p.file.name == "key.yaml"))
    assert QApplication.focusWidget() is version.control


def test_every_control_has_a_name(qtbot, table: Table, desk: Desk):
    made = [kind(table.state, desk) for kind in (*PAGES, KeyPage)]
    for page in made:
        qtbot.addWidget(page)
        page.show()
        for control in page.findChildren(QWidget):
            if not control.isVisible() or not isinstance(
                control, QAbstractButton | QLineEdit | QComboBox | TextBox
            ):
                continue
            inside = control.parentWidget()
            name = control.accessibleName() or getattr(control, "text", str)()
            assert name or isinstance(inside, QLineEdit | QComboBox), (page, control)


def test_ctrl_s_saves_what_is_just_being_typed(qtbot, table: Table, desk: Desk):
    view = WorkshopView(table.state, desk)
    qtbot.addWidget(view)
    with qtbot.waitExposed(view):
        view.show()
    view.activateWindow()
    view.open(table.editing.folder)
    table.checked()
    page = view.go_to("taxa")
    assert isinstance(page, TaxonPage)
    line = typed(page, "authority")

    write(qtbot, line, "Somebody, 1901")
    qtbot.keyClick(line, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: not table.editing.dirty, timeout=5000)

    assert read_key(table.editing.folder).taxa[0].authority == "Somebody, 1901"
    view.close_work()


def test_a_page_is_let_go_of_without_the_garbage_collector(table: Table, desk: Desk):
    assert not gc.isenabled()
    for kind in (*PAGES, KeyPage, CoupletPage):
        page = kind(table.state, desk)
        gone = weakref.ref(page)
        del page
        assert gone() is None, kind


def test_each_page_is_told_the_places_it_can_show(table: Table):
    key: Key = table.editing.key
    broken = replace(key.characters[0], name="")
    table.state.change(replace(key, characters=(broken, *key.characters[1:]), version="x"), "Break")
    table.checked()

    shown = {
        page.id
        for problem in table.editing.problems
        for page in workshop_pages()
        if page.shows(problem)
    }

    assert {"characters", "key"} <= shown
    assert "taxa" not in shown


def test_what_is_being_typed_never_lands_in_another_entry(qtbot, table: Table, opened: Open):
    page = opened(CharacterPage)
    first, second = table.editing.key.characters[:2]
    write(qtbot, typed(page, "how"), "Look twice.")

    table.state.change(replace(table.editing.key, characters=(second,)), "From elsewhere")
    page.flush()
    assert table.editing.key.characters[0].how == second.how
    table.state.undo()
    page.list.choose(first.id)
    page.flush()

    assert table.editing.key.characters[0].how == "Look twice."
    assert table.editing.key.characters[1].how == second.how


def test_what_is_typed_into_a_new_source_replaces_the_words_there_and_names_it(qtbot, opened: Open):
    page = opened(SourcePage)
    page.add()
    box = page.form.fields["citation"].findChild(QPlainTextEdit)
    qtbot.keyClicks(box, "Meier, 1999. Beetles.")
    page.flush()

    made = next(one for one in page.key.sources if one.citation.startswith("Meier"))
    assert (made.citation, made.id) == ("Meier, 1999. Beetles.", "meier_1999")
