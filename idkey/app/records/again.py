"""After a new key version: run all cases again, see what changes, issue anew one by one."""

from html import escape

from PySide6.QtCore import QItemSelection, Qt, Signal, Slot
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QHeaderView,
    QProgressBar,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from idkey.app.parts.captions import button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.jobs import Jobs
from idkey.app.parts.messages import message_for
from idkey.app.parts.prose import bullets, head, paragraph
from idkey.app.parts.sheet import prose_page
from idkey.app.parts.table import TableColumn, TableModel
from idkey.app.parts.theme import Theme
from idkey.app.records.deeds import RecordsDeeds
from idkey.app.records.latest import Latest
from idkey.app.records.list import as_rows
from idkey.app.records.page import kind_words
from idkey.app.records.rerun import Altered, Rerun, RerunState
from idkey.app.records.work import Shelf
from idkey.report.language import Language


class AgainPage(QWidget):
    """Runs the cases of a key again. Nothing in the book changes until a case is issued anew.

    Args:
        shelf: Cases and keys.
        deeds: Issues cases anew.
        theme: The look.
        language: Language of verdicts and reasons.
        jobs: Where cases are counted.

    Signals:
        case_asked(case_id: str): Show this case among the records.
    """

    case_asked = Signal(str)

    def __init__(
        self, shelf: Shelf, deeds: RecordsDeeds, theme: Theme, *, language: Language, jobs: Jobs
    ) -> None:
        super().__init__()
        self._shelf, self._deeds, self._language = shelf, deeds, language
        self._issuing = ""
        self.state = RerunState(shelf, language, self)
        self._counting = Latest(jobs, self)
        self.key = Choice(self.tr("Key"), theme)
        self.run = button(self.tr("Run all cases again"), "main")
        self.stop = button(self.tr("Stop"))
        self.bar = QProgressBar()
        self.bar.setAccessibleName(self.tr("Cases looked at"))
        self.said = caption(rank="soft")
        self.table = QTableView()
        self._model: TableModel[Altered] = TableModel(
            {int(Qt.ItemDataRole.DisplayRole): str}, self.table
        )
        self.table.setModel(self._model)
        as_rows(self.table, theme)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setAccessibleName(self.tr("Cases that come out otherwise"))
        self.page = prose_page(self.tr("What changes, and why"), theme)
        self.issue = button(self.tr("Issue anew …"))
        self.look = button(self.tr("Show the case"))
        self.done = caption(rank="soft")
        self._lay_out(theme)
        self._connect()
        self._show()

    @property
    def busy(self) -> bool:
        """Whether a count or a run is still under way."""
        return self._counting.busy or self.state.running

    @property
    def current(self) -> Altered | None:
        """The chosen case."""
        row = self.table.currentIndex().row()
        rows = self.state.result.altered if self.state.result else ()
        return rows[row] if 0 <= row < len(rows) else None

    def refresh(self) -> None:
        """Count again which keys have cases."""
        shelf = self._shelf
        self._counting.ask(lambda _: shelf.counted_keys())

    def close_work(self) -> bool:
        """Stop what is under way; False when it did not leave in time."""
        return self.state.close()

    def _columns(self) -> tuple[TableColumn[Altered], ...]:
        def verdict(kind: str, name: str) -> str:
            return ": ".join(part for part in (kind_words(kind, self._language), name) if part)

        def label(one: Altered) -> str:
            sign = "✓ " if one.stored.case.id in self.state.issued else ""
            return sign + (one.stored.case.claim.text or one.stored.case.id[:8])

        return (
            TableColumn(self.tr("Label"), label),
            TableColumn(self.tr("Was"), lambda one: verdict(one.before.kind, one.before.name)),
            TableColumn(self.tr("Would be"), lambda one: verdict(one.after.kind, one.after.name)),
        )

    def _lay_out(self, theme: Theme) -> None:
        top = QHBoxLayout()
        top.setSpacing(8)
        for part, stretch in ((self.key, 2), (self.run, 0), (self.bar, 2), (self.stop, 0)):
            top.addWidget(part, stretch)
        foot = QHBoxLayout()
        for part in (self.issue, self.look):
            foot.addWidget(part)
        foot.addStretch(1)
        card = QFrame()
        card.setProperty("pane", "card")
        side = QVBoxLayout(card)
        side.setContentsMargins(12, 10, 12, 12)
        side.addWidget(self.page, 1)
        side.addWidget(self.done)
        side.addLayout(foot)
        row = QHBoxLayout()
        row.setSpacing(16)
        row.addWidget(self.table, 11)
        row.addWidget(card, 8)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(caption(self.tr("After a new key version"), "lead"))
        column.addWidget(
            caption(
                self.tr(
                    "Judges every recorded case with the key as it is now and lists those that "
                    "come out otherwise. Nothing in the book changes by that: a case is issued "
                    "anew only when you say so."
                ),
                "soft",
            )
        )
        column.addLayout(top)
        column.addWidget(self.said)
        column.addLayout(row, 1)

    def _connect(self) -> None:
        self.run.clicked.connect(self._on_run_clicked)
        self.stop.clicked.connect(self.state.stop)
        self.issue.clicked.connect(self._on_issue_clicked)
        self.look.clicked.connect(self._on_look_clicked)
        self.table.selectionModel().selectionChanged.connect(self._on_selection_changed)
        self.state.changed.connect(self._show)
        self.state.progressed.connect(self._on_progressed)
        self.state.failed.connect(self._on_failed)
        self._counting.answered.connect(self._on_counted)
        self._counting.failed.connect(self._on_failed)
        self._deeds.done.connect(self._on_deed_done)
        self._deeds.failed.connect(self._on_deed_failed)

    def _show_current(self) -> None:
        one = self.current
        issued = one is not None and one.stored.case.id in self.state.issued
        self.issue.setEnabled(one is not None and not issued and not self._issuing)
        self.look.setEnabled(one is not None)
        if one is None:
            self.page.setHtml("")
            return
        case = one.stored.case
        facts = " · ".join(p for p in (case.claim.supplier, case.claim.date, case.id[:8]) if p)
        html = head(self._language.quote(case.claim.text) if case.claim.text else case.id[:8])
        html += paragraph(escape(facts), "soft")
        html += head(self.tr("What changes")) + bullets(map(escape, one.changes))
        html += head(self.tr("Why")) + bullets(map(escape, one.reasons))
        if issued:
            html += paragraph(escape(self.tr("✓ Issued anew with the key in hand.")))
        self.page.setHtml(f"<body>{html}</body>")

    def _result_words(self, found: Rerun) -> str:
        if found.done < found.total:
            said = self.tr("Stopped after {done} of {n} cases; {changed} come out otherwise.")
        elif not found.altered:
            said = self.tr("All {n} cases come out as they were.")
        else:
            said = self.tr("{changed} of {n} cases come out otherwise.")
        return said.format(done=found.done, n=found.total, changed=len(found.altered))

    @Slot()
    def _show(self) -> None:
        running, found = self.state.running, self.state.result
        self.key.setEnabled(not running)
        self.run.setEnabled(not running and self.key.count() > 0)
        self.stop.setVisible(running)
        self.bar.setVisible(running)
        if running:
            self.bar.setRange(0, 0)
            self.said.setText(self.tr("Running …"))
        elif found is not None:
            self.said.setText(self._result_words(found))
        here = self.table.currentIndex().row()
        rows = found.altered if found is not None and not running else ()
        self._model.replace(rows, self._columns())
        self.table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        if rows:
            self.table.selectRow(min(max(here, 0), len(rows) - 1))
        self._show_current()

    @Slot(object)
    def _on_counted(self, counted: tuple[tuple[str, str, int], ...]) -> None:
        here = self.key.chosen
        one, many = self.tr("{title}: one case"), self.tr("{title}: {n} cases")
        self.key.offer(
            ((one if n == 1 else many).format(title=title, n=n), name) for name, title, n in counted
        )
        self.key.choose(here)
        if not counted:
            self.said.setText(self.tr("No case is recorded yet with a key that is at hand."))
        self.run.setEnabled(bool(counted) and not self.state.running)

    @Slot(int, int)
    def _on_progressed(self, done: int, total: int) -> None:
        self.bar.setRange(0, total)
        self.bar.setValue(done)
        self.said.setText(self.tr("{done} of {n} cases").format(done=done, n=total))

    @Slot(QItemSelection, QItemSelection)
    def _on_selection_changed(self, _: QItemSelection, __: QItemSelection) -> None:
        self.done.setText("")
        self._show_current()

    @Slot()
    def _on_run_clicked(self) -> None:
        self.done.setText("")
        self.state.start(str(self.key.chosen))

    @Slot()
    def _on_look_clicked(self) -> None:
        if self.current is not None:
            self.case_asked.emit(self.current.stored.case.id)

    @Slot()
    def _on_issue_clicked(self) -> None:
        """Ask once more, then write a new revision and a new rationale."""
        one = self.current
        if one is None or self._deeds.busy:
            return
        if self.issue.property("asked") != one.stored.case.id:
            self.issue.setProperty("asked", one.stored.case.id)
            self.done.setText(
                self.tr(
                    "Press again to add a revision with the new verdict and to write a new "
                    "rationale. The earlier revision and document stay in the record."
                )
            )
            return
        self._issuing = one.stored.case.id
        self._show_current()
        self._deeds.write_again(self._issuing)

    @Slot(str)
    def _on_deed_done(self, said: str) -> None:
        case_id, self._issuing = self._issuing, ""
        if case_id:
            self.state.note_issued(case_id)
            self.done.setText(said)

    @Slot(object)
    def _on_deed_failed(self, error: Exception) -> None:
        if self._issuing:
            self._issuing = ""
            self._show_current()
            self.done.setText(message_for(error).text)

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.said.setText(message_for(error).text)
