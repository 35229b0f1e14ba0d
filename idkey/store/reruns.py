"""Runs saved cases again, such as with a new version of their key, and lists what changes."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from sqlalchemy import func, select

from idkey.model.case import Case
from idkey.store.book import Store
from idkey.store.chain import Tick
from idkey.store.content import opened
from idkey.store.record import StoredCase, VerdictSummary, revision_of
from idkey.store.schema import cases, chain

_BATCH = 50

Judge = Callable[[Case], VerdictSummary]
"""Judges a case with the key as it is now."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Alteration:
    """A case whose verdict is another now. Nothing is saved: issuing anew is a deliberate step.

    Attributes:
        stored: The case as it was saved.
        before: What was concluded then.
        after: What would be concluded now.
    """

    stored: StoredCase
    before: VerdictSummary
    after: VerdictSummary


def stored_cases(store: Store, key: str = "") -> Iterator[StoredCase]:
    """Every case in its newest revision, by id; the book stays free for others meanwhile.

    Args:
        store: The book.
        key: Only cases made with that key; empty takes all.
    """
    wanted = select(chain).join(cases, cases.c.entry == chain.c.entry).order_by(cases.c.id)
    if key:
        wanted = wanted.where(cases.c.key == key)
    last = ""
    while True:
        with store.database.reads() as connection:
            batch = wanted.where(cases.c.id > last).limit(_BATCH)
            rows = connection.execute(batch).mappings().all()
        for row in rows:
            case, summary = opened(row["content"])
            yield StoredCase(case=case, summary=summary, revision=revision_of(row))
        if len(rows) < _BATCH:
            return
        last = rows[-1]["case_id"]


def alterations(
    store: Store, key: str, judge: Judge, tick: Tick | None = None
) -> Iterator[Alteration]:
    """Judge every case of a key again and give those whose name, verdict or cautions change.

    Args:
        store: The book; nothing in it is changed.
        key: The key.
        judge: Judges a case with the key as it is now.
        tick: Told (done, total) after each case.
    """
    total = cases_per_key(store).get(key, 0)
    for done, stored in enumerate(stored_cases(store, key), start=1):
        if stored.summary is not None:
            after = judge(stored.case)
            if says_otherwise(stored.summary, after):
                yield Alteration(stored=stored, before=stored.summary, after=after)
        if tick is not None:
            tick(done, total)


def says_otherwise(before: VerdictSummary, after: VerdictSummary) -> bool:
    """Whether name, verdict or cautions differ; not when only the key moved on."""
    return _said(before) != _said(after)


def _said(one: VerdictSummary) -> tuple[object, ...]:
    return one.kind, one.level, one.name, frozenset(one.taxa), frozenset(one.cautions)


def cases_per_key(store: Store) -> dict[str, int]:
    """How many cases were made with each key, by its id."""
    counted = select(cases.c.key, func.count()).group_by(cases.c.key).order_by(cases.c.key)
    with store.database.reads() as connection:
        return {row[0]: row[1] for row in connection.execute(counted)}
