"""A record book as a file: is it whole, and how is it copied while in use."""

import sqlite3
from contextlib import closing
from pathlib import Path

from idkey.store.faults import Damaged, StoreError, error_for

CHECKED_WHOLE_BYTES = 32 * 1024 * 1024
"""Up to this size every page is checked at each start (under 0.1 s); above, after a crash only."""

_HEADER = b"SQLite format 3\x00"
_WAIT_SECONDS = 3.0


def check_file(file: Path) -> None:
    """Refuse a file that is not SQLite, was cut short, or does not fit together.

    Raises:
        Damaged: It is one of these.
    """
    size = file.stat().st_size
    if not size:
        return
    with file.open("rb") as stream:
        header = stream.read(100)
    if len(header) < 100 or not header.startswith(_HEADER):
        raise _damaged(file, "it is not a SQLite file")
    # Header fields: sqlite.org/fileformat2.html, section 1.3.
    page = int.from_bytes(header[16:18], "big")
    pages = int.from_bytes(header[28:32], "big")
    crashed = _has_log(file) and not in_use(file)
    if not _has_log(file) and size < pages * (65536 if page == 1 else page):
        raise _damaged(file, "its end is missing")
    if crashed or size <= CHECKED_WHOLE_BYTES:
        check_whole(file)


def check_whole(file: Path) -> None:
    """Read every page of the book.

    Raises:
        Damaged: Something in it does not fit together.
        StoreError: It cannot be read.
    """
    try:
        with closing(existing(file)) as connection:
            found = connection.execute("PRAGMA quick_check(1)").fetchone()[0]
    except sqlite3.Error as err:
        raise error_for(err, str(file)) from err
    if found != "ok":
        raise _damaged(file, str(found))


def copy_book(file: Path, target: Path) -> None:
    """Copy the book as it stands at one moment, also while it is in use.

    Raises:
        StoreError: It cannot be read, or `target` cannot be written; no half copy stays.
    """
    partial = target.with_name(target.name + ".partial")
    try:
        target.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        partial.unlink(missing_ok=True)
        partial.touch(mode=0o600)
        with (
            closing(existing(file)) as book,
            closing(sqlite3.connect(partial)) as copy,
        ):
            book.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")  # one file, nothing beside it
        partial.replace(target)
    except sqlite3.Error as err:
        raise error_for(err, str(target)) from err
    except OSError as err:
        raise unwritable(target, err) from err
    finally:
        partial.unlink(missing_ok=True)


def existing(file: Path, wait_seconds: float = _WAIT_SECONDS) -> sqlite3.Connection:
    """A connection to a file that is there; unlike SQLite's own way, it never makes one."""
    address = f"{file.absolute().as_uri()}?mode=rw"
    return sqlite3.connect(address, uri=True, timeout=wait_seconds)


def unwritable(target: Path, err: OSError) -> StoreError:
    """The error in words for a file of ours that could not be written or moved."""
    return StoreError(
        f"{target} cannot be written: {err.strerror}.",
        "Make its folder writable for you, or free some space; the book is as it was.",
    )


def in_use(file: Path) -> bool:
    """Whether a program has the book open now."""
    try:
        with closing(existing(file, wait_seconds=0.0)) as connection:
            # Nobody can have a file for himself that somebody else has open.
            connection.execute("PRAGMA locking_mode = EXCLUSIVE")
            connection.execute("BEGIN EXCLUSIVE")
            connection.execute("ROLLBACK")
    except sqlite3.OperationalError as err:
        return err.sqlite_errorname.startswith("SQLITE_BUSY")
    except sqlite3.DatabaseError:
        pass  # damaged: nobody can use it
    return False


def _has_log(file: Path) -> bool:
    # SQLite removes its log when the last user closes: whoever left one is there, or crashed.
    log = file.with_name(file.name + "-wal")
    return log.exists() and log.stat().st_size > 0


def _damaged(file: Path, detail: str) -> Damaged:
    return Damaged(
        f"The record book {file} is damaged: {detail}.",
        "Leave the file as it is and restore the newest backup.",
    )
