"""What is remembered between two starts."""

from dataclasses import replace
from pathlib import Path

import pytest

from idkey.app.bench.place import Left, Place, kept_place, place_of
from idkey.app.bench.session import Mode
from idkey.app.bench.state import BenchState
from idkey.app.window.memory import FILE, WindowMemory, remember, remembered


def test_a_place_comes_back_as_it_was_kept(state: BenchState):
    session = replace(state.session, asked="telson_colour", mode=Mode.COUPLETS)

    place = kept_place(place_of(session, (session,)))

    left = Left(case=session.case.id, asked="telson_colour", mode=Mode.COUPLETS)
    assert place == Place(case=session.case.id, key=session.key.id, tray=(left,))


@pytest.mark.parametrize(
    "kept", [{}, {"tray": "x"}, {"tray": [1, {}, {"case": ""}]}, {"case": None, "tray": None}]
)
def test_a_place_that_cannot_be_read_is_nowhere(kept):
    assert kept_place(kept).tray == ()


def test_a_window_is_remembered(tmp_path: Path):
    memory = WindowMemory(geometry="AAA=", scheme="dark", scale=125, language="de")
    remember(tmp_path, memory)

    assert remembered(tmp_path) == memory
    assert [file.name for file in tmp_path.iterdir()] == [FILE]


@pytest.mark.parametrize(
    "text", ["", "{", "[]", '{"scale": "big"}', '{"geometry": 1, "scale": []}']
)
def test_a_window_that_cannot_be_remembered_opens_as_new(tmp_path: Path, text: str):
    (tmp_path / FILE).write_text(text, "utf-8")

    assert remembered(tmp_path) == WindowMemory()


def test_a_full_disk_is_no_reason_not_to_close(tmp_path: Path):
    (tmp_path / "no folder").write_text("a file where a folder is needed")
    remember(tmp_path / "no folder", WindowMemory())

    assert remembered(tmp_path / "no folder") == WindowMemory()
