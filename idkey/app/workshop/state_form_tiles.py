"""The states of a character: tiles as a keeper sees them, and a form for the one chosen."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, Signal, Slot

from idkey.app.parts.captions import button
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.state_tile import StateTile
from idkey.app.parts.tile_grid import TileGrid
from idkey.app.workshop.form_fields import Fields
from idkey.app.workshop.forms_entries import free_id, shifted
from idkey.app.workshop.forms_field import Field
from idkey.app.workshop.state_form import StateForm
from idkey.app.workshop.state_form_picture import fitted, picture_file
from idkey.model.character import Character, State
from idkey.model.key import Key


class StatesField(Field):
    """States in order; the tiles are those of the bench.

    Args:
        name: What they are called.
        fields: Makes fields.
        desk: Look, drawings, language.

    Signals:
        renamed(old: str, new: str): A state is to have another id everywhere.
        remove_asked(state: str): A state is to go.
    """

    renamed = Signal(str, str)
    remove_asked = Signal(str)

    def __init__(self, name: str, fields: Fields, desk: Desk) -> None:
        super().__init__(name, desk.theme)
        self._character: Character | None = None
        self._current = ""
        self._key: Key | None = None
        self._folder = Path()
        self._found: Mapping[str, tuple[str, ...]] = {}
        self._drawn: object = None
        self.grid = TileGrid(desk.theme)
        self.one = StateForm(fields, desk)
        self.put(self.grid)
        self.title.hide()
        self._build()

    def show_key(self, key: Key, folder: Path, character: Character) -> None:
        """Take the character whose states are shown, and where its pictures are."""
        if self._character is not None and character.id != self._character.id:
            self._current = ""
        self._key, self._folder, self._character = key, folder, character
        self.one.show_key(key, folder)

    def show_value(self, _: Any) -> None:
        """Show the states of the character."""
        ids = self._ids()
        if self._current not in ids:
            self._current = ids[0] if ids else ""
        self.setVisible(bool(ids))
        self._draw_tiles()
        self._show_current()

    def say_inside(self, problems: Mapping[str, tuple[str, ...]]) -> None:
        """Say what is wrong beside the fields of the state shown, and which others have more."""
        self._found = problems
        own: dict[str, tuple[str, ...]] = {}
        rest: tuple[str, ...] = ()
        states = self._character.states if self._character else ()
        for path, words in problems.items():
            place, _, inner = path.partition(".")
            known = place.isdigit() and int(place) < len(states)
            state = states[int(place)] if known else None
            if state is not None and state.id == self._current:
                own[inner] = words
            elif state is not None:
                rest = (*rest, *(f"{state.label}: {word}" for word in words))
            else:
                rest = (*rest, *words)
        self.one.form.show_problems(own)
        self.say(rest)

    def reach(self, rest: str) -> None:
        """Go to a state and one of its fields."""
        place, _, inner = rest.partition(".")
        ids = self._ids()
        if place.isdigit() and int(place) < len(ids):
            self.choose(ids[int(place)])
            self.one.form.reach(inner or "label")

    def flush(self) -> None:
        """Make what was typed a step."""
        self.one.form.flush()

    def choose(self, state: str) -> None:
        """Show another state."""
        self.flush()
        self._current = state
        self._draw_tiles()
        self._show_current()
        self.say_inside(self._found)

    @property
    def current(self) -> State | None:
        """The state shown."""
        states = self._character.states if self._character else ()
        return next((state for state in states if state.id == self._current), None)

    def _build(self) -> None:
        buttons = FlowRow(gap=5)
        self.add_one = button(self.tr("Add a state"))
        self.remove_one = button(self.tr("Remove this state"))
        self.earlier = button("←", "quiet")
        self.later = button("→", "quiet")
        self.earlier.setAccessibleName(self.tr("Move this state one place earlier"))
        self.later.setAccessibleName(self.tr("Move this state one place later"))
        for one in (self.add_one, self.remove_one, self.earlier, self.later):
            one.setToolTip(one.accessibleName() or one.text())
            buttons.add(one)
        self.column.addWidget(buttons)
        self.column.addWidget(self.one)
        self.one.edited.connect(self._on_one_edited)
        self.one.renamed.connect(self._on_one_renamed)
        self.add_one.clicked.connect(self._on_add)
        self.remove_one.clicked.connect(self._on_remove)
        self.earlier.clicked.connect(self._on_moved)
        self.later.clicked.connect(self._on_moved)

    def _ids(self) -> tuple[str, ...]:
        return self._character.state_ids if self._character else ()

    def _draw_tiles(self) -> None:
        """New tiles where states changed; the chosen one is marked."""
        key, one = self._key, self._character
        if key is not None and one is not None:
            files = tuple(picture_file(self._folder, key, one.id, state) for state in one.state_ids)
            if (one.id, one.states, files) != self._drawn:
                self._drawn = (one.id, one.states, files)
                self._make_tiles(one.states, files)
        for tile in self.grid.tiles:
            tile.setChecked(tile.state.id == self._current)
            tile.update()

    def _make_tiles(self, states: tuple[State, ...], files: tuple[Path | None, ...]) -> None:
        focused = any(tile.hasFocus() for tile in self.grid.tiles)
        self.grid.replace(
            self._tile(number, state, pictured=file is not None)
            for number, (state, file) in enumerate(zip(states, files, strict=True), start=1)
        )
        if self.grid.tiles:
            self.setFocusProxy(self.grid.tiles[0])
        for tile, file in zip(self.grid.tiles, files, strict=True):
            if file is not None:
                tile.picture = fitted(file, tile.picture_room(), self.devicePixelRatioF())
            if focused and tile.state.id == self._current:
                tile.setFocus(Qt.FocusReason.OtherFocusReason)

    def _tile(self, number: int, state: State, *, pictured: bool) -> StateTile:
        tile = StateTile(state, number, theme=self.theme)
        tile.picture_expected = pictured
        tile.clicked.connect(self._on_tile_clicked)
        return tile

    def _show_current(self) -> None:
        state = self.current
        if state is not None and self._character is not None:
            self.one.show_state(self._character, state)

    @Slot(object)
    def _on_one_edited(self, new: State) -> None:
        states = self._character.states if self._character else ()
        self.edited.emit(tuple(new if one.id == new.id else one for one in states))

    @Slot(str, str)
    def _on_one_renamed(self, old: str, new: str) -> None:
        self._current = new
        self.renamed.emit(old, new)

    @Slot()
    def _on_tile_clicked(self) -> None:
        tile = self.sender()
        if isinstance(tile, StateTile):
            self.choose(tile.state.id)

    @Slot()
    def _on_add(self) -> None:
        self.flush()
        label = self.tr("New state")
        new = State(id=free_id(self._ids(), label), label=label)
        self._current = new.id
        states = self._character.states if self._character else ()
        self.edited.emit((*states, new))
        self.one.form.focus_first()

    @Slot()
    def _on_remove(self) -> None:
        self.flush()
        self.remove_asked.emit(self._current)

    @Slot()
    def _on_moved(self) -> None:
        here = self._ids().index(self._current)
        states = self._character.states if self._character else ()
        self.edited.emit(shifted(states, here, -1 if self.sender() is self.earlier else 1))
