"""What takes longer than a frame to work out: what would change a verdict, diagnoses."""

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.bench.session import Session
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.reasoner import Reasoner
from idkey.engine.diagnosis import Diagnosis, diagnosis
from idkey.engine.whatif import Return, Turn, turns, way_back


class Deeper(QObject):
    """Works on a thread; only what still concerns the case on the bench is reported.

    Args:
        reasoner: Gives compiled keys.
        parent: Owner.

    Signals:
        turned(case_id: str, turns: object): Findings that would change the verdict.
        diagnosed(taxon: str, diagnosis: object): What tells a taxon from all others.
    """

    turned = Signal(str, object)
    diagnosed = Signal(str, object)

    def __init__(self, reasoner: Reasoner, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._reasoner = reasoner
        self._jobs = Jobs(threads=1, parent=self)
        self._wanted: Session | None = None
        self._diagnoses: dict[tuple[int, str], Diagnosis] = {}

    @property
    def busy(self) -> bool:
        """Whether something is being worked out."""
        return self._jobs.busy

    def close(self) -> None:
        """Let go of work under way."""
        self._jobs.close()

    def way_back(self, session: Session, taxon: str) -> Return | None:
        """What speaks against a taxon, and what would bring it back; None while that is open."""
        matrix = self._reasoner.compiled(session.key, session.case)
        if matrix is None or session.thinking:
            return None
        return way_back(matrix, session.reasoned.assessment, taxon)

    def look_for_turns(self, session: Session) -> None:
        """Start looking; `turned` follows unless the bench moves on."""
        self._wanted = session
        reasoner = self._reasoner

        def work(tick: Tick) -> tuple[Session, tuple[Turn, ...]]:  # on a pool thread
            tick(0, 1)
            matrix = reasoner.matrix(session.key, session.case)
            return session, turns(matrix, session.reasoned.assessment)

        self._start(work, self._on_turned)

    def diagnosis(self, session: Session, taxon: str) -> Diagnosis | None:
        """The diagnosis if it is known; else None, and `diagnosed` follows."""
        matrix = self._reasoner.compiled(session.key, session.case)
        if matrix is None:
            return None
        known = self._diagnoses.get((id(matrix), taxon))
        if known is not None:
            return known

        def work(tick: Tick) -> tuple[object, Diagnosis]:  # on a pool thread
            tick(0, 1)
            return matrix, diagnosis(matrix, taxon)

        self._start(work, self._on_diagnosed)
        return None

    def _start(self, work: Callable[[Tick], object], slot: Callable[[Any], None]) -> None:
        job = Job(work)
        job.succeeded.connect(slot)
        self._jobs.start(job)

    @Slot(object)
    def _on_turned(self, found: tuple[Session, tuple[Turn, ...]]) -> None:
        session, ways = found
        if session is self._wanted:
            self.turned.emit(session.case.id, ways)

    @Slot(object)
    def _on_diagnosed(self, found: tuple[object, Diagnosis]) -> None:
        matrix, one = found
        self._diagnoses[(id(matrix), one.taxon)] = one
        self.diagnosed.emit(one.taxon, one)
