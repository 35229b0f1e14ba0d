"""A button that opens a menu, with the mark of one."""

from PySide6.QtCore import QSize
from PySide6.QtGui import QPaintEvent
from PySide6.QtWidgets import QMenu, QPushButton

from idkey.app.parts.choice import draw_chevron
from idkey.app.parts.theme import Theme


class MenuButton(QPushButton):
    """A button with a chevron.

    Args:
        text: The text.
        menu: What it opens.
        theme: The look.
    """

    def __init__(self, text: str, menu: QMenu, theme: Theme) -> None:
        super().__init__(text)
        self._theme = theme
        self.setMenu(menu)

    def sizeHint(self) -> QSize:
        """The text, and room for the chevron."""
        hint = super().sizeHint()
        return QSize(hint.width() + self._theme.px(8), hint.height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the button, and the chevron."""
        super().paintEvent(event)
        draw_chevron(self, self._theme)
