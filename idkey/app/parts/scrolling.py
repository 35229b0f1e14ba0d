"""A pane that scrolls up and down when it does not fit."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QScrollArea, QWidget


def scrolled(inner: QWidget) -> QScrollArea:
    """`inner` in a frame that scrolls; the frame takes no focus."""
    if inner.property("pane") is None:
        inner.setProperty("pane", "clear")
    scroll = QScrollArea()
    scroll.setWidgetResizable(True)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setWidget(inner)
    return scroll
