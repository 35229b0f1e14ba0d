"""What the bench holds at one moment, as a value, and its steps."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import StrEnum

from idkey.app.parts.reasoner import Reasoned
from idkey.engine.result import Assessment, Effect, LabelMatch, Question
from idkey.model.case import Case
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.model.label import Label

DEPTH = 200
"""How many steps can be taken back."""


class Mode(StrEnum):
    """How the person goes through the key."""

    FREE = "free"
    COUPLETS = "couplets"


@dataclass(frozen=True, slots=True, kw_only=True)
class Session:
    """The case on the bench and everything around it.

    Attributes:
        key: The key in use.
        case: The case as it stands.
        reasoned: What its findings say; about an earlier case while `thinking`.
        past: Earlier cases, oldest first; undo goes there.
        future: Cases that were undone, the next one last.
        older: Revisions before `past`, from an earlier sitting, oldest first.
        newer: Revisions after `future`, from an earlier sitting, the next one last.
        asked: Character the person chose to look at; empty follows the best question.
        mode: Free choice or couplets.
        label: The label entry the claim stands for; None while nobody confirmed one.
        matches: Entries that are near the typed label, while none is confirmed.
        prior: Share per taxon id that the label gives; None without a label.
        drafts: Text not confirmed yet, by name.
        thinking: Whether `reasoned` is behind `case`.
        open: Ids of the cases in the tray, in order; the case on the bench is one of them.
    """

    key: Key
    case: Case
    reasoned: Reasoned
    past: tuple[Case, ...] = ()
    future: tuple[Case, ...] = ()
    older: tuple[int, ...] = ()
    newer: tuple[int, ...] = ()
    asked: str = ""
    mode: Mode = Mode.FREE
    label: Label | None = None
    matches: tuple[LabelMatch, ...] = ()
    prior: Mapping[str, float] | None = None
    drafts: Mapping[str, str] = field(default_factory=dict)
    thinking: bool = False
    open: tuple[str, ...] = ()

    @property
    def blank(self) -> bool:
        """Whether nothing is known of the animal, not even a label."""
        return not (self.case.claim.text or self.case.findings or self.asked)

    @property
    def reading(self) -> bool:
        """Whether the key is still being compiled, so that nothing can be said of the case."""
        return not self.reasoned.read

    @property
    def judged(self) -> Assessment | None:
        """What is known of the case as it stands; None while that is worked out."""
        return None if self.thinking else self.reasoned.assessment

    @property
    def undoable(self) -> bool:
        """Whether there is a step to take back."""
        return bool(self.past or self.older)

    @property
    def redoable(self) -> bool:
        """Whether there is a step to do again."""
        return bool(self.future or self.newer)

    @property
    def question(self) -> Question | None:
        """The question on the card: the chosen one, else the best that may be asked."""
        if self.asked:
            asked = (q for q in self.reasoned.questions if q.character == self.asked)
            return next(asked, None)
        return next(iter(self.open_questions), None)

    @property
    def open_questions(self) -> tuple[Question, ...]:
        """Questions that may be asked now, best first."""
        case = self.case
        return tuple(
            q
            for q in self.reasoned.questions
            if q.blocked is None and case.finding(q.character) is None
        )

    @property
    def character(self) -> Character | None:
        """The character on the card."""
        question = self.question
        return None if question is None else self.key.character[question.character]

    def effect(self, character: str) -> Effect | None:
        """What the finding on `character` changed; None while that is not worked out."""
        return next((e for e in self.reasoned.effects if e.character == character), None)

    def moved(self, case: Case) -> "Session":
        """The session after a step to `case`; it can be undone."""
        past = (*self.past, self.case)[-DEPTH:]
        older = self.older[max(len(self.older) + len(past) - DEPTH, 0) :]
        return replace(self, case=case, past=past, future=(), older=older, newer=())

    def undone(self) -> "Session":
        """The session one step earlier; the same one at the start."""
        if not self.past:
            return self
        return replace(
            self, case=self.past[-1], past=self.past[:-1], future=(*self.future, self.case)
        )

    def redone(self) -> "Session":
        """The session with the last undone step done again; the same one when there is none."""
        if not self.future:
            return self
        return replace(
            self, case=self.future[-1], past=(*self.past, self.case), future=self.future[:-1]
        )
