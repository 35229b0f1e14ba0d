"""Where text runs from the right, rows that are painted by hand are turned round too."""

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QAbstractItemView, QApplication, QStyleOptionViewItem

from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.parts.desk import Desk
from idkey.engine.sample import sample_case

WAYS = (Qt.LayoutDirection.LeftToRight, Qt.LayoutDirection.RightToLeft)


@pytest.fixture
def bench(state: BenchState, desk: Desk, qtbot) -> Iterator[BenchView]:
    state.put_on_bench(sample_case(state.session.key))
    QApplication.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    try:
        view = BenchView(state, desk)
        qtbot.addWidget(view)
        view.resize(1216, 800)
        with qtbot.waitExposed(view):
            view.show()
        view.activateWindow()
        qtbot.waitUntil(view.middle.others.isVisible)
        yield view
        view.close_work()
    finally:
        QApplication.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def reach(
    view: QAbstractItemView, row: int, way: Qt.LayoutDirection, colour: QColor
) -> tuple[int, int]:
    """First and last column in which a row painted in that direction shows a colour."""
    option = QStyleOptionViewItem()
    option.rect = QRect(0, 0, 300, 70)
    option.direction = way
    option.widget = view
    image = QImage(300, 70, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.magenta)
    painter = QPainter(image)
    painter.setLayoutDirection(way)
    view.itemDelegate().paint(painter, option, view.model().index(row, 0))
    painter.end()
    wanted = colour.rgb()
    columns = [
        x for x in range(300) if any(image.pixel(x, y) == wanted for y in range(image.height()))
    ]
    return columns[0], columns[-1]


LISTS: dict[str, tuple[Callable[[BenchView], QAbstractItemView], int, str]] = {
    "portrait of the line-up": (lambda bench: bench.lineup.list, 0, "plate"),
    "support in the line-up": (lambda bench: bench.lineup.list, 0, "accent"),
    "worth of a question": (lambda bench: bench.middle.others.list, 1, "accent"),
    "card of the ledger": (lambda bench: bench.ledger.list, 0, "surface"),
}


@pytest.mark.parametrize("case", LISTS)
def test_a_painted_row_is_turned_round(bench: BenchView, desk: Desk, case: str):
    find, row, name = LISTS[case]
    found = [reach(find(bench), row, way, desk.theme.colour(name)) for way in WAYS]
    (left, right), mirrored = found

    assert mirrored == pytest.approx((299 - right, 299 - left), abs=2)
    assert left + right != pytest.approx(299, abs=2)


def test_arrow_keys_follow_the_eye(bench: BenchView, qtbot):
    ledger = bench.ledger.list
    ledger.setFocus()
    ledger.setCurrentIndex(bench.ledger.rows.index(1))
    qtbot.keyClick(ledger, Qt.Key.Key_Left)
    row = ledger.currentIndex().row()
    bench.middle.ask("sternum_shape")
    tiles = bench.middle.question.grid.tiles
    tiles[0].setFocus()
    qtbot.keyClick(tiles[0], Qt.Key.Key_Left)

    assert tiles[1].x() < tiles[0].x()
    assert QApplication.focusWidget() is tiles[1]
    assert row == 2


def test_the_names_beside_a_strip_stand_where_text_begins(bench: BenchView, desk: Desk):
    bench.middle.ask("total_length")
    strip = bench.middle.question.entry.strip
    image = strip.grab().toImage()
    ink = desk.theme.colour("ink").lightness() + 40
    names = [
        x
        for x in range(image.width())
        if any(image.pixelColor(x, y).lightness() < ink for y in range(4, 18))
    ]

    assert max(names) > image.width() * 0.75
