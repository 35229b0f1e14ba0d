"""Turns the knobs of a body plan by what is known of an animal."""

from collections.abc import Iterator, Sequence

from idkey.figures.binding import Binding, Source
from idkey.figures.plan import Knob, KnobKind, Plan, Value, Values
from idkey.figures.traits import SIZE, Traits
from idkey.formats.problem import Problem, hint
from idkey.model.character import Sex, Stage
from idkey.model.key import Key

SIZE_WORD = "size_mm"
"""What a binding writes for the size of the taxon itself."""


def turned_knobs(
    plan: Plan,
    binding: Binding,
    *,
    key: Key,
    traits: Traits,
    specimen: tuple[Sex | None, Stage | None] = (None, None),
) -> Values:
    """The values of all knobs that something known turns.

    Args:
        plan: The body plan.
        binding: Which character turns which knob.
        key: Where reference colours come from.
        traits: What is known of the animal.
        specimen: Its sex and stage; None draws an adult female where it matters.
    """
    sex, stage = specimen[0] or Sex.FEMALE, specimen[1] or Stage.ADULT
    known: list[tuple[str, Value]] = []
    for name, sources in binding.sources.items():
        for source in sources:
            if source.sex not in (None, sex) or source.stage not in (None, stage):
                continue
            value = _value(plan.knobs[name], source, key, traits)
            if value is not None:
                known.append((name, value))
                break
    return Values(tuple(known))


def _value(knob: Knob, source: Source, key: Key, traits: Traits) -> Value | None:
    trait = traits.get(SIZE if source.character == SIZE_WORD else source.character)
    if trait is None:
        return None
    if trait.value is not None:
        within = min(max(trait.value * source.times, knob.low), knob.high)
        return within if knob.kind is KnobKind.NUMBER else None
    if source.values or knob.kind is not KnobKind.COLOUR:
        return source.values.get(trait.state)
    return _colour(source, key, trait.state)


def _colour(source: Source, key: Key, state_id: str) -> str | None:
    character = key.character.get(source.character)
    if character is None or state_id not in character.state_ids:
        return None
    colours = character.state(state_id).colours
    which = source.which.get(state_id, 1)
    return colours[which - 1].lower() if len(colours) >= which else None


def mistakes_against(binding: Binding, keys: Sequence[Key]) -> tuple[Problem, ...]:
    """What a binding says about characters and states that no key of its body plan has.

    Args:
        binding: The binding.
        keys: The keys that use the body plan.
    """
    known = {c.id: set[str]() for key in keys for c in key.characters}
    for key in keys:
        for character in key.characters:
            known[character.id] |= set(character.state_ids)
    found = [
        problem
        for sources in binding.sources.values()
        for source in sources
        for problem in _mistakes(binding, source, known)
    ]
    return tuple(sorted(found, key=lambda p: (p.line, p.column)))


def _mistakes(binding: Binding, source: Source, known: dict[str, set[str]]) -> Iterator[Problem]:
    if source.character == SIZE_WORD:
        return
    if source.character not in known:
        loc = (*source.loc, "character")
        remedy = hint(source.character, tuple(known), "Use the id of a character.")
        yield binding.text.problem(loc, f"Unknown character '{source.character}'.", remedy)
        return
    for field, states in (("values", source.values), ("which", source.which)):
        for state in states:
            if state not in known[source.character]:
                yield binding.text.problem_at_key(
                    (*source.loc, field, state),
                    f"'{source.character}' has no state '{state}'.",
                    hint(state, tuple(known[source.character])),
                )
