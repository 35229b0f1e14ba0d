"""Animals drawn from a key, and observers that make mistakes.

Chance comes in as a generator, so that the same seed draws the same animals.
"""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from idkey.engine.applicable import parts
from idkey.engine.spans import UNKNOWN_N, expected_width
from idkey.model.case import Finding, Specimen
from idkey.model.character import Character, Kind, Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows, Spans

Shown = str | float
Chance = np.random.Generator


@dataclass(frozen=True, slots=True, kw_only=True)
class Animal:
    """A drawn animal.

    Attributes:
        taxon: Its taxon id.
        specimen: Its sex and stage.
        shown: What it shows, per character id: a state id or a number in the character's unit.
            Parts it lacks, and characters nobody in the key is scored for, are missing.
    """

    taxon: str
    specimen: Specimen
    shown: Mapping[str, Shown]


def animal(key: Key, taxon: str, chance: Chance, specimen: Specimen | None = None) -> Animal:
    """An animal of that taxon: states by their frequencies, numbers from their ranges.

    What the taxon is not scored for is borrowed from a scored taxon of the same genus, else of
    the same family, else of the key.

    Args:
        key: The key.
        taxon: Taxon id.
        chance: Source of chance.
        specimen: Sex and stage; None draws them (one juvenile in four).
    """
    kind = specimen or _specimen(chance)
    shown: dict[str, Shown] = {}
    for character in key.characters:
        if not character.suits(kind.sex, kind.stage):
            continue
        score = _score(key, taxon, character, kind, chance)
        if score is not None and not isinstance(score.value, Inapplicable):
            shown[character.id] = _drawn(character, score, chance)
    return Animal(taxon=taxon, specimen=kind, shown=_consistent(key, shown))


def _specimen(chance: Chance) -> Specimen:
    stage = Stage.JUVENILE if chance.random() < 0.25 else Stage.ADULT
    return Specimen(sex=Sex.MALE if chance.random() < 0.5 else Sex.FEMALE, stage=stage)


def _score(
    key: Key, taxon: str, character: Character, specimen: Specimen, chance: Chance
) -> Score | None:
    own = _own(key, taxon, character, specimen)
    if own is not None:
        return own
    this = key.taxon[taxon]
    others = [t for t in key.taxa if _own(key, t.id, character, specimen) is not None]
    same_genus = [t for t in others if t.genus == this.genus]
    same_family = [t for t in others if t.family and t.family == this.family]
    pool = same_genus or same_family or others
    if not pool:
        return None
    lender = pool[int(chance.integers(len(pool)))]
    return _own(key, lender.id, character, specimen)


def _own(key: Key, taxon: str, character: Character, specimen: Specimen) -> Score | None:
    scores = key.cells.get((taxon, character.id), ())
    held = parts(scores, character, specimen)
    return next((score for _, score in held if score is not None), None)


def _drawn(character: Character, score: Score, chance: Chance) -> Shown:
    value = score.value
    if isinstance(value, Shows):
        shares = value.shares()
        return str(chance.choice(list(shares), p=list(shares.values())))
    if not isinstance(value, Spans):
        raise ValueError(f"nothing to draw for {character.id!r}")
    number = _number(value, chance)
    return float(round(number)) if character.kind is Kind.COUNT else number


def _number(spans: Spans, chance: Chance) -> float:
    if spans.mean is not None and spans.sd is not None:
        return float(chance.normal(spans.mean, spans.sd))
    if spans.low is not None and spans.high is not None:
        sd = (spans.high - spans.low) / expected_width(spans.n or UNKNOWN_N * 4)
        return float(chance.normal((spans.low + spans.high) / 2, sd))
    if spans.high is not None:
        return float(spans.high * chance.uniform(0.75, 1.0))
    bound = spans.low if spans.low is not None else spans.mean
    return float((bound or 0.0) * chance.uniform(1.0, 1.25))


def _consistent(key: Key, shown: dict[str, Shown]) -> dict[str, Shown]:
    """Without characters whose required state does not show."""
    return {
        name: value
        for name, value in shown.items()
        if (need := key.character[name].requires) is None
        or shown.get(need.character) in need.states
    }


def looked_at(
    key: Key, drawn: Animal, character: str, chance: Chance, *, error: float, blind: float = 0.0
) -> Finding:
    """What an observer writes down.

    Args:
        key: The key.
        drawn: The animal.
        character: Character id.
        chance: Source of chance.
        error: Chance of a slip: another state (a neighbour where ordinal), or a number off by
            twice its usual uncertainty.
        blind: Chance that it cannot be seen.
    """
    truth = drawn.shown.get(character)
    if truth is None or chance.random() < blind:
        return Finding(character=character, unseen=True)
    one = key.character[character]
    if isinstance(truth, float):
        return Finding(character=character, value=_measured(one, truth, chance, error))
    if chance.random() >= error or len(one.states) < 2:
        return Finding(character=character, states=(truth,))
    return Finding(character=character, states=(_slip(one, truth, chance),))


def _slip(character: Character, truth: str, chance: Chance) -> str:
    ids = list(character.state_ids)
    place = ids.index(truth)
    if character.kind is Kind.ORDINAL:
        near = [n for n in (place - 1, place + 1) if 0 <= n < len(ids)]
        return ids[near[int(chance.integers(len(near)))]]
    others = [state for state in ids if state != truth]
    return others[int(chance.integers(len(others)))]


def _measured(character: Character, truth: float, chance: Chance, error: float) -> float:
    if character.kind is Kind.COUNT:
        slip = chance.random() < error
        return truth + float(chance.choice([-1.0, 1.0])) if slip else truth
    noise = character.uncertainty or 0.02 * abs(truth)
    noise *= 2.0 if chance.random() < error else 1.0
    return float(chance.normal(truth, noise))
