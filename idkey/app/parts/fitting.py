"""Dialogs that fit into the window they stand over, whatever the text size."""

from PySide6.QtWidgets import QDialog, QWidget

EDGE = 24
"""Pixels of the window that stay in sight around a dialog."""


def fit(dialog: QDialog, wanted: tuple[int, int], over: QWidget) -> None:
    """Give a dialog the size it wants, as far as the window has room for it."""
    room = over.window().size()
    dialog.resize(min(wanted[0], room.width() - EDGE), min(wanted[1], room.height() - EDGE))
