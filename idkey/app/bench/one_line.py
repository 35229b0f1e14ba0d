"""A text that keeps to one line: what does not fit ends in an ellipsis and is in the tool tip."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip


class OneLine(QWidget):
    """One line of text.

    Args:
        theme: The look.
        px: Height of the letters at 100 % text, in pixels.
        colour: Name of the colour, see `Colours`.
    """

    def __init__(self, theme: Theme, px: float = 14, colour: str = "soft") -> None:
        super().__init__()
        self._theme = theme
        self._px = px
        self._colour = colour
        self.text = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_text(self, text: str) -> None:
        """Show another text, plain."""
        if text != self.text:
            self.text = text
            self.setToolTip(tip(text))
            self.setAccessibleName(text)
            self.update()

    def sizeHint(self) -> QSize:
        """One line; any width."""
        return QSize(120, self._theme.px(self._px * 1.45))

    def minimumSizeHint(self) -> QSize:
        """Room for a few letters."""
        return QSize(40, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the line."""
        painter = QPainter(self)
        painter.setFont(self._theme.font(self._px))
        painter.setPen(self._theme.colour(self._colour))
        metrics = painter.fontMetrics()
        shown = metrics.elidedText(self.text, Qt.TextElideMode.ElideRight, self.width())
        painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignVCenter), shown)
        painter.end()
