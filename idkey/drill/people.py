"""A supervisor's view: what each person has done and shown, and what the shop gets wrong."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import combinations

from idkey.drill.deck import Known, Offer
from idkey.drill.progress import (
    SHOWN,
    Accuracy,
    Between,
    accuracies,
    agreement_between,
    overall,
    pair_records,
)
from idkey.drill.schedule import agenda
from idkey.engine.intervals import Interval, wilson
from idkey.store.drill_log import Exercise, Trial

FEWEST = 5
"""Answers below which a weak spot is not named."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """Where one person stands.

    Attributes:
        person: Initials or alias.
        trials: Pictures answered.
        last: Day of the last answer, ISO 8601.
        right: Share of all answers that were right, with its interval.
        exercises: The same by exercise.
        shown: Pairs shown to be told apart.
        pairs: Pairs practised.
        due: Items due now.
        weakest: Characters read worst, the worst first, at most three.
    """

    person: str
    trials: int
    last: str
    right: Interval
    exercises: tuple[Accuracy, ...]
    shown: int
    pairs: int
    due: int
    weakest: tuple[Accuracy, ...]


def by_person(trials: Sequence[Trial]) -> dict[str, tuple[Trial, ...]]:
    """Trials per person, by name; each person's in their order."""
    found: dict[str, list[Trial]] = {}
    for trial in trials:
        found.setdefault(trial.person, []).append(trial)
    return {person: tuple(found[person]) for person in sorted(found)}


def standings(
    trials: Sequence[Trial], offers: Sequence[Offer], now: datetime, *, threshold: float = SHOWN
) -> tuple[Standing, ...]:
    """Where everybody stands, by name.

    Args:
        trials: Trials of everybody with one key.
        offers: The deck of that key.
        now: The time, aware of its zone.
        threshold: Lower limit from which a pair counts as told apart.
    """
    return tuple(
        _standing(person, rows, len(agenda(offers, rows, now).due), threshold)
        for person, rows in by_person(trials).items()
    )


def agreements(trials: Sequence[Trial]) -> tuple[Between, ...]:
    """How far every two people agree who answered the same pictures, most pictures first."""
    people = by_person(trials)
    found = [agreement_between(people[a], people[b]) for a, b in combinations(people, 2)]
    met = [one for one in found if one is not None and one.pictures]
    return tuple(sorted(met, key=lambda one: (-one.pictures, one.one, one.other)))


def known_of(trials: Sequence[Trial], sees: Mapping[str, float], drawn: frozenset[str]) -> Known:
    """What a deck needs to know of one person.

    Shares of mistakes are drawn towards nought by two right answers, so that one slip does not
    take over.

    Args:
        trials: The person's trials with the key.
        sees: Share per taxon id of what the shop sees.
        drawn: Ids of the characters that can be shown in a drawing.
    """
    pairs: dict[tuple[str, str], list[int]] = {}
    states: dict[tuple[str, str], list[int]] = {}
    for trial in trials:
        if trial.exercise is Exercise.PAIR and len(trial.pair) == 2:
            row = pairs.setdefault((trial.pair[0], trial.pair[1]), [0, 2])
            row[0] += not trial.correct
            row[1] += 1
        for seen in trial.sightings:
            state = seen.truth if isinstance(seen.truth, str) else ""
            row = states.setdefault((seen.character, state), [0, 2])
            row[0] += not seen.right
            row[1] += 1
    return Known(
        sees=sees,
        pairs={pair: wrong / total for pair, (wrong, total) in pairs.items()},
        states={place: wrong / total for place, (wrong, total) in states.items()},
        drawn=drawn,
    )


def _standing(person: str, rows: Sequence[Trial], due: int, threshold: float) -> Standing:
    records = pair_records(rows, threshold=threshold)
    right = sum(trial.correct for trial in rows)
    weak = [one for one in accuracies(rows) if one.trials >= FEWEST and one.right < one.trials]
    return Standing(
        person=person,
        trials=len(rows),
        last=max(trial.at for trial in rows)[:10],
        right=wilson(right, len(rows)),
        exercises=overall(rows),
        shown=sum(record.shown for record in records),
        pairs=len(records),
        due=due,
        weakest=tuple(weak[:3]),
    )
