"""Fields for what is asked of characters: states that may show, or a range."""

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import plain_button, tip
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.form_fields import Fields
from idkey.app.workshop.forms_field import Field
from idkey.app.workshop.forms_pick import Adder
from idkey.app.workshop.forms_typed import TypedField
from idkey.app.workshop.state_form_picture import on_plate, picture_file
from idkey.model.character import Character, Requirement
from idkey.model.couplet import Sees
from idkey.model.key import Key

ICON = (46, 34)
"""Room for the drawing of a state at 100 % text, in pixels."""

Icons = Callable[[str, str], QIcon | None]
"""The drawing of a state, by character and state."""


class AskedRow(QFrame):
    """What is asked of one character.

    Args:
        character: The character; None when the key has none of that id.
        name: Its id.
        fields: Makes fields.
        theme: The look.
        icons: The drawing of a state, small; None when there is none.

    Signals:
        edited(sees: object): Something else is asked.
        dropped(): Nothing is asked of it any more.
    """

    edited = Signal(object)
    dropped = Signal()

    def __init__(
        self,
        character: Character | None,
        name: str,
        *,
        fields: Fields,
        theme: Theme,
        icons: Icons,
    ) -> None:
        super().__init__()
        self.setProperty("pane", "quiet")
        self._theme = theme
        self.sees = Sees(character=name)
        self.states: dict[str, QPushButton] = {}
        title = character.name if character else f"⚠ {name}"
        head = caption(title, "strong")
        drop = button("✕", "quiet")
        drop.setAccessibleName(self.tr("Ask nothing of {name}").format(name=title))
        drop.setToolTip(tip(drop.accessibleName()))
        drop.clicked.connect(self.dropped)
        top = QHBoxLayout()
        top.addWidget(head, 1)
        top.addWidget(drop)
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.px(10), theme.px(4), theme.px(4), theme.px(8))
        column.setSpacing(theme.px(4))
        column.addLayout(top)
        self.low: TypedField | None = None
        self.high: TypedField | None = None
        if character is None:
            return
        if not character.kind.numeric:
            column.addWidget(self._choices(character, title, icons))
            return
        column.addWidget(self._bounds(character, fields, title))

    def show_sees(self, sees: Sees) -> None:
        """Show what is asked."""
        self.sees = sees
        for state, choice in self.states.items():
            on = state in sees.states
            choice.setChecked(on)
            label = choice.accessibleName()
            choice.setText(plain_button(f"✓ {label}" if on else label))
        if self.low is not None and self.high is not None:
            self.low.show_value((sees.low,))
            self.high.show_value((sees.high,))

    def flush(self) -> None:
        """Make what was typed a step."""
        if self.low is not None and self.high is not None:
            self.low.flush()
            self.high.flush()

    def _choices(self, character: Character, title: str, icons: Icons) -> QWidget:
        row = FlowRow(gap=5)
        for state in character.states:
            choice = button(state.label)
            choice.setCheckable(True)
            choice.setObjectName(state.id)
            choice.setAccessibleName(state.label)
            choice.setAccessibleDescription(title)
            if (icon := icons(character.id, state.id)) is not None:
                choice.setIcon(icon)
                choice.setIconSize(QSize(*map(self._theme.px, ICON)))
            choice.clicked.connect(self._on_choice_clicked)
            self.states[state.id] = choice
            row.add(choice)
        return row

    def _bounds(self, character: Character, fields: Fields, title: str) -> QWidget:
        bounds = QWidget()
        row = QHBoxLayout(bounds)
        row.setContentsMargins(0, 0, 0, 0)
        unit = f" ({character.unit})" if character.unit else ""
        self.low = fields.bound(self.tr("from{unit}").format(unit=unit))
        self.high = fields.bound(self.tr("to{unit}").format(unit=unit))
        for end, path in ((self.low, "low"), (self.high, "high")):
            end.path = f"sees.{character.id}.{path}"
            end.control.setAccessibleDescription(title)
            end.edited.connect(self._on_bound_edited)
            row.addWidget(end, 1, Qt.AlignmentFlag.AlignTop)
        return bounds

    @Slot()
    def _on_choice_clicked(self) -> None:
        states = tuple(state for state, choice in self.states.items() if choice.isChecked())
        self.edited.emit(replace(self.sees, states=states))

    @Slot(object)
    def _on_bound_edited(self, value: tuple[float | None]) -> None:
        name = "low" if self.sender() is self.low else "high"
        bound = {name: value[0]}
        self.edited.emit(replace(self.sees, **bound))  # type: ignore[arg-type]


