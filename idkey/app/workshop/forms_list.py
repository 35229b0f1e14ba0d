"""The entries of one kind as a list: searched, added, copied, removed, put in order."""

from dataclasses import dataclass

from PySide6.QtCore import QItemSelectionModel, QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QListView, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.rows import RowsModel


@dataclass(frozen=True, slots=True, kw_only=True)
class EntryRow:
    """An entry as the list shows it.

    Attributes:
        id: Its id.
        title: What it is called.
        detail: A second line; empty for none.
        wrong: Whether it has a mistake.
    """

    id: str
    title: str
    detail: str = ""
    wrong: bool = False

    @property
    def shown(self) -> str:
        """The row in words."""
        return f"⚠ {self.title}" if self.wrong else self.title

    def holds(self, words: str) -> bool:
        """Whether any of its words holds what is searched for."""
        return words in f"{self.id} {self.title} {self.detail}".casefold()


class EntryView(QListView):
    """A list with keys of its own: Insert adds, Delete removes, Alt and an arrow move.

    Signals:
        add_asked(): A new one is wanted.
        remove_asked(): The current one is to go.
        shifted(steps: int): The current one is to go up or down.
    """

    add_asked = Signal()
    remove_asked = Signal()
    shifted = Signal(int)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take the keys of its own."""
        key, steps = event.key(), {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
        if key == Qt.Key.Key_Insert:
            self.add_asked.emit()
        elif key == Qt.Key.Key_Delete:
            self.remove_asked.emit()
        elif key in steps and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self.shifted.emit(steps[Qt.Key(key)])
        else:
            super().keyPressEvent(event)


class EntryList(QFrame):
    """Entries to choose from.

    Args:
        name: What they are.
        desk: Look, drawings, language.
        ordered: Whether their order matters.

    Signals:
        chosen(id: str): Another one is to be shown.
        add_asked(): A new one is wanted.
        copy_asked(): A copy of the one shown is wanted.
        remove_asked(): The one shown is to go.
        moved(steps: int): The one shown is to go up or down.
    """

    chosen = Signal(str)
    add_asked = Signal()
    copy_asked = Signal()
    remove_asked = Signal()
    moved = Signal(int)

    def __init__(self, name: str, desk: Desk, *, ordered: bool) -> None:
        super().__init__()
        self.setProperty("pane", "quiet")
        self._all: tuple[EntryRow, ...] = ()
        self._current = ""
        self.search = QLineEdit()
        self.search.setAccessibleName(self.tr("Search: {name}").format(name=name))
        self.search.setPlaceholderText(self.tr("Search"))
        self.search.setClearButtonEnabled(True)
        self.rows: RowsModel[EntryRow] = RowsModel(
            {
                int(Qt.ItemDataRole.DisplayRole): lambda row: row.shown,
                int(Qt.ItemDataRole.ToolTipRole): lambda row: f"{row.title}\n{row.detail}".strip(),
            },
            parent=self,
        )
        self.view = EntryView()
        self.view.setModel(self.rows)
        self.view.setAccessibleName(name)
        self.view.setUniformItemSizes(True)
        self.view.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        airy(self.view, desk.theme)
        self.count = caption(rank="small")
        self.add = button(self.tr("Add"))
        self.copy = button(self.tr("Copy"))
        self.remove = button(self.tr("Remove"))
        self.up = button("↑", "quiet")
        self.down = button("↓", "quiet")
        self._name(name)
        self._lay_out(ordered=ordered)
        self._connect()

    @property
    def current(self) -> str:
        """Id of the one shown; empty when there is none."""
        return self._current

    def show_rows(self, rows: tuple[EntryRow, ...], current: str) -> None:
        """Show entries, one of them as the current one."""
        self._all, self._current = rows, current
        self._filter()

    def choose(self, name: str) -> None:
        """Show an entry, and its row even where the search hides it."""
        if name not in [row.id for row in self.rows.rows]:
            self.search.clear()
        self._current = name
        self._mark()
        self.chosen.emit(name)

    def _name(self, name: str) -> None:
        for pressed, words in (
            (self.add, self.tr("Add to: {name}")),
            (self.copy, self.tr("Copy the chosen one: {name}")),
            (self.remove, self.tr("Remove the chosen one: {name}")),
            (self.up, self.tr("Move the chosen one up (Alt+Up): {name}")),
            (self.down, self.tr("Move the chosen one down (Alt+Down): {name}")),
        ):
            pressed.setAccessibleName(words.format(name=name))
            pressed.setToolTip(words.format(name=name))

    def _lay_out(self, *, ordered: bool) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.setSpacing(6)
        column.addWidget(self.search)
        column.addWidget(self.view, 1)
        column.addWidget(self.count)
        buttons = FlowRow(gap=5)
        for one in (self.add, self.copy, self.remove):
            buttons.add(one)
        column.addWidget(buttons)
        line = QWidget()
        order = QHBoxLayout(line)
        order.setContentsMargins(0, 0, 0, 0)
        order.addWidget(caption(self.tr("Order"), "small"))
        order.addWidget(self.up)
        order.addWidget(self.down)
        order.addStretch(1)
        column.addWidget(line)
        line.setVisible(ordered)

    def _connect(self) -> None:
        self.search.textChanged.connect(self._on_search_changed)
        self.view.selectionModel().currentChanged.connect(self._on_view_current_changed)
        self.add.clicked.connect(self.add_asked)
        self.copy.clicked.connect(self.copy_asked)
        self.remove.clicked.connect(self.remove_asked)
        self.up.clicked.connect(self._on_up)
        self.down.clicked.connect(self._on_down)
        self.view.remove_asked.connect(self.remove_asked)
        self.view.add_asked.connect(self.add_asked)
        self.view.shifted.connect(self.moved)

    def _filter(self) -> None:
        words = self.search.text().strip().casefold()
        found = tuple(row for row in self._all if row.holds(words))
        self.rows.replace(found)
        text = self.tr("{found} of {all}") if words else "{all}"
        self.count.setText(text.format(found=len(found), all=len(self._all)))
        self.count.setVisible(bool(words))
        self._mark()

    def _mark(self) -> None:
        """Mark the row of the current entry, without telling anybody."""
        place = next((n for n, row in enumerate(self.rows.rows) if row.id == self._current), -1)
        index = self.rows.index(place) if place >= 0 else QModelIndex()
        self.view.selectionModel().setCurrentIndex(
            index, QItemSelectionModel.SelectionFlag.ClearAndSelect
        )
        if place >= 0:
            self.view.scrollTo(index)
        for one in (self.copy, self.remove, self.up, self.down):
            one.setEnabled(bool(self._current))

    @Slot()
    def _on_search_changed(self) -> None:
        self._filter()

    @Slot(QModelIndex, QModelIndex)
    def _on_view_current_changed(self, now: QModelIndex, _: QModelIndex) -> None:
        if now.isValid() and (row := self.rows.rows[now.row()]).id != self._current:
            self._current = row.id
            self.chosen.emit(row.id)

    @Slot()
    def _on_up(self) -> None:
        self.moved.emit(-1)

    @Slot()
    def _on_down(self) -> None:
        self.moved.emit(1)
