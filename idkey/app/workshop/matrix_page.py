"""The matrix: every taxon by every character, edited in place."""

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.scrolling import scrolled
from idkey.app.workshop.cell_editor import WIDTH, CellEditor
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.matrix_edit import Cell, Edit, grounded
from idkey.app.workshop.matrix_grid import Deed, MatrixGrid
from idkey.app.workshop.matrix_legend import MatrixLegend
from idkey.app.workshop.matrix_model import MatrixModel
from idkey.app.workshop.matrix_places import pair_cell, place_cell, place_pair
from idkey.app.workshop.matrix_search import (
    EVERYWHERE,
    Sought,
    by_region,
    next_match,
    sought_cells,
    sought_names,
    wrong_cells,
)
from idkey.app.workshop.matrix_tools import MatrixTools
from idkey.app.workshop.matrix_work import MatrixWork
from idkey.app.workshop.quick_entry import QuickEntry
from idkey.app.workshop.state import WorkshopState
from idkey.engine.audit import Remark
from idkey.formats.problem import Problem
from idkey.model.key import Key
from idkey.model.score import Score

LEAST = 620
"""Least width at which grid and editor stand side by side, in pixels at 100 %."""


class MatrixPage(LivePage):
    """The grid, what is looked for in it, and the editor of one cell.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self._desk = desk
        self._wrong: frozenset[Cell] = frozenset()
        self._problems: tuple[Problem, ...] = ()
        self._pair: tuple[str, ...] = ()
        self._arranged: tuple[object, ...] = ()
        self.model = MatrixModel(desk.language, self)
        self.grid = MatrixGrid(self.model, desk.theme)
        self.entry = QuickEntry(desk.theme, self.grid.viewport())
        self.editor = CellEditor(desk)
        self.work = MatrixWork(state, desk.theme, self)
        self.tools = MatrixTools(desk.theme)
        self.story = caption(rank="small")
        self.counts = caption(rank="small", wraps=False)
        self.legend = MatrixLegend(desk.theme)
        self._table, self._side = QWidget(), scrolled(self.editor)
        self._lay_out()
        self._connect()
        self.follow()

    def focus_first(self) -> None:
        """Put the focus on the grid."""
        if not self.grid.currentIndex().isValid():
            self.grid.go_to(("", ""))
        self.grid.setFocus(Qt.FocusReason.OtherFocusReason)

    def flush(self) -> None:
        """Make what is being typed a step."""
        self.entry.flush()
        self.editor.flush()

    def show_place(self, place: object) -> None:
        """Go to the cell, or to the pair of taxa, that a mistake or a remark is about."""
        self.fresh()
        editing, pair = self.state.editing, place_pair(place)
        cell = place_cell(place)
        if pair is not None and isinstance(place, Remark) and editing is not None:
            cell, self._pair = pair_cell(place, editing.key), pair
            self.tools.show_pair()
            self.redraw()
        if cell is None:
            return
        if not self.model.place(cell).isValid():
            self.tools.which.choose(Sought.ALL)
            self.redraw()
        self.grid.go_to(cell)
        self.focus_first()

    def draw(self, editing: Editing) -> None:
        """Show the key as it is."""
        key = editing.key
        if editing.problems is not self._problems:
            self._problems, self._wrong = editing.problems, wrong_cells(editing.problems)
        arranged = (
            key.taxa,
            key.characters,
            self.tools.sought,
            self.tools.regions.isChecked(),
            self._pair,
        )
        if arranged != self._arranged:
            self._arranged = arranged
            self._show_sought(key)
        else:
            self.model.show_key(key, self.model.taxa, self.model.characters)
        self.model.show_mistakes(self._wrong)
        self._strengthen(key)
        self._show_cell()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the room between grid and editor anew."""
        super().resizeEvent(event)
        self._share_room()

    def _share_room(self) -> None:
        """The editor stands beside the grid, or in its place where there is room for one."""
        px, beside = self._desk.theme.px, self.width() >= self._desk.theme.px(LEAST)
        self._side.setFixedWidth(px(WIDTH) if beside else max(self.width(), 1))
        self._table.setVisible(beside or self._side.isHidden())

    def _show_sought(self, key: Key) -> None:
        """Leave out taxa and characters in which nothing is looked for."""
        regions = self.tools.regions.isChecked()
        taxa, names = sought_names(key, self.tools.sought, self._wrong, pair=self._pair)
        order = by_region(key.characters) if regions else key.characters
        self.model.show_key(
            key, (t for t in key.taxa if t.id in taxa), (c for c in order if c.id in names)
        )

    def _strengthen(self, key: Key) -> None:
        sought, cells = self.tools.sought, frozenset[Cell]()
        if sought in EVERYWHERE:
            self.grid.delegate.strong = None
        else:
            cells = sought_cells(key, sought, self._wrong)
            rows = {taxon.id: n for n, taxon in enumerate(self.model.taxa)}
            columns = {one.id: n for n, one in enumerate(self.model.characters)}
            self.grid.delegate.strong = frozenset(
                (rows[t], columns[c]) for t, c in cells if t in rows and c in columns
            )
        whole = len(key.taxa) * len(key.characters)
        text = self.tr("{n} of {all} cells filled").format(n=len(key.cells), all=whole)
        if sought not in EVERYWHERE:
            text = f"{self.tools.title(sought)}: {len(cells)} · {text}"
        self.counts.setText(text)
        self.grid.viewport().update()

    @Slot()
    def _show_cell(self) -> None:
        editing, cell = self.state.editing, self.grid.cell
        if editing is None or cell[0] not in editing.key.taxon:
            self.story.setText("")
            return
        story = self.model.data(self.grid.currentIndex(), Qt.ItemDataRole.AccessibleDescriptionRole)
        names = editing.key.taxon[cell[0]].name, editing.key.character[cell[1]].name
        self.story.setText(f"{' · '.join(names)}: {story}")
        if not self._side.isHidden():
            self.editor.show_cell(editing.key, cell)
            self._on_chosen()

    def _lay_out(self) -> None:
        theme = self._desk.theme
        foot = QHBoxLayout()
        foot.addWidget(self.legend, 1)
        foot.addWidget(self.counts)
        left = QVBoxLayout(self._table)
        left.setContentsMargins(0, 0, 0, 0)
        left.setSpacing(theme.px(6))
        left.addWidget(self.tools)
        left.addWidget(self.grid, 1)
        left.addWidget(self.story)
        left.addLayout(foot)
        self.story.setFixedHeight(theme.px(34))
        self.story.setAlignment(Qt.AlignmentFlag.AlignTop)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.px(10))
        row.addWidget(self._table, 1)
        row.addWidget(self._side)
        self._side.hide()

    def _connect(self) -> None:
        for bar in (self.grid.verticalScrollBar(), self.grid.horizontalScrollBar()):
            bar.valueChanged.connect(self._on_scrolled)
        self.grid.moved.connect(self._show_cell)
        self.grid.wanted.connect(self._on_wanted)
        self.grid.typed.connect(self._on_typed)
        self.entry.entered.connect(self._on_entered)
        self.entry.left.connect(self.focus_first)
        self.editor.edited.connect(self._on_edited)
        self.editor.left.connect(self._on_editor_left)
        self.editor.find_asked.connect(self._on_find_asked)
        self.editor.grounds.spread_asked.connect(self._on_spread_asked)
        self.grid.selectionModel().selectionChanged.connect(self._on_chosen)
        self.work.cell_asked.connect(self._on_cell_asked)
        self.tools.words.chosen.connect(self.grid.show_words)
        self.tools.which.activated.connect(self._on_sought)
        self.tools.regions.toggled.connect(self._on_sought)
        self.tools.finder.returnPressed.connect(self._on_find)

    @Slot()
    def _on_scrolled(self) -> None:
        self.entry.follow(self.grid.visualRect(self.grid.currentIndex()))

    @Slot(object)
    def _on_wanted(self, deed: Deed) -> None:
        if deed is Deed.EDIT:
            self._side.show()
            self._share_room()
            self._show_cell()
            self.editor.focus_first()
        elif deed is Deed.FIND:
            self.tools.finder.setFocus(Qt.FocusReason.ShortcutFocusReason)
            self.tools.finder.selectAll()
        elif deed is Deed.AGAIN:
            self._on_find()
        else:
            self.work.do(deed, self.grid.block, self.grid.room, clipboard=QApplication.clipboard())

    @Slot(str)
    def _on_typed(self, text: str) -> None:
        editing, index = self.state.editing, self.grid.currentIndex()
        if editing is not None and index.isValid():
            self.grid.scrollTo(index)
            self.entry.begin(editing.key, self.grid.cell, text, self.grid.visualRect(index))

    @Slot(object, int)
    def _on_entered(self, edit: Edit, step: int) -> None:
        self.work.apply(edit)
        index = self.grid.currentIndex()
        below = self.model.index(index.row() + step, index.column())
        if below.isValid():
            self.grid.setCurrentIndex(below)

    @Slot(object)
    def _on_edited(self, scores: object) -> None:
        self.work.apply(Edit({self.editor.cell: scores}))  # type: ignore[dict-item]

    @Slot(object)
    def _on_spread_asked(self, score: Score) -> None:
        editing, block = self.state.editing, self.grid.block
        if editing is not None and block is not None:
            self.work.apply(grounded(editing.key, block, score))

    @Slot()
    def _on_chosen(self) -> None:
        editing, block = self.state.editing, self.grid.block
        if editing is not None and block is not None and not self._side.isHidden():
            self.editor.grounds.show_chosen(sum(c in editing.key.cells for c in block.cells))

    @Slot()
    def _on_editor_left(self) -> None:
        self._side.hide()
        self._share_room()
        self.focus_first()

    @Slot()
    def _on_find_asked(self) -> None:
        if not self._table.isVisible():
            self._on_editor_left()
        self._on_wanted(Deed.FIND)

    @Slot(object)
    def _on_cell_asked(self, cell: Cell) -> None:
        self.grid.go_to(cell)
        self.focus_first()

    @Slot()
    def _on_sought(self) -> None:
        self.redraw()

    @Slot()
    def _on_find(self) -> None:
        cell = next_match(self.model, self.tools.finder.text(), self.grid.cell)
        if cell is None:
            if self.tools.finder.text().strip():
                self.story.setText(self.tr("No cell shown here has that."))
            return
        self.grid.go_to(cell)
        self.grid.setFocus(Qt.FocusReason.OtherFocusReason)
