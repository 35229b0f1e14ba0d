"""How well something was remembered, read from right or wrong and from the time it took.

Nobody is asked how hard it was. The rule, in this order:

* wrong: again;
* right after a slip on the way (a character that tells nothing, a second look), or in more than
  `SLOW` times the person's usual time: hard;
* right in less than `QUICK` times the usual time, and right the time before as well: easy;
* right otherwise: good. The first right answer is at most good: it may be a guess.

The usual time is the median over the person's last right answers in the same exercise.
"""

from collections.abc import Sequence
from statistics import median

from fsrs import Rating

from idkey.store.drill_log import Exercise, Trial

SLOW = 2.0
"""Times the usual time from which a right answer counts as hard. Common practice, no source."""

QUICK = 0.6
"""Times the usual time below which a right answer may count as easy. Common practice."""

FIRST_MS = {Exercise.STATE: 9_000, Exercise.PAIR: 22_000, Exercise.CASE: 240_000}
"""Usual times before the person has answered enough. Common practice, no source."""

ENOUGH = 8
"""Right answers from which the person's own usual time counts."""

LATEST = 30
"""Right answers it is taken over."""


def usual_ms(before: Sequence[Trial], exercise: Exercise) -> float:
    """The usual time of a person for a right answer, in milliseconds.

    Kept within half and twice the starting value, so that a run of guesses or a lunch break
    does not move it far.

    Args:
        before: The person's trials, oldest first.
        exercise: The exercise.
    """
    first = FIRST_MS[exercise]
    times = [t.millis for t in before if t.exercise is exercise and t.correct][-LATEST:]
    if len(times) < ENOUGH:
        return float(first)
    return min(max(median(times), first / 2), first * 2.0)


def rating_of(
    before: Sequence[Trial],
    exercise: Exercise,
    item: str,
    *,
    correct: bool,
    slips: int,
    millis: int,
) -> Rating:
    """The rating of one answer.

    Args:
        before: The person's earlier trials, oldest first.
        exercise: The exercise.
        item: Name of the item.
        correct: Whether the answer as a whole was right.
        slips: Slips on the way to it.
        millis: Time it took, in milliseconds.
    """
    if not correct:
        return Rating.Again
    usual = usual_ms(before, exercise)
    if slips or millis > SLOW * usual:
        return Rating.Hard
    last = next((trial for trial in reversed(before) if trial.item == item), None)
    known = last is not None and last.correct
    return Rating.Easy if known and millis < QUICK * usual else Rating.Good
