"""Why cells could not take what was to be put into them, cell by cell."""

from PySide6.QtCore import QModelIndex, Qt, Signal, Slot
from PySide6.QtWidgets import QDialog, QListView, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.columns import airy
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.theme import Theme
from idkey.app.parts.worded import window_language, worded
from idkey.app.workshop.matrix_edit import CellMistake
from idkey.model.key import Key


class MistakesDialog(QDialog):
    """Lists every cell that refused its value; nothing was changed.

    Args:
        mistakes: The cells and why.
        key: The key.
        theme: The look.
        parent: Over which it stands.

    Signals:
        asked(cell: Cell): The person wants to go to that cell.
    """

    asked = Signal(object)

    def __init__(
        self, mistakes: tuple[CellMistake, ...], key: Key, *, theme: Theme, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Nothing was changed"))
        self._key = key
        role = Qt.ItemDataRole
        self.rows: RowsModel[CellMistake] = RowsModel(
            {int(role.DisplayRole): self._line, int(role.ToolTipRole): self._line}, parent=self
        )
        self.rows.replace(mistakes)
        self.list = QListView()
        self.list.setModel(self.rows)
        self.list.setWordWrap(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setAccessibleName(self.tr("Cells that did not fit"))
        self.list.setCurrentIndex(self.rows.index(0))
        airy(self.list, theme)
        text = self.tr("{n} cells do not fit, so none was changed:")
        if len(mistakes) == 1:
            text = self.tr("One cell does not fit, so none was changed:")
        close = button(self.tr("Close"), "main")
        close.setDefault(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 16)
        column.addWidget(caption(text.format(n=len(mistakes)), "lead"))
        column.addWidget(self.list, 1)
        column.addWidget(close, 0, Qt.AlignmentFlag.AlignRight)
        self.resize(theme.px(620), theme.px(360))
        close.clicked.connect(self.accept)
        self.list.activated.connect(self._on_list_activated)

    def _line(self, mistake: CellMistake) -> str:
        said = f"{worded(mistake.problem)} {worded(mistake.remedy)}"
        taxon, character = mistake.cell
        if taxon not in self._key.taxon or character not in self._key.character:
            return f"{window_language().quote(mistake.text[:40])}: {said}"
        return f"{self._key.taxon[taxon].name}, {self._key.character[character].name}: {said}"

    @Slot(QModelIndex)
    def _on_list_activated(self, index: QModelIndex) -> None:
        mistake: CellMistake = index.data(ROW_ROLE)
        self.asked.emit(mistake.cell)
        self.accept()
