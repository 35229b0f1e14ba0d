"""Draws a row of the line-up."""

from collections.abc import Callable

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from idkey.app.bench.lineup_rows import LineupRow, RowKind
from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_doubt, draw_hazard, draw_permit
from idkey.app.parts.rows import ROW_ROLE, placed
from idkey.app.parts.theme import Theme
from idkey.model.key import Key

Index = QModelIndex | QPersistentModelIndex

Draw = Callable[[QPainter, QRectF, QColor, QColor], None]

PORTRAIT = (104, 52)
"""Room for a portrait at 100 % text, in pixels."""


def portrait_frame(row: QRect, width: int, theme: Theme) -> QRect:
    """Where the portrait stands in a row of a line-up of that width; its scroll bar counts in."""
    px = theme.px
    wide = px(88 if width < px(300) else PORTRAIT[0])
    high = min(px(PORTRAIT[1]), row.height() - px(8))
    return QRect(row.left() + px(8), row.center().y() - high // 2, wide, high)


class LineupDelegate(QStyledItemDelegate):
    """Portrait, name, support as a length and as a number, marks with words.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.key: Key | None = None
        self.zoom = 1.0
        self._desk = desk
        self._theme = desk.theme

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Height by what the row is."""
        row = index.data(ROW_ROLE)
        px = self._theme.px
        heights = {RowKind.OUTSIDE: 34, RowKind.FOLD: 40, RowKind.GONE: 52}
        return QSize(px(200), px(heights.get(row.kind, 70)))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the row."""
        row: LineupRow = index.data(ROW_ROLE)
        rect = QRect(option.rect)
        state = option.state
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_ground(painter, rect, state)
        if row.kind is RowKind.FOLD:
            self._draw_fold(painter, rect, row)
        elif row.kind is RowKind.OUTSIDE:
            self._draw_outside(painter, rect, row)
        else:
            self._draw_taxon(painter, rect, row, option)
        painter.restore()

    def _draw_ground(self, painter: QPainter, rect: QRect, state: QStyle.StateFlag) -> None:
        flag = QStyle.StateFlag
        box = QRectF(rect).adjusted(3, 2, -3, -2)
        if state & (flag.State_Selected | flag.State_MouseOver):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(self._theme.colour("accent_soft"))
            painter.drawRoundedRect(box, 8, 8)
        if state & flag.State_HasFocus:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(self._theme.colour("accent"), 2))
            painter.drawRoundedRect(box, 8, 8)

    def _draw_fold(self, painter: QPainter, rect: QRect, row: LineupRow) -> None:
        px = self._theme.px
        shut = "◂" if self._theme.mirrored else "▸"
        arrow = "▾" if row.unfolded else shut
        painter.setFont(self._theme.font(13, bold=True))
        painter.setPen(self._theme.colour("soft"))
        inner = rect.adjusted(px(12), 0, -px(12), 0)
        painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, f"{arrow}  {row.name}")
        painter.setPen(QPen(self._theme.colour("line"), 1))
        painter.drawLine(rect.left() + px(12), rect.top(), rect.right() - px(12), rect.top())

    def _draw_outside(self, painter: QPainter, rect: QRect, row: LineupRow) -> None:
        px = self._theme.px
        inner = rect.adjusted(px(12), 0, -px(12), 0)
        painter.setFont(self._theme.font(12))
        painter.setPen(self._theme.colour("soft"))
        room = inner.width() - px(48)
        name = painter.fontMetrics().elidedText(row.name, Qt.TextElideMode.ElideRight, room)
        painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, name)
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight
        painter.drawText(inner, flags, self._desk.language.share(row.support))

    def _draw_taxon(
        self, painter: QPainter, rect: QRect, row: LineupRow, option: QStyleOptionViewItem
    ) -> None:
        px = self._theme.px
        gone = row.kind is RowKind.GONE
        frame = portrait_frame(rect, option.widget.width(), self._theme)
        room = frame.size()
        left = rect.left() + px(10)
        if self.key is not None and self.key.body_plan:
            ratio = option.widget.devicePixelRatioF()
            picture = self._desk.pictures.portrait(
                self.key, row.taxon, size=room, ratio=ratio, zoom=self.zoom
            )
            self._draw_portrait(painter, placed(option, frame), picture, faint=gone)
            left = frame.right() + px(10)
        inner = QRect(left, rect.top() + px(8), rect.right() - px(12) - left, rect.height())
        end = placed(option, inner)
        self._draw_name(painter, end, row)
        if gone:
            self._draw_reason(painter, end, row)
        else:
            self._draw_support(painter, inner, row, option)
            self._draw_marks(painter, inner.adjusted(0, px(38), 0, 0), row, option)

    def _draw_portrait(
        self, painter: QPainter, frame: QRect, picture: QPixmap | None, *, faint: bool
    ) -> None:
        painter.save()
        painter.setOpacity(0.6 if faint else 1.0)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme.colour("plate"))
        painter.drawRoundedRect(frame, 6, 6)
        if picture is None:
            painter.restore()
            return
        size = picture.deviceIndependentSize()
        painter.drawPixmap(
            round(frame.center().x() - size.width() / 2),
            round(frame.center().y() - size.height() / 2),
            picture,
        )
        painter.restore()

    def _draw_name(self, painter: QPainter, inner: QRect, row: LineupRow) -> None:
        gone = row.kind is RowKind.GONE
        font = self._theme.font(13.5, italic=True, bold=row.leads)
        painter.setFont(font)
        painter.setPen(self._theme.colour("soft" if gone else "ink"))
        metrics = QFontMetrics(font)
        name = row.name
        if metrics.horizontalAdvance(name) > inner.width():
            genus, _, rest = name.partition(" ")
            name = f"{genus[0]}. {rest}" if rest else name
        text = metrics.elidedText(name, Qt.TextElideMode.ElideRight, inner.width())
        painter.drawText(inner, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop), text)

    def _draw_support(
        self, painter: QPainter, inner: QRect, row: LineupRow, option: QStyleOptionViewItem
    ) -> None:
        px, colour = self._theme.px, self._theme.colour
        number = px(48)
        top = inner.top() + px(22)
        whole = QRect(inner.left(), top + px(3), inner.width() - number, px(7))
        bar = QRectF(placed(option, whole))
        painter.setPen(QPen(colour("outline"), 1))
        painter.setBrush(colour("surface"))
        painter.drawRoundedRect(bar, bar.height() / 2, bar.height() / 2)
        length = bar.width() * row.support
        if length >= 1:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour("accent"))
            full = QRect(whole)
            full.setWidth(max(round(length), whole.height()))
            painter.drawRoundedRect(
                QRectF(placed(option, full)), bar.height() / 2, bar.height() / 2
            )
        painter.setFont(self._theme.font(12, bold=row.leads))
        painter.setPen(colour("ink"))
        box = QRect(inner.right() - number, top - px(3), number, px(18))
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight
        painter.drawText(placed(option, box), flags, self._desk.language.share(row.support))

    def _draw_marks(
        self, painter: QPainter, inner: QRect, row: LineupRow, option: QStyleOptionViewItem
    ) -> None:
        marks: list[tuple[Draw | None, str, str]] = []
        if row.hazard:
            marks.append((draw_hazard, self.tr("danger"), "hazard"))
        elif row.painful:
            marks.append((None, self.tr("painful"), "soft"))
        if row.listed:
            marks.append((draw_permit, self.tr("papers"), "permit"))
        if row.conflicts:
            marks.append((draw_doubt, self.tr("conflict"), "doubt"))
        px = self._theme.px
        font = self._theme.font(11.5, bold=True)
        painter.setFont(font)
        metrics, x = QFontMetrics(font), inner.left()
        if len(marks) > 1 and not row.hazard and row.painful:
            whole = sum(metrics.horizontalAdvance(word) + px(27) for _, word, _ in marks)
            marks = marks[1:] if whole > inner.width() else marks
        for draw, word, name in marks:
            wide = metrics.horizontalAdvance(word)
            if draw is not None:
                box = placed(option, QRect(x, inner.top(), px(14), px(14)))
                draw(painter, QRectF(box), self._theme.colour(name), self._theme.colour("raised"))
                x += px(17)
            painter.setPen(self._theme.colour(name))
            place = placed(option, QRect(x, inner.top(), wide + 1, px(15)))
            painter.drawText(place, int(Qt.AlignmentFlag.AlignVCenter), word)
            x += wide + px(10)

    def _draw_reason(self, painter: QPainter, inner: QRect, row: LineupRow) -> None:
        font = self._theme.font(12)
        painter.setFont(font)
        painter.setPen(self._theme.colour("soft"))
        metrics = QFontMetrics(font)
        text = metrics.elidedText(row.reason, Qt.TextElideMode.ElideRight, inner.width())
        line = inner.adjusted(0, self._theme.px(20), 0, 0)
        painter.drawText(line, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop), text)
