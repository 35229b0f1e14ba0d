"""Where text runs from the right, the other places are turned round as the bench is."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.drill.answers import AnswerRow, Row
from idkey.app.library.account import account
from idkey.app.library.coverage_bar import CoverageBar
from idkey.app.parts.desk import Desk
from idkey.app.parts.theme import Theme
from idkey.app.workshop.couplet_graph import CoupletGraph
from idkey.app.workshop.shelf import Shelf
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.view import WorkshopView
from idkey.formats.key_shelf import list_keys

WAYS = (Qt.LayoutDirection.LeftToRight, Qt.LayoutDirection.RightToLeft)


@pytest.fixture
def turning() -> Iterator[Callable[[Qt.LayoutDirection], None]]:
    yield QApplication.setLayoutDirection
    QApplication.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def reach(shown: QWidget, theme: Theme, name: str) -> tuple[int, int]:
    """First and last column in which a widget shows a colour."""
    image = shown.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    wanted = theme.colour(name).rgb()
    columns = [
        x
        for x in range(image.width())
        if any(image.pixel(x, y) == wanted for y in range(2, image.height() - 2))
    ]
    return columns[0], columns[-1]


def test_the_key_of_an_answer_stands_where_text_begins(
    theme: Theme, qtbot: QtBot, turning: Callable
):
    found = []
    for way in WAYS:
        turning(way)
        row = AnswerRow(Row(name="a", text="l"), "1", theme)
        qtbot.addWidget(row)
        row.resize(300, 60)
        row.show()
        found.append(reach(row, theme, "soft"))
    (left, right), mirrored = found

    assert mirrored == pytest.approx((299 - right, 299 - left), abs=4)


def test_the_bar_of_a_key_fills_from_where_text_begins(
    theme: Theme, qtbot: QtBot, turning: Callable
):
    entry = next(one for one in list_keys(places.keys_folder()) if one.id.startswith("red"))
    counts = account(entry).counts
    assert counts is not None
    found = []
    for way in WAYS:
        turning(way)
        bar = CoverageBar(theme)
        qtbot.addWidget(bar)
        bar.resize(400, 20)
        bar.show_coverage(counts.coverage)
        bar.show()
        found.append(reach(bar, theme, "accent"))
    (left, right), mirrored = found

    assert left < 8
    assert right < 380
    assert mirrored == pytest.approx((399 - right, 399 - left), abs=4)


def test_couplets_follow_each_other_the_way_text_runs(
    desk: Desk, theme: Theme, qtbot: QtBot, tmp_path: Path, turning: Callable
):
    assert theme, "signals need the application"
    shelf = Shelf.usual(tmp_path)
    own = shelf.copy(places.keys_folder() / "kitchen-leaves", "my-leaves")
    turning(Qt.LayoutDirection.RightToLeft)
    state = WorkshopState(tmp_path / "drafts", shelf=shelf)
    view = WorkshopView(state, desk)
    qtbot.addWidget(view)
    view.resize(1000, 700)
    view.show()
    view.open(own)
    qtbot.waitUntil(lambda: state.editing is not None)
    view.go_to("couplets")
    (graph,) = view.findChildren(CoupletGraph)
    assert state.editing is not None
    first, lead = state.editing.key.couplets[0], state.editing.key.couplets[0].leads
    follows = next(one.to for one in lead if one.to in graph.cards)
    start, next_one = graph.cards[first.id], graph.cards[follows]

    assert next_one.x() < start.x()
    assert start.port(0).x() < start.entry().x()
    view.close_work()
    state.close()
