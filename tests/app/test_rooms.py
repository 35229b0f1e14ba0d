"""The places of the program side by side, and the way between them."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QToolButton

from idkey.app.bench.state import BenchState
from idkey.app.drill.state import PERSON
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper
from idkey.app.photo.tool import PhotoTool
from idkey.app.window.rooms import made_drill
from idkey.app.window.window import Window
from idkey.drill.beginning import Bench
from idkey.drill.deck import shop_shares
from idkey.drill.item import state_item
from idkey.engine.sample import sample_case
from idkey.model.case import Finding
from idkey.store.book import Store
from idkey.store.drill_log import put_trial
from tests.drill.learners import Learner


@pytest.fixture
def window(state: BenchState, desk: Desk, qtbot, tmp_path: Path) -> Iterator[Window]:
    drill = made_drill(state, tmp_path)
    made = Window(state, desk, rationales=tmp_path / "rationales", drill=drill)
    qtbot.addWidget(made)
    made.resize(1280, 800)
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.hide()  # nobody keeps it beyond the test: nothing may paint it any more
    made.close_work()
    drill.close()


def test_the_drill_is_one_key_away_and_escape_leads_back(window: Window, qtbot):
    window.commands.run("drill")
    shown = window.rooms.currentWidget()

    assert shown is window.rooms.drill
    shown.left.emit()
    qtbot.waitUntil(lambda: window.rooms.currentWidget() is window.bench)


def test_a_case_found_in_the_records_is_laid_on_the_bench(
    window: Window, state: BenchState, keeper: Keeper, qtbot
):
    case = sample_case(state.session.key)
    state.put_on_bench(case)
    state.new_case()
    qtbot.waitUntil(lambda: not keeper.busy)
    window.commands.run("records")
    records = window.rooms.records
    qtbot.waitUntil(lambda: not records.busy, timeout=20_000)

    records.opened.emit(case.id)

    assert window.rooms.currentWidget() is window.bench
    assert state.session.case.id == case.id


def test_what_is_measured_on_a_photo_goes_into_the_ledger(window: Window, state: BenchState, qtbot):
    state.ask("total_length")

    window.commands.run("photo")
    tool = window.findChild(PhotoTool)
    tool.measured.emit(Finding(character="total_length", value=118.0, uncertainty=2.0))

    assert state.session.case.finding("total_length").value == 118.0
    qtbot.waitUntil(lambda: not window.findChildren(PhotoTool))


@pytest.mark.parametrize("command", ["about", "manual"])
def test_papers_about_the_program_open_over_the_bench(window: Window, command: str, qtbot):
    before = {w for w in window.findChildren(type(window).__mro__[1]) if w.isWindow()}

    window.commands.run(command)

    opened = [w for w in window.findChildren(type(window).__mro__[1])
              if w.isWindow() and w.isVisible() and w not in before]  # fmt: skip
    assert opened
    for dialog in opened:
        qtbot.keyClick(dialog, Qt.Key.Key_Escape)


def test_a_key_of_the_library_starts_a_case_or_goes_to_the_workshop(
    window: Window, state: BenchState, qtbot
):
    window.commands.run("library")
    view = window.rooms.library.view
    assert window.rooms.currentWidget() is view

    view.case_asked.emit("kitchen-leaves")
    assert window.rooms.currentWidget() is window.bench
    assert state.session.key.id == "kitchen-leaves"

    window.commands.run("library")
    view.edit_asked.emit(state.keys.entry("kitchen-leaves").folder)
    assert window.rooms.currentWidget() is window.rooms.workshop


def test_a_second_opinion_comes_to_the_bench_with_the_label_alone_and_the_first_is_put_away(
    window: Window, state: BenchState, keeper: Keeper, qtbot
):
    case = sample_case(state.session.key)
    state.put_on_bench(case)
    qtbot.waitUntil(lambda: not keeper.busy)
    window.commands.run("records")
    records = window.rooms.records
    qtbot.waitUntil(lambda: not records.busy, timeout=20_000)

    with qtbot.waitSignal(records.blind):
        records.deeds.begin_opinion(case.id, "MT")

    assert window.rooms.currentWidget() is window.bench
    assert (state.session.case.claim, state.session.case.findings) == (case.claim, ())
    assert state.session.case.by == "MT"
    assert case.id not in state.session.open
    qtbot.waitUntil(lambda: not records.busy, timeout=20_000)


def test_the_rail_marks_the_place_in_front_and_a_press_on_it_stays(window: Window, qtbot):
    def marked() -> list[str]:
        return [
            way.objectName() for way in window.rail.findChildren(QToolButton) if way.isChecked()
        ]

    seen = [marked()]
    for place in ("records", "drill", "workshop", "library", "library", "bench"):
        qtbot.mouseClick(window.rail.findChild(QToolButton, place), Qt.MouseButton.LeftButton)
        seen.append(marked())

    assert seen == [
        ["bench"],
        ["records"],
        ["drill"],
        ["workshop"],
        ["library"],
        ["library"],
        ["bench"],
    ]


@pytest.fixture
def practised(state: BenchState, store: Store) -> None:
    """Somebody practised one item a year ago, so that it is long due."""
    key = state.session.key
    bench = Bench(key, shop_shares(key, {}))
    for trial in Learner(name="AK").works_through(bench, [state_item("total_length")]):
        put_trial(store, trial)
    store.put_setting(PERSON, "AK")


def test_the_start_page_says_what_is_due_to_whoever_practised(
    practised: None, window: Window, qtbot
):
    due = window.bench.middle.start.findChild(QPushButton, "due")

    qtbot.waitUntil(lambda: not due.isHidden(), timeout=20_000)
    qtbot.mouseClick(due, Qt.MouseButton.LeftButton)

    assert due.text().startswith("1 drill picture")
    assert window.rooms.place == "drill"
