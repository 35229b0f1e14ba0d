"""The list of recorded cases."""

from html import escape

from PySide6.QtCore import QItemSelection, QItemSelectionModel, Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView

from idkey.app.parts.columns import airy
from idkey.app.parts.table import TableColumn, TableModel
from idkey.app.parts.theme import Theme
from idkey.app.records.page import kind_words
from idkey.report.language import Language
from idkey.store.record import CaseRow

WIDTHS = (104, 0, 0, 144, 0)
"""Widths of the columns at 100 %; 0 shares what is left."""

ROOM = {2: 580, 3: 440}
"""Width of the list at 100 % from which supplier and verdict are shown; the page tells them too."""


class RecordsList(QTableView):
    """Shows cases in a table; several can be chosen.

    Args:
        theme: The look.
        language: Language of the verdicts.

    Signals:
        chosen(): Another case is the current one, or others are selected.
    """

    chosen = Signal()

    def __init__(self, theme: Theme, language: Language) -> None:
        super().__init__()
        self._language = language
        self._theme = theme
        display, tip = Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole
        self._model: TableModel[CaseRow] = TableModel({int(display): str, int(tip): escape}, self)
        self._cases: tuple[CaseRow, ...] = ()
        self._model.replace((), self._columns())
        self.setModel(self._model)
        self.setAccessibleName(self.tr("Recorded cases"))
        as_rows(self, theme)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        header = self.horizontalHeader()
        for number, width in enumerate(WIDTHS):
            mode = QHeaderView.ResizeMode.Fixed if width else QHeaderView.ResizeMode.Stretch
            header.setSectionResizeMode(number, mode)
            if width:
                self.setColumnWidth(number, theme.px(width))
        self.selectionModel().selectionChanged.connect(self._on_selection_changed)

    @property
    def cases(self) -> tuple[CaseRow, ...]:
        """The cases shown."""
        return self._cases

    @property
    def current(self) -> str:
        """Id of the case that is looked at; empty for none."""
        row = self.currentIndex().row()
        return self._cases[row].case_id if 0 <= row < len(self._cases) else ""

    @property
    def selected(self) -> tuple[str, ...]:
        """Ids of the selected cases, from the top."""
        rows = sorted(index.row() for index in self.selectionModel().selectedRows())
        return tuple(self._cases[row].case_id for row in rows)

    def show_cases(self, cases: tuple[CaseRow, ...]) -> None:
        """Show other cases; the current one stays so where it still is among them."""
        if cases == self._cases:
            return
        here = self.current
        self._cases = cases
        self._model.replace(cases, self._columns())
        ids = [row.case_id for row in cases]
        if ids:
            self.look_at(here if here in ids else ids[0])
        else:
            self.chosen.emit()

    def look_at(self, case_id: str) -> None:
        """Make a case of the list the current one."""
        row = next((n for n, one in enumerate(self._cases) if one.case_id == case_id), -1)
        if row >= 0:
            flags = QItemSelectionModel.SelectionFlag
            how = flags.ClearAndSelect | flags.Rows
            self.selectionModel().setCurrentIndex(self._model.index(row, 0), how)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave supplier, then verdict, out where label and name would be cut short."""
        for column, width in ROOM.items():
            self.setColumnHidden(column, event.size().width() < self._theme.px(width))
        super().resizeEvent(event)

    def _columns(self) -> tuple[TableColumn[CaseRow], ...]:
        def verdict(one: CaseRow) -> str:
            return kind_words(one.kind, self._language)

        return (
            TableColumn(self.tr("Day"), lambda one: one.day),
            TableColumn(self.tr("Label"), lambda one: one.label or "–"),
            TableColumn(self.tr("Supplier"), lambda one: one.supplier or "–"),
            TableColumn(self.tr("Verdict"), verdict),
            TableColumn(self.tr("Name"), lambda one: one.name or "–"),
        )

    @Slot(QItemSelection, QItemSelection)
    def _on_selection_changed(self, _: QItemSelection, __: QItemSelection) -> None:
        self.chosen.emit()


def as_rows(view: QTableView, theme: Theme) -> None:
    """Let a table look like a list: whole rows, no grid, room to breathe."""
    view.setFrameShape(QFrame.Shape.NoFrame)
    view.setShowGrid(False)
    view.setWordWrap(False)
    view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    view.setTabKeyNavigation(False)
    airy(view, theme)
    view.setStyleSheet(view.styleSheet() + "QAbstractItemView::item { border-radius: 0; }")
    view.verticalHeader().hide()
    view.verticalHeader().setDefaultSectionSize(theme.px(32))
    header = view.horizontalHeader()
    header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
    header.setHighlightSections(False)
