"""Schedules are what the library makes of the log, and nothing else."""

import random
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from fsrs import Card, Rating, Scheduler, State
from hypothesis import given
from hypothesis import strategies as st

from idkey.drill.deck import Offer, Why
from idkey.drill.item import Item, case_item, pair_item, state_item
from idkey.drill.schedule import (
    FRESH,
    SCHEDULER,
    agenda,
    card_id,
    cards,
    review_logs,
    serial,
)
from idkey.store.drill_log import Exercise, Trial

START = datetime(2025, 11, 25, 9, 0, tzinfo=UTC)
ONE, TWO = state_item("telson_colour", "dark"), state_item("telson_colour", "reddish")


def trial(item: Item, at: datetime, rating: int = 3, millis: int = 8000) -> Trial:
    return Trial(
        person="RB",
        at=at.isoformat().replace("+00:00", "Z"),
        key="k",
        key_version="1",
        key_digest="",
        exercise=item.exercise,
        item=item.name,
        seed=1,
        correct=rating > 1,
        millis=millis,
        rating=rating,
    )


def offers(*items: Item) -> tuple[Offer, ...]:
    return tuple(
        Offer(item=item, weight=1 / (n + 1), why=Why.STATE) for n, item in enumerate(items)
    )


def test_the_documented_run_of_fsrs_6_3_good_good_easy_again():
    """Good: 10 minutes; good: 2 days; easy: 19 days; again: relearning in 10 minutes."""
    log: list[Trial] = []
    at, seen = START, []
    for rating in (Rating.Good, Rating.Good, Rating.Easy, Rating.Again):
        log.append(trial(ONE, at, int(rating)))
        card = cards(log)[ONE.name]
        seen.append((card.state, card.due - at))
        at = card.due

    assert seen == [
        (State.Learning, timedelta(minutes=10)),
        (State.Review, timedelta(days=2)),
        (State.Review, timedelta(days=19)),
        (State.Relearning, timedelta(minutes=10)),
    ]


def test_stability_after_the_first_good_answer_is_2_3065_as_fsrs_6_publishes():
    assert cards([trial(ONE, START)])[ONE.name].stability == pytest.approx(2.3065)


@given(
    st.lists(
        st.tuples(st.integers(1, 4), st.integers(0, 60 * 24 * 90), st.sampled_from([ONE, TWO])),
        min_size=1,
        max_size=25,
    )
)
def test_any_log_replays_to_what_the_library_says_itself(steps: list[tuple[int, int, Item]]):
    log, at = [], START
    for rating, minutes, item in steps:
        at += timedelta(minutes=minutes)
        log.append(trial(item, at, rating))
    plain = Scheduler(desired_retention=0.9, enable_fuzzing=False)
    for item in (ONE, TWO):
        own = [log for log in review_logs(log) if log.card_id == card_id(item.name)]
        if own:
            blank = Card(card_id=card_id(item.name), due=own[0].review_datetime)
            expected = plain.reschedule_card(blank, own)
            assert cards(log)[item.name] == expected


def test_a_schedule_does_not_hang_on_chance():
    log = [trial(ONE, START + timedelta(days=n), 3) for n in range(0, 60, 6)]
    random.seed(1)
    first = cards(log)
    random.seed(2)

    assert cards(log) == first


def test_a_clock_set_back_counts_as_standing_still():
    log = [trial(ONE, START), trial(ONE, START - timedelta(days=2))]

    assert cards(log)[ONE.name].last_review == START


def test_what_is_due_comes_before_what_is_new_and_what_is_most_at_risk_first():
    known = [state_item("c", str(n)) for n in range(3)]
    log = [trial(known[0], START), trial(known[1], START), trial(known[2], START, 1)]
    plan = agenda(offers(*known, TWO), log, START + timedelta(days=4))
    risk = [SCHEDULER.get_card_retrievability(cards(log)[i.name], START + timedelta(days=4))
            for i in plan.due]  # fmt: skip

    assert set(plan.due) == set(known)
    assert risk == sorted(risk)
    assert plan.due[0] == known[2]
    assert plan.fresh == (TWO,)
    assert plan.next_item() == known[2]
    assert plan.next_item(last=known[2]) == plan.due[1]


def test_what_was_just_wrong_comes_back_soon_and_not_at_once_while_other_things_wait():
    log = [trial(ONE, START, 1)]
    plan = agenda(offers(ONE, TWO), log, START + timedelta(seconds=5))

    assert plan.due == ()
    assert plan.soon == (ONE,)
    assert plan.next_item(last=ONE) == TWO
    assert agenda(offers(ONE), log, START + timedelta(seconds=5)).next_item(last=ONE) == ONE


def test_a_done_day_says_when_to_come_back_and_offers_more_only_when_asked():
    log = [trial(ONE, START), trial(ONE, START + timedelta(minutes=10))]
    plan = agenda(offers(ONE), log, START + timedelta(hours=1))

    assert plan.next_due == START + timedelta(days=2, minutes=10)
    assert plan.next_item() is None
    assert plan.next_item(beyond=True) == ONE


def test_new_things_are_limited_by_day_and_exercise():
    many = [state_item(f"c{n}", "s") for n in range(30)]
    many += [pair_item("a", f"b{n}", "c") for n in range(30)]
    many += [case_item("L", f"t{n}") for n in range(30)]
    plan = agenda(offers(*many), [], START)
    log = [trial(item, START) for item in plan.fresh[:3]]
    later = agenda(offers(*many), log, START + timedelta(hours=2))
    tomorrow = agenda(offers(*many), log, START + timedelta(days=1))

    assert [len(plan.of(e).fresh) for e in Exercise] == [FRESH[e] for e in Exercise]
    assert len(later.of(Exercise.STATE).fresh) == FRESH[Exercise.STATE] - 3
    assert len(tomorrow.of(Exercise.STATE).fresh) == FRESH[Exercise.STATE]


def test_new_things_do_not_all_come_from_one_character():
    alike = [state_item("same", str(n)) for n in range(9)]
    others = [state_item(f"c{n}", "s") for n in range(4)]
    plan = agenda(offers(*alike, *others), [], START)

    assert len({item.character for item in plan.fresh}) == 5


def test_items_that_the_key_lost_are_left_out():
    plan = agenda(offers(TWO), [trial(ONE, START)], START + timedelta(days=9))

    assert plan.due == ()


def test_the_serial_counts_pictures_of_that_key_only():
    log = [trial(ONE, START), replace(trial(ONE, START), key="other"), trial(TWO, START)]

    assert serial(log, ONE, "k") == 1
