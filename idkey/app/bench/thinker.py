"""Reasons off the UI thread: one case at a time, and only what is still wanted."""

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.bench.session import Session
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.reasoner import Reasoned, Reasoner
from idkey.report.words import rich


class Thinker(QObject):
    """Works out what the findings of a case say; a newer wish stops the one before.

    Args:
        reasoner: Reasons over cases.
        parent: Owner.

    Signals:
        thought(reasoned: object): It is worked out; whether it is still wanted is for the
            receiver to see.
        failed(error: object): The key or the case cannot be reasoned over.
    """

    thought = Signal(object)
    failed = Signal(object)

    def __init__(self, reasoner: Reasoner, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._reasoner = reasoner
        self._jobs = Jobs(threads=1, parent=self)
        self._job: Job | None = None
        self._wanted: Session | None = None

    def close(self) -> None:
        """Let go of work under way."""
        self._jobs.close()

    def think(self, session: Session) -> None:
        """Start on a session, unless that is what is being worked on."""
        wanted = self._wanted
        if wanted is not None and wanted.case == session.case and wanted.prior == session.prior:
            return
        if self._job is not None:
            self._job.stop()
        self._wanted = session
        key, case, prior, reasoner = session.key, session.case, session.prior, self._reasoner

        def work(tick: Tick) -> Reasoned:  # on a pool thread
            tick(0, 2)
            reasoner.matrix(key, case)
            tick(1, 2)
            rich(key, "")  # makes ready to find the key's names, which also takes its time
            return reasoner.reasoned(key, case, prior)

        self._job = Job(work)
        self._job.succeeded.connect(self._on_succeeded)
        self._job.failed.connect(self._on_failed)
        self._jobs.start(self._job)

    @Slot(object)
    def _on_succeeded(self, reasoned: Reasoned) -> None:
        if self._wanted is not None and self._wanted.case == reasoned.assessment.case:
            self._job = self._wanted = None
        self.thought.emit(reasoned)

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self._job = None
        self.failed.emit(error)
