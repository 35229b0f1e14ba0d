"""What people answered in drills: one entry per picture shown, append-only, chained per person.

Each entry carries the digest of the same person's entry before it, so that a change or a gap
shows, and one person's entries can still be forgotten without touching anybody else's.
"""

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any

from sqlalchemy import Connection, RowMapping, delete, func, insert, select

from idkey.store.book import Store
from idkey.store.chain import ORIGIN, locked_end
from idkey.store.codec import Form, UnreadableRecord, canonical, digest, storable
from idkey.store.schema import drill_trials

Answer = str | float | None
"""A state id, a number in the unit of the character, or None for "could not tell"."""


class Exercise(StrEnum):
    """What was asked."""

    STATE = "state"
    PAIR = "pair"
    CASE = "case"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sighting:
    """One character of one picture: what it showed, and what the person said it shows."""

    character: str
    truth: str | float
    said: Answer = None
    right: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseMarks:
    """How a whole case went.

    Attributes:
        verdict: What the person concluded about the label.
        carried: What the findings carried.
        truth: What the label really deserves.
        hazard_right: Whether "may it be handled" was answered rightly.
        findings: Characters looked at.
        par: Characters that a sure eye needs for the same animal.
        handled: Looks that meant handling without need, or against a caution.
    """

    verdict: str
    carried: str
    truth: str
    hazard_right: bool
    findings: int
    par: int
    handled: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial:
    """One answered picture, as it is kept.

    Attributes:
        person: Initials or alias.
        at: When it was answered, ISO 8601 in UTC.
        key: Key id.
        key_version: Version of the key.
        key_digest: Digest of the key.
        exercise: What was asked.
        item: Name of the item that was practised.
        seed: Number the specimen was drawn with; item and seed make the same specimen again.
        correct: Whether the answer as a whole was right.
        millis: Time from picture to answer, in milliseconds.
        rating: 1 again, 2 hard, 3 good, 4 easy, as derived when it was answered.
        taxon: The taxon that was drawn.
        said: The taxon the person decided for; empty when none was asked or given.
        pair: Both taxa of a pair; empty otherwise.
        first_look: The character looked at first in a pair.
        sightings: What was read from the picture.
        case: How a whole case went; None otherwise.
        number: Which entry of the person it is, from 1; 0 while not kept.
        digest: Digest of this entry and all before it; empty while not kept.
    """

    person: str
    at: str
    key: str
    key_version: str
    key_digest: str
    exercise: Exercise
    item: str
    seed: int
    correct: bool
    millis: int
    rating: int
    taxon: str = ""
    said: str = ""
    pair: tuple[str, ...] = ()
    first_look: str = ""
    sightings: tuple[Sighting, ...] = ()
    case: CaseMarks | None = None
    number: int = 0
    digest: str = ""

    def __post_init__(self) -> None:
        if not self.person.strip() or not self.item:
            raise ValueError("a trial names a person and an item")
        if not 1 <= self.rating <= 4 or self.millis < 0:
            raise ValueError("a rating is 1 to 4, a time is not negative")


_TRIALS = Form(Trial)


def put_trial(store: Store, trial: Trial) -> Trial:
    """Add a trial after the last one of its person.

    Returns:
        The trial as it is kept, with its number and digest.
    """
    bare = replace(trial, person=storable(trial.person.strip()), number=0, digest="")
    content = canonical(_TRIALS.plain(bare))
    with store.database.writes() as connection:
        locked_end(connection)
        before = _last(connection, bare.person)
        number = before["number"] + 1 if before else 1
        previous = before["digest"] if before else ORIGIN
        seal = _seal(previous, number, content)
        row = {"person": bare.person, "number": number, "key": bare.key, "content": content}
        connection.execute(insert(drill_trials).values(**row, digest=seal))
    return replace(bare, number=number, digest=seal)


def trials_of(store: Store, person: str = "", *, key: str = "") -> tuple[Trial, ...]:
    """What was answered, each person's entries oldest first.

    Args:
        store: The book.
        person: Initials or alias; empty takes everybody.
        key: Key id; empty takes all keys.

    Raises:
        UnreadableRecord: A newer program wrote an entry.
    """
    wanted = select(drill_trials).order_by(drill_trials.c.person, drill_trials.c.number)
    if person:
        wanted = wanted.where(drill_trials.c.person == person)
    if key:
        wanted = wanted.where(drill_trials.c.key == key)
    with store.database.reads() as connection:
        return tuple(_trial(row) for row in connection.execute(wanted).mappings())


def drill_people(store: Store) -> tuple[tuple[str, int], ...]:
    """(person, number of entries) for everybody who has drilled, by name."""
    column = drill_trials.c.person
    wanted = select(column, func.count()).group_by(column).order_by(column)
    with store.database.reads() as connection:
        return tuple((name, number) for name, number in connection.execute(wanted))


def trial_faults(store: Store, person: str = "") -> tuple[str, ...]:
    """Every place where the entries are not what was kept, in words; none when all is whole.

    Args:
        store: The book.
        person: Initials or alias; empty checks everybody.
    """
    wanted = select(drill_trials).order_by(drill_trials.c.person, drill_trials.c.number)
    if person:
        wanted = wanted.where(drill_trials.c.person == person)
    with store.database.reads() as connection:
        return tuple(_faults(connection.execute(wanted).mappings().all()))


def forget_person(store: Store, person: str) -> int:
    """Forget everything a person answered; the number of entries that went.

    Raises:
        ValueError: `person` is empty.
    """
    if not person.strip():
        raise ValueError("an empty name names nobody")
    with store.database.writes() as connection:
        gone = delete(drill_trials).where(drill_trials.c.person == person)
        return int(connection.execute(gone).rowcount)


def _last(connection: Connection, person: str) -> RowMapping | None:
    wanted = select(drill_trials).where(drill_trials.c.person == person)
    wanted = wanted.order_by(drill_trials.c.number.desc()).limit(1)
    return connection.execute(wanted).mappings().first()


def _seal(previous: str, number: int, content: str) -> str:
    return digest(canonical({"previous": previous, "number": number, "content": content}))


def _trial(row: RowMapping) -> Trial:
    try:
        record: Any = json.loads(row["content"])
    except ValueError as err:
        raise UnreadableRecord(
            f"Entry {row['number']} of {row['person']} in the drill log cannot be read.",
            "Check the book and restore a backup.",
        ) from err
    return replace(_TRIALS.value_from(record), number=row["number"], digest=row["digest"])


def _faults(rows: Sequence[RowMapping]) -> Iterator[str]:
    person, number, previous = "", 0, ORIGIN
    for row in rows:
        if row["person"] != person:
            person, number, previous = row["person"], 0, ORIGIN
        number += 1
        if row["number"] != number:
            yield f"{person}: entry {number} of the drill log is missing."
            number = row["number"]
        elif row["digest"] != _seal(previous, number, row["content"]):
            yield f"{person}: entry {number} of the drill log is not what was kept."
        previous = row["digest"]
