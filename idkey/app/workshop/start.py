"""The workshop without a key: which one is to be edited."""

from pathlib import Path

from PySide6.QtCore import QModelIndex, Qt, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QFrame, QListView, QVBoxLayout

from idkey.app.parts.captions import button, caption
from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.formats.folder import KeyEntry

WIDTH = 720
"""Widest the card gets, in pixels at 100 %."""


class StartPage(QFrame):
    """The keys that can be edited, any folder, or a new key.

    Args:
        desk: Look, drawings, language.

    Signals:
        edit_asked(folder: object): Edit the key of that folder in place.
        copy_asked(key: object): Make an own copy of that `KeyEntry`.
        folder_asked(folder: str): Edit the key of a folder that was looked up.
        new_asked(): The person wants a new key.
    """

    edit_asked = Signal(object)
    copy_asked = Signal(object)
    folder_asked = Signal(str)
    new_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._theme = desk.theme
        self._unsaved: frozenset[Path] = frozenset()
        role = Qt.ItemDataRole
        self.rows: RowsModel[KeyEntry] = RowsModel(
            {
                int(role.DisplayRole): self._line,
                int(role.AccessibleTextRole): self._line,
                int(role.ToolTipRole): lambda row: str(row.folder),
            },
            parent=self,
        )
        self.list = QListView()
        self.list.setModel(self.rows)
        self.list.setAccessibleName(self.tr("Keys that can be edited"))
        self.list.setWordWrap(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        airy(self.list, desk.theme)
        self.edit = button(role="main")
        self.copy = button(self.tr("Make your own copy…"))
        self.open_folder = button(self.tr("Open a folder…"))
        self.new = button(self.tr("A new key…"))
        self._lay_out()
        self._connect()

    def show_keys(self, keys: tuple[KeyEntry, ...], unsaved: frozenset[Path]) -> None:
        """Show the keys there are, and in which folders work is not saved yet."""
        elsewhere = (f for f in sorted(unsaved) if f.is_dir() and f not in {k.folder for k in keys})
        others = (KeyEntry(folder=f, id=f.name, title=str(f), own=True) for f in elsewhere)
        self._unsaved = unsaved
        keys = (*keys, *others)
        self.rows.replace(keys)
        if not self.list.currentIndex().isValid():
            self.list.setCurrentIndex(self.rows.index(0))
        self._allow()

    def focus_first(self) -> None:
        """Put the focus where one chooses."""
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _line(self, row: KeyEntry) -> str:
        whose = self.tr("your own") if row.own else self.tr("came with the program")
        version = self.tr("version {version}").format(version=row.version)
        parts = [row.title, version if row.version else "", whose]
        if row.folder in self._unsaved:
            parts.append(self.tr("● changes not saved yet"))
        return " · ".join(part for part in parts if part)

    def _lay_out(self) -> None:
        self.setMaximumWidth(self._theme.px(WIDTH))
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 20, 24, 20)
        column.setSpacing(10)
        column.addWidget(caption(self.tr("Which key do you want to work on?"), "title"))
        column.addWidget(
            caption(
                self.tr(
                    "Your own keys are changed in place. A key that came with the program stays "
                    "as it is: you work on a copy of it."
                ),
                "soft",
            )
        )
        column.addWidget(self.list, 1)
        row = FlowRow(gap=8)
        for pressed in (self.edit, self.copy, self.open_folder, self.new):
            pressed.setAutoDefault(True)
            row.add(pressed)
        column.addWidget(row)

    def _connect(self) -> None:
        self.list.activated.connect(self._on_list_activated)
        self.list.selectionModel().currentChanged.connect(self._on_current_changed)
        self.edit.clicked.connect(self._on_edit_clicked)
        self.copy.clicked.connect(self._on_copy_clicked)
        self.open_folder.clicked.connect(self._on_folder_clicked)
        self.new.clicked.connect(self._on_new_clicked)

    @property
    def _chosen(self) -> KeyEntry | None:
        index = self.list.currentIndex()
        return index.data(ROW_ROLE) if index.isValid() else None

    def _allow(self) -> None:
        chosen = self._chosen
        own = chosen is not None and chosen.own
        self.edit.setText(self.tr("Work on it") if own else self.tr("Work on a copy…"))
        self.edit.setEnabled(chosen is not None)
        self.copy.setVisible(own)

    @Slot(QModelIndex)
    def _on_list_activated(self, _: QModelIndex) -> None:
        self._on_edit_clicked()

    @Slot(QModelIndex, QModelIndex)
    def _on_current_changed(self, _: QModelIndex, __: QModelIndex) -> None:
        self._allow()

    @Slot()
    def _on_edit_clicked(self) -> None:
        chosen = self._chosen
        if chosen is None:
            return
        if chosen.own:
            self.edit_asked.emit(chosen.folder)
        else:
            self.copy_asked.emit(chosen)

    @Slot()
    def _on_copy_clicked(self) -> None:
        if self._chosen is not None:
            self.copy_asked.emit(self._chosen)

    @Slot()
    def _on_folder_clicked(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, self.tr("Folder of a key"))
        if folder:
            self.folder_asked.emit(folder)

    @Slot()
    def _on_new_clicked(self) -> None:
        self.new_asked.emit()
