"""The records: look up cases, read their history, hand on what they say."""

from collections.abc import Mapping
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QModelIndex, Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.segments import Segments
from idkey.app.parts.theme import Theme
from idkey.app.records.case import Deed, RecordsCase
from idkey.app.records.deeds import RecordsDeeds
from idkey.app.records.dialogs import EraseDialog, SaleDialog
from idkey.app.records.latest import Latest
from idkey.app.records.list import RecordsList
from idkey.app.records.page import case_page
from idkey.app.records.rates import RatesPage
from idkey.app.records.search import MOST, RecordsSearch
from idkey.app.records.work import Detail, Shelf
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.store.book import Store
from idkey.store.record import CaseRow, Query, Sale


class Part(StrEnum):
    """A page of the records."""

    CASES = "cases"
    RATES = "rates"


class RecordsView(QWidget):
    """The records. Call `refresh` when they come into sight, and `close_work` before the end.

    Args:
        store: The record book.
        keys: The keys at hand.
        theme: The look.
        parent: Owner.
        language: Language of what is written and of the fixed words.

    Attributes:
        deeds: What is done with cases; has the folder of rationales, label stock and owner.

    Signals:
        opened(case_id: str): Open this case at the bench.
    """

    opened = Signal(str)

    def __init__(
        self,
        store: Store,
        keys: Mapping[str, Key],
        theme: Theme,
        parent: QWidget | None = None,
        *,
        language: Language = ENGLISH,
    ) -> None:
        super().__init__(parent)
        self._store, self._theme, self._language = store, theme, language
        self._shelf = Shelf(store, keys)
        self._detail: Detail | None = None
        self._to_sell = ""
        self._moved_on = self._warned = False
        self._jobs = Jobs(threads=1, parent=self)
        self.deeds = RecordsDeeds(self._shelf, language, self._jobs, self)
        self._finding, self._reading = Latest(self._jobs, self), Latest(self._jobs, self)
        self.search = RecordsSearch(theme, language)
        self.list = RecordsList(theme, language)
        self.said = caption(rank="small")
        self.case = RecordsCase(theme)
        self.rates = RatesPage(store, keys, theme=theme, language=language, jobs=self._jobs)
        self.parts = Segments(self.tr("Part of the records"), Part, self._part_title)
        self.stack = QStackedWidget()
        self._lay_out()
        self._connect()
        self._allow()

    @property
    def busy(self) -> bool:
        """Whether an answer or a document is still to come."""
        waits = (self._finding.busy, self._reading.busy, self.rates.busy, self._jobs.busy)
        return self.deeds.busy or any(waits)

    def refresh(self) -> None:
        """Look again what the book holds."""
        self._on_asked()
        self.rates.refresh()
        self._read()

    def focus_first(self) -> None:
        """Put the focus where one searches."""
        self.parts.set_value(Part.CASES)
        self.stack.setCurrentIndex(0)
        self.search.words.setFocus(Qt.FocusReason.OtherFocusReason)
        self.search.words.selectAll()

    def close_work(self) -> bool:
        """Stop what is under way; False when it did not leave in time."""
        return self._jobs.close()

    def _write_again(self) -> None:
        if self._moved_on and not self._warned:
            self._warned = True
            self.case.say(
                self.tr(
                    "The key has changed since this case was judged. Press again to judge it "
                    "with the key in hand; that adds a revision, and nothing is overwritten."
                )
            )
            return
        self.deeds.write_again(self.list.current)

    def _part_title(self, part: Part) -> str:
        rates = self.tr("What the labels turn out to be")
        return rates if part is Part.RATES else self.tr("Cases")

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(caption(self.tr("Records"), "title", wraps=False))
        head.addStretch(1)
        head.addWidget(self.parts)
        left = QVBoxLayout()
        left.setSpacing(8)
        for part in (self.search, self.said):
            left.addWidget(part)
        left.addWidget(self.list, 1)
        page = QWidget()
        row = QHBoxLayout(page)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(16)
        row.addLayout(left, 11)
        row.addWidget(self.case, 8)
        for widget in (page, self.rates):
            self.stack.addWidget(widget)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 16)
        column.setSpacing(12)
        column.addLayout(head)
        column.addWidget(self.stack, 1)

    def _connect(self) -> None:
        find = QShortcut(QKeySequence("Alt+F"), self)
        find.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        find.activated.connect(self.focus_first)
        self.search.asked.connect(self._on_asked)
        self.list.chosen.connect(self._on_chosen)
        self.list.activated.connect(self._on_activated)
        self.case.wanted.connect(self._on_wanted)
        self.parts.chosen.connect(self._on_part_chosen)
        self.deeds.started.connect(self._on_started)
        self.deeds.done.connect(self._on_done)
        self.deeds.failed.connect(self._on_failed)
        self.deeds.ended.connect(self._on_ended)
        self._finding.answered.connect(self._on_found)
        self._finding.failed.connect(self._on_failed)
        self._reading.answered.connect(self._on_read)
        self._reading.failed.connect(self._on_failed)

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

    def _ask_sale(self) -> None:
        price = self._detail.stored.case.claim.price if self._detail else ""
        self._to_sell = self.list.current
        dialog = SaleDialog(price, self._theme, self)
        dialog.told.connect(self._on_sale_told)
        dialog.open()

    def _ask_buyer(self) -> None:
        sales = self._detail.sales if self._detail else ()
        buyers = [sale.buyer for sale in sales if sale.buyer]
        dialog = EraseDialog(buyers[-1] if buyers else "", self._theme, self)
        dialog.told.connect(self._on_buyer_told)
        dialog.open()

    def _file(self, name: str, kind: str) -> Path | None:
        title = self.tr("Where to write")
        start = str(self.deeds.folder.parent / name)
        chosen, _ = QFileDialog.getSaveFileName(self, title, start, kind)
        return Path(chosen) if chosen else None

    @Slot()
    def _on_asked(self) -> None:
        query, store = self.search.query, self._store

        def work(_: Tick) -> tuple[CaseRow, ...]:  # on a pool thread
            return store.search(query)

        self._finding.ask(work)

    @Slot(object)
    def _on_found(self, cases: tuple[CaseRow, ...]) -> None:
        self.list.show_cases(cases)
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
        self._warned = False
        if not self.deeds.busy:
            self.case.say("")
        self._read()

    @Slot(object)
    def _on_read(self, found: tuple[Detail, bool]) -> None:
        self._detail, self._moved_on = found
        self._allow()
        self.case.show_page(case_page(found[0], self._language, moved_on=found[1]))

    @Slot(QModelIndex)
    def _on_activated(self, _: QModelIndex) -> None:
        self._on_wanted(Deed.OPEN)

    @Slot(object)
    def _on_wanted(self, deed: Deed) -> None:
        if deed is Deed.OPEN:
            self.opened.emit(self.list.current)
        elif deed is Deed.WRITE:
            self._write_again()
        elif deed is Deed.SALE:
            self._ask_sale()
        elif deed is Deed.ERASE:
            self._ask_buyer()
        elif deed is Deed.LABEL:
            if file := self._file(f"label-{self.list.current[:8]}.pdf", "PDF (*.pdf)"):
                self.deeds.write_label(self.list.current, file)
        elif file := self._file("cases-darwin-core.zip", "Darwin Core Archive (*.zip)"):
            self.deeds.export(self.list.selected or (self.list.current,), file)

    @Slot(object)
    def _on_sale_told(self, sale: Sale) -> None:
        self.deeds.attach(self._to_sell, sale)

    @Slot(str)
    def _on_buyer_told(self, buyer: str) -> None:
        self.deeds.erase(buyer)

    @Slot(object)
    def _on_part_chosen(self, part: Part) -> None:
        self.stack.setCurrentIndex(list(Part).index(part))
        if part is Part.RATES:
            self.rates.refresh()

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
        self._on_asked()
        self._read()
