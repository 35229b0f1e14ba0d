"""An observed error rate with its interval, beside the rate in the key."""

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip
from idkey.drill.observed import ObservedError
from idkey.report.language import Language

WIDEST = 0.5
"""Share at the right end; no character with more is of use."""


class RateBar(QWidget):
    """A line as long as the interval, a dot on what was seen, an upright where the key stands.

    Args:
        found: What was observed.
        theme: The look.
        language: Language of the numbers.
    """

    def __init__(self, found: ObservedError, theme: Theme, language: Language) -> None:
        super().__init__()
        self._found, self._theme = found, theme
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        text = self.tr("observed {share} ({low} to {high}); the key says {now}")
        interval = found.interval
        said = text.format(
            share=language.share(interval.share),
            low=language.share(interval.low),
            high=language.share(interval.high),
            now=language.share(found.now),
        )
        self.setAccessibleName(said)
        self.setToolTip(tip(said))

    def sizeHint(self) -> QSize:
        """One line high."""
        return QSize(self._theme.px(150), self._theme.px(22))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw axis, interval, dot and upright."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour, px = self._theme.colour, self._theme.px
        middle = self.height() / 2
        painter.setPen(QPen(colour("line"), px(2)))
        painter.drawLine(QPointF(self._x(0), middle), QPointF(self._x(1), middle))
        interval = self._found.interval
        tone = colour("doubt" if self._found.differs else "accent")
        pen = QPen(tone, px(4))
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        low, high = self._x(interval.low), self._x(interval.high)
        painter.drawLine(QPointF(low, middle), QPointF(high, middle))
        painter.setPen(QPen(colour("ink"), px(2)))
        now = self._x(self._found.now)
        painter.drawLine(QPointF(now, middle - px(8)), QPointF(now, middle + px(8)))
        painter.setPen(QPen(colour("raised"), px(1.5)))
        painter.setBrush(tone)
        painter.drawEllipse(QPointF(self._x(interval.share), middle), px(5), px(5))
        if self._found.offered is not None:
            self._draw_offer(painter, self._x(self._found.offered), middle)
        painter.end()

    def _draw_offer(self, painter: QPainter, x: float, middle: float) -> None:
        """A small triangle below the line, pointing at the rate offered."""
        px = self._theme.px
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme.colour("ink"))
        foot = middle + px(10)
        points = [QPointF(x, foot - px(6)), QPointF(x - px(4), foot), QPointF(x + px(4), foot)]
        painter.drawPolygon(QPolygonF(points))

    def _x(self, share: float) -> float:
        room = QRectF(self.rect()).adjusted(self._theme.px(7), 0, -self._theme.px(7), 0)
        return room.left() + room.width() * min(share / WIDEST, 1.0)
