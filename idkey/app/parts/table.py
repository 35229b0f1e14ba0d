"""A table model over a tuple of rows and a tuple of columns."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from idkey.app.parts.tips import tip

T = TypeVar("T")

Index = QModelIndex | QPersistentModelIndex

CELL_ROLE = int(Qt.ItemDataRole.UserRole)
"""Role under which the cell itself is found."""

_NOWHERE = QModelIndex()


@dataclass(frozen=True, slots=True)
class TableColumn(Generic[T]):
    """One column: its title, and its cell in a row."""

    title: str
    cell: Callable[[T], Any]


class TableModel(QAbstractTableModel, Generic[T]):
    """Shows a tuple of rows in columns; `replace` is the only way to change it.

    Args:
        roles: What each Qt role shows of a cell; tool tips are plain text.
        parent: Owner.
    """

    def __init__(
        self, roles: Mapping[int, Callable[[Any], Any]], parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._roles = dict(roles)
        self._rows: tuple[T, ...] = ()
        self._columns: tuple[TableColumn[T], ...] = ()

    def replace(self, rows: tuple[T, ...], columns: tuple[TableColumn[T], ...]) -> None:
        """Show `rows` under `columns` instead of what was shown."""
        self.beginResetModel()
        self._rows, self._columns = rows, columns
        self.endResetModel()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """How many rows there are."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """How many columns there are."""
        return 0 if parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """What `role` shows of a cell."""
        if not self.checkIndex(index, self.CheckIndexOption.IndexIsValid):
            return None
        cell = self._columns[index.column()].cell(self._rows[index.row()])
        if role == CELL_ROLE:
            return cell
        show = self._roles.get(role)
        shown = None if show is None else show(cell)
        if role == Qt.ItemDataRole.ToolTipRole and isinstance(shown, str):
            return tip(shown)
        return shown

    def headerData(
        self, section: int, way: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """The title of a column."""
        if way is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return self._columns[section].title if section < len(self._columns) else None
        return None
