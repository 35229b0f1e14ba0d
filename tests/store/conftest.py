"""A fresh record book for each test."""

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import Connection, create_engine, insert, text

from idkey.store.book import Store
from idkey.store.chain import ORIGIN
from idkey.store.faults import Damaged
from idkey.store.opening import stored_version
from idkey.store.schema import HEAD, chain_end, metadata
from tests.store.server import NoServer, server

BACKENDS = ("sqlite", "postgresql")


class Clock:
    """A clock that goes on by a second each time it is read, from a moment one may move."""

    def __init__(self) -> None:
        self.moment = datetime(2025, 11, 4, 9, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        """The time now."""
        self.moment += timedelta(seconds=1)
        return self.moment


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture(scope="session")
def empty_database() -> Iterator[Callable[[], str]]:
    """Gives the address of an empty database on a real server; each call empties it again."""
    try:
        with server() as folder:  # first: installing it brings what the driver needs
            need_driver()
            address = f"postgresql://idkey@/postgres?host={folder}"
            yield lambda: emptied(address)
    except NoServer as reason:
        pytest.skip(str(reason))


def need_driver() -> None:
    """Skip where PostgreSQL's driver cannot be used."""
    pytest.importorskip(
        "psycopg", reason="PostgreSQL's driver or its libpq is missing", exc_type=ImportError
    )


def emptied(address: str) -> str:
    """Empty the database at `address`, and return the address.

    Tables of the newest form stay, without their rows, since making them takes longer.
    """
    engine = create_engine(address.replace(":", "+psycopg:", 1))
    with engine.begin() as connection:
        if _form(connection) == HEAD:
            for table in ("case_words", *reversed(metadata.sorted_tables)):
                connection.execute(text(f"DELETE FROM {table}"))  # noqa: S608 - our own names
            connection.execute(insert(chain_end).values(one=1, entry=0, digest=ORIGIN))
        else:
            connection.execute(text("DROP SCHEMA public CASCADE"))
            connection.execute(text("CREATE SCHEMA public"))
    engine.dispose()
    return address


def _form(connection: Connection) -> str:
    try:
        return stored_version(connection, "here")
    except Damaged:
        return ""


@pytest.fixture(scope="session")
def empty_file(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """A book without a record; copied, since making one takes longer."""
    file = tmp_path_factory.mktemp("empty") / "empty.sqlite3"
    Store.open(file).close()
    return file.read_bytes()


def a_place(request: pytest.FixtureRequest, folder: Path) -> Path | str:
    """Where a book is, empty yet: a file in `folder`, or a database on a real server."""
    if request.param == "sqlite":
        file = folder / "records" / "idkey.sqlite3"
        file.parent.mkdir()
        file.write_bytes(request.getfixturevalue("empty_file"))
        return file
    made: Callable[[], str] = request.getfixturevalue("empty_database")
    return made()


@pytest.fixture(params=BACKENDS)
def place(request: pytest.FixtureRequest, tmp_path: Path) -> Path | str:
    """Where an empty book is, once for each database."""
    return a_place(request, tmp_path)


@pytest.fixture
def store(place: Path | str, clock: Clock) -> Iterator[Store]:
    with Store.open(place, clock=clock) as opened:
        yield opened
