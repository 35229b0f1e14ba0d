"""Widgets side by side that break into the next row where they do not fit."""

from PySide6.QtCore import QEvent, QPoint, QRect, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.keyboard_order import put_in_turn


class FlowRow(QWidget):
    """Lays widgets out like words; the height follows the width.

    It is a widget, not a layout: a layout written in Python must return "none" at its end, and
    each such return costs a reference in some versions of the binding.

    Args:
        gap: Space between widgets and between rows, in pixels.
        last_ends: Whether the last widget stands at the end of its row.
    """

    def __init__(self, gap: int = 8, *, last_ends: bool = False) -> None:
        super().__init__()
        self._gap = gap
        self._last_ends = last_ends
        self._parts: list[QWidget] = []
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def add(self, part: QWidget) -> None:
        """Put a widget at the end."""
        part.setParent(self)
        put_in_turn(self, part)
        self._parts.append(part)
        part.installEventFilter(self)
        part.show()
        self._arrange()

    def clear(self) -> None:
        """Delete all widgets."""
        for part in self._parts:
            part.removeEventFilter(self)
            part.hide()
            part.deleteLater()
        self._parts = []
        self._arrange()

    def heightForWidth(self, width: int) -> int:
        """Height of all rows at a width."""
        return self._arranged(width, move=False)

    def sizeHint(self) -> QSize:
        """All in one row, or the rows at the width there is."""
        wide = self.width() if self.isVisible() else 600
        return QSize(wide, self.heightForWidth(wide))

    def minimumSizeHint(self) -> QSize:
        """Room for the widest widget."""
        widest = max((p.sizeHint().width() for p in self._parts if not p.isHidden()), default=0)
        return QSize(min(widest, 240), 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the rows to the width; a layout that kept the height of another width asks again."""
        self._arranged(self.width(), move=True)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()

    def eventFilter(self, watched: object, event: QEvent) -> bool:
        """Arrange again when a widget comes, goes, or changes its size."""
        kinds = (QEvent.Type.ShowToParent, QEvent.Type.HideToParent, QEvent.Type.LayoutRequest)
        if event.type() in kinds:
            self._arrange()
        return False

    def event(self, event: QEvent) -> bool:
        """A widget asks for another size."""
        if event.type() is QEvent.Type.LayoutRequest:
            self._arrange()
        return super().event(event)

    def _arrange(self) -> None:
        self._arranged(self.width(), move=True)
        self.updateGeometry()

    def _arranged(self, width: int, *, move: bool) -> int:
        """Place the widgets row by row; the height used."""
        x = y = high = 0
        row: list[tuple[QWidget, QPoint, QSize]] = []
        for part in self._parts:
            if part.isHidden():
                continue
            hint = part.sizeHint().boundedTo(part.maximumSize()).expandedTo(part.minimumSize())
            if x > 0 and x + hint.width() > width:
                self._settle(row, high, width, move=move)
                row, x, y, high = [], 0, y + high + self._gap, 0
            hint.setWidth(min(hint.width(), max(width, 1)))
            row.append((part, QPoint(x, y), hint))
            x += hint.width() + self._gap
            high = max(high, hint.height())
        self._settle(row, high, width, move=move)
        return y + high

    def _settle(
        self, row: list[tuple[QWidget, QPoint, QSize]], high: int, width: int, *, move: bool
    ) -> None:
        """Centre the widgets of one row on each other; mirrored where text runs that way."""
        if not move:
            return
        for part, place, size in row:
            if self._last_ends and part is self._parts[-1]:
                place.setX(max(width - size.width(), 0))
            x = width - place.x() - size.width() if self.isRightToLeft() else place.x()
            part.setGeometry(QRect(QPoint(x, place.y() + (high - size.height()) // 2), size))
