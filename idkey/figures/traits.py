"""What is known of an animal that is to be drawn: from scores, findings or a specimen."""

from collections.abc import Mapping
from dataclasses import dataclass

from idkey.model.case import Case, Finding
from idkey.model.character import Character, Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Score, Shows, Spans


@dataclass(frozen=True, slots=True)
class Trait:
    """What one character shows: a state or a number.

    Attributes:
        state: State id; empty for a number.
        value: Number in the unit of the character; None for a state.
    """

    state: str = ""
    value: float | None = None


Traits = Mapping[str, Trait]
"""Known traits by character id; what is missing is not known."""


def traits_of_taxon(
    key: Key, taxon: str, *, sex: Sex | None = None, stage: Stage | None = None
) -> Traits:
    """What the taxon typically shows.

    Args:
        key: The key.
        taxon: Taxon id.
        sex: Sex to draw; None draws females where the sexes differ.
        stage: Stage to draw; None draws adults.

    Returns:
        The most frequent state of each character (the first of equals in the order of the
        key), and the middle of each range; an open range counts as its one bound.

    Raises:
        KeyError: The key has no such taxon.
    """
    known = key.taxon[taxon]
    traits: dict[str, Trait] = {}
    for character in key.characters:
        score = _fitting(key.cells.get((taxon, character.id), ()), sex, stage)
        trait = None if score is None else _typical(character, score)
        if trait is not None:
            traits[character.id] = trait
    low, high = known.size_mm
    sizes = [size for size in (low, high) if size is not None]
    if sizes:
        traits.setdefault(SIZE, Trait(value=sum(sizes) / len(sizes)))
    return traits


SIZE = ":size_mm"
"""Name under which the size of the taxon itself is found; no character id can be this."""


def _fitting(scores: tuple[Score, ...], sex: Sex | None, stage: Stage | None) -> Score | None:
    wanted_sex, wanted_stage = sex or Sex.FEMALE, stage or Stage.ADULT

    def rank(score: Score) -> tuple[int, int]:
        return (
            _distance(score.stage, wanted_stage, asked=True),
            _distance(score.sex, wanted_sex, asked=sex is not None),
        )

    usable = [score for score in scores if max(rank(score)) < _NEVER]
    return min(usable, key=rank, default=None)


_NEVER = 9


def _distance(scored: Sex | Stage | None, wanted: Sex | Stage, *, asked: bool) -> int:
    if scored == wanted:
        return 0
    if scored is None:
        return 1
    return _NEVER if asked else 2


def _typical(character: Character, score: Score) -> Trait | None:
    if isinstance(score.value, Shows):
        shares = score.value.shares()
        order = character.state_ids
        best = max(shares, key=lambda s: (shares[s], -order.index(s) if s in order else -99))
        return Trait(state=best)
    if isinstance(score.value, Spans):
        return Trait(value=_middle(score.value))
    return None


def _middle(spans: Spans) -> float:
    if spans.mean is not None:
        return spans.mean
    bounds = [bound for bound in (spans.low, spans.high) if bound is not None]
    return sum(bounds) / len(bounds) if bounds else 0.0


def traits_of_case(key: Key, case: Case) -> Traits:
    """What the findings say for certain: one state, or a number.

    "One of these" and "none of these" count only where they leave a single state.
    """
    found: dict[str, Trait] = {}
    for finding in case.findings:
        character = key.character.get(finding.character)
        trait = None if character is None else _found(character, finding)
        if trait is not None:
            found[finding.character] = trait
    return found


def _found(character: Character, finding: Finding) -> Trait | None:
    if finding.value is not None:
        return Trait(value=finding.value)
    states = set(finding.states)
    left = set(character.state_ids) - states if finding.negated else states
    return Trait(state=next(iter(left))) if len(left) == 1 and not finding.unseen else None


def traits_of_specimen(shown: Mapping[str, str | float]) -> Traits:
    """What a simulated specimen shows: state ids and numbers by character id."""
    return {
        character: Trait(state=value) if isinstance(value, str) else Trait(value=float(value))
        for character, value in shown.items()
    }
