"""What can go wrong with a record book, in words a person can act on."""

# ruff: noqa: N818 - each is named for what happened, as it reads in "except Busy"

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy.exc import DBAPIError

from idkey.errors import IdKeyError


class StoreError(IdKeyError):
    """The record book could not do what was asked; what it held before is still there."""


class Busy(StoreError):
    """Somebody else is writing and did not finish in time."""


class Unwritable(StoreError):
    """The book or its folder cannot be written or reached."""


class Unreachable(StoreError):
    """The server of the book does not answer."""


class DiskFull(StoreError):
    """There is no room left where the book lies."""


class Damaged(StoreError):
    """The book's file is not whole.

    Attributes:
        backup: The newest whole backup, which can be restored; None when there is none.
    """

    def __init__(self, problem: str, remedy: str, *, backup: Path | None = None) -> None:
        super().__init__(problem, remedy)
        self.backup = backup


class TooNew(StoreError):
    """A newer program wrote the book."""


class Missing(StoreError):
    """There is no such case."""


class Conflict(StoreError):
    """Somebody saved the case after it was opened here.

    Attributes:
        by: Who saved it, as initials or alias; empty when not told.
        at: When, ISO 8601 in UTC.
        changed: What differs, in words.
        number: The revision saved last; 0 when the book has none of this case.
    """

    def __init__(
        self,
        problem: str,
        remedy: str,
        *,
        by: str,
        at: str,
        changed: tuple[str, ...],
        number: int,
    ) -> None:
        super().__init__(problem, remedy)
        self.by = by
        self.at = at
        self.changed = changed
        self.number = number


_BY_SQLITE = {
    "SQLITE_BUSY": Busy,
    "SQLITE_LOCKED": Busy,
    "SQLITE_READONLY": Unwritable,
    "SQLITE_CANTOPEN": Unwritable,
    "SQLITE_PERM": Unwritable,
    "SQLITE_AUTH": Unwritable,
    "SQLITE_IOERR": DiskFull,
    "SQLITE_FULL": DiskFull,
    "SQLITE_CORRUPT": Damaged,
    "SQLITE_NOTADB": Damaged,
}
"""Primary result codes of SQLite (sqlite.org/rescode.html)."""

_BY_SQLSTATE = {
    "55P03": Busy,  # lock not available
    "57014": Busy,  # stopped by the time limit
    "40001": Busy,  # could not be put in order with another writer
    "40P01": Busy,  # deadlock
    "25006": Unwritable,  # read only
    "42501": Unwritable,  # not allowed
    "53100": DiskFull,
    "XX001": Damaged,
    "XX002": Damaged,
}
"""PostgreSQL error codes (PostgreSQL documentation, appendix A)."""

_CLASSES_OF_NO_ANSWER = {"08", "28", "3D", "57"}
"""Connection, authorisation, database name, shut down; `57014` is kept apart above."""

_WORDS: dict[type[StoreError], tuple[str, str]] = {
    Busy: (
        "The record book {place} is in use by another program, and waiting did not help.",
        "Close the other program or let it finish, then try again; nothing was changed.",
    ),
    Unwritable: (
        "The record book {place} cannot be opened for writing.",
        "Make the file and its folder writable for you, or choose another place.",
    ),
    Unreachable: (
        "The server of the record book {place} does not answer: {cause}.",
        "Check that it runs and that this machine may use it, then try again.",
    ),
    DiskFull: (
        "The record book {place} could not be written: the disk is full or failing.",
        "Free some space and try again; everything saved before is still there.",
    ),
    Damaged: (
        "The record book {place} is damaged or not a record book.",
        "Leave the file as it is and restore the newest backup.",
    ),
}


@contextmanager
def told(place: str) -> Iterator[None]:
    """Turn what the database library raises inside into one of the errors above.

    Args:
        place: The book's file or address, without a password.
    """
    try:
        yield
    except DBAPIError as err:
        raise error_for(err.orig, place) from err
    except sqlite3.Error as err:  # from where a connection is prepared
        raise error_for(err, place) from err


def error_for(cause: Any, place: str) -> StoreError:
    """The error in words for what a database driver raised."""
    kind = _kind(cause)
    if kind is None:
        return StoreError(
            f"The record book {place} refused a step: {_first_line(cause)}.",
            "Try again; if it comes back, restore the newest backup.",
        )
    problem, remedy = _WORDS[kind]
    return kind(problem.format(place=place, cause=_first_line(cause)), remedy)


def _first_line(cause: Any) -> str:
    return (str(cause).strip().splitlines() or [type(cause).__name__])[0].rstrip(".")


def _kind(cause: Any) -> type[StoreError] | None:
    code = getattr(cause, "sqlite_errorname", None)
    if code:
        return _BY_SQLITE.get("_".join(code.split("_")[:2]))
    state = getattr(cause, "sqlstate", None)
    if state:
        refused = Unreachable if state[:2] in _CLASSES_OF_NO_ANSWER else None
        return _BY_SQLSTATE.get(state, refused)
    if type(cause).__name__ == "OperationalError":  # a connection that never came about
        return Unreachable
    return None
