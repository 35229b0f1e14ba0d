"""Work of which only the latest answer counts."""

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick, Work


class Latest(QObject):
    """Asks off the UI thread; an answer that was overtaken is dropped.

    Args:
        jobs: Where the work is done.
        parent: Owner.

    Signals:
        answered(result: object): What the latest work returned.
        failed(error: object): What it raised.
    """

    answered = Signal(object)
    failed = Signal(object)

    def __init__(self, jobs: Jobs, parent: QObject) -> None:
        super().__init__(parent)
        self._jobs = jobs
        self._job: Job | None = None

    @property
    def busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._job is not None

    def ask(self, work: Work) -> None:
        """Start `work` in place of what was asked before."""

        def run(tick: Tick) -> object:  # on a pool thread
            tick(0, 1)  # leaves here when it was overtaken in the queue
            return work(tick)

        self.drop()
        job = Job(run)
        job.succeeded.connect(self._on_succeeded)
        job.failed.connect(self._on_failed)
        self._job = job
        self._jobs.start(job)

    def drop(self) -> None:
        """Want no answer any more."""
        if self._job is not None:
            self._job.stop()
            self._job = None

    @Slot(object)
    def _on_succeeded(self, result: object) -> None:
        if self.sender() is self._job:
            self._job = None
            self.answered.emit(result)

    @Slot(object)
    def _on_failed(self, error: object) -> None:
        if self.sender() is self._job:
            self._job = None
            self.failed.emit(error)
