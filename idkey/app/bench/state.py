"""The one thing on the bench that changes."""

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.bench.case_shelf import CaseShelf
from idkey.app.bench.fetcher import Fetcher
from idkey.app.bench.place import kept_place, place_of
from idkey.app.bench.session import Mode, Session
from idkey.app.bench.steps import bared, illustrated, observed
from idkey.app.bench.thinker import Thinker
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.reasoner import Reasoned, Reasoner
from idkey.engine import walk
from idkey.engine.labels import match_labels
from idkey.model.case import Aim, Care, Case, Claim, Finding, Specimen
from idkey.model.couplet import Couplet

PLACE = "bench"
"""Setting that says which case, question and tray the bench was at."""

PERSON = "person"
"""Setting that says who works here."""


class BenchState(QObject):
    """Holds the session; every step goes to the record book as soon as it is made.

    Args:
        keys: Keys by id; at least one.
        keeper: Keeps cases, drafts and settings.
        parent: Owner.

    Signals:
        changed(session: Session): After each step that made a difference, and when reasoning
            that takes longer than a frame has arrived.
    """

    changed = Signal(object)

    def __init__(self, keys: KeyLibrary, keeper: Keeper, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.keys = keys
        self.keeper = keeper
        self.reasoner = Reasoner()
        self.fetcher = Fetcher(keys, self)
        self.thinker = Thinker(self.reasoner, self)
        self.thinker.thought.connect(self._on_thought)
        self._owed: dict[str, Case] = {}
        """Cases that were saved before their verdict was known."""
        self._shelf = CaseShelf(keys, keeper.store, self.reasoner, took_up=keeper.took_up)
        self._initials = str(keeper.setting(PERSON).get("initials", ""))
        self.session = self._shelf.fresh(next(iter(keys)), by=self._initials)
        self._think()

    def close(self) -> None:
        """Let go of work under way; what was asked to be kept is kept."""
        self.fetcher.close()
        self.thinker.close()

    def tray(self) -> tuple[Session, ...]:
        """The sessions of the open cases, in the order of the tray."""
        return self._shelf.tray(self.session)

    def new_case(self, key: str = "") -> None:
        """Put an empty case on the bench, beside those in the tray."""
        key = key or self.session.key.id
        self.fetcher.have(key, lambda: self._put(self._shelf.fresh(key, by=self._initials)))

    def open_case(self, case_id: str) -> None:
        """Put a case of the record book or of the tray on the bench.

        Raises:
            IdKeyError: There is no such case, it cannot be read, or its key is not here.
        """
        if case_id != self.session.case.id:
            key = self._shelf.key_of(case_id)
            self.fetcher.have(key, lambda: self._put(self._shelf.session(case_id)))

    def put_on_bench(self, case: Case) -> None:
        """Put a case that is not in the record book yet on the bench, and keep it."""
        session = self._shelf.of(case)
        self._save(session)
        self._put(session)

    def next_case(self, step: int = 1) -> None:
        """Put the next case of the tray on the bench."""
        tray = self.session.open
        if len(tray) > 1:
            here = tray.index(self.session.case.id)
            self.open_case(tray[(here + step) % len(tray)])

    def leave_case(self) -> None:
        """Take the case off the tray; it stays in the record book."""
        gone = self.session.case.id
        tray = tuple(case_id for case_id in self.session.open if case_id != gone)
        self._drop(gone)
        key, by = self.session.key.id, self._initials
        session = self._shelf.session(tray[-1]) if tray else self._shelf.fresh(key, by=by)
        self._show(replace(session, open=tray or (session.case.id,)))

    def copy_claim(self, times: int) -> None:
        """Add `times` cases with the same claim to the tray: the rest of a shipment."""
        twins = self._shelf.twins(self.session, times)
        for twin in twins:
            self._shelf.put(twin)
            self._save(twin)
        added = tuple(twin.case.id for twin in twins)
        self._show(replace(self.session, open=(*self.session.open, *added)))

    def resume(self) -> None:
        """Go back to the case, the question and the tray of the last time."""
        place = kept_place(self.keeper.setting(PLACE))
        self._show(self._shelf.resumed(place, by=self._initials))

    def type_label(self, text: str) -> None:
        """Note what is being typed on the tag, before it is confirmed."""
        self.draft("label", text)
        matches = match_labels(self.session.key, text)
        if matches != self.session.matches:
            self._show(replace(self.session, matches=matches))

    def claim(self, claim: Claim) -> None:
        """Set what the label says; an entry that fits exactly is taken without asking."""
        if claim.text != self.session.case.claim.text:
            matches = match_labels(self.session.key, claim.text)
            sure = bool(matches) and matches[0].exact
            claim = replace(claim, label=matches[0].label if sure else "")
        self.draft("label", "")
        self.draft("tag", "")
        self._move(replace(self.session.case, claim=claim))

    def confirm_label(self, label_id: str) -> None:
        """Say which entry of the key the label stands for; empty for none of them."""
        case = self.session.case
        self._move(replace(case, claim=replace(case.claim, label=label_id)))

    def observe(self, finding: Finding) -> None:
        """Note a finding; it replaces one on the same character."""
        case = self.session.case
        known = case.finding(finding.character)
        if known is not None and replace(finding, at=known.at, by=known.by) == known:
            self.ask("")
            return
        now = self.keeper.store.now()
        self.draft(f"answer/{finding.character}", "")
        self._move(observed(case, replace(finding, at=now, by=case.by)), asked="")

    def withdraw(self, character: str) -> None:
        """Take a finding back."""
        self._move(self.session.case.withdraw(character))

    def add_pictures(self, case_id: str, character: str, pictures: tuple[str, ...]) -> None:
        """Say that pictures, by id, show a finding of a case, which need not be on the bench."""
        self._illustrate(case_id, lambda case: illustrated(case, character, pictures))

    def drop_picture(self, character: str, picture: str) -> None:
        """Say that a picture does not show a finding; the file stays for undo."""
        here = self.session.case.id
        self._illustrate(here, lambda case: bared(case, character, picture))

    def want(self, aim: Aim) -> None:
        """Say what the person needs to know."""
        self._move(replace(self.session.case, aim=aim))

    def describe(self, specimen: Specimen) -> None:
        """Say what is known of the sex and the stage."""
        self._move(replace(self.session.case, specimen=specimen))

    def look_with(self, care: Care) -> None:
        """Say how the looking was done."""
        self._move(replace(self.session.case, care=care))

    def weigh_label(self, *, count: bool) -> None:
        """Say whether what the label usually turns out to be counts as evidence."""
        self._move(replace(self.session.case, use_prior=count))

    def sign(self, initials: str, language: str) -> None:
        """Say who determines, kept for the next cases too, and in which language."""
        self._initials = initials
        self.keeper.put_setting(PERSON, {"initials": initials})
        self._move(replace(self.session.case, by=initials, language=language))

    def take(self, couplet: str, leads: tuple[int, ...]) -> None:
        """Take one lead of a couplet, or several."""
        self._move(walk.take(self.session.key, self.session.case, couplet, leads), asked="")

    def couplets(self) -> tuple[Couplet, ...]:
        """The couplets the walk stands at."""
        return walk.here(self.session.key, self.session.case)

    @Slot()
    def step_back(self) -> None:
        """Go one couplet back."""
        self._move(walk.back(self.session.case))

    def ask(self, character: str) -> None:
        """Put a character on the card; empty goes on with the best question."""
        if character != self.session.asked:
            self._show(replace(self.session, asked=character))

    def go_by(self, mode: Mode) -> None:
        """Change between free choice and couplets."""
        if mode is not self.session.mode:
            self._show(replace(self.session, mode=mode))

    @Slot()
    def undo(self) -> None:
        """Take back the last step."""
        self._step_to(self._shelf.trails.recalled(self.session).undone())

    @Slot()
    def redo(self) -> None:
        """Do the last step again that was taken back."""
        self._step_to(self._shelf.trails.recalled(self.session).redone())

    def draft(self, name: str, text: str) -> None:
        """Keep text of this case that is not confirmed yet; empty text forgets it."""
        self.keeper.put_draft(f"{self.session.case.id}/{name}", text)

    def drafted(self, name: str) -> str:
        """Text of this case that was not confirmed; empty when there is none."""
        return self.keeper.store.draft(f"{self.session.case.id}/{name}")

    def _move(self, case: Case, asked: str | None = None) -> None:
        key = self.session.key
        if case == self.session.case:
            return
        moved = self.session.moved(replace(case, key_version=key.version, key_digest=key.digest))
        self._step_to(moved if asked is None else replace(moved, asked=asked))

    def _step_to(self, session: Session) -> None:
        """Show a session whose case is new: save it, and reason over it."""
        if session.case is self.session.case:
            return
        if session.case.claim != self.session.case.claim:
            session = self._shelf.with_label(session)
        session = self._shelf.judged(session)
        self._save(session)
        self._show(session)

    def _illustrate(self, case_id: str, change: Callable[[Case], Case]) -> None:
        session = self._shelf.known(case_id)
        if session is not None and change(session.case) != session.case:
            session = self._shelf.judged(session.moved(change(session.case)))
            self._save(session)
            self._keep(session)

    def _keep(self, session: Session) -> None:
        """Keep a session that changed, on the bench or behind it."""
        if session.case.id in self.session.open:
            self._shelf.put(session)
        self._show(session if session.case.id == self.session.case.id else self.session)

    def _save(self, session: Session) -> None:
        if session.thinking:
            self._owed[session.case.id] = session.case
        then = self._shelf.trails.keeping(session)
        self.keeper.save(session.case, session.judged, then=then)

    @Slot(object)
    def _on_thought(self, reasoned: Reasoned) -> None:
        case = reasoned.assessment.case
        session = self._shelf.standing_one(case.id, here=self.session)
        if session is None or session.case != case or not session.thinking:
            return
        session = replace(session, reasoned=reasoned, thinking=False)
        if self._owed.pop(case.id, None) == case:
            self._save(session)
        self._keep(session)

    def _put(self, session: Session) -> None:
        """Put another case on the bench; one that is blank leaves the tray."""
        tray = self.session.open
        if self.session.blank:
            tray = tuple(case_id for case_id in tray if case_id != self.session.case.id)
            self._drop(self.session.case.id)
        here = session.case.id
        self._show(replace(session, open=tray if here in tray else (*tray, here)))

    def _drop(self, case_id: str) -> None:
        """Put a case away; it stays in the record book, the way back goes."""
        self._shelf.drop(case_id)
        self.keeper.put_after(self._shelf.trails.forget(case_id))

    def _show(self, session: Session) -> None:
        self.session = session
        self._shelf.put(session)
        self.keeper.put_setting(PLACE, place_of(session, self._shelf.standing()))
        self._think()
        self.changed.emit(session)

    def _think(self) -> None:
        """Work out the case on the bench first, then the others of the tray."""
        waiting = self._shelf.waiting(self.session)
        if waiting is not None:
            self.thinker.think(waiting)
