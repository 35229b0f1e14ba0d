"""The drill log: append-only, sealed per person, forgettable per person."""

from dataclasses import replace
from pathlib import Path

import pytest
from sqlalchemy import update

from idkey.store.book import Store
from idkey.store.drill_log import (
    CaseMarks,
    Exercise,
    Sighting,
    Trial,
    drill_people,
    forget_person,
    put_trial,
    trial_faults,
    trials_of,
)
from idkey.store.moving import copy_records
from idkey.store.schema import drill_trials

TRIAL = Trial(
    person="RB",
    at="2025-11-04T09:00:00.000Z",
    key="large-dark-scorpions",
    key_version="1.0.0",
    key_digest="f5d0",
    exercise=Exercise.STATE,
    item="state/telson_colour/dark",
    seed=7,
    correct=True,
    millis=4200,
    rating=3,
    taxon="pandinus_imperator",
    sightings=(
        Sighting(character="telson_colour", truth="dark", said="dark", right=True),
        Sighting(character="pectinal_teeth_male", truth=17.0, said=18.0),
        Sighting(character="sternum_shape", truth="pentagonal"),
    ),
    case=CaseMarks(
        verdict="open",
        carried="open",
        truth="contradicted",
        hazard_right=True,
        findings=4,
        par=3,
        handled=0,
    ),
)


def test_trials_come_back_as_they_were_put_in_the_order_of_each_person(store: Store):
    first = put_trial(store, TRIAL)
    put_trial(store, replace(TRIAL, person="AK", key="red-kneed-tarantulas"))
    second = put_trial(store, replace(TRIAL, seed=8, correct=False, rating=1))

    assert trials_of(store, "RB") == (first, second)
    assert replace(first, number=0, digest="") == TRIAL
    assert [trial.person for trial in trials_of(store)] == ["AK", "RB", "RB"]
    assert [trial.person for trial in trials_of(store, key="red-kneed-tarantulas")] == ["AK"]
    assert drill_people(store) == (("AK", 1), ("RB", 2))
    assert trial_faults(store) == ()


def test_an_answer_changed_later_shows(store: Store):
    for seed in (1, 2, 3):
        put_trial(store, replace(TRIAL, seed=seed))
    better = drill_trials.c.content
    with store.database.writes() as connection:
        connection.execute(
            update(drill_trials)
            .where(drill_trials.c.number == 2)
            .values(content=better.op("||")(" "))
        )

    assert trial_faults(store) == ("RB: entry 2 of the drill log is not what was kept.",)


def test_a_missing_answer_shows(store: Store):
    for seed in (1, 2, 3):
        put_trial(store, replace(TRIAL, seed=seed))
    with store.database.writes() as connection:
        connection.execute(drill_trials.delete().where(drill_trials.c.number == 2))

    assert trial_faults(store, "RB") == ("RB: entry 2 of the drill log is missing.",)


def test_a_person_can_be_forgotten_and_the_others_stay_whole(store: Store):
    put_trial(store, TRIAL)
    put_trial(store, replace(TRIAL, person="AK"))

    assert forget_person(store, "RB") == 1
    assert drill_people(store) == (("AK", 1),)
    assert trial_faults(store) == ()


def test_the_log_moves_to_another_book_whole(store: Store, tmp_path: Path):
    kept = put_trial(store, TRIAL)
    with Store.open(tmp_path / "other.sqlite3") as other:
        copy_records(store.database, other.database)

        assert trials_of(other) == (kept,)
        assert trial_faults(other) == ()


def test_a_trial_without_person_or_with_a_rating_of_five_is_refused():
    with pytest.raises(ValueError, match="person"):
        replace(TRIAL, person=" ")
    with pytest.raises(ValueError, match="1 to 4"):
        replace(TRIAL, rating=5)
