"""What the labels turn out to be: how often labels and suppliers are wrong, over time."""

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.columns import filled, scrolled
from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.plots import Bar, Bars, Trend
from idkey.app.parts.theme import Theme
from idkey.app.records.latest import Latest
from idkey.app.records.lot import LotPanel
from idkey.engine.intervals import wilson
from idkey.engine.labels import label_entry
from idkey.model.key import Key
from idkey.report.language import Language
from idkey.store.book import Store
from idkey.store.tallies import Period, Subject, Tally, tallies

MOST = 12
"""Labels and suppliers shown, those with most decided cases first."""

MONTHS = 12
"""Months shown, the latest ones."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """Wrong and decided cases: (name, wrong, decided) per label, supplier and month."""

    labels: tuple[tuple[str, int, int], ...]
    suppliers: tuple[tuple[str, int, int], ...]
    months: tuple[tuple[str, int, int], ...]


def rates(store: Store, keys: Mapping[str, Key]) -> Rates:
    """Count the verdicts of the book; labels are named as the keys have them."""
    spelled: dict[str, str] = {}
    found = [t for t in tallies(store, Subject.LABEL) if t.subject and t.decided]
    for one in found:
        entries = (label_entry(key, one.subject) for key in keys.values())
        entry = next((entry for entry in entries if entry is not None), None)
        spelled[one.subject] = entry.text if entry else one.subject
    months: dict[str, list[int]] = {}
    for one in tallies(store, Subject.LABEL, period=Period.MONTH):
        if one.decided:
            counted = months.setdefault(one.period, [0, 0])
            counted[0] += _wrong(one)
            counted[1] += one.decided
    suppliers = [t for t in tallies(store, Subject.SUPPLIER) if t.decided]
    return Rates(
        labels=_most([(spelled[t.subject], _wrong(t), t.decided) for t in found]),
        suppliers=_most([(t.subject, _wrong(t), t.decided) for t in suppliers]),
        months=tuple((month, w, n) for month, (w, n) in sorted(months.items()))[-MONTHS:],
    )


def _wrong(one: Tally) -> int:
    return one.kinds.get("contradicted", 0)


def _most(rows: list[tuple[str, int, int]]) -> tuple[tuple[str, int, int], ...]:
    return tuple(sorted(rows, key=lambda row: (-row[2], row[0]))[:MOST])


class RatesPage(QWidget):
    """Shows the rates, and the lot check beside them.

    Args:
        store: The record book.
        keys: The keys, for the names of labels.
        theme: The look.
        language: Language of the numbers.
        jobs: Where it is counted.
    """

    def __init__(
        self,
        store: Store,
        keys: Mapping[str, Key],
        *,
        theme: Theme,
        language: Language,
        jobs: Jobs,
    ) -> None:
        super().__init__()
        self._store = store
        self._keys = keys
        self._latest = Latest(jobs, self)
        self.said = caption(rank="soft")
        self.labels = Bars(self.tr("Share of contradicted labels, by label"), theme)
        self.suppliers = Bars(self.tr("Share of contradicted labels, by supplier"), theme)
        self.months = Trend(self.tr("Share of contradicted labels, by month"), theme)
        self.lot = LotPanel(theme, language, jobs)
        self._cards: list[QFrame] = []
        self._lay_out()
        self._latest.answered.connect(self._on_answered)
        self._latest.failed.connect(self._on_failed)

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._latest.busy or self.lot.busy

    def refresh(self) -> None:
        """Count again."""
        store, keys = self._store, self._keys

        def work(_: Tick) -> Rates:  # on a pool thread
            return rates(store, keys)

        self._latest.ask(work)

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(12)
        left.addWidget(self.said)
        for title, plot in (
            (self.tr("By label"), self.labels),
            (self.tr("By supplier"), self.suppliers),
            (self.tr("By month of arrival"), self.months),
        ):
            left.addWidget(self._card(title, plot))
        left.addStretch(1)
        right = QVBoxLayout()
        right.addWidget(self.lot)
        right.addStretch(1)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(16)
        row.addLayout(left, 3)
        row.addLayout(right, 2)
        column = QVBoxLayout()
        column.addLayout(row)
        column.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(filled(column)))

    def _card(self, title: str, plot: QWidget) -> QFrame:
        card = QFrame()
        card.setProperty("pane", "card")
        column = QVBoxLayout(card)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(8)
        column.addWidget(caption(title, "strong"))
        column.addWidget(plot)
        card.hide()
        self._cards.append(card)
        return card

    @Slot(object)
    def _on_answered(self, found: Rates) -> None:
        self.labels.show_bars([self._bar(*row) for row in found.labels])
        self.suppliers.show_bars([self._bar(*row) for row in found.suppliers])
        self.months.show_points([self._bar(*row) for row in found.months])
        rows = (found.labels, found.suppliers, found.months)
        for card, some in zip(self._cards, rows, strict=True):
            card.setVisible(bool(some))
        decided = sum(row[2] for row in found.suppliers)
        if not decided:
            self.said.setText(
                self.tr("No case has a verdict on its label yet; here they will be counted.")
            )
            return
        self.said.setText(
            self.tr(
                "Share of animals whose label was contradicted, among those whose verdict says "
                "whether the label was right. Lines are 95 % intervals (Wilson): a long line "
                "means too few animals to blame anybody. Animals that were checked because they "
                "looked wrong push a rate up."
            )
        )

    def _bar(self, name: str, wrong: int, decided: int) -> Bar:
        counts = self.tr("{wrong} of {n}").format(wrong=wrong, n=decided)
        return Bar(name=name or self.tr("not told"), counts=counts, interval=wilson(wrong, decided))

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        told = message_for(error)
        self.said.setText(f"{told.problem} {told.remedy}")
