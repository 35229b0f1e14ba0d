"""What a key has to practise, weighted by what the shop sees and what the person confuses."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import combinations, product

from idkey.drill.item import Item, case_item, pair_item, state_item
from idkey.drill.telling import tellers
from idkey.engine.likeness import lookalikes
from idkey.engine.matrix import Matrix
from idkey.model.character import Character, Kind
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.score import Shows, Spans
from idkey.store.drill_log import Exercise

ALIKE = 3
"""Look-alikes taken per taxon."""

PER_PAIR = 2
"""Characters practised per pair."""

MOST_COUNTED = 80
"""Largest count that is practised; more would be counting, not seeing."""

MOST_DRAWN = 12
"""Largest ratio that is practised; beyond, the shorter side is a hairline on paper."""

NUMBERS = 0.8
"""How often a number is to be read, against all states of one character together."""

HARDER = 4.0
"""How much more often something is offered that the person always gets wrong."""

MISLED = 0.7
"""Share of whole cases whose label is wrong."""


class Why(StrEnum):
    """Why something is in the deck."""

    STATE = "state"
    LOOKALIKE = "lookalike"
    MIXUP = "mixup"
    LABEL = "label"


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """What is known of the shop and the person.

    Attributes:
        sees: Share per taxon id of the animals that come in; a missing one has none.
        pairs: Share of wrong decisions per pair of taxa, ids in order.
        states: Share of wrong answers per (character id, state id).
        drawn: Ids of the characters whose states can be shown in a drawing.
    """

    sees: Mapping[str, float]
    pairs: Mapping[tuple[str, str], float] = field(default_factory=dict)
    states: Mapping[tuple[str, str], float] = field(default_factory=dict)
    drawn: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer:
    """Something to practise.

    Attributes:
        item: What.
        weight: How often to offer it; the weights of one exercise sum to one.
        why: Why it is there.
    """

    item: Item
    weight: float
    why: Why


def shop_shares(key: Key, outcomes: Mapping[str, Mapping[str, int]]) -> dict[str, float]:
    """Share per taxon of the animals a shop sees.

    Every taxon counts as one animal; the starting rates of the labels and the shop's own decided
    cases come on top.

    Args:
        key: The key.
        outcomes: Decided cases per label id and taxon id.
    """
    weight = {taxon.id: 1.0 for taxon in key.taxa}
    for label in key.labels:
        if label.rates is not None:
            for taxon, share in label.rates.shares.items():
                weight[taxon] = weight.get(taxon, 0.0) + share * label.rates.animals
        for taxon, number in outcomes.get(label.id, {}).items():
            if taxon in weight:
                weight[taxon] += number
    total = sum(weight.values())
    return {taxon: one / total for taxon, one in weight.items()}


def deck(matrix: Matrix, known: Known) -> tuple[Offer, ...]:
    """Everything a key has to practise, the most wanted first within each exercise.

    Args:
        matrix: The key, compiled for unknown sex and stage.
        known: What is known of the shop and the person.
    """
    offers = [*_states(matrix.key, known), *_pairs(matrix, known), *_cases(matrix.key, known)]
    totals = {
        exercise: sum(offer.weight for offer in offers if offer.item.exercise is exercise)
        for exercise in Exercise
    }
    shared = (
        Offer(item=o.item, weight=o.weight / totals[o.item.exercise], why=o.why) for o in offers
    )
    order = tuple(Exercise)
    return tuple(sorted(shared, key=lambda o: (order.index(o.item.exercise), -o.weight)))


def _states(key: Key, known: Known) -> Iterator[Offer]:
    for character in key.characters:
        hard = character.error_rate / 0.1
        if character.kind.numeric:
            if _readable(key, character):
                weight = NUMBERS * hard * _harder(known.states.get((character.id, "")))
                yield Offer(item=state_item(character.id), weight=weight, why=Why.STATE)
        elif character.id in known.drawn and len(character.states) > 1:
            for state, share in state_shares(key, character, known.sees).items():
                weight = hard * share * _harder(known.states.get((character.id, state)))
                yield Offer(item=state_item(character.id, state), weight=weight, why=Why.STATE)


def _readable(key: Key, character: Character) -> bool:
    """Whether a plate can show the number."""
    numbers = [
        bound
        for taxon in key.taxa
        for score in key.cells.get((taxon.id, character.id), ())
        if isinstance(score.value, Spans)
        for bound in (score.value.low, score.value.high, score.value.mean)
        if bound is not None
    ]
    if not numbers or min(numbers) < 0:
        return False
    if character.kind is Kind.RATIO and character.unit != "%":
        return max(numbers) <= MOST_DRAWN
    return character.kind is not Kind.COUNT or max(numbers) <= MOST_COUNTED


def state_shares(key: Key, character: Character, sees: Mapping[str, float]) -> dict[str, float]:
    """How often each state comes in; states that no taxon shows are left out.

    Each state that occurs gets at least a fifth of an even share, so that rare ones are seen.
    """
    found: dict[str, float] = {}
    for taxon, share in sees.items():
        for score in key.cells.get((taxon, character.id), ()):
            if isinstance(score.value, Shows):
                for state, part in score.value.shares().items():
                    found[state] = found.get(state, 0.0) + share * part
    total = sum(found.values()) or 1.0
    least = 0.2 / max(len(found), 1)
    return {state: max(share / total, least) for state, share in found.items()}


def pairs_of(matrix: Matrix) -> dict[tuple[str, str], Why]:
    """Pairs worth telling apart: mix-ups under labels first, then look-alikes."""
    found: dict[tuple[str, str], Why] = {}
    taxon = matrix.key.taxon
    for label in matrix.key.labels:
        covers = [one for one in label.covers if one in taxon]
        others = [one for one in label.sold_as if one in taxon]
        for one, other in (*product(covers, others), *combinations(covers, 2)):
            if one != other:
                found[min(one, other), max(one, other)] = Why.MIXUP
    for name in matrix.taxa:
        for other, _ in lookalikes(matrix, name, ALIKE):
            found.setdefault((min(name, other), max(name, other)), Why.LOOKALIKE)
    return found


def _pairs(matrix: Matrix, known: Known) -> Iterator[Offer]:
    even = 1.0 / max(len(matrix.taxa), 1)
    for pair, why in pairs_of(matrix).items():
        seen = sum(known.sees.get(taxon, 0.0) for taxon in pair)
        weight = (seen + even) * _harder(known.pairs.get(pair)) * (2 if why is Why.MIXUP else 1)
        useful = tellers(matrix, *pair)
        shown = [one for one in useful if _showable(matrix.key, one.character, known)]
        for teller in (shown or useful)[:PER_PAIR]:
            yield Offer(item=pair_item(*pair, teller.character), weight=weight, why=why)


def _showable(key: Key, character_id: str, known: Known) -> bool:
    character = key.character[character_id]
    return character_id in known.drawn or (character.kind.numeric and _readable(key, character))


def _cases(key: Key, known: Known) -> Iterator[Offer]:
    for label in key.labels:
        right = [one for one in label.covers if one in key.taxon]
        wrong = [one for one in label.sold_as if one in key.taxon and one not in right]
        for taxa, share, why in ((right, 1 - MISLED, Why.LABEL), (wrong, MISLED, Why.MIXUP)):
            for taxon in taxa:
                weight = share * (known.sees.get(taxon, 0.0) + 1e-3) * _care(label)
                yield Offer(item=case_item(label.id, taxon), weight=weight, why=why)


def _care(label: Label) -> float:
    """Labels whose mistake hurts somebody or breaks a law come up more often."""
    return 1.0 + bool(label.safety) + 0.5 * bool(label.law)


def _harder(wrong: float | None) -> float:
    return 1.0 + (HARDER - 1.0) * (wrong or 0.0)
