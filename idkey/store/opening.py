"""What happens before a record book is used: is it ours, is it whole, is it up to date."""

import sqlite3
from contextlib import closing
from pathlib import Path

from sqlalchemy import Connection, inspect, text

from idkey.store.database import APPLICATION_ID, Database
from idkey.store.faults import Damaged, StoreError, TooNew, error_for
from idkey.store.schema import HEAD

CHECKED_WHOLE_BYTES = 32 * 1024 * 1024
"""Up to this size every page is checked at each start (some 50 ms); above, after a crash only."""

_HEADER = b"SQLite format 3\x00"


def prepare(database: Database) -> None:
    """Check the book, and make or upgrade its tables.

    Raises:
        Damaged: The file is cut short, broken, or not a record book.
        TooNew: A newer program wrote it; it is left as it is.
        StoreError: It cannot be reached, read or written.
    """
    if database.file is not None:
        _check_file(database.file)
    with database.reads() as connection:
        version = stored_version(connection, database.place)
    if version == HEAD:
        return
    if int(version) > int(HEAD):
        raise TooNew(
            f"The record book {database.place} has form {version}; this program knows {HEAD}.",
            "Install the newer program; the book was left as it is.",
        )
    if database.file is not None and int(version):
        copy_book(database.file, database.file.with_suffix(f".form{version}.backup"))
    _upgrade(database)


def stored_version(connection: Connection, place: str) -> str:
    """The number of the newest step the book has seen; ``"0000"`` for an empty one.

    Raises:
        Damaged: It holds tables of something else.
    """
    names = set(inspect(connection).get_table_names())
    if "alembic_version" in names and "chain" in names:
        version = connection.execute(text("SELECT version_num FROM alembic_version")).scalar()
        if version is not None and str(version).isdigit():
            return str(version)
    elif not names:
        return "0000"
    raise Damaged(
        f"{place} holds tables, but not those of a record book.",
        "Choose another place; it was left as it is.",
    )


def check_whole(file: Path) -> None:
    """Read every page of the book.

    Raises:
        Damaged: Something in it does not fit together.
    """
    try:
        with closing(_connect(file)) as connection:
            found = connection.execute("PRAGMA quick_check(1)").fetchone()[0]
    except sqlite3.DatabaseError as err:
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
        partial.touch(mode=0o600)
        with closing(_connect(file)) as book, closing(sqlite3.connect(partial)) as copy:
            book.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE")
        partial.replace(target)
    except sqlite3.Error as err:
        raise error_for(err, str(target)) from err
    except OSError as err:
        raise StoreError(
            f"The backup {target} cannot be written: {err.strerror}.",
            "Make its folder writable for you, or free some space.",
        ) from err
    finally:
        partial.unlink(missing_ok=True)


def _upgrade(database: Database) -> None:
    # Alembic takes a third of a second to import; a book that is up to date does without it.
    from idkey.store.upgrading import upgrade

    with database.writes() as connection:
        upgrade(connection)
        if database.sqlite:
            connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")


def _check_file(file: Path) -> None:
    """Refuse a file that is not SQLite, was cut short, or does not fit together."""
    size = file.stat().st_size
    if not size:
        return
    with file.open("rb") as stream:
        header = stream.read(100)
    if len(header) < 100 or not header.startswith(_HEADER):
        raise _damaged(file, "it is not a SQLite file")
    page = int.from_bytes(header[16:18], "big")
    pages = int.from_bytes(header[28:32], "big")
    used_before = file.with_name(file.name + "-wal")
    crashed = used_before.exists() and used_before.stat().st_size > 0
    if not crashed and size < pages * (65536 if page == 1 else page):
        raise _damaged(file, "its end is missing")
    if crashed or size <= CHECKED_WHOLE_BYTES:
        check_whole(file)


def _connect(file: Path) -> sqlite3.Connection:
    return sqlite3.connect(file, timeout=3.0)


def _damaged(file: Path, detail: str) -> Damaged:
    return Damaged(
        f"The record book {file} is damaged: {detail}.",
        "Leave the file as it is and restore the newest backup.",
    )
