"""Two counters at one animal: both states stay, and the later one is told."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.window.window import Window
from idkey.engine.sample import sample_case
from idkey.model.case import Finding
from idkey.model.key import Key
from idkey.store.book import Store
from tests.store.conftest import a_place, empty_database, empty_file

fixtures = (empty_database, empty_file)

TELSON = Finding(character="telson_colour", states=("reddish",))


@pytest.fixture(params=["sqlite", "postgresql"])
def counters(request: pytest.FixtureRequest, tmp_path: Path, key: Key) -> Iterator:
    """Two programs on one book that holds the case both work on."""
    place = a_place(request, tmp_path)
    with Store.open(place, station="front") as front, Store.open(place, station="back") as back:
        front.save(replace(sample_case(key), id="shared"), None)
        yield front, back


@pytest.fixture
def window(counters: tuple[Store, Store], keys: KeyLibrary, desk: Desk, qtbot: QtBot, tmp_path):
    """The window at the back counter, with the shared case on the bench."""
    keeper = Keeper(counters[1])
    state = BenchState(keys, keeper)
    made = Window(state, desk, rationales=tmp_path / "rationales")
    qtbot.addWidget(made)
    made.show()
    state.open_case("shared")
    qtbot.waitUntil(lambda: not keeper.busy)
    yield made
    made.close_work()
    state.close()
    keeper.close()


def test_the_later_counter_is_told_and_both_states_stay(
    counters: tuple[Store, Store], window: Window, qtbot: QtBot
):
    front, _ = counters
    opened = front.case("shared")
    number = opened.revision.number
    theirs = replace(opened.case.observe(TELSON), by="RB")
    front.save(theirs, None, by="RB", parent=number)

    window._state.withdraw("total_length")
    qtbot.waitUntil(lambda: window.notice.isVisible())
    said = window.notice.text
    assert "RB saved “Emperor scorpion” on" in said
    assert f"theirs is kept as revision {number + 1}, yours as revision {number + 2}" in said
    assert "changed" in said
    assert "telson_colour" not in said, "a finding goes by its name"
    assert front.case("shared", number + 1).case == theirs
    assert front.case("shared").case.finding("total_length") is None
    assert front.verify() == ()

    window.notice.taken.emit()
    qtbot.waitUntil(lambda: not window._state.keeper.busy)
    assert window._state.session.case == theirs
    assert front.case("shared").case == theirs


def test_going_on_alone_after_a_clash_is_told_no_second_time(
    counters: tuple[Store, Store], window: Window, qtbot: QtBot
):
    front, _ = counters
    front.save(replace(front.case("shared").case, note="calm"), None, parent=1)
    with qtbot.waitSignal(window._state.keeper.clashed):
        window._state.withdraw("total_length")

    with qtbot.assertNotEmitted(window._state.keeper.clashed, wait=200):
        window._state.withdraw("manus_shape")


def test_a_state_that_only_came_back_is_no_clash(
    counters: tuple[Store, Store], window: Window, qtbot: QtBot
):
    front, _ = counters
    opened = front.case("shared")
    front.save(replace(opened.case, note="calm"), None)
    front.save(opened.case, opened.summary)

    with qtbot.assertNotEmitted(window._state.keeper.clashed, wait=200):
        window._state.withdraw("total_length")
