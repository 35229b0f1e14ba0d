"""A term explained where it stands; and drawings seen large."""

from html import escape

from PySide6.QtCore import QPoint, QSize, Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QLabel, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.engine.labels import normalised
from idkey.model.character import Character
from idkey.model.key import Key


def term_html(key: Key, character: Character) -> str:
    """What a character is, and the glossary entries its words touch."""
    said = f"{character.name} {character.definition} {character.question} {character.part}"
    words = f" {normalised(said)} "
    parts = [f"<p>{escape(character.definition)}</p>"] if character.definition else []
    for term, text in key.glossary.items():
        if f" {normalised(term)} " in words:
            parts.append(f"<p><b>{escape(term)}</b>&ensp;{escape(text)}</p>")
    return "".join(parts)


class TermPopover(QFrame):
    """Explains a term beside the place that asked; any key, or looking elsewhere, ends it.

    Args:
        desk: Look, drawings, language.
        parent: The widget it lies over.

    Signals:
        ended(): A key put it away.
    """

    ended = Signal()

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self._over = parent
        self.setProperty("pane", "card")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._desk = desk
        self._title = caption(rank="strong")
        self._text = caption()
        self._text.setTextFormat(Qt.TextFormat.RichText)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 12)
        column.addWidget(self._title)
        column.addWidget(self._text)
        self.hide()

    @property
    def text(self) -> str:
        """What it says, as rich text."""
        return self._text.text()

    def explain(self, key: Key, character: Character, place: QPoint) -> None:
        """Show the explanation of a character below `place`, in the widget it lies over."""
        self._title.setText(character.name)
        self._text.setText(term_html(key, character) or self.tr("The key explains no more."))
        self.setAccessibleName(character.name)
        wide = min(self._desk.theme.px(380), self._over.width() - 16)
        self.resize(wide, max(self.heightForWidth(wide), self.sizeHint().height()))
        x = min(place.x(), self._over.width() - self.width() - 8)
        y = min(place.y() + 6, self._over.height() - self.height() - 8)
        self.move(max(x, 8), max(y, 8))
        self.show()
        self.raise_()
        self.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Any key ends it."""
        self.hide()
        self.ended.emit()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Looking elsewhere ends it."""
        super().focusOutEvent(event)
        self.hide()


class LargePictures(QFrame):
    """The drawings of one character, large; arrows turn, Esc ends.

    Args:
        desk: Look, drawings, language.
        parent: The window it covers.

    Signals:
        ended(): The person has seen enough.
    """

    ended = Signal()

    def __init__(self, desk: Desk, parent: QWidget) -> None:
        super().__init__(parent)
        self._over = parent
        self.setProperty("pane", "card")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._desk = desk
        self._key: Key | None = None
        self._character: Character | None = None
        self._number = 0
        self._words = caption(rank="lead")
        self._words.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self._credit = caption(rank="small")
        self._credit.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self._hint = QLabel(self.tr("← → other states · Esc back"))
        self._hint.setProperty("rank", "small")
        self._hint.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 24, 24, 16)
        column.addStretch(1)
        column.addWidget(self._words)
        column.addWidget(self._credit)
        column.addWidget(self._hint)
        self.hide()

    def show_state(self, key: Key, character: Character, state: str) -> None:
        """Cover the window with the drawing of a state."""
        self._key, self._character = key, character
        self._number = character.state_ids.index(state)
        margin = self._desk.theme.px(32)
        self.setGeometry(self._over.rect().adjusted(margin, margin, -margin, -margin))
        self._say()
        self.show()
        self.raise_()
        self.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Turn with the arrows, end with Esc."""
        if self._character is None:
            return
        ahead = -1 if self.isRightToLeft() else 1
        steps: dict[int, int] = {Qt.Key.Key_Left: -ahead, Qt.Key.Key_Right: ahead}
        if event.key() in steps:
            self._number = (self._number + steps[event.key()]) % len(self._character.states)
            self._say()
            self.update()
        elif event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_Z, Qt.Key.Key_Return):
            self._end()

    def mousePressEvent(self, event: object) -> None:
        """A click ends it."""
        self._end()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the ground and the drawing."""
        super().paintEvent(event)
        if self._key is None or self._character is None:
            return
        room = QSize(self.width() - 64, self.height() - self._desk.theme.px(130))
        state = self._character.states[self._number]
        picture = self._desk.pictures.tile(
            self._key, self._character, state, size=room, ratio=self.devicePixelRatioF()
        )
        if picture is None:
            return
        painter = QPainter(self)
        size = picture.deviceIndependentSize().toSize()
        x, y = (self.width() - size.width()) // 2, 24
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._desk.theme.colour("plate"))
        painter.drawRoundedRect(x - 8, y - 8, size.width() + 16, size.height() + 16, 10, 10)
        painter.drawPixmap(x, y, picture)
        painter.end()

    def _say(self) -> None:
        if self._key is not None and self._character is not None:
            state = self._character.states[self._number]
            text = f"{state.label} – {state.detail}" if state.detail else state.label
            credit = self._desk.pictures.credit(self._key, self._character, state)
            self._words.setText(text)
            self._credit.setText(credit)
            self._credit.setVisible(bool(credit))
            self.setAccessibleName(". ".join(part for part in (text, credit) if part))

    @Slot()
    def _end(self) -> None:
        self.hide()
        self.ended.emit()
