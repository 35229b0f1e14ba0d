"""How far two people who looked at the same animals agree. Pure statistics."""

from collections import Counter
from collections.abc import Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from math import hypot, sqrt
from statistics import NormalDist

from idkey.model.case import Case, Finding

WITHIN = 2.0
"""Two numbers agree when they differ by at most this many joint standard uncertainties.

Source: coverage factor 2, about 95 %, as the Guide to the expression of uncertainty in
measurement (JCGM 100:2008, clause 6.3.3) takes it.
"""


@dataclass(frozen=True, slots=True)
class Kappa:
    """Cohen's kappa with its interval.

    Attributes:
        pairs: Things that both people judged.
        observed: Share of them judged alike.
        expected: Share that chance alone would make alike.
        kappa: (observed - expected) / (1 - expected); 1 is full agreement, 0 is chance.
        error: Asymptotic standard error of `kappa`.
        low: Lower limit, at least -1.
        high: Upper limit, at most 1.
    """

    pairs: int
    observed: float
    expected: float
    kappa: float
    error: float
    low: float
    high: float


def kappa_of(table: Sequence[Sequence[int]], confidence: float = 0.95) -> Kappa | None:
    """Cohen's kappa of a square table of counts (first person's classes, second person's).

    Args:
        table: Shape (classes, classes).
        confidence: Two-sided confidence of the interval.

    Returns:
        None without counts, and when both people used one and the same class throughout:
        chance would then make all alike, and kappa means nothing.

    Raises:
        ValueError: The table is not square, or a count is negative.

    Source: Cohen 1960, Educ. Psychol. Meas. 20: 37-46; standard error by Fleiss, Cohen &
    Everitt 1969, Psychol. Bull. 72: 323-327.
    """
    size = len(table)
    if any(len(row) != size for row in table) or any(n < 0 for row in table for n in row):
        raise ValueError("a table of agreement is square and holds counts")
    total = sum(map(sum, table))
    if not total:
        return None
    shares = [[count / total for count in row] for row in table]
    first = [sum(row) for row in shares]
    second = [sum(row[j] for row in shares) for j in range(size)]
    expected = sum(a * b for a, b in zip(first, second, strict=True))
    if 1 - expected < 1e-12:
        return None
    observed = sum(shares[i][i] for i in range(size))
    kappa = (observed - expected) / (1 - expected)
    error = _error(shares, (first, second), kappa, expected) / sqrt(total)
    half = NormalDist().inv_cdf((1 + confidence) / 2) * error
    low, high = max(-1.0, kappa - half), min(1.0, kappa + half)
    return Kappa(total, observed, expected, kappa, error, low, high)


def kappa_between(pairs: Iterable[tuple[Hashable, Hashable]]) -> Kappa | None:
    """Cohen's kappa of the classes two people gave, one pair for each thing judged."""
    counts = Counter(pairs)
    classes = sorted({name for pair in counts for name in pair}, key=repr)
    return kappa_of([[counts[one, other] for other in classes] for one in classes])


class Match(StrEnum):
    """How two findings on one character go together."""

    SAME = "same"
    PARTLY = "partly"
    DIFFERENT = "different"
    ONE_SIDED = "one_sided"


@dataclass(frozen=True, slots=True, kw_only=True)
class CharacterMatch:
    """Two people on one character of one animal.

    Attributes:
        character: Character id.
        match: How their findings go together; ONE_SIDED when only one of them saw something.
        one: Finding of the first; None when there is none.
        other: Finding of the second; None when there is none.
    """

    character: str
    match: Match
    one: Finding | None
    other: Finding | None


@dataclass(frozen=True, slots=True, kw_only=True)
class CharacterAgreement:
    """Two people on one character of several animals.

    Attributes:
        character: Character id.
        both: Animals on which both saw something.
        same: Animals on which they saw the same.
        kappa: Cohen's kappa over the states seen; None for numbers, or when it means nothing.
    """

    character: str
    both: int
    same: int
    kappa: Kappa | None


def matches(
    one: Case, other: Case, uncertainty: Mapping[str, float] | None = None
) -> tuple[CharacterMatch, ...]:
    """What two people found on the same animal, per character, in the order of the first.

    Args:
        one: The first determination.
        other: The second.
        uncertainty: Standard uncertainty of one measurement per character id, for findings
            that give none; a number without any agrees only with the same number.
    """
    order = dict.fromkeys(f.character for case in (one, other) for f in case.findings)
    return tuple(
        CharacterMatch(
            character=character,
            match=_match(one.finding(character), other.finding(character), uncertainty or {}),
            one=one.finding(character),
            other=other.finding(character),
        )
        for character in order
    )


def by_character(
    pairs: Sequence[tuple[Case, Case]], uncertainty: Mapping[str, float] | None = None
) -> tuple[CharacterAgreement, ...]:
    """Agreement per character over several animals; "could not see" is left out."""
    seen: dict[str, list[CharacterMatch]] = {}
    for one, other in pairs:
        for found in matches(one, other, uncertainty):
            if found.match is not Match.ONE_SIDED:
                seen.setdefault(found.character, []).append(found)
    return tuple(_over_animals(character, found) for character, found in seen.items())


def _error(
    shares: list[list[float]],
    margins: tuple[list[float], list[float]],
    kappa: float,
    expected: float,
) -> float:
    """Standard error of kappa times the root of the number of pairs."""
    first, second = margins
    classes = range(len(shares))
    rest = 1 - kappa
    alike = sum(shares[i][i] * (1 - (first[i] + second[i]) * rest) ** 2 for i in classes)
    unlike = sum(
        shares[i][j] * (second[i] + first[j]) ** 2 for i in classes for j in classes if i != j
    )
    variance = alike + rest**2 * unlike - (kappa - expected * rest) ** 2
    return sqrt(max(0.0, variance)) / (1 - expected)


def _match(one: Finding | None, other: Finding | None, uncertainty: Mapping[str, float]) -> Match:
    if one is None or other is None or one.unseen or other.unseen:
        return Match.ONE_SIDED
    if one.value is not None and other.value is not None:
        typical = uncertainty.get(one.character, 0.0)
        joint = hypot(*(typical if f.uncertainty is None else f.uncertainty for f in (one, other)))
        near = abs(one.value - other.value) <= WITHIN * joint + 1e-9 * abs(one.value)
        return Match.SAME if near else Match.DIFFERENT
    if one.value is not None or other.value is not None:
        return Match.DIFFERENT
    if one.negated == other.negated:
        if set(one.states) == set(other.states):
            return Match.SAME
        overlap = one.negated or set(one.states) & set(other.states)
    else:
        shown, ruled_out = (other, one) if one.negated else (one, other)
        overlap = set(shown.states) - set(ruled_out.states)
    return Match.PARTLY if overlap else Match.DIFFERENT


def _over_animals(character: str, found: list[CharacterMatch]) -> CharacterAgreement:
    pairs = [(_class(one.one), _class(one.other)) for one in found]
    numbers = any(name is None for pair in pairs for name in pair)
    return CharacterAgreement(
        character=character,
        both=len(found),
        same=sum(one.match is Match.SAME for one in found),
        kappa=None if numbers else kappa_between(pairs),
    )


def _class(finding: Finding | None) -> tuple[bool, tuple[str, ...]] | None:
    """What was seen as one class of a table; None for a number."""
    if finding is None or finding.value is not None:
        return None
    return finding.negated, tuple(sorted(finding.states))
