"""Draws a row of the audit: a mark by weight, what is wrong, where and how to mend it."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from idkey.app.parts.marks import draw_cross, draw_doubt
from idkey.app.parts.rows import ROW_ROLE
from idkey.app.parts.theme import Theme
from idkey.app.workshop.audit_rows import AuditRow, Weight

Index = QModelIndex | QPersistentModelIndex


class AuditDelegate(QStyledItemDelegate):
    """Two lines a row, all rows of one height, so that thousands scroll at once.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Two lines."""
        return QSize(self._theme.px(200), self._theme.px(50))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the row."""
        row: AuditRow = index.data(ROW_ROLE)
        rect, px = QRect(option.rect), self._theme.px
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_ground(painter, rect, option.state)
        box = QRectF(rect.left() + px(10), rect.top() + px(9), px(15), px(15))
        draw_weight(painter, box, row.weight, self._theme)
        inner = rect.adjusted(px(34), px(5), -px(10), -px(4))
        self._line(painter, inner, 0, row.what, (13.5, "ink"))
        self._line(painter, inner, 21, f"{row.place} · {row.mend}", (12, "soft"))
        painter.restore()

    def _draw_ground(self, painter: QPainter, rect: QRect, state: QStyle.StateFlag) -> None:
        flag = QStyle.StateFlag
        chosen, focus = state & flag.State_Selected, state & flag.State_HasFocus
        if not (chosen or state & flag.State_MouseOver):
            return
        painter.setBrush(self._theme.colour("accent_soft" if chosen else "surface"))
        ring = QPen(self._theme.colour("accent"), 2) if focus else QPen(Qt.PenStyle.NoPen)
        painter.setPen(ring)
        painter.drawRoundedRect(QRectF(rect).adjusted(2, 1, -2, -1), 6, 6)

    def _line(
        self, painter: QPainter, inner: QRect, top: int, text: str, look: tuple[float, str]
    ) -> None:
        font = self._theme.font(look[0])
        metrics = QFontMetrics(font)
        painter.setFont(font)
        painter.setPen(self._theme.colour(look[1]))
        box = QRect(inner.left(), inner.top() + self._theme.px(top), inner.width(), 0)
        box.setHeight(metrics.height())
        shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, inner.width())
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)


def draw_weight(painter: QPainter, box: QRectF, weight: Weight, theme: Theme) -> None:
    """A cross on a disc for an error, a diamond for a warning, a ring for a weakness."""
    ground = theme.colour("raised")
    if weight is Weight.ERROR:
        draw_cross(painter, box, theme.colour("hazard"), ground)
    elif weight is Weight.WARNING:
        draw_doubt(painter, box, theme.colour("doubt"), ground)
    else:
        painter.setPen(QPen(theme.colour("soft"), box.width() * 0.13))
        painter.setBrush(QColor(Qt.GlobalColor.transparent))
        inset = box.width() * 0.22
        painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset))
