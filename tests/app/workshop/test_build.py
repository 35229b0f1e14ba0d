"""Couplets built from the scores: compared, taken over in one step, taken back."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from idkey.app.parts.desk import Desk
from idkey.app.workshop.build_page import BuildPage
from idkey.app.workshop.building import Goal
from tests.app.workshop.table import Table


@pytest.fixture
def table(qtbot, tmp_path: Path) -> Iterator[Table]:
    made = Table(qtbot, tmp_path, "red-kneed-tarantulas")
    yield made
    made.state.close()


@pytest.fixture
def page(qtbot, table: Table, desk: Desk) -> BuildPage:
    made = BuildPage(table.state, desk)
    qtbot.addWidget(made)
    made.show()
    return made


def build(qtbot, page: BuildPage) -> None:
    qtbot.mouseClick(page.options.build, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not page.busy, timeout=30_000)


def test_built_couplets_are_compared_taken_over_and_taken_back(
    qtbot, table: Table, page: BuildPage
):
    written = table.editing.key.couplets
    build(qtbot, page)
    result = page.result
    assert result is not None
    assert result.written is not None
    assert page.preview.toPlainText().count("…") >= len(result.couplets)
    assert table.editing.key.couplets == written

    qtbot.mouseClick(page.take, Qt.MouseButton.LeftButton)
    table.checked()

    assert table.editing.key.couplets == result.couplets
    assert table.editing.sound
    assert not page.take.isEnabled()

    table.state.undo()

    assert table.editing.key.couplets == written
    assert page.take.isEnabled()


def test_the_opening_stays_and_a_result_of_other_scores_is_not_taken_over(
    qtbot, table: Table, page: BuildPage
):
    first = table.editing.key.couplets[0]
    page.options.goal.set_value(Goal.SHORT)
    page.options.keep.choose(1)
    build(qtbot, page)
    assert page.result is not None
    opening = page.result.couplets[0]
    said = [lead.statement for lead in first.leads]
    key = table.editing.key
    table.state.change(replace(key, scores=key.scores[1:]), "One score less")

    assert (opening.id, opening.note) == (first.id, first.note)
    assert [lead.statement for lead in opening.leads] == said
    assert not page.take.isEnabled()
    assert "changed" in page.verdict.text()


def test_a_key_whose_scores_tell_nothing_apart_is_refused_in_words(
    qtbot, table: Table, page: BuildPage
):
    key = table.editing.key
    table.state.change(replace(key, scores=(), couplets=()), "All scores gone")
    table.checked()
    build(qtbot, page)

    assert page.result is None
    assert page.options.said.text().endswith("then build again.")
