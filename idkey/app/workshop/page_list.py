"""The slim list of the pages of the workshop, with a count of mistakes beside each."""

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
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import (
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
)

from idkey.app.parts.marks import draw_doubt
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.theme import Theme

Index = QModelIndex | QPersistentModelIndex

WIDTH = 168
MOST_WIDTH = 250
"""Widths in pixels at 100 %, and whatever the text size."""

APART = 13
"""Height in pixels at 100 % of the gap between kinds of work."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PageRow:
    """One page.

    Attributes:
        id: Its stable name.
        title: What it is called.
        mistakes: How many mistakes it can show.
        begins: Whether another kind of work begins with it.
    """

    id: str
    title: str
    mistakes: int = 0
    begins: bool = False


class _Delegate(QStyledItemDelegate):
    """A line of text, and a mark with a number where there are mistakes."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """One line, and a rule above it where another kind of work begins."""
        above = self._theme.px(APART) if index.data(ROW_ROLE).begins else 0
        return QSize(min(self._theme.px(WIDTH), MOST_WIDTH) - 8, self._theme.px(34) + above)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the row."""
        row: PageRow = index.data(ROW_ROLE)
        px, colour = self._theme.px, self._theme.colour
        whole = QRect(option.rect)
        above = px(APART) if row.begins else 0
        rect = whole.adjusted(2, 2 + above, -2, -2)
        here = bool(option.state & QStyle.StateFlag.State_Selected)
        focus = option.widget is not None and option.widget.hasFocus()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if above:
            painter.setPen(colour("line"))
            middle = whole.top() + above // 2
            painter.drawLine(whole.left() + px(10), middle, whole.right() - px(8), middle)
        if here:
            painter.setPen(colour("accent") if focus else Qt.PenStyle.NoPen)
            painter.setBrush(colour("accent_soft"))
            painter.drawRoundedRect(QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        inner = rect.adjusted(px(10), 0, -px(8), 0)
        if row.mistakes:
            inner = self._draw_count(painter, inner, row.mistakes)
        painter.setFont(self._theme.font(14, bold=here))
        painter.setPen(colour("ink"))
        text = painter.fontMetrics().elidedText(
            row.title, Qt.TextElideMode.ElideRight, inner.width()
        )
        painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeading, text)
        painter.restore()

    def _draw_count(self, painter: QPainter, inner: QRect, count: int) -> QRect:
        """Draw the mark and the number at the end; what is left of the line."""
        px, colour = self._theme.px, self._theme.colour
        painter.setFont(self._theme.font(12, bold=True))
        painter.setPen(colour("doubt"))
        wide, side = painter.fontMetrics().horizontalAdvance(str(count)), px(14)
        whole = wide + side + px(4)
        left = inner.left() if self._theme.mirrored else inner.right() - whole
        top = inner.center().y() - side / 2
        draw_doubt(painter, QRectF(left, top, side, side), colour("doubt"), colour("surface"))
        box = QRect(left + side + px(4), inner.top(), wide + 2, inner.height())
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter, str(count))
        if self._theme.mirrored:
            return inner.adjusted(whole + px(4), 0, 0, 0)
        return inner.adjusted(0, 0, -whole - px(4), 0)


class PageList(QListView):
    """The pages; arrows move between them.

    Args:
        theme: The look.

    Signals:
        chosen(page: str): The person goes to that page.
    """

    chosen = Signal(str)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        role = Qt.ItemDataRole
        self.rows: RowsModel[PageRow] = RowsModel(
            {
                int(role.DisplayRole): lambda row: row.title,
                int(role.AccessibleTextRole): self._spoken,
                int(role.ToolTipRole): self._spoken,
            },
            parent=self,
        )
        self._delegate = _Delegate(theme)
        self.setModel(self.rows)
        self.setItemDelegate(self._delegate)
        self.setAccessibleName(self.tr("Pages of the workshop"))
        self.setFixedWidth(min(theme.px(WIDTH), MOST_WIDTH))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.selectionModel().currentChanged.connect(self._on_current_changed)

    @property
    def current(self) -> str:
        """The page gone to; empty for none."""
        index = self.currentIndex()
        return self.rows.rows[index.row()].id if index.isValid() else ""

    def show_pages(self, rows: tuple[PageRow, ...]) -> None:
        """Show the pages."""
        self.rows.replace(rows)

    def go_to(self, page: str) -> None:
        """Go to a page."""
        for number, row in enumerate(self.rows.rows):
            if row.id == page:
                self.setCurrentIndex(self.rows.index(number))

    def _spoken(self, row: PageRow) -> str:
        if not row.mistakes:
            return row.title
        if row.mistakes == 1:
            return self.tr("{page}: one mistake").format(page=row.title)
        return self.tr("{page}: {n} mistakes").format(page=row.title, n=row.mistakes)

    @Slot(QModelIndex, QModelIndex)
    def _on_current_changed(self, index: QModelIndex, _: QModelIndex) -> None:
        if index.isValid():
            self.chosen.emit(self.rows.rows[index.row()].id)
