"""What people misread comes back to the author of the key, who decides."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from idkey.app.parts.desk import Desk
from idkey.app.workshop.observed_page import ObservedPage
from idkey.drill.beginning import Bench
from idkey.drill.item import state_item
from idkey.drill.observed import observed_error
from idkey.model.key import Key
from idkey.store.book import Store
from idkey.store.drill_log import put_trial, trials_of
from tests.app.workshop.table import Table
from tests.drill.learners import Learner

ITEMS = [state_item("telson_colour", state) for state in ("reddish", "dark")]


@pytest.fixture
def table(qtbot, tmp_path: Path, store: Store) -> Iterator[Table]:
    made = Table(qtbot, tmp_path, "large-dark-scorpions", store)
    yield made
    made.state.close()


def practise(store: Store, key: Key) -> None:
    """Two people take nearly every reddish sting for a dark one."""
    bench = Bench(key, {taxon.id: 1 / len(key.taxa) for taxon in key.taxa})
    for name, seed in (("RB", 1), ("TM", 2)):
        learner = Learner(
            name=name, seed=seed, confuses={("telson_colour", "reddish"): ("dark", 0.9)}
        )
        for trial in learner.works_through(bench, ITEMS, times=14):
            put_trial(store, trial)


def shown(qtbot, table: Table, desk: Desk) -> ObservedPage:
    page = ObservedPage(table.state, desk)
    qtbot.addWidget(page)
    page.show()
    qtbot.waitUntil(lambda: not page.busy, timeout=20_000)
    return page


def test_a_rate_that_differs_is_offered_ticked_taken_over_and_taken_back(
    qtbot, table: Table, store: Store, desk: Desk
):
    key = table.editing.key
    practise(store, key)
    expected = observed_error(key, trials_of(store, key=key.id))[0]
    page = shown(qtbot, table, desk)
    before = page.accept.isEnabled()
    qtbot.mouseClick(page.all, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(page.accept, Qt.MouseButton.LeftButton)
    after = table.editing.key.character["telson_colour"]

    assert expected.differs
    assert not before
    assert list(page.ticks) == ["telson_colour"]
    assert after.error == expected.offered
    assert after.error > key.character["telson_colour"].error_rate
    assert len(table.editing.past) == 1

    table.state.undo()

    assert table.editing.key.character == key.character


def test_a_key_nobody_practised_with_and_a_workshop_without_a_book_say_so(
    qtbot, table: Table, desk: Desk
):
    page = shown(qtbot, table, desk)
    nobody = page.said.text()
    table.state.store = None
    bookless = shown(qtbot, table, desk)

    assert nobody.startswith("Nobody has")
    assert "no record book" in bookless.said.text()
    assert not bookless.accept.isEnabled()
