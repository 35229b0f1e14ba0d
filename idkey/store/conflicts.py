"""Tells two people who worked on the same case what the other one did."""

from collections.abc import Mapping
from typing import Any

from sqlalchemy import Connection, select

from idkey.store.content import opened
from idkey.store.difference import changes
from idkey.store.faults import Conflict
from idkey.store.schema import chain

_REMEDY = "Open the case again and add your findings to the newer state; nothing was overwritten."


def moved(
    connection: Connection, case_id: str, parent: int, newest: Mapping[Any, Any] | None
) -> bool:
    """Whether the case says otherwise now than in revision `parent`, with which it was opened."""
    if newest is None or newest["number"] == parent:
        return newest is None and parent != 0
    return bool(_content(connection, case_id, parent) != newest["content"])


def _content(connection: Connection, case_id: str, number: int) -> str | None:
    wanted = select(chain.c.content).where(chain.c.case_id == case_id, chain.c.kind == "case")
    return connection.execute(wanted.where(chain.c.number == number)).scalar()


def conflict(
    connection: Connection, case_id: str, parent: int, newest: Mapping[Any, Any] | None
) -> Conflict:
    """The error for saving on top of revision `parent` when `newest` is the last one."""
    opened_with = _content(connection, case_id, parent)
    if newest is None or (opened_with is None and parent > newest["number"]):
        number = newest["number"] if newest else 0
        return Conflict(
            f"The book has {number} revisions of this case, but it was opened with number "
            f"{parent}: the book was exchanged or restored meanwhile.",
            "Save the case as a new one, or open the right book; nothing was overwritten.",
            by="",
            at="",
            changed=(),
            number=number,
        )
    changed = _changed(opened_with, newest["content"])
    who = newest["by"] or "Somebody else"
    what = ", ".join(changed) or "the verdict"
    return Conflict(
        f"{who} saved this case at {newest['at']} after you opened it. Changed: {what}.",
        _REMEDY,
        by=newest["by"],
        at=newest["at"],
        changed=changed,
        number=newest["number"],
    )


def _changed(before: str | None, after: str) -> tuple[str, ...]:
    if before is None:
        return ("the case as a whole",)
    return changes(opened(before)[0], opened(after)[0])
