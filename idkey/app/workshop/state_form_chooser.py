"""The drawings a state can have, to choose one from: searched, drawn when they come into view."""

from pathlib import Path

from PySide6.QtCore import QModelIndex, QSize, Qt, Signal, Slot
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QFrame, QLineEdit, QListView, QVBoxLayout

from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import RowsModel
from idkey.app.workshop.state_form_picture import drawings, on_plate
from idkey.model.key import Key

SIDE = 84
"""Side of a picture at 100 % text, in pixels."""

Row = tuple[str, Path]


class Thumbnails:
    """Small drawings, each drawn when it is first asked for.

    Args:
        desk: Look, drawings, language.
        ratio: Device pixels per pixel.
    """

    def __init__(self, desk: Desk, ratio: float) -> None:
        self._side = desk.theme.px(SIDE)
        self._ground = desk.theme.colour("plate")
        self._ratio = ratio
        self._pixmaps: dict[Path, QPixmap | None] = {}

    def of(self, row: Row) -> QPixmap | None:
        """The drawing of a row; None when it cannot be read."""
        if row[1] not in self._pixmaps:
            room = QSize(self._side, self._side)
            self._pixmaps[row[1]] = on_plate(row[1], room, self._ratio, ground=self._ground)
        return self._pixmaps[row[1]]


class FigureChooser(QFrame):
    """Lists drawings; Enter or a click takes one.

    Args:
        desk: Look, drawings, language.

    Signals:
        chosen(figure: str): What the state writes to name the drawing.
    """

    chosen = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "quiet")
        self._theme = desk.theme
        self._all: tuple[Row, ...] = ()
        self.search = QLineEdit()
        self.search.setAccessibleName(self.tr("Search the drawings"))
        self.search.setPlaceholderText(self.tr("Search the drawings: key, character, state …"))
        self.search.setClearButtonEnabled(True)
        role = Qt.ItemDataRole
        self.rows: RowsModel[Row] = RowsModel(
            {
                int(role.DisplayRole): lambda row: Path(row[0]).stem.replace("_", " "),
                int(role.DecorationRole): Thumbnails(desk, self.devicePixelRatioF()).of,
                int(role.ToolTipRole): lambda row: row[0],
            },
            parent=self,
        )
        side = desk.theme.px(SIDE)
        self.view = QListView()
        self.view.setModel(self.rows)
        self.view.setAccessibleName(self.tr("Drawings"))
        self.view.setViewMode(QListView.ViewMode.IconMode)
        self.view.setResizeMode(QListView.ResizeMode.Adjust)
        self.view.setMovement(QListView.Movement.Static)
        self.view.setIconSize(QSize(side, side))
        self.view.setGridSize(QSize(side + desk.theme.px(40), side + desk.theme.px(34)))
        self.view.setUniformItemSizes(True)
        self.view.setFixedHeight(desk.theme.px(270))
        airy(self.view, desk.theme)
        column = QVBoxLayout(self)
        column.addWidget(self.search)
        column.addWidget(self.view)
        self.search.textChanged.connect(self._on_search_changed)
        self.view.activated.connect(self._on_view_activated)
        self.view.clicked.connect(self._on_view_activated)
        self.hide()

    def open(self, folder: Path, key: Key, words: str) -> None:
        """Show the drawings there are, at first those that hold some words.

        Args:
            folder: Folder of the key.
            key: The key.
            words: What is searched for at first.
        """
        self._all = drawings(folder, key)
        first = words if any(words.casefold() in row[0].casefold() for row in self._all) else ""
        self.search.setText(first)
        self._filter()
        self.show()
        self.search.setFocus(Qt.FocusReason.OtherFocusReason)

    def _filter(self) -> None:
        words = self.search.text().casefold().replace(" ", "_").strip("_")
        self.rows.replace(tuple(row for row in self._all if words in row[0].casefold()))

    @Slot()
    def _on_search_changed(self) -> None:
        self._filter()

    @Slot(QModelIndex)
    def _on_view_activated(self, index: QModelIndex) -> None:
        self.chosen.emit(self.rows.rows[index.row()][0])
