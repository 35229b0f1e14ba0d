"""The sheet as a table: over each column what it is taken for, and marks where cells do not fit."""

from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QEvent,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)
from PySide6.QtGui import QBrush, QKeyEvent
from PySide6.QtWidgets import QTableView

from idkey.app.library.sheet_state import SheetSession, SheetState
from idkey.app.library.sheet_words import column_words
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip
from idkey.app.parts.worded import worded
from idkey.formats.problem import Problem
from idkey.formats.sheet import DATE
from idkey.formats.sheet_guess import Column, Role

Index = QModelIndex | QPersistentModelIndex

MARK = "◆ "
"""What stands before the text of a cell that does not fit."""

_NOWHERE = QModelIndex()


class SheetModel(QAbstractTableModel):
    """The rows below the headings; a cell can be corrected.

    Args:
        state: The spreadsheet.
        theme: The look.
        parent: Owner.
    """

    def __init__(self, state: SheetState, theme: Theme, parent: QObject) -> None:
        super().__init__(parent)
        self._state, self._theme = state, theme
        self._session: SheetSession | None = None
        self._shape: tuple[int, int, str, int] | None = None  # looking at every row takes its time
        self._wrong: dict[tuple[int, int], Problem] = {}

    def show_session(self, session: SheetSession) -> None:
        """Show another state of the sheet; the place where one is stays when it is the same."""
        before, now = self._shape, _shape(session)
        same = before == now
        if not same:
            self.beginResetModel()
        self._session, self._shape = session, now
        self._wrong = {_place(problem): problem for problem in session.problems}
        if not same:
            self.endResetModel()
            return
        last = self.index(self.rowCount() - 1, self.columnCount() - 1)
        if last.isValid():
            self.dataChanged.emit(self.index(0, 0), last)
        self.headerDataChanged.emit(Qt.Orientation.Horizontal, 0, self.columnCount() - 1)

    def column(self, number: int) -> Column | None:
        """What a column is taken for; None while that is not known."""
        columns = self._session.columns if self._session is not None else ()
        return columns[number] if 0 <= number < len(columns) else None

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """Rows below the headings."""
        if self._session is None or parent.isValid():
            return 0
        return max(len(self._session.sheet.rows) - 1, 0)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """Columns of the widest row."""
        return 0 if self._shape is None or parent.isValid() else self._shape[1]

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Cells can be corrected."""
        flags = super().flags(index)
        return flags | Qt.ItemFlag.ItemIsEditable if index.isValid() else flags

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """What a cell says, and whether it fits."""
        if self._session is None or not index.isValid():
            return None
        place = (index.row() + 1, index.column())
        text = self._session.sheet.cell(*place).removeprefix(DATE)
        wrong = self._wrong.get(place)
        if role == Qt.ItemDataRole.EditRole:
            return text
        if role == Qt.ItemDataRole.DisplayRole:
            return f"{MARK}{text}" if wrong else text
        if role == Qt.ItemDataRole.ToolTipRole and wrong:
            return tip(f"{worded(wrong.problem)} {worded(wrong.remedy)}")
        if role == Qt.ItemDataRole.BackgroundRole and wrong:
            return QBrush(self._theme.colour("doubt_soft"))
        if role == Qt.ItemDataRole.ForegroundRole and self._skipped(index.column()):
            return QBrush(self._theme.colour("soft"))
        return None

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Correct a cell."""
        if role != Qt.ItemDataRole.EditRole:
            return False
        self._state.set_cell(index.row() + 1, index.column(), str(value))
        return True

    def headerData(
        self, section: int, way: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Heading and what the column is taken for; the number of a row as the sheet has it."""
        if role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return None
        if way is Qt.Orientation.Vertical:
            above = self._session.sheet.above if self._session is not None else 0
            return section + above + 2 if role == Qt.ItemDataRole.DisplayRole else None
        column = self.column(section)
        if column is None:
            return None
        if role == Qt.ItemDataRole.ToolTipRole:
            return tip(worded(column.why))
        wrong = MARK if (0, section) in self._wrong else ""
        return f"{wrong}{column.heading or '–'}\n{column_words(column)}"

    def _skipped(self, number: int) -> bool:
        column = self.column(number)
        return column is not None and column.role is Role.SKIP


class SheetTable(QTableView):
    """Shows the sheet; F2 and Enter correct a cell."""

    def event(self, event: QEvent) -> bool:
        """Keep F2 from the window, where it opens the sample."""
        override = event.type() == QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_F2:
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Begin to correct the cell with Enter as with F2."""
        here = self.currentIndex()
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and here.isValid() and self.state() is not QTableView.State.EditingState:
            self.edit(here)
        else:
            super().keyPressEvent(event)


def _shape(session: SheetSession) -> tuple[int, int, str, int]:
    rows = session.sheet.rows
    width = max((len(row) for row in rows), default=0)
    return len(rows), width, str(session.file), session.number


def _place(problem: Problem) -> tuple[int, int]:
    _, row, column = problem.loc
    return int(row), int(column)
