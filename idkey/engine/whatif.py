"""Why a taxon stands where it stands, and what would change that."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import combinations

import numpy as np

from idkey.engine.assess import assess
from idkey.engine.matrix import Matrix
from idkey.engine.questions import questions, support_of
from idkey.engine.result import Assessment, Conflict, Verdict, VerdictKind
from idkey.engine.weighing import weigh
from idkey.model.case import Case, Finding
from idkey.model.character import Character

TRIED = 6
"""Open questions tried when looking for findings that would change the verdict."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Return:
    """What would bring a ruled-out taxon back.

    Attributes:
        taxon: Taxon id.
        against: The findings it cannot explain.
        withdraw: Fewest findings to withdraw so that it stands again; empty when it stands.
    """

    taxon: str
    against: tuple[Conflict, ...]
    withdraw: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Turn:
    """Findings that would change the verdict.

    Attributes:
        findings: The fewest such findings, all on characters nobody has looked at.
        verdict: The verdict they would give.
        chance: How likely the first of them is, as things stand.
    """

    findings: tuple[Finding, ...]
    verdict: Verdict
    chance: float


def way_back(matrix: Matrix, assessment: Assessment, taxon: str) -> Return:
    """What ruled `taxon` out and which findings would have to go.

    Raises:
        KeyError: The key has no such taxon.
    """
    row = matrix.row[taxon]
    case = assessment.case
    candidate = next(c for c in assessment.lineup if c.taxon == taxon)
    names = [c.finding.character for c in candidate.conflicts]
    for size in range(len(names) + 1):
        for gone in combinations(names, size):
            rest = tuple(f for f in case.findings if f.character not in gone)
            if not weigh(matrix, replace(case, findings=rest)).ruled_out[row]:
                return Return(taxon=taxon, against=candidate.conflicts, withdraw=gone)
    return Return(taxon=taxon, against=candidate.conflicts, withdraw=tuple(names))


def turns(matrix: Matrix, assessment: Assessment) -> tuple[Turn, ...]:
    """The fewest further findings that could change the verdict, likeliest first.

    Looks one finding ahead over the open questions, and two ahead where one changes nothing.
    Only states that some taxon is likely to show are tried.

    Returns:
        At most one turn per new verdict; empty when two findings cannot change it.
    """
    open_ = [q.character for q in questions(matrix, assessment) if q.blocked is None][:TRIED]
    one = _turns(matrix, assessment, [(f,) for c in open_ for f in _possible(matrix, c)])
    if one:
        return one
    pairs = [
        (f, g)
        for a, b in combinations(open_[:4], 2)
        for f in _possible(matrix, a)
        for g in _possible(matrix, b)
    ]
    return _turns(matrix, assessment, pairs)


def _turns(
    matrix: Matrix, assessment: Assessment, sets: Sequence[tuple[Finding, ...]]
) -> tuple[Turn, ...]:
    now = assessment.verdict
    found: dict[tuple[VerdictKind, tuple[str, ...]], Turn] = {}
    support = support_of(matrix, assessment)
    for findings in sets:
        case: Case = assessment.case
        for finding in findings:
            case = case.observe(finding)
        then = assess(matrix, case).verdict
        name = (then.kind, then.taxa if then.level is not now.level else ())
        if (then.kind, then.level) == (now.kind, now.level):
            continue
        chance = float(support @ _likely(matrix, findings[0]))
        if name not in found or chance > found[name].chance + 1e-6:
            found[name] = Turn(findings=findings, verdict=then, chance=chance)
    return tuple(sorted(found.values(), key=lambda turn: -round(turn.chance, 6)))


def _likely(matrix: Matrix, finding: Finding) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    number = matrix.number[finding.character]
    first = int(matrix.layout.starts[number])
    ids = matrix.key.characters[number].state_ids
    return np.asarray(
        matrix.seen[:, [first + ids.index(s) for s in finding.states]].sum(axis=1), float
    )


def _possible(matrix: Matrix, name: str) -> list[Finding]:
    """One finding per state that some taxon is scored for."""
    character: Character = matrix.key.character[name]
    if character.kind.numeric:
        return []
    place = matrix.columns(matrix.number[name])
    seen = matrix.possible[place] & matrix.whole[:, matrix.number[name]]
    shown = np.asarray(seen.any(axis=1))
    return [
        Finding(character=name, states=(state,))
        for state, some in zip(character.state_ids, shown.tolist(), strict=False)
        if some
    ]
