"""Every place of the window can be heard, reached by keys, and read in German at every size."""

from collections.abc import Callable, Iterator
from itertools import combinations
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QAccessible, QFont, QFontMetrics, QTextDocument
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QGraphicsView,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QTextEdit,
    QToolButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.pictures import Pictures
from idkey.app.parts.theme import Theme, add_fonts
from idkey.app.window.translation import Translation
from idkey.app.window.window import Window
from idkey.report.language import in_language
from tests.app.everywhere import Stop, Tour, controls

ROLE = QAccessible.Role
MUTE = {ROLE.NoRole, ROLE.Client, ROLE.Window, ROLE.Pane, ROLE.Grouping, ROLE.Border}
"""Roles that say nothing of what a control does."""

EDGE = 8
"""Pixels beside the text of a button without which it looks cut."""

Walk = Callable[[Desk], Iterator[Stop]]


@pytest.fixture
def walk(
    qapp: QApplication, theme: Theme, state: BenchState, qtbot: QtBot, tmp_path: Path
) -> Iterator[Walk]:
    """Walks through every place at 1000 by 700."""
    made: list[Window] = []
    before = qapp.font()
    add_fonts(places.font_files())
    qapp.setFont(QFont(places.FONT_FAMILY))
    for scale in (90, 100):
        theme.choose(theme.scheme, scale)  # the look takes the font over

    def settle(there: Callable[[], bool]) -> None:
        qtbot.waitUntil(there, timeout=20_000)
        qtbot.wait(20)
        for _ in range(3):  # layouts follow one another
            QApplication.sendPostedEvents()
            QApplication.processEvents()

    def walked(desk: Desk) -> Iterator[Stop]:
        window = Window(state, desk, rationales=tmp_path / "rationales")
        qtbot.addWidget(window)
        made.append(window)
        window.setFixedSize(1000, 700)  # as in the frame: nothing makes it wider
        with qtbot.waitExposed(window):
            window.show()
        window.activateWindow()
        yield from Tour(window, state, tmp_path, settle).all()

    yield walked
    for window in made:
        window.close_work()
    qapp.setFont(before)


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    translation = Translation(qapp)
    translation.speak("de")
    yield
    translation.speak("en")


def told(stop: Stop, one: QWidget) -> str:
    text = one.text() if isinstance(one, QAbstractButton | QLabel | QLineEdit) else ""
    return f"{stop.name}: {type(one).__name__} {one.accessibleName() or text!r}"


def heard(stop: Stop) -> Iterator[str]:
    """Controls without a name, or that do not say what they are."""
    for one in controls(stop.shown):
        seen = QAccessible.queryAccessibleInterface(one)
        if not seen.text(QAccessible.Text.Name).strip():
            yield f"{told(stop, one)} in {type(one.parent()).__name__} has no name"
        if seen.role() in MUTE and not isinstance(one, QGraphicsView):
            yield f"{told(stop, one)} is a {seen.role()}"


def small(stop: Stop) -> Iterator[str]:
    """Controls under 24 pixels. WCAG 2.2, criterion 2.5.8."""
    for one in controls(stop.shown):
        if min(one.width(), one.height()) < 24 and one.property("role") != "link":
            yield f"{told(stop, one)} is {one.width()} by {one.height()}"


def unreached(stop: Stop) -> Iterator[str]:
    """Controls that Tab does not come to, though they can be worked with."""
    root = stop.shown.window()
    reached: set[QWidget] = set()
    one = root.nextInFocusChain()
    while one is not None and one not in reached:
        reached.add(one)
        one = one.nextInFocusChain()
    for control in controls(stop.shown):
        if not control.isEnabled() or control.focusPolicy() == Qt.FocusPolicy.NoFocus:
            continue
        tab = control.focusPolicy() & Qt.FocusPolicy.TabFocus
        if not (control in reached and tab) and not _one_of_a_group(control):
            yield f"{told(stop, control)} is not reached by Tab"


def _one_of_a_group(control: QWidget) -> bool:
    """Of buttons that exclude each other the chosen one is reached, and arrows do the rest."""
    return isinstance(control, QAbstractButton) and control.isCheckable() and bool(control.group())


def traps(stop: Stop) -> Iterator[str]:
    """What keeps the Tab key to itself. WCAG 2.2, criterion 2.1.2."""
    for one in controls(stop.shown):
        views = isinstance(one, QAbstractItemView) and one.tabKeyNavigation()
        texts = isinstance(one, QTextEdit | QPlainTextEdit) and not one.tabChangesFocus()
        if views or (texts and not one.isReadOnly()):
            yield f"{told(stop, one)} keeps Tab"


def mute_cells(stop: Stop) -> Iterator[str]:
    """Lists and tables in which the current row says nothing."""
    for view in stop.shown.findChildren(QAbstractItemView):
        model = view.model()
        if isinstance(view, QHeaderView) or not view.isVisible() or model is None:
            continue
        for row in range(min(model.rowCount(), 4)):
            index = model.index(row, 0)
            spoken = (Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.DisplayRole)
            if not any(str(index.data(role) or "").strip() for role in spoken):
                yield f"{told(stop, view)}: row {row} says nothing"


