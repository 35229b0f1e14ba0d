"""What a drill has worked out in the background: what is to be done, the next exercise, reports."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from idkey.drill.beginning import Bench, Run
from idkey.drill.deck import Offer, deck, shop_shares
from idkey.drill.item import Item
from idkey.drill.observed import ObservedError, observed_error
from idkey.drill.people import Standing, agreements, known_of, standings
from idkey.drill.progress import (
    Accuracy,
    Between,
    Confusion,
    PairRecord,
    accuracies,
    overall,
    pair_records,
    state_confusion,
    taxon_confusion,
    trend,
)
from idkey.drill.schedule import Agenda, agenda, serial
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.attestation import attestation_of
from idkey.report.attestation_page import write_attestation
from idkey.report.language import Language
from idkey.store.book import Store
from idkey.store.drill_log import Exercise, Trial, drill_people, trial_faults, trials_of
from idkey.store.people import people_of


@dataclass(frozen=True, kw_only=True)
class Plan:
    """What one person has to do with one key.

    Attributes:
        person: Initials or alias.
        bench: Draws the exercises.
        offers: The deck.
        trials: The person's trials with the key, oldest first.
        agenda: What is to be done now.
        people: Everybody who can be chosen.
    """

    person: str
    bench: Bench
    offers: tuple[Offer, ...]
    trials: tuple[Trial, ...]
    agenda: Agenda
    people: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Wish:
    """What to practise next.

    Attributes:
        exercise: The exercise; None takes whatever is first.
        beyond: Whether to go on with what is not due.
        last: What was done just now.
    """

    exercise: Exercise | None = None
    beyond: bool = False
    last: Item | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """The next exercise.

    Attributes:
        wish: What it answers.
        agenda: The agenda as it is now.
        run: The exercise; None when all is done.
    """

    wish: Wish
    agenda: Agenda
    run: Run | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Report:
    """What one person has shown with one key.

    Attributes:
        trials: Pictures answered.
        exercises: Share right by exercise.
        characters: Share right by character, the weakest first.
        pairs: Pairs, the firmest first.
        states: Confusion of states per character id, most mistakes first.
        taxa: Confusion of taxa within pairs.
        trend: Share right over blocks of answers.
    """

    trials: int
    exercises: tuple[Accuracy, ...]
    characters: tuple[Accuracy, ...]
    pairs: tuple[PairRecord, ...]
    states: tuple[tuple[str, Confusion], ...]
    taxa: Confusion
    trend: tuple[Accuracy, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Everybody:
    """What a supervisor sees.

    Attributes:
        standings: Where everybody stands.
        agreements: How far every two people agree.
        observed: What is misread how often, per character.
    """

    standings: tuple[Standing, ...]
    agreements: tuple[Between, ...]
    observed: tuple[ObservedError, ...]


def plan_for(
    store: Store, key: Key, person: str, *, drawn: frozenset[str], now: datetime
) -> Plan:  # on a pool thread
    """Read a person's log and lay out what is to be done.

    Args:
        store: The record book.
        key: The key.
        person: Initials or alias; empty for nobody yet.
        drawn: Ids of the characters that can be shown in a drawing.
        now: The time.
    """
    outcomes = {label.id: store.outcomes(label.id, key=key.id) for label in key.labels}
    bench = Bench(key, shop_shares(key, outcomes))
    trials = trials_of(store, person, key=key.id) if person else ()
    offers = deck(bench.matrix(), known_of(trials, bench.sees, drawn))
    drilled = [name for name, _ in drill_people(store)]
    known = [one.initials for one in people_of(store) if one.active]
    return Plan(
        person=person,
        bench=bench,
        offers=offers,
        trials=trials,
        agenda=agenda(offers, trials, now),
        people=tuple(sorted({*drilled, *known})),
    )


def next_step(
    plan: Plan, trials: Sequence[Trial], wish: Wish, now: datetime
) -> Step:  # on a pool thread
    """The agenda after `trials`, and the next exercise drawn.

    Args:
        plan: What was laid out.
        trials: The person's trials, those since then included.
        wish: What to practise next.
        now: The time.
    """
    whole = agenda(plan.offers, trials, now)
    part = whole if wish.exercise is None else whole.of(wish.exercise)
    item = part.next_item(wish.last, beyond=wish.beyond)
    if item is None:
        return Step(wish=wish, agenda=whole, run=None)
    run = plan.bench.begin(item, serial(trials, item, plan.bench.key.id))
    return Step(wish=wish, agenda=whole, run=run)


def report_on(key: Key, trials: Sequence[Trial]) -> Report:  # on a pool thread
    """What the trials of one person show."""
    tables = [(c.id, state_confusion(trials, c)) for c in key.characters if c.states]
    wrong = [(name, table) for name, table in tables if table.mistakes()]
    wrong.sort(key=lambda pair: pair[1].right - pair[1].trials)
    return Report(
        trials=len(trials),
        exercises=overall(trials),
        characters=accuracies(trials),
        pairs=pair_records(trials),
        states=tuple(wrong),
        taxa=taxon_confusion(trials, [taxon.id for taxon in key.taxa]),
        trend=trend(trials),
    )


def everybody(store: Store, plan: Plan, now: datetime) -> Everybody:  # on a pool thread
    """Where everybody stands with the key of a plan."""
    key = plan.bench.key
    trials = trials_of(store, key=key.id)
    return Everybody(
        standings=standings(trials, plan.offers, now),
        agreements=agreements(trials),
        observed=observed_error(key, trials),
    )


def attested(
    store: Store, key: Key, person: str, *, folder: Path, now: datetime, language: Language
) -> Path:  # on a pool thread
    """Write down what somebody has shown; the file.

    Args:
        store: The record book.
        key: The key.
        person: Initials or alias.
        folder: Where it goes; made when needed.
        now: The time.
        language: Language of the document.

    Raises:
        ThinEvidence: Too little was shown.
        IdKeyError: The log is not whole, or the file cannot be written.
    """
    faults = trial_faults(store, person)
    if faults:
        raise IdKeyError(
            f"The drill log is not whole: {faults[0]}",
            "Restore a backup of the record book; nothing is attested on a log that was changed.",
        )
    found = attestation_of(key, trials_of(store, person, key=key.id), now, language=language)
    name = "".join(sign if sign.isalnum() else "-" for sign in person)
    path = folder / f"attestation-{name}-{found.at[:10]}.pdf"
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    write_attestation(path, found)
    return path
