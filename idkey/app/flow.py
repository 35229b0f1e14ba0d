"""Widgets side by side that break into the next row where they do not fit."""

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowLayout(QLayout):
    """Lays widgets out like words; the height follows the width.

    Args:
        parent: The widget that is laid out.
        gap: Space between widgets and between rows, in pixels.
    """

    def __init__(self, parent: QWidget | None = None, gap: int = 8) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._gap = gap
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        """Put an item at the end."""
        self._items.append(item)

    def count(self) -> int:
        """How many items there are."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """The item at a place; None beyond the end."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Take an item out."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def clear(self) -> None:
        """Delete all widgets."""
        while self._items:
            widget = self._items.pop().widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self.invalidate()

    def expandingDirections(self) -> Qt.Orientation:
        """None: it takes the room its widgets need."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """Narrower is higher."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Height of all rows at a width."""
        return self._arranged(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        """Move the widgets into `rect`."""
        super().setGeometry(rect)
        self._arranged(rect, move=True)

    def sizeHint(self) -> QSize:
        """All in one row."""
        hints = [item.sizeHint() for item in self._items if not item.isEmpty()]
        wide = sum(hint.width() + self._gap for hint in hints)
        return QSize(wide, max((hint.height() for hint in hints), default=0))

    def minimumSize(self) -> QSize:
        """Room for the widest widget."""
        size = QSize()
        for item in self._items:
            if not item.isEmpty():
                size = size.expandedTo(item.minimumSize())
        return size

    def _arranged(self, rect: QRect, *, move: bool) -> int:
        """Place the widgets row by row; the height used."""
        x, y, high = rect.x(), rect.y(), 0
        row: list[tuple[QLayoutItem, QPoint, QSize]] = []
        for item in self._items:
            if item.isEmpty():
                continue
            hint = item.sizeHint()
            if x > rect.x() and x + hint.width() > rect.right() + 1:
                self._settle(row, high, rect, move=move)
                row, x, y, high = [], rect.x(), y + high + self._gap, 0
            hint.setWidth(min(hint.width(), max(rect.width(), 1)))
            row.append((item, QPoint(x, y), hint))
            x += hint.width() + self._gap
            high = max(high, hint.height())
        self._settle(row, high, rect, move=move)
        return y + high - rect.y()

    def _settle(
        self, row: list[tuple[QLayoutItem, QPoint, QSize]], high: int, rect: QRect, *, move: bool
    ) -> None:
        """Centre the widgets of one row on each other; mirrored where text runs that way."""
        if not move:
            return
        parent = self.parentWidget()
        mirrored = parent is not None and parent.isRightToLeft()
        for item, place, size in row:
            x = rect.right() + 1 - (place.x() - rect.x()) - size.width() if mirrored else place.x()
            item.setGeometry(QRect(QPoint(x, place.y() + (high - size.height()) // 2), size))
