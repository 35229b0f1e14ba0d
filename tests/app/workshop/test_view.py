"""The workshop from end to end: a copy, a score, the checks, a save, the bench."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.window.rooms import made_workshop
from idkey.app.window.window import Window
from idkey.app.workshop.copy_dialog import CopyDialog
from idkey.app.workshop.opening import MANY_TAXA
from idkey.app.workshop.pages import mistakes_by_page, workshop_pages
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.trouble_dialog import TroubleDialog, WayOut
from idkey.app.workshop.view import WorkshopView
from idkey.engine.sample import SAMPLE_KEY
from idkey.formats.folder import read_key, write_key
from idkey.formats.problem import Problem
from tests.app.workshop.conftest import delete
from tests.bench.matrix_grid import made_up

KEY, CTRL = Qt.Key, Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def bench(tmp_path: Path, keeper: Keeper) -> Iterator[BenchState]:
    """A bench over the shipped keys and the person's own."""
    made = BenchState(KeyLibrary(places.keys_folder(), SAMPLE_KEY, own=tmp_path / "keys"), keeper)
    yield made
    made.close()
    delete(made)


@pytest.fixture
def window(bench: BenchState, desk: Desk, tmp_path: Path, qtbot: QtBot) -> Iterator[Window]:
    workshop = made_workshop(bench, tmp_path)
    made = Window(bench, desk, rationales=tmp_path / "rationales", workshop=workshop)
    qtbot.addWidget(made)
    made.resize(1280, 800)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    yield made
    made.close_work()
    workshop.close()


@pytest.fixture
def view(workshop: WorkshopState, desk: Desk, qtbot: QtBot) -> Iterator[WorkshopView]:
    made = WorkshopView(workshop, desk)
    qtbot.addWidget(made)
    made.resize(1100, 720)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    yield made
    made.close_work()


def dialog(kind: type) -> object:
    return next(w for w in QApplication.topLevelWidgets() if isinstance(w, kind) and w.isVisible())


def press(qtbot: QtBot, key: Qt.Key, control: Qt.KeyboardModifier | None = None) -> None:
    focus = QApplication.focusWidget()
    qtbot.keyClick(focus, key) if control is None else qtbot.keyClick(focus, key, control)


def test_from_a_shipped_key_to_a_case_judged_with_the_changed_copy(
    window: Window, bench: BenchState, tmp_path: Path, qtbot: QtBot
):
    press(qtbot, KEY.Key_4, CTRL)
    view = window.rooms.workshop
    assert window.rooms.currentWidget() is view
    assert QApplication.focusWidget() is view.start.list
    row = next(n for n, e in enumerate(view.start.rows.rows) if e.id == "kitchen-leaves")
    view.start.list.setCurrentIndex(view.start.rows.index(row))
    press(qtbot, KEY.Key_Return)
    asked = dialog(CopyDialog)
    asked.name.setText("leaves of mine")
    assert not asked.go.isEnabled()
    assert "no id" in asked.wrong.text()
    asked.name.setText("leaves-of-mine")
    asked.go.click()

    page = view.stack.currentWidget()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is page.grid)
    cell = page.grid.cell
    other = page.model.characters[0].states[-1]
    for sign in other.label:
        qtbot.keyClick(QApplication.focusWidget(), sign)
    press(qtbot, KEY.Key_Return)
    assert "not saved yet" in view.head.version.text()
    press(qtbot, KEY.Key_Z, CTRL)
    assert not view.head.save.isEnabled()
    press(qtbot, KEY.Key_Z, CTRL | Qt.KeyboardModifier.ShiftModifier)
    workshop = view._state
    qtbot.waitUntil(lambda: not workshop.editing.checking, timeout=10_000)
    window.activateWindow()  # the platform of the tests forgets it when a dialog goes
    qtbot.waitUntil(lambda: QApplication.focusWidget() is page.grid)
    with qtbot.waitSignal(workshop.saved):
        press(qtbot, KEY.Key_S, CTRL)

    bench.new_case("leaves-of-mine")
    qtbot.waitUntil(lambda: bench.session.key.id == "leaves-of-mine", timeout=10_000)
    (score,) = bench.session.key.cells[cell]
    assert tuple(score.value.states) == (other.id,)
    assert read_key(tmp_path / "keys" / "leaves-of-mine").cells[cell] == (score,)


def test_an_open_case_keeps_its_key_and_that_is_said(
    window: Window, bench: BenchState, own: Path, qtbot: QtBot
):
    bench.keys.reload()
    bench.new_case("my-leaves")
    held = bench.session.key
    window.rooms.edit_key(own)
    workshop = window.rooms.workshop._state
    workshop.change(replace(workshop.editing.key, title="Leaves, looked at again"), "Title")
    with qtbot.waitSignal(workshop.saved):
        workshop.save()

    assert "keep the key as it was" in window.rooms.workshop.notice.text
    assert bench.session.key is held
    assert bench.keys["my-leaves"].title == "Leaves, looked at again"


