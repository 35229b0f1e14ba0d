"""Plots of the drill, drawn here: shares with their intervals, and how they went over time."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.theme import Theme
from idkey.engine.intervals import Interval


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """One row of a plot of shares.

    Attributes:
        name: What it is about.
        counts: What it rests on, such as ``"17 of 20"``.
        interval: The share with its limits.
        italic: Whether the name is a scientific one.
        firm: Whether it reaches the mark; said by a tick as well.
    """

    name: str
    counts: str
    interval: Interval
    italic: bool = False
    firm: bool = False


class Bars(QWidget):
    """Shares as dots on lines as long as their intervals, one row each.

    Args:
        name: What the rows are, for readers that speak.
        theme: The look.
    """

    def __init__(self, name: str, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._bars: tuple[Bar, ...] = ()
        self._mark: float | None = None
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    @property
    def filled(self) -> bool:
        """Whether there is anything to see."""
        return bool(self._bars)

    def show_bars(self, bars: Sequence[Bar], mark: float | None = None) -> None:
        """Show other rows.

        Args:
            bars: The rows.
            mark: A share to draw a line at; None for none.
        """
        self._bars, self._mark = tuple(bars), mark
        lines = (
            f"{b.name}: {b.counts}, {b.interval.low:.0%} – {b.interval.high:.0%}" for b in bars
        )
        self.setAccessibleDescription("; ".join(lines))
        self.setVisible(bool(bars))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """A row per bar, and the axis."""
        return QSize(420, len(self._bars) * self._row() + self._theme.px(22))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw rows, mark and axis."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px, colour = self._theme.px, self._theme.colour
        names, counts = min(px(250), self.width() * 2 // 5), px(84)
        left, right = names + px(10), self.width() - counts - px(10)
        foot = len(self._bars) * self._row()
        painter.setPen(QPen(colour("line"), 1))
        for share in (0.0, 0.25, 0.5, 0.75, 1.0):
            x = left + share * (right - left)
            painter.drawLine(QPointF(x, 0), QPointF(x, foot))
        if self._mark is not None:
            x = left + self._mark * (right - left)
            pen = QPen(colour("accent"), 1.4, Qt.PenStyle.DashLine)
            painter.setPen(pen)
            painter.drawLine(QPointF(x, 0), QPointF(x, foot))
        for number, bar in enumerate(self._bars):
            self._draw_bar(painter, bar, number * self._row(), (names, left, right))
        painter.setFont(self._theme.font(11))
        painter.setPen(colour("soft"))
        box = QRectF(left - px(20), foot + 2, right - left + px(40), px(18))
        painter.drawText(box, Qt.AlignmentFlag.AlignLeft, "0 %")
        painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, "50 %")
        painter.drawText(box, Qt.AlignmentFlag.AlignRight, "100 %")
        painter.end()

    def _draw_bar(
        self, painter: QPainter, bar: Bar, top: float, places: tuple[int, int, int]
    ) -> None:
        names, left, right = places
        colour, row = self._theme.colour, self._row()
        y = top + row / 2
        painter.setFont(self._theme.font(13, italic=bar.italic))
        painter.setPen(colour("ink"))
        metrics = painter.fontMetrics()
        text = metrics.elidedText(bar.name, Qt.TextElideMode.ElideRight, names)
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(QRectF(0, top, names, row), middle | Qt.AlignmentFlag.AlignLeft, text)
        name = "accent" if bar.firm else "ink"
        ends = [left + share * (right - left) for share in (bar.interval.low, bar.interval.high)]
        painter.setPen(QPen(colour(name), 2))
        painter.drawLine(QPointF(ends[0], y), QPointF(ends[1], y))
        for x in ends:
            painter.drawLine(QPointF(x, y - 4), QPointF(x, y + 4))
        painter.setBrush(colour(name))
        painter.setPen(QPen(colour("raised"), 1.5))
        painter.drawEllipse(QPointF(left + bar.interval.share * (right - left), y), 5, 5)
        painter.setFont(self._theme.font(12, bold=bar.firm))
        painter.setPen(colour("soft"))
        counts = f"✓ {bar.counts}" if bar.firm else bar.counts
        box = QRectF(right + self._theme.px(10), top, self.width() - right, row)
        painter.drawText(box, middle | Qt.AlignmentFlag.AlignLeft, counts)

    def _row(self) -> int:
        return self._theme.px(26)


class Trend(QWidget):
    """Share right over blocks of answers, with intervals.

    Args:
        name: What it shows, for readers that speak.
        theme: The look.
    """

    def __init__(self, name: str, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._points: tuple[Bar, ...] = ()
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    @property
    def filled(self) -> bool:
        """Whether there is anything to see."""
        return bool(self._points)

    def show_points(self, points: Sequence[Bar]) -> None:
        """Show other blocks, oldest first; the name of each is its day."""
        self._points = tuple(points)
        lines = (f"{p.name}: {p.counts}" for p in points)
        self.setAccessibleDescription("; ".join(lines))
        self.setVisible(bool(points))
        self.update()

    def sizeHint(self) -> QSize:
        """Wide and low."""
        return QSize(420, self._theme.px(190))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw axis, line, intervals and days."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px, colour = self._theme.px, self._theme.colour
        area = QRectF(px(46), px(10), self.width() - px(62), self.height() - px(38))
        painter.setFont(self._theme.font(11))
        for share in (0.0, 0.5, 1.0):
            y = area.bottom() - share * area.height()
            painter.setPen(QPen(colour("line"), 1))
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y))
            painter.setPen(colour("soft"))
            box = QRectF(0, y - px(9), px(40), px(18))
            side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(box, side, f"{share * 100:.0f} %")
        self._draw_points(painter, area)
        self._draw_days(painter, area)
        painter.end()

    def _x(self, number: int, area: QRectF) -> float:
        return area.left() + (number + 0.5) / len(self._points) * area.width()

    def _draw_points(self, painter: QPainter, area: QRectF) -> None:
        colour = self._theme.colour
        dots = []
        for number, point in enumerate(self._points):
            x = self._x(number, area)
            low, high, share = (
                area.bottom() - value * area.height()
                for value in (point.interval.low, point.interval.high, point.interval.share)
            )
            painter.setPen(QPen(colour("outline"), 1.4))
            painter.drawLine(QPointF(x, low), QPointF(x, high))
            dots.append(QPointF(x, share))
        painter.setPen(QPen(colour("accent"), 2))
        painter.drawPolyline(dots)
        painter.setBrush(colour("accent"))
        painter.setPen(QPen(colour("raised"), 1.5))
        for dot in dots:
            painter.drawEllipse(dot, 4.5, 4.5)

    def _draw_days(self, painter: QPainter, area: QRectF) -> None:
        """The day of as many blocks as have room, the last one always."""
        if not self._points:
            return
        wide = self._theme.px(80)
        every = max(1, -(-len(self._points) * wide // max(int(area.width()), 1)))
        last = len(self._points) - 1
        painter.setFont(self._theme.font(11))
        painter.setPen(self._theme.colour("soft"))
        for number, point in enumerate(self._points):
            if (last - number) % every == 0:
                box = QRectF(self._x(number, area) - wide / 2, area.bottom() + 6, wide, 20)
                box.moveRight(min(box.right(), self.width()))
                painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, point.name)
