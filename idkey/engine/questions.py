"""What to look at next: the most information about what matters, for the least trouble."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from idkey.engine.entropy import surprise_bits
from idkey.engine.labels import claimed
from idkey.engine.matrix import Matrix
from idkey.engine.normal import Array
from idkey.engine.partition import SEPARATORS
from idkey.engine.result import Assessment, Blocked, Question, Stake
from idkey.model.case import Aim, Case
from idkey.model.character import Character, Look

LEADING = 0.01
"""Support from which a taxon counts among the leading ones."""

SPREAD = 0.2
"""Share of the support that is spread over rivals not firmly set apart; see `wary_support`."""

FUTILE_BITS = 0.02
"""A question worth less than this is not worth asking (look-alike pairs end here)."""


def questions(
    matrix: Matrix, assessment: Assessment, aim: Aim | None = None
) -> tuple[Question, ...]:
    """Every character as a question, the best first, the blocked ones last.

    Once nothing is left that would tell more about the aim, they are ranked by what they tell
    about the name.

    Args:
        matrix: The compiled key.
        assessment: What is known so far.
        aim: What the person needs to know; None takes the aim of the case.

    Returns:
        One question per character of the key; ordered by value among the open ones.
    """
    groups = aim_groups(matrix, assessment.case, aim or assessment.case.aim)
    found = _ranked(matrix, assessment, groups)
    if groups is not None and not any(map(useful, found)):
        return _ranked(matrix, assessment, None)
    return found


def _ranked(
    matrix: Matrix, assessment: Assessment, groups: NDArray[np.bool_] | None
) -> tuple[Question, ...]:
    case = assessment.case
    support, close = _read(matrix, assessment)
    bits = gains(matrix, support, groups)
    worth = gains(matrix, wary_support(support, close), groups)
    wary = any(c.stake is Stake.HAZARD for c in assessment.cautions)
    apart, leading = _splits(matrix, support)
    found = [
        _question(
            matrix,
            case,
            n,
            bits=(float(bits[n]), float(worth[n])),
            wary=wary,
            splits=(int(apart[n]), leading),
        )
        for n in range(len(matrix.key.characters))
    ]
    return tuple(
        sorted(found, key=lambda q: (q.blocked is not None, -round(q.value, 4), q.character))
    )


def useful(question: Question) -> bool:
    """Whether it may be asked of a live animal now, and the answer would tell enough."""
    return question.blocked is None and question.look is not Look.DEAD and telling(question)


def telling(question: Question) -> bool:
    """Whether the answer would tell enough to be worth naming, were it to be had."""
    return question.value * question.effort / (1 - question.look.blind) >= FUTILE_BITS


def _read(matrix: Matrix, assessment: Assessment) -> tuple[Array, NDArray[np.bool_]]:
    """Support per row, and the taxa that fewer separators than needed set apart."""
    close = np.zeros(len(matrix.taxa), bool)
    for candidate in assessment.lineup:
        close[matrix.row[candidate.taxon]] = len(candidate.separators) < SEPARATORS
    return support_of(matrix, assessment), close


def support_of(matrix: Matrix, assessment: Assessment) -> Array:
    """Support per row, background last, shape (taxa + 1,)."""
    support = np.full(len(matrix.taxa) + 1, assessment.background)
    for candidate in assessment.lineup:
        support[matrix.row[candidate.taxon]] = candidate.support
    return support


def wary_support(support: Array, close: NDArray[np.bool_]) -> Array:
    """The support with some of it spread over rivals that are not firmly set apart yet.

    A leader far ahead would leave nothing worth asking; a name still needs two separators
    against every rival, so the questions that would give them keep their worth.

    Args:
        support: Shape (taxa + 1,).
        close: Taxa with fewer separators than a name needs, the leader included, shape (taxa,).

    Returns:
        Shape (taxa + 1,); sums to one.
    """
    spread = np.append(close / max(close.sum(), 1), 0.0)
    share = SPREAD if close.sum() > 1 else 0.0
    return np.asarray((1 - share) * support + share * spread)


def aim_groups(matrix: Matrix, case: Case, aim: Aim) -> NDArray[np.bool_] | None:
    """The parts that matter for an aim, shape (parts, taxa + 1); None is each taxon alone.

    A part that would leave nothing to tell (no label, no dangerous taxon) falls back to the
    taxa themselves.
    """
    taxa = matrix.key.taxa
    if aim is Aim.LABEL:
        label = claimed(matrix.key, case)
        inside = [label is not None and taxon.id in label.covers for taxon in taxa]
    elif aim is Aim.HAZARD:
        inside = [taxon.dangerous for taxon in taxa]
    elif aim is Aim.PERMIT:
        inside = [taxon.listed for taxon in taxa]
    else:
        return None
    if not any(inside) or all(inside):
        return None
    member = np.array([*inside, False])
    outside = ~member
    outside[-1] = False
    unknown = np.zeros_like(member)
    unknown[-1] = True
    return np.vstack([member, outside, unknown])


def gains(matrix: Matrix, support: Array, groups: NDArray[np.bool_] | None = None) -> Array:
    """Expected fall in entropy per character, in bits, if it can be seen.

    Args:
        matrix: The compiled key.
        support: Support per row, background last, shape (taxa + 1,).
        groups: Parts that matter, shape (parts, taxa + 1); None tells each taxon apart.

    Returns:
        Shape (characters,), not below zero.

    Source: mutual information, Shannon 1948, section 12; as gain in Quinlan 1986, Machine
    Learning 1: 81-106.
    """
    shares = support.astype(np.float32)
    starts = matrix.layout.starts
    if groups is None:
        mixture = shares @ matrix.seen
        ahead = np.add.reduceat(surprise_bits(mixture), starts)
        return np.asarray(np.maximum(ahead - shares @ matrix.entropy, 0.0), float)
    by_group = (groups * shares).astype(np.float32) @ matrix.seen
    ahead = np.add.reduceat(surprise_bits(by_group.sum(axis=0)), starts)
    after = np.add.reduceat(surprise_bits(by_group), starts, axis=1).sum(axis=0)
    weight = (groups * shares).sum(axis=1)
    after -= surprise_bits(weight).sum()
    return np.asarray(np.maximum(ahead - after, 0.0), float)


def _splits(matrix: Matrix, support: Array) -> tuple[NDArray[np.int_], int]:
    """Per character, how many leading taxa it mostly tells from the leader; and how many lead."""
    leader = int(np.argmax(support[:-1]))
    near = np.flatnonzero(support[:-1] >= LEADING)
    near = near[near != leader][:12]
    if not len(near):
        return np.zeros(len(matrix.key.characters), int), 0
    gap = np.abs(matrix.seen[near] - matrix.seen[leader]) / 2
    far = np.add.reduceat(gap, matrix.layout.starts, axis=1) >= 0.5
    both = matrix.whole[near] & matrix.whole[leader]
    return (far & both).sum(axis=0), len(near)


@dataclass(frozen=True, slots=True)
class Way:
    """How a character may be looked at now; `blocked` says why not."""

    look: Look
    blocked: Blocked | None


def way(matrix: Matrix, case: Case, character: Character, *, wary: bool) -> Way:
    """The easiest way of looking that is allowed.

    Args:
        matrix: The compiled key.
        case: The case.
        character: The character.
        wary: Whether a medically significant species is still possible; then nothing that
            brings the animal within reach of the hand is proposed.
    """
    looks = [look for look in character.looks if not (wary and look.handling)]
    if not looks:
        return Way(character.looks[0], Blocked.HANDLING)
    return Way(min(looks, key=lambda look: look.effort), _blocked(matrix, case, character))


def _blocked(matrix: Matrix, case: Case, character: Character) -> Blocked | None:
    if case.finding(character.id) is not None:
        return Blocked.ANSWERED
    sex, stage = matrix.specimen.sex, matrix.specimen.stage
    if character.sex is not None and sex is not character.sex:
        return Blocked.SEX
    if character.stage is not None and stage not in (None, character.stage):
        return Blocked.STAGE
    if character.requires is not None:
        above = case.finding(character.requires.character)
        if above is None or not set(above.states) & set(character.requires.states):
            return Blocked.REQUIRES
    return None


def _question(
    matrix: Matrix,
    case: Case,
    number: int,
    *,
    bits: tuple[float, float],
    wary: bool,
    splits: tuple[int, int],
) -> Question:
    character = matrix.key.characters[number]
    allowed = way(matrix, case, character, wary=wary)
    effort = character.effort or allowed.look.effort
    share = 1 / (1 + _answered_in_group(matrix, case, character))
    return Question(
        character=character.id,
        look=allowed.look,
        gain_bits=bits[0] * share,
        effort=effort,
        value=bits[1] * share * (1 - allowed.look.blind) / effort,
        splits=splits,
        blocked=allowed.blocked,
    )


def _answered_in_group(matrix: Matrix, case: Case, character: Character) -> int:
    """Findings of the same dependence group: one more of them adds only its share."""
    if not character.group:
        return 0
    known = matrix.key.character
    return sum(
        1
        for f in case.findings
        if f.character != character.id
        and not f.unseen
        and f.character in known
        and known[f.character].group == character.group
    )
