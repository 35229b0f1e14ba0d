"""From a case to everything the bench shows of it; the only door to the engine."""

import threading
from collections import OrderedDict
from collections.abc import Mapping
from dataclasses import dataclass

from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.effects import effects
from idkey.engine.matrix import Matrix
from idkey.engine.questions import questions
from idkey.engine.result import (
    Assessment,
    Candidate,
    Caution,
    Effect,
    Level,
    OpenName,
    Question,
    Stake,
    Verdict,
    VerdictKind,
)
from idkey.engine.thumbs import Leaning, leaning
from idkey.model.case import Case
from idkey.model.key import Key

KEPT = 6
"""How many compiled keys are kept: sexes, stages and cares that a person flips between."""

SLOW_CELLS = 20_000
"""Taxa times characters from which reasoning may take longer than a frame (measured)."""

SLOW_TO_READ = 2_000
"""Taxa times characters from which compiling takes over 50 ms (22 to 40 µs each, measured)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reasoned:
    """What the findings of a case say.

    Attributes:
        assessment: Line-up, cautions, verdict; names the case it is about.
        questions: Every character as a question, best first.
        effects: What each finding changed.
        leaning: What rests on rules of thumb; None when nothing does.
        read: Whether anything was reasoned; else every taxon stands, and with it every caution.
    """

    assessment: Assessment
    questions: tuple[Question, ...]
    effects: tuple[Effect, ...]
    leaning: Leaning | None = None
    read: bool = True


class Reasoner:
    """Reasons over cases; remembers compiled keys.

    It may be called from several threads: what is remembered never changes, and at worst a key
    is compiled twice.
    """

    def __init__(self) -> None:
        self._matrices: OrderedDict[object, Matrix] = OrderedDict()
        self._lock = threading.Lock()

    def compiled(self, key: Key, case: Case) -> Matrix | None:
        """The key compiled for sex, stage and care of the case, if that was done before."""
        with self._lock:
            return self._matrices.get(_place(key, case))

    def matrix(self, key: Key, case: Case) -> Matrix:
        """The key compiled for the sex, stage and care of the case."""
        found = self.compiled(key, case) or compile_key(key, case.specimen, case.care)
        with self._lock:
            self._matrices[_place(key, case)] = found
            self._matrices.move_to_end(_place(key, case))
            if len(self._matrices) > KEPT:
                self._matrices.popitem(last=False)
        return found

    def waits(self, key: Key, case: Case) -> bool:
        """Whether reasoning over the case belongs off the UI thread."""
        cells = len(key.taxa) * len(key.characters)
        if cells > SLOW_CELLS:
            return True
        return cells > SLOW_TO_READ and self.compiled(key, case) is None

    def reasoned(self, key: Key, case: Case, prior: Mapping[str, float] | None) -> Reasoned:
        """Everything the findings of `case` say; `prior` counts when the case wants it."""
        matrix = self.matrix(key, case)
        assessment = assess(matrix, case, prior)
        return Reasoned(
            assessment=assessment,
            questions=questions(matrix, assessment),
            effects=effects(matrix, case, prior),
            leaning=leaning(matrix, assessment),
        )


def unread(key: Key, case: Case) -> Reasoned:
    """What stands for a case until its key is compiled: nothing is ruled out, all is open."""
    share = 1 / (len(key.taxa) + 1)
    verdict = Verdict(
        kind=VerdictKind.OPEN,
        level=Level.OPEN,
        taxa=(),
        name=OpenName(text=""),
        support=share,
        answers=0,
        fit=None,
        separated=0,
    )
    assessment = Assessment(
        case=case,
        lineup=tuple(Candidate(taxon=taxon.id, support=share) for taxon in key.taxa),
        background=share,
        cautions=_every_caution(key, share),
        verdict=verdict,
    )
    return Reasoned(assessment=assessment, questions=(), effects=(), read=False)


def _every_caution(key: Key, share: float) -> tuple[Caution, ...]:
    concerned = (
        (Stake.HAZARD, tuple(taxon.id for taxon in key.taxa if taxon.dangerous)),
        (Stake.PERMIT, tuple(taxon.id for taxon in key.taxa if taxon.listed)),
    )
    return tuple(
        Caution(
            stake=stake,
            taxa=taxa,
            support=share * len(taxa),
            certain=len(taxa) == len(key.taxa),
        )
        for stake, taxa in concerned
        if taxa
    )


def _place(key: Key, case: Case) -> object:
    return (key.id, key.version, key.digest, id(key), case.specimen, case.care)
