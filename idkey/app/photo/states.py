"""Below the picture: the patch beside the drawn states, at one scale, to be marked by eye."""

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.state_tile import StateTile
from idkey.app.photo.session import PhotoSession
from idkey.model.character import Character, State
from idkey.model.key import Key

TILE = (150, 146)
"""Width and height of a tile at 100 %, in pixels."""


class StateStrip(QFrame):
    """The patch and the states of a character.

    Args:
        key: The key.
        character: A character with states.
        desk: Look, drawings, language.

    Signals:
        named(states: object): The person says it is one of these, as a tuple of ids.
    """

    named = Signal(object)

    def __init__(self, key: Key, character: Character, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "quiet")
        self._key = key
        self._character = character
        self._desk = desk
        self._drawn = any(desk.pictures.has_tile(key, character, s) for s in character.states)
        self._patch = StateTile(
            State(id="", label=self.tr("The patch")), 0, theme=desk.theme, parent=self
        )
        self._patch.picture_expected = True
        self._patch.setEnabled(False)
        self.tiles = tuple(
            StateTile(state, number if number < 10 else 0, theme=desk.theme)
            for number, state in enumerate(character.states, start=1)
        )
        self.note = KeyButton(self.tr("Note it"), "Ctrl+Return", desk.theme, "main")
        self._shown: object = None
        self._lay_out()
        self._bind()

    @property
    def marked(self) -> tuple[str, ...]:
        """Ids of the marked states, in the order of the key."""
        return tuple(tile.state.id for tile in self.tiles if tile.isChecked())

    def show_session(self, session: PhotoSession) -> None:
        """Show the patch of a session."""
        self.setEnabled(session.loaded is not None)
        patch = session.sketch.marks.patch
        shown = (session.shown, patch, session.loaded is not None)
        if shown != self._shown:
            self._shown = shown
            self._patch.picture = None
            if session.loaded is not None and patch is not None:
                self._patch.picture = session.loaded.levels.cut(
                    patch, self._patch.picture_room(), self.devicePixelRatioF()
                )
            self._patch.update()
        self._judge()

    def render_tiles(self) -> None:
        """Render the drawings at the size the tiles have now."""
        for tile in self.tiles:
            if tile.picture_expected:
                tile.picture = self._desk.pictures.tile(
                    self._key,
                    self._character,
                    tile.state,
                    size=tile.picture_room(),
                    ratio=self.devicePixelRatioF(),
                )
                tile.update()

    def _lay_out(self) -> None:
        px = self._desk.theme.px
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        for tile in (self._patch, *self.tiles):
            tile.setFixedSize(QSize(px(TILE[0]), px(TILE[1])))
            if tile is not self._patch:
                tile.picture_expected = self._drawn
                row.addWidget(tile, 0, Qt.AlignmentFlag.AlignTop)
        row.addStretch(1)
        inner = QWidget()
        inner.setProperty("pane", "clear")
        inner.setLayout(row)
        scroll = QScrollArea()
        scroll.setWidget(inner)
        scroll.setWidgetResizable(True)
        scroll.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFixedHeight(px(TILE[1]) + px(18))
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        side = QVBoxLayout()
        side.addWidget(caption(self.tr("Which state is it?"), "strong"))
        side.addWidget(caption(self.tr("Several: one of these."), "small"))
        side.addStretch(1)
        side.addWidget(self.note)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(10, 8, 10, 4)
        whole.setSpacing(10)
        whole.addWidget(self._patch, 0, Qt.AlignmentFlag.AlignTop)
        whole.addWidget(scroll, 1)
        whole.addLayout(side)

    def _bind(self) -> None:
        for number, tile in enumerate(self.tiles[:9], start=1):
            tile.toggled.connect(self._on_tile_toggled)
            shortcut = QShortcut(QKeySequence(str(number)), self)
            shortcut.setContext(Qt.ShortcutContext.WindowShortcut)
            shortcut.activated.connect(tile.toggle)
        for tile in self.tiles[9:]:
            tile.toggled.connect(self._on_tile_toggled)
        self.note.clicked.connect(self._on_note_clicked)
        self.render_tiles()

    def _judge(self) -> None:
        self.note.setEnabled(bool(self.marked) and self.isEnabled())

    @Slot()
    def _on_tile_toggled(self) -> None:
        self._judge()

    @Slot()
    def _on_note_clicked(self) -> None:
        if self.marked:
            self.named.emit(self.marked)
