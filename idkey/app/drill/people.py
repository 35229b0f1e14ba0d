"""A supervisor's view: who stands where, how far people agree, what the key makes hard."""

from collections.abc import Sequence

from PySide6.QtCore import QItemSelectionModel, Qt, Signal, Slot
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from idkey.app.drill.now import Drill
from idkey.app.drill.plan import Everybody
from idkey.app.drill.words import share_words
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.columns import airy, filled
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import beside
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.table import TableColumn, TableModel
from idkey.app.parts.theme import Theme
from idkey.drill.observed import ObservedError
from idkey.drill.people import Standing
from idkey.drill.progress import Between
from idkey.model.key import Key
from idkey.report.language import Language
from idkey.report.names import character_name

HARDEST = 10
"""Characters shown that people misread most."""


class PeoplePage(QWidget):
    """Shows everybody who has drilled with the key.

    Args:
        desk: Look, drawings, language.

    Signals:
        person_chosen(name: str): The supervisor wants to see one person.
        attestation_asked(name: str): What that person has shown is wanted on paper.
    """

    person_chosen = Signal(str)
    attestation_asked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.said = caption(rank="soft")
        self.people = _Table(self.tr("Everybody who has practised"), desk.theme, chooses=True)
        self.agreements = _Table(self.tr("How far people agree"), desk.theme)
        self.observed = _Table(self.tr("What is misread how often"), desk.theme)
        self.look = KeyButton(self.tr("Look at this person"), "Enter", desk.theme)
        self.print = KeyButton(self.tr("Write the attestation"), "A", desk.theme)
        self.written = caption(rank="small", tone="accent")
        self._lay_out()
        for pressed in (self.look, self.print):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.look.clicked.connect(self._on_look_clicked)
        self.print.clicked.connect(self._on_print_clicked)
        self.people.activated.connect(self._on_look_clicked)

    @property
    def person(self) -> str:
        """The person in the current row; empty when there is none."""
        row = self.people.currentIndex().row()
        index = self.people.model().index(row, 0)
        return str(index.data() or "") if row >= 0 else ""

    def show_drill(self, drill: Drill) -> None:
        """Show who stands where, once it is added up."""
        self.written.setText(str(drill.written or ""))
        self.written.setVisible(drill.written is not None)
        found = drill.everybody
        if found is None:
            self.said.setText(self.tr("Adding up …"))
            return
        if not found.standings:
            self.said.setText(self.tr("Nobody has practised with this key yet."))
        else:
            self.said.setText(self.tr("With the key “{key}”.").format(key=drill.key.title))
        self._fill(found, drill.key)
        for part in (self.look, self.print):
            part.setEnabled(bool(found.standings) and not drill.busy)

    def focus_first(self) -> None:
        """Put the focus on the people."""
        self.people.setFocus(Qt.FocusReason.OtherFocusReason)

    def _fill(self, found: Everybody, key: Key) -> None:
        language = self._desk.language
        self.people.show_rows(found.standings, self._standing_columns(key, language))
        self.agreements.show_rows(found.agreements, self._agreement_columns(language))
        hard = sorted(found.observed, key=lambda one: -one.interval.share)[:HARDEST]
        self.observed.show_rows(hard, self._observed_columns(key, language))

    def _standing_columns(self, key: Key, language: Language) -> tuple[TableColumn[Standing], ...]:
        def weak(one: Standing) -> str:
            return "; ".join(character_name(key, w.name) for w in one.weakest) or "–"

        return (
            TableColumn(self.tr("Person"), lambda one: one.person),
            TableColumn(self.tr("Pictures"), lambda one: str(one.trials)),
            TableColumn(self.tr("Right"), lambda one: share_words(one.right, language)),
            TableColumn(self.tr("Pairs told apart"), lambda one: f"{one.shown} / {one.pairs}"),
            TableColumn(self.tr("Due"), lambda one: str(one.due)),
            TableColumn(self.tr("Last"), lambda one: one.last),
            TableColumn(self.tr("Weakest"), weak),
        )

    def _agreement_columns(self, language: Language) -> tuple[TableColumn[Between], ...]:
        def kappa(one: Between) -> str:
            k = one.kappa
            if k is None:
                return "–"
            limits = f"{k.low:.2f} – {k.high:.2f}".replace(".", language.decimal)
            return f"{k.kappa:.2f} ({limits})".replace(".", language.decimal)

        return (
            TableColumn(self.tr("Two people"), lambda one: f"{one.one}, {one.other}"),
            TableColumn(self.tr("Same pictures"), lambda one: str(one.pictures)),
            TableColumn(self.tr("Same answer"), lambda one: str(one.same)),
            TableColumn(self.tr("Kappa (Cohen)"), kappa),
        )

    def _observed_columns(
        self, key: Key, language: Language
    ) -> tuple[TableColumn[ObservedError], ...]:
        def mistake(one: ObservedError) -> str:
            if not one.mistakes:
                return "–"
            truth, said, count = one.mistakes[0]
            character = key.character[one.character]
            labels = {state.id: state.label for state in character.states}
            return f"{labels.get(truth, truth)} → {labels.get(said, said)} ({count})"

        def offered(one: ObservedError) -> str:
            return "–" if one.offered is None else language.share(one.offered)

        return (
            TableColumn(self.tr("Character"), lambda one: character_name(key, one.character)),
            TableColumn(self.tr("Answers"), lambda one: str(one.answers)),
            TableColumn(self.tr("Wrong"), lambda one: share_words(one.interval, language)),
            TableColumn(self.tr("The key says"), lambda one: language.share(one.now)),
            TableColumn(self.tr("Offered to the author"), offered),
            TableColumn(self.tr("Most often"), mistake),
        )

    def _lay_out(self) -> None:
        head = beside(self._desk.theme)
        head.setSpacing(10)
        head.addWidget(caption(self.tr("Everybody"), "title"), 1)
        head.addWidget(self.look)
        head.addWidget(self.print)
        column = QVBoxLayout()
        column.setSpacing(10)
        column.addLayout(head)
        column.addWidget(self.said)
        column.addWidget(self.written)
        column.addWidget(self.people)
        column.addSpacing(6)
        column.addWidget(caption(self.tr("How far people agree on the same pictures"), "strong"))
        column.addWidget(self.agreements)
        column.addSpacing(6)
        column.addWidget(caption(self.tr("What people misread, on drawings"), "strong"))
        column.addWidget(self.observed)
        column.addWidget(
            caption(
                self.tr(
                    "The author of the key can take an offered rate over in the workshop. The "
                    "first three answers of each person to a character are left out; an offer "
                    "takes 30 answers and leans towards the rate in the key."
                ),
                "small",
            )
        )
        column.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(filled(column)))

    @Slot()
    def _on_look_clicked(self) -> None:
        if self.person:
            self.person_chosen.emit(self.person)

    @Slot()
    def _on_print_clicked(self) -> None:
        if self.person:
            self.attestation_asked.emit(self.person)


