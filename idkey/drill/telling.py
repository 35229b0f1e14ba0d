"""Which characters tell two taxa apart, and which side what an animal shows speaks for."""

from dataclasses import dataclass
from math import exp

import numpy as np

from idkey.engine.applicable import parts
from idkey.engine.matrix import Matrix
from idkey.engine.separation import Apart, compared
from idkey.engine.spans import UNKNOWN_N, expected_width
from idkey.model.case import Specimen
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Shows, Spans, Value

GAP = 0.6
"""Least total variation from which a character that does not always tell is practised."""

LEAN = 3.0
"""What an animal shows speaks for a taxon when it is that many times as likely under it."""

_RARE = 1e-3


@dataclass(frozen=True, slots=True, kw_only=True)
class Teller:
    """A character that tells two taxa apart.

    Attributes:
        character: Character id.
        surely: Whether it always does; else only mostly.
        gap: Share of animals that it tells apart, from 0 to 1.
    """

    character: str
    surely: bool
    gap: float


def tellers(matrix: Matrix, one: str, other: str) -> tuple[Teller, ...]:
    """The characters that tell two taxa apart, those that always do first, easiest first."""
    rows = matrix.row[one], matrix.row[other]
    gap = np.abs(matrix.seen[rows[0]] - matrix.seen[rows[1]]) / 2
    gaps = np.minimum(np.add.reduceat(gap, matrix.layout.starts), 1.0)
    found = []
    apart = compared(matrix, *rows)
    absent = matrix.absent[rows[0]] | matrix.absent[rows[1]]
    for number, (character, how) in enumerate(zip(matrix.key.characters, apart, strict=True)):
        if absent[number] or not all(_has(matrix.key, t, character) for t in (one, other)):
            continue
        sure = how is Apart.SURELY
        if sure or (how is Apart.PARTLY and gaps[number] >= GAP):
            found.append(Teller(character=character.id, surely=sure, gap=float(gaps[number])))
    return tuple(sorted(found, key=lambda one: _rank(matrix.key.character[one.character], one)))


def mute(matrix: Matrix, one: str, other: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Characters that tell nothing: those that show the same on both, and those not scored.

    Returns:
        Ids of characters scored alike, and of those the key does not know on one of the taxa.
    """
    apart = compared(matrix, matrix.row[one], matrix.row[other])
    named = tuple(zip(matrix.key.characters, apart, strict=True))
    return (
        tuple(character.id for character, how in named if how is Apart.SAME),
        tuple(character.id for character, how in named if how is Apart.UNKNOWN),
    )


def _has(key: Key, taxon: str, character: Character) -> bool:
    """Whether the taxon can show what the character requires first."""
    need = character.requires
    if need is None:
        return True
    scores = key.cells.get((taxon, need.character), ())
    return any(set(getattr(s.value, "states", ())) & set(need.states) for s in scores)


def value_of(key: Key, taxon: str, character: Character, kind: Specimen) -> Value | None:
    """What a taxon shows at that sex and stage; None when nobody scored it."""
    held = parts(key.cells.get((taxon, character.id), ()), character, kind)
    return next((score.value for _, score in held if score is not None), None)


def likelihood(value: Value | None, shown: str | float) -> float:
    """How likely an animal shows that; 1 for a number in the middle of a range.

    A state that is not scored, and a missing part, keep a chance of one in a thousand.
    """
    if isinstance(value, Shows):
        return max(value.shares().get(str(shown), 0.0), _RARE)
    if isinstance(value, Spans) and isinstance(shown, float):
        return max(_bell(value, shown), _RARE)
    return _RARE if isinstance(value, Inapplicable) else 1.0


def leaning(
    key: Key, character: Character, shown: str | float, pair: tuple[str, str], *, kind: Specimen
) -> str:
    """The taxon of a pair that what an animal shows speaks for; empty when for neither."""
    one, other = (likelihood(value_of(key, taxon, character, kind), shown) for taxon in pair)
    if one >= LEAN * other:
        return pair[0]
    return pair[1] if other >= LEAN * one else ""


def _bell(spans: Spans, number: float) -> float:
    if spans.mean is not None and spans.sd:
        return exp(-(((number - spans.mean) / spans.sd) ** 2) / 2)
    low = spans.low if spans.low is not None else spans.mean
    high = spans.high if spans.high is not None else spans.mean
    if low is not None and high is not None:
        sd = max((high - low) / expected_width(spans.n or UNKNOWN_N * 4), abs(high) * 0.01, 1e-6)
        return exp(-(((number - (low + high) / 2) / sd) ** 2) / 2)
    if high is not None:
        return 1.0 if number <= high else exp(-(((number - high) / (0.1 * abs(high) or 1)) ** 2))
    assert low is not None
    return 1.0 if number >= low else exp(-(((low - number) / (0.1 * abs(low) or 1)) ** 2))


def _rank(character: Character, teller: Teller) -> tuple[bool, bool, float, float]:
    trouble = character.least_effort * (1 + 10 * character.error_rate)
    return (not teller.surely, character.rule_of_thumb, trouble, -teller.gap)
