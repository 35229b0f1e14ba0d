"""A library over the shipped keys and a folder of one's own."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.library.state import LibraryState
from idkey.app.library.view import LibraryView
from idkey.app.parts.desk import Desk
from idkey.app.parts.key_library import KeyLibrary
from idkey.engine.sample import SAMPLE_KEY
from idkey.formats.folder import read_key
from idkey.model.key import Key
from idkey.store.book import Store

SHIPPED = ("kitchen-leaves",)


@pytest.fixture(scope="session")
def leaves() -> Key:
    return read_key(places.keys_folder() / "kitchen-leaves")


@pytest.fixture
def own(tmp_path: Path) -> Path:
    return tmp_path / "data" / "keys"


@pytest.fixture
def few(tmp_path: Path) -> Path:
    """A folder of shipped keys that holds the small one alone, so that tests are quick."""
    folder = tmp_path / "shipped"
    folder.mkdir()
    for name in SHIPPED:
        (folder / name).symlink_to(places.keys_folder() / name)
    return folder


@pytest.fixture
def keys(few: Path, own: Path) -> KeyLibrary:
    return KeyLibrary(few, SAMPLE_KEY, own)


@pytest.fixture
def state(keys: KeyLibrary, store: Store, desk: Desk) -> Iterator[LibraryState]:
    assert desk, "signals need the application"
    made = LibraryState(keys, store, places.images_folder())
    yield made
    made.close()


@pytest.fixture
def view(state: LibraryState, desk: Desk, qtbot: QtBot) -> Iterator[LibraryView]:
    made = LibraryView(state, desk)
    qtbot.addWidget(made)
    made.resize(1216, 800)
    with qtbot.waitExposed(made):
        made.show()
    made.open()
    qtbot.waitUntil(lambda: not state.busy, timeout=20_000)
    yield made
    made.close_work()
