"""A table of confusions, drawn here: what was there down the side, what was said along the top."""

from collections.abc import Callable

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.colours import contrast
from idkey.app.parts.theme import Theme
from idkey.drill.progress import UNNAMED, Confusion


class ConfusionTable(QWidget):
    """Counts in a grid; mistakes are darker the larger their share of the row is.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._table = Confusion((), ())
        self._words: Callable[[str], str] = str
        self._italic = False
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def show_table(
        self, table: Confusion, words: Callable[[str], str], *, italic: bool = False
    ) -> None:
        """Show another table.

        Args:
            table: The counts.
            words: What each class is called.
            italic: Whether those are scientific names.
        """
        self._table, self._words, self._italic = table, words, italic
        said = [
            self.tr("{truth} taken for {said}: {n}").format(
                truth=words(truth), said=self._said(name), n=count
            )
            for truth, name, count in table.mistakes()
        ]
        self.setAccessibleName(self.tr("What was there, and what was said"))
        self.setAccessibleDescription("; ".join(said))
        self.setVisible(bool(table.classes))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Names at the side and on top, a square per cell, room for the last slanted name."""
        cells = len(self._columns())
        wide = self._theme.px(190) + cells * self._cell() + self._theme.px(100)
        return QSize(wide, self._head() + len(self._table.classes) * self._cell())

    def minimumSizeHint(self) -> QSize:
        """All of it."""
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw names and cells."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        side, head, cell = self._theme.px(190), self._head(), self._cell()
        for number, name in enumerate(self._columns()):
            self._draw_top(painter, self._said(name), side + (number + 0.5) * cell)
        for row, truth in enumerate(self._table.classes):
            top = head + row * cell
            painter.setFont(self._theme.font(12, italic=self._italic))
            painter.setPen(self._theme.colour("ink"))
            text = painter.fontMetrics().elidedText(
                self._words(truth), Qt.TextElideMode.ElideRight, side - 10
            )
            flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight
            painter.drawText(QRectF(0, top, side - 8, cell), flags, text)
            for column in range(len(self._columns())):
                box = QRectF(side + column * cell + 1, top + 1, cell - 2, cell - 2)
                self._draw_cell(painter, box, row, column)
        painter.end()

    def _columns(self) -> tuple[str, ...]:
        """The classes, and "cannot tell" where that was ever said."""
        silent = any(row[-1] for row in self._table.counts)
        return (*self._table.classes, *((UNNAMED,) if silent else ()))

    def _said(self, name: str) -> str:
        return self._words(name) if name != UNNAMED else self.tr("cannot tell")

    def _draw_cell(self, painter: QPainter, box: QRectF, row: int, column: int) -> None:
        counts = self._table.counts[row]
        count, total = counts[column], sum(counts) or 1
        colour, right = self._theme.colour, column == row
        ground = colour("surface")
        if count:
            full = colour("accent" if right else "doubt")
            ground = _mixed(ground, full, 0.12 + 0.6 * count / total)
        painter.setPen(QPen(colour("accent"), 1.6) if right else QPen(colour("line"), 1))
        painter.setBrush(ground)
        painter.drawRoundedRect(box, 4, 4)
        if count:
            painter.setFont(self._theme.font(12, bold=True))
            painter.setPen(
                max(colour("ink"), colour("raised"), key=lambda one: _apart(one, ground))
            )
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(count))

    def _draw_top(self, painter: QPainter, text: str, x: float) -> None:
        px = self._theme.px
        painter.save()
        painter.translate(x, self._head() - px(6))
        painter.rotate(-40)
        painter.setFont(self._theme.font(12, italic=self._italic))
        painter.setPen(self._theme.colour("soft"))
        room = int((self._head() - px(12)) / 0.643)
        cut = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, room)
        painter.drawText(0, 0, cut)
        painter.restore()

    def _head(self) -> int:
        return self._theme.px(104)

    def _cell(self) -> int:
        return self._theme.px(34)


def _apart(one: QColor, other: QColor) -> float:
    return contrast(one.name(), other.name())


def _mixed(ground: QColor, over: QColor, share: float) -> QColor:
    def part(low: int, high: int) -> int:
        return round(low + (high - low) * share)

    return QColor(
        part(ground.red(), over.red()),
        part(ground.green(), over.green()),
        part(ground.blue(), over.blue()),
    )
