"""Does with the chosen cells what a key of the grid asks for; each time is one step."""

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QClipboard
from PySide6.QtWidgets import QWidget

from idkey.app.parts.theme import Theme
from idkey.app.workshop.matrix_edit import (
    Block,
    Cell,
    Edit,
    cleared,
    copied,
    filled_down,
    filled_right,
    pasted,
    with_cells,
)
from idkey.app.workshop.matrix_grid import Deed
from idkey.app.workshop.mistakes_dialog import MistakesDialog
from idkey.app.workshop.state import WorkshopState
from idkey.model.key import Key


class MatrixWork(QObject):
    """Copies, pastes, fills and clears.

    Args:
        state: The workshop.
        theme: The look.
        window: Over which lists of mistakes stand.

    Signals:
        cell_asked(cell: Cell): The person wants to see a cell that did not fit.
    """

    cell_asked = Signal(object)

    def __init__(self, state: WorkshopState, theme: Theme, window: QWidget) -> None:
        super().__init__(window)
        self._state, self._theme, self._window = state, theme, window

    def do(
        self, deed: Deed, block: Block | None, room: Block | None, *, clipboard: QClipboard
    ) -> None:
        """Do something with a block of cells.

        Args:
            deed: What.
            block: The chosen cells.
            room: All cells from their corner to the end of the grid.
            clipboard: Where text comes from and goes to.
        """
        editing = self._state.editing
        if editing is None or block is None or room is None:
            return
        key = editing.key
        if deed in (Deed.COPY, Deed.CUT):
            clipboard.setText(copied(key, block))
        if deed in (Deed.CLEAR, Deed.CUT):
            self.apply(cleared(block))
        elif deed is Deed.PASTE:
            self.apply(pasted(key, clipboard.text(), block, room))
        elif deed is Deed.DOWN:
            self.apply(filled_down(key, block))
        elif deed is Deed.RIGHT:
            self.apply(filled_right(key, block))

    def apply(self, edit: Edit) -> None:
        """Make a change one step, or list why it cannot be made."""
        editing = self._state.editing
        if editing is None:
            return
        key = editing.key
        if edit.mistakes:
            dialog = MistakesDialog(edit.mistakes, key, theme=self._theme, parent=self._window)
            dialog.asked.connect(self._on_cell_asked)
            dialog.open()
            return
        new = with_cells(key, edit.cells)
        if new is not key:
            cells = [c for c, scores in edit.cells.items() if key.cells.get(c, ()) != scores]
            self._state.change(new, self._words(key, cells))

    @Slot(object)
    def _on_cell_asked(self, cell: Cell) -> None:
        self.cell_asked.emit(cell)

    def _words(self, key: Key, cells: list[Cell]) -> str:
        taxa, characters = {cell[0] for cell in cells}, {cell[1] for cell in cells}
        taxon = key.taxon[next(iter(taxa))].name
        character = key.character[next(iter(characters))].name
        if len(cells) == 1:
            return f"{character}: {taxon}"
        if len(characters) == 1:
            return self.tr("{character}: {n} taxa").format(character=character, n=len(cells))
        if len(taxa) == 1:
            return self.tr("{taxon}: {n} characters").format(taxon=taxon, n=len(cells))
        return self.tr("{n} cells of the matrix").format(n=len(cells))
