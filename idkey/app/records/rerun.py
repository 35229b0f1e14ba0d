"""Runs all cases of a key again, off the UI thread, with progress and a stop."""

from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.records.work import Shelf
from idkey.engine.result import Assessment
from idkey.errors import Stopped
from idkey.model.case import Case
from idkey.report.language import Language
from idkey.report.recorded import judged
from idkey.report.rerun_words import altered_reasons, altered_words
from idkey.store.record import StoredCase, VerdictSummary
from idkey.store.reruns import alterations


@dataclass(frozen=True, slots=True, kw_only=True)
class Altered:
    """A case that comes out otherwise now.

    Attributes:
        stored: The case as it was saved.
        before: What was concluded then.
        after: What would be concluded now.
        changes: What differs, as sentences.
        reasons: Why, as sentences.
    """

    stored: StoredCase
    before: VerdictSummary
    after: VerdictSummary
    changes: tuple[str, ...]
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Rerun:
    """What a run found: cases looked at, out of how many, and those that come out otherwise."""

    key: str
    done: int
    total: int
    altered: tuple[Altered, ...]


def run_again(shelf: Shelf, key_id: str, language: Language, tick: Tick) -> Rerun:
    """Judge every case of a key again; stopped half-way, it tells what it has found so far.

    Raises:
        IdKeyError: The key is not at hand, or a case cannot be read.
    """
    key = shelf.key_of(key_id)
    found: list[Altered] = []
    counted = [0, 0]
    again: Assessment | None = None

    def judge(case: Case) -> VerdictSummary:
        nonlocal again
        again = judged(shelf.store, key, case)
        return VerdictSummary.of(again)

    def count(done: int, total: int) -> None:
        counted[:] = done, total
        tick(done, total)

    try:
        for one in alterations(shelf.store, key_id, judge, count):
            assert again is not None  # of this very case, which was judged just now
            found.append(
                Altered(
                    stored=one.stored,
                    before=one.before,
                    after=one.after,
                    changes=altered_words(one.before, one.after, language),
                    reasons=altered_reasons(key, one.before, again, language),
                )
            )
    except Stopped:
        pass
    return Rerun(key=key_id, done=counted[0], total=counted[1], altered=tuple(found))


class RerunState(QObject):
    """The run under way, and what the last one found.

    Args:
        shelf: Cases and keys.
        language: Language of the reasons.
        parent: Owner.

    Signals:
        progressed(done: int, total: int): Cases looked at so far.
        changed(): A run has begun or ended, or a case was issued anew; see the attributes.
        failed(error: object): The run could not be done.
    """

    progressed = Signal(int, int)
    changed = Signal()
    failed = Signal(object)

    def __init__(self, shelf: Shelf, language: Language, parent: QObject) -> None:
        super().__init__(parent)
        self.result: Rerun | None = None
        self.issued: frozenset[str] = frozenset()
        """Cases that were issued anew since."""
        self._shelf, self._language = shelf, language
        self._jobs = Jobs(threads=1, parent=self)  # a long run holds up nothing else
        self._job: Job | None = None

    @property
    def running(self) -> bool:
        """Whether a run is under way."""
        return self._job is not None

    def start(self, key: str) -> None:
        """Run all cases of a key again; one run at a time."""
        if self._job is not None:
            return
        shelf, language = self._shelf, self._language
        self._job = Job(lambda tick: run_again(shelf, key, language, tick))
        self._job.progressed.connect(self.progressed)
        self._job.succeeded.connect(self._on_succeeded)
        self._job.failed.connect(self._on_failed)
        self._jobs.start(self._job)
        self.changed.emit()

    def stop(self) -> None:
        """End the run after the case it is at."""
        if self._job is not None:
            self._job.stop()

    def note_issued(self, case_id: str) -> None:
        """A case was issued anew."""
        self.issued |= {case_id}
        self.changed.emit()

    def close(self) -> bool:
        """Stop; False when it did not leave in time."""
        return self._jobs.close()

    @Slot(object)
    def _on_succeeded(self, result: Rerun) -> None:
        self._job, self.result, self.issued = None, result, frozenset()
        self.changed.emit()

    @Slot(object)
    def _on_failed(self, error: object) -> None:
        self._job = None
        self.failed.emit(error)
        self.changed.emit()
