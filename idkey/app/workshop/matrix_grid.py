"""The grid of the matrix: arrows, ranges, and the keys that change them."""

from enum import StrEnum

from PySide6.QtCore import (
    QEvent,
    QItemSelection,
    QItemSelectionModel,
    QModelIndex,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QKeyEvent, QKeySequence, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QTableView

from idkey.app.parts.theme import Theme
from idkey.app.workshop.matrix_delegate import CellDelegate
from idkey.app.workshop.matrix_edit import Block, Cell
from idkey.app.workshop.matrix_headers import NARROW, CharacterHeader, TaxonHeader
from idkey.app.workshop.matrix_model import Index, MatrixModel

WIDTH = 122
"""Width of a column with words, in pixels at 100 %."""

_ROW = 42
_LOW = 24


class Deed(StrEnum):
    """What a key of the grid asks for."""

    COPY = "copy"
    CUT = "cut"
    PASTE = "paste"
    CLEAR = "clear"
    DOWN = "down"
    RIGHT = "right"
    FIND = "find"
    AGAIN = "again"
    EDIT = "edit"


_KEYS = {
    "Ctrl+C": Deed.COPY,
    "Ctrl+X": Deed.CUT,
    "Ctrl+V": Deed.PASTE,
    "Del": Deed.CLEAR,
    "Backspace": Deed.CLEAR,
    "Ctrl+D": Deed.DOWN,
    "Ctrl+R": Deed.RIGHT,
    "Ctrl+F": Deed.FIND,
    "F3": Deed.AGAIN,
    "F2": Deed.EDIT,
    "Return": Deed.EDIT,
    "Enter": Deed.EDIT,
}


class MatrixGrid(QTableView):
    """Shows the matrix and moves in it; what is to be changed it only tells.

    Args:
        model: The matrix.
        theme: The look.

    Signals:
        wanted(deed: Deed): A key asks for something to be done with the chosen cells.
        typed(text: str): The person began to type into the current cell.
        moved(cell: Cell): Another cell is the current one; empty ids for none.
    """

    wanted = Signal(object)
    typed = Signal(str)
    moved = Signal(object)

    def __init__(self, model: MatrixModel, theme: Theme) -> None:
        super().__init__()
        self._matrix = model
        self._theme = theme
        self.delegate = CellDelegate(theme)
        self.across = CharacterHeader(model, theme, self)
        self.down = TaxonHeader(model, theme, self)
        self.setModel(model)
        self.setItemDelegate(self.delegate)
        self.setHorizontalHeader(self.across)
        self.setVerticalHeader(self.down)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ContiguousSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setTabKeyNavigation(False)  # Tab leads out of the grid
        self.setCornerButtonEnabled(True)
        self.setWordWrap(False)
        self.setAccessibleName(self.tr("Matrix of taxa and characters"))
        for header in (self.across, self.down):
            header.setMinimumSectionSize(theme.px(NARROW) - 4)
            header.setSectionResizeMode(header.ResizeMode.Fixed)
        self._cell: Cell = ("", "")
        self.setStyleSheet(
            f"QTableView {{ background: {theme.colours.raised}; gridline-color:"
            f" {theme.colours.line}; border: 1px solid {theme.colours.line}; }}"
            f"QTableView:focus {{ border: 1px solid {theme.colours.accent}; }}"
            f"QTableCornerButton::section, QAbstractScrollArea::corner {{ border: none;"
            f" background: {theme.colours.surface}; }}"
        )
        # What scrolls is moved, not drawn again: the picture has no holes to see through.
        self.viewport().setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        model.modelReset.connect(self.arrange)
        self.doubleClicked.connect(self._on_double_clicked)

    @property
    def cell(self) -> Cell:
        """The current cell; empty ids when there is none."""
        index = self.currentIndex()
        return self._matrix.cell(index.row(), index.column()) if index.isValid() else ("", "")

    @property
    def block(self) -> Block | None:
        """The chosen cells; None when there are none."""
        edges = self._edges()
        if edges is None:
            return None
        top, left, bottom, right = edges
        return self._matrix.block(top, left, bottom=bottom, right=right)

    @property
    def room(self) -> Block | None:
        """All cells from the corner of the chosen ones to the end of the grid."""
        edges = self._edges()
        if edges is None:
            return None
        last = len(self._matrix.taxa), len(self._matrix.characters)
        return self._matrix.block(edges[0], edges[1], bottom=last[0], right=last[1])

    def _edges(self) -> tuple[int, int, int, int] | None:
        chosen = self.selectionModel().selection()
        ranges = [chosen.at(number) for number in range(chosen.count())]
        if not ranges:
            return None
        return (
            min(one.top() for one in ranges),
            min(one.left() for one in ranges),
            max(one.bottom() for one in ranges),
            max(one.right() for one in ranges),
        )

    def show_words(self, words: bool) -> None:
        """Show words in the cells, or only shapes in narrow columns."""
        self.delegate.words = self.across.words = words
        self.arrange()
        self.viewport().update()

    def arrange(self) -> None:
        """Give rows and columns their sizes, and go back to the cell one was at."""
        px, words = self._theme.px, self.delegate.words
        self.across.setDefaultSectionSize(px(WIDTH) if words else px(NARROW))
        line = self.delegate.line
        self.down.setDefaultSectionSize(max(px(_ROW), 2 * line + px(8)) if words else px(_LOW))
        if words:
            for row in range(len(self._matrix.taxa)):
                if (lines := self._matrix.lines(row)) > 2:
                    self.down.resizeSection(row, min(lines, 6) * line + px(8))
        self.across.updateGeometry()
        self.updateGeometries()
        self.go_to(self._cell)

    def go_to(self, cell: Cell) -> bool:
        """Make a cell the current one; False when it is not shown."""
        index = self._matrix.place(cell)
        if not index.isValid():
            if self._matrix.taxa and self._matrix.characters:
                self.setCurrentIndex(self._matrix.index(0, 0))
            return False
        self.setCurrentIndex(index)
        self.scrollTo(index)
        return True

    def choose_row(self) -> None:
        """Choose all cells of the current taxon."""
        row = self.currentIndex().row()
        self._choose(row, 0, row, len(self._matrix.characters) - 1)

    def choose_column(self) -> None:
        """Choose all cells of the current character."""
        column = self.currentIndex().column()
        self._choose(0, column, len(self._matrix.taxa) - 1, column)

    def _choose(self, top: int, left: int, bottom: int, right: int) -> None:
        if min(top, left, bottom, right) < 0:
            return
        corners = self._matrix.index(top, left), self._matrix.index(bottom, right)
        flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
        self.selectionModel().select(QItemSelection(*corners), flag)

    def event(self, event: QEvent) -> bool:
        """Take the keys of the grid before the window does."""
        if isinstance(event, QKeyEvent) and _overrides(event):
            event.accept()
            return True
        return super().event(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the current cell in sight."""
        super().resizeEvent(event)
        if self.currentIndex().isValid():
            self.scrollTo(self.currentIndex())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the ground, then the cells."""
        painter = QPainter(self.viewport())
        painter.fillRect(event.rect(), self._theme.colour("raised"))
        painter.end()
        super().paintEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Ask for what the key means; typing begins an entry."""
        deed = _KEYS.get(_pressed(event))
        text, modifiers = event.text(), event.modifiers()
        control = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier
        if deed is not None:
            self.wanted.emit(deed)
        elif event.key() == Qt.Key.Key_Space and modifiers & Qt.KeyboardModifier.ShiftModifier:
            self.choose_row()
        elif event.key() == Qt.Key.Key_Space and modifiers & Qt.KeyboardModifier.ControlModifier:
            self.choose_column()
        elif text.strip() and text.isprintable() and not modifiers & control:
            self.typed.emit(text)
        else:
            super().keyPressEvent(event)

    def currentChanged(self, current: Index, previous: Index) -> None:
        """Tell which cell is the current one."""
        super().currentChanged(current, previous)
        if current.isValid():
            self._cell = self._matrix.cell(current.row(), current.column())
            self.moved.emit(self._cell)

    @Slot(QModelIndex)
    def _on_double_clicked(self, _: QModelIndex) -> None:
        self.wanted.emit(Deed.EDIT)


def _overrides(event: QKeyEvent) -> bool:
    return event.type() == QEvent.Type.ShortcutOverride and _pressed(event) in _KEYS


def _pressed(event: QKeyEvent) -> str:
    keypad = Qt.KeyboardModifier.KeypadModifier
    pressed = event.keyCombination()
    plain = pressed.keyboardModifiers() & ~keypad
    portable = QKeySequence.SequenceFormat.PortableText
    return QKeySequence(pressed.key() | plain).toString(portable)
