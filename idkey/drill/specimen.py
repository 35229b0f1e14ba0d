"""Specimens to practise on: drawn from the key, made again by the same number, never repeated."""

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np

from idkey.drill.item import Item
from idkey.drill.telling import leaning, likelihood, value_of
from idkey.drill.variation import Variation, variation
from idkey.engine.simulate import Animal, Chance, Shown, animal
from idkey.model.case import Specimen
from idkey.model.character import Character, Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Shows
from idkey.store.drill_log import Exercise

JUVENILES = 0.25
"""Share of young animals where the character shows at any stage."""

TRIES = 60
"""Animals drawn in search of one that shows what a pair is told apart by."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Individual:
    """One animal to practise on.

    Attributes:
        seed: The number it was drawn with.
        animal: What it is and shows.
        variation: How its pictures differ from the drawings of the key.
    """

    seed: int
    animal: Animal
    variation: Variation

    @property
    def kind(self) -> Specimen:
        """Its sex and stage."""
        return self.animal.specimen

    def shown(self, character: str) -> Shown | None:
        """What it shows on a character; None when it lacks the part."""
        return self.animal.shown.get(character)


def seed_of(item: Item, key: Key, serial: int) -> int:
    """The number that draws the picture with that serial of an item, below 2 to the 32.

    The same for everybody, so that two people can be compared on the same animals; another one
    for every serial, so that nobody sees a picture twice.
    """
    text = f"{key.id}/{item.name}/{serial}"
    return int.from_bytes(hashlib.sha256(text.encode("utf-8")).digest()[:4], "big")


def individual(key: Key, item: Item, seed: int, sees: Mapping[str, float]) -> Individual:
    """The animal that an item shows under a number.

    Args:
        key: The key.
        item: What is practised.
        seed: The number; equal numbers draw equal animals.
        sees: Share per taxon id of what the shop sees; decides whose state is shown.

    Raises:
        ValueError: The key has no taxon that shows what the item asks for.
    """
    chance = np.random.default_rng(seed)
    if item.exercise is Exercise.STATE:
        drawn = _with_state(key, item, chance, sees)
    elif item.exercise is Exercise.PAIR:
        drawn = _of_pair(key, item, chance)
    else:
        drawn = animal(key, item.taxa[0], chance)
    return Individual(seed=seed, animal=drawn, variation=variation(chance))


def _kind(character: Character, chance: Chance) -> Specimen:
    sex = character.sex or (Sex.MALE if chance.random() < 0.5 else Sex.FEMALE)
    young = chance.random() < JUVENILES
    stage = character.stage or (Stage.JUVENILE if young else Stage.ADULT)
    return Specimen(sex=sex, stage=stage)


def _with_state(key: Key, item: Item, chance: Chance, sees: Mapping[str, float]) -> Animal:
    character = key.character[item.character]
    kind = _kind(character, chance)
    weights = _showing(key, item, sees, kind)
    if not weights:
        kind = _other_kind(key, item, character)
        weights = _showing(key, item, sees, kind)
    if not weights:
        raise ValueError(f"no taxon of {key.id!r} shows {item.name!r}")
    total = sum(weights.values())
    shares = [weight / total for weight in weights.values()]
    taxon = str(chance.choice(list(weights), p=shares))
    drawn = animal(key, taxon, chance, kind)
    if not item.state:
        return drawn
    return replace(drawn, shown={**drawn.shown, item.character: item.state})


def _showing(key: Key, item: Item, sees: Mapping[str, float], kind: Specimen) -> dict[str, float]:
    """How often each taxon is the one that shows the state of the item, or has its number."""
    character = key.character[item.character]
    found = {}
    for taxon, share in sees.items():
        value = value_of(key, taxon, character, kind)
        if value is None or isinstance(value, Inapplicable):
            continue
        part = value.shares().get(item.state, 0.0) if isinstance(value, Shows) else 1.0
        if part > 0 and taxon in key.taxon:
            found[taxon] = share * part + 1e-6
    return found


def _other_kind(key: Key, item: Item, character: Character) -> Specimen:
    """A sex and stage at which some taxon shows the state."""
    for score in key.scores:
        if score.character == item.character and (
            not isinstance(score.value, Shows) or item.state in score.value.states
        ):
            sex = score.sex or character.sex or Sex.FEMALE
            return Specimen(sex=sex, stage=score.stage or character.stage or Stage.ADULT)
    return Specimen(sex=character.sex, stage=character.stage)


def _of_pair(key: Key, item: Item, chance: Chance) -> Animal:
    """One of the pair, showing what tells it: the likeliest of those drawn, at the worst."""
    character = key.character[item.character]
    pair = (item.taxa[0], item.taxa[1])
    taxon = pair[int(chance.integers(2))]
    other = pair[1] if taxon == pair[0] else pair[0]
    best, most = None, -1.0
    for _ in range(TRIES):
        drawn = animal(key, taxon, chance, _kind(character, chance))
        shown = drawn.shown.get(item.character)
        if shown is None:
            continue
        kind = drawn.specimen
        if leaning(key, character, shown, pair, kind=kind) == taxon:
            return drawn
        odds = likelihood(value_of(key, taxon, character, kind), shown) / likelihood(
            value_of(key, other, character, kind), shown
        )
        if odds > most:
            best, most = drawn, odds
    if best is None:
        raise ValueError(f"{taxon!r} never shows {item.character!r}")
    return best
