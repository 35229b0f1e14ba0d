"""The append-only chain: every entry carries the digest of the one before it."""

from collections.abc import Callable, Iterator, Mapping
from typing import Any

from sqlalchemy import Connection, RowMapping, insert, select, update

from idkey.store.codec import canonical, digest
from idkey.store.record import ChainFault
from idkey.store.schema import chain, chain_end

ORIGIN = "0" * 64
"""What the first entry names as the one before it."""

TICK_EVERY = 250
"""Entries between two reports while the chain is checked; some 10 ms apart."""

Tick = Callable[[int, int], None]


def locked_end(connection: Connection) -> tuple[int, str]:
    """Number and digest of the last entry; nobody else can append until this write ends."""
    row = connection.execute(select(chain_end).with_for_update()).mappings().one()
    return row["entry"], row["digest"]


def newest(connection: Connection, case_id: str, kind: str) -> RowMapping | None:
    """The newest entry of that kind for a case; None when there is none."""
    wanted = select(chain).where(chain.c.case_id == case_id, chain.c.kind == kind)
    return connection.execute(wanted.order_by(chain.c.number.desc()).limit(1)).mappings().first()


def append(
    connection: Connection, kind: str, case_id: str, *, content: str, at: str, by: str
) -> Mapping[str, Any]:
    """Add one entry after the last one of the book and return it.

    Args:
        connection: A writing connection.
        kind: What sort of content it is, such as ``"case"``.
        case_id: The case it belongs to.
        content: Canonical JSON.
        at: When, ISO 8601 in UTC; it orders nothing.
        by: Who.
    """
    last, previous = locked_end(connection)
    before = newest(connection, case_id, kind)
    entry = {
        "entry": last + 1,
        "kind": kind,
        "case_id": case_id,
        "number": 1 if before is None else before["number"] + 1,
        "at": at,
        "by": by,
        "content_digest": digest(content),
        "previous": previous,
    }
    entry["digest"] = _seal(entry)
    connection.execute(insert(chain).values(**entry, content=content))
    connection.execute(update(chain_end).values(entry=last + 1, digest=entry["digest"]))
    return {**entry, "content": content}


def faults(connection: Connection, tick: Tick | None = None) -> Iterator[ChainFault]:
    """Every place where the chain does not hold, in order.

    Args:
        connection: A reading connection.
        tick: Told (done, total) every `TICK_EVERY` entries.
    """
    end = connection.execute(select(chain_end)).mappings().first()
    total = end["entry"] if end else 0
    last, previous = 0, ORIGIN
    numbers: dict[tuple[str, str], int] = {}
    rows = connection.execution_options(yield_per=500).execute(
        select(chain).order_by(chain.c.entry)
    )
    for row in rows.mappings():
        if row["entry"] != last + 1:
            yield ChainFault(
                entry=last + 1,
                case_id="",
                number=0,
                problem=f"Entries {last + 1} to {row['entry'] - 1} are missing.",
            )
        for problem in _entry_problems(row, previous, numbers):
            revision = row["number"] if row["kind"] == "case" else 0
            yield ChainFault(
                entry=row["entry"], case_id=row["case_id"], number=revision, problem=problem
            )
        last, previous = row["entry"], row["digest"]
        if tick is not None and last % TICK_EVERY == 0:
            tick(last, total)
    if end is None or (end["entry"], end["digest"]) != (last, previous):
        yield ChainFault(
            entry=last, case_id="", number=0, problem="The end of the book is not what was saved."
        )


def _entry_problems(
    row: RowMapping, previous: str, numbers: dict[tuple[str, str], int]
) -> Iterator[str]:
    of_case = (row["kind"], row["case_id"])
    numbers[of_case] = numbers.get(of_case, 0) + 1
    if digest(row["content"]) != row["content_digest"]:
        yield "What it says was changed after it was saved."
    if row["previous"] != previous:
        yield "It does not follow from the entry before it."
    if _seal(row) != row["digest"]:
        yield "Its seal does not fit: number, time, person or content was changed."
    if row["number"] != numbers[of_case]:
        yield f"It is number {row['number']} of its case where {numbers[of_case]} was expected."
        numbers[of_case] = row["number"]


def _seal(entry: Mapping[Any, Any]) -> str:
    sealed = ("entry", "kind", "case_id", "number", "at", "by", "content_digest", "previous")
    return digest(canonical({name: entry[name] for name in sealed}))
