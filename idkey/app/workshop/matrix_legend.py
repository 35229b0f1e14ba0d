"""What the shapes in the matrix mean."""

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from idkey.app.parts.marks import draw_doubt
from idkey.app.parts.theme import Theme
from idkey.app.workshop.matrix_delegate import draw_ground
from idkey.app.workshop.matrix_face import Face, Ground


class MatrixLegend(QWidget):
    """The shapes side by side, each with its word.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._font = theme.font(11.5)
        lines = ("x",)
        self._rows: tuple[tuple[Face, str], ...] = (
            (Face(lines=lines, ground=Ground.PRINT), self.tr("from print")),
            (Face(lines=lines, ground=Ground.MEMORY), self.tr("from memory")),
            (Face(lines=lines, ground=Ground.PRACTICE), self.tr("common practice")),
            (Face(lines=lines, ground=Ground.PRINT, several=True), self.tr("varies")),
            (Face(lines=lines, ground=Ground.PRINT, lacking=True), self.tr("not applicable")),
            (Face(wrong=True), self.tr("mistake")),
        )
        self.setAccessibleName(", ".join(word for _, word in self._rows))

    def sizeHint(self) -> QSize:
        """One line."""
        return QSize(100, QFontMetrics(self._font).height() + 2)

    def minimumSizeHint(self) -> QSize:
        """It may be cut short: the words of a cell say the same."""
        return QSize(1, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw as many as there is room for."""
        painter = QPainter(self)
        painter.setFont(self._font)
        painter.setPen(self._theme.colour("soft"))
        metrics, px = QFontMetrics(self._font), self._theme.px
        side, x = px(10), 0
        for shown, word in self._rows:
            wide = side + px(5) + metrics.horizontalAdvance(word)
            if x + wide > self.width():
                break
            left = self.width() - x - side if self._theme.mirrored else x
            box = QRectF(left, (self.height() - side) / 2, side, side)
            if shown.wrong:
                draw_doubt(painter, box, self._theme.colour("doubt"), self._theme.colour("ground"))
            else:
                draw_ground(painter, box, shown, self._theme)
            start = left - px(5) - metrics.horizontalAdvance(word)
            at = start if self._theme.mirrored else left + side + px(5)
            painter.drawText(int(at), (self.height() + metrics.ascent()) // 2 - 1, word)
            x += wide + px(14)
        painter.end()
