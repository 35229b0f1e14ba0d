"""From a case to everything the engine says about it."""

import uuid
from dataclasses import dataclass
from datetime import UTC, datetime

from idkey.engine.assess import assess
from idkey.engine.compile import compiled
from idkey.engine.labels import claimed
from idkey.engine.priors import label_prior
from idkey.engine.questions import questions
from idkey.engine.result import Assessment, Level, Question, VerdictKind
from idkey.engine.thumbs import Leaning, leaning
from idkey.model.case import Case
from idkey.model.character import Look
from idkey.model.key import Key


@dataclass(frozen=True, slots=True)
class Judgement:
    """What is known, what to look at next (best first, blocked ones last), what is weak."""

    assessment: Assessment
    questions: tuple[Question, ...]
    leaning: Leaning | None = None

    @property
    def open(self) -> tuple[Question, ...]:
        """Questions on a live animal that may be asked now and would tell something."""
        return tuple(
            question
            for question in self.questions
            if question.blocked is None and question.value > 0 and question.look is not Look.DEAD
        )

    @property
    def decided(self) -> bool:
        """Whether the evidence decides about the label, or without one about the name."""
        verdict = self.assessment.verdict
        if verdict.kind is VerdictKind.LABEL_UNKNOWN:
            return verdict.level is not Level.OPEN
        return verdict.kind is not VerdictKind.OPEN


def judged(key: Key, case: Case) -> Judgement:
    """Weigh a case; the key's own rates for its label count when the case wants a prior."""
    matrix = compiled(key, case.specimen, case.care)
    label = claimed(key, case)
    prior = label_prior(key, label, {}).shares if label and case.use_prior else None
    assessment = assess(matrix, case, prior)
    return Judgement(assessment, questions(matrix, assessment), leaning(matrix, assessment))


def new_case(key: Key) -> Case:
    """An empty case of today."""
    return Case(
        id=str(uuid.uuid4()),
        key=key.id,
        key_version=key.version,
        key_digest=key.digest,
        created=now(),
    )


def now() -> str:
    """This moment, ISO 8601 in UTC."""
    return datetime.now(UTC).isoformat(timespec="seconds").replace("+00:00", "Z")
