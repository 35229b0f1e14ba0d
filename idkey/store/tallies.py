"""What labels and suppliers turned out to be worth, over time."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from sqlalchemy import Select, func, literal_column, select

from idkey.engine.intervals import Interval, wilson
from idkey.engine.sample import SAMPLE_ID
from idkey.store.book import Store
from idkey.store.people import supplier_words, suppliers_of
from idkey.store.schema import cases, opinions

DECIDED = ("holds", "too_broad", "contradicted")
"""Kinds of verdict that say whether the label was right."""


class Subject(StrEnum):
    """Whose cases are counted together."""

    LABEL = "label_id"
    SUPPLIER = "supplier"


class Period(StrEnum):
    """How long a stretch of time is."""

    YEAR = "year"
    MONTH = "month"
    DAY = "day"
    ALL = "all"

    @property
    def signs(self) -> int:
        """How many signs of an ISO 8601 date name it."""
        return {"year": 4, "month": 7, "day": 10, "all": 0}[self]


@dataclass(frozen=True, slots=True, kw_only=True)
class Tally:
    """The cases of one label or supplier in one stretch of time.

    Attributes:
        subject: Label id, or name of the supplier; empty when not told.
        period: ``"2025"``, ``"2025-11"`` or a day; empty for all time.
        kinds: Cases per kind of verdict; those without a verdict are under ``""``.
    """

    subject: str
    period: str
    kinds: Mapping[str, int]

    @property
    def decided(self) -> int:
        """Cases whose verdict says whether the label was right."""
        return sum(self.kinds.get(kind, 0) for kind in DECIDED)

    @property
    def wrong(self) -> Interval:
        """Share of the decided cases whose label was contradicted, with its 95 % interval."""
        return wilson(self.kinds.get("contradicted", 0), self.decided)


def tallies(
    store: Store,
    subject: Subject,
    *,
    period: Period = Period.ALL,
    since: str = "",
    until: str = "",
) -> tuple[Tally, ...]:
    """Cases per label or supplier, per stretch of time and kind of verdict.

    Second opinions are not counted: an animal counts once. The sample case is no animal of the
    shop and is not counted at all.

    Args:
        store: The book.
        subject: Whether to count per label or per supplier.
        period: How long a stretch of time is.
        since: First day, ISO 8601; empty for no limit.
        until: Last day, included.

    Returns:
        By subject, then period; none for stretches without a case.
    """
    spelling = {}
    if subject is Subject.SUPPLIER:
        spelling = {supplier_words(one.name): one.name for one in suppliers_of(store)}
    counts: dict[tuple[str, str], Counter[str]] = {}
    with store.database.reads() as connection:
        found = connection.execute(_counts(subject, period, since, until)).all()
    for name, stretch, kind, number in found:
        whose = spelling.get(supplier_words(name), name) if spelling else name
        counts.setdefault((whose, stretch), Counter())[kind] += number
    return tuple(
        Tally(subject=whose, period=stretch, kinds=dict(kinds))
        for (whose, stretch), kinds in sorted(counts.items())
    )


def _counts(subject: Subject, period: Period, since: str, until: str) -> Select[Any]:
    stretch = func.substr(cases.c.day, 1, literal_column(str(period.signs)))
    column = cases.c[subject.value]
    wanted: Select[Any] = (
        select(column, stretch, cases.c.kind, func.count())
        .where(cases.c.id != SAMPLE_ID, cases.c.id.not_in(select(opinions.c.case_id)))
        .group_by(column, stretch, cases.c.kind)
    )
    if since:
        wanted = wanted.where(cases.c.day >= since)
    return wanted.where(cases.c.day <= until) if until else wanted
