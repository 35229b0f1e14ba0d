"""Looking up cases: the search, the list, the chosen case, and what is done with it."""

from collections.abc import Callable

from PySide6.QtCore import QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.theme import Theme
from idkey.app.records import opinion_part, permit_part
from idkey.app.records.asks import CaseAsks
from idkey.app.records.case import Deed, RecordsCase
from idkey.app.records.deeds import RecordsDeeds
from idkey.app.records.latest import Latest
from idkey.app.records.list import RecordsList
from idkey.app.records.page import case_page
from idkey.app.records.search import MOST, RecordsSearch
from idkey.app.records.work import Detail, Shelf
from idkey.report.language import Language
from idkey.store.record import CaseRow, Query


class CasesPage(QWidget):
    """The recorded cases.

    Args:
        shelf: Cases and keys.
        theme: The look.
        language: Language of what is written and of the fixed words.
        jobs: Where the work is done.

    Signals:
        opened(case_id: str): Open this case at the bench.
        blind(first: str, second: str): A blind determination of the animal of the case `first`
            was begun as the case `second`.
    """

    opened = Signal(str)
    blind = Signal(str, str)

    def __init__(self, shelf: Shelf, theme: Theme, *, language: Language, jobs: Jobs) -> None:
        super().__init__()
        self._shelf, self._theme, self._language = shelf, theme, language
        self._detail: Detail | None = None
        self._shown: frozenset[str] = frozenset()
        self._warned, self._preferred = False, ""
        self.deeds = RecordsDeeds(shelf, language, jobs, self)
        self._finding, self._reading = Latest(jobs, self), Latest(jobs, self)
        self._asks = CaseAsks(self.deeds, theme, language=language, jobs=jobs, parent=self)
        self.search = RecordsSearch(theme, language)
        self.list = RecordsList(theme, language)
        self.said = caption(rank="small")
        self.case = RecordsCase(theme)
        self._lay_out()
        self._connect()
        self._allow()

    @property
    def busy(self) -> bool:
        """Whether an answer or a document is still to come."""
        parts = (self.deeds, self._asks, self._finding, self._reading)
        return any(part.busy for part in parts)

    def refresh(self) -> None:
        """Look again what the book holds."""
        self._on_asked()
        self._read()

    def focus_first(self) -> None:
        """Put the focus where one searches."""
        self.search.words.setFocus(Qt.FocusReason.OtherFocusReason)
        self.search.words.selectAll()

    def prefer(self, case_id: str) -> None:
        """Let this case be the chosen one with the next answer, where it is among the cases."""
        self._preferred = case_id

    def look_at(self, case_id: str) -> None:
        """Look for one case by its id."""
        self.search.words.setText(case_id)

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(8)
        for part in (self.search, self.said):
            left.addWidget(part)
        left.addWidget(self.list, 1)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(16)
        row.addLayout(left, 11)
        row.addWidget(self.case, 8)

    def _connect(self) -> None:
        find = QShortcut(QKeySequence("Alt+F"), self)
        find.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        find.activated.connect(self.focus_first)
        self.search.asked.connect(self._on_asked)
        self.list.chosen.connect(self._on_chosen)
        self.list.activated.connect(self._on_activated)
        self.case.wanted.connect(self._on_wanted)
        self.case.linked.connect(self._on_linked)
        self.deeds.started.connect(self._on_started)
        self.deeds.done.connect(self._on_done)
        self.deeds.begun.connect(self.blind)
        self.deeds.ended.connect(self._on_ended)
        self._finding.answered.connect(self._on_found)
        self._reading.answered.connect(self._on_read)
        self._asks.said.connect(self.case.say)
        for one in (self.deeds, self._asks, self._finding, self._reading):
            one.failed.connect(self._on_failed)

    @property
    def _read_case(self) -> str:
        """Id of the case that is shown; empty for none."""
        return self._detail.stored.case.id if self._detail else ""

    def _allow(self) -> None:
        self.case.allow(case=self._read_case == self.list.current != "", busy=self.deeds.busy)

    def _read(self) -> None:
        """Read the current case."""
        case_id, shelf = self.list.current, self._shelf
        if not case_id:
            self._reading.drop()
            self._detail = None
            self.case.show_page("")
            return

        self._reading.ask(lambda _: shelf.read(case_id))

    def _show(self) -> None:
        if self._detail is not None:
            self.case.show_page(case_page(self._detail, self._language, shown=self._shown))

    def _write_again(self, found: Detail) -> None:
        if found.moved_on and not self._warned:
            self._warned = True
            self.case.say(
                self.tr(
                    "The key has changed since this case was judged. Press again to judge it "
                    "with the key in hand; that adds a revision, and nothing is overwritten."
                )
            )
            return
        self.deeds.write_again(found.stored.case.id)

    @Slot()
    def _on_asked(self) -> None:
        query, store = self.search.query, self._shelf.store

        def work(_: Tick) -> tuple[CaseRow, ...]:  # on a pool thread
            return store.search(query)

        self._finding.ask(work)

    @Slot(object)
    def _on_found(self, cases: tuple[CaseRow, ...]) -> None:
        self.list.show_cases(cases)
        preferred, self._preferred = self._preferred, ""
        self.list.look_at(preferred)
        if len(cases) >= MOST:
            text = self.tr("The {n} cases worked on last; add a word to see others.")
        elif cases:
            text = self.tr("{n} cases, the one worked on last on top.")
        elif self.search.query == Query(limit=MOST):
            text = self.tr("No case is recorded yet; what is looked at on the bench appears here.")
        else:
            text = self.tr("No case has that. Try fewer words, or only the beginnings of words.")
        one = self.tr("One case.")
        self.said.setText(one if len(cases) == 1 else text.format(n=len(cases)))

    @Slot()
    def _on_chosen(self) -> None:
        self._allow()
        if self._read_case == self.list.current:
            return
        self._warned, self._shown = False, frozenset()
        if not self.deeds.busy:
            self.case.say("")
        self._read()

    @Slot(object)
    def _on_read(self, found: Detail) -> None:
        self._detail = found
        self._allow()
        self._show()

    @Slot(QModelIndex)
    def _on_activated(self, _: QModelIndex) -> None:
        self._on_wanted(Deed.OPEN)

    @Slot(object)
    def _on_wanted(self, deed: Deed) -> None:
        if deed is Deed.ERASE:
            self._asks.buyer(self._detail)
        elif self._detail is not None and self._read_case == self.list.current:
            self._slots()[deed](self._detail)

    def _slots(self) -> dict[Deed, Callable[[Detail], None]]:
        asks = self._asks
        return {
            Deed.OPEN: lambda found: self.opened.emit(found.stored.case.id),
            Deed.WRITE: self._write_again,
            Deed.LABEL: lambda _: asks.label(self._chosen),
            Deed.PAPERS: asks.papers,
            Deed.COPY: lambda found: self.deeds.copy_text(found.stored.case.id),
            Deed.SALE: asks.sale,
            Deed.OPINION: asks.opinion,
            Deed.EXPORT: lambda _: asks.archive(self._chosen),
        }

    @property
    def _chosen(self) -> tuple[str, ...]:
        return self.list.selected or (self.list.current,)

    @Slot(str, str)
    def _on_linked(self, kind: str, name: str) -> None:
        if kind == permit_part.FILL:
            self._on_wanted(Deed.PAPERS)
        elif kind == opinion_part.CASE:
            self.look_at(name)
        elif kind == opinion_part.COMPARE:
            self._shown |= {name}
            self._show()

    @Slot()
    def _on_started(self) -> None:
        self.case.say(self.tr("Writing …"))
        self._allow()

    @Slot(str)
    def _on_done(self, said: str) -> None:
        self.case.say(said)
        self._warned = False

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.case.show_message(message_for(error))

    @Slot()
    def _on_ended(self) -> None:
        self._allow()
        self.refresh()
