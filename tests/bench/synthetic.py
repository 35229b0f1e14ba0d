"""Synthetic keys with deliberate twins, for benches. All content is made up."""

from dataclasses import dataclass

import numpy as np

from idkey.model.character import Character, Kind, Look, Reliability, State
from idkey.model.key import Key
from idkey.model.score import Score, Shows, Spans, Value
from idkey.model.taxon import Danger, Hazard, Permit, Taxon

STATES = (2,) * 10 + (3,) * 6 + (4,) * 3 + (3,) * 3
"""States per categorical character; the last four of three states are ordinal."""

ONE_APART = ((0, 1), (6, 7))
TWO_APART = ((2, 3), (4, 5))
LOOKS = (Look.TUB, Look.ABOVE, Look.BELOW, Look.LENS, Look.MOULT)


@dataclass(frozen=True)
class World:
    """A made-up key: as it really is, and as its author knows it.

    Attributes:
        truth: Every cell scored.
        known: The same with some cells unscored.
        error: True chance of a slip per character id.
    """

    truth: Key
    known: Key
    error: dict[str, float]


def world(seed: int, *, taxa: int = 12, polymorphic: float = 0.12, unscored: float = 0.05) -> World:
    """A key of 12 taxa and 25 characters, two thirds of the taxa with a look-alike."""
    chance = np.random.default_rng(seed)
    characters = _characters(chance)
    table = [[_value(c, chance, polymorphic) for c in characters] for _ in range(taxa)]
    for pairs, apart in ((ONE_APART, 1), (TWO_APART, 2)):
        for one, twin in pairs:
            table[twin] = _twin(table[one], characters, chance, apart)
    scores = tuple(
        Score(taxon=f"taxon_{t}", character=c.id, value=table[t][n])
        for t in range(taxa)
        for n, c in enumerate(characters)
    )
    names = tuple(_taxon(number) for number in range(taxa))
    truth = Key(
        id=f"made-up-{seed}",
        title="",
        version="1.0.0",
        taxa=names,
        characters=characters,
        scores=scores,
    )
    kept = tuple(s for s in scores if chance.random() >= unscored)
    known = Key(
        id=truth.id, title="", version="1.0.0", taxa=names, characters=characters, scores=kept
    )
    return World(truth, known, {c.id: float(chance.uniform(0.05, 0.15)) for c in characters})


def _taxon(number: int) -> Taxon:
    danger = Danger.SIGNIFICANT if number in (1, 9) else Danger.MILD
    listed = Permit(cites="II") if number in (3, 8) else Permit()
    return Taxon(
        id=f"taxon_{number}",
        name=f"Genus{number // 4} species{number}",
        family="Madeupidae",
        hazard=Hazard(level=danger),
        permit=listed,
    )


def _characters(chance: np.random.Generator) -> tuple[Character, ...]:
    found = []
    for number, states in enumerate(STATES):
        kind = Kind.ORDINAL if number in (12, 13, 20, 21) else Kind.CATEGORICAL
        found.append(
            Character(
                id=f"c{number}",
                name=f"Character {number}",
                question="",
                kind=kind,
                looks=(LOOKS[int(chance.integers(3))],),
                reliability=Reliability.MEDIUM,
                states=tuple(State(id=f"s{s}", label="") for s in range(states)),
            )
        )
    for number in range(3):
        found.append(
            Character(
                id=f"m{number}",
                name=f"Measure {number}",
                question="",
                unit="mm",
                kind=Kind.MEASUREMENT,
                looks=(Look.ABOVE,),
            )
        )
    return tuple(found)


def _value(character: Character, chance: np.random.Generator, polymorphic: float) -> Value:
    if character.kind.numeric:
        mean = float(chance.uniform(20, 60))
        return Spans(mean=mean, sd=0.08 * mean, n=20)
    first, second = chance.permutation(character.state_ids)[:2]
    if chance.random() < polymorphic:
        share = float(chance.uniform(0.5, 0.9))
        return Shows({str(first): share, str(second): 1 - share})
    return Shows({str(first): 1.0})


def _twin(
    row: list[Value], characters: tuple[Character, ...], chance: np.random.Generator, apart: int
) -> list[Value]:
    copy = list(row)
    categorical = [n for n, c in enumerate(characters) if not c.kind.numeric]
    for number in chance.choice(categorical, size=apart, replace=False):
        shown = copy[number].states  # type: ignore[union-attr]
        others = [s for s in characters[number].state_ids if s not in shown]
        free = others or list(characters[number].state_ids)
        copy[number] = Shows({str(chance.choice(free)): 1.0})
        if not others:
            copy[number] = Shows({next(iter(shown)): 1.0})
            row[number] = Shows({free[-1] if free[-1] != next(iter(shown)) else free[0]: 1.0})
    return copy