class _Table(QTableView):
    """A table as high as its rows; the page scrolls, not the table.

    Args:
        name: What it shows, for readers that speak.
        theme: The look.
        chooses: Whether a row can be chosen.
    """

    def __init__(self, name: str, theme: Theme, *, chooses: bool = False) -> None:
        super().__init__()
        self._chooses = chooses
        self._rows: TableModel[object] = TableModel({int(Qt.ItemDataRole.DisplayRole): str})
        self.setModel(self._rows)
        self.setAccessibleName(name)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setAlternatingRowColors(False)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        mode = QAbstractItemView.SelectionMode
        self.setSelectionMode(mode.SingleSelection if chooses else mode.NoSelection)
        if not chooses:
            self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        airy(self, theme)
        self.setTabKeyNavigation(False)
        self.verticalHeader().hide()
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        header = self.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)

    def show_rows(self, rows: Sequence[object], columns: tuple[TableColumn, ...]) -> None:  # type: ignore[type-arg]
        """Show other rows, the current one kept where it still is there."""
        here = max(self.currentIndex().row(), 0)
        self._rows.replace(tuple(rows), columns)
        self.setVisible(bool(rows))
        if rows and self._chooses:
            index = self._rows.index(min(here, len(rows) - 1), 0)
            flags = QItemSelectionModel.SelectionFlag
            self.selectionModel().setCurrentIndex(index, flags.ClearAndSelect | flags.Rows)
        high = self.horizontalHeader().sizeHint().height() + self.verticalHeader().length()
        self.setFixedHeight(high + 8)