def test_the_keys_of_the_grid_come_before_those_of_the_window(
    window: Window, bench: BenchState, own: Path, qtbot: QtBot
):
    window.rooms.edit_key(own)
    page = window.rooms.workshop.stack.currentWidget()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is page.grid)
    press(qtbot, KEY.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    press(qtbot, KEY.Key_D, CTRL)
    assert window.rooms.currentWidget() is window.rooms.workshop
    cells = window.rooms.workshop._state.editing.key.cells
    first, second = ((taxon.id, page.model.characters[0].id) for taxon in page.model.taxa[:2])
    assert cells[first][0].value == cells[second][0].value
    press(qtbot, KEY.Key_F2)
    assert page.editor.isVisible()
    press(qtbot, KEY.Key_F, CTRL)
    assert QApplication.focusWidget() is page.tools.finder
    assert len(bench.session.open) == 1


def test_undo_belongs_to_the_place_in_front(
    window: Window, bench: BenchState, own: Path, qtbot: QtBot
):
    bench.type_label("boa")
    case = bench.session.case
    window.rooms.edit_key(own)
    workshop = window.rooms.workshop._state
    assert not window.commands["undo"].isEnabled()
    workshop.change(replace(workshop.editing.key, title="Other"), "Title")
    assert window.commands["undo"].isEnabled()
    window.commands.run("undo")

    assert not workshop.editing.dirty
    assert bench.session.case == case


def test_trouble_with_saving_shows_both_sides_and_takes_in_both(
    view: WorkshopView, workshop: WorkshopState, own: Path, qtbot: QtBot
):
    view.open(own)
    write_key(replace(read_key(own), title="Leaves of the kitchen"), own)
    key = workshop.editing.key
    workshop.change(replace(key, scope="What grows on the window sill."), "Scope")
    with qtbot.waitSignal(workshop.refused):
        view.head.save.click()
    asked = dialog(TroubleDialog)
    (both,) = [b for b in asked.findChildren(object) if b.objectName() == WayOut.BOTH.value]
    assert both.isEnabled()
    both.click()
    with qtbot.waitSignal(workshop.saved):
        view.head.save.click()

    saved = read_key(own)
    assert saved.title == "Leaves of the kitchen"
    assert saved.scope == "What grows on the window sill."


def test_a_key_with_a_mistake_is_not_saved_and_the_mistake_is_shown(
    view: WorkshopView, workshop: WorkshopState, own: Path, qtbot: QtBot
):
    view.open(own)
    key = workshop.editing.key
    wrong = replace(key.scores[0], sources=("no-such-source",))
    view.go_to("audit")
    workshop.change(replace(key, scores=(wrong, *key.scores[1:])), "Sources")
    qtbot.waitUntil(lambda: not workshop.editing.checking, timeout=10_000)
    assert any(row.mistakes for row in view.list.rows.rows if row.id == "matrix")
    with qtbot.waitSignal(workshop.refused):
        view.head.save.click()

    assert "The key has a mistake" in view.notice.text
    assert view.list.current == "matrix"
    assert view.stack.currentWidget().grid.cell == (wrong.taxon, wrong.character)


def test_what_is_put_away_unsaved_is_marked_and_comes_back(
    view: WorkshopView, workshop: WorkshopState, own: Path
):
    view.open(own)
    workshop.change(replace(workshop.editing.key, title="Other"), "Title")
    workshop.put_away()
    (row,) = [n for n, e in enumerate(view.start.rows.rows) if e.folder == own]
    assert "not saved yet" in view.start.rows.index(row).data()

    view.start.list.setCurrentIndex(view.start.rows.index(row))
    view.start.edit.click()
    assert view.head.title.text == "Other"
    assert workshop.editing.past[-1].words == "Title"


def test_a_large_key_is_read_while_the_window_goes_on(
    view: WorkshopView, workshop: WorkshopState, tmp_path: Path, qtbot: QtBot
):
    key = made_up(MANY_TAXA + 1, 2)
    write_key(key, tmp_path / "keys" / key.id)
    view.open(tmp_path / "keys" / key.id)
    assert workshop.editing is None
    assert "Reading" in view.notice.text
    qtbot.waitUntil(lambda: workshop.editing is not None, timeout=10_000)

    assert view.head.title.text == key.title
    assert view.notice.text == ""
    assert view.stack.currentWidget().model.rowCount() == MANY_TAXA + 1


def test_each_page_counts_the_mistakes_it_can_show(qapp: QApplication, tmp_path: Path):
    files = ("key.yaml", "characters.yaml", "couplets.yaml", "sources.yaml", "taxa/one.yaml")
    ways = ((), ("scores",), ("scores", "colour"), ("scores", "colour", 0), (2,), (2, "name"))
    problems = [
        Problem(
            file=tmp_path / file, line=line, column=1, problem="Wrong.", remedy="Mend.", loc=way
        )
        for file in files
        for way in ways
        for line in (1, 2)
    ]
    pages = workshop_pages()
    counted = mistakes_by_page(pages, problems)

    assert counted == {page.id: sum(map(page.shows, problems)) for page in pages}
    assert counted["matrix"] == 4
    assert counted["taxa"] == 6


def test_every_control_of_the_matrix_has_a_name_and_is_reached_by_tab(
    view: WorkshopView, own: Path, qtbot: QtBot
):
    view.open(own)
    page = view.go_to("matrix")
    page.focus_first()
    press(qtbot, KEY.Key_Return)
    controls = [
        one
        for one in view.findChildren(QWidget)
        if one.isVisible() and one.focusPolicy() & Qt.FocusPolicy.TabFocus
    ]
    nameless = [one for one in controls if not (one.accessibleName() or written(one))]
    assert nameless == []

    reached = set()
    for _ in range(2 * len(controls)):
        reached.add(QApplication.focusWidget())
        press(qtbot, KEY.Key_Tab)
    wanted = (page.grid, page.tools.which, page.tools.finder, page.editor.grounds.note, view.list)
    assert all(one in reached for one in wanted)


def written(control: QWidget) -> str:
    """What stands on a control."""
    text = getattr(control, "text", None)
    return text() if text is not None else ""
