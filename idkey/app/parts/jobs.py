"""Work off the UI thread: one piece of work, and the owner of all of them."""

import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QObject, Qt, QThreadPool, Signal, Slot

from idkey.errors import Stopped

TICK_SECONDS = 0.05
"""Shortest time between two reports of progress."""

Tick = Callable[[int, int], None]
Work = Callable[[Tick], Any]

_QUEUED = Qt.ConnectionType.QueuedConnection


@dataclass(frozen=True, slots=True)
class _End:
    result: Any = None
    error: BaseException | None = None


class Job(QObject):
    """One piece of work. It lives on the UI thread; only `_run` and `_tick` leave it.

    After `start`, exactly one of `succeeded`, `failed` and `stopped` follows, then `ended`,
    all on the UI thread; nothing follows once `Jobs.close` has been called.

    Args:
        work: A plain function; its argument reports (done, total) and is where a stop is heard.
        parent: Owner.

    Signals:
        progressed(done: int, total: int): At most one per `TICK_SECONDS`.
        succeeded(result: object): What the work returned.
        failed(error: object): The exception the work raised.
        stopped(): The work honoured `stop`.
        ended(): Nothing more will come.
    """

    progressed = Signal(int, int)
    succeeded = Signal(object)
    failed = Signal(object)
    stopped = Signal()
    ended = Signal()
    _ticked = Signal(int, int)
    _returned = Signal(object)

    def __init__(self, work: Work, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._work = work
        self._stop = threading.Event()
        self._last_tick = 0.0
        self._ticked.connect(self._on_ticked, _QUEUED)
        self._returned.connect(self._on_returned, _QUEUED)

    def start(self, pool: QThreadPool) -> None:
        """Hand the work to `pool`; the caller keeps this job alive until `ended`."""
        pool.start(self._run)

    def stop(self) -> None:
        """Ask the work to leave at its next step; returns at once."""
        self._stop.set()

    def _run(self) -> None:  # on a pool thread
        try:
            end = _End(result=self._work(self._tick))
        except BaseException as err:  # noqa: BLE001 - the pool would only print it
            end = _End(error=err)
        self._returned.emit(end)

    def _tick(self, done: int, total: int) -> None:  # on a pool thread
        if self._stop.is_set():
            raise Stopped
        now = time.monotonic()
        if done == total or now - self._last_tick >= TICK_SECONDS:
            self._last_tick = now
            self._ticked.emit(done, total)

    @Slot(int, int)
    def _on_ticked(self, done: int, total: int) -> None:
        self.progressed.emit(done, total)

    @Slot(object)
    def _on_returned(self, end: _End) -> None:
        if isinstance(end.error, Stopped):
            self.stopped.emit()
        elif end.error is not None:
            self.failed.emit(end.error)
        else:
            self.succeeded.emit(end.result)
        self.ended.emit()


class Jobs(QObject):
    """Owns the running jobs, so that none outlives the window.

    Args:
        threads: How many jobs may run at once; 1 puts them in a queue, as the record book needs.
        parent: Owner.
    """

    def __init__(self, threads: int = 4, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(threads)
        self._running: set[Job] = set()

    @property
    def busy(self) -> bool:
        """Whether a job has not ended yet."""
        return bool(self._running)

    def start(self, job: Job) -> None:
        """Run `job`; connect to its signals before this call."""
        self._running.add(job)
        job.ended.connect(self._on_ended)
        job.start(self._pool)

    def wait(self, wait_ms: int = 2000) -> bool:
        """Wait for every job to finish its work; False when one did not in time."""
        return self._pool.waitForDone(wait_ms)

    def close(self, wait_ms: int = 2000) -> bool:
        """Stop every job and wait; False when one did not leave in time."""
        for job in self._running:
            job.stop()
        return self._pool.waitForDone(wait_ms)

    @Slot()
    def _on_ended(self) -> None:
        job = self.sender()
        if isinstance(job, Job):
            self._running.discard(job)
