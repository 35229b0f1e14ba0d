"""Answers in rows: words first, each with its number key; afterwards what was right is marked."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QRect, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import (
    QFont,
    QFontMetrics,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QShortcut,
)
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QVBoxLayout, QWidget

from idkey.app.parts.marks import draw_cross, draw_tick
from idkey.app.parts.theme import Theme


class Mark(StrEnum):
    """How an answer turned out."""

    NONE = "none"
    RIGHT = "right"
    WRONG = "wrong"


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One answer.

    Attributes:
        name: Its id.
        text: Its words.
        detail: A second line; empty for none.
        key: Its key; empty takes the number of the row.
        italic: Whether the words are a scientific name.
    """

    name: str
    text: str
    detail: str = ""
    key: str = ""
    italic: bool = False


class AnswerRow(QAbstractButton):
    """One answer that can be chosen.

    Args:
        row: What it says.
        key: Its key.
        theme: The look.
    """

    def __init__(self, row: Row, key: str, theme: Theme) -> None:
        super().__init__()
        self.row = row
        self.mark = Mark.NONE
        self._key = key
        self._theme = theme
        self.setText(row.text)
        self.setAccessibleName(row.text)
        self.setAccessibleDescription(row.detail)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_mark(self, mark: Mark) -> None:
        """Mark it, and let it be chosen no more."""
        self.mark = mark
        words = {Mark.RIGHT: self.tr("right"), Mark.WRONG: self.tr("wrong"), Mark.NONE: ""}
        parts = (words[mark], self.row.detail)
        self.setAccessibleDescription(", ".join(part for part in parts if part))
        self.setEnabled(False)
        self.update()

    def sizeHint(self) -> QSize:
        """Words and detail in the width there is."""
        wide = max(self.width(), self._theme.px(260))
        return QSize(wide, self.heightForWidth(wide))

    def minimumSizeHint(self) -> QSize:
        """Narrow, but all of it."""
        return QSize(self._theme.px(180), self.heightForWidth(max(self.width(), 180)))

    def heightForWidth(self, width: int) -> int:
        """Height of words and detail at a width."""
        px = self._theme.px
        wide = width - px(44) - px(34)
        return max(self._high(self._words_font(), self.row.text, wide) + self._detail_high(wide)
                   + px(14), px(38))  # fmt: skip

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Be as high as the words need at this width."""
        super().resizeEvent(event)
        self.setFixedHeight(self.heightForWidth(self.width()))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw frame, key, words and mark."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_frame(painter)
        px = self._theme.px
        side = px(20)
        wide = self.width() - px(44) - px(34)
        words = self._high(self._words_font(), self.row.text, wide)
        top = (self.height() - words - self._detail_high(wide)) // 2
        left = self.width() - px(40) - wide if self.isRightToLeft() else px(40)
        box = QRect(left, top, wide, words)
        painter.setFont(self._words_font())
        painter.setPen(self._theme.colour("ink"))
        painter.drawText(box, int(Qt.TextFlag.TextWordWrap), self.row.text)
        if self.row.detail:
            painter.setFont(self._theme.font(12))
            painter.setPen(self._theme.colour("soft"))
            below = QRect(left, top + words, wide, self._detail_high(wide))
            painter.drawText(below, int(Qt.TextFlag.TextWordWrap), self.row.detail)
        first, last = px(11), self.width() - px(30)
        if self.isRightToLeft():
            first, last = self.width() - px(11) - side, px(30) - side
        self._draw_key(painter, QRectF(first, (self.height() - side) / 2, side, side))
        if self.mark is not Mark.NONE:
            place = QRectF(last, (self.height() - side) / 2, side, side)
            right = self.mark is Mark.RIGHT
            draw, name = (draw_tick, "accent") if right else (draw_cross, "doubt")
            draw(painter, place, self._theme.colour(name), self._theme.colour("raised"))
        painter.end()

    def _draw_frame(self, painter: QPainter) -> None:
        colour = self._theme.colour
        ground, edge, weight = "raised", "outline", 1
        if self.mark is not Mark.NONE:
            right = self.mark is Mark.RIGHT
            ground, edge, weight = (
                ("accent_soft", "accent", 2) if right else ("doubt_soft", "doubt", 2)
            )
        elif not self.isEnabled():
            edge = "line"
        elif self.underMouse():
            ground = "accent_soft"
        if self.hasFocus():
            edge, weight = "accent", 2
        painter.setPen(QPen(colour(edge), weight))
        painter.setBrush(colour(ground))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 7, 7)

    def _draw_key(self, painter: QPainter, box: QRectF) -> None:
        if not self._key:
            return
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(self._theme.colour("outline"), 1))
        painter.drawRoundedRect(box, 4, 4)
        painter.setPen(self._theme.colour("soft"))
        painter.setFont(self._theme.font(12, bold=True))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, self._key)

    def _words_font(self) -> QFont:
        return self._theme.font(14, bold=self.mark is Mark.RIGHT, italic=self.row.italic)

    def _detail_high(self, wide: int) -> int:
        return self._high(self._theme.font(12), self.row.detail, wide) if self.row.detail else 0

    def _high(self, font: QFont, text: str, wide: int) -> int:
        box = QRect(0, 0, max(wide, 40), 2000)
        return QFontMetrics(font).boundingRect(box, int(Qt.TextFlag.TextWordWrap), text).height()


class Answers(QWidget):
    """Rows of which one is chosen, by click, number key or Enter; arrows move.

    Args:
        theme: The look.
        keys_in: The widget in which the keys count; the focus must be inside.

    Signals:
        chosen(name: str): A row was chosen.
    """

    chosen = Signal(str)

    def __init__(self, theme: Theme, keys_in: QWidget) -> None:
        super().__init__()
        self._theme = theme
        self._keys_in = keys_in
        self._shortcuts: list[QShortcut] = []
        self.rows: tuple[AnswerRow, ...] = ()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(6)

    def replace(self, rows: Sequence[Row]) -> None:
        """Offer other answers."""
        for old in self.rows:
            old.hide()
            self._column.removeWidget(old)
            old.deleteLater()
        for shortcut in self._shortcuts:
            shortcut.setEnabled(False)
            shortcut.deleteLater()
        self._shortcuts = []
        made = []
        for number, row in enumerate(rows, start=1):
            key = row.key or (str(number) if number < 10 else "")
            one = AnswerRow(row, key, self._theme)
            one.clicked.connect(self._on_row_clicked)
            self._column.addWidget(one)
            one.show()  # at once, not with the next event: it may get the focus before that
            made.append(one)
            if key:
                self._bind(key, one)
        self.rows = tuple(made)
        self.setVisible(bool(made))

    def show_marks(self, right: str, said: str = "") -> None:
        """Mark the right answer, and the one given where it differs; none can be chosen."""
        for one in self.rows:
            name = one.row.name
            wrong = Mark.WRONG if name == said else Mark.NONE
            one.show_mark(Mark.RIGHT if name == right else wrong)
        for shortcut in self._shortcuts:
            shortcut.setEnabled(False)

    def focus(self) -> None:
        """Put the focus on the first row that can be chosen."""
        for one in self.rows:
            if one.isEnabled():
                one.setFocus(Qt.FocusReason.OtherFocusReason)
                return

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move with the arrows, choose with Enter."""
        here = self.focusWidget()
        steps: dict[int, int] = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}
        if not isinstance(here, AnswerRow) or here not in self.rows:
            super().keyPressEvent(event)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            here.click()
        elif event.key() in steps:
            there = self.rows.index(here) + steps[event.key()]
            if 0 <= there < len(self.rows):
                self.rows[there].setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            super().keyPressEvent(event)

    def _bind(self, key: str, one: AnswerRow) -> None:
        shortcut = QShortcut(QKeySequence(key), self._keys_in)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(one.click)
        self._shortcuts.append(shortcut)

    @Slot()
    def _on_row_clicked(self) -> None:
        row = self.sender()
        if isinstance(row, AnswerRow):
            self.chosen.emit(row.row.name)
