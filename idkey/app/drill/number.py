"""A field for a number read from a plate."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.answer import read_number
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.theme import Theme
from idkey.model.character import Character


class NumberField(QLineEdit):
    """Takes digits; X is no digit and says "cannot tell".

    Signals:
        unseen(): X was pressed.
    """

    unseen = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Digits as usual; X ends it."""
        if event.key() == Qt.Key.Key_X and not event.modifiers():
            self.unseen.emit()
        else:
            super().keyPressEvent(event)


class NumberAnswer(QWidget):
    """A number field with its unit and a button.

    Args:
        theme: The look.

    Signals:
        given(value: float): A number was confirmed.
        unseen(): The person cannot tell.
    """

    given = Signal(float)
    unseen = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.field = NumberField()
        self.field.setMaximumWidth(theme.px(140))
        self.unit = caption(rank="soft", wraps=False)
        self.note = KeyButton(self.tr("Note it"), "Enter", theme, "main")
        self.wrong = caption(rank="small", tone="doubt")
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.field)
        row.addWidget(self.unit)
        row.addWidget(self.note)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(row)
        column.addWidget(self.wrong)
        self.field.returnPressed.connect(self._on_given)
        self.note.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.note.clicked.connect(self._on_given)
        self.field.unseen.connect(self._on_unseen)

    def ask(self, character: Character) -> None:
        """Ask for the number of a character."""
        self.field.clear()
        self.field.setEnabled(True)
        self.field.setAccessibleName(f"{character.name} {character.unit}".strip())
        self.unit.setText(character.unit)
        self.note.show()
        self.wrong.hide()

    def end(self) -> None:
        """Take nothing more."""
        self.field.setEnabled(False)
        self.note.hide()

    def focus(self) -> None:
        """Put the cursor into the field."""
        self.field.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _on_given(self) -> None:
        value = read_number(self.field.text())
        if value is None:
            self.wrong.setText(self.tr("Write a number of 0 or more, such as 12.5."))
            self.wrong.show()
        else:
            self.given.emit(value)

    @Slot()
    def _on_unseen(self) -> None:
        self.unseen.emit()
