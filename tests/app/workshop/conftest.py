"""A copy of a shipped key that may be edited, and the workshop around it."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.parts.theme import Theme
from idkey.app.workshop.shelf import Shelf
from idkey.app.workshop.state import WorkshopState
from tests.app.workshop.table import Table


@pytest.fixture
def shelf(tmp_path: Path) -> Shelf:
    return Shelf.usual(tmp_path)


@pytest.fixture
def own(shelf: Shelf) -> Path:
    """An own copy of the shipped practice key."""
    return shelf.copy(places.keys_folder() / "kitchen-leaves", "my-leaves")


@pytest.fixture
def table(qtbot: QtBot, tmp_path: Path) -> Iterator[Table]:
    """A copy of a large shipped key on a table of its own."""
    made = Table(qtbot, tmp_path, "large-dark-scorpions")
    yield made
    made.state.close()


@pytest.fixture
def workshop(tmp_path: Path, shelf: Shelf, theme: Theme) -> Iterator[WorkshopState]:
    assert theme, "signals need the application"
    made = WorkshopState(tmp_path / "drafts", shelf=shelf)
    yield made
    made.close()
    delete(made)


def delete(one: QObject) -> None:
    """Delete it now, with all it owns, and not whenever the garbage collector comes by."""
    one.deleteLater()
    QCoreApplication.sendPostedEvents(one, int(QEvent.Type.DeferredDelete.value))
