"""The keys that are here, each with its title, where it is from, and how full it is."""

from PySide6.QtCore import (
    QItemSelection,
    QItemSelectionModel,
    QPoint,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QKeyEvent, QPainter, QPen
from PySide6.QtWidgets import QFrame, QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from idkey.app.library.account import Account
from idkey.app.library.coverage_bar import coverage_words, draw_coverage, percent
from idkey.app.library.words import from_words, size_words
from idkey.app.parts.marks import draw_doubt
from idkey.app.parts.rows import ROW_ROLE, Index, RowsModel
from idkey.app.parts.theme import Theme


class KeyDelegate(QStyledItemDelegate):
    """Draws a key.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Three lines."""
        return QSize(self._theme.px(240), self._theme.px(84))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the key: title, where from, bar."""
        one: Account = index.data(ROW_ROLE)
        px, colour = self._theme.px, self._theme.colour
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        card = QRectF(QRect(option.rect)).adjusted(2, 3, -2, -3)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        focus = bool(option.state & QStyle.StateFlag.State_HasFocus)
        painter.setBrush(colour("accent_soft" if chosen else "raised"))
        edge = "accent" if chosen or focus else "line"
        painter.setPen(QPen(colour(edge), 2 if focus else 1))
        painter.drawRoundedRect(card, 8, 8)
        inner = card.adjusted(px(12), px(8), -px(12), -px(8)).toRect()
        if one.broken:
            side = px(18)
            at = inner.right() - side if not self._theme.mirrored else inner.left()
            draw_doubt(
                painter, QRectF(at, inner.top(), side, side), colour("doubt"), colour("raised")
            )
            gap = side + px(6)
            inner.adjust(gap if self._theme.mirrored else 0, 0, 0, 0)
        self._write(painter, inner, one)
        painter.restore()

    def _write(self, painter: QPainter, box: QRect, one: Account) -> None:
        theme, px = self._theme, self._theme.px
        middle = Qt.AlignmentFlag.AlignVCenter
        line = QRect(box.topLeft(), QSize(box.width(), px(20)))
        if one.broken and not theme.mirrored:
            line.setWidth(line.width() - px(26))
        painter.setFont(theme.font(bold=True))
        painter.setPen(theme.colour("ink"))
        painter.drawText(line, middle, _elided(painter, one.entry.title, line.width()))
        line = QRect(QPoint(box.left(), line.bottom() + 1), QSize(box.width(), px(18)))
        painter.setFont(theme.font(12))
        painter.setPen(theme.colour("soft"))
        told = (one.entry.version, from_words(one), size_words(one))
        words = " · ".join(filter(None, told))
        painter.drawText(line, middle, _elided(painter, words, line.width()))
        line = QRect(QPoint(box.left(), line.bottom() + px(3)), QSize(box.width(), px(18)))
        if one.counts is None:
            return
        room = px(64)
        bar = QRectF(line).adjusted(0, px(3), -room, -px(3))
        if theme.mirrored:
            bar.translate(room, 0)
        draw_coverage(painter, bar, one.counts.coverage, theme)
        end = QRect(line.right() - room + px(8), line.top(), room - px(8), line.height())
        if theme.mirrored:
            end.moveLeft(line.left())
        painter.setPen(theme.colour("soft"))
        painter.drawText(end, middle, percent(one.counts.coverage.filled))


def _elided(painter: QPainter, text: str, width: int) -> str:
    return painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, width)


class KeyList(QListView):
    """The list; Enter does the main thing with the current key.

    Args:
        theme: The look.

    Signals:
        chosen(): Another key is the current one.
        opened(): The person wants to work with the current one.
    """

    chosen = Signal()
    opened = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        role = Qt.ItemDataRole
        self.rows: RowsModel[Account] = RowsModel(
            {
                int(role.DisplayRole): lambda one: one.entry.title,
                int(role.AccessibleTextRole): self._spoken,
            },
            parent=self,
        )
        self._delegate = KeyDelegate(theme)
        self.setModel(self.rows)
        self.setItemDelegate(self._delegate)
        self.setAccessibleName(self.tr("Keys that are here"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.doubleClicked.connect(self.opened)
        self.selectionModel().selectionChanged.connect(self._on_selection_changed)

    @property
    def current(self) -> Account | None:
        """The key that is looked at."""
        found = self.currentIndex().data(ROW_ROLE)
        return found if isinstance(found, Account) else None

    def show_accounts(self, accounts: tuple[Account, ...]) -> None:
        """Show the keys; the current one stays so where it is still here."""
        here = self.current
        self.rows.replace(accounts)
        folders = [one.entry.folder for one in accounts]
        if not folders:
            self.chosen.emit()
            return
        row = folders.index(here.entry.folder) if here and here.entry.folder in folders else 0
        self._look_at(row)
        self.chosen.emit()

    @Slot(str)
    def look_at(self, key: str) -> None:
        """Make a key the current one."""
        for row, one in enumerate(self.rows.rows):
            if one.entry.id == key:
                self._look_at(row)
                return

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter do the main thing on every platform."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.current:
            self.opened.emit()
            return
        super().keyPressEvent(event)

    def _look_at(self, row: int) -> None:
        how = QItemSelectionModel.SelectionFlag.ClearAndSelect
        self.selectionModel().setCurrentIndex(self.rows.index(row), how)

    def _spoken(self, one: Account) -> str:
        words = [one.entry.title, one.entry.version, from_words(one), size_words(one)]
        if one.counts is not None:
            words.append(coverage_words(one.counts.coverage))
        return ", ".join(filter(None, words))

    @Slot(QItemSelection, QItemSelection)
    def _on_selection_changed(self, _: QItemSelection, __: QItemSelection) -> None:
        self.chosen.emit()
