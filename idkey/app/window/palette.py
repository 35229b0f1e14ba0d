"""The palette: one field that finds commands, questions, taxa and cases."""

from collections.abc import Iterable
from dataclasses import dataclass

from PySide6.QtCore import (
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QFontMetrics, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QFrame,
    QLineEdit,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
    QWidget,
)

from idkey.app.parts.captions import caption, key_text
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.theme import Theme

Index = QModelIndex | QPersistentModelIndex

SHOWN = 60
"""Most rows shown."""


@dataclass(frozen=True, slots=True)
class Entry:
    """Something the palette can find.

    Attributes:
        kind: What it is, such as ``"character"``; goes out with the choice.
        name: Its id.
        text: What it is called.
        hint: What it is, in a word.
        key: Its shortcut; empty for none.
        words: Further words it is found by.
    """

    kind: str
    name: str
    text: str
    hint: str = ""
    key: str = ""
    words: str = ""


def found(entries: Iterable[Entry], sought: str) -> tuple[Entry, ...]:
    """The entries that hold every word sought, those that start with it first."""
    words = sought.casefold().split()
    ranked = []
    for place, entry in enumerate(entries):
        text = entry.text.casefold()
        whole = f"{text} {entry.words.casefold()} {entry.hint.casefold()}"
        if all(word in whole for word in words):
            begins = bool(words) and text.startswith(words[0])
            inside = all(word in text for word in words)
            ranked.append((not begins, not inside, place, entry))
    return tuple(entry for *_, entry in sorted(ranked, key=lambda row: row[:3]))[:SHOWN]


class PaletteDelegate(QStyledItemDelegate):
    """Text, what it is, its key.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """One line."""
        return QSize(self._theme.px(300), self._theme.px(32))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the row."""
        entry: Entry = index.data(ROW_ROLE)
        rect = QRect(option.rect)
        px, colour = self._theme.px, self._theme.colour
        flag = QStyle.StateFlag
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if option.state & (flag.State_Selected | flag.State_MouseOver):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour("accent_soft"))
            painter.drawRoundedRect(QRectF(rect).adjusted(4, 1, -4, -1), 6, 6)
        inner = rect.adjusted(px(14), 0, -px(14), 0)
        side = "   ".join(part for part in (entry.hint, key_text(entry.key)) if part)
        painter.setFont(self._theme.font(12))
        painter.setPen(colour("soft"))
        wide = QFontMetrics(painter.font()).horizontalAdvance(side)
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(inner, middle | Qt.AlignmentFlag.AlignRight, side)
        painter.setFont(self._theme.font(14))
        painter.setPen(colour("ink"))
        room = inner.width() - wide - px(16)
        text = painter.fontMetrics().elidedText(entry.text, Qt.TextElideMode.ElideRight, room)
        painter.drawText(inner, middle | Qt.AlignmentFlag.AlignLeft, text)
        painter.restore()


class Palette(QFrame):
    """Opens over the window; typing narrows, Enter does, Esc leaves.

    Args:
        theme: The look.
        parent: The window it covers.

    Signals:
        chosen(kind: str, name: str): What the person wants.
        left(): The person went back.
    """

    chosen = Signal(str, str)
    left = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._over = parent
        self.setProperty("pane", "card")
        self._theme = theme
        self._entries: tuple[Entry, ...] = ()
        self.field = QLineEdit()
        self.field.setPlaceholderText(self.tr("Find a command, a question, a taxon, a case"))
        self.field.setAccessibleName(self.tr("Find anything"))
        role = Qt.ItemDataRole
        self.rows: RowsModel[Entry] = RowsModel(
            {
                int(role.DisplayRole): lambda row: row.text,
                int(role.AccessibleTextRole): lambda row: f"{row.text}, {row.hint} {row.key}",
            },
            parent=self,
        )
        self.list = QListView()
        self.list.setModel(self.rows)
        self.list.setAccessibleName(self.tr("What was found"))
        self.list.setItemDelegate(PaletteDelegate(theme))
        self.list.setMouseTracking(True)
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._none = caption(self.tr("Nothing has that name here."), "soft")
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.setSpacing(6)
        column.addWidget(self.field)
        column.addWidget(self.list, 1)
        column.addWidget(self._none)
        self.field.textChanged.connect(self._on_field_text_changed)
        self.field.returnPressed.connect(self._on_field_return_pressed)
        self.list.clicked.connect(self._on_list_clicked)
        self.hide()

    def open(self, entries: Iterable[Entry]) -> None:
        """Cover the upper middle of the window."""
        self._entries = tuple(entries)
        self.place()
        self.field.clear()
        self._on_field_text_changed("")
        self.show()
        self.raise_()
        self.field.setFocus(Qt.FocusReason.PopupFocusReason)

    def place(self) -> None:
        """Lie over the upper middle of the window."""
        window = self._over
        wide = min(self._theme.px(560), window.width() - 32)
        high = min(self._theme.px(420), window.height() - 64)
        self.setGeometry((window.width() - wide) // 2, 32, wide, high)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move with the arrows, leave with Esc."""
        row = self.list.currentIndex().row()
        steps: dict[int, int] = {
            Qt.Key.Key_Down: 1,
            Qt.Key.Key_Up: -1,
            Qt.Key.Key_PageDown: 8,
            Qt.Key.Key_PageUp: -8,
        }
        if event.key() == Qt.Key.Key_Escape:
            self.hide()
            self.left.emit()
        elif event.key() in steps and self.rows.rows:
            there = min(max(row + steps[event.key()], 0), len(self.rows.rows) - 1)
            self.list.setCurrentIndex(self.rows.index(there))
        else:
            super().keyPressEvent(event)

    @Slot(str)
    def _on_field_text_changed(self, text: str) -> None:
        self.rows.replace(found(self._entries, text))
        empty = not self.rows.rows
        self._none.setVisible(empty)
        self.list.setVisible(not empty)
        if not empty:
            self.list.setCurrentIndex(self.rows.index(0))

    @Slot()
    def _on_field_return_pressed(self) -> None:
        self._choose(self.list.currentIndex())

    @Slot(QModelIndex)
    def _on_list_clicked(self, index: QModelIndex) -> None:
        self._choose(index)

    def _choose(self, index: QModelIndex) -> None:
        if index.isValid():
            entry: Entry = index.data(ROW_ROLE)
            self.hide()
            self.chosen.emit(entry.kind, entry.name)
