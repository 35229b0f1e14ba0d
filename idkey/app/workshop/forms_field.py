"""Fields of a form: a name, a control, and what is wrong, one below the other."""

from collections.abc import Iterable, Mapping
from typing import Any

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.theme import Theme

Options = Iterable[tuple[str, object]]
"""Values to choose from, as (words, value)."""


class Field(QWidget):
    """One thing that can be said, shown and changed.

    Args:
        name: What it is called.
        theme: The look.
        hint: What it is for; shown as tool tip.

    Attributes:
        path: Where the value stands in the entry, such as ``"hazard.level"``.

    Signals:
        edited(value: object): The person gave it another value.
    """

    edited = Signal(object)

    def __init__(self, name: str, theme: Theme, hint: str = "") -> None:
        super().__init__()
        self.name = name
        self.path = ""
        self.theme = theme
        self.title = caption(name, "small")
        self.wrong = caption(tone="doubt")
        self.wrong.hide()
        self._said: tuple[str, ...] = ()
        self._hint = hint
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(theme.px(3))
        self.column.addWidget(self.title)
        self.column.addWidget(self.wrong)

    def put(self, control: QWidget) -> None:
        """Put the control in its place; readers that speak call it by the name of the field."""
        control.setAccessibleName(self.name)
        control.setToolTip(self._hint)
        self.setFocusProxy(control)
        self.title.setBuddy(control)
        self.column.insertWidget(1, control)

    def show_value(self, value: Any) -> None:
        """Show a value; what is being typed stays."""
        raise NotImplementedError

    def flush(self) -> None:
        """Make what was typed a step now."""

    def belong_to(self, owner: str) -> None:
        """Show another entry from now on; what could not be read is kept for the old one."""

    def say(self, problems: tuple[str, ...]) -> None:
        """Say what is wrong with it."""
        if problems == self._said:
            return
        self._said = problems
        text = "\n".join(f"⚠ {one}" for one in problems)
        self.wrong.setText(text)
        self.wrong.setVisible(bool(problems))
        control = self.focusProxy()
        if control is not None:
            control.setAccessibleDescription("\n".join(problems) or self._hint)

    def say_inside(self, problems: Mapping[str, tuple[str, ...]]) -> None:
        """Say what is wrong inside it, by the rest of the path; here all of it together."""
        self.say(tuple(word for words in problems.values() for word in words))

    def reach(self, _: str) -> None:
        """Put the focus into it, as near as can be to the rest of a path."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def said(self) -> str:
        """What it says is wrong; empty when nothing is."""
        return "\n".join(self._said)


class ChoiceField(Field):
    """One of several values.

    Args:
        name: What it is called.
        theme: The look.
        hint: What it is for.
        options: Values to choose from, as (words, value).
    """

    def __init__(self, name: str, theme: Theme, *, options: Options, hint: str = "") -> None:
        super().__init__(name, theme, hint)
        self.control = Choice(name, theme)
        self.control.setSizeAdjustPolicy(
            Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.control.setMinimumContentsLength(6)
        self._options: tuple[tuple[str, object], ...] = ()
        self._value: Any = None
        self.put(self.control)
        self.offer(options)
        self.control.activated.connect(self._on_activated)

    def offer(self, options: Options) -> None:
        """Offer other values; nothing happens when they are the same."""
        found = tuple(options)
        if found != self._options:
            self._options = found
            self.control.offer(found)
            self.control.choose(self._value)

    def show_value(self, value: Any) -> None:
        """Show a value; one that is not on offer is put on offer."""
        self._value = value
        if value not in [known for _, known in self._options]:
            self._options = (*self._options, (str(value), value))
            self.control.offer(self._options)
        self.control.choose(value)

    @Slot(int)
    def _on_activated(self, row: int) -> None:
        value = self.control.value(row)
        if value != self._value:
            self._value = value
            self.edited.emit(value)


class FlagField(Field):
    """Yes or no; what it means stands below.

    Args:
        name: A few words: they cannot break into lines.
        theme: The look.
        hint: What it means.
    """

    def __init__(self, name: str, theme: Theme, hint: str = "") -> None:
        super().__init__(name, theme, hint)
        self.control = QCheckBox(name)
        self.put(self.control)
        self.title.setText(hint)
        self.title.setVisible(bool(hint))
        self.column.removeWidget(self.title)
        self.column.insertWidget(1, self.title)
        self.control.clicked.connect(self._on_clicked)

    def show_value(self, value: Any) -> None:
        """Show whether it holds."""
        self.control.setChecked(bool(value))

    @Slot(bool)
    def _on_clicked(self, checked: bool) -> None:
        self.edited.emit(checked)
