"""A field for a number, on a card whose keys are letters."""

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QLineEdit

_STANDARD = QKeySequence.StandardKey


class NumberBox(QLineEdit):
    """Keeps digits, and leaves to the card what no number begins with.

    So X says "cannot see it" here as everywhere, and Ctrl+Z takes the last finding back once
    nothing typed is left to take back.
    """

    def event(self, event: QEvent) -> bool:
        """Claim no key that means something to the card."""
        override = event.type() == QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and self._is_for_the_card(event):
            event.ignore()
            return False
        return super().event(event)

    def _is_for_the_card(self, event: QKeyEvent) -> bool:
        if event.matches(_STANDARD.Undo):
            return not self.isUndoAvailable()
        if event.matches(_STANDARD.Redo):
            return not self.isRedoAvailable()
        letters = event.text().isalpha() and event.key() != Qt.Key.Key_E  # 1e3 is a number
        return letters and event.modifiers() == Qt.KeyboardModifier.NoModifier
