"""The label of a practised animal, as a shop tag."""

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.theme import Theme


class Tag(QWidget):
    """Shows what the label says, word for word.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._text = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_label(self, text: str) -> None:
        """Show another label."""
        self._text = text
        self.setAccessibleName(self.tr("The label says: {text}").format(text=text))
        self.setFixedHeight(self.heightForWidth(self.width()))
        self.update()

    def heightForWidth(self, width: int) -> int:
        """Height of the words."""
        px = self._theme.px
        box = QRect(0, 0, max(width - px(52), 40), 1000)
        font = self._theme.font(18, bold=True)
        flags = int(Qt.TextFlag.TextWordWrap)
        return QFontMetrics(font).boundingRect(box, flags, self._text).height() + px(42)

    def sizeHint(self) -> QSize:
        """Two lines."""
        wide = self._theme.px(280)
        return QSize(wide, self.heightForWidth(max(self.width(), wide)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Be as high as the words need at this width."""
        super().resizeEvent(event)
        self.setFixedHeight(self.heightForWidth(self.width()))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the tag and what it says."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px, colour = self._theme.px, self._theme.colour
        wide, high, cut = self.width() - 1.0, self.height() - 1.0, px(14)
        painter.setPen(QPen(colour("paper_soft"), 1))
        painter.setBrush(colour("paper"))
        corners = ((cut, 1), (wide, 1), (wide, high), (cut, high), (1, high - cut), (1, 1 + cut))
        painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in corners]))
        hole = px(9)
        painter.setBrush(colour("ground"))
        painter.drawEllipse(QRectF(px(9), (high - hole) / 2, hole, hole))
        left = px(32)
        painter.setPen(colour("paper_soft"))
        painter.setFont(self._theme.font(11, bold=True))
        painter.drawText(QPointF(left, px(20)), self.tr("Sold as"))
        painter.setPen(colour("paper_ink"))
        painter.setFont(self._theme.font(18, bold=True))
        box = QRect(left, px(26), round(wide) - left - px(14), round(high) - px(30))
        painter.drawText(box, int(Qt.TextFlag.TextWordWrap), self._text)
        painter.end()
