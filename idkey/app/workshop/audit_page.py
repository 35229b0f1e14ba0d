"""The audit: every mistake and weakness of the key, filtered, with the way there."""

from PySide6.QtCore import QModelIndex, Qt, Slot
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListView,
    QVBoxLayout,
)

from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.app.parts.scrolling import scrolled
from idkey.app.workshop.audit_delegate import AuditDelegate
from idkey.app.workshop.audit_rows import AuditRow, Sort, Weight, audit_rows, counted, sort_title
from idkey.app.workshop.audit_words import audit_counts
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_live import LivePage
from idkey.app.workshop.state import WorkshopState


class AuditPage(LivePage):
    """Lists what was found; a click or Enter goes to the place.

    Args:
        state: The workshop.
        desk: Look, drawings, language.
    """

    def __init__(self, state: WorkshopState, desk: Desk) -> None:
        super().__init__(state)
        self._desk = desk
        self._all: tuple[AuditRow, ...] = ()
        self.counts = caption(rank="soft")
        self.sort = Choice(self.tr("Which to show"), desk.theme)
        self.words = QLineEdit()
        self.words.setAccessibleName(self.tr("Search what was found"))
        self.words.setPlaceholderText(self.tr("Search: taxon, character, file …"))
        self.words.setClearButtonEnabled(True)
        self.rows: RowsModel[AuditRow] = RowsModel(
            {int(Qt.ItemDataRole.DisplayRole): _spoken, int(Qt.ItemDataRole.ToolTipRole): _plain},
            parent=self,
        )
        self.list = self._made_list()
        self.nothing = caption(rank="soft")
        self.later = caption(
            self.tr("What is weak is looked for once there is no error left."), "small"
        )
        self.what = caption(rank="lead")
        self.place = caption(rank="soft")
        self.mend = caption()
        self.go = KeyButton(self.tr("Go there"), "Enter", desk.theme, "main")
        self.detail = scrolled(self._made_detail(), as_wide=True)
        self._lay_out()
        self.sort.currentIndexChanged.connect(self._on_filtered)
        self.words.textChanged.connect(self._on_filtered)
        self.list.selectionModel().currentChanged.connect(self._on_current_changed)
        self.list.activated.connect(self._on_go)
        self.go.clicked.connect(self._on_go)
        self.follow()

    def focus_first(self) -> None:
        """Put the focus on what was found."""
        target = self.list if self.rows.rows else self.words
        target.setFocus(Qt.FocusReason.OtherFocusReason)

    def draw(self, editing: Editing) -> None:
        """Show what is known now; while the key is being checked, what was found before."""
        if editing.checking and self._all:
            self.counts.setText(audit_counts(editing))
            return
        self._all = tuple(audit_rows(editing, self._desk.language))
        self.counts.setText(audit_counts(editing))
        self._offer(counted(editing))
        self._filter()

    def _offer(self, found: dict[Sort, int]) -> None:
        """Offer each sort there is, with how many there are."""
        held = self.sort.chosen
        items: list[tuple[str, object]] = [
            (self.tr("Everything ({n})").format(n=sum(found.values())), None)
        ]
        items += [
            (f"{sort_title(sort, self._desk.language)} ({n})", sort) for sort, n in found.items()
        ]
        self.sort.blockSignals(True)
        self.sort.offer(items)
        self.sort.choose(held)
        self.sort.blockSignals(False)

    def _filter(self) -> None:
        sort: Sort | None = self.sort.chosen
        words = self.words.text()
        shown = tuple(r for r in self._all if sort in (None, r.sort) and r.has(words))
        here = self.list.currentIndex().row()
        self.rows.replace(shown)
        self.list.setVisible(bool(shown))
        self.detail.setVisible(bool(shown))
        self.nothing.setVisible(not shown)
        self.later.setVisible(any(row.weight is Weight.ERROR for row in self._all))
        if shown:
            self.list.setCurrentIndex(self.rows.index(min(max(here, 0), len(shown) - 1)))
            self._show_detail()
        elif self._all:
            self.nothing.setText(self.tr("Nothing that was found has these words."))
        else:
            self.nothing.setText(self.tr("Nothing to mend: no mistakes, and no weakness known."))

    def _show_detail(self) -> None:
        row = self.list.currentIndex().data(ROW_ROLE)
        if row is not None:
            self.what.setText(row.what)
            self.place.setText(row.place)
            self.mend.setText(row.mend)

    def _made_list(self) -> QListView:
        view = QListView()
        view.setModel(self.rows)
        view.setUniformItemSizes(True)
        view.setMouseTracking(True)
        self._delegate = AuditDelegate(self._desk.theme)
        view.setItemDelegate(self._delegate)
        view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        view.setAccessibleName(self.tr("What was found"))
        return view

    def _made_detail(self) -> QFrame:
        card = QFrame()
        card.setProperty("pane", "card")
        column = QVBoxLayout(card)
        column.setContentsMargins(18, 16, 18, 16)
        column.setSpacing(8)
        for part in (self.what, self.place, caption(self.tr("What mends it"), "overline")):
            column.addWidget(part)
        column.addWidget(self.mend)
        column.addWidget(self.go, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        return card

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.setSpacing(10)
        head.addWidget(self.sort)
        head.addWidget(self.words, 1)
        body = QHBoxLayout()
        body.setSpacing(14)
        body.addWidget(self.list, 3)
        body.addWidget(self.detail, 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 4, 4)
        column.setSpacing(10)
        column.addWidget(self.counts)
        column.addLayout(head)
        column.addLayout(body, 1)
        for part in (self.nothing, self.later):
            column.addWidget(part)
        column.addStretch(0)

    @Slot()
    def _on_filtered(self) -> None:
        self._filter()

    @Slot(QModelIndex, QModelIndex)
    def _on_current_changed(self, _: QModelIndex, __: QModelIndex) -> None:
        self._show_detail()

    @Slot()
    def _on_go(self) -> None:
        row = self.list.currentIndex().data(ROW_ROLE)
        if row is not None:
            self.state.show_place(row.about)


def _spoken(row: AuditRow) -> str:
    return f"{row.what} {row.place}. {row.mend}"


def _plain(row: AuditRow) -> str:
    return row.what
