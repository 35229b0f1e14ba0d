"""The connection to a record book: SQLite by default, PostgreSQL by address."""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import ArgumentError

from idkey.store.faults import StoreError, Unwritable, told

WAIT_SECONDS = 3.0
"""Longest wait for another writer; one save takes a few milliseconds."""

APPLICATION_ID = 0x69644B79
"""Marks a SQLite file as a record book ("idKy"), for `file` and for us."""


class Database:
    """One open record book, without knowing what is in it.

    Args:
        place: Path of a SQLite file, or an address such as ``postgresql://host/name``.
        wait_seconds: Longest wait for another writer.

    Raises:
        StoreError: The address makes no sense, or its driver is not installed.
    """

    def __init__(self, place: Path | str, *, wait_seconds: float = WAIT_SECONDS) -> None:
        self.url = _url(place)
        self.wait_seconds = wait_seconds
        self.place = self.url.set(drivername=self.url.get_backend_name()).render_as_string()
        self.file = _file(self.url)
        if self.file is not None:
            self.place = str(self.file)
            _make_private(self.file)
        self.engine = _engine(self.url, self.place, wait_seconds)

    @property
    def sqlite(self) -> bool:
        """Whether the book is a file here."""
        return self.file is not None

    @contextmanager
    def reads(self) -> Iterator[Connection]:
        """A connection that sees one state of the book throughout."""
        with told(self.place), self.engine.connect() as connection:
            yield connection

    @contextmanager
    def writes(self) -> Iterator[Connection]:
        """A connection that writes; on leaving, all of it is durable, or none of it is there.

        Raises:
            Busy: Another writer did not finish within the wait.
        """
        with told(self.place), self.engine.connect() as plain:
            connection = plain.execution_options(idkey_writes=True)
            with connection.begin():
                yield connection

    def close(self) -> None:
        """Let go of the book."""
        self.engine.dispose()


def _url(place: Path | str) -> URL:
    if isinstance(place, Path) or "://" not in place:
        return URL.create("sqlite", database=str(Path(place).expanduser().absolute()))
    try:
        url = make_url(place)
    except ArgumentError as err:
        raise StoreError("The address of the record book cannot be read.", _ADDRESS) from err
    backend = url.get_backend_name()
    if backend not in ("sqlite", "postgresql", "postgres"):
        raise StoreError(f"A record book cannot lie in {backend!r}.", _ADDRESS)
    return url if backend == "sqlite" else url.set(drivername="postgresql+psycopg")


_ADDRESS = "Give a file, or an address like postgresql://user@host/name."


def _file(url: URL) -> Path | None:
    if url.get_backend_name() != "sqlite":
        return None
    if not url.database or url.database == ":memory:":
        raise StoreError("A record book needs a file.", _ADDRESS)
    return Path(url.database)


def _make_private(file: Path) -> None:
    """Make the file, readable for its owner alone, before SQLite would make it for everyone."""
    if file.is_dir():
        raise Unwritable(f"{file} is a folder.", "Name a file inside it.")
    try:
        file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        os.close(os.open(file, os.O_CREAT | os.O_RDWR, 0o600))
    except OSError as err:
        step = "opened for writing" if file.exists() else "made"
        raise Unwritable(
            f"The record book {file} cannot be {step}: {err.strerror}.",
            "Make it and its folder writable for you, or choose another place.",
        ) from err


def _engine(url: URL, place: str, wait_seconds: float) -> Engine:
    if url.get_backend_name() == "sqlite":
        engine = create_engine(url, connect_args={"timeout": wait_seconds})
        event.listen(engine, "connect", _prepare_sqlite)
        event.listen(engine, "begin", _begin_sqlite)
        return engine
    try:
        limits = f"-c lock_timeout={int(wait_seconds * 1000)} -c timezone=UTC"
        return create_engine(
            url,
            pool_pre_ping=True,
            connect_args={"options": limits, "connect_timeout": max(2, int(wait_seconds))},
        )
    except ImportError as err:  # the driver, or the system library it stands on
        raise StoreError(
            f"The record book {place} needs the PostgreSQL driver, which is not installed.",
            "Install it with: pip install 'idkey[postgres]'",
        ) from err


def _prepare_sqlite(connection: sqlite3.Connection, _record: Any) -> None:
    connection.isolation_level = None  # transactions are begun below, not guessed by the driver
    for pragma in (
        "foreign_keys = ON",
        "synchronous = FULL",  # what was acknowledged also survives a power cut
        "secure_delete = ON",  # an erased buyer leaves no bytes behind
        "journal_mode = WAL",
    ):
        connection.execute(f"PRAGMA {pragma}").close()


def _begin_sqlite(connection: Connection) -> None:
    # A writer takes its lock first: a reader that turns writer half-way cannot wait its turn.
    write = connection.get_execution_options().get("idkey_writes", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if write else "BEGIN")
