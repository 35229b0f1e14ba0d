"""Fields one types in: what is typed becomes a step after a pause, and nothing of it is lost."""

from collections.abc import Iterable
from typing import Any

from PySide6.QtCore import QStringListModel, Qt, QTimer, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QCompleter, QLineEdit

from idkey.app.parts.theme import Theme
from idkey.app.workshop.forms_field import Field
from idkey.app.workshop.forms_text_box import TextBox
from idkey.app.workshop.forms_unread import Unread
from idkey.app.workshop.forms_values import Reading, UnreadError

PAUSE_MS = 900
"""After so long without a key, what was typed becomes a step."""

_NOTHING = object()


class TypedField(Field):
    """A value that is typed; it becomes a step when the person leaves the field or pauses.

    Args:
        name: What it is called.
        reading: How it is read and written.
        theme: The look.
        hint: What it is for.
        unread: Where texts are kept that cannot be read yet.
    """

    def __init__(
        self, name: str, reading: Reading, *, theme: Theme, hint: str = "", unread: Unread
    ) -> None:
        super().__init__(name, theme, hint)
        self.reading = reading
        self._unread = unread
        self._owner = ""
        self._value: Any = _NOTHING
        self._problems: tuple[str, ...] = ()
        self._told: tuple[str, ...] = ()
        self._completer: QCompleter | None = None
        self._suggestions = QStringListModel(self)
        self._pause = QTimer(self, singleShot=True, interval=PAUSE_MS)
        self._pause.timeout.connect(self.flush)
        self.control: QLineEdit | TextBox
        if reading.long:
            box = TextBox(theme)
            box.typed.connect(self._on_typed)
            box.left.connect(self.flush)
            self.control = box
        else:
            line = QLineEdit()
            line.textEdited.connect(self._on_typed)
            line.editingFinished.connect(self.flush)
            self.control = line
        self.control.setPlaceholderText(hint)
        self.put(self.control)

    @property
    def text(self) -> str:
        """What stands in it."""
        control = self.control
        return control.text() if isinstance(control, QLineEdit) else control.toPlainText()

    def suggest(self, words: Iterable[str]) -> None:
        """Offer words while one types."""
        if not isinstance(self.control, QLineEdit):
            return
        found = sorted(set(filter(None, words)))
        if self._completer is None:
            self._completer = QCompleter(self._suggestions, self)
            self._completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            self._completer.setFilterMode(Qt.MatchFlag.MatchContains)
            self.control.setCompleter(self._completer)
        if self._suggestions.stringList() != found:
            self._suggestions.setStringList(found)

    def belong_to(self, owner: str) -> None:
        """Show another entry; what was typed for the old one, and is no step yet, is kept for it.

        Nothing becomes a step here: the entry shown may have changed for another reason.
        """
        if self._pause.isActive():
            self._pause.stop()
            self._unread.keep(self._place, self.text)
        self._owner, self._value, self._told = owner, _NOTHING, ()
        kept = self._unread.text(self._place)
        if kept is None:
            self._problems = ()
            self._write("")
            return
        self._write(kept)
        if self._try(kept)[0]:
            self._pause.start()

    def show_value(self, value: Any) -> None:
        """Show a value, unless it is what the text says already or something is being typed."""
        if value == self._value:
            return
        self._value = value
        if self._pause.isActive() or self._unread.text(self._place) is not None:
            return
        try:
            if self.reading.value(self.text) == value:
                return
        except UnreadError:
            pass
        self._write(self.reading.text(value))

    def say(self, problems: tuple[str, ...]) -> None:
        """Say what is wrong with the text or with the value."""
        self._told = problems
        super().say((*self._problems, *problems))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc brings back the value in place of a text that is no step yet."""
        unread = self._unread.text(self._place) is not None
        if event.key() != Qt.Key.Key_Escape or not (unread or self._pause.isActive()):
            super().keyPressEvent(event)
            return
        self._pause.stop()
        self._unread.drop(self._place)
        self._problems = ()
        self._write(self.reading.text(self._value))
        self.say(self._told)

    @Slot()
    def flush(self) -> None:
        """Make what was typed a step now; what cannot be read stays as it is typed."""
        self._pause.stop()
        text = self.text
        if self._value is _NOTHING:
            return
        found, value = self._try(text)
        if found and value != self._value:
            self._value = value
            self.edited.emit(value)

    def _try(self, text: str) -> tuple[bool, Any]:
        """Whether the text can be read, and its value; if not, it is said and kept."""
        try:
            value = self.reading.value(text)
        except UnreadError as err:
            self._unread.keep(self._place, text)
            self._problems = (str(err),)
            self.say(self._told)
            return False, None
        self._unread.drop(self._place)
        if self._problems:
            self._problems = ()
            self.say(self._told)
        return True, value

    @property
    def _place(self) -> tuple[str, str, str]:
        return self._owner, self.path, self.name

    def _write(self, text: str) -> None:
        control = self.control
        if text == self.text:
            return
        if isinstance(control, QLineEdit):
            control.setText(text)
            if not control.hasFocus():
                control.setCursorPosition(0)
        else:
            control.show_text(text)

    @Slot()
    def _on_typed(self) -> None:
        self._pause.start()
