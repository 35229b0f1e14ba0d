"""A fresh record book for each test."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from idkey.store.book import Store


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


@pytest.fixture
def place(tmp_path: Path) -> Path | str:
    """Where a book may be made."""
    return tmp_path / "records" / "idkey.sqlite3"


@pytest.fixture
def store(place: Path | str, clock: Clock) -> Iterator[Store]:
    with Store.open(place, clock=clock) as opened:
        yield opened
