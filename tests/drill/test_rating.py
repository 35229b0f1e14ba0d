"""Ratings come from right or wrong and from time, and nobody is asked."""

from dataclasses import replace

import pytest
from fsrs import Rating
from hypothesis import given
from hypothesis import strategies as st

from idkey.drill.rating import FIRST_MS, rating_of, usual_ms
from idkey.store.drill_log import Exercise, Trial

STATE, ITEM = Exercise.STATE, "state/a/b"
USUAL = FIRST_MS[STATE]
RIGHT = Trial(
    person="RB",
    at="2025-11-04T09:00:00Z",
    key="k",
    key_version="1",
    key_digest="",
    exercise=STATE,
    item=ITEM,
    seed=1,
    correct=True,
    millis=USUAL,
    rating=3,
)
WRONG = replace(RIGHT, correct=False, rating=1)


@pytest.mark.parametrize(
    ("before", "correct", "slips", "share", "rating"),
    [
        pytest.param([RIGHT], False, 0, 0.1, Rating.Again, id="wrong is again, however quick"),
        pytest.param([], True, 0, 1.0, Rating.Good, id="right in the usual time is good"),
        pytest.param([RIGHT], True, 1, 0.1, Rating.Hard, id="right after a slip is hard"),
        pytest.param([RIGHT], True, 0, 2.1, Rating.Hard, id="right but slow is hard"),
        pytest.param([], True, 0, 0.1, Rating.Good, id="quick the first time may be a guess"),
        pytest.param([RIGHT], True, 0, 0.5, Rating.Easy, id="quick and right before is easy"),
        pytest.param([WRONG], True, 0, 0.5, Rating.Good, id="quick but wrong before is good"),
        pytest.param([RIGHT, WRONG], True, 0, 0.5, Rating.Good, id="the last answer counts"),
    ],
)
def test_the_rule(before: list[Trial], correct: bool, slips: int, share: float, rating: Rating):
    millis = round(share * USUAL)

    assert rating_of(before, STATE, ITEM, correct=correct, slips=slips, millis=millis) is rating


def test_the_usual_time_is_the_persons_own_once_eight_answers_were_right():
    quick = [replace(RIGHT, millis=6000)] * 8

    assert usual_ms(quick[:7], STATE) == USUAL
    assert usual_ms(quick, STATE) == 6000
    assert usual_ms([*quick, replace(WRONG, millis=90_000)], STATE) == 6000
    assert usual_ms(quick, Exercise.PAIR) == FIRST_MS[Exercise.PAIR]


@given(st.lists(st.integers(0, 10**7), min_size=8, max_size=40))
def test_guesses_and_lunch_breaks_do_not_move_the_usual_time_far(times: list[int]):
    usual = usual_ms([replace(RIGHT, millis=time) for time in times], STATE)

    assert USUAL / 2 <= usual <= 2 * USUAL
