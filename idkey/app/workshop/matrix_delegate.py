"""Draws the cells of the matrix: words, or only the shapes that say what they rest on."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QAbstractItemView, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from idkey.app.parts.marks import draw_doubt
from idkey.app.parts.theme import Theme
from idkey.app.workshop.matrix_face import Face, Ground
from idkey.app.workshop.matrix_model import FACE_ROLE

Index = QModelIndex | QPersistentModelIndex

TEXT = 12.5
"""Height of the words in a cell, in pixels at 100 %."""

_MOST_KEPT = 20_000


class CellDelegate(QStyledItemDelegate):
    """Draws one cell.

    Args:
        theme: The look.

    Attributes:
        words: Whether cells show words; else only their shapes.
        strong: Rows and columns of the cells that are looked for; the others are drawn
            faintly. None looks for nothing.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._font = theme.font(TEXT)
        self._metrics = QFontMetrics(self._font)
        self._shapes: dict[tuple[object, ...], QPixmap] = {}
        self._selected, self._empty = theme.colour("accent_soft"), theme.colour("surface")
        self._fitted: dict[tuple[str, int, int], tuple[str, ...]] = {}
        self.words = True
        self.strong: frozenset[tuple[int, int]] | None = None

    @property
    def line(self) -> int:
        """Height of a line of words, in pixels."""
        return self._metrics.height()

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the cell."""
        shown: Face = index.data(FACE_ROLE)
        rect, state = QRect(option.rect), option.state
        theme = self._theme
        painter.save()
        if state & QStyle.StateFlag.State_Selected:
            painter.fillRect(rect, self._selected)
        elif not shown.lines:
            painter.fillRect(rect, self._empty)
        here = self.strong is None or (index.row(), index.column()) in self.strong
        painter.setOpacity(1.0 if here else 0.35)
        if self.words:
            self._draw_words(painter, rect, shown)
        else:
            self._draw_shape(painter, rect, shown)
        painter.setOpacity(1.0)
        view = option.widget
        if isinstance(view, QAbstractItemView) and index == view.currentIndex():
            focus = state & QStyle.StateFlag.State_HasFocus
            painter.setPen(QPen(theme.colour("accent"), 2 if focus else 1))
            painter.drawRect(rect.adjusted(1, 1, -1, -1) if focus else rect.adjusted(0, 0, -1, -1))
        painter.restore()

    def _draw_words(self, painter: QPainter, rect: QRect, shown: Face) -> None:
        px, colour = self._theme.px, self._theme.colour
        side = px(9)
        marked = shown.ground in (Ground.MEMORY, Ground.PRACTICE) or shown.wrong
        inner = rect.adjusted(px(6), px(3), -px(5) - (side + px(3) if marked else 0), -px(3))
        if self._theme.mirrored and marked:
            inner.translate(side + px(3), 0)
        painter.setFont(self._font)
        if not shown.lines:
            painter.setPen(colour("soft"))
            painter.drawText(inner, Qt.AlignmentFlag.AlignVCenter, "?")
        else:
            painter.setPen(colour("soft" if shown.lacking else "ink"))
            self._draw_lines(painter, inner, shown)
        if marked:
            left = rect.left() + px(4) if self._theme.mirrored else rect.right() - side - px(4)
            box = QRectF(left, rect.top() + px(4), side, side)
            if shown.wrong:
                draw_doubt(painter, box.adjusted(-3, 0, 1, 4), colour("doubt"), colour("raised"))
            else:
                draw_ground(painter, box, shown, self._theme)

    def _draw_lines(self, painter: QPainter, inner: QRect, shown: Face) -> None:
        step = self._metrics.height()
        room = max(inner.height() // step, 1)
        lines = self._lines(shown, inner.width(), room)
        top = inner.top() + (inner.height() - step * len(lines)) // 2 + self._metrics.ascent()
        for number, line in enumerate(lines):
            x = inner.left()
            if self._theme.mirrored:
                x = inner.right() - self._metrics.horizontalAdvance(line)
            painter.drawText(x, top + number * step, line)

    def _lines(self, shown: Face, width: int, room: int) -> tuple[str, ...]:
        place = (shown.text, width, room)
        if place not in self._fitted:
            if len(self._fitted) > _MOST_KEPT:
                self._fitted.clear()
            each = max(room // len(shown.lines), 1)
            found = [part for line in shown.lines for part in self._wrapped(line, width, each)]
            if len(found) > room:
                found = [*found[: room - 1], f"{found[room - 1]} …"]
            self._fitted[place] = tuple(found)
        return self._fitted[place]

    def _wrapped(self, text: str, width: int, most: int) -> list[str]:
        return wrapped(text, width, most, self._metrics)

    def _draw_shape(self, painter: QPainter, rect: QRect, shown: Face) -> None:
        if not (shown.lines or shown.wrong):
            return
        drawn = self._drawn(shown, min(self._theme.px(11), rect.width() - 4), painter)
        half = drawn.deviceIndependentSize() / 2
        middle = QRectF(rect).center()
        painter.drawPixmap(QPointF(middle.x() - half.width(), middle.y() - half.height()), drawn)

    def _drawn(self, shown: Face, side: int, painter: QPainter) -> QPixmap:
        """The shape as a picture: thousands of cells share a dozen of them."""
        ratio = painter.device().devicePixelRatioF()
        place = (shown.ground, shown.several, shown.lacking, shown.wrong, side, ratio)
        if place not in self._shapes:
            whole = side + 4
            sheet = QPixmap(round(whole * ratio), round(whole * ratio))
            sheet.setDevicePixelRatio(ratio)
            sheet.fill(Qt.GlobalColor.transparent)
            on = QPainter(sheet)
            box = QRectF(2, 2, side, side)
            if shown.wrong:
                doubt, ground = self._theme.colour("doubt"), self._theme.colour("raised")
                draw_doubt(on, box.adjusted(-2, -2, 2, 2), doubt, ground)
            else:
                draw_ground(on, box, shown, self._theme)
            on.end()
            self._shapes[place] = sheet
        return self._shapes[place]


def wrapped(text: str, width: int, most: int, metrics: QFontMetrics) -> list[str]:
    """A text in at most so many lines of a width; the rest is left out, which a sign shows."""
    lines: list[str] = []
    words = text.split()
    while words and len(lines) < most - 1:
        line = words.pop(0)
        while words and metrics.horizontalAdvance(f"{line} {words[0]}") <= width:
            line = f"{line} {words.pop(0)}"
        lines.append(metrics.elidedText(line, Qt.TextElideMode.ElideRight, width))
    if words:
        rest = " ".join(words)
        lines.append(metrics.elidedText(rest, Qt.TextElideMode.ElideRight, width))
    return lines


def draw_ground(painter: QPainter, box: QRectF, shown: Face, theme: Theme) -> None:
    """The shape that says what a cell rests on.

    A disc for print, a ring for memory, a square for what is common practice, a bar where the
    part is lacking; a dot inside where one animal shows this and the next that.
    """
    ink, ground = theme.colour("ink"), theme.colour("raised")
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(ink, max(box.width() * 0.16, 1.2))
    inner = box.adjusted(1, 1, -1, -1)
    painter.setPen(pen)
    full = shown.ground is Ground.PRINT
    painter.setBrush(ink if full else ground)
    if shown.lacking:
        painter.drawLine(
            QPointF(inner.left(), box.center().y()), QPointF(inner.right(), box.center().y())
        )
    elif shown.ground is Ground.PRACTICE:
        painter.drawRect(inner)
    else:
        painter.drawEllipse(inner)
    if shown.several and not shown.lacking:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(ground if full else ink)
        dot = box.width() * 0.16
        painter.drawEllipse(box.center(), dot, dot)
    painter.restore()
