"""Keeps everything that is typed: a queue of one thread in front of the record book."""

import json
import threading
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.engine.result import Assessment
from idkey.model.case import Case
from idkey.store.book import Store
from idkey.store.difference import Difference, differences
from idkey.store.faults import Conflict, Missing
from idkey.store.record import Revision, StoredCase, VerdictSummary


class _Newest:
    """The newest text per name that waits to be written; shared with the writing thread."""

    def __init__(self) -> None:
        self._texts: dict[str, str] = {}
        self._lock = threading.Lock()

    def put(self, name: str, text: str) -> bool:
        """Keep `text`; whether nothing waited under `name`, so that a write is needed."""
        with self._lock:
            first = name not in self._texts
            self._texts[name] = text
        return first

    def take(self, name: str) -> str:  # on a pool thread
        """The newest text, which no longer waits."""
        with self._lock:
            return self._texts.pop(name)


@dataclass(frozen=True, slots=True, kw_only=True)
class Clash:
    """Two counters worked on one animal at once. Both states are kept; ours counts for now.

    Attributes:
        case_id: The case.
        by: Who saved theirs, as initials or alias; empty when not told.
        at: When, ISO 8601 in UTC; empty when the book was exchanged or restored.
        changed: What theirs has otherwise than the state that was opened here.
        theirs: Number of their revision; 0 when the book no longer had the case.
        ours: Number of ours, added after it.
    """

    case_id: str
    by: str
    at: str
    changed: tuple[Difference, ...]
    theirs: int
    ours: int


class Keeper(QObject):
    """Writes to the record book in the order asked for; reads at once.

    Nothing waits on a timer: each write starts when it is asked for, and while one is under way
    only the newest text of each draft waits behind it.

    A case is saved on top of the revision it was read in. Where another counter has saved it
    meanwhile, both states are kept, and `clashed` tells of it.

    Args:
        store: The record book.
        parent: Owner.

    Signals:
        failed(error: object): A write did not succeed; the text stays on the screen.
        clashed(clash: object): Another counter saved a case after it was read here.
        settled(): Everything asked for so far is in the book.
    """

    failed = Signal(object)
    clashed = Signal(object)
    settled = Signal()

    def __init__(self, store: Store, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.store = store
        self._jobs = Jobs(threads=1, parent=self)
        self._drafts = _Newest()
        self._settings = _Newest()
        self._read: dict[str, int] = {}
        self._under_way = 0

    @property
    def busy(self) -> bool:
        """Whether something is not in the book yet."""
        return self._under_way > 0

    def save(
        self,
        case: Case,
        assessment: Assessment | None,
        *,
        then: Callable[[Revision], None] | None = None,
    ) -> None:
        """Keep the case as a new revision; `then` follows on the thread that writes."""
        summary = None
        if assessment is not None and assessment.case == case:
            summary = VerdictSummary.of(assessment)

        def work() -> Clash | None:  # on a pool thread
            revision, clash = self._add(case, summary)
            if then is not None:
                then(revision)
            return clash

        self._write(work)

    def took_up(self, stored: StoredCase) -> None:
        """Remember which revision of a case is worked on here; later saves follow from it."""
        self._read[stored.case.id] = stored.revision.number

    def _add(
        self, case: Case, summary: VerdictSummary | None
    ) -> tuple[Revision, Clash | None]:  # on a pool thread
        """Add the case to the book; tells of a state in between that was not read here."""
        known = max(self._read.get(case.id, 0), self.store.last_saved(case.id))
        try:
            return self.store.save(case, summary, parent=known or None), None
        except Conflict as err:
            revision = self.store.save(case, summary)
            return revision, Clash(
                case_id=case.id,
                by=err.by,
                at=err.at,
                changed=self._differences(case.id, known, err.number),
                theirs=err.number,
                ours=revision.number,
            )

    def _differences(self, case_id: str, known: int, theirs: int) -> tuple[Difference, ...]:
        try:
            before = self.store.case(case_id, known).case
            return differences(before, self.store.case(case_id, theirs).case)
        except Missing:  # the book was exchanged or restored
            return ()

    def put_after(self, work: Callable[[], object]) -> None:
        """Do something with the record book once what was asked for before is in it."""
        self._write(work)

    def put_draft(self, name: str, text: str) -> None:
        """Keep text that is not confirmed yet; empty text forgets it."""
        if self._drafts.put(name, text):
            self._write(lambda: self.store.put_draft(name, self._drafts.take(name)))

    def put_setting(self, name: str, value: Mapping[str, Any]) -> None:
        """Keep a preference or the state of the window."""
        if self._settings.put(name, json.dumps(value)):
            self._write(lambda: self.store.put_setting(name, self._settings.take(name)))

    def setting(self, name: str) -> dict[str, Any]:
        """What was kept under `name`; empty when there is nothing that can be read."""
        return kept_setting(self.store, name)

    def knows(self, case_id: str) -> bool:
        """Whether the record book has the case."""
        try:
            self.store.case(case_id)
        except Missing:
            return False
        return True

    def flush(self) -> bool:
        """Wait until everything asked for so far is in the book; False when that took too long."""
        return self._jobs.wait(10_000)

    def close(self) -> bool:
        """Finish what was asked for; False when it took longer than ten seconds."""
        return self._jobs.wait(10_000)

    def _write(self, work: Callable[[], object]) -> None:
        def run(_: Tick) -> object:  # on a pool thread
            return work()

        self._under_way += 1
        job = Job(run)
        job.succeeded.connect(self._on_succeeded)
        job.failed.connect(self._on_failed)
        job.ended.connect(self._on_ended)
        self._jobs.start(job)

    @Slot(object)
    def _on_succeeded(self, result: object) -> None:
        if isinstance(result, Clash):
            self.clashed.emit(result)

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.failed.emit(error)

    @Slot()
    def _on_ended(self) -> None:
        self._under_way -= 1
        if not self._under_way:
            self.settled.emit()


def kept_setting(store: Store, name: str) -> dict[str, Any]:
    """What a record book keeps under `name`; empty when there is nothing that can be read."""
    try:
        found = json.loads(store.setting(name) or "{}")
    except json.JSONDecodeError:
        return {}
    return found if isinstance(found, dict) else {}
