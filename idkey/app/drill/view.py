"""The drill: its start, its three exercises, progress and people, on one screen."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from idkey.app.drill.case import CaseView
from idkey.app.drill.naming import NamingView
from idkey.app.drill.now import Drill, Place
from idkey.app.drill.people import PeoplePage
from idkey.app.drill.progress import ProgressPage
from idkey.app.drill.start import StartPage
from idkey.app.drill.state import DrillState
from idkey.app.drill.telling import TellingView
from idkey.app.drill.words import exercise_title
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.messages import message_for
from idkey.app.parts.notice import Notice
from idkey.drill.beginning import Run
from idkey.drill.casework import RunCase
from idkey.drill.exercises import NameState, TellPair
from idkey.store.drill_log import Exercise


class DrillView(QWidget):
    """Everything about the drill.

    Call `open` each time it comes onto the screen, and `DrillState.close` in the end.

    Args:
        state: The state of the drill; it outlives the view when the look changes.
        desk: Look, drawings, language.

    Signals:
        left(): The person wants to go back to where they came from.
    """

    left = Signal()

    def __init__(self, state: DrillState, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self._state = state
        self._desk = desk
        self._problem: BaseException | None = None
        self._busy = False
        theme = desk.theme
        self.back = KeyButton(self.tr("Back"), "Esc", theme, "quiet")
        self.title = caption(rank="lead", wraps=False)
        self.score = caption(rank="soft", wraps=False)
        self.progress = KeyButton(self.tr("Progress"), "Ctrl+P", theme, "quiet")
        self.people = KeyButton(self.tr("Everybody"), "Ctrl+E", theme, "quiet")
        self.start_page = StartPage(state.keys.titles, desk)
        self.naming = NamingView(desk, state.figures)
        self.telling = TellingView(desk, state.figures)
        self.casework = CaseView(desk, state.figures)
        self.waiting = caption(self.tr("Drawing the next animal …"), "soft")
        self.waiting.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.progress_page = ProgressPage(desk)
        self.people_page = PeoplePage(desk)
        self.notice = Notice()
        self._pages = QStackedWidget()
        self._lay_out()
        self._connect()
        self._bind_keys()
        self.show_drill(state.drill)

    def open(self) -> None:
        """Come to the drill: look up what is due, and put the focus where one begins."""
        if self._state.drill.run is None:
            self._state.open()
        self.focus_first()

    def focus_first(self) -> None:
        """Put the focus where the next thing is done."""
        here = self._pages.currentWidget()
        for asking in (self.naming, self.telling, self.casework):
            if here is asking:
                asking.focus_answer()
        for page in (self.start_page, self.people_page):
            if here is page:
                page.focus_first()
        if here is self.progress_page:
            self.progress_page.print.setFocus(Qt.FocusReason.OtherFocusReason)

    @Slot(object)
    def show_drill(self, drill: Drill) -> None:
        """Show the drill as it is."""
        self._show_head(drill)
        before = self._pages.currentWidget()
        if drill.place is Place.START:
            self.start_page.show_drill(drill)
            self._turn_to(self.start_page)
        elif drill.place is Place.PROGRESS:
            self.progress_page.show_drill(drill)
            self._turn_to(self.progress_page)
        elif drill.place is Place.PEOPLE:
            self.people_page.show_drill(drill)
            self._turn_to(self.people_page)
        else:
            self._show_run(drill.run)
        if drill.problem is not None and drill.problem is not self._problem:
            self.notice.say(message_for(drill.problem))
        self._problem = drill.problem
        here = self._pages.currentWidget()
        ready = here is self.start_page and self._busy and not drill.busy
        self._busy = drill.busy
        if self.isVisible() and (here is not before or (ready and not self.start_page.typing)):
            self.focus_first()

    def _show_head(self, drill: Drill) -> None:
        titles = {
            Place.START: self.tr("Drill: learn to see the difference"),
            Place.PROGRESS: self.tr("Progress"),
            Place.PEOPLE: self.tr("People"),
        }
        run = drill.run
        exercise = run.item.exercise if run is not None else drill.wish.exercise
        practising = drill.place is Place.EXERCISE
        title = exercise_title(exercise) if practising and exercise else self.tr("Drill")
        self.title.setText(title if practising else titles[drill.place])
        done, right = len(drill.sitting), sum(trial.correct for trial in drill.sitting)
        left = _left(drill)
        so_far = self.tr("{right} of {n} right").format(right=right, n=done) if done else ""
        to_go = self.tr("{n} to go").format(n=left) if left else ""
        score = " · ".join(part for part in (so_far, to_go) if part)
        self.score.setText(score if practising else "")
        known = bool(drill.person) and drill.plan is not None
        self.progress.setVisible(not practising)
        self.people.setVisible(not practising)
        self.progress.setEnabled(known)
        self.people.setEnabled(drill.plan is not None)

    def _show_run(self, run: Run | None) -> None:
        if isinstance(run, NameState):
            self._turn_to(self.naming)
            self.naming.show_run(run)
        elif isinstance(run, TellPair):
            self._turn_to(self.telling)
            self.telling.show_run(run)
        elif isinstance(run, RunCase):
            self._turn_to(self.casework)
            self.casework.show_run(run)
        else:
            self._turn_to(self.waiting)

    def _turn_to(self, page: QWidget) -> None:
        if self._pages.currentWidget() is not page:
            self._pages.setCurrentWidget(page)

    def _lay_out(self) -> None:
        both = QWidget()
        row = QHBoxLayout(both)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.progress)
        row.addWidget(self.people)
        head = FlowRow(gap=12, last_ends=True)  # large text breaks it, and must not widen it
        for part in (self.back, self.title, self.score, both):
            head.add(part)
        pages = (self.start_page, self.naming, self.telling, self.casework)
        for page in (*pages, self.waiting, self.progress_page, self.people_page):
            self._pages.addWidget(page)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 10, 16, 12)
        column.setSpacing(12)
        column.addWidget(head)
        column.addWidget(self._pages, 1)
        column.addWidget(self.notice)

    def _connect(self) -> None:
        state = self._state
        for pressed in (self.back, self.progress, self.people):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.back.clicked.connect(self.go_back)
        self.progress.clicked.connect(self._on_progress_clicked)
        self.people.clicked.connect(state.open_people)
        self.start_page.person_chosen.connect(state.choose_person)
        self.start_page.key_chosen.connect(self._on_key_chosen)
        self.start_page.wanted.connect(self._on_wanted)
        for view in (self.naming, self.telling, self.casework):
            view.answered.connect(state.apply)
            view.done.connect(state.go_on)
        for page in (self.progress_page, self.people_page):
            page.attestation_asked.connect(self._on_attestation_asked)
        self.people_page.person_chosen.connect(self._on_person_looked_at)
        state.changed.connect(self.show_drill)

    def _bind_keys(self) -> None:
        keys = {
            "Esc": self.go_back,
            "Ctrl+P": self.progress.click,
            "Ctrl+E": self.people.click,
            "A": self._on_attestation_key,
            "1": self._on_exercise_key,
            "2": self._on_exercise_key,
            "3": self._on_exercise_key,
        }
        for key, slot in keys.items():
            owner = self.start_page if key in "123" else self
            shortcut = QShortcut(QKeySequence(key), owner)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    @Slot()
    def go_back(self) -> None:
        """One step back: out of an exercise or a report to the start, from there out."""
        if self._state.drill.place is Place.START:
            self.left.emit()
        else:
            self._state.leave_exercise()

    @Slot(str)
    def _on_attestation_asked(self, person: str) -> None:
        self._state.attest(person, self._desk.language)

    @Slot()
    def _on_attestation_key(self) -> None:
        for page in (self.progress_page, self.people_page):
            if self._pages.currentWidget() is page and page.print.isEnabled():
                page.print.click()

    @Slot()
    def _on_exercise_key(self) -> None:
        shortcut = self.sender()
        if isinstance(shortcut, QShortcut):
            card = self.start_page.cards[int(shortcut.key().toString()) - 1]
            card.begin.click()

    @Slot(object)
    def _on_wanted(self, exercise: Exercise | None) -> None:
        """Begin; with what is not due yet where nothing is."""
        plan = self._state.drill.plan
        if plan is not None:
            part = plan.agenda if exercise is None else plan.agenda.of(exercise)
            self._state.start(exercise, beyond=not (part.due or part.fresh))

    @Slot(str)
    def _on_key_chosen(self, key: str) -> None:
        try:
            self._state.choose_key(key)
        except Exception as err:  # noqa: BLE001 - becomes a message
            self.notice.say(message_for(err))

    @Slot()
    def _on_progress_clicked(self) -> None:
        self._state.open_progress()

    @Slot(str)
    def _on_person_looked_at(self, person: str) -> None:
        self._state.open_progress(person)


def _left(drill: Drill) -> int:
    """How many items of what is practised are due or new today."""
    if drill.plan is None:
        return 0
    whole, exercise = drill.plan.agenda, drill.wish.exercise
    part = whole if exercise is None else whole.of(exercise)
    return len(part.due) + len(part.fresh)