class SeesField(Field):
    """What is asked of characters; all of it holds.

    Args:
        name: What it is called.
        fields: Makes fields.
        theme: The look.
        hint: What it is for.
        most: How many characters may be asked.
    """

    def __init__(
        self, name: str, fields: Fields, *, theme: Theme, hint: str = "", most: int = 50
    ) -> None:
        super().__init__(name, theme, hint)
        self._fields = fields
        self._most = most
        self._characters: tuple[Character, ...] = ()
        self._value: tuple[Sees, ...] = ()
        self._built: object = None
        self._editing: Editing | None = None
        self.rows: tuple[AskedRow, ...] = ()
        self.adder = Adder(name, theme, self.tr("Add a character …"))
        self.adder.setMaximumWidth(theme.px(330))
        self.put(self.adder)
        self.adder.picked.connect(self._on_picked)

    def offer(self, characters: Iterable[Character], editing: Editing) -> None:
        """Offer characters of the key on the table, with its drawings; they show with a value."""
        self._characters = tuple(characters)
        self._editing = editing

    def show_value(self, value: Any) -> None:
        """Show what is asked."""
        self._value = self.asked(value)
        self._redraw()

    def asked(self, value: Any) -> tuple[Sees, ...]:
        """The value of the field as things asked."""
        return tuple(value)

    def said_as(self, asked: tuple[Sees, ...]) -> Any:
        """Things asked as the value of the field."""
        return asked

    def belong_to(self, owner: str) -> None:
        """Show another entry."""
        self._built = None

    def flush(self) -> None:
        """Make what was typed a step."""
        for row in self.rows:
            row.flush()

    def _redraw(self) -> None:
        known = {character.id: character for character in self._characters}
        names = [sees.character for sees in self._value]
        built = tuple((name, known.get(name)) for name in names)
        if built != self._built:
            self._built = built
            self._build(built)
        for row, sees in zip(self.rows, self._value, strict=True):
            row.show_sees(sees)
        left = tuple((c.name, c.id) for c in self._characters if c.id not in names)
        self.adder.offer_left(left)
        self.adder.setVisible(bool(left) and len(names) < self._most)

    def _build(self, built: tuple[tuple[str, Character | None], ...]) -> None:
        for old in self.rows:
            old.blockSignals(True)  # what was typed in it belongs to another entry
            old.hide()
            old.deleteLater()
        rows = []
        for place, (name, character) in enumerate(built):
            row = AskedRow(character, name, fields=self._fields, theme=self.theme, icons=self._icon)
            row.edited.connect(self._on_row_edited)
            row.dropped.connect(self._on_row_dropped)
            self.column.insertWidget(1 + place, row)
            rows.append(row)
        self.rows = tuple(rows)

    def _icon(self, character: str, state: str) -> QIcon | None:
        editing = self._editing
        if editing is None:
            return None
        file = picture_file(editing.folder, editing.key, character, state)
        if file is None:
            return None
        size, ground = QSize(*map(self.theme.px, ICON)), self.theme.colour("plate")
        plate = on_plate(file, size, self.devicePixelRatioF(), ground=ground)
        return None if plate is None else QIcon(plate)

    def _edit(self, asked: tuple[Sees, ...]) -> None:
        self._value = asked
        self._redraw()
        self.edited.emit(self.said_as(asked))

    @Slot(object)
    def _on_picked(self, name: object) -> None:
        self._edit((*self._value, Sees(character=str(name))))
        if self.rows:
            first = next(iter(self.rows[-1].states.values()), self.rows[-1].low)
            if first is not None:
                first.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(object)
    def _on_row_edited(self, sees: Sees) -> None:
        self._edit(tuple(sees if one.character == sees.character else one for one in self._value))

    @Slot()
    def _on_row_dropped(self) -> None:
        row = self.sender()
        if isinstance(row, AskedRow):
            self.adder.setFocus(Qt.FocusReason.OtherFocusReason)
            name = row.sees.character
            self._edit(tuple(one for one in self._value if one.character != name))


class RequireField(SeesField):
    """Another character that must show certain states first; None for nothing."""

    def asked(self, value: Any) -> tuple[Sees, ...]:
        """The requirement as the one thing asked."""
        if value is None:
            return ()
        return (Sees(character=value.character, states=value.states),)

    def said_as(self, asked: tuple[Sees, ...]) -> Any:
        """The one thing asked as a requirement."""
        if not asked:
            return None
        return Requirement(character=asked[0].character, states=asked[0].states)


def askable(key: Key, but: str = "") -> tuple[Character, ...]:
    """Characters with states that another one can require."""
    return tuple(c for c in key.characters if not c.kind.numeric and c.id != but)
