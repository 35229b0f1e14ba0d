"""The state of the drill: who practises what, the exercise under way, what was answered."""

import time
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.drill.figures import DrillFigures, drawn_characters
from idkey.app.drill.now import Drill, Place
from idkey.app.drill.plan import (
    Everybody,
    Plan,
    Report,
    Step,
    Wish,
    attested,
    everybody,
    next_step,
    plan_for,
    report_on,
)
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.key_library import KeyLibrary
from idkey.drill.beginning import Run
from idkey.drill.record import trial_of
from idkey.report.language import ENGLISH, Language
from idkey.store.book import Store
from idkey.store.drill_log import Exercise, Trial, put_trial, trials_of

T = TypeVar("T")

PERSON = "drill_person"
"""Setting that keeps who practised last."""


class DrillState(QObject):
    """Holds the drill; the only thing on its screens that changes.

    Args:
        store: The record book.
        keys: The keys at hand.
        images: Folder of the drawings.
        attestations: Folder where attestations go; made when needed.
        now: Tells the time, aware of its zone.
        ticks: Counts seconds for the time an answer takes.
        parent: Owner.

    Signals:
        changed(drill: Drill): After each step that made a difference.
    """

    changed = Signal(object)

    def __init__(
        self,
        store: Store,
        keys: KeyLibrary,
        *,
        images: Path,
        attestations: Path,
        now: Callable[[], datetime] = lambda: datetime.now(UTC),
        ticks: Callable[[], float] = time.monotonic,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.keys = keys
        self.figures = DrillFigures(images, self, libraries=keys.folders)
        self._store = store
        self._images = images
        self._attestations = attestations
        self._now = now
        self._ticks = ticks
        self._shown_at = 0.0
        self._jobs = Jobs(threads=1, parent=self)
        self._unsaved: list[Trial] = []
        self.drill = Drill(key=keys[next(iter(keys))])

    @property
    def busy(self) -> bool:
        """Whether something is not finished yet, saving included."""
        return self._jobs.busy or self.figures.busy

    @property
    def practised(self) -> bool:
        """Whether somebody practised here before."""
        return bool(self.drill.person or self._store.setting(PERSON))

    def close(self) -> None:
        """Finish what is being saved, and let go of the rest."""
        self.figures.close()
        if self._unsaved:
            self._start(self._keep, self._on_kept)
        self._jobs.wait(10_000)

    def open(self) -> None:
        """Come to the drill: the person of last time, what is due now."""
        person = self.drill.person or self._store.setting(PERSON)
        self._lay_out(replace(self.drill, person=person, place=Place.START))

    def choose_person(self, person: str) -> None:
        """Practise as somebody; empty is nobody."""
        person = person.strip()
        if person != self.drill.person:
            self._store.put_setting(PERSON, person)
            self._lay_out(replace(self.drill, person=person, sitting=(), place=Place.START))

    def choose_key(self, key: str) -> None:
        """Practise with another key.

        Raises:
            IdKeyError: The key cannot be read.
        """
        if key != self.drill.key.id:
            fresh = Drill(key=self.keys[key], person=self.drill.person)
            self._lay_out(fresh)

    def start(self, exercise: Exercise | None = None, *, beyond: bool = False) -> None:
        """Begin to practise one exercise, or whatever is first."""
        if self.drill.plan is None or self.drill.busy or not self.drill.person:
            return
        wish = Wish(exercise=exercise, beyond=beyond)
        self._move(
            replace(self.drill, place=Place.EXERCISE, wish=wish, sitting=(), run=None, busy=True)
        )
        self._ask_next()

    def apply(self, run: Run) -> None:
        """Go on with the exercise as the person answered; what is done is kept at once."""
        before = self.drill.run
        if before is None or run is before or before.done:
            return
        if not run.done:
            self._move(replace(self.drill, run=run))
            return
        millis = round(1000 * max(self._ticks() - self._shown_at, 0.0))
        trial = trial_of(run, self.drill.person, self.drill.trials, at=self._now(), millis=millis)
        drill = self.drill
        self._move(
            replace(
                drill,
                run=run,
                trials=(*drill.trials, trial),
                sitting=(*drill.sitting, trial),
                report=None,
            )
        )
        self._unsaved.append(trial)
        self._start(self._keep, self._on_kept)

    def go_on(self) -> None:
        """To the next exercise, once this one is done."""
        run = self.drill.run
        if run is not None and run.done and not self.drill.busy:
            wish = replace(self.drill.wish, last=run.item)
            self._move(replace(self.drill, run=None, busy=True, wish=wish))
            self._ask_next()

    def leave_exercise(self) -> None:
        """Back to the start; an exercise that is not done is not kept."""
        self._lay_out(replace(self.drill, place=Place.START, run=None, wish=Wish()))

    def open_progress(self, person: str = "") -> None:
        """Show what somebody has shown; without a name the person who practises."""
        drill, key = self.drill, self.drill.key
        subject, trials = person or drill.person, drill.trials

        def work() -> Report:  # on a pool thread
            own = subject == drill.person
            return report_on(key, trials if own else trials_of(self._store, subject, key=key.id))

        fresh = replace(drill, place=Place.PROGRESS, run=None, busy=True, written=None)
        self._move(replace(fresh, subject=subject, report=None))
        self._start(work, self._on_reported)

    def open_people(self) -> None:
        """Show where everybody stands."""
        plan = self.drill.plan
        if plan is not None:
            self._move(replace(self.drill, place=Place.PEOPLE, run=None, busy=True, written=None))
            self._start(lambda: everybody(self._store, plan, self._now()), self._on_everybody)

    def attest(self, person: str, language: Language = ENGLISH) -> None:
        """Write down what somebody has shown; refused when the evidence is thin."""
        key, folder, now = self.drill.key, self._attestations, self._now()
        self._move(replace(self.drill, busy=True, problem=None, written=None))
        self._start(
            lambda: attested(self._store, key, person, folder=folder, now=now, language=language),
            self._on_written,
        )

    def _lay_out(self, drill: Drill) -> None:
        key, person = drill.key, drill.person
        drawn = drawn_characters(self._images, key, self.keys.folders)
        self._move(replace(drill, busy=True, problem=None, written=None))
        self._start(
            lambda: plan_for(self._store, key, person, drawn=drawn, now=self._now()),
            self._on_planned,
        )

    def _ask_next(self) -> None:
        plan, drill = self.drill.plan, self.drill
        if plan is not None:
            now = self._now()
            self._start(lambda: next_step(plan, drill.trials, drill.wish, now), self._on_step)

    def _start(self, work: Callable[[], T], done: Callable[[T], None]) -> None:
        def run(tick: Tick) -> object:  # on a pool thread
            tick(0, 1)
            return work()

        job = Job(run)
        job.succeeded.connect(done)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    def _move(self, drill: Drill) -> None:
        if drill is not self.drill:
            self.drill = drill
            self.changed.emit(drill)

    @Slot(object)
    def _on_planned(self, plan: Plan) -> None:
        if plan.bench.key is self.drill.key and plan.person == self.drill.person:
            self._move(replace(self.drill, plan=plan, trials=plan.trials, busy=False, report=None))

    @Slot(object)
    def _on_step(self, step: Step) -> None:
        if self.drill.plan is None or step.wish is not self.drill.wish:
            return
        plan = replace(self.drill.plan, agenda=step.agenda)
        self._shown_at = self._ticks()
        if step.run is None:
            self._move(replace(self.drill, plan=plan, busy=False, place=Place.START, run=None))
        else:
            self._move(replace(self.drill, plan=plan, busy=False, run=step.run))

    def _keep(self) -> None:  # on a pool thread
        """Write what waits, in order; what could not be written waits for the next answer."""
        while self._unsaved:
            put_trial(self._store, self._unsaved[0])
            del self._unsaved[0]

    @Slot(object)
    def _on_kept(self, _: object) -> None:
        """Nothing to show: the answer is in the book."""

    @Slot(object)
    def _on_reported(self, report: Report) -> None:
        self._move(replace(self.drill, report=report, busy=False))

    @Slot(object)
    def _on_everybody(self, found: Everybody) -> None:
        self._move(replace(self.drill, everybody=found, busy=False))

    @Slot(object)
    def _on_written(self, path: Path) -> None:
        self._move(replace(self.drill, written=path, busy=False))

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self._move(replace(self.drill, problem=error, busy=False))
