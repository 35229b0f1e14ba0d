"""The records: cases, rates, and what a new version of a key changes."""

from collections.abc import Mapping
from enum import StrEnum

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.jobs import Jobs
from idkey.app.parts.segments import Segments
from idkey.app.parts.theme import Theme
from idkey.app.records.again import AgainPage
from idkey.app.records.cases import CasesPage
from idkey.app.records.deeds import RecordsDeeds
from idkey.app.records.rates import RatesPage
from idkey.app.records.sales import Sales
from idkey.app.records.till import TillPage
from idkey.app.records.till_watch import TillWatch
from idkey.app.records.work import Shelf
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.store.book import Store


class Part(StrEnum):
    """A page of the records."""

    CASES = "cases"
    RATES = "rates"
    AGAIN = "again"
    TILL = "till"


class RecordsView(QWidget):
    """The records. Call `refresh` when they come into sight, and `close_work` before the end.

    Args:
        store: The record book.
        keys: The keys at hand.
        theme: The look.
        parent: Owner.
        language: Language of what is written and of the fixed words.

    Signals:
        opened(case_id: str): Open this case at the bench.
        blind(first: str, second: str): Open the case `second` at the bench, and put `first` away:
            the same animal is determined again, blind.
    """

    opened = Signal(str)
    blind = Signal(str, str)

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
        shelf = Shelf(store, keys)
        self._jobs = Jobs(threads=1, parent=self)
        self.cases = CasesPage(shelf, theme, language=language, jobs=self._jobs)
        self.rates = RatesPage(store, keys, theme=theme, language=language, jobs=self._jobs)
        self.again = AgainPage(shelf, self.deeds, theme, language=language, jobs=self._jobs)
        self.watch = TillWatch(shelf, language, self)
        self.till = TillPage(Sales(shelf), self.watch, theme, language=language, jobs=self._jobs)
        self._pages: dict[Part, CasesPage | RatesPage | AgainPage | TillPage] = {
            Part.CASES: self.cases,
            Part.RATES: self.rates,
            Part.AGAIN: self.again,
            Part.TILL: self.till,
        }
        self.parts = Segments(self.tr("Part of the records"), Part, self._part_title)
        self.stack = QStackedWidget()
        self._lay_out()
        self.parts.chosen.connect(self._on_part_chosen)
        self.cases.opened.connect(self.opened)
        self.cases.blind.connect(self.blind)
        self.again.case_asked.connect(self._on_case_asked)
        self.watch.resume()

    @property
    def deeds(self) -> RecordsDeeds:
        """What is done with cases; has the folder of rationales and the owner of archives."""
        return self.cases.deeds

    @property
    def busy(self) -> bool:
        """Whether an answer or a document is still to come."""
        return self._jobs.busy or any(page.busy for page in self._pages.values())

    def refresh(self) -> None:
        """Look again what the book holds."""
        for page in self._pages.values():
            page.refresh()

    def focus_first(self) -> None:
        """Put the focus where one searches."""
        self._turn_to(Part.CASES)
        self.cases.focus_first()

    def close_work(self) -> bool:
        """Stop what is under way; False when it did not leave in time."""
        left = [self.again.close_work(), self.watch.close(), self._jobs.close()]
        return all(left)

    def _part_title(self, part: Part) -> str:
        return {
            Part.CASES: self.tr("Cases"),
            Part.RATES: self.tr("Rates"),
            Part.AGAIN: self.tr("New key version"),
            Part.TILL: self.tr("Sales"),
        }[part]

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(caption(self.tr("Records"), "title", wraps=False))
        head.addStretch(1)
        head.addWidget(self.parts)
        for page in self._pages.values():
            self.stack.addWidget(page)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 16)
        column.setSpacing(12)
        column.addLayout(head)
        column.addWidget(self.stack, 1)

    def _turn_to(self, part: Part) -> None:
        self.parts.set_value(part)
        self.stack.setCurrentWidget(self._pages[part])

    @Slot(object)
    def _on_part_chosen(self, part: Part) -> None:
        self.stack.setCurrentWidget(self._pages[part])
        self._pages[part].refresh()

    @Slot(str)
    def _on_case_asked(self, case_id: str) -> None:
        self._turn_to(Part.CASES)
        self.cases.look_at(case_id)
