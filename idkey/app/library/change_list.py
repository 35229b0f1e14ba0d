"""What differs between two versions of a key, in words, narrowed by kind and by typing."""

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QListView, QVBoxLayout, QWidget

from idkey.app.library.words import part_words
from idkey.app.parts.captions import caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import RowsModel
from idkey.formats.compare import Change, How
from idkey.formats.pieces import Part

SIGNS = {How.ADDED: "+", How.REMOVED: "−", How.CHANGED: "±"}
"""A sign before each change, so that one sees what it is before reading."""


TIGHT = "QAbstractItemView::item { padding: 4px 2px; }"
"""Less room at the sides: Qt forgets it when it breaks lines, and cuts the last one."""


class ChangeList(QWidget):
    """A list of changes.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._changes: tuple[Change, ...] = ()
        display = int(Qt.ItemDataRole.DisplayRole)
        self.rows: RowsModel[Change] = RowsModel(
            {display: lambda one: f"{SIGNS[one.how]}  {one.words}"}, parent=self
        )
        self.words = QLineEdit()
        self.words.setPlaceholderText(self.tr("Only changes with these words"))
        self.words.setAccessibleName(self.tr("Only changes with these words"))
        self.words.setClearButtonEnabled(True)
        self.part = Choice(self.tr("Only changes of"), desk.theme)
        self.list = QListView()
        self.list.setModel(self.rows)
        self.list.setAccessibleName(self.tr("Changes"))
        self.list.setWordWrap(True)
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        airy(self.list, desk.theme)
        self.list.setStyleSheet(self.list.styleSheet() + TIGHT)
        self.said = caption(rank="small")
        row = QHBoxLayout()
        row.addWidget(self.words, 1)
        row.addWidget(self.part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(desk.theme.px(6))
        column.addLayout(row)
        column.addWidget(self.list, 1)
        column.addWidget(self.said)
        self.words.textChanged.connect(self._on_narrowed)
        self.part.currentIndexChanged.connect(self._on_narrowed)
        self.show_changes(())

    def show_changes(self, changes: tuple[Change, ...]) -> None:
        """Show other changes, all of them."""
        self._changes = changes
        self.words.clear()
        there = dict.fromkeys(change.place.part for change in changes)
        whole = (self.tr("All changes ({n})").format(n=len(changes)), None)
        self.part.blockSignals(True)  # it is narrowed below
        self.part.offer((whole, *((self._counted(part), part) for part in there)))
        self.part.blockSignals(False)
        self._narrow()

    def _counted(self, part: Part) -> str:
        number = sum(change.place.part is part for change in self._changes)
        return f"{part_words(part)} ({number})"

    def _narrow(self) -> None:
        part = self.part.chosen
        words = self.words.text().casefold().split()
        found = tuple(
            change
            for change in self._changes
            if (part is None or change.place.part is part)
            and all(word in change.words.casefold() for word in words)
        )
        self.rows.replace(found)
        narrowed = len(found) != len(self._changes)
        text = self.tr("{n} of {all} changes are shown.")
        self.said.setText(text.format(n=len(found), all=len(self._changes)))
        self.said.setVisible(narrowed)

    @Slot()
    def _on_narrowed(self) -> None:
        self._narrow()
