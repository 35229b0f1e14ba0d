"""From a case to everything the bench shows of it; the only door to the engine."""

from collections import OrderedDict
from collections.abc import Mapping
from dataclasses import dataclass

from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.effects import effects
from idkey.engine.matrix import Matrix
from idkey.engine.questions import questions
from idkey.engine.result import Assessment, Effect, Question
from idkey.model.case import Case
from idkey.model.key import Key

KEPT = 6
"""How many compiled keys are kept: sexes, stages and cares that a person flips between."""

SLOW_CELLS = 20_000
"""Taxa times characters from which reasoning may take longer than a frame (measured)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reasoned:
    """What the findings of a case say.

    Attributes:
        assessment: Line-up, cautions, verdict; names the case it is about.
        questions: Every character as a question, best first.
        effects: What each finding changed.
    """

    assessment: Assessment
    questions: tuple[Question, ...]
    effects: tuple[Effect, ...]


class Reasoner:
    """Reasons over cases; remembers compiled keys.

    It may be called from several threads: what is remembered never changes, and at worst a key
    is compiled twice.
    """

    def __init__(self) -> None:
        self._matrices: OrderedDict[object, Matrix] = OrderedDict()

    def matrix(self, key: Key, case: Case) -> Matrix:
        """The key compiled for the sex, stage and care of the case."""
        place = (key.id, key.version, key.digest, id(key), case.specimen, case.care)
        found = self._matrices.pop(place, None)
        if found is None:
            found = compile_key(key, case.specimen, case.care)
        self._matrices[place] = found
        if len(self._matrices) > KEPT:
            self._matrices.popitem(last=False)
        return found

    def slow(self, key: Key) -> bool:
        """Whether reasoning over the key belongs off the UI thread."""
        return len(key.taxa) * len(key.characters) > SLOW_CELLS

    def reasoned(self, key: Key, case: Case, prior: Mapping[str, float] | None) -> Reasoned:
        """Everything the findings of `case` say; `prior` counts when the case wants it."""
        matrix = self.matrix(key, case)
        assessment = assess(matrix, case, prior)
        return Reasoned(
            assessment=assessment,
            questions=questions(matrix, assessment),
            effects=effects(matrix, case, prior),
        )
