"""Looks for mistakes while one types: the newest key only, off the UI thread."""

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.engine.audit import Remark, audit
from idkey.errors import IdKeyError
from idkey.formats.folder import check_values
from idkey.formats.problem import Problem, Severity
from idkey.model.key import Key


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """What was found out about a key."""

    key: Key
    problems: tuple[Problem, ...]
    remarks: tuple[Remark, ...] = ()


def found_out(key: Key, folder: Path, tick: Tick) -> Found:  # on a pool thread
    """Everything that is wrong with a key, and what is weak about it once nothing is wrong."""
    tick(0, 2)
    try:
        problems = check_values(key, folder)
    except IdKeyError as err:  # it cannot even be written down
        return Found(key=key, problems=(_as_problem(err, folder),))
    tick(1, 2)  # a newer key is waited for no longer than it takes to look at one taxon
    wrong = any(problem.severity is Severity.ERROR for problem in problems)
    return Found(key=key, problems=problems, remarks=() if wrong else audit(key, tick))


def _as_problem(error: IdKeyError, folder: Path) -> Problem:
    return Problem(
        file=folder / "key.yaml", line=1, column=1, problem=error.problem, remedy=error.remedy
    )


class Checker(QObject):
    """Looks at one key at a time; while it does, only the newest one waits.

    Args:
        parent: Owner.

    Signals:
        found(found: Found): What was found out about the newest key.
        failed(error: object): Looking failed.
    """

    found = Signal(object)
    failed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = Jobs(threads=1, parent=self)
        self._job: Job | None = None
        self._next: tuple[Key, Path] | None = None

    @property
    def busy(self) -> bool:
        """Whether something is still to be found out."""
        return self._job is not None

    def look(self, key: Key, folder: Path) -> None:
        """Find out about `key`, whose files are or will be in `folder`."""
        if self._job is not None:
            self._next = (key, folder)
            self._job.stop()
            return

        def work(tick: Tick) -> Found:  # on a pool thread
            return found_out(key, folder, tick)

        self._job = Job(work)
        self._job.succeeded.connect(self._on_succeeded)
        self._job.failed.connect(self._on_failed)
        self._job.ended.connect(self._on_ended)
        self._jobs.start(self._job)

    def close(self) -> None:
        """Let go of work under way."""
        self._next = None
        self._jobs.close()

    @Slot(object)
    def _on_succeeded(self, found: Found) -> None:
        if self._next is None:
            self.found.emit(found)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.failed.emit(error)

    @Slot()
    def _on_ended(self) -> None:
        self._job = None
        if self._next is not None:
            (key, folder), self._next = self._next, None
            self.look(key, folder)
