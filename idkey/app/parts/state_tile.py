"""A state as a tile: a drawing, its words, its number key."""

from PySide6.QtCore import QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetrics,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import QAbstractButton, QWidget

from idkey.app.parts.marks import draw_cross, draw_magnifier, draw_tick
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import plain_button, tip
from idkey.model.character import State

LEAST_WIDTH = 112
MOST_WIDTH = 178
"""Width of a tile at 100 % text, in pixels: wider where there are few."""

LEAST_LINES = 2
MOST_LINES = 4
"""Lines of words: all tiles of a question have as many as the longest label needs."""


class StateTile(QAbstractButton):
    """One state that can be marked.

    Args:
        state: The state.
        number: Its number key, from 1; 0 for none.
        theme: The look.
        parent: Owner.

    Signals:
        large_asked(): The person clicked the magnifier.
    """

    large_asked = Signal()

    def __init__(
        self, state: State, number: int, *, theme: Theme, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.state = state
        self.picture: QPixmap | None = None
        self.negated = False
        self.lines = LEAST_LINES
        self._number = number
        self._theme = theme
        self.setText(plain_button(state.label))
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.setAccessibleName(state.label)
        self.setAccessibleDescription(state.detail)
        self.setToolTip(tip(state.detail))

    def show_credit(self, credit: str) -> None:
        """Say with the tile who made its picture; empty says nothing."""
        lines = [line for line in (self.state.detail, credit) if line]
        self.setAccessibleDescription(". ".join(lines))
        self.setToolTip(tip("\n".join(lines)))

    def picture_room(self) -> QSize:
        """Where the drawing goes: its largest size."""
        px = self._theme.px
        return QSize(self.width() - 2 * px(6), self.height() - self._words_height() - px(12))

    def lines_at(self, width: int) -> int:
        """How many lines the words take at a width."""
        metrics = QFontMetrics(self._theme.font(13, bold=True))  # as wide as it ever gets
        room = QRect(0, 0, width - self._theme.px(20), 10_000)
        flags = int(Qt.TextFlag.TextWordWrap)
        high = metrics.boundingRect(room, flags, self.state.label).height()
        return -(-high // metrics.lineSpacing())

    def height_at(self, width: int, lines: int = LEAST_LINES) -> int:
        """Height at a width: a drawing of 4 : 3 and some lines, or the words alone."""
        px = self._theme.px
        if not self.picture_expected:
            return px(30) + self._words_height(lines)
        return round((width - 2 * px(6)) * 0.75) + self._words_height(lines) + px(12)

    def sizeHint(self) -> QSize:
        """The narrowest tile."""
        wide = self._theme.px(LEAST_WIDTH)
        return QSize(wide, self.height_at(wide))

    picture_expected = False

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A click on the magnifier shows the drawing large and marks nothing."""
        if self.picture is not None and self._magnifier().contains(event.position()):
            self.setDown(False)
            self.large_asked.emit()
            return
        super().mouseReleaseEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the tile."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_card(painter)
        if self.picture is not None:
            self._draw_picture(painter, self.picture)
        self._draw_words(painter)
        self._draw_swatches(painter)
        self._draw_corners(painter)
        painter.end()

    def _draw_card(self, painter: QPainter) -> None:
        colour = self._theme.colour
        chosen, focus = self.isChecked(), self.hasFocus()
        ground = "accent_soft" if chosen or self.underMouse() else "raised"
        if chosen and self.negated:
            ground = "doubt_soft"
        edge = ("doubt" if self.negated else "accent") if chosen else "outline"
        painter.setBrush(colour(ground))
        painter.setPen(QPen(colour(edge), 2 if chosen else 1))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(2, 2, -2, -2), 9, 9)
        if focus:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(colour("ink"), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 10, 10)

    def _draw_picture(self, painter: QPainter, picture: QPixmap) -> None:
        px = self._theme.px
        room = self.picture_room()
        plate = QRectF(px(6), px(6), room.width(), room.height())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme.colour("plate"))
        painter.drawRoundedRect(plate, 6, 6)
        size = picture.deviceIndependentSize()
        painter.drawPixmap(
            int(plate.center().x() - size.width() / 2),
            int(plate.center().y() - size.height() / 2),
            picture,
        )

    def _draw_words(self, painter: QPainter) -> None:
        px = self._theme.px
        high = self._words_height()
        box = QRect(px(10), self.height() - high - px(5), self.width() - px(20), high)
        if self.picture is None:
            box = self.rect().adjusted(px(10), px(20) if self._number else px(8), -px(10), -px(6))
        font = self._theme.font(13, bold=self.isChecked())
        painter.setFont(font)
        painter.setPen(self._theme.colour("ink"))
        flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
        painter.drawText(box, int(flags), _fitted(self.state.label, QFontMetrics(font), box))

    def _draw_swatches(self, painter: QPainter) -> None:
        px = self._theme.px
        side, x = px(14), self.width() - px(10)
        y = self.height() - self._words_height() - px(24) if self.picture else px(8)
        for colour in reversed(self.state.colours[:4]):
            x -= side + 3
            painter.setPen(QPen(self._theme.colour("outline"), 1))
            painter.setBrush(QColor(colour))
            painter.drawRoundedRect(QRectF(x, y, side, side), 3, 3)

    def _draw_corners(self, painter: QPainter) -> None:
        px, colour = self._theme.px, self._theme.colour
        side = px(18)
        if self._number:
            left = px(8) if self.picture is None else self._badge_left()
            box = QRectF(left, px(8), side, side)
            painter.setPen(QPen(colour("outline"), 1))
            painter.setBrush(colour("raised"))
            painter.drawRoundedRect(box, 4, 4)
            painter.setPen(colour("ink"))
            painter.setFont(self._theme.font(11, bold=True))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(self._number))
        if self.picture is not None and (self.underMouse() or self.hasFocus()):
            draw_magnifier(painter, self._magnifier(), colour("plate_ink"), colour("plate"))
        if self.isChecked():
            left = self.width() - px(8) - side
            if self.picture is not None and self._number:
                left = self._badge_left() - px(4) - side
            box = QRectF(left, px(8), side, side)
            draw = draw_cross if self.negated else draw_tick
            name = "doubt" if self.negated else "accent"
            draw(painter, box, colour(name), colour("raised"))

    def _badge_left(self) -> int:
        """Left edge of the number over a drawing, whose small animal stands in the other corner."""
        return self.width() - self._theme.px(10 + 18)

    def _magnifier(self) -> QRectF:
        px, side = self._theme.px, max(self._theme.px(22), 24)
        bottom = self.height() - self._words_height() - px(8)
        return QRectF(px(9), bottom - side, side, side)

    def _words_height(self, lines: int = 0) -> int:
        """Height of some lines of words; 0 takes those of this tile."""
        return self._theme.px(2 + 18 * (lines or self.lines))


def _fitted(text: str, metrics: QFontMetrics, box: QRect) -> str:
    """The text, cut with an ellipsis where it does not fit the box."""
    flags = int(Qt.TextFlag.TextWordWrap)
    if metrics.boundingRect(box, flags, text).height() <= box.height():
        return text
    words = text.split(" ")
    while len(words) > 1:
        words.pop()
        shorter = " ".join(words) + " …"
        if metrics.boundingRect(box, flags, shorter).height() <= box.height():
            return shorter
    return metrics.elidedText(text, Qt.TextElideMode.ElideRight, box.width())
