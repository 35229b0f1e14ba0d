"""Whether a verdict would rest on a rule of thumb of the trade."""

from dataclasses import dataclass

import numpy as np

from idkey.engine.assess import assess
from idkey.engine.cautions import dismissed, dismissed_by_all
from idkey.engine.evidence import Flags, usable
from idkey.engine.matrix import Matrix
from idkey.engine.questions import questions, useful
from idkey.engine.result import Assessment, Level, Verdict, VerdictKind
from idkey.engine.weighing import weigh
from idkey.model.case import Aim
from idkey.model.score import Shows

INSTEAD = 3
"""How many characters are named to look at instead."""

_SETTLED = (Level.ESTABLISHED, Level.GROUP)
_SAID = (VerdictKind.HOLDS, VerdictKind.TOO_BROAD, VerdictKind.CONTRADICTED)
_BROAD = ("family", "")
"""Ranks of the certain part of a name that say too little to be warned about."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Failure:
    """How a rule of thumb does in the key: what else shows what was seen.

    Attributes:
        character: The rule's character.
        alike: Taxa that may show what was seen, in the order of the line-up.
        torn: Those of them that may show something else as well.
        scored: How many taxa have a score for it.
    """

    character: str
    alike: tuple[str, ...]
    torn: tuple[str, ...]
    scored: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Leaning:
    """What rests on rules of thumb.

    Attributes:
        failures: The rules without which the verdict would be another; empty when it stands
            without them.
        without: The verdict without them; the verdict itself when it stands.
        instead: Characters to look at instead, best first.
        kept: Taxa that keep a caution up because nothing but rules of thumb speaks firmly
            enough against them, in the order of the key.
    """

    failures: tuple[Failure, ...]
    without: Verdict
    instead: tuple[str, ...] = ()
    kept: tuple[str, ...] = ()


def leaning(matrix: Matrix, assessment: Assessment) -> Leaning | None:
    """What of an assessment rests on rules of thumb; None when nothing does.

    The case is judged again without each of them, and without all of them.

    Args:
        matrix: The compiled key.
        assessment: What is known.
    """
    thumbs = _thumbs(matrix, assessment)
    if not thumbs:
        return None
    kept = _kept(matrix, assessment)
    fallen = _fallen(matrix, assessment, thumbs) if _claims(assessment.verdict) else ()
    if not fallen:
        verdict = assessment.verdict
        return Leaning(failures=(), without=verdict, kept=kept) if kept else None
    bare = _without(matrix, assessment, fallen)
    return Leaning(
        failures=tuple(_failure(matrix, assessment, character) for character in fallen),
        without=bare.verdict,
        instead=_instead(matrix, bare),
        kept=kept,
    )


def _thumbs(matrix: Matrix, assessment: Assessment) -> tuple[str, ...]:
    known = matrix.key.character
    return tuple(
        finding.character
        for finding in assessment.case.findings
        if usable(matrix, finding) and known[finding.character].rule_of_thumb
    )


def _without(matrix: Matrix, assessment: Assessment, characters: tuple[str, ...]) -> Assessment:
    """The case judged again, with the same prior, as if these characters told nothing."""
    prior = dict(assessment.prior)
    return assess(matrix, assessment.case, prior, muted=frozenset(characters))


def _fallen(matrix: Matrix, assessment: Assessment, thumbs: tuple[str, ...]) -> tuple[str, ...]:
    """The rules the verdict falls without: each that it needs alone, else all together."""

    def falls(characters: tuple[str, ...]) -> bool:
        return _lost(assessment.verdict, _without(matrix, assessment, characters).verdict)

    alone = tuple(character for character in thumbs if falls((character,)))
    if alone:
        return alone
    return thumbs if len(thumbs) > 1 and falls(thumbs) else ()


def _claims(verdict: Verdict) -> bool:
    """Whether the verdict says anything that could be wrong."""
    named = verdict.name.rank not in _BROAD
    return verdict.level is not Level.OPEN or verdict.kind in _SAID or named


def _lost(said: Verdict, bare: Verdict) -> bool:
    """Whether `bare` no longer carries something that `said` says."""
    if said.kind in _SAID and bare.kind is not said.kind:
        return True
    if said.level is Level.OUTSIDE:
        return bare.level is not Level.OUTSIDE
    if said.level in _SETTLED:
        return bare.level not in _SETTLED or not set(bare.taxa) <= set(said.taxa)
    named = said.name.rank not in _BROAD
    return named and said.name.certain.partition(" ")[0] != bare.name.certain.partition(" ")[0]


def _kept(matrix: Matrix, assessment: Assessment) -> tuple[str, ...]:
    """Taxa that only rules of thumb would dismiss."""
    if not assessment.cautions or assessment.verdict.level is Level.OUTSIDE:
        return ()
    weighing = weigh(matrix, assessment.case, dict(assessment.prior))
    spared: Flags = dismissed_by_all(matrix, weighing) & ~dismissed(matrix, weighing)
    rows = np.flatnonzero(spared)
    loose = (caution for caution in assessment.cautions if not caution.certain)
    warned = {taxon for caution in loose for taxon in caution.taxa}
    return tuple(matrix.taxa[row] for row in rows if matrix.taxa[row] in warned)


def _instead(matrix: Matrix, bare: Assessment) -> tuple[str, ...]:
    """The best questions that are no rules of thumb, as things stand without those."""
    known = matrix.key.character
    better = [
        question.character
        for question in questions(matrix, bare, Aim.TAXON)
        if useful(question) and not known[question.character].rule_of_thumb
    ]
    return tuple(better[:INSTEAD])


def _failure(matrix: Matrix, assessment: Assessment, character: str) -> Failure:
    key = matrix.key
    finding = assessment.case.finding(character)
    seen = set(finding.states) if finding else set()
    if finding and finding.negated:
        seen = set(key.character[character].state_ids) - seen
    shown = {c.taxon: _shown(matrix, c.taxon, character) for c in assessment.lineup}
    alike = tuple(taxon for taxon, states in shown.items() if states & seen)
    return Failure(
        character=character,
        alike=alike,
        torn=tuple(taxon for taxon in alike if shown[taxon] - seen),
        scored=sum((taxon.id, character) in key.cells for taxon in key.taxa),
    )


def _shown(matrix: Matrix, taxon: str, character: str) -> set[str]:
    """States a taxon may show, whatever its sex and stage."""
    scores = matrix.key.cells.get((taxon, character), ())
    return {s for score in scores if isinstance(score.value, Shows) for s in score.value.states}
