"""Where keys, images and the user's data are found."""

import os
import stat
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont

from idkey import places

SIGNS = "äöüßÄÖÜéñ±×≥≤≠≈°–—…✓✗♀♂→←↑↓−µ½‘’“”„☐☑"


def test_keys_and_images_are_there():
    assert list(places.keys_folder().glob("*/key.yaml"))
    assert places.images_folder().is_dir()


def test_the_data_folder_is_made_for_its_owner_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    monkeypatch.setenv(places.DATA_VARIABLE, str(tmp_path / "new" / "data"))

    folder = places.data_folder()

    assert folder == tmp_path / "new" / "data"
    assert os.name == "nt" or stat.S_IMODE(folder.stat().st_mode) == 0o700


def test_without_the_variable_the_data_folder_is_the_accounts_own(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    monkeypatch.delenv(places.DATA_VARIABLE)
    for name in ("HOME", "XDG_DATA_HOME", "LOCALAPPDATA"):
        monkeypatch.setenv(name, str(tmp_path))

    assert places.data_folder().is_relative_to(tmp_path)


def test_the_font_has_four_faces_and_every_sign_the_program_writes():
    names = [file.stem.partition("-")[2] for file in places.font_files()]

    assert names == ["Bold", "BoldItalic", "Italic", "Regular"]
    for file in places.font_files():
        with TTFont(file) as font:
            lacking = [sign for sign in SIGNS if ord(sign) not in font.getBestCmap()]
            assert not lacking, f"{file.name} lacks {lacking}"
            assert font["name"].getDebugName(1) == places.FONT_FAMILY


def test_the_font_comes_with_its_licence():
    assert "SIL OPEN FONT LICENSE" in (places.images_folder() / "fonts" / "OFL.txt").read_text()
