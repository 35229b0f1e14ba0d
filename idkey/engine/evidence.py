"""What each finding says about each taxon."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from idkey.engine.applicable import doubtful
from idkey.engine.confusion import DOUBT
from idkey.engine.matrix import Matrix
from idkey.engine.normal import Array
from idkey.model.case import Case, Certainty, Finding
from idkey.model.character import Character

Flags = NDArray[np.bool_]

LEAST = 1e-6
"""No likelihood is taken for smaller: nothing one sees makes a taxon impossible."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Evidence:
    """One finding held against all taxa.

    Attributes:
        finding: The finding.
        number: Number of its character.
        group: Dependence group, or the character's own id.
        weight: Share it counts for: one over the findings of its group.
        likelihood: P(finding | taxon), background last, shape (taxa + 1,).
        conflict: Taxa that cannot explain it, shape (taxa,).
        firm: Whether a conflict alone may rule out: sure, and sex and stage as needed.
        counts: Whether it may separate: not a guess.
    """

    finding: Finding
    number: int
    group: str
    weight: float
    likelihood: Array
    conflict: Flags
    firm: bool
    counts: bool


def evidence(matrix: Matrix, case: Case) -> tuple[Evidence, ...]:
    """The findings of `case` that say something, in their order.

    Left out: what could not be seen, characters the specimen cannot show, and characters or
    states that this key does not have.
    """
    used = [f for f in case.findings if usable(matrix, f)]
    groups = [_group(matrix.key.character[f.character]) for f in used]
    return tuple(
        _evidence(matrix, finding, group, 1.0 / groups.count(group))
        for finding, group in zip(used, groups, strict=True)
    )


def usable(matrix: Matrix, finding: Finding) -> bool:
    """Whether the key can use the finding for that specimen."""
    character = matrix.key.character.get(finding.character)
    if character is None or finding.unseen:
        return False
    if character.kind.numeric != (finding.value is not None):
        return False
    if not set(finding.states) <= set(character.state_ids):
        return False
    return character.suits(matrix.specimen.sex, matrix.specimen.stage)


def _group(character: Character) -> str:
    return character.group or character.id


def _evidence(matrix: Matrix, finding: Finding, group: str, weight: float) -> Evidence:
    number = matrix.number[finding.character]
    character = matrix.key.characters[number]
    if finding.value is not None:
        likelihood, flat, can = _number(matrix, number, finding)
    else:
        likelihood, flat, can = _states(matrix, number, finding)
    doubt = DOUBT[finding.certainty]
    likelihood = (1 - doubt) * likelihood + doubt * flat
    return Evidence(
        finding=finding,
        number=number,
        group=group,
        weight=weight,
        likelihood=np.maximum(likelihood, LEAST * max(flat, 1e-12)),
        conflict=conflicting(matrix, number, can),
        firm=finding.certainty is Certainty.SURE and not doubtful(character, matrix.specimen),
        counts=finding.certainty is not Certainty.GUESS,
    )


def conflicting(matrix: Matrix, number: int, can: Flags) -> Flags:
    """Taxa that cannot explain a finding on a character, shape (taxa,).

    Args:
        matrix: The compiled key.
        number: Number of the character.
        can: Taxa that can show what was seen, the unscored ones either way, shape (taxa,).
    """
    return np.asarray((matrix.whole_by[number] > can) | matrix.absent_by[number], bool)


def _states(matrix: Matrix, number: int, finding: Finding) -> tuple[Array, float, Flags]:
    first = int(matrix.layout.starts[number])
    ids = matrix.key.characters[number].state_ids
    places = [first + ids.index(state) for state in finding.states]
    likelihood = np.asarray(matrix.seen[:, places].sum(axis=1, dtype=float))
    flat = len(places) / int(matrix.layout.widths[number])
    can = matrix.possible[places[0]]
    for place in places[1:]:
        can = can | matrix.possible[place]
    if not finding.negated:
        return likelihood, flat, can
    others = [first + n for n in range(len(ids)) if first + n not in places]
    rest = np.asarray(matrix.possible[others].any(axis=0), bool)
    return 1.0 - likelihood, 1.0 - flat, rest


def _number(matrix: Matrix, number: int, finding: Finding) -> tuple[Array, float, Flags]:
    bells = matrix.numbers[number]
    value = float(finding.value or 0.0)
    likelihood = bells.at(value, finding.uncertainty)
    unscored = bells.share.sum(axis=0) <= 0
    if unscored.any():
        likelihood = np.where(unscored, _from_bins(matrix, number, value), likelihood)
    likelihood = np.where(matrix.absent_by[number], bells.error * bells.flat, likelihood)
    conflict = bells.conflict(value, finding.uncertainty)
    return np.append(likelihood, bells.flat), bells.flat, ~conflict


def _from_bins(matrix: Matrix, number: int, value: float) -> Array:
    """Density of taxa without a range of their own, from the bins filled from their kin."""
    bells = matrix.numbers[number]
    ends = np.concatenate([[bells.range[0]], bells.edges, [bells.range[1]]])
    bin_number = int(np.clip(np.searchsorted(bells.edges, value), 0, len(ends) - 2))
    width = max(float(ends[bin_number + 1] - ends[bin_number]), 1e-9)
    column = int(matrix.layout.starts[number]) + bin_number
    return np.asarray(matrix.seen[:-1, column] / width, dtype=float)
