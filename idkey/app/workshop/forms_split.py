"""A list and a form side by side, with a border that can be moved."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QVBoxLayout, QWidget

from idkey.app.parts.theme import Theme

LEAST, MOST = 220, 270
"""Width of the list, in pixels: with large text the form needs the room more."""


def side_by_side(parts: tuple[QWidget, ...], pane: QWidget, theme: Theme) -> QSplitter:
    """Parts above each other at the left, of which the first one grows, and a pane beside them."""
    left = QWidget()
    column = QVBoxLayout(left)
    column.setContentsMargins(0, 0, 0, 0)
    for part in parts:
        column.addWidget(part, int(part is parts[0]))
    left.setMinimumWidth(min(theme.px(170), LEAST))
    split = QSplitter(Qt.Orientation.Horizontal)
    split.addWidget(left)
    split.addWidget(pane)
    split.setStretchFactor(0, 0)
    split.setStretchFactor(1, 1)
    split.setChildrenCollapsible(False)
    split.setSizes([min(theme.px(240), MOST), theme.px(640)])
    return split
