"""The shop tag with the line to write on; it needs nothing but Qt, so that it is there at once."""

from PySide6.QtCore import QPointF, QSize
from PySide6.QtGui import QBrush, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from idkey.app.parts.theme import Theme


class Tag(QWidget):
    """A tag with cut corners, a hole, a thread, and the label on it.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.setAccessibleName(self.tr("The label"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Minimum)
        self.label = QLineEdit()
        self.label.setProperty("role", "tag")
        self.label.setAccessibleName(self.tr("What the label says"))
        self.label.setPlaceholderText(self.tr("What does the label say?"))
        px = theme.px
        self.column = QVBoxLayout(self)
        hole, edge = px(40), px(16)
        sides = (edge, hole) if self.isRightToLeft() else (hole, edge)
        self.column.setContentsMargins(sides[0], px(12), sides[1], px(12))
        self.column.setSpacing(px(4))
        self.column.addWidget(self.label)

    def focus_label(self) -> None:
        """Put the cursor into the label."""
        self.label.setFocus()
        self.label.selectAll()

    def sizeHint(self) -> QSize:
        """A tag that leaves room for the verdict."""
        return QSize(self._theme.px(336), max(super().sizeHint().height(), self._theme.px(112)))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the tag: cut corners, a hole, a thread."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.isRightToLeft():
            painter.translate(self.width(), 0)
            painter.scale(-1, 1)
        px, colour = self._theme.px, self._theme.colour
        hole = QPointF(px(22), self.height() / 2)
        painter.setPen(QPen(colour("paper_soft"), 1))
        painter.setBrush(colour("paper"))
        painter.drawPath(_outline(self.width(), self.height(), px(26)))
        painter.setBrush(colour("ground"))
        painter.drawEllipse(hole, px(5), px(5))
        thread = QPainterPath(QPointF(0, hole.y() - px(26)))
        thread.cubicTo(px(4), hole.y() - px(8), px(10), hole.y() - px(12), hole.x(), hole.y())
        painter.setBrush(QBrush())
        painter.setPen(QPen(colour("paper_soft"), 1.5))
        painter.drawPath(thread)
        painter.end()


def _outline(width: float, height: float, cut: float) -> QPainterPath:
    """The outline of a tag: the end with the hole has its corners cut."""
    right, bottom, round_ = width - 1.0, height - 1.0, 8.0
    path = QPainterPath(QPointF(cut, 1))
    path.lineTo(right - round_, 1)
    path.quadTo(right, 1, right, 1 + round_)
    path.lineTo(right, bottom - round_)
    path.quadTo(right, bottom, right - round_, bottom)
    path.lineTo(cut, bottom)
    path.quadTo(cut - 4, bottom, cut - 7, bottom - 4)
    path.lineTo(6, height * 0.66)
    path.quadTo(3, height * 0.62, 3, height * 0.58)
    path.lineTo(3, height * 0.42)
    path.quadTo(3, height * 0.38, 6, height * 0.34)
    path.lineTo(cut - 7, 5)
    path.quadTo(cut - 4, 1, cut, 1)
    path.closeSubpath()
    return path
