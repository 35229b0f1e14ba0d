"""A field over a cell of the grid: what one types is read as a spreadsheet cell is."""

from PySide6.QtCore import QEvent, QObject, QRect, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLabel, QLineEdit, QWidget

from idkey.app.parts.theme import Theme
from idkey.app.parts.worded import worded
from idkey.app.workshop.matrix_edit import Cell, completed, typed
from idkey.model.key import Key

_SHOWN = 6


class QuickEntry(QLineEdit):
    """Takes what is typed into a cell; below it stands what Enter would take.

    Args:
        theme: The look.
        parent: The viewport of the grid.

    Signals:
        entered(edit: Edit, step: int): A cell got another value; `step` rows further down is next.
        left(): The person gave up, or is done.
    """

    entered = Signal(object, int)
    left = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme, self._viewport = theme, parent
        self._key: Key | None = None
        self.cell: Cell = ("", "")
        self.hint = QLabel(parent)
        self.hint.setTextFormat(Qt.TextFormat.PlainText)
        self.hint.setWordWrap(True)
        self.hint.setStyleSheet(
            f"background: {theme.colours.raised}; color: {theme.colours.ink}; padding:"
            f" {theme.px(4)}px; border: 1px solid {theme.colours.outline}; border-radius: 5px;"
        )
        self.setAccessibleName(self.tr("What the cell says"))
        self.hide()
        self.hint.hide()
        self.textEdited.connect(self._on_text_edited)
        self.installEventFilter(self)

    def begin(self, key: Key, cell: Cell, text: str, place: QRect) -> None:
        """Stand over a cell.

        Args:
            key: The key.
            cell: The cell.
            text: What was typed already.
            place: Where the cell is in the viewport.
        """
        self._key, self.cell = key, cell
        wide = max(place.width(), self._theme.px(190))
        high = max(self.sizeHint().height(), self._theme.px(30))
        left = max(0, min(place.left(), self._viewport.width() - wide))
        self.setGeometry(left, place.top(), wide, high)
        self.setText(text)
        self.show()
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        self._on_text_edited(text)

    def follow(self, place: QRect) -> None:
        """Go with the cell when the grid scrolls."""
        if self.isVisible():
            self.move(max(0, place.left()), place.top())
            self._say(self.hint.text())

    def flush(self) -> None:
        """Take what is typed, where it can be taken."""
        if self.isVisible():
            self._take(0)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Enter takes it, Escape gives up, and what is left is taken where it can be."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            return self._on_key(event)
        if event.type() == QEvent.Type.FocusOut and self.isVisible():
            self._take(0)
        return super().eventFilter(watched, event)

    def _on_key(self, event: QKeyEvent) -> bool:
        steps = {Qt.Key.Key_Return: 1, Qt.Key.Key_Enter: 1, Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}
        if event.key() == Qt.Key.Key_Escape:
            self._close()
            return True
        if event.key() in steps:
            self._take(steps[Qt.Key(event.key())])
            return True
        return False

    def _take(self, step: int) -> None:
        if self._key is None:
            return
        edit = typed(self._key, self.cell, self.text())
        if edit.mistakes:
            first = edit.mistakes[0]
            self._say(f"{worded(first.problem)} {worded(first.remedy)}")
            return
        self._close()
        self.entered.emit(edit, step)

    def _close(self) -> None:
        self._key = None
        self.hide()
        self.hint.hide()
        self.left.emit()

    def _on_text_edited(self, text: str) -> None:
        if self._key is None:
            return
        character = self._key.character[self.cell[1]]
        if character.kind.numeric:
            self._say(self.tr("40 to 55 · from 40 · to 55 · 44.5 · n/a"))
            return
        last = text.split("|")[-1].strip().casefold()
        fits = [
            s for s in character.states if last in s.label.casefold() or last in s.id.casefold()
        ]
        whole = completed(text, character).split("|")[-1].strip()
        chosen = [s.label for s in character.states if whole in (s.id, s.label)]
        if last and len(chosen) == 1:
            self._say(self.tr("Enter takes: {state}").format(state=chosen[0]))
            return
        words = " · ".join(state.label for state in fits[:_SHOWN])
        more = " …" if len(fits) > _SHOWN else ""
        self._say(f"{words}{more}" if words else self.tr("No state has that in it."))

    def _say(self, text: str) -> None:
        self.hint.setText(text)
        self.setAccessibleDescription(text)
        wide = max(self.width(), self._theme.px(240))
        high = self.hint.heightForWidth(wide)
        room = self._viewport
        top = self.geometry().bottom() + 2
        if top + high > room.height():
            top = max(0, self.geometry().top() - high - 2)
        left = max(0, min(self.x(), room.width() - wide))
        self.hint.setGeometry(left, top, wide, high)
        self.hint.show()
        self.hint.raise_()
