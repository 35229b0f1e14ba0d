"""A list model over a tuple of rows."""

from collections.abc import Callable, Mapping
from typing import Any, Generic, TypeVar

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRect,
    Qt,
)
from PySide6.QtWidgets import QStyle, QStyleOptionViewItem

from idkey.app.parts.tips import tip

T = TypeVar("T")

Index = QModelIndex | QPersistentModelIndex

ROW_ROLE = int(Qt.ItemDataRole.UserRole)
"""Role under which the row itself is found."""

_NOWHERE = QModelIndex()


class RowsModel(QAbstractListModel, Generic[T]):
    """Shows a tuple of rows; `replace` is the only way to change it.

    Args:
        roles: What each Qt role shows of one row; tool tips are plain text.
        chooses: Whether a row can be chosen; None lets all be.
        parent: Owner.
    """

    def __init__(
        self,
        roles: Mapping[int, Callable[[T], Any]],
        *,
        chooses: Callable[[T], bool] | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._roles = dict(roles)
        self._chooses = chooses
        self._rows: tuple[T, ...] = ()

    @property
    def rows(self) -> tuple[T, ...]:
        """The rows shown."""
        return self._rows

    def replace(self, rows: tuple[T, ...]) -> None:
        """Show `rows` instead of what was shown.

        Rows that only changed in place keep the selection and the scroll position.
        """
        if rows == self._rows:
            return
        if len(rows) == len(self._rows):
            self._rows = rows
            self.dataChanged.emit(self.index(0), self.index(len(rows) - 1))
            return
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """How many rows there are."""
        return 0 if parent.isValid() else len(self._rows)

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Rows that cannot be chosen, such as headings, are passed over by the keyboard."""
        if index.isValid() and self._chooses and not self._chooses(self._rows[index.row()]):
            return Qt.ItemFlag.ItemNeverHasChildren
        return super().flags(index)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """What `role` shows of a row."""
        if not self.checkIndex(index, self.CheckIndexOption.IndexIsValid):
            return None
        row = self._rows[index.row()]
        if role == ROW_ROLE:
            return row
        show = self._roles.get(role)
        shown = None if show is None else show(row)
        if role == Qt.ItemDataRole.ToolTipRole and isinstance(shown, str):
            return tip(shown)
        return shown


def placed(option: QStyleOptionViewItem, rect: QRect) -> QRect:
    """A part of a row, given as if text ran from the left, turned round where it does not."""
    return QStyle.visualRect(option.direction, option.rect, rect)
