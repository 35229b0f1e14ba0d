"""Text and buttons in the ranks the style sheet knows."""

from html import escape

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QKeySequence, QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QPushButton, QStyle, QStyleOptionButton, QWidget

from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import plain_button


def caption(text: str = "", rank: str = "", *, wraps: bool = True, tone: str = "") -> QLabel:
    """A text, plain unless its format is set to another.

    Args:
        text: The text.
        rank: ``"title"``, ``"question"``, ``"lead"``, ``"strong"``, ``"soft"``, ``"small"``,
            ``"overline"``; empty is body text.
        wraps: Whether it breaks into lines.
        tone: ``"hazard"``, ``"permit"``, ``"doubt"``, ``"accent"``; empty is ink.
    """
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(wraps)
    if rank:
        label.setProperty("rank", rank)
    if tone:
        label.setProperty("tone", tone)
    return label


def restyle(widget: QWidget, name: str, value: str) -> None:
    """Give a widget another rank, tone or pane once it has been drawn."""
    if widget.property(name) != value:
        widget.setProperty(name, value)
        widget.style().unpolish(widget)
        widget.style().polish(widget)


def headed(head: str, text: str) -> str:
    """A text behind a bold word, as rich text; both are plain."""
    return f"<b>{escape(head)}</b>&ensp;{escape(text)}"


def button(text: str = "", role: str = "", parent: QWidget | None = None) -> QPushButton:
    """A button; `role` is ``"main"``, ``"quiet"``, ``"link"``, ``"segment"`` or empty."""
    made = QPushButton(plain_button(text), parent)
    if role:
        made.setProperty("role", role)
    if role == "link":
        made.setCursor(Qt.CursorShape.PointingHandCursor)
    return made


def key_text(sequence: str) -> str:
    """A shortcut as it is printed on keys here."""
    return QKeySequence(sequence).toString(QKeySequence.SequenceFormat.NativeText)


class KeyButton(QPushButton):
    """A button that shows its key beside its text.

    Args:
        text: The text.
        key: The key, such as ``"X"``; shown, not bound.
        theme: The look.
        role: Role in the style sheet.
    """

    def __init__(self, text: str, key: str, theme: Theme, role: str = "") -> None:
        super().__init__(text)
        self._key = key_text(key)
        self._theme = theme
        self._role = role
        if role:
            self.setProperty("role", role)

    def sizeHint(self) -> QSize:
        """The text, and room for the key."""
        hint = super().sizeHint()
        return QSize(hint.width() + self._room(), hint.height())

    @property
    def bare(self) -> QSize:
        """Room for the text alone."""
        return super().sizeHint()

    def minimumSizeHint(self) -> QSize:
        """The same: the key is not dropped."""
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the button, its text, and its key in a small frame."""
        option = QStyleOptionButton()
        self.initStyleOption(option)
        painter = QPainter(self)
        style, part = self.style(), QStyle.ControlElement
        style.drawControl(part.CE_PushButtonBevel, option, painter, self)
        right = self.isRightToLeft()
        room = self._room()
        fits = self.width() >= self.sizeHint().width()
        if fits:
            option.rect = self.rect().adjusted(room if right else 0, 0, 0 if right else -room, 0)
        style.drawControl(part.CE_PushButtonLabel, option, painter, self)
        if fits:  # large text in a narrow place: the words come first
            self._draw_key(painter)
        painter.end()

    def _room(self) -> int:
        metrics = self._metrics_width()
        return metrics + self._theme.px(18)

    def _metrics_width(self) -> int:
        return QFontMetrics(self._theme.font(11)).horizontalAdvance(self._key)

    def _draw_key(self, painter: QPainter) -> None:
        px, width = self._theme.px, self._metrics_width() + self._theme.px(8)
        high = px(17)
        x = px(9) if self.isRightToLeft() else self.width() - width - px(9)
        frame = QRectF(x + 0.5, (self.height() - high) / 2 + 0.5, width - 1, high - 1)
        name = "on_accent" if self._role == "main" else "soft"
        colour = self._theme.colour(name if self.isEnabled() else "soft")
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(colour)
        painter.setFont(self._theme.font(11))
        painter.drawRoundedRect(frame, 3, 3)
        painter.drawText(frame, Qt.AlignmentFlag.AlignCenter, self._key)
