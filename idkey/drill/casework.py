"""Run a case: a whole identification under a label that may mislead, judged by the real engine."""

from dataclasses import dataclass, replace

import numpy as np

from idkey.drill.conclusion import CONCLUSIONS, Conclusion, Looked, Outcome
from idkey.drill.exercises import sighting
from idkey.drill.item import Item
from idkey.drill.specimen import Individual
from idkey.engine.assess import assess
from idkey.engine.matrix import Matrix
from idkey.engine.questions import questions
from idkey.engine.result import Assessment, Blocked, Question, Stake, VerdictKind
from idkey.model.case import Aim, Case, Claim, Finding
from idkey.model.character import Character, Look
from idkey.model.key import Key
from idkey.store.drill_log import Answer, CaseMarks, Sighting

MOULTS = 0.4
"""Share of animals that come with a moult. Common practice, no source."""

MOST = 20
"""Findings after which the sure eye stops as well."""

WORTH = 0.003
"""Bits per unit of trouble below which nothing is worth looking at any more; measured so that a
case ends where further looks no longer change the verdict."""

ROOM = 1.5
"""How many times the findings of a sure eye a person may need without it counting as a slip."""


@dataclass(frozen=True, kw_only=True)
class RunCase:
    """A case to run.

    Attributes:
        item: Label and taxon.
        individual: The animal.
        matrix: The key, compiled for its sex and stage.
        case: Claim and findings so far.
        assessment: What they say.
        looked: Looks so far; the last one may be open.
        par: Findings that a sure eye needs on this animal, always taking the best question.
        conclusion: What was concluded; None until then.
    """

    item: Item
    individual: Individual
    matrix: Matrix
    case: Case
    assessment: Assessment
    looked: tuple[Looked, ...] = ()
    par: int = 0
    conclusion: Conclusion | None = None

    @property
    def key(self) -> Key:
        """The key."""
        return self.matrix.key

    @property
    def done(self) -> bool:
        """Whether a conclusion was drawn."""
        return self.conclusion is not None

    @property
    def open_look(self) -> Looked | None:
        """The look that waits for an answer."""
        last = self.looked[-1] if self.looked else None
        return last if last and last.visible and last.sighting is None else None

    @property
    def wary(self) -> bool:
        """Whether a medically significant species is still possible."""
        return self._caution(Stake.HAZARD)

    @property
    def listed(self) -> bool:
        """Whether a permit-listed species is still possible."""
        return self._caution(Stake.PERMIT)

    def _caution(self, stake: Stake) -> bool:
        return any(caution.stake is stake for caution in self.assessment.cautions)

    @property
    def to_look_at(self) -> tuple[Character, ...]:
        """Characters that can still be looked at in some way, in the order of the key."""
        out = (Blocked.SEX, Blocked.STAGE, Blocked.REQUIRES)
        asked = {q.character for q in self._questions() if q.blocked not in out}
        return tuple(c for c in self.key.characters if c.id in asked and self.ways(c.id))

    def ways(self, character: str) -> tuple[Look, ...]:
        """Ways of looking that are left: no moult unless there is one, never dead, none twice.

        None once something was seen.
        """
        tried = [looked for looked in self.looked if looked.character == character]
        if any(looked.visible for looked in tried):
            return ()
        out = {Look.DEAD, *(looked.look for looked in tried)}
        if self._chance("moult").random() >= MOULTS:
            out.add(Look.MOULT)
        return tuple(look for look in self.key.character[character].looks if look not in out)

    def look(self, character: str, look: Look) -> "RunCase":
        """Look at a character; what cannot be seen that way is noted as such at once.

        Raises:
            ValueError: The animal does not offer that way of looking.
        """
        if self.done or self.open_look is not None:
            return self
        if look not in self.ways(character):
            raise ValueError(f"{character!r} cannot be looked at by {look.value!r} here")
        visible = self._visible(character, look)
        taken = Looked(
            character=character,
            look=look,
            visible=visible,
            wary=self.wary,
            needless=look.handling and (self.wary or self._gentler(character)),
        )
        run = replace(self, looked=(*self.looked, taken))
        if visible:
            return run
        return run._noted(Finding(character=character, unseen=True, look=look))

    def answer(self, said: Answer) -> "RunCase":
        """Say what is in view: a state id, a number, or None for "cannot tell"."""
        at = self.open_look
        if at is None or self.done:
            return self
        truth = self.individual.animal.shown[at.character]
        seen = sighting(self.key.character[at.character], truth, said)
        run = replace(self, looked=(*self.looked[:-1], replace(at, sighting=seen)))
        return run._noted(_finding(at, said))

    def conclude(self, conclusion: Conclusion) -> "RunCase":
        """End the case; the first conclusion stands."""
        if self.done or self.open_look is not None:
            return self
        return replace(self, conclusion=conclusion)

    @property
    def truth(self) -> VerdictKind:
        """What the label deserves, knowing what the animal is."""
        label = self.key.label[self.item.label]
        covered = [taxon for taxon in label.covers if taxon in self.key.taxon]
        if not label.covers and not label.covers_outside:
            return VerdictKind.TOO_BROAD
        if self.individual.animal.taxon not in covered:
            return VerdictKind.CONTRADICTED
        several = len(covered) > 1 or bool(label.covers_outside)
        return VerdictKind.TOO_BROAD if several else VerdictKind.HOLDS

    @property
    def outcome(self) -> Outcome:
        """How the conclusion stands; UNFINISHED while there is none."""
        if self.conclusion is None:
            return Outcome.UNFINISHED
        said, carried = self.conclusion.verdict, self.assessment.verdict.kind
        settled = carried in CONCLUSIONS and carried is not VerdictKind.OPEN
        if not settled:
            if said is not VerdictKind.OPEN:
                return Outcome.OVERSTATED
            return Outcome.UNFINISHED if self.worth_asking else Outcome.RIGHT
        if said is VerdictKind.OPEN:
            return Outcome.UNDERSTATED
        if said is not carried:
            return Outcome.WRONG
        return Outcome.RIGHT if carried is self.truth else Outcome.MISREAD

    @property
    def worth_asking(self) -> tuple[str, ...]:
        """Characters that would still tell something and can be looked at, best first."""
        return tuple(
            q.character
            for q in self._questions()
            if q.blocked is None and q.value >= WORTH and self.fair_ways(q.character)
        )

    @property
    def hazard_right(self) -> bool:
        """Whether danger and papers were judged as the findings ask for."""
        said = self.conclusion
        return said is not None and (said.hazard, said.permit) == (self.wary, self.listed)

    @property
    def handled(self) -> int:
        """Looks that brought the hand near without need."""
        return sum(looked.needless for looked in self.looked)

    @property
    def correct(self) -> bool:
        """Whether verdict, danger and handling were all right."""
        return self.outcome is Outcome.RIGHT and self.hazard_right and not self.handled

    @property
    def slips(self) -> int:
        """Misreadings, and one when far more was looked at than a sure eye needs."""
        misread = sum(not seen.right for seen in self.sightings)
        return misread + (len(self.looked) > ROOM * self.par + 1)

    @property
    def sightings(self) -> tuple[Sighting, ...]:
        """What was read, in order."""
        return tuple(one.sighting for one in self.looked if one.sighting is not None)

    @property
    def marks(self) -> CaseMarks:
        """How it went, as it is kept."""
        said = VerdictKind.OPEN if self.conclusion is None else self.conclusion.verdict
        return CaseMarks(
            verdict=said.value,
            carried=self.assessment.verdict.kind.value,
            truth=self.truth.value,
            hazard_right=self.hazard_right,
            findings=len(self.looked),
            par=self.par,
            handled=self.handled,
        )

    def _questions(self) -> tuple[Question, ...]:
        return questions(self.matrix, self.assessment)

    def _noted(self, finding: Finding) -> "RunCase":
        case = self.case.observe(finding)
        return replace(self, case=case, assessment=assess(self.matrix, case))

    def _visible(self, character: str, look: Look) -> bool:
        if self.individual.shown(character) is None:
            return False
        return bool(self._chance(f"{character}/{look.value}").random() >= look.blind)

    def _gentler(self, character: str) -> bool:
        """Whether it could be seen without the hand coming near."""
        return any(self._visible(character, look) for look in self._safe_ways(character))

    def _safe_ways(self, character: str) -> tuple[Look, ...]:
        return tuple(look for look in self.ways(character) if not look.handling)

    def fair_ways(self, character: str) -> tuple[Look, ...]:
        """Ways without the hand; with it where nothing dangerous is left and no other is there."""
        return self._safe_ways(character) or (() if self.wary else self.ways(character))

    def _chance(self, what: str) -> np.random.Generator:
        return np.random.default_rng([self.individual.seed, *what.encode("utf-8")])


