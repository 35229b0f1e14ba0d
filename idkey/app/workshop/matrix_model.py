"""The matrix of a key as a table: taxa down, characters across."""

from collections.abc import Iterable, Mapping
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from idkey.app.parts.tips import tip
from idkey.app.workshop.matrix_edit import Block, Cell
from idkey.app.workshop.matrix_face import Face, cell_story, face
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.model.taxon import Taxon
from idkey.report.language import Language

Index = QModelIndex | QPersistentModelIndex

FACE_ROLE = int(Qt.ItemDataRole.UserRole)
"""Role under which the `Face` of a cell is found."""

_NOWHERE = QModelIndex()
_NOTHING: tuple[Score, ...] = ()


class MatrixModel(QAbstractTableModel):
    """Shows the cells of a key; what a cell looks like is worked out when it is seen.

    Args:
        language: Language of the fixed words.
        parent: Owner.
    """

    def __init__(self, language: Language, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._language = language
        self.key: Key | None = None
        self.taxa: tuple[Taxon, ...] = ()
        self.characters: tuple[Character, ...] = ()
        self._cells: Mapping[Cell, tuple[Score, ...]] = {}
        self._wrong: frozenset[Cell] = frozenset()
        self._faces: dict[Cell, Face] = {}

    def show_key(self, key: Key, taxa: Iterable[Taxon], characters: Iterable[Character]) -> None:
        """Show a key, or what a step made of it.

        Args:
            key: The key.
            taxa: Its rows.
            characters: Its columns.
        """
        rows, columns = tuple(taxa), tuple(characters)
        before, cells = self._cells, key.cells
        self.key, self._cells = key, cells
        if columns != self.characters or rows != self.taxa:
            self.beginResetModel()
            self.taxa, self.characters = rows, columns
            self._faces.clear()
            self.endResetModel()
            return
        if before is not cells:
            for cell in changed_cells(before, cells):
                self._faces.pop(cell, None)
            self._tell()

    def show_mistakes(self, wrong: frozenset[Cell]) -> None:
        """Mark the cells that have a mistake."""
        if wrong == self._wrong:
            return
        for cell in wrong ^ self._wrong:
            self._faces.pop(cell, None)
        self._wrong = wrong
        self._tell()

    def scores(self, cell: Cell) -> tuple[Score, ...]:
        """What a cell says; empty when nothing is known."""
        return self._cells.get(cell, _NOTHING)

    def cell(self, row: int, column: int) -> Cell:
        """The cell at a place of the table."""
        return self.taxa[row].id, self.characters[column].id

    def place(self, cell: Cell) -> QModelIndex:
        """Where a cell stands; nowhere when its row or column is not shown."""
        rows = [n for n, taxon in enumerate(self.taxa) if taxon.id == cell[0]]
        columns = [n for n, one in enumerate(self.characters) if one.id == cell[1]]
        return self.index(rows[0], columns[0]) if rows and columns else QModelIndex()

    def block(self, top: int, left: int, *, bottom: int, right: int) -> Block:
        """The cells of a rectangle, its last row and column included."""
        return Block(
            taxa=tuple(taxon.id for taxon in self.taxa[top : bottom + 1]),
            characters=tuple(one.id for one in self.characters[left : right + 1]),
        )

    def face(self, row: int, column: int) -> Face:
        """What a cell looks like."""
        cell = self.cell(row, column)
        if cell not in self._faces and self.key is not None:
            wrong = cell in self._wrong
            self._faces[cell] = face(self.key, self.scores(cell), self._language, wrong=wrong)
        return self._faces[cell]

    def lines(self, row: int) -> int:
        """How many lines the fullest cell of a row needs."""
        taxon = self.taxa[row].id
        cells = (self.scores((taxon, one.id)) for one in self.characters)
        return max((len(scores) for scores in cells), default=0)

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """How many taxa are shown."""
        return 0 if parent.isValid() else len(self.taxa)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """How many characters are shown."""
        return 0 if parent.isValid() else len(self.characters)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """What `role` shows of a cell."""
        if not self.checkIndex(index, self.CheckIndexOption.IndexIsValid) or self.key is None:
            return None
        if role == FACE_ROLE:
            return self.face(index.row(), index.column())
        if role == Qt.ItemDataRole.DisplayRole:
            return self.face(index.row(), index.column()).text or "?"
        taxon, character = self.taxa[index.row()], self.characters[index.column()]
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole):
            story = cell_story(self.key, self.scores((taxon.id, character.id)), self._language)
            return tip(story) if role == Qt.ItemDataRole.ToolTipRole else story
        if role == Qt.ItemDataRole.AccessibleTextRole:
            said = self.face(index.row(), index.column()).text or "?"
            return f"{taxon.name}, {character.name}: {said}"
        return None

    def headerData(
        self, section: int, way: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """The taxon of a row, the character of a column."""
        across = way is Qt.Orientation.Horizontal
        shown = self.characters if across else self.taxa
        if not 0 <= section < len(shown):
            return None
        one = shown[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return one.name
        if role == Qt.ItemDataRole.ToolTipRole:
            unit = f", {one.unit}" if isinstance(one, Character) and one.unit else ""
            return tip(f"{one.name}{unit}\n{one.id}")
        return None

    def _tell(self) -> None:
        if self.taxa and self.characters:
            last = self.index(len(self.taxa) - 1, len(self.characters) - 1)
            self.dataChanged.emit(self.index(0, 0), last)


def changed_cells(
    old: Mapping[Cell, tuple[Score, ...]], new: Mapping[Cell, tuple[Score, ...]]
) -> set[Cell]:
    """Cells that say something else, or may do: the same scores in the same order are shared."""
    found = {cell for cell, scores in new.items() if old.get(cell) is not scores}
    return found | {cell for cell in old if cell not in new}
