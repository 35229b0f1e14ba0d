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
        changes: What differs, as sentences.
    """

    stored: StoredCase
    before: VerdictSummary
    after: VerdictSummary
    changes: tuple[str, ...]


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
    with store.database.reads() as connection:
        counted = select(func.count()).select_from(cases).where(cases.c.key == key)
        total = connection.execute(counted).scalar_one()
    for done, stored in enumerate(stored_cases(store, key), start=1):
        if stored.summary is not None:
            after = judge(stored.case)
            changes = differences(stored.summary, after)
            if changes:
                yield Alteration(stored=stored, before=stored.summary, after=after, changes=changes)
        if tick is not None:
            tick(done, total)


def differences(before: VerdictSummary, after: VerdictSummary) -> tuple[str, ...]:
    """What another verdict says otherwise: name, verdict, cautions; none when only the key moved.

    Args:
        before: The earlier verdict.
        after: The later one.
    """
    told = []
    if before.name != after.name:
        told.append(f"The name was {before.name or 'none'} and is now {after.name or 'none'}.")
    if set(before.taxa) != set(after.taxa) and before.name == after.name:
        told.append("The name stands for other taxa now.")
    for field, words in (("kind", "the label"), ("level", "the identity")):
        old, new = getattr(before, field), getattr(after, field)
        if old != new:
            told.append(f"The verdict on {words} was '{_words(old)}' and is now '{_words(new)}'.")
    for caution in sorted(set(after.cautions) - set(before.cautions)):
        told.append(f"A {_words(caution)} caution is new.")
    for caution in sorted(set(before.cautions) - set(after.cautions)):
        told.append(f"The {_words(caution)} caution is gone.")
    return tuple(told)


def _words(value: str) -> str:
    return value.replace("_", " ")
