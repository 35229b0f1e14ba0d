"""State tiles in as many columns as fit."""

from collections.abc import Iterable

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.keyboard_order import put_in_turn
from idkey.app.parts.state_tile import LEAST_LINES, LEAST_WIDTH, MOST_LINES, MOST_WIDTH, StateTile
from idkey.app.parts.theme import Theme

GAP = 8
"""Space between tiles, in pixels."""


class TileGrid(QWidget):
    """Tiles in as many columns as fit; arrow keys move between them.

    Args:
        theme: The look.

    Signals:
        opened(tile: object): The person wants to see a tile's drawing large.
    """

    opened = Signal(object)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self.tiles: tuple[StateTile, ...] = ()
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def replace(self, tiles: Iterable[StateTile]) -> None:
        """Show other tiles."""
        for old in self.tiles:
            old.hide()
            old.deleteLater()
        self.tiles = tuple(tiles)
        for tile in self.tiles:
            tile.setParent(self)
            put_in_turn(self, tile)
            tile.large_asked.connect(self._on_tile_large_asked)
            tile.show()
        self._place()
        self.updateGeometry()

    def heightForWidth(self, width: int) -> int:
        """Height of all rows at a width."""
        columns, wide, lines = self._measures(width)
        high = self.tiles[0].height_at(wide, lines) if self.tiles else 0
        rows = -(-len(self.tiles) // columns)
        return max(rows * (high + GAP) - GAP, 0)

    def sizeHint(self) -> QSize:
        """Room for the rows at the width there is."""
        wide = max(self.width(), 320)
        return QSize(wide, self.heightForWidth(wide))

    def minimumSizeHint(self) -> QSize:
        """One column."""
        return QSize(160, self.heightForWidth(max(self.width(), 320)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the columns to the width."""
        self._place()
        self.updateGeometry()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move between tiles with the arrow keys; show one large with Z."""
        tile = self.focusWidget()
        if not isinstance(tile, StateTile) or tile not in self.tiles:
            super().keyPressEvent(event)
            return
        steps = self._steps().get(event.key())
        if event.key() == Qt.Key.Key_Z:
            self.opened.emit(tile)
        elif steps is None:
            super().keyPressEvent(event)
        else:
            there = self.tiles.index(tile) + steps
            if 0 <= there < len(self.tiles):
                self.tiles[there].setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _on_tile_large_asked(self) -> None:
        self.opened.emit(self.sender())

    def _steps(self) -> dict[int, int]:
        columns = self._measures(self.width())[0]
        forth = -1 if self.isRightToLeft() else 1
        key = Qt.Key
        return {
            key.Key_Left: -forth,
            key.Key_Right: forth,
            key.Key_Up: -columns,
            key.Key_Down: columns,
        }

    def _measures(self, width: int) -> tuple[int, int, int]:
        """Columns, width of a tile, lines of its words: as few rows as fit, filled evenly.

        There are more rows where a label would be cut otherwise.
        """
        if not self.tiles:
            return 1, width, 1
        count, px = len(self.tiles), self._theme.px
        most = max(1, min(count, (width + GAP) // (px(LEAST_WIDTH) + GAP)))
        for wanted in range(most, 0, -1):
            rows = -(-count // wanted)
            columns = -(-count // rows)
            wide = min((width - GAP * (columns - 1)) // columns, px(MOST_WIDTH))
            lines = max(tile.lines_at(wide) for tile in self.tiles)
            if lines <= MOST_LINES:
                break
        return columns, wide, min(max(lines, LEAST_LINES), MOST_LINES)

    def _place(self) -> None:
        columns, wide, lines = self._measures(self.width())
        high = self.tiles[0].height_at(wide, lines) if self.tiles else 0
        for number, tile in enumerate(self.tiles):
            row, column = divmod(number, columns)
            x = column * (wide + GAP)
            if self.isRightToLeft():
                x = self.width() - x - wide
            tile.lines = lines
            tile.setGeometry(x, row * (high + GAP), wide, high)
