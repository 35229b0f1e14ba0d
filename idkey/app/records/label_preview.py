"""A label and the page it is printed on, drawn small."""

from html import escape

import segno
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen, QPolygonF, QTextDocument
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.theme import Theme
from idkey.engine.result import Stake
from idkey.report.label_stock import Stock
from idkey.report.names import rich_text
from idkey.report.shop_label import LabelMark, ShopLabel

PAPER, INK, FAINT = QColor("#ffffff"), QColor("#1d1d1b"), QColor("#b9b9b4")
WARNING = {Stake.HAZARD: QColor("#a3211b"), Stake.PERMIT: QColor("#5a4a00")}
"""Paper is white in the dark as well: this is what comes out of the printer."""


class LabelPreview(QWidget):
    """Shows the first label large, and where the labels go on the page.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._labels: tuple[ShopLabel, ...] = ()
        self._stock = Stock(label=(62, 29), page=(62, 29))
        self._used, self._cut = 0, False
        self.setAccessibleName(self.tr("The label as it is printed"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_labels(
        self, labels: tuple[ShopLabel, ...], stock: Stock, *, used: int, cut: bool
    ) -> None:
        """Show labels on a stock, of which `used` are gone; `cut` draws lines to cut along."""
        self._labels, self._stock, self._used, self._cut = labels, stock, used, cut
        if labels:
            first = labels[0]
            marks = "; ".join(mark.words for mark in first.marks)
            parts = (first.name, first.below, first.facts, marks, first.price)
            self.setAccessibleDescription(". ".join(part for part in parts if part))
        self.update()

    def sizeHint(self) -> QSize:
        """Room for a label and a page."""
        return QSize(self._theme.px(420), self._theme.px(320))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the label, and the page beside it where there is more than one place on it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = QRectF(self.rect()).adjusted(4, 4, -4, -4)
        sheet = len(self._stock.places) > 1
        left = QRectF(area)
        if sheet:
            left.setWidth(area.width() * 0.62)
            page = QRectF(area)
            page.setLeft(left.right() + 12)
            self._draw_page(painter, page)
        if self._labels:
            self._draw_label(painter, _fitted(self._stock.label, left), self._labels[0])
        painter.end()

    def _draw_page(self, painter: QPainter, area: QRectF) -> None:
        page = _fitted(self._stock.page, area)
        scale = page.width() / self._stock.page[0]
        painter.setPen(QPen(FAINT, 1))
        painter.setBrush(PAPER)
        painter.drawRect(page)
        wide, high = (side * scale for side in self._stock.label)
        here = range(self._used, self._used + len(self._labels))
        for number, (x, y) in enumerate(self._stock.places):
            box = QRectF(page.x() + x * scale, page.y() + y * scale, wide, high)
            painter.setPen(QPen(FAINT, 1, Qt.PenStyle.DotLine))
            painter.setBrush(QColor("#dfe8e1") if number in here else PAPER)
            painter.drawRect(box)
            painter.setPen(QPen(INK if number in here else FAINT, 1.4))
            inner = box.adjusted(wide * 0.2, high * 0.3, -wide * 0.2, -high * 0.3)
            if number < self._used:  # gone
                painter.drawLine(inner.topLeft(), inner.bottomRight())
                painter.drawLine(inner.topRight(), inner.bottomLeft())
            elif number in here:
                painter.drawLine(inner.topLeft(), inner.topRight())
                painter.drawLine(inner.bottomLeft(), QPointF(inner.center().x(), inner.bottom()))

    def _draw_label(self, painter: QPainter, box: QRectF, label: ShopLabel) -> None:
        dash = Qt.PenStyle.DashLine if self._cut else Qt.PenStyle.SolidLine
        painter.setPen(QPen(INK if self._cut else FAINT, 1, dash))
        painter.setBrush(PAPER)
        painter.drawRect(box)
        unit = box.height() / self._stock.label[1]  # pixels in a millimetre
        inner = box.adjusted(2 * unit, 2 * unit, -2 * unit, -2 * unit)
        code = min(inner.height() * 0.42, 14 * unit)
        square = QRectF(inner.right() - code, inner.top(), code, code)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        _draw_code(painter, square, f"case {label.case_id}")
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        foot = inner.height() * 0.14
        marks = self._draw_marks(painter, inner.adjusted(0, 0, 0, -foot), label.marks)
        room = QRectF(inner.topLeft(), QPointF(inner.right() - code - unit, marks))
        self._draw_text(painter, room, label)
        small = f"{label.case_id[:8]} · {label.key}"
        painter.setPen(FAINT.darker(150))
        self._shrink(painter, small, foot * 0.62, inner.width())
        where = QRectF(inner.left(), inner.bottom() - foot, inner.width(), foot)
        painter.drawText(where, Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft, small)

    def _draw_marks(self, painter: QPainter, inner: QRectF, marks: tuple[LabelMark, ...]) -> float:
        """Warnings from the bottom up; where they begin."""
        high = inner.height() * 0.17
        y = inner.bottom() - high * len(marks)
        for number, mark in enumerate(marks):
            top = y + number * high
            painter.setPen(WARNING[mark.stake])
            painter.setBrush(WARNING[mark.stake])
            side = high * 0.7
            sign = [QPointF(0, side), QPointF(side / 2, 0), QPointF(side, side)]
            if mark.stake is Stake.PERMIT:
                sign = [QPointF(0, 0), QPointF(side, 0), QPointF(side, side), QPointF(0, side)]
            at = QPointF(inner.left(), top + high * 0.12)
            painter.drawPolygon(QPolygonF([point + at for point in sign]))
            painter.setPen(PAPER)
            painter.setFont(self._sized(side * 0.8, bold=True))
            letter = "!" if mark.stake is Stake.HAZARD else "§"
            square = QRectF(at, QPointF(at.x() + side, at.y() + side))
            painter.drawText(square, Qt.AlignmentFlag.AlignCenter, letter)
            painter.setPen(WARNING[mark.stake])
            where = QRectF(inner.left() + high, top, inner.width() - high, high)
            self._shrink(painter, mark.words, high * 0.6, where.width(), bold=True)
            side_by_side = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
            painter.drawText(where, side_by_side, mark.words)
        return y

    def _draw_text(self, painter: QPainter, room: QRectF, label: ShopLabel) -> None:
        below = " · ".join(part for part in (label.below, label.facts, label.price) if part)
        page = QTextDocument()
        page.setDocumentMargin(0)
        page.setTextWidth(room.width())
        size = room.height() * 0.4
        while size > 6:
            page.setDefaultFont(self._sized(size))
            small = max(6, round(size * 0.5))
            page.setHtml(
                f'<body style="color: {INK.name()}"><b>{rich_text(label.italic, label.name)}</b>'
                f'<p style="margin: 0; font-size: {small}px">{escape(below)}</p></body>'
            )
            if page.size().height() <= room.height() and page.idealWidth() <= room.width():
                break
            size *= 0.92
        painter.save()
        painter.translate(room.topLeft())
        page.drawContents(painter)
        painter.restore()

    def _shrink(
        self, painter: QPainter, words: str, size: float, room: float, *, bold: bool = False
    ) -> None:
        """Set the largest font up to a size in which words have room on one line."""
        painter.setFont(self._sized(size, bold=bold))
        while size > 6 and painter.fontMetrics().horizontalAdvance(words) > room:
            size *= 0.94
            painter.setFont(self._sized(size, bold=bold))

    def _sized(self, pixels: float, *, bold: bool = False) -> QFont:
        font = self._theme.font(12, bold=bold)
        font.setPixelSize(max(5, round(pixels)))
        return font


def _fitted(size: tuple[float, float], area: QRectF) -> QRectF:
    """The largest box of that shape in an area, in its middle."""
    scale = min(area.width() / size[0], area.height() / size[1])
    box = QRectF(0, 0, size[0] * scale, size[1] * scale)
    box.moveCenter(area.center())
    return box


def _draw_code(painter: QPainter, box: QRectF, text: str) -> None:
    """The square code, as it is printed."""
    squares = segno.make(text, error="m", micro=False).matrix
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(INK)
    side = box.width() / len(squares)
    for row, line in enumerate(squares):
        for column, dark in enumerate(line):
            if dark:
                at = QPointF(box.x() + column * side, box.y() + row * side)
                painter.drawRect(QRectF(at, at + QPointF(side, side)))
