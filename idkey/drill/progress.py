"""What a person has shown: confusions, accuracy with its interval, pairs told apart, trend."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from idkey.drill.exercises import NEITHER
from idkey.engine.agreement import Kappa, kappa_between
from idkey.engine.intervals import Interval, wilson
from idkey.model.character import Character
from idkey.store.drill_log import Exercise, Sighting, Trial

SHOWN = 0.9
"""Lower limit of the share of right decisions from which a pair counts as told apart."""

WINDOW = 60
"""Latest trials of a pair that count; what was wrong long ago does not weigh for ever."""

UNNAMED = ""
"""Column of the answers "cannot tell"."""


@dataclass(frozen=True, slots=True)
class Confusion:
    """What was there against what was said.

    Attributes:
        classes: Ids that occur as truth, in order; the columns have the same, and `UNNAMED` last.
        counts: Shape (classes, classes + 1).
    """

    classes: tuple[str, ...]
    counts: tuple[tuple[int, ...], ...]

    @property
    def trials(self) -> int:
        """How many answers it holds."""
        return sum(map(sum, self.counts))

    @property
    def right(self) -> int:
        """Answers on the diagonal."""
        return sum(row[place] for place, row in enumerate(self.counts))

    def mistakes(self) -> tuple[tuple[str, str, int], ...]:
        """(truth, said, count) of every mistake that was made, most frequent first."""
        columns = (*self.classes, UNNAMED)
        found = [
            (truth, columns[place], count)
            for number, (truth, row) in enumerate(zip(self.classes, self.counts, strict=True))
            for place, count in enumerate(row)
            if count and place != number
        ]
        return tuple(sorted(found, key=lambda one: (-one[2], one[0], one[1])))


@dataclass(frozen=True, slots=True, kw_only=True)
class Accuracy:
    """How often something was right.

    Attributes:
        name: Character id, or what the row is about.
        right: Right answers.
        trials: Answers.
        interval: Share right with its Wilson interval at 95 %.
    """

    name: str
    right: int
    trials: int
    interval: Interval


@dataclass(frozen=True, slots=True, kw_only=True)
class PairRecord:
    """What a person has shown about one pair.

    Attributes:
        pair: Both taxon ids, in order.
        right: Right decisions among the latest trials.
        trials: The latest trials, at most `WINDOW`.
        interval: Share right with its Wilson interval at 95 %.
        shown: Whether the lower limit reaches the threshold.
        first_look: Share of those trials that began with the character that tells.
        since: Day of the first of those trials, ISO 8601.
        until: Day of the last.
        characters: Characters it was practised on, most often first.
    """

    pair: tuple[str, str]
    right: int
    trials: int
    interval: Interval
    shown: bool
    first_look: float
    since: str
    until: str
    characters: tuple[str, ...]


def sightings_of(trials: Iterable[Trial], character: str = "") -> tuple[Sighting, ...]:
    """Everything that was read from pictures, in order.

    Args:
        trials: Trials.
        character: Only those of that character; empty takes all.
    """
    return tuple(
        seen
        for trial in trials
        for seen in trial.sightings
        if not character or seen.character == character
    )


def state_confusion(trials: Iterable[Trial], character: Character) -> Confusion:
    """States of a character: what was there against what was said."""
    pairs = [
        (seen.truth, seen.said if isinstance(seen.said, str) else UNNAMED)
        for seen in sightings_of(trials, character.id)
        if isinstance(seen.truth, str)
    ]
    met = {name for pair in pairs for name in pair}
    return _table([state for state in character.state_ids if state in met], pairs)


def taxon_confusion(trials: Iterable[Trial], order: Sequence[str]) -> Confusion:
    """Taxa decided on in pairs: what it was against what was said.

    Args:
        trials: Trials.
        order: Taxon ids in the order wanted.
    """
    pairs = [
        (trial.taxon, UNNAMED if trial.said == NEITHER else trial.said)
        for trial in trials
        if trial.exercise is Exercise.PAIR
    ]
    met = {name for pair in pairs for name in pair}
    return _table([taxon for taxon in order if taxon in met], pairs)


def accuracies(trials: Iterable[Trial]) -> tuple[Accuracy, ...]:
    """How often each character was read rightly, the weakest first.

    Weakest is: lowest upper limit, so that one bad answer does not lead the list.
    """
    counts: dict[str, list[int]] = {}
    for seen in sightings_of(trials):
        row = counts.setdefault(seen.character, [0, 0])
        row[0] += seen.right
        row[1] += 1
    found = [_accuracy(name, right, total) for name, (right, total) in counts.items()]
    return tuple(sorted(found, key=lambda one: (one.interval.high, one.name)))


def pair_records(
    trials: Iterable[Trial], *, threshold: float = SHOWN, window: int = WINDOW
) -> tuple[PairRecord, ...]:
    """What was shown about each pair, the firmest first.

    Only the latest `window` trials of a pair count. An answer decided on a character that does
    not tell the pair apart is not right, whatever was said.

    Args:
        trials: Trials of one person, oldest first.
        threshold: Lower limit from which a pair counts as told apart.
        window: How many trials count.
    """
    by_pair: dict[tuple[str, str], list[Trial]] = {}
    for trial in trials:
        if trial.exercise is Exercise.PAIR and len(trial.pair) == 2:
            by_pair.setdefault((trial.pair[0], trial.pair[1]), []).append(trial)
    found = [_pair_record(pair, rows[-window:], threshold) for pair, rows in by_pair.items()]
    return tuple(sorted(found, key=lambda one: (-one.interval.low, one.pair)))


def overall(trials: Iterable[Trial]) -> tuple[Accuracy, ...]:
    """How often each exercise was right, in the order of the exercises; none without trials."""
    right: Counter[Exercise] = Counter()
    total: Counter[Exercise] = Counter()
    for trial in trials:
        right[trial.exercise] += trial.correct
        total[trial.exercise] += 1
    return tuple(_accuracy(e.value, right[e], total[e]) for e in Exercise if total[e])


def trend(trials: Sequence[Trial], block: int = 20) -> tuple[Accuracy, ...]:
    """Share right over blocks of answers, oldest first, named by the day of their last answer.

    The last block may be shorter, but not below half of `block` unless it is the only one.
    """
    edges = list(range(0, len(trials), block))
    if len(edges) > 1 and len(trials) - edges[-1] < block / 2:
        edges.pop()
    ends = [*edges[1:], len(trials)] if trials else []
    found = []
    for start, end in zip(edges, ends, strict=True):
        part = trials[start:end]
        day = part[-1].at[:10]
        found.append(_accuracy(day, sum(trial.correct for trial in part), len(part)))
    return tuple(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class Between:
    """How far two people agree on the same pictures.

    Attributes:
        one: A person.
        other: Another person.
        pictures: Answers both gave to the same picture.
        same: Answers that were the same.
        kappa: Cohen's kappa; None when it means nothing.
    """

    one: str
    other: str
    pictures: int
    same: int
    kappa: Kappa | None


def agreement_between(one: Sequence[Trial], other: Sequence[Trial]) -> Between | None:
    """How far two people agree on pictures both have answered.

    Args:
        one: Trials of a person.
        other: Trials of another person.

    Returns:
        None when one of them has answered nothing. "Cannot tell" is an answer of its own.
        Numbers are left out.
    """
    if not one or not other:
        return None
    mine, theirs = _answers(one), _answers(other)
    both = [(mine[place], theirs[place]) for place in mine if place in theirs]
    return Between(
        one=one[0].person,
        other=other[0].person,
        pictures=len(both),
        same=sum(a == b for a, b in both),
        kappa=kappa_between(both),
    )


def _answers(trials: Iterable[Trial]) -> dict[tuple[str, int, str], tuple[str, str]]:
    """Answer per picture and character; the first one where a picture came twice."""
    found: dict[tuple[str, int, str], tuple[str, str]] = {}
    for trial in trials:
        for seen in trial.sightings:
            if isinstance(seen.truth, str):
                place = (trial.item, trial.seed, seen.character)
                found.setdefault(place, (seen.character, str(seen.said or UNNAMED)))
        if trial.exercise is Exercise.PAIR:
            found.setdefault((trial.item, trial.seed, ""), ("", trial.said))
    return found


def _table(classes: Sequence[str], pairs: Iterable[tuple[str, str]]) -> Confusion:
    count = Counter(pairs)
    columns = (*classes, UNNAMED)
    rows = tuple(tuple(count[truth, said] for said in columns) for truth in classes)
    return Confusion(tuple(classes), rows)


def _accuracy(name: str, right: int, trials: int) -> Accuracy:
    return Accuracy(name=name, right=right, trials=trials, interval=wilson(right, trials))


def _pair_record(pair: tuple[str, str], rows: Sequence[Trial], threshold: float) -> PairRecord:
    right = sum(trial.correct for trial in rows)
    interval = wilson(right, len(rows))
    names = Counter(trial.item.rpartition("/")[2] for trial in rows)
    straight = sum(trial.first_look == trial.item.rpartition("/")[2] for trial in rows)
    return PairRecord(
        pair=pair,
        right=right,
        trials=len(rows),
        interval=interval,
        shown=interval.low >= threshold,
        first_look=straight / len(rows),
        since=rows[0].at[:10],
        until=rows[-1].at[:10],
        characters=tuple(name for name, _ in names.most_common()),
    )
