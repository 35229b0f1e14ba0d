"""What the labels turn out to be: how often labels and suppliers are wrong, over time."""

from collections.abc import Mapping
from pathlib import Path

from PySide6.QtCore import QDate, Qt, Slot
from PySide6.QtWidgets import QApplication, QFileDialog, QFrame, QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.columns import filled
from idkey.app.parts.fitting import beside
from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.app.parts.plots import Bar, Bars, Trend
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.theme import Theme
from idkey.app.records.agreement_panel import AgreementPanel
from idkey.app.records.counted import Course, Rates, label_names, rates
from idkey.app.records.csv_file import write_csv
from idkey.app.records.latest import Latest
from idkey.app.records.lot import LotPanel
from idkey.app.records.plot_paper import PaperLook, Plot, write_plots
from idkey.engine.intervals import wilson
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.language import Language
from idkey.store.book import Store
from idkey.store.rates_table import rates_table
from idkey.store.tallies import Subject, tallies


class RatesPage(QWidget):
    """Shows the rates, how far second opinions agree, and the lot check beside them.

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
        self._counted: Rates | None = None
        self._latest, self._writing = Latest(jobs, self), Latest(jobs, self)
        self.said = caption(rank="soft")
        self._theme = theme
        self.labels, self.suppliers, self.months = self._plots(theme)
        self.whose = Choice(self.tr("Whose months"), theme)
        self.whose.setMinimumContentsLength(22)
        self.whose.setSizeAdjustPolicy(
            Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.table = button(self.tr("Export table …"))
        self.plots = button(self.tr("Export plots …"))
        self.done = caption(rank="small")
        self.lot = LotPanel(theme, language, jobs)
        self.agreement = AgreementPanel(language)
        self._cards: list[QFrame] = []
        self._lay_out()
        self.whose.currentIndexChanged.connect(self._on_whose_changed)
        self.table.clicked.connect(self._on_table_clicked)
        self.plots.clicked.connect(self._on_plots_clicked)
        self._latest.answered.connect(self._on_answered)
        self._latest.failed.connect(self._on_failed)
        self._writing.answered.connect(self._on_written)
        self._writing.failed.connect(self._on_writing_failed)

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._latest.busy or self._writing.busy or self.lot.busy

    def refresh(self) -> None:
        """Count again."""
        store, keys = self._store, self._keys

        def work(_: Tick) -> Rates:  # on a pool thread
            return rates(store, keys)

        self._latest.ask(work)

    def write_table(self, file: Path) -> None:
        """Write the counts with their intervals as CSV."""
        store, keys = self._store, self._keys

        def work(_: Tick) -> Path:  # on a pool thread
            ids = [one.subject for one in tallies(store, Subject.LABEL) if one.subject]
            text, _lines = rates_table(store, label_names(keys, ids))
            return write_csv(file, text)

        self._writing.ask(work)

    def write_plots(self, file: Path) -> None:
        """Write the plots as PNG or PDF, in the light look whatever the window wears.

        Raises:
            IdKeyError: They cannot be written there.
        """
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        look = PaperLook(app)
        plots = self._plots(look)
        if self._counted is not None:
            self._show(self._counted, plots)
        drawings: tuple[Bars | Trend, ...] = plots
        titles = list(self._titles())
        if self._counted is not None:
            titles[-1] += f" ({self._course_words(self._course(self._counted))})"
        named = map(Plot, titles, drawings)
        shown = [one for one in named if one.drawing.filled]
        day = QDate.currentDate().toString(Qt.DateFormat.ISODate)
        title = self.tr("What the labels turn out to be, {day}").format(day=day)
        write_plots(file, shown, title=title, said=self._explanation(), look=look)

    def _plots(self, theme: Theme) -> tuple[Bars, Bars, Trend]:
        return (
            Bars(self.tr("Share of contradicted labels, by label"), theme),
            Bars(self.tr("Share of contradicted labels, by supplier"), theme),
            Trend(self.tr("Share of contradicted labels, by month"), theme),
        )

    def _titles(self) -> tuple[str, str, str]:
        return (self.tr("By label"), self.tr("By supplier"), self.tr("By month of arrival"))

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(12)
        left.addWidget(caption(self.tr("What the labels turn out to be"), "lead"))
        left.addWidget(self.said)
        for title, plot in zip(
            self._titles(), (self.labels, self.suppliers, self.months), strict=True
        ):
            left.addWidget(self._card(title, plot))
        export = QHBoxLayout()
        for part in (self.table, self.plots):
            export.addWidget(part)
        export.addWidget(self.done, 1)
        left.addLayout(export)
        left.addStretch(1)
        right = QVBoxLayout()
        right.setSpacing(12)
        for panel in (self.lot, self.agreement):
            right.addWidget(panel)
        right.addStretch(1)
        row = beside(self._theme)
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
        head = QHBoxLayout()
        head.addWidget(caption(title, "strong"), 1)
        if plot is self.months:
            head.addWidget(self.whose)
        column.addLayout(head)
        column.addWidget(plot)
        card.hide()
        self._cards.append(card)
        return card

    def _show(self, found: Rates, plots: tuple[Bars, Bars, Trend]) -> None:
        labels, suppliers, months = plots
        labels.show_bars([self._bar(*row) for row in found.labels])
        suppliers.show_bars([self._bar(*row) for row in found.suppliers])
        months.show_points([self._bar(*row) for row in self._course(found).months])

    def _course(self, found: Rates) -> Course:
        """The course that is shown: the chosen one where it is still there, else all cases."""
        chosen = self.whose.chosen
        return next((one for one in found.courses if _id(one) == chosen), found.courses[0])

    def _offer_courses(self, found: Rates) -> None:
        here = _id(self._course(found))
        self.whose.blockSignals(True)
        self.whose.offer((self._course_words(one), _id(one)) for one in found.courses)
        self.whose.choose(here)
        self.whose.blockSignals(False)

    def _course_words(self, one: Course) -> str:
        if one.subject is None:
            return self.tr("all cases")
        name = one.name or self.tr("not told")
        words = self.tr("label: {name}")
        if one.subject is Subject.SUPPLIER:
            words = self.tr("supplier: {name}")
        return words.format(name=name)

    def _explanation(self) -> str:
        return self.tr(
            "Share of animals whose label was contradicted, among those whose verdict says "
            "whether the label was right. Lines are 95 % intervals (Wilson): a long line "
            "means too few animals to blame anybody. Animals that were checked because they "
            "looked wrong push a rate up. The sample case and second opinions are not counted."
        )

    def _bar(self, name: str, wrong: int, decided: int) -> Bar:
        counts = self.tr("{wrong} of {n}").format(wrong=wrong, n=decided)
        return Bar(name=name or self.tr("not told"), counts=counts, interval=wilson(wrong, decided))

    def _file(self, name: str, kind: str) -> Path | None:
        title = self.tr("Where to write")
        chosen, _ = QFileDialog.getSaveFileName(self, title, str(Path.home() / name), kind)
        return Path(chosen) if chosen else None

    @Slot()
    def _on_whose_changed(self) -> None:
        if self._counted is not None:
            self._show(self._counted, (self.labels, self.suppliers, self.months))

    @Slot()
    def _on_table_clicked(self) -> None:
        if file := self._file("label-rates.csv", "CSV (*.csv)"):
            self.write_table(file)

    @Slot()
    def _on_plots_clicked(self) -> None:
        if file := self._file("label-rates.pdf", "PDF (*.pdf);;PNG (*.png)"):
            try:
                self.write_plots(file)
            except IdKeyError as err:
                self._on_writing_failed(err)
            else:
                self._on_written(file)

    @Slot(object)
    def _on_written(self, file: Path) -> None:
        self.done.setText(self.tr("Written: {file}").format(file=file))

    @Slot(object)
    def _on_writing_failed(self, error: Exception) -> None:
        self.done.setText(message_for(error).text)

    @Slot(object)
    def _on_answered(self, found: Rates) -> None:
        self._counted = found
        self._offer_courses(found)
        self._show(found, (self.labels, self.suppliers, self.months))
        self.agreement.show_agreement(found.opinions)
        rows = (found.labels, found.suppliers, found.courses[0].months)
        for card, some in zip(self._cards, rows, strict=True):
            card.setVisible(bool(some))
        decided = sum(row[2] for row in found.suppliers)
        for part in (self.table, self.plots):
            part.setVisible(bool(decided))
        nothing = self.tr(
            "No case has a verdict on its label yet; here they will be counted. The sample case "
            "is never counted."
        )
        self.said.setText(self._explanation() if decided else nothing)

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.said.setText(message_for(error).text)


def _id(one: Course) -> tuple[Subject | None, str]:
    return one.subject, one.name
