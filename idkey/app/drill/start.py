"""Where a drill begins: who practises, with which key, and what is due."""

from datetime import UTC, datetime
from html import escape

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from idkey.app.drill.card import ExerciseCard
from idkey.app.drill.now import Drill
from idkey.app.drill.words import when_words
from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.plots import Bar, Trend
from idkey.drill.people import FEWEST
from idkey.drill.progress import Accuracy, accuracies, trend
from idkey.drill.schedule import Agenda
from idkey.report.words import name_of
from idkey.store.drill_log import Exercise

NARROW = 860
"""Width in pixels at 100 % below which the cards stand below each other."""

WEAK = 4
"""Weak spots shown."""


class StartPage(QScrollArea):
    """What is due, by exercise; who practises; with which key; what is weak.

    Args:
        keys: (id, title) of the keys.
        desk: Look, drawings, language.

    Signals:
        person_chosen(name: str): Somebody practises.
        key_chosen(key: str): Another key is wanted.
        wanted(exercise: object): An exercise is wanted; None is whatever comes first.
    """

    person_chosen = Signal(str)
    key_chosen = Signal(str)
    wanted = Signal(object)

    def __init__(self, keys: tuple[tuple[str, str], ...], desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._drill: Drill | None = None
        self.people = Choice(self.tr("Who practises"), desk.theme)
        self.keys = Choice(self.tr("Key to practise with"), desk.theme)
        self.keys.offer((title, key) for key, title in keys)
        self.name = QLineEdit()
        self.name.setPlaceholderText(self.tr("Somebody new: initials"))
        self.name.setAccessibleName(self.tr("Initials or alias of somebody new"))
        self.name.setFixedWidth(desk.theme.px(200))
        self.add = button(self.tr("Practise as this"))
        self.cards = tuple(
            ExerciseCard(exercise, str(number), desk)
            for number, exercise in enumerate(Exercise, start=1)
        )
        self.all = KeyButton(self.tr("Begin with what is due"), "Enter", desk.theme, "main")
        self.said = caption(rank="soft")
        self.bare = caption(
            self.tr("This key draws no whole animals: practise with close-ups only."), "small"
        )
        self.sitting = caption(rank="strong", tone="accent")
        self.weak = caption()
        self.weak.setTextFormat(Qt.TextFormat.RichText)
        self.trend = Trend(self.tr("Share right over time"), desk.theme)
        self._weak_card, self._trend_card = QFrame(), QFrame()
        self._who, self._row, self._below = QHBoxLayout(), QHBoxLayout(), QHBoxLayout()
        for row in (self._who, self._row, self._below):
            row.setSpacing(14)
        self._lay_out()
        self._connect()

    @property
    def typing(self) -> bool:
        """Whether somebody's initials are being typed."""
        return bool(self.name.text())

    def show_drill(self, drill: Drill) -> None:
        """Show what is due."""
        self._drill = drill
        self._show_people(drill)
        self.keys.choose(drill.key.id)
        self.bare.setVisible(not drill.key.body_plan)
        plan = drill.plan
        ready = plan is not None and not drill.busy and bool(drill.person)
        for card in self.cards:
            if plan is not None:
                offered = any(o.item.exercise is card.exercise for o in plan.offers)
                card.show_agenda(plan.agenda.of(card.exercise), offered=offered)
            card.begin.setEnabled(card.begin.isEnabled() and ready)
        agenda = Agenda() if plan is None else plan.agenda
        self.all.setEnabled(ready and bool(agenda.due or agenda.fresh))
        self.said.setText(self._sentence(drill, agenda))
        self._show_sitting(drill)
        self._show_weak(drill)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the cards below each other where they would not fit beside each other."""
        super().resizeEvent(event)
        narrow = self.width() < self._desk.theme.px(NARROW)
        way = QHBoxLayout.Direction.TopToBottom if narrow else QHBoxLayout.Direction.LeftToRight
        for row in (self._who, self._row, self._below):
            row.setDirection(way)

    def focus_first(self) -> None:
        """Put the focus where one begins."""
        if self._drill is not None and not self._drill.person:
            self.name.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        first = self.all if self.all.isEnabled() else self.cards[0].begin
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def _sentence(self, drill: Drill, agenda: Agenda) -> str:
        if not drill.person:
            return self.tr("Say who practises: initials or an alias are enough.")
        if drill.busy or drill.plan is None:
            return self.tr("Looking up what is due …")
        if agenda.due or agenda.fresh:
            return self.tr("No picture comes twice. Esc ends at any time; every answer is kept.")
        return self.tr("All done for now.") + " " + when_words(agenda.next_due, datetime.now(UTC))

    def _show_people(self, drill: Drill) -> None:
        people = () if drill.plan is None else drill.plan.people
        wanted = sorted({*people, drill.person} - {""})
        if [self.people.value(n) for n in range(self.people.count())] != wanted:
            self.people.offer((name, name) for name in wanted)
        self.people.setVisible(bool(wanted))
        self.people.choose(drill.person)
        if not drill.person:
            self.people.setCurrentIndex(-1)

    def _show_sitting(self, drill: Drill) -> None:
        done, right = len(drill.sitting), sum(trial.correct for trial in drill.sitting)
        text = self.tr("Just now: {right} of {n} right.").format(right=right, n=done)
        self.sitting.setText(text)
        self.sitting.setVisible(bool(done))

    def _show_weak(self, drill: Drill) -> None:
        lines = []
        for one in accuracies(drill.trials):
            wrong = one.trials - one.right
            character = drill.key.character.get(one.name)
            if wrong and one.trials >= FEWEST and character is not None:
                line = self.tr("{name}: {wrong} of {n} wrong")
                lines.append(line.format(name=escape(character.name), wrong=wrong, n=one.trials))
        for pair, wrong, total in _weak_pairs(drill):
            names = " / ".join(name_of(drill.key, taxon) for taxon in pair)
            line = self.tr("{name}: {wrong} of {n} wrong")
            lines.append(line.format(name=f"<i>{escape(names)}</i>", wrong=wrong, n=total))
        self.weak.setText("<br>".join(lines[:WEAK]) or self.tr("Nothing stands out so far."))
        points = trend(drill.trials)
        self.trend.show_points([_point(point) for point in points])
        for card in (self._weak_card, self._trend_card):
            card.setVisible(len(points) > 1)

    def _lay_out(self) -> None:
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        page = QWidget()
        page.setProperty("pane", "clear")
        names = QHBoxLayout()
        names.setSpacing(8)
        for part in (self.people, self.name, self.add):
            names.addWidget(part)
        names.addStretch(1)
        self._who.addLayout(names, 1)
        self._who.addWidget(self.keys)
        for card in self.cards:
            self._row.addWidget(card, 1)
        go = QHBoxLayout()
        go.setSpacing(14)
        go.addWidget(self.all)
        go.addWidget(self.said, 1)
        column = QVBoxLayout(page)
        column.setContentsMargins(4, 4, 12, 4)
        column.setSpacing(14)
        column.addLayout(self._who)
        for line in (self.bare, self.sitting):
            column.addWidget(line)
        column.addLayout(go)
        column.addLayout(self._row)
        self._fill_below()
        column.addLayout(self._below)
        column.addStretch(1)
        self.setWidget(page)

    def _fill_below(self) -> None:
        """What is weak, and how it went over time."""
        for card, part, share in (
            (self._weak_card, self.weak, 1),
            (self._trend_card, self.trend, 2),
        ):
            card.setProperty("pane", "card")
            column = QVBoxLayout(card)
            column.setContentsMargins(18, 14, 18, 14)
            column.setSpacing(8)
            weak = card is self._weak_card
            title = self.tr("Where you go wrong most") if weak else self.tr("Share right over time")
            column.addWidget(caption(title, "strong"))
            column.addWidget(part)
            column.addStretch(1)
            self._below.addWidget(card, share)

    def _connect(self) -> None:
        self.people.activated.connect(self._on_people_activated)
        self.keys.activated.connect(self._on_keys_activated)
        self.add.clicked.connect(self._on_name_given)
        self.name.returnPressed.connect(self._on_name_given)
        for pressed in (self.all, self.add):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.all.clicked.connect(self._on_all_clicked)
        for card in self.cards:
            card.wanted.connect(self._on_card_wanted)

    @Slot(int)
    def _on_people_activated(self, row: int) -> None:
        self.person_chosen.emit(self.people.value(row))

    @Slot(int)
    def _on_keys_activated(self, row: int) -> None:
        self.key_chosen.emit(self.keys.value(row))

    @Slot()
    def _on_name_given(self) -> None:
        name = self.name.text().strip()
        if name:
            self.name.clear()
            self.person_chosen.emit(name)
        else:
            self.name.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot()
    def _on_all_clicked(self) -> None:
        self.wanted.emit(None)

    @Slot(object)
    def _on_card_wanted(self, exercise: Exercise) -> None:
        self.wanted.emit(exercise)


def _point(one: Accuracy) -> Bar:
    return Bar(name=one.name, counts=f"{one.right} / {one.trials}", interval=one.interval)


def _weak_pairs(drill: Drill) -> list[tuple[tuple[str, ...], int, int]]:
    """Pairs that were decided wrongly, most often first: pair, wrong, all."""
    counts: dict[tuple[str, ...], list[int]] = {}
    for trial in drill.trials:
        if trial.pair:
            row = counts.setdefault(trial.pair, [0, 0])
            row[0] += not trial.correct
            row[1] += 1
    found = [(pair, wrong, total) for pair, (wrong, total) in counts.items() if wrong]
    return sorted(found, key=lambda one: (-one[1] / one[2], one[0]))
