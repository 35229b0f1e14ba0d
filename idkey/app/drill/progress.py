"""What one person has shown: pairs, characters, confusions, trend, and the paper to print."""

from PySide6.QtCore import QUrl, Signal, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from idkey.app.drill.confusion import ConfusionTable
from idkey.app.drill.now import Drill
from idkey.app.drill.plan import Report
from idkey.app.drill.words import exercise_title
from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.plots import Bar, Bars, Trend
from idkey.drill.progress import SHOWN, Accuracy, Confusion
from idkey.model.key import Key
from idkey.report.attestation import fewest_right
from idkey.report.names import character_name
from idkey.report.words import name_of
from idkey.store.drill_log import Exercise

TAXA = "taxa"
"""Choice of the table over taxa."""

MOST = 12
"""Rows shown of each list."""


class ProgressPage(QScrollArea):
    """Shows the report on one person.

    Args:
        desk: Look, drawings, language.

    Signals:
        attestation_asked(person: str): The person wants it on paper.
    """

    attestation_asked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._report: Report | None = None
        self._key: Key | None = None
        self._person = ""
        theme = desk.theme
        self.title = caption(rank="title")
        self.said = caption(rank="soft")
        self.print = KeyButton(self.tr("Write the attestation"), "A", theme)
        self.written = caption(rank="small", tone="accent")
        self.open = button(self.tr("Open it"), "link")
        self.exercises = Bars(self.tr("Share right by exercise"), theme)
        self.pairs = Bars(self.tr("Pairs told apart"), theme)
        self.pairs_said = caption(rank="small")
        self.characters = Bars(self.tr("Characters read rightly"), theme)
        self.trend = Trend(self.tr("Share right over time"), theme)
        self.choice = Choice(self.tr("Which confusions"), theme)
        self.table = ConfusionTable(theme)
        self._parts: list[QWidget] = []
        self._lay_out()
        for pressed in (self.print, self.open):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.print.clicked.connect(self._on_print_clicked)
        self.open.clicked.connect(self._on_open_clicked)
        self.choice.activated.connect(self._on_choice_activated)

    def show_drill(self, drill: Drill) -> None:
        """Show the report, once it is there."""
        self._person, self._key, report = drill.subject, drill.key, drill.report
        self.title.setText(self.tr("What {person} has shown").format(person=drill.subject or "–"))
        self.print.setEnabled(bool(drill.subject) and not drill.busy)
        self.written.setText(str(drill.written or ""))
        for part in (self.written, self.open):
            part.setVisible(drill.written is not None)
        ready = report is not None and report.trials > 0
        for one in self._parts:
            one.setVisible(ready)
        if report is None:
            self.said.setText(self.tr("Adding up …"))
        elif not report.trials:
            self.said.setText(self.tr("No answers with this key yet."))
        elif report is not self._report:
            self._report = report
            self._fill(drill.key, report)

    def _fill(self, key: Key, report: Report) -> None:
        self.said.setText(
            self.tr("{n} pictures of the key “{title}”. Lines are 95 % intervals (Wilson).").format(
                n=report.trials, title=key.title
            )
        )
        titles = {exercise.value: exercise_title(exercise) for exercise in Exercise}
        self.exercises.show_bars([_bar(self, a, titles[a.name]) for a in report.exercises])
        self.characters.show_bars(
            [_bar(self, a, character_name(key, a.name)) for a in report.characters[:MOST]]
        )
        self.pairs.show_bars(
            [
                Bar(
                    name=" / ".join(_short(key, taxon) for taxon in record.pair),
                    counts=self.tr("{right} of {n}").format(right=record.right, n=record.trials),
                    interval=record.interval,
                    italic=True,
                    firm=record.shown,
                )
                for record in report.pairs[:MOST]
            ],
            mark=SHOWN,
        )
        self.pairs_said.setText(
            self.tr(
                "A pair counts as told apart when its line begins at {share} or above; that takes "
                "{n} right decisions without a mistake. The latest 60 of each pair count."
            ).format(share=self._desk.language.share(SHOWN), n=fewest_right())
        )
        self.trend.show_points([_bar(self, a, a.name) for a in report.trend])
        self._fill_choice(key, report)

    def _fill_choice(self, key: Key, report: Report) -> None:
        self.choice.clear()
        for name, table in report.states:
            wrong = self.tr("{n} wrong").format(n=table.trials - table.right)
            self.choice.addItem(f"{character_name(key, name)} ({wrong})", name)
        if report.taxa.classes:
            self.choice.addItem(self.tr("Taxa, in pairs"), TAXA)
        self.choice.setVisible(self.choice.count() > 0)
        self._show_table()

    def _show_table(self) -> None:
        report, key, name = self._report, self._key, self.choice.currentData()
        if report is None or key is None or name is None:
            self.table.show_table(Confusion((), ()), str)
        elif name == TAXA:
            self.table.show_table(report.taxa, lambda taxon: _short(key, taxon), italic=True)
        else:
            labels = {state.id: state.label for state in key.character[name].states}
            table = dict(report.states)[name]
            self.table.show_table(table, lambda state: labels.get(state, state))

    def _lay_out(self) -> None:
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        page = QWidget()
        page.setProperty("pane", "clear")
        head = QHBoxLayout()
        head.setSpacing(10)
        head.addWidget(self.title, 1)
        head.addWidget(self.print)
        paper = QHBoxLayout()
        paper.addWidget(self.written, 1)
        paper.addWidget(self.open)
        columns = QHBoxLayout()
        columns.setSpacing(16)
        columns.addLayout(self._column(self._pair_card(), self._trend_card()), 1)
        columns.addLayout(self._column(self._character_card(), self._table_card()), 1)
        whole = QVBoxLayout(page)
        whole.setContentsMargins(4, 4, 12, 4)
        whole.setSpacing(10)
        whole.addLayout(head)
        whole.addWidget(self.said)
        whole.addLayout(paper)
        whole.addLayout(columns)
        whole.addStretch(1)
        self.setWidget(page)

    def _column(self, *cards: QWidget) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(14)
        for card in cards:
            column.addWidget(card)
        column.addStretch(1)
        return column

    def _card(self, title: str, *parts: QWidget) -> QWidget:
        card = QFrame()
        card.setProperty("pane", "card")
        column = QVBoxLayout(card)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(8)
        column.addWidget(caption(title, "strong"))
        for part in parts:
            column.addWidget(part)
        self._parts.append(card)
        return card

    def _pair_card(self) -> QWidget:
        return self._card(self.tr("Pairs told apart"), self.pairs, self.pairs_said)

    def _trend_card(self) -> QWidget:
        return self._card(self.tr("Over time"), self.exercises, self.trend)

    def _character_card(self) -> QWidget:
        return self._card(self.tr("Characters read rightly, weakest first"), self.characters)

    def _table_card(self) -> QWidget:
        return self._card(
            self.tr("What was there (rows), and what was said (columns)"), self.choice, self.table
        )

    @Slot()
    def _on_print_clicked(self) -> None:
        self.attestation_asked.emit(self._person)

    @Slot()
    def _on_open_clicked(self) -> None:
        QDesktopServices.openUrl(QUrl.fromLocalFile(self.written.text()))

    @Slot(int)
    def _on_choice_activated(self, _: int) -> None:
        self._show_table()


def _bar(page: QWidget, one: Accuracy, name: str) -> Bar:
    counts = page.tr("{right} of {n}").format(right=one.right, n=one.trials)
    return Bar(name=name, counts=counts, interval=one.interval)


def _short(key: Key, taxon: str) -> str:
    """The name with its genus cut to a letter."""
    genus, _, rest = name_of(key, taxon).partition(" ")
    return f"{genus[:1]}. {rest}" if rest else genus
