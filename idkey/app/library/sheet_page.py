"""A new key from a spreadsheet, column by column."""

from dataclasses import replace

from PySide6.QtCore import QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListView,
    QVBoxLayout,
    QWidget,
)

from idkey.app.library.change_list import TIGHT
from idkey.app.library.column_panel import ColumnPanel
from idkey.app.library.sheet_state import SheetSession, SheetState
from idkey.app.library.sheet_table import MARK, SheetModel, SheetTable
from idkey.app.library.words import key_size_words
from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import beside
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.worded import worded
from idkey.formats.new_key import id_for
from idkey.formats.problem import Problem

WIDEST = 400
"""Widest the panel of a column gets, in pixels: the sheet needs room too."""

MOST_FITTED = 200
"""Columns whose width follows what they say."""


class SheetPage(QWidget):
    """The sheet, what its columns are, and what does not fit.

    Args:
        desk: Look, drawings, language.
        state: The spreadsheet; it outlives the page.

    Signals:
        left(): The person does not want it.
        made(key: object): The person wants this `Key`.
    """

    left = Signal()
    made = Signal(object)

    def __init__(self, desk: Desk, state: SheetState) -> None:
        super().__init__()
        self._desk = desk
        self.state = state
        self.model = SheetModel(self.state, desk.theme, self)
        self.title = caption(rank="lead")
        self.sheets = Choice(self.tr("Sheet of the file"), desk.theme)
        self.back = KeyButton(self.tr("Back"), "Esc", desk.theme, "quiet")
        self.table = SheetTable()
        self.panel = ColumnPanel(desk.theme)
        role = int(Qt.ItemDataRole.DisplayRole)
        self.problems: RowsModel[Problem] = RowsModel(
            {role: lambda one: f"{MARK}{worded(one.problem)} {worded(one.remedy)}"}, parent=self
        )
        self.list = QListView()
        self.said = caption()
        self.name = QLineEdit()
        self.make = button(self.tr("Make the key"), "main")
        self._dress()
        self._lay_out()
        self._connect()

    def show_file(self, session: SheetSession) -> None:
        """Show another file, or the same one after the look changed."""
        self.title.setText(self.tr("A new key from {file}").format(file=session.file.name))
        self.sheets.blockSignals(True)  # the state knows already
        self.sheets.offer((sheet.name, number) for number, sheet in enumerate(session.sheets))
        self.sheets.choose(session.number)
        self.sheets.blockSignals(False)
        self.sheets.setVisible(len(session.sheets) > 1)
        self.name.setText(session.title)
        self.panel.show_column(None)
        self._on_state_changed(session)
        self._fit_columns()

    def focus_first(self) -> None:
        """Put the focus on the sheet."""
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _dress(self) -> None:
        px = self._desk.theme.px
        self.table.setModel(self.model)
        self.table.setAccessibleName(self.tr("The sheet; the current column is shown beside it"))
        self.table.setFrameShape(QFrame.Shape.NoFrame)
        self.table.setTabKeyNavigation(False)
        self.table.setWordWrap(False)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.table.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.table.verticalHeader().setDefaultSectionSize(px(28))
        header = self.table.horizontalHeader()
        header.setDefaultSectionSize(px(160))
        header.setMinimumSectionSize(px(80))
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionsClickable(True)
        header.setFixedHeight(px(48))
        self.list.setModel(self.problems)
        self.list.setAccessibleName(self.tr("What does not fit; Enter goes to the cell"))
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setWordWrap(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        airy(self.list, self._desk.theme)
        self.list.setStyleSheet(self.list.styleSheet() + TIGHT)
        self.name.setAccessibleName(self.tr("Title of the key"))
        self.name.setPlaceholderText(self.tr("Title of the key"))
        self.name.setMaximumWidth(px(280))

    def _lay_out(self) -> None:
        px = self._desk.theme.px
        heading = QHBoxLayout()
        heading.addWidget(self.title, 1)
        heading.addWidget(self.sheets)
        heading.addWidget(self.back)
        card = QFrame()
        card.setProperty("pane", "card")
        inner = QVBoxLayout(card)
        inner.setContentsMargins(px(6), px(6), px(6), px(6))
        inner.addWidget(self.table)
        panel = scrolled(self.panel)
        panel.setFixedWidth(min(px(280), WIDEST))
        body = QHBoxLayout()
        body.setSpacing(px(12))
        body.addWidget(card, 1)
        body.addWidget(panel)
        told = scrolled(self.said)
        told.setMaximumHeight(px(84))
        foot = beside(self._desk.theme)
        foot.addWidget(told, 1)
        row = QHBoxLayout()
        row.addWidget(self.name)
        row.addWidget(self.make)
        foot.addLayout(row)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(px(10))
        column.addLayout(heading)
        column.addLayout(body, 1)
        column.addWidget(self.list)
        column.addLayout(foot)

    def _connect(self) -> None:
        self.state.changed.connect(self._on_state_changed)
        self.back.clicked.connect(self.left)
        self.sheets.currentIndexChanged.connect(self.state.choose_sheet)
        self.table.selectionModel().currentChanged.connect(self._on_current_changed)
        self.table.horizontalHeader().sectionClicked.connect(self._on_section_clicked)
        self.panel.changed.connect(self.state.set_column)
        self.list.clicked.connect(self._on_problem_chosen)
        self.list.activated.connect(self._on_problem_chosen)
        self.make.clicked.connect(self._on_make_clicked)
        self.name.textEdited.connect(self.state.set_title)

    def _fit_columns(self) -> None:
        px = self._desk.theme.px
        metrics = QFontMetrics(self._desk.theme.font(bold=True))
        for column in range(min(self.model.columnCount(), MOST_FITTED)):
            head = str(self.model.headerData(column, Qt.Orientation.Horizontal) or "")
            wide = max(map(metrics.horizontalAdvance, head.split("\n"))) + px(24)
            wanted = max(self.table.sizeHintForColumn(column) + px(16), wide)
            self.table.setColumnWidth(column, min(max(wanted, px(110)), px(260)))

    def _words(self, session: SheetSession) -> str:
        if session.checking:
            return self.tr("Being worked out …")
        if session.trouble:
            return session.trouble
        if session.result is None:
            text = self.tr("Places that do not fit yet: {n}")
            return text.format(n=len(session.problems))
        key = session.result.key
        text = self.tr("Makes a key with {size}; scores: {n}.")
        told = text.format(size=key_size_words(key), n=len(key.scores))
        return " ".join((told, *map(worded, session.result.notes)))

    @Slot(object)
    def _on_state_changed(self, session: SheetSession) -> None:
        before = self.model.column(0) is not None
        self.model.show_session(session)
        self.problems.replace(session.problems)
        self.list.setVisible(bool(session.problems))
        row = self._desk.theme.px(30)
        self.list.setFixedHeight(
            row * min(max(len(session.problems), 1), 5) + self._desk.theme.px(8)
        )
        self.said.setText(self._words(session))
        self.make.setEnabled(session.result is not None and not session.checking)
        if session.columns and not before:
            self._fit_columns()
        if self.table.currentIndex().column() < 0 and self.model.columnCount():
            self.table.setCurrentIndex(self.model.index(0, 0))
        self.panel.show_column(self.model.column(max(self.table.currentIndex().column(), 0)))

    @Slot(QModelIndex, QModelIndex)
    def _on_current_changed(self, current: QModelIndex, _: QModelIndex) -> None:
        self.panel.show_column(self.model.column(current.column()))

    @Slot(int)
    def _on_section_clicked(self, section: int) -> None:
        row = max(self.table.currentIndex().row(), 0)
        self.table.setCurrentIndex(self.model.index(row, section))

    @Slot(QModelIndex)
    def _on_problem_chosen(self, index: QModelIndex) -> None:
        problem: Problem = index.data(ROW_ROLE)
        _, row, column = problem.loc
        place = self.model.index(max(int(row) - 1, 0), int(column))
        self.table.setCurrentIndex(place)
        self.table.scrollTo(place, QAbstractItemView.ScrollHint.PositionAtCenter)
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _on_make_clicked(self) -> None:
        session = self.state.session
        if session is None or session.result is None:
            return
        key = session.result.key
        title = " ".join(session.title.split()) or key.title
        self.made.emit(replace(key, id=id_for(title), title=title, digest=""))
