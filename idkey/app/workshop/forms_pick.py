"""Fields for several things chosen from a list: chips, and a box to add another one."""

from typing import Any

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QComboBox, QCompleter, QPushButton

from idkey.app.parts.choice import Choice
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import plain_button, tip
from idkey.app.workshop.forms_entries import shifted
from idkey.app.workshop.forms_field import Field, Options

LONGEST = 44
"""Signs of a chip; the whole of it is its tool tip."""


class Chip(QPushButton):
    """One chosen thing; a click, Delete or Backspace lets go of it.

    Args:
        words: What it is.
        value: The thing.
        name: Name of the field.

    Signals:
        dropped(): The person lets go of it.
        shifted(steps: int): The person moves it with Alt and an arrow key.
    """

    dropped = Signal()
    shifted = Signal(int)

    def __init__(self, words: str, value: object, name: str) -> None:
        shown = words if len(words) <= LONGEST else f"{words[: LONGEST - 1]}…"
        super().__init__(plain_button(f"{shown}  ✕"))
        self.value = value
        self.setAccessibleName(words)
        deeds = self.tr("{name}: press to remove it; Alt and an arrow key move it.")
        self.setAccessibleDescription(deeds.format(name=name))
        self.setToolTip(tip(words))
        self.clicked.connect(self.dropped)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Remove or move it."""
        steps = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()))
        if event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.dropped.emit()
        elif steps and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self.shifted.emit(-steps if self.isRightToLeft() else steps)
        else:
            super().keyPressEvent(event)


class Adder(Choice):
    """A box in which one types to find something, and Enter adds it.

    Args:
        name: What is added.
        theme: The look.
        words: What stands in it while it is empty.

    Signals:
        picked(value: object): The person chose it.
    """

    picked = Signal(object)

    def __init__(self, name: str, theme: Theme, words: str) -> None:
        super().__init__(name, theme)
        self.setEditable(True)
        self.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(8)
        line = self.lineEdit()
        if line is not None:
            line.setPlaceholderText(words)
            line.setAccessibleName(name)
        completer = QCompleter(self.model(), self)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        completer.setCompletionMode(QCompleter.CompletionMode.PopupCompletion)
        self.setCompleter(completer)
        self.setCurrentIndex(-1)
        self.activated.connect(self._on_activated)

    def offer_left(self, options: tuple[tuple[str, object], ...]) -> None:
        """Offer what can still be added; what is being typed stays."""
        line = self.lineEdit()
        typed = line.text() if line is not None else ""
        self.offer(options)
        self.setCurrentIndex(-1)
        self.setEditText(typed)

    @Slot(int)
    def _on_activated(self, row: int) -> None:
        value = self.value(row)
        self.setCurrentIndex(-1)
        self.clearEditText()
        self.picked.emit(value)


class PickField(Field):
    """Several things from a list, in the order in which they were chosen.

    Args:
        name: What they are.
        theme: The look.
        hint: What they are for.
        add: What stands in the box that adds one.
        terse: Whether a chip shows the id alone.

    Attributes:
        least: How many must be left.
    """

    def __init__(
        self, name: str, theme: Theme, *, hint: str = "", add: str = "", terse: bool = False
    ) -> None:
        super().__init__(name, theme, hint)
        self._terse = terse
        self.least = 0
        self._options: tuple[tuple[str, object], ...] = ()
        self._value: tuple[Any, ...] | None = None
        self.row = FlowRow(gap=theme.px(5))
        self.adder = Adder(name, theme, add or self.tr("Add …"))
        self.put(self.adder)
        self.column.insertWidget(1, self.row)
        self.adder.setMaximumWidth(theme.px(330))
        self.adder.picked.connect(self._on_picked)
        self._redraw()

    @property
    def chips(self) -> tuple[Chip, ...]:
        """The chosen things, in order."""
        return tuple(chip for chip in self.row.findChildren(Chip) if not chip.isHidden())

    def offer(self, options: Options) -> None:
        """Offer other things; nothing happens when they are the same."""
        found = tuple(options)
        if found != self._options:
            self._options = found
            self._redraw()

    def show_value(self, value: Any) -> None:
        """Show what is chosen."""
        if value != self._value:
            self._value = value
            self._redraw()

    def _redraw(self) -> None:
        chosen = self._value or ()
        focused = next((c.value for c in self.chips if c.hasFocus()), None)
        self.row.clear()
        words = {value: text for text, value in self._options}
        for value in chosen:
            known = words.get(value)
            text = f"⚠ {value}" if known is None else str(value) if self._terse else known
            chip = Chip(text, value, self.name)
            chip.setToolTip(tip(known or text))
            chip.dropped.connect(self._on_chip_dropped)
            chip.shifted.connect(self._on_chip_shifted)
            self.row.add(chip)
            if value == focused:
                chip.setFocus(Qt.FocusReason.OtherFocusReason)
        left = tuple(option for option in self._options if option[1] not in chosen)
        self.adder.offer_left(left)
        self.adder.setVisible(bool(left))
        self.row.setVisible(bool(chosen))

    def _edit(self, value: tuple[Any, ...]) -> None:
        if len(value) < self.least:
            return
        self._value = value
        self._redraw()
        self.edited.emit(value)

    @Slot(object)
    def _on_picked(self, value: object) -> None:
        if value not in (self._value or ()):
            self._edit((*(self._value or ()), value))
            self.adder.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _on_chip_dropped(self) -> None:
        chip = self.sender()
        if isinstance(chip, Chip):
            self.adder.setFocus(Qt.FocusReason.OtherFocusReason)
            self._edit(tuple(one for one in self._value or () if one != chip.value))

    @Slot(int)
    def _on_chip_shifted(self, steps: int) -> None:
        chip = self.sender()
        if isinstance(chip, Chip) and self._value is not None:
            self._edit(shifted(self._value, self._value.index(chip.value), steps))
