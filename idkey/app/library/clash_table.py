"""Clashes of two people's edits as a table: what it was, mine, theirs, and whose is taken."""

from collections.abc import Iterable, Mapping
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QBrush, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView

from idkey.app.library.join_state import Joining
from idkey.app.parts.columns import airy
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip
from idkey.app.parts.worded import worded
from idkey.formats.merge import Clash, Side
from idkey.formats.pieces import Place

Index = QModelIndex | QPersistentModelIndex

_NOWHERE = QModelIndex()
_MINE, _THEIRS = 2, 3


class ClashModel(QAbstractTableModel):
    """What clashes, before, mine, theirs; the taken one is ticked.

    Args:
        theme: The look.
        parent: Owner.
    """

    def __init__(self, theme: Theme, parent: QObject) -> None:
        super().__init__(parent)
        self._theme = theme
        self._joining: Joining | None = None

    @property
    def clashes(self) -> tuple[Clash, ...]:
        """The rows."""
        return self._joining.clashes if self._joining is not None else ()

    def show_joining(self, joining: Joining | None) -> None:
        """Show another join; the place where one is stays when only choices changed."""
        clashes = joining.clashes if joining is not None else ()
        if clashes != self.clashes:
            self.beginResetModel()
            self._joining = joining
            self.endResetModel()
            return
        self._joining = joining
        if clashes:
            self.dataChanged.emit(self.index(0, 0), self.index(len(clashes) - 1, _THEIRS))

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """One a clash."""
        return 0 if parent.isValid() else len(self.clashes)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """What, before, mine, theirs."""
        return 0 if parent.isValid() else 4

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """The words of a cell; the taken side has a tick and a ground."""
        if self._joining is None or not index.isValid():
            return None
        clash = self.clashes[index.row()]
        taken = self._taken(clash, index.column())
        if role == Qt.ItemDataRole.DisplayRole:
            return f"{'✓ ' if taken else ''}{_cell(clash, index.column())}"
        if role == Qt.ItemDataRole.ToolTipRole:
            return tip(_cell(clash, index.column()))
        if role == Qt.ItemDataRole.BackgroundRole and taken:
            return QBrush(self._theme.colour("accent_soft"))
        if role == Qt.ItemDataRole.FontRole and taken:
            return self._theme.font(bold=clash.place in self._joining.choices)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            words = self.tr("taken") if taken else ""
            return ", ".join(filter(None, (_cell(clash, index.column()), words)))
        return None

    def headerData(
        self, section: int, way: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Titles of the columns."""
        if way is not Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        titles = (self.tr("What clashes"), self.tr("Before"), self.tr("Mine"), self.tr("Theirs"))
        return titles[section]

    def _taken(self, clash: Clash, column: int) -> bool:
        if self._joining is None or column not in (_MINE, _THEIRS):
            return False
        return self._joining.taken(clash) is (Side.MINE if column == _MINE else Side.THEIRS)


def _cell(clash: Clash, column: int) -> str:
    return worded((clash.words, clash.base, clash.mine, clash.theirs)[column])


class ClashTable(QTableView):
    """The table; M and T, or a click on a side, decide the current row.

    Args:
        theme: The look.

    Signals:
        decided(choices: object): Side per place.
    """

    decided = Signal(object)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._model = ClashModel(theme, self)
        self.setModel(self._model)
        self.setAccessibleName(self.tr("Clashes; M takes mine, T takes theirs"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setWordWrap(True)
        self.setTabKeyNavigation(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        airy(self, theme)
        self.setStyleSheet(
            self.styleSheet() + "QAbstractItemView::item { border-radius: 0; padding: 6px 3px; }"
        )
        self.verticalHeader().hide()
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        )
        self.clicked.connect(self._on_clicked)

    def show_joining(self, joining: Joining | None) -> None:
        """Show another join."""
        before = self._model.rowCount()
        self._model.show_joining(joining)
        if self._model.rowCount() != before or not self.currentIndex().isValid():
            self.setCurrentIndex(self._model.index(0, 0))
        self._fit()

    def decide_all(self, side: Side) -> None:
        """Take one side everywhere."""
        self._decide(self._model.clashes, side)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """M and T decide the selected rows, and go on to the next one."""
        sides: Mapping[int, Side] = {Qt.Key.Key_M: Side.MINE, Qt.Key.Key_T: Side.THEIRS}
        side = sides.get(event.key())
        if side is None or event.modifiers() & ~Qt.KeyboardModifier.ShiftModifier:
            super().keyPressEvent(event)
            return
        rows = sorted({index.row() for index in self.selectedIndexes()})
        rows = rows or [self.currentIndex().row()]
        self._decide((self._model.clashes[row] for row in rows if row >= 0), side)
        follows = rows[-1] + 1
        if len(rows) == 1 and follows < self._model.rowCount():
            self.setCurrentIndex(self._model.index(follows, self.currentIndex().column()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the rows to the width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        if self._model.rowCount() <= 300:
            self.resizeRowsToContents()

    def _decide(self, clashes: Iterable[Clash], side: Side) -> None:
        choices: dict[Place, Side] = {clash.place: side for clash in clashes}
        if choices:
            self.decided.emit(choices)

    @Slot(QModelIndex)
    def _on_clicked(self, index: QModelIndex) -> None:
        sides = {_MINE: Side.MINE, _THEIRS: Side.THEIRS}
        if index.column() in sides:
            self._decide((self._model.clashes[index.row()],), sides[index.column()])
