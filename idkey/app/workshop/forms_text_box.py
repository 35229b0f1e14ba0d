"""A box for a text of any length that is as high as its text."""

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QFontMetrics, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QPlainTextEdit, QSizePolicy

from idkey.app.parts.theme import Theme

MOST_LINES = 14
"""With more lines than these it scrolls."""


def rewrite(box: QPlainTextEdit, text: str) -> None:
    """Put another text into a box; where the person is in it stays as near as can be."""
    place = box.textCursor().position()
    box.setPlainText(text)
    cursor = box.textCursor()
    cursor.setPosition(min(place, len(text)))
    box.setTextCursor(cursor)


class TextBox(QPlainTextEdit):
    """Grows with its text; Tab leaves it.

    Args:
        theme: The look.

    Signals:
        typed(): The person changed the text.
        left(): The person left it.
    """

    typed = Signal()
    left = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._shown = False
        self.setTabChangesFocus(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.document().setDocumentMargin(1)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.textChanged.connect(self._on_text_changed)
        self._fit()

    def show_text(self, text: str) -> None:
        """Show a text that nobody typed; where the person is in it stays as near as can be."""
        self._shown = True
        rewrite(self, text)
        self._shown = False

    def sizeHint(self) -> QSize:
        """Room for its lines."""
        return QSize(self._theme.px(240), self._height())

    def minimumSizeHint(self) -> QSize:
        """Narrower than that nothing can be read."""
        return QSize(self._theme.px(120), self._height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """A narrower box has more lines."""
        super().resizeEvent(event)
        self._fit()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Say that the person left."""
        super().focusOutEvent(event)
        self.left.emit()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Scroll the page, unless there is more text than the box shows."""
        if self.verticalScrollBar().maximum():
            super().wheelEvent(event)
        else:
            event.ignore()

    def _text_height(self) -> float:
        height, block = 0.0, self.document().begin()
        while block.isValid():
            height += self.blockBoundingRect(block).height()
            block = block.next()
        return height

    def _most(self) -> float:
        return MOST_LINES * float(QFontMetrics(self.font()).lineSpacing())

    def _height(self) -> int:
        least = float(QFontMetrics(self.font()).lineSpacing())
        text = min(max(self._text_height(), least), self._most())
        return round(text) + 2 * self._theme.px(6) + 4

    def _fit(self) -> None:
        policy = Qt.ScrollBarPolicy
        more = self._text_height() > self._most()
        self.setVerticalScrollBarPolicy(
            policy.ScrollBarAsNeeded if more else policy.ScrollBarAlwaysOff
        )
        high = self._height()
        if high != self.height() or self.minimumHeight() != high:
            self.setFixedHeight(high)

    @Slot()
    def _on_text_changed(self) -> None:
        self._fit()
        if not self._shown:
            self.typed.emit()
