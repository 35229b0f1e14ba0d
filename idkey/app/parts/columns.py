"""What stands in columns that scroll, and the rows of lists."""

from PySide6.QtWidgets import QAbstractItemView, QVBoxLayout, QWidget

from idkey.app.parts.theme import Theme


def filled(layout: QVBoxLayout) -> QWidget:
    """A see-through page that holds a layout."""
    page = QWidget()
    page.setProperty("pane", "clear")
    layout.setContentsMargins(4, 0, 12, 0)
    page.setLayout(layout)
    return page


def airy(view: QAbstractItemView, theme: Theme) -> None:
    """Give the rows of a list or table room, and a quiet ground to the current one."""
    colours, px = theme.colours, theme.px
    view.setStyleSheet(
        f"QAbstractItemView::item {{ padding: {px(4)}px {px(8)}px; border-radius: 5px; }}"
        f"QAbstractItemView::item:selected {{ background: {colours.accent_soft};"
        f" color: {colours.ink}; }}"
        f"QAbstractItemView::item:selected:active {{ background: {colours.accent_soft};"
        f" color: {colours.ink}; }}"
        f"QAbstractItemView:focus {{ border: 2px solid {colours.accent}; border-radius: 6px; }}"
        f"QAbstractItemView {{ border: 2px solid transparent; }}"
    )
