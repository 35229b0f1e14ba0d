"""A copy of a shipped key that may be edited, and the workshop around it."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from idkey import places
from idkey.app.parts.theme import Theme
from idkey.app.workshop.shelf import Shelf
from idkey.app.workshop.state import WorkshopState


@pytest.fixture
def shelf(tmp_path: Path) -> Shelf:
    return Shelf.usual(tmp_path)


@pytest.fixture
def own(shelf: Shelf) -> Path:
    """An own copy of the shipped practice key."""
    return shelf.copy(places.keys_folder() / "kitchen-leaves", "my-leaves")


@pytest.fixture
def workshop(tmp_path: Path, shelf: Shelf, theme: Theme) -> Iterator[WorkshopState]:
    assert theme, "signals need the application"
    made = WorkshopState(tmp_path / "drafts", shelf=shelf)
    yield made
    made.close()
