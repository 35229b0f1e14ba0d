"""Taxa side by side, with tiles; the plainest differences first."""

from collections.abc import Callable
from html import escape

from PySide6.QtCore import (
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
    Slot,
)
from PySide6.QtGui import QKeyEvent, QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
)

from idkey.app.bench.comparison import ComparedCell, ComparedRow, Contrast, compared
from idkey.app.bench.session import Session
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import placed
from idkey.app.parts.sheet import Sheet
from idkey.app.parts.table import CELL_ROLE, TableColumn, TableModel
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.report.words import value_words

Index = QModelIndex | QPersistentModelIndex

MOST = 4
"""Most taxa side by side."""


class CompareTable(QTableView):
    """The table itself; Enter opens the question of the row."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter open the row on every platform."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.activated.emit(self.currentIndex())
            return
        super().keyPressEvent(event)


class CompareDelegate(QStyledItemDelegate):
    """Tiles of the states a taxon shows, with their words.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.key: Key | None = None
        self._desk = desk

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the cell."""
        rect = QRect(option.rect)
        state = option.state
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if state & (QStyle.StateFlag.State_Selected | QStyle.StateFlag.State_HasFocus):
            painter.fillRect(rect, self._desk.theme.colour("accent_soft"))
        cell = index.data(CELL_ROLE)
        if isinstance(cell, ComparedRow):
            self._draw_head(painter, rect, cell)
        elif self.key is not None and isinstance(cell, tuple):
            ratio = option.widget.devicePixelRatioF()
            self._draw_cell(painter, option, cell, ratio)
        painter.setPen(QPen(self._desk.theme.colour("line"), 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        painter.restore()

    def _draw_head(self, painter: QPainter, rect: QRect, row: ComparedRow) -> None:
        px, theme = self._desk.theme.px, self._desk.theme
        plain = row.contrast is Contrast.DIFFERENT
        inner = rect.adjusted(px(4), px(8), -px(8), -px(6))
        painter.setFont(theme.font(13, bold=plain))
        painter.setPen(theme.colour("ink"))
        flags = int(Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap)
        painter.drawText(inner, flags, row.character.name)
        painter.setFont(theme.font(11.5))
        painter.setPen(theme.colour("accent" if plain else "soft"))
        flags = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom)
        painter.drawText(inner, flags, self._contrast(row.contrast))

    def _draw_cell(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        cell: tuple[Character, ComparedCell],
        ratio: float,
    ) -> None:
        character, shown, rect = *cell, QRect(option.rect)
        px, theme = self._desk.theme.px, self._desk.theme
        assert self.key is not None
        x, size = rect.left() + px(6), QSize(px(64), px(48))
        for state in shown.states[:2]:
            picture = self._desk.pictures.tile(self.key, character, state, size=size, ratio=ratio)
            if picture is not None:
                plate = placed(option, QRect(QPoint(x, rect.top() + px(6)), size))
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(theme.colour("plate"))
                painter.drawRoundedRect(QRectF(plate), 5, 5)
                painter.drawPixmap(plate.topLeft(), picture)
                x += size.width() + px(4)
        drawn = x > rect.left() + px(6)
        top = rect.top() + (px(57) if drawn else px(8))
        inner = QRect(rect.left() + px(6), top, rect.width() - px(12), rect.bottom() - top - 2)
        painter.setFont(theme.font(12))
        painter.setPen(theme.colour("ink" if shown.scores else "soft"))
        words = "; ".join(value_words(self.key, s, self._desk.language) for s in shown.scores)
        flags = int(Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap)
        painter.drawText(inner, flags, words or self.tr("not known"))

    def _contrast(self, contrast: Contrast) -> str:
        return {
            Contrast.DIFFERENT: self.tr("differs"),
            Contrast.OVERLAPPING: self.tr("overlaps"),
            Contrast.ALIKE: self.tr("alike"),
            Contrast.UNKNOWN: self.tr("not known for all"),
        }[contrast]


class CompareView(Sheet):
    """The comparison page.

    Args:
        desk: Look, drawings, language.

    Signals:
        asked(character: str): The person wants to look at that character.
    """

    asked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self.taxa: tuple[str, ...] = ()
        self.text.hide()
        self.title.setText(self.tr("Side by side"))
        role = Qt.ItemDataRole
        self.model: TableModel[ComparedRow] = TableModel(
            {int(role.DisplayRole): self._spoken, int(role.ToolTipRole): self._spoken}, self
        )
        self._delegate = CompareDelegate(desk)
        self.table = CompareTable()
        self.table.setModel(self.model)
        self.table.setItemDelegate(self._delegate)
        self.table.setAccessibleName(self.tr("Side by side"))
        self.table.setTabKeyNavigation(False)  # Tab leads on, arrows go through the table
        self.table.setShowGrid(False)
        self.table.setFrameShape(QFrame.Shape.NoFrame)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setDefaultSectionSize(desk.theme.px(96))
        self.table.horizontalHeader().setAccessibleName(self.tr("Taxa"))
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.column.addWidget(self.table, 1)
        self.table.activated.connect(self._on_table_activated)

    def show_taxa(self, session: Session, taxa: tuple[str, ...]) -> None:
        """Show taxa of the key side by side, at most four."""
        if session.key is self._delegate.key and taxa[:MOST] == self.taxa:
            return
        key = session.key
        self.taxa, self._delegate.key = taxa[:MOST], key
        columns: list[TableColumn[ComparedRow]] = [
            TableColumn(self.tr("Character"), lambda row: row)
        ]
        for place, taxon in enumerate(self.taxa):
            columns.append(TableColumn(key.taxon[taxon].name, _column(place)))
        self.model.replace(compared(key, self.taxa), tuple(columns))
        names = " · ".join(f"<i>{escape(key.taxon[taxon].name)}</i>" for taxon in self.taxa)
        self.title.setText(names)

    def _spoken(self, cell: object) -> str:
        key = self._delegate.key
        if isinstance(cell, ComparedRow):
            return cell.character.name
        if key is None or not isinstance(cell, tuple):
            return ""
        words = [value_words(key, score, self.desk.language) for score in cell[1].scores]
        return "; ".join(words) or self.tr("not known")

    @Slot(QModelIndex)
    def _on_table_activated(self, index: QModelIndex) -> None:
        row = index.siblingAtColumn(0).data(CELL_ROLE)
        self.asked.emit(row.character.id)


def _column(place: int) -> Callable[[ComparedRow], tuple[Character, ComparedCell]]:
    return lambda row: (row.character, row.cells[place])
