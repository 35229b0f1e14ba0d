"""The other questions: by how one looks, best first, with a search."""

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
from PySide6.QtGui import QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QVBoxLayout,
)

from idkey.app.bench.lineup_view import LineupList
from idkey.app.bench.one_line import OneLine
from idkey.app.bench.others_rows import OtherRow, other_rows
from idkey.app.bench.session import Session
from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_tick
from idkey.app.parts.rows import ROW_ROLE, RowsModel, placed

Index = QModelIndex | QPersistentModelIndex


class OthersDelegate(QStyledItemDelegate):
    """A heading, or a question with its worth as a bar.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._theme = desk.theme

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Height by what the row is."""
        px = self._theme.px
        return QSize(px(240), px(42) if index.data(ROW_ROLE).character else px(28))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the row."""
        row: OtherRow = index.data(ROW_ROLE)
        rect = QRect(option.rect)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if row.character:
            self._draw_ground(painter, rect, option.state, row)
            self._draw_question(painter, option, row)
        else:
            px = self._theme.px
            inner = placed(option, rect.adjusted(px(12), px(6), -px(4), 0))
            painter.setFont(self._theme.font(12, bold=True))
            painter.setPen(self._theme.colour("soft"))
            painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, row.text)
        painter.restore()

    def _draw_ground(
        self, painter: QPainter, rect: QRect, state: QStyle.StateFlag, row: OtherRow
    ) -> None:
        flag, colour = QStyle.StateFlag, self._theme.colour
        box = QRectF(rect).adjusted(4, 1, -4, -1)
        if row.current or state & (flag.State_Selected | flag.State_MouseOver):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour("accent_soft"))
            painter.drawRoundedRect(box, 7, 7)
        if state & flag.State_HasFocus:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(colour("accent"), 2))
            painter.drawRoundedRect(box, 7, 7)

    def _draw_question(
        self, painter: QPainter, option: QStyleOptionViewItem, row: OtherRow
    ) -> None:
        px, colour, rect = self._theme.px, self._theme.colour, QRect(option.rect)
        bar = px(64)
        inner = placed(option, rect.adjusted(px(12), px(3), -px(14) - bar - px(8), -px(3)))
        dim = bool(row.blocked)
        font = self._theme.font(13, bold=row.current)
        painter.setFont(font)
        painter.setPen(colour("soft" if dim else "ink"))
        metrics = QFontMetrics(font)
        text = metrics.elidedText(row.text, Qt.TextElideMode.ElideRight, inner.width())
        edge = Qt.AlignmentFlag.AlignLeft
        painter.drawText(inner, int(edge | Qt.AlignmentFlag.AlignTop), text)
        small = self._theme.font(12)
        painter.setFont(small)
        painter.setPen(colour("accent" if row.answered else "soft"))
        metrics = QFontMetrics(small)
        line = metrics.elidedText(
            row.blocked or row.question, Qt.TextElideMode.ElideRight, inner.width()
        )
        painter.drawText(inner, int(edge | Qt.AlignmentFlag.AlignBottom), line)
        place = QRect(rect.right() - px(14) - bar, rect.center().y() - px(3), bar, px(6))
        if row.answered:
            side = px(16)
            box = QRect(place.right() - side, rect.center().y() - side // 2, side, side)
            draw_tick(painter, QRectF(placed(option, box)), colour("accent"), colour("raised"))
        elif not row.blocked:
            self._draw_worth(painter, option, place, row.worth)

    def _draw_worth(
        self, painter: QPainter, option: QStyleOptionViewItem, place: QRect, worth: float
    ) -> None:
        colour, round_ = self._theme.colour, place.height() / 2
        painter.setPen(QPen(colour("outline"), 1))
        painter.setBrush(colour("surface"))
        painter.drawRoundedRect(QRectF(placed(option, place)), round_, round_)
        if worth > 0.02:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour("accent"))
            full = QRect(place)
            full.setWidth(max(round(place.width() * worth), place.height()))
            painter.drawRoundedRect(QRectF(placed(option, full)), round_, round_)


class OthersView(QFrame):
    """All questions of the key, to choose freely.

    Args:
        desk: Look, drawings, language.

    Signals:
        asked(character: str): The person wants to look at that.
    """

    asked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._desk = desk
        self._session: Session | None = None
        role = Qt.ItemDataRole
        self.rows: RowsModel[OtherRow] = RowsModel(
            {
                int(role.DisplayRole): lambda row: row.text,
                int(role.AccessibleTextRole): self._spoken,
                int(role.ToolTipRole): lambda row: row.blocked or row.question,
            },
            chooses=lambda row: bool(row.character),
            parent=self,
        )
        self.search = QLineEdit()
        self.search.setPlaceholderText(self.tr("Search all questions"))
        self.search.setAccessibleName(self.tr("Search all questions"))
        self.search.setClearButtonEnabled(True)
        self.list = LineupList()
        self.list.setModel(self.rows)
        self.list.setItemDelegate(OthersDelegate(desk))
        self.list.setMinimumHeight(desk.theme.px(42))
        self.list.setAccessibleName(self.tr("Other questions"))
        self.list.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.list.setMouseTracking(True)
        self._none = caption(self.tr("No question has that word. Try another."), "soft")
        self._none.setContentsMargins(14, 4, 14, 10)
        self._lay_out()
        self.search.textChanged.connect(self._on_search_text_changed)
        self.search.returnPressed.connect(self._on_search_return_pressed)
        self.list.activated.connect(self._on_list_activated)
        self.list.clicked.connect(self._on_list_activated)

    def show_session(self, session: Session) -> None:
        """Show the questions of a session."""
        self._session = session
        self.rows.replace(other_rows(session, self.search.text(), self._desk.language))
        empty = not self.rows.rows
        self._none.setVisible(empty and not session.reading)
        self.list.setVisible(not empty)

    def _lay_out(self) -> None:
        heading = QHBoxLayout()
        heading.setContentsMargins(14, 8, 12, 4)
        heading.setSpacing(8)
        heading.addWidget(caption(self.tr("Other questions"), "strong", wraps=False))
        order = OneLine(self._desk.theme, 12)
        order.show_text(self.tr("by how one looks, best first"))
        heading.addWidget(order, 1)
        self.search.setMinimumWidth(self._desk.theme.px(190))
        heading.addWidget(self.search)
        column = QVBoxLayout(self)
        column.setContentsMargins(1, 1, 1, 6)
        column.setSpacing(0)
        column.addLayout(heading)
        column.addWidget(self.list, 1)
        column.addWidget(self._none)

    def _spoken(self, row: OtherRow) -> str:
        if not row.character:
            return row.text
        if row.answered:
            answered = self.tr("answered")
            return f"{row.text}, {answered}: {row.question}"
        worth = self.tr("worth {share}").format(share=self._desk.language.share(row.worth))
        return f"{row.text}, {row.blocked or worth}. {row.question}"

    @Slot()
    def _on_search_text_changed(self) -> None:
        if self._session is not None:
            self.show_session(self._session)

    @Slot()
    def _on_search_return_pressed(self) -> None:
        first = next((row for row in self.rows.rows if row.character), None)
        if first is not None:
            self.search.clear()
            self.asked.emit(first.character)

    @Slot(QModelIndex)
    def _on_list_activated(self, index: QModelIndex) -> None:
        row: OtherRow = index.data(ROW_ROLE)
        if row.character:
            self.asked.emit(row.character)
