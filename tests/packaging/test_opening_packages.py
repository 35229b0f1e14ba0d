"""A key package that is double-clicked is checked, kept, and on the bench."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.window.main import Start
from idkey.engine.sample import SAMPLE_KEY
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key
from idkey.formats.package import write_package

LEAVES = places.keys_folder() / "kitchen-leaves"


@pytest.fixture(scope="module")
def package(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A package of a key that does not come with the program."""
    file = tmp_path_factory.mktemp("packages") / "garden.idkey"
    write_package(replace(read_key(LEAVES), id="garden-leaves", title="Garden leaves"), file)
    return file


@pytest.fixture
def opened(qapp: QApplication, qtbot) -> Iterator[Callable[[Path], Start]]:
    started = []

    def open_with(file: Path) -> Start:
        start = Start(qapp, file)
        started.append(start)
        qtbot.addWidget(start.frame)
        with qtbot.waitSignal(start.opened, timeout=60_000):
            pass
        return start

    yield open_with
    for start in started:
        start.close()


def test_a_package_is_kept_and_a_case_begins_with_its_key(opened, package: Path, qtbot):
    start = opened(package)

    qtbot.waitUntil(lambda: start.program.state.session.key.id == "garden-leaves", timeout=10_000)

    assert (places.data_folder() / "keys" / "garden-leaves" / "key.yaml").is_file()
    assert start.program.state.session.blank
    assert start.program.window.notice.text == ""


def test_a_package_that_is_none_is_refused_in_words(opened, tmp_path: Path, qtbot):
    file = tmp_path / "<b>odd<br>.idkey"
    file.write_bytes(b"PK\x03\x04 nothing else")

    start = opened(file)
    qtbot.waitUntil(lambda: start.program.window.notice.text != "", timeout=10_000)

    assert start.program.window.notice.text.startswith("<b>odd<br>.idkey is damaged")
    assert start.program.state.session.key.id == SAMPLE_KEY


def test_an_added_key_is_there_the_next_time(package: Path, tmp_path: Path):
    KeyLibrary(places.keys_folder(), SAMPLE_KEY, tmp_path).take_in(package)

    again = KeyLibrary(places.keys_folder(), SAMPLE_KEY, tmp_path)

    assert next(iter(again)) == SAMPLE_KEY
    assert again["garden-leaves"].title == "Garden leaves"


def test_the_same_key_twice_is_left_as_it_is(package: Path, tmp_path: Path):
    keys = KeyLibrary(places.keys_folder(), SAMPLE_KEY, tmp_path)

    assert keys.take_in(package) == keys.take_in(package) == "garden-leaves"


def test_another_key_of_a_shipped_name_replaces_nothing(tmp_path: Path):
    file = tmp_path / "leaves.idkey"
    write_package(replace(read_key(LEAVES), version="9.0.0"), file)
    keys = KeyLibrary(places.keys_folder(), SAMPLE_KEY, tmp_path / "own")

    with pytest.raises(IdKeyError, match=r"in version 9\.0\.0; another one of that name is here"):
        keys.take_in(file)

    assert keys["kitchen-leaves"].version != "9.0.0"


def test_a_package_whose_name_is_taken_is_looked_at_in_the_library(opened, tmp_path: Path, qtbot):
    file = tmp_path / "leaves.idkey"
    write_package(replace(read_key(LEAVES), version="9.0.0"), file)

    rooms = opened(file).program.window.rooms
    qtbot.waitUntil(lambda: rooms.library.view is not None, timeout=10_000)
    view = rooms.library.view
    qtbot.waitUntil(lambda: view.stack.currentWidget() is view.arrival, timeout=20_000)

    assert rooms.currentWidget() is view
    assert "came with the program (version 1.0.0), which is not replaced" in (
        view.arrival.verdict.text()
    )
