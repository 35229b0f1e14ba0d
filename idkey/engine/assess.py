"""From a case to everything its findings say."""

from dataclasses import replace

import numpy as np

from idkey.engine.cautions import cautions
from idkey.engine.evidence import Evidence, usable
from idkey.engine.matrix import Matrix
from idkey.engine.partition import SEPARATORS, Grounds, grounds
from idkey.engine.questions import FUTILE_BITS, gains, wary_support, way
from idkey.engine.result import (
    Assessment,
    Candidate,
    Caution,
    Conflict,
    Level,
    Need,
    Stake,
    Unmet,
    Verdict,
)
from idkey.engine.verdict import verdict
from idkey.engine.weighing import Prior, weigh
from idkey.model.case import Case
from idkey.model.character import Kind, Look

HELPFUL = 4
"""How many characters are named that would help."""


def assess(
    matrix: Matrix,
    case: Case,
    prior: Prior | None = None,
    *,
    muted: frozenset[str] = frozenset(),
) -> Assessment:
    """Everything the findings of a case say.

    Args:
        matrix: The key, compiled for the sex, stage and care of the case.
        case: The case.
        prior: Share per taxon id, used when the case wants it; None is flat.
        muted: Characters whose findings count as answers but are not weighed, to see what the
            others say alone.
    """
    used = prior if case.use_prior and prior else None
    weighing = weigh(matrix, _heard(case, muted), used)
    warned = cautions(matrix, weighing)
    held = grounds(matrix, weighing)
    silent = sum(usable(matrix, f) for f in case.findings if f.character in muted)
    held = replace(held, more=_more(held, case, warned), answers=held.answers + silent)
    said = _helped(held, case, warned, verdict(held, case, warned))
    if used:
        said = _with_blind(matrix, case, said, muted)
    if said.level is Level.OUTSIDE:
        warned = cautions(matrix, weighing, unknown=True)
    return Assessment(
        case=case,
        lineup=lineup(held),
        background=weighing.background,
        cautions=warned,
        verdict=said,
        prior=tuple(sorted(used.items())) if used else (),
    )


def _heard(case: Case, muted: frozenset[str]) -> Case:
    """The case without the findings on `muted` characters."""
    if not muted:
        return case
    return replace(case, findings=tuple(f for f in case.findings if f.character not in muted))


def _more(held: Grounds, case: Case, warned: tuple[Caution, ...]) -> bool:
    """Whether a question that can be asked of a live animal is still worth asking."""
    matrix = held.matrix
    support = wary_support(held.weighing.support, held.counts < SEPARATORS)
    bits = gains(matrix, support)
    wary = any(caution.stake is Stake.HAZARD for caution in warned)
    for number in np.flatnonzero(bits >= FUTILE_BITS):
        allowed = way(matrix, case, matrix.key.characters[number], wary=wary)
        if allowed.blocked is None and allowed.look is not Look.DEAD:
            return True
    return False


def lineup(held: Grounds) -> tuple[Candidate, ...]:
    """Every taxon once: standing ones by support, then ruled-out ones by conflicts."""
    return tuple(_candidate(held, int(row)) for row in held.weighing.order)


def _candidate(held: Grounds, row: int) -> Candidate:
    matrix, weighing = held.matrix, held.weighing
    taxon = matrix.taxa[row]
    against = [one for one in weighing.evidence if one.conflict[row]]
    return Candidate(
        taxon=taxon,
        support=float(weighing.support[row]),
        conflicts=tuple(_conflict(matrix, one, taxon) for one in against),
        ruled_out=bool(weighing.ruled_out[row]),
        separators=_separating(held, row),
        unscored=tuple(
            one.finding.character for one in weighing.evidence if not matrix.whole[row, one.number]
        ),
    )


def _separating(held: Grounds, row: int) -> tuple[str, ...]:
    """The strongest separating character of each group, in the order found."""
    best: dict[str, tuple[float, str]] = {}
    for one in held.weighing.evidence:
        apart = held.apart.get(one.group)
        if apart is None or not apart[row] or not one.counts:
            continue
        ratio = float(one.likelihood[held.leader] / one.likelihood[row])
        if ratio > best.get(one.group, (0.0, ""))[0] * (1 + 1e-9):
            best[one.group] = (ratio, one.finding.character)
    return tuple(character for _, character in best.values())


def _conflict(matrix: Matrix, one: Evidence, taxon: str) -> Conflict:
    character = matrix.key.characters[one.number]
    scores = matrix.key.cells.get((taxon, character.id), ())
    near = False
    if character.kind is Kind.ORDINAL and one.finding.states:
        ids = character.state_ids
        shown = [ids.index(s) for score in scores for s in getattr(score.value, "states", ())]
        seen = [ids.index(state) for state in one.finding.states]
        near = any(abs(a - b) == 1 for a in shown for b in seen)
    return Conflict(one.finding, scores, near)


def _helped(held: Grounds, case: Case, warned: tuple[Caution, ...], said: Verdict) -> Verdict:
    """The verdict with the characters that would help against each rival."""
    members = said.taxa[1:] if said.level is Level.GROUP else ()
    helped = (_with_help(held, case, warned, u, members=members) for u in said.unmet)
    return replace(said, unmet=tuple(helped))


def _with_help(
    held: Grounds,
    case: Case,
    warned: tuple[Caution, ...],
    one: Unmet,
    *,
    members: tuple[str, ...],
) -> Unmet:
    """The condition with the characters that tell the leader from its rivals.

    In a group that is left, only its own members matter.
    """
    if one.need not in (Need.SUPPORT, Need.SEPARATORS) or not one.rivals:
        return one
    matrix = held.matrix
    rows = matrix.rows(members or one.rivals)
    gap = np.abs(matrix.seen[rows] - matrix.seen[held.leader]) / 2
    power = np.add.reduceat(gap, matrix.layout.starts, axis=1)
    power = (power * (matrix.whole[rows] & matrix.whole[held.leader])).max(axis=0)
    wary = any(caution.stake is Stake.HAZARD for caution in warned)
    useful = [
        matrix.key.characters[n].id
        for n in np.argsort(-power, kind="stable")
        if power[n] >= 0.25
        and way(matrix, case, matrix.key.characters[n], wary=wary).blocked is None
    ]
    return replace(one, characters=tuple(useful[:HELPFUL]))


def _with_blind(matrix: Matrix, case: Case, said: Verdict, muted: frozenset[str]) -> Verdict:
    """The verdict, with what it would be without the prior where that differs."""
    bare = assess(matrix, replace(case, use_prior=False), muted=muted).verdict
    return replace(said, blind=bare.kind) if bare.kind is not said.kind else said
