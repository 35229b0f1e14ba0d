"""What people get wrong, offered to the author of a key as a change of its error rates."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace

from idkey.engine.intervals import Interval, wilson
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.store.drill_log import Sighting, Trial

WARM_UP = 3
"""First answers of each person to a character that are left out: they still learn the words."""

ENOUGH = 30
"""Answers from which a change is offered."""

WEIGHT = 20.0
"""Answers that the rate in the key is worth when the two are put together."""

MOST = 0.45
"""No higher rate is offered: beyond it a character would tell nothing."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ObservedError:
    """What was observed on one character, beside what the key says.

    Attributes:
        character: Character id.
        wrong: Wrong answers, "cannot tell" left out.
        answers: Answers.
        people: People who gave them.
        interval: Share wrong with its Wilson interval at 95 %.
        now: Chance of a slip that the key assumes.
        offered: Chance of a slip to put in its place; None while there are too few answers.
        mistakes: (truth, said, count), most frequent first; empty for numbers.
    """

    character: str
    wrong: int
    answers: int
    people: int
    interval: Interval
    now: float
    offered: float | None
    mistakes: tuple[tuple[str, str, int], ...]

    @property
    def differs(self) -> bool:
        """Whether the rate in the key lies outside the interval of what was observed."""
        return self.offered is not None and not (
            self.interval.low <= self.now <= self.interval.high
        )


def observed_error(key: Key, trials: Sequence[Trial]) -> tuple[ObservedError, ...]:
    """Per character of the key, how often people recorded something else than was there.

    Answers given on other versions of the key count, since pictures change little between
    versions; states that the key no longer has are left out.

    Args:
        key: The key.
        trials: Trials of any number of people, each person's oldest first.

    Returns:
        In the order of the key; characters that nobody answered are left out.
    """
    settled = _settled(key, trials)
    return tuple(
        _observed(character, settled[character.id])
        for character in key.characters
        if settled.get(character.id)
    )


def with_observed(key: Key, accepted: Sequence[ObservedError]) -> Key:
    """The key with the error rates that its author accepted.

    Args:
        key: The key.
        accepted: What was accepted; one without an offer changes nothing.

    Returns:
        A new key; without digest when anything changed, since it is not saved yet.
    """
    rates = {one.character: one.offered for one in accepted if one.offered is not None}
    if not rates:
        return key
    characters = tuple(replace(c, error=rates.get(c.id, c.error)) for c in key.characters)
    return replace(key, characters=characters, digest="")


def _settled(key: Key, trials: Sequence[Trial]) -> dict[str, list[tuple[str, Sighting]]]:
    """(person, sighting) per character, without the first answers of each person."""
    met: Counter[tuple[str, str]] = Counter()
    found: dict[str, list[tuple[str, Sighting]]] = {}
    for trial in trials:
        if trial.key != key.id:
            continue
        for seen in trial.sightings:
            if seen.said is None or not _known(key, seen):
                continue
            place = (trial.person, seen.character)
            met[place] += 1
            if met[place] > WARM_UP:
                found.setdefault(seen.character, []).append((trial.person, seen))
    return found


def _known(key: Key, seen: Sighting) -> bool:
    character = key.character.get(seen.character)
    if character is None or character.kind.numeric != isinstance(seen.truth, float):
        return False
    return character.kind.numeric or {seen.truth, seen.said} <= set(character.state_ids)


def _observed(character: Character, answers: Sequence[tuple[str, Sighting]]) -> ObservedError:
    wrong = [seen for _, seen in answers if not seen.right]
    total = len(answers)
    now = character.error_rate
    offered = None
    if total >= ENOUGH:
        offered = round(min((len(wrong) + WEIGHT * now) / (total + WEIGHT), MOST), 3)
    mistakes = Counter(
        (str(seen.truth), str(seen.said)) for seen in wrong if isinstance(seen.truth, str)
    )
    ranked = sorted(mistakes.items(), key=lambda pair: (-pair[1], pair[0]))
    return ObservedError(
        character=character.id,
        wrong=len(wrong),
        answers=total,
        people=len({person for person, _ in answers}),
        interval=wilson(len(wrong), total),
        now=now,
        offered=offered,
        mistakes=tuple((truth, said, count) for (truth, said), count in ranked),
    )
