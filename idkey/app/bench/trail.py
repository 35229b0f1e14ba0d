"""The way back of each open case, kept in the record book: undo goes on after a restart.

Every step is a revision of the record book already, so a trail is only their numbers.
"""

import json
import threading
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from idkey.app.bench.session import DEPTH, Session
from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.store.book import Store
from idkey.store.record import Revision, StoredCase

BLANK = 0
"""Number that stands for the case before its first step, which is in no revision."""


@dataclass(frozen=True, slots=True)
class Trail:
    """Where undo and redo go, as numbers of revisions.

    Attributes:
        past: Earlier cases, oldest first.
        here: The case as it stands.
        future: Cases that were undone, the next one last.
    """

    past: tuple[int, ...] = ()
    here: int = BLANK
    future: tuple[int, ...] = ()

    @classmethod
    def of_text(cls, text: str) -> "Trail":
        """The trail that was kept; an empty one when it cannot be read."""
        try:
            past, here, future = json.loads(text)
            return cls(tuple(map(int, past)), int(here), tuple(map(int, future)))
        except (ValueError, TypeError):
            return cls()

    @property
    def text(self) -> str:
        """The trail as it is kept; empty when it leads nowhere."""
        whole = (self.past[-DEPTH:], self.here, self.future[-DEPTH:])
        return json.dumps(whole) if self.past or self.future else ""


class Trails:
    """Knows which revision a case is, and keeps the trails.

    It is used from the UI thread and from the thread that writes.

    Args:
        store: The record book.
    """

    def __init__(self, store: Store) -> None:
        self._store = store
        self._lock = threading.Lock()
        self._numbers: dict[str, dict[int, tuple[Case, int]]] = {}
        """Per case: the number of each value of it, by identity; the value is held with it."""
        self._kept: dict[str, str] = {}

    def keeping(self, session: Session) -> Callable[[Revision], None]:
        """What is to be done once the case of the session is a revision."""

        def keep(revision: Revision) -> None:  # on the writing thread
            case = session.case
            with self._lock:
                self._note(case, revision.number)
                trail = Trail(
                    self._numbered(session.older, session.past),
                    revision.number,
                    self._numbered(session.newer, session.future),
                )
                self._prune(session)
            self._put(case.id, trail.text)

        return keep

    def forget(self, case_id: str) -> Callable[[], None]:
        """What is to be done once a case is put away: its trail goes."""

        def drop() -> None:  # on the writing thread
            with self._lock:
                self._numbers.pop(case_id, None)
            self._put(case_id, "")

        return drop

    def taken_up(self, session: Session, stored: StoredCase) -> Session:
        """A session over a case of the record book, with the trail it was left with."""
        case, number = session.case, stored.revision.number
        text = self._store.draft(_name(case.id))
        with self._lock:
            self._kept[case.id] = text
            self._note(case, number)
        trail = Trail.of_text(text)
        if not text or trail.here == number:
            return replace(session, older=trail.past, newer=trail.future)
        left = self.case(case, trail.here)
        if left == case:
            return replace(session, older=trail.past, newer=trail.future)
        # The step after it was saved and its trail was not: undo goes to where the trail ends.
        return replace(session, older=(*trail.past, trail.here) if left else ())

    def recalled(self, session: Session) -> Session:
        """The session with the next case of either end read from the record book."""
        if session.older and not session.past:
            case = self.case(session.case, session.older[-1])
            older = session.older[:-1] if case else ()
            session = replace(session, past=(case,) if case else (), older=older)
        if session.newer and not session.future:
            case = self.case(session.case, session.newer[-1])
            newer = session.newer[:-1] if case else ()
            session = replace(session, future=(case,) if case else (), newer=newer)
        return session

    def case(self, like: Case, number: int) -> Case | None:
        """A case as that revision has it; None when it cannot be had."""
        if number == BLANK:
            return _blank(like)
        try:
            case = self._store.case(like.id, number).case
        except IdKeyError:
            return None
        with self._lock:
            self._note(case, number)
        return case

    def _note(self, case: Case, number: int) -> None:
        self._numbers.setdefault(case.id, {})[id(case)] = (case, number)

    def _numbered(self, further: Iterable[int], cases: Iterable[Case]) -> tuple[int, ...]:
        """The numbers of one end; what lies beyond a case without one is cut off."""
        found = list(further)
        for case in cases:
            known = self._numbers[case.id].get(id(case))
            if known is not None:
                found.append(known[1])
            elif case == _blank(case):
                found.append(BLANK)
            else:
                found.clear()
        return tuple(found)

    def _prune(self, session: Session) -> None:
        """Let go of values that no undo can reach any more."""
        reached = {id(case) for case in (*session.past, session.case, *session.future)}
        known = self._numbers[session.case.id]
        self._numbers[session.case.id] = {k: v for k, v in known.items() if k in reached}

    def _put(self, case_id: str, text: str) -> None:
        if self._kept.get(case_id, "") != text:
            self._kept[case_id] = text
            self._store.put_draft(_name(case_id), text)


def _name(case_id: str) -> str:
    return f"{case_id}/trail"


def _blank(case: Case) -> Case:
    """The case before its first step."""
    return Case(id=case.id, key=case.key, by=case.by, created=case.created)
