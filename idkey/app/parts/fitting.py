"""What fits into the window whatever the text size: dialogs over it, columns side by side."""

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QBoxLayout, QDialog, QWidget

from idkey.app.parts.theme import Theme

HUGE = 175
"""Text size, in per cent, from which columns stand below one another."""

EDGE = 24
"""Pixels of the window that stay in sight around a dialog."""


def fit(dialog: QDialog, wanted: tuple[int, int], over: QWidget | None) -> None:
    """Give a dialog the size it wants, as far as the window it lies over has room for it."""
    size = QSize(*wanted)
    if over is not None:
        size = size.boundedTo(over.window().size() - QSize(EDGE, EDGE))
    dialog.resize(size)


def beside(theme: Theme) -> QBoxLayout:
    """A layout for columns: side by side, or below one another where text is huge."""
    way = QBoxLayout.Direction
    return QBoxLayout(way.TopToBottom if theme.scale >= HUGE else way.LeftToRight)
