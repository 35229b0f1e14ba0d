"""A drop-down list with a chevron in the colours of the theme."""

from collections.abc import Iterable
from typing import Any

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF, QWheelEvent
from PySide6.QtWidgets import QComboBox, QWidget

from idkey.app.parts.theme import Theme


class Choice(QComboBox):
    """A drop-down list.

    Args:
        name: What is chosen, for readers that speak and as tool tip.
        theme: The look.
    """

    def __init__(self, name: str, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._values: list[object] = []
        self.setAccessibleName(name)
        self.setToolTip(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def offer(self, items: Iterable[tuple[str, object]]) -> None:
        """Offer other values, as (words, value)."""
        self.clear()
        self._values = []
        for text, value in items:
            self.addItem(text)
            self._values.append(value)

    @property
    def chosen(self) -> Any:
        """The value that is chosen; None while none is on offer."""
        row = self.currentIndex()
        return None if row < 0 else self.value(row)

    def value(self, row: int) -> Any:
        """The value in a row; Qt itself would turn an enum of strings into its string."""
        return self._values[row]

    def choose(self, value: object) -> None:
        """Choose without telling anybody; nothing happens when it is not on offer."""
        if value in self._values:
            self.setCurrentIndex(self._values.index(value))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the list, and a chevron."""
        super().paintEvent(event)
        draw_chevron(self, self._theme)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Let the pane scroll: a choice is not changed in passing."""
        event.ignore()


def draw_chevron(over: QWidget, theme: Theme) -> None:
    """Draw the mark of a drop-down list at the end of a widget, while it is painted."""
    px = theme.px
    x = px(14) if over.isRightToLeft() else over.width() - px(14)
    y, arm = over.height() / 2, px(4)
    painter = QPainter(over)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(theme.colour("soft"), 1.6)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    points = [
        QPointF(x - arm, y - arm / 2),
        QPointF(x, y + arm / 2),
        QPointF(x + arm, y - arm / 2),
    ]
    painter.drawPolyline(QPolygonF(points))
    painter.end()
