"""Real keys, a real record book, a real window."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.keeper import Keeper
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.pictures import Pictures
from idkey.app.parts.theme import Theme
from idkey.engine.sample import SAMPLE_KEY
from idkey.model.key import Key
from idkey.report.language import ENGLISH
from idkey.store.book import Store


@pytest.fixture(scope="session")
def keys() -> KeyLibrary:
    return KeyLibrary(places.keys_folder(), SAMPLE_KEY)


@pytest.fixture(scope="session")
def key(keys: KeyLibrary) -> Key:
    return keys[SAMPLE_KEY]


@pytest.fixture(scope="session")
def theme(qapp: QApplication) -> Theme:
    qapp.setStyle("Fusion")
    return Theme(qapp)


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(tmp_path / "book.sqlite") as book:
        yield book


@pytest.fixture
def keeper(store: Store, theme: Theme) -> Iterator[Keeper]:
    assert theme, "signals need the application"
    made = Keeper(store)
    yield made
    made.close()


@pytest.fixture
def state(keys: KeyLibrary, keeper: Keeper) -> Iterator[BenchState]:
    made = BenchState(keys, keeper)
    yield made
    made.close()


@pytest.fixture
def desk(theme: Theme, pictures: Pictures) -> Desk:
    return Desk(theme, pictures, ENGLISH)


@pytest.fixture(scope="session")
def pictures(theme: Theme) -> Iterator[Pictures]:
    assert theme, "pixmaps need the application"
    made = Pictures(places.images_folder())
    yield made
    made.close()
