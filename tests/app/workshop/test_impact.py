"""What unsaved changes do, said before anything is saved."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from idkey.app.parts.desk import Desk
from idkey.app.workshop.impact_page import ImpactPage
from idkey.engine.audit import Weakness
from idkey.engine.sample import sample_case
from idkey.model.key import Key
from idkey.model.score import Shows
from idkey.report.impact import impact
from idkey.report.recorded import judged
from idkey.store.book import Store
from idkey.store.record import VerdictSummary
from tests.app.workshop.table import Table


@pytest.fixture
def table(qtbot, tmp_path: Path, store: Store) -> Iterator[Table]:
    made = Table(qtbot, tmp_path, "large-dark-scorpions", store)
    yield made
    made.state.close()


@pytest.fixture
def page(qtbot, table: Table, desk: Desk) -> ImpactPage:
    made = ImpactPage(table.state, desk)
    qtbot.addWidget(made)
    made.show()
    return made


def all_reddish(key: Key) -> Key:
    """The key with the colour of the sting the same for all."""

    def turned(score):
        states = score.character == "telson_colour" and isinstance(score.value, Shows)
        return replace(score, value=Shows({"reddish": None})) if states else score

    return replace(key, scores=tuple(map(turned, key.scores)))


def test_checks_that_fail_now_and_weaknesses_that_are_new_are_named(table: Table):
    key = table.editing.key
    told = impact(key, all_reddish(key))
    back = impact(all_reddish(key), key)

    assert told.broken == back.mended == ("K22", "K29")
    assert told.passing == told.checks - 2
    assert (Weakness.IDLE_CHARACTER, ("telson_colour",)) in {
        (remark.weakness, remark.about) for remark in told.worse
    }
    assert {r.about for r in told.worse} == {r.about for r in back.better}
    assert impact(key, key).changes == ()
    assert impact(key, key).version == key.version


def test_recorded_cases_that_would_be_judged_otherwise_are_listed_and_none_is_saved(
    qtbot, table: Table, page: ImpactPage, store: Store
):
    key = table.editing.key
    case = sample_case(key)
    summary = VerdictSummary.of(judged(store, key, case))
    store.save(case, summary)
    leader = summary.taxa[0]
    taxa = tuple(replace(t, name="Genus novus") if t.id == leader else t for t in key.taxa)
    table.state.change(replace(key, taxa=taxa), "A new name")
    table.checked()
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    shown = page.effects.toPlainText()

    assert "1 of 1 would be judged otherwise" in shown
    assert f"Name: {summary.name}, now " in shown
    assert "Genus novus" in page.changes.toPlainText()
    assert len(store.revisions(case.id)) == 1


def test_the_version_the_changes_ask_for_is_set_by_one_click(qtbot, table: Table, page: ImpactPage):
    key = table.editing.key
    table.state.change(all_reddish(key), "Colour of the sting")
    table.checked()
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)
    major, minor, _ = map(int, key.version.split("."))
    qtbot.mouseClick(page.version, Qt.MouseButton.LeftButton)
    table.checked()
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)

    assert table.editing.key.version == f"{major}.{minor + 1}.0"
    assert not page.version.isVisible()


def test_without_changes_one_line_says_so_and_no_empty_pane_stands_below(
    page: ImpactPage, table: Table
):
    assert page.said.text() == "Nothing has changed since the key was saved."
    assert not page.changes.isVisible()

    table.state.change(all_reddish(table.editing.key), "Colour of the sting")
    table.checked()
    assert page.changes.isVisible()


def test_looking_at_what_changes_do_can_be_stopped(qtbot, page: ImpactPage, table: Table):
    table.state.change(all_reddish(table.editing.key), "Colour of the sting")
    qtbot.waitUntil(lambda: page.busy, timeout=30_000)
    assert page.stop.isVisible()

    qtbot.mouseClick(page.stop, Qt.MouseButton.LeftButton)
    assert not page.busy
    assert "not looked at to the end" in page.said.text()
    assert not page.stop.isVisible()
