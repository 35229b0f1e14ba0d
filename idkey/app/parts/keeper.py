"""Keeps everything that is typed: a queue of one thread in front of the record book."""

import json
import threading
from collections.abc import Callable, Mapping
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.engine.result import Assessment
from idkey.model.case import Case
from idkey.store.book import Store
from idkey.store.faults import Missing
from idkey.store.record import VerdictSummary


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


class Keeper(QObject):
    """Writes to the record book in the order asked for; reads at once.

    Nothing waits on a timer: each write starts when it is asked for, and while one is under way
    only the newest text of each draft waits behind it.

    Args:
        store: The record book.
        parent: Owner.

    Signals:
        failed(error: object): A write did not succeed; the text stays on the screen.
        settled(): Everything asked for so far is in the book.
    """

    failed = Signal(object)
    settled = Signal()

    def __init__(self, store: Store, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.store = store
        self._jobs = Jobs(threads=1, parent=self)
        self._drafts = _Newest()
        self._settings = _Newest()
        self._under_way = 0

    @property
    def busy(self) -> bool:
        """Whether something is not in the book yet."""
        return self._under_way > 0

    def save(self, case: Case, assessment: Assessment | None) -> None:
        """Keep the case as a new revision."""
        summary = None
        if assessment is not None and assessment.case == case:
            summary = VerdictSummary.of(assessment)
        self._write(lambda: self.store.save(case, summary))

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
        try:
            found = json.loads(self.store.setting(name) or "{}")
        except json.JSONDecodeError:
            return {}
        return found if isinstance(found, dict) else {}

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
        def run(_: Tick) -> None:  # on a pool thread
            work()

        self._under_way += 1
        job = Job(run)
        job.failed.connect(self._on_failed)
        job.ended.connect(self._on_ended)
        self._jobs.start(job)

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.failed.emit(error)

    @Slot()
    def _on_ended(self) -> None:
        self._under_way -= 1
        if not self._under_way:
            self.settled.emit()
