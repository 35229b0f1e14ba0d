"""When to practise what again: free spaced repetition scheduling, replayed from the log.

Nothing about a schedule is stored. Every state follows from the trials, so that a corrected rule or
a newer version of the library needs no change of the record book.
"""

import hashlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from fsrs import Card, Rating, ReviewLog, Scheduler

from idkey.drill.deck import Offer
from idkey.drill.item import Item
from idkey.store.drill_log import Exercise, Trial

SCHEDULER = Scheduler(desired_retention=0.9, enable_fuzzing=False)
"""The published default parameters; without fuzz, so that the same log gives the same plan."""

SOON = timedelta(minutes=20)
"""Something due within that time is taken now when nothing else is left."""

FRESH = {Exercise.STATE: 8, Exercise.PAIR: 6, Exercise.CASE: 2}
"""New items a day, by exercise; more would come back as a heap a week later."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Agenda:
    """What a person has to do.

    Attributes:
        due: Items to see again now, those most at risk first.
        fresh: New items for today.
        soon: Items due within `SOON`.
        ahead: Seen items that are not due, those most at risk first: practice beyond the plan.
        next_due: When the next item falls due that is not due now; None when there is none.
    """

    due: tuple[Item, ...] = ()
    fresh: tuple[Item, ...] = ()
    soon: tuple[Item, ...] = ()
    ahead: tuple[Item, ...] = ()
    next_due: datetime | None = None

    def of(self, exercise: Exercise) -> "Agenda":
        """The part of it that belongs to one exercise."""

        def kept(items: tuple[Item, ...]) -> tuple[Item, ...]:
            return tuple(item for item in items if item.exercise is exercise)

        return Agenda(
            due=kept(self.due),
            fresh=kept(self.fresh),
            soon=kept(self.soon),
            ahead=kept(self.ahead),
            next_due=self.next_due,
        )

    def next_item(self, last: Item | None = None, *, beyond: bool = False) -> Item | None:
        """What to do next, another thing than `last` where there is one; None when all is done.

        Args:
            last: What was done just now.
            beyond: Whether to go on with what is not due.
        """
        line = [*self.due, *self.fresh, *self.soon, *(self.ahead if beyond else ())]
        return next((item for item in line if item != last), line[0] if line else None)


def moment(at: str) -> datetime:
    """The moment of an ISO 8601 text, in UTC."""
    return datetime.fromisoformat(at).astimezone(UTC)


def card_id(item: str) -> int:
    """The number the library knows an item by; from its name, so that it never changes."""
    return int.from_bytes(hashlib.sha256(item.encode("utf-8")).digest()[:6], "big")


def review_logs(trials: Sequence[Trial]) -> tuple[ReviewLog, ...]:
    """The trials as the library's own review logs."""
    return tuple(
        ReviewLog(
            card_id=card_id(trial.item),
            rating=Rating(trial.rating),
            review_datetime=moment(trial.at),
            review_duration=trial.millis,
        )
        for trial in trials
    )


def cards(trials: Sequence[Trial], scheduler: Scheduler = SCHEDULER) -> dict[str, Card]:
    """The state of every item of one person, by name, replayed from the trials.

    A clock that was set back counts as standing still.

    Args:
        trials: Trials of one person, oldest first.
        scheduler: The scheduler.
    """
    found: dict[str, Card] = {}
    for trial, log in zip(trials, review_logs(trials), strict=True):
        card = found.get(trial.item) or Card(card_id=log.card_id, due=log.review_datetime)
        at = max(log.review_datetime, card.last_review or log.review_datetime)
        found[trial.item], _ = scheduler.review_card(card, log.rating, at, log.review_duration)
    return found


def serial(trials: Sequence[Trial], item: Item, key: str) -> int:
    """How many pictures of an item of that key the person has seen: the serial of the next."""
    return sum(trial.item == item.name and trial.key == key for trial in trials)


def agenda(offers: Sequence[Offer], trials: Sequence[Trial], now: datetime) -> Agenda:
    """What a person has to do now.

    Args:
        offers: The deck of a key.
        trials: The person's trials with that key, oldest first.
        now: The time, aware of its zone.
    """
    now = now.astimezone(UTC)
    known = cards(trials)
    items = {offer.item.name: offer.item for offer in offers}
    seen = [(items[name], card) for name, card in known.items() if name in items]
    risk = {item: SCHEDULER.get_card_retrievability(card, now) for item, card in seen}
    ranked = sorted(seen, key=lambda pair: (risk[pair[0]], pair[0].name))
    later = [card.due for _, card in seen if card.due > now]
    return Agenda(
        due=tuple(item for item, card in ranked if card.due <= now),
        fresh=_fresh(offers, known, trials, now),
        soon=tuple(
            item
            for item, card in sorted(seen, key=lambda pair: (pair[1].due, pair[0].name))
            if now < card.due <= now + SOON
        ),
        ahead=tuple(item for item, card in ranked if card.due > now + SOON),
        next_due=min(later, default=None),
    )


def _fresh(
    offers: Sequence[Offer], known: Mapping[str, Card], trials: Sequence[Trial], now: datetime
) -> tuple[Item, ...]:
    """New items for today: by weight, but not the same character or taxon over and over."""
    begun = _begun_today(trials, now)
    found: list[Item] = []
    for exercise, most in FRESH.items():
        left = [o for o in offers if o.item.exercise is exercise and o.item.name not in known]
        met: dict[str, int] = {}
        for _ in range(max(0, most - begun.get(exercise, 0))):
            if not left:
                break
            best = max(left, key=lambda offer: offer.weight / _often(offer.item, met))
            left.remove(best)
            found.append(best.item)
            for part in _parts(best.item):
                met[part] = met.get(part, 0) + 1
    return tuple(found)


def _begun_today(trials: Sequence[Trial], now: datetime) -> dict[Exercise, int]:
    """How many items of each exercise were met for the first time on this day, in UTC."""
    met: set[str] = set()
    count: dict[Exercise, int] = {}
    for trial in trials:
        if trial.item not in met:
            met.add(trial.item)
            if moment(trial.at).date() == now.date():
                count[trial.exercise] = count.get(trial.exercise, 0) + 1
    return count


def _parts(item: Item) -> tuple[str, ...]:
    return tuple(part for part in (item.character, *item.taxa, item.label) if part)


def _often(item: Item, met: Mapping[str, int]) -> float:
    return float(1 + sum(met.get(part, 0) for part in _parts(item)))
