"""Where sessions come from: an empty case, a case of the record book, a case that was left."""

import uuid
from collections.abc import Callable, Mapping
from dataclasses import replace

from idkey.app.bench.place import Place
from idkey.app.bench.session import Session
from idkey.app.bench.trail import Trails
from idkey.app.parts.reasoner import Reasoner, unread
from idkey.engine.labels import claimed, match_labels
from idkey.engine.priors import label_prior
from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.store.book import Store
from idkey.store.record import StoredCase


class CaseShelf:
    """Makes sessions; keeps those that stand in the tray beside the one on the bench.

    Args:
        keys: Keys by id; at least one.
        store: The record book, for reading.
        reasoner: Reasons over cases.
        took_up: Told which case of the record book is worked on from now on.

    Attributes:
        trails: Where undo and redo of the cases go.
    """

    def __init__(
        self,
        keys: Mapping[str, Key],
        store: Store,
        reasoner: Reasoner,
        *,
        took_up: Callable[[StoredCase], None],
    ) -> None:
        self.keys = keys
        self._took_up = took_up
        self.trails = Trails(store)
        self._store = store
        self._reasoner = reasoner
        self._standing: dict[str, Session] = {}

    def put(self, session: Session) -> None:
        """Keep a session of the tray."""
        self._standing[session.case.id] = session

    def standing(self) -> tuple[Session, ...]:
        """The sessions that are kept, in no order."""
        return tuple(self._standing.values())

    def standing_one(self, case_id: str, *, here: Session) -> Session | None:
        """The session of a case if it is the one on the bench, `here`, or kept beside it."""
        return here if case_id == here.case.id else self._standing.get(case_id)

    def tray(self, here: Session) -> tuple[Session, ...]:
        """The sessions of the tray of `here`, in order; those that cannot be had are left out."""
        found = (here if c == here.case.id else self.known(c) for c in here.open)
        return tuple(session for session in found if session is not None)

    def waiting(self, here: Session) -> Session | None:
        """The first session that is still to be reasoned over: `here`, then those of its tray."""
        beside = (self.standing_one(case_id, here=here) for case_id in here.open)
        return next((one for one in (here, *beside) if one is not None and one.thinking), None)

    def drop(self, case_id: str) -> None:
        """Forget a session; its case stays in the record book."""
        self._standing.pop(case_id, None)

    def session(self, case_id: str) -> Session:
        """The session of a case: the one that was left, else the case of the record book.

        Raises:
            Missing: The record book has no such case.
            UnreadableRecord: A newer program saved it.
            IdKeyError: It was made with a key that is not here.
        """
        if case_id in self._standing:
            return self._standing[case_id]
        stored = self._store.case(case_id)
        self._took_up(stored)
        return self.trails.taken_up(self.of(stored.case), stored)

    def resumed(self, place: Place, *, by: str) -> Session:
        """The session a person was at, with its tray; cases that cannot be had are left out."""
        tray = []
        for left in place.tray:
            session = self.known(left.case)
            if session is not None:
                asked = left.asked if left.asked in session.key.character else ""
                self.put(replace(session, asked=asked, mode=left.mode))
                tray.append(left.case)
        if place.case in tray:
            session = self.session(place.case)
        else:
            session = self.fresh(place.key, case_id=place.case, by=by)
            tray.append(session.case.id)
        return replace(session, open=tuple(tray))

    def key_of(self, case_id: str) -> str:
        """Id of the key of a case, without reading that key; raises as `session`."""
        standing = self._standing.get(case_id)
        return standing.key.id if standing else self._store.case(case_id).case.key

    def known(self, case_id: str) -> Session | None:
        """The session of a case, or None when it cannot be had."""
        try:
            return self.session(case_id)
        except IdKeyError:
            return None

    def fresh(self, key: str, *, case_id: str = "", by: str = "") -> Session:
        """An empty case; `case_id` goes on with one that was never saved."""
        return self.of(
            Case(
                id=case_id or str(uuid.uuid4()),
                key=key if key in self.keys else next(iter(self.keys)),
                by=by,
                created=self._store.now(),
            )
        )

    def of(self, case: Case) -> Session:
        """A session over a case.

        Raises:
            IdKeyError: It was made with a key that is not here.
        """
        key = self.keys.get(case.key)
        if key is None:
            raise IdKeyError(
                f"The case was made with the key {case.key!r}, which is not here.",
                "Add that key to the library, then open the case again.",
            )
        made = Session(key=key, case=case, reasoned=unread(key, case), open=(case.id,))
        return self.judged(self.with_label(made))

    def twins(self, session: Session, times: int) -> tuple[Session, ...]:
        """Fresh cases with the claim and the aim of a session; they are reasoned over once."""
        case = session.case
        fresh = self.fresh(case.key, by=case.by)
        first = self.of(replace(fresh.case, claim=case.claim, aim=case.aim))
        found = []
        for _ in range(times):
            other = replace(first.case, id=str(uuid.uuid4()))
            told = replace(first.reasoned.assessment, case=other)
            reasoned = replace(first.reasoned, assessment=told)
            found.append(replace(first, case=other, reasoned=reasoned, open=(other.id,)))
        return tuple(found)

    def judged(self, session: Session) -> Session:
        """The session reasoned over, or `thinking` where that takes longer than a frame."""
        key, case = session.key, session.case
        if self._reasoner.waits(key, case):
            return replace(session, thinking=True)
        reasoned = self._reasoner.reasoned(key, case, session.prior)
        return replace(session, reasoned=reasoned, thinking=False)

    def with_label(self, session: Session) -> Session:
        """The session with label entry, near matches and prior of its claim.

        The prior leaves the case itself out, so that it is no evidence for itself.
        """
        key, case = session.key, session.case
        label = claimed(key, case)
        matches = () if label or not case.claim.text else match_labels(key, case.claim.text)
        prior: Mapping[str, float] | None = None
        if label is not None:
            outcomes = self._store.outcomes(label.id, excluding=case.id, key=key.id)
            known = {taxon: n for taxon, n in outcomes.items() if taxon in key.taxon}
            prior = label_prior(key, label, known).shares
        return replace(session, label=label, matches=matches, prior=prior)
