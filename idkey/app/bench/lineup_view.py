"""The line-up: who is still possible, how well supported, and who is out and why."""

from PySide6.QtCore import QItemSelectionModel, QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHBoxLayout, QListView, QVBoxLayout

from idkey.app.bench.as_found import AsFound
from idkey.app.bench.lineup_delegate import LineupDelegate
from idkey.app.bench.lineup_rows import LineupRow, RowKind, lineup_rows
from idkey.app.bench.session import Session
from idkey.app.parts.captions import button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import ROW_ROLE, RowsModel

ROOMY = 300
"""From this height at 100 % text there is room for the animal as found, in pixels."""


class LineupList(QListView):
    """The list itself; Enter opens, as a double click does."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Enter open the row on every platform."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.activated.emit(self.currentIndex())
            return
        super().keyPressEvent(event)


class LineupView(QFrame):
    """Shows all taxa of the key, best supported first.

    Args:
        desk: Look, drawings, language.

    Signals:
        opened(taxon: str): The person wants to read about a taxon.
        comparison_asked(taxa: object): The person wants these taxa side by side.
        several_chosen(taxa: object): The person chose two or more, or another set of them, and
            may go on choosing.
    """

    opened = Signal(str)
    comparison_asked = Signal(object)
    several_chosen = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._desk = desk
        self._session: Session | None = None
        self._unfolded = self._restoring = False
        role = Qt.ItemDataRole
        self.rows: RowsModel[LineupRow] = RowsModel(
            {
                int(role.DisplayRole): lambda row: row.name,
                int(role.AccessibleTextRole): self._spoken,
                int(role.ToolTipRole): self._spoken,
            },
            parent=self,
        )
        self._build()
        desk.pictures.arrived.connect(self._on_pictures_arrived)

    def show_session(self, session: Session) -> None:
        """Show the line-up of a session; the chosen taxa stay chosen."""
        kept = self.chosen()
        self._session = session
        self._delegate.key = session.key
        self.as_found.show_session(session)
        self._refresh()
        self._choose(kept)
        self._share()
        standing = len(session.reasoned.assessment.standing)
        self._count.setText(self.tr("%n possible", "", standing))

    def chosen(self) -> tuple[str, ...]:
        """Ids of the chosen taxa, in the order of the rows."""
        indexes = sorted(self.list.selectedIndexes(), key=lambda index: index.row())
        taxa = (index.data(ROW_ROLE).taxon for index in indexes)
        return tuple(taxon for taxon in taxa if taxon)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the room for the taxa where there is little."""
        super().resizeEvent(event)
        self._share()

    def _share(self) -> None:
        """Show the animal as found where it leaves room for the taxa."""
        roomy = self.height() >= self._desk.theme.px(ROOMY)
        self.as_found.setVisible(roomy and bool(self.as_found.known))

    def _enlarge(self) -> None:
        """Draw what is shown at the largest scale that it can share, once that is known."""
        if self._session is None:
            return
        key, case = self._session.key, self._session.case
        shown = [row.taxon for row in self.rows.rows if row.taxon]
        with_case = case if self.as_found.known and self.as_found.scaled else None
        zoom = self._desk.pictures.zoom(key, shown, with_case)
        if zoom is not None:
            self._delegate.zoom = zoom
            self.as_found.enlarge(zoom)

    def _spoken(self, row: LineupRow) -> str:
        return row.spoken(self._desk.language)

    def _build(self) -> None:
        self._delegate = LineupDelegate(self._desk)
        self.as_found = AsFound(self._desk)
        self.list = LineupList()
        self.list.setModel(self.rows)
        self.list.setItemDelegate(self._delegate)
        self.list.setAccessibleName(self.tr("Line-up"))
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setMouseTracking(True)
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self._count = caption(rank="small", wraps=False)
        self._compare = button(self.tr("Compare"), "quiet")
        self._compare.setToolTip(self.tr("Choose two or more, with Ctrl or Shift"))
        self._compare.setEnabled(False)
        heading = QHBoxLayout()
        heading.setContentsMargins(14, 8, 8, 2)
        heading.setSpacing(8)
        title = caption(self.tr("Line-up"), "strong", wraps=False)
        title.setToolTip(self.tr("Portraits are drawn from what the key says, to one scale"))
        heading.addWidget(title)
        heading.addWidget(self._count)
        heading.addStretch(1)
        heading.addWidget(self._compare)
        column = QVBoxLayout(self)
        column.setContentsMargins(1, 1, 1, 6)
        column.setSpacing(0)
        column.addLayout(heading)
        column.addWidget(self.as_found)
        column.addWidget(self.list, 1)
        self.list.activated.connect(self._on_list_activated)
        self.list.clicked.connect(self._on_list_clicked)
        self.list.selectionModel().selectionChanged.connect(self._on_selection_changed)
        self._compare.clicked.connect(self.compare)

    def _refresh(self) -> None:
        if self._session is not None:
            self.rows.replace(lineup_rows(self._session, unfolded=self._unfolded))
            self._enlarge()

    def _choose(self, taxa: tuple[str, ...]) -> None:
        selection = self.list.selectionModel()
        if taxa == self.chosen():
            return
        self._restoring = True
        selection.clearSelection()
        for number, row in enumerate(self.rows.rows):
            if row.taxon in taxa:
                index = self.rows.index(number)
                selection.select(index, QItemSelectionModel.SelectionFlag.Select)
        self._restoring = False

    @Slot()
    def _on_pictures_arrived(self) -> None:
        self._enlarge()
        self.list.viewport().update()

    @Slot()
    def compare(self) -> None:
        """Ask for the chosen taxa side by side; the first three when fewer are chosen."""
        taxa = self.chosen()
        if len(taxa) < 2:
            taxa = tuple(row.taxon for row in self.rows.rows if row.taxon)[:3]
        self.comparison_asked.emit(taxa)

    @Slot(QModelIndex)
    def _on_list_clicked(self, index: QModelIndex) -> None:
        if index.data(ROW_ROLE).kind is RowKind.FOLD:
            self._on_list_activated(index)

    @Slot(QModelIndex)
    def _on_list_activated(self, index: QModelIndex) -> None:
        row: LineupRow = index.data(ROW_ROLE)
        if row.kind is RowKind.FOLD:
            self._unfolded = not self._unfolded
            self._refresh()
            self.list.setCurrentIndex(self.rows.index(index.row()))
        elif row.taxon:
            self.opened.emit(row.taxon)

    @Slot()
    def _on_selection_changed(self) -> None:
        taxa = self.chosen()
        self._compare.setEnabled(len(taxa) > 1)
        if len(taxa) > 1 and not self._restoring:
            self.several_chosen.emit(taxa)