def disordered(stop: Stop) -> Iterator[str]:
    """Controls of one parent that Tab visits against the order in which they are read."""
    chain: list[QWidget] = []
    root = stop.shown.window()
    one = root.nextInFocusChain()
    while one is not None and one is not root and len(chain) < 5000:
        chain.append(one)
        one = one.nextInFocusChain()
    place = {widget: number for number, widget in enumerate(chain)}
    families: dict[QWidget, list[QWidget]] = {}
    for control in controls(stop.shown):
        if control.isEnabled() and control.focusPolicy() & Qt.FocusPolicy.TabFocus:
            families.setdefault(control.parentWidget(), []).append(control)
    for family in families.values():
        for first, second in combinations(sorted(family, key=lambda w: place.get(w, 0)), 2):
            if second.geometry().bottom() <= first.y() or (
                _level(first, second) and second.geometry().right() <= first.x()
            ):
                yield f"{told(stop, first)} comes before {told(stop, second)}"


def _level(one: QWidget, other: QWidget) -> bool:
    return abs(one.geometry().center().y() - other.geometry().center().y()) < 8


def test_every_control_speaks_is_reached_and_is_large_enough(walk: Walk, desk: Desk):
    wrong: dict[str, None] = {}
    for stop in walk(desk):
        for check in (heard, small, unreached, traps, mute_cells, disordered):
            wrong |= dict.fromkeys(check(stop))

    assert not wrong, "\n".join(wrong)


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize("scale", [100, pytest.param(150, marks=pytest.mark.slow), 200])
def test_no_german_text_is_cut_off_or_covered(
    walk: Walk, theme: Theme, pictures: Pictures, scale: int
):
    theme.choose(theme.scheme, scale)
    wrong: dict[str, None] = {}
    try:
        for stop in walk(Desk(theme, pictures, in_language("de"))):
            wrong |= dict.fromkeys(f"{stop.name}: {text}" for text in cut(stop.shown))
            wrong |= dict.fromkeys(f"{stop.name}: {text}" for text in covered(stop.shown))
    finally:
        theme.choose(theme.scheme, 100)

    assert not wrong, "\n".join(wrong)


def cut(root: QWidget) -> Iterator[str]:
    """Texts of labels and buttons that are larger than their place, or stand out of it.

    Buttons of other kinds paint their text themselves, in lines.
    """
    for one in root.findChildren(QWidget):
        if not one.isVisible() or not isinstance(one, QLabel | QAbstractButton) or not one.text():
            continue
        if isinstance(one, QLabel) and one.pixmap().isNull():
            yield from _cut_label(one)
        elif type(one).__name__.endswith(("PushButton", "KeyButton", "MenuButton", "Box")):
            wide, high = _needed(one)
            if wide > one.width() or high > one.height():
                yield f"{type(one).__name__} {one.text()!r}: {wide, high} in {one.size().toTuple()}"
        if beyond := _beyond(one):
            yield f"{type(one).__name__} {one.text()!r} stands out of {beyond}"


def _needed(one: QAbstractButton) -> tuple[int, int]:
    """Width and height that the text of a button takes, with its picture and a little edge."""
    picture = 0 if one.icon().isNull() else one.iconSize().width() + 4
    edge = 0 if one.property("role") == "link" or isinstance(one, QToolButton) else EDGE
    return _widest(one, one.text()) + picture + edge, one.fontMetrics().height()


def _beyond(one: QWidget) -> str:
    """What cuts a widget off; what can be scrolled to is not cut off."""
    wide, high = True, True
    around = one.parentWidget()
    while around is not None and (wide or high):
        box = QRect(one.mapTo(around, QPoint(0, 0)), one.size())
        pane = around.parentWidget()
        if isinstance(pane, QAbstractScrollArea) and pane.viewport() is around:
            off = Qt.ScrollBarPolicy.ScrollBarAlwaysOff
            wide = wide and pane.horizontalScrollBarPolicy() == off
            high = high and pane.verticalScrollBarPolicy() == off
        if wide and (box.left() < -1 or box.right() > around.width()):
            return f"{type(around).__name__} by {box.right() - around.width()} at the side"
        if high and (box.top() < -1 or box.bottom() > around.height()):
            return f"{type(around).__name__} by {box.bottom() - around.height()} below"
        around = None if around.isWindow() else pane
    return ""


def _cut_label(label: QLabel) -> Iterator[str]:
    room = label.contentsRect()
    if label.wordWrap():
        need = label.heightForWidth(label.width())
        if need > label.height() + 5:
            yield f"label {label.text()!r}: {need} high in {label.height()}"
    elif _widest(label, label.text()) > room.width() + 1:
        yield f"label {label.text()!r}: {_widest(label, label.text())} in {room.width()}"


def _widest(one: QWidget, text: str) -> int:
    plain = text
    if "</" in text or "<br" in text:
        document = QTextDocument()
        document.setHtml(text)
        plain = document.toPlainText()
    metrics = QFontMetrics(one.font())
    return max(metrics.horizontalAdvance(line.replace("&", "")) for line in plain.split("\n"))


def covered(root: QWidget) -> Iterator[str]:
    """Labels, buttons and fields of one parent that lie over one another."""
    families: dict[QWidget, list[QWidget]] = {}
    for one in root.findChildren(QWidget):
        if one.isVisible() and isinstance(one, QLabel | QAbstractButton | QLineEdit | QComboBox):
            families.setdefault(one.parentWidget(), []).append(one)
    for parent, family in families.items():
        if isinstance(parent, QLineEdit | QComboBox | QAbstractItemView):
            continue
        for one, other in combinations(family, 2):
            both = one.geometry().intersected(other.geometry())
            if min(both.width(), both.height()) > 2 and not _inside(one, other):
                yield f"{told(Stop('', root), one)} and {told(Stop('', root), other)}"


def _inside(one: QWidget, other: QWidget) -> bool:
    """Whether one is meant to lie on the other."""
    return one.geometry().contains(other.geometry()) or other.geometry().contains(one.geometry())