def run_case(item: Item, individual: Individual, matrix: Matrix) -> RunCase:
    """A case at its beginning.

    Args:
        item: Label and taxon.
        individual: The animal.
        matrix: The key, compiled for the sex and stage of the animal.
    """
    label = matrix.key.label[item.label]
    case = Case(
        id=f"drill-{individual.seed:08x}",
        key=matrix.key.id,
        key_version=matrix.key.version,
        key_digest=matrix.key.digest,
        claim=Claim(text=label.text, label=label.id),
        specimen=individual.kind,
        aim=Aim.LABEL,
    )
    return RunCase(
        item=item,
        individual=individual,
        matrix=matrix,
        case=case,
        assessment=assess(matrix, case),
    )


def sure_eye(run: RunCase) -> RunCase:
    """The same case as a sure eye leaves it: the best fair question each time, answered rightly."""
    fresh = run_case(run.item, run.individual, run.matrix)
    while len(fresh.looked) < MOST and fresh.assessment.verdict.kind is VerdictKind.OPEN:
        best = next(iter(fresh.worth_asking), None)
        if best is None:
            break
        look = min(fresh.fair_ways(best), key=lambda one: one.effort)
        fresh = fresh.look(best, look).answer(fresh.individual.shown(best))
    return replace(fresh, par=len(fresh.looked))


def _finding(at: Looked, said: Answer) -> Finding:
    if said is None:
        return Finding(character=at.character, unseen=True, look=at.look)
    if isinstance(said, str):
        return Finding(character=at.character, states=(said,), look=at.look)
    return Finding(character=at.character, value=float(said), look=at.look)
