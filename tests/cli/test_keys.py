"""Keys come in and go out on the command line, and those that were added are known."""

from dataclasses import replace
from pathlib import Path

import pytest

from idkey.cli.commands import main
from idkey.formats.folder import read_key
from idkey.formats.package import write_package
from idkey.places import data_folder, keys_folder

LEAVES = keys_folder() / "kitchen-leaves"


@pytest.fixture
def package(tmp_path: Path) -> Path:
    file = tmp_path / "garden.idkey"
    write_package(replace(read_key(LEAVES), id="garden-leaves", title="Garden leaves"), file)
    return file


def test_an_added_key_is_listed_found_and_used(package: Path, capsys: pytest.CaptureFixture[str]):
    assert main(["add", str(package)]) == 0
    assert main(["list"]) == 0
    assert "garden-leaves  1.0.0  Garden leaves  (added)" in capsys.readouterr().out
    assert main(["labels", "bay leaves"]) == 0
    assert "garden-leaves" in capsys.readouterr().out
    assert main(["questions", "--key", "garden-leaves", "--aim", "taxon"]) == 0


def test_another_version_is_told_and_replaces_only_when_asked(
    package: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
):
    main(["add", str(package)])
    newer = tmp_path / "newer.idkey"
    write_package(replace(read_key(LEAVES), id="garden-leaves", version="1.0.1"), newer)

    assert main(["add", str(newer)]) == 2
    told = capsys.readouterr()
    assert "The version of the key changed from '1.0.0' to '1.0.1'." in told.out
    assert "is here and was not replaced" in told.err
    assert main(["add", str(newer), "--replace"]) == 0
    assert read_key(data_folder() / "keys" / "garden-leaves").version == "1.0.1"
    assert read_key(data_folder() / "removed" / "garden-leaves").version == "1.0.0"


def test_a_broken_added_key_is_told_and_does_not_stop_the_others(
    package: Path, capsys: pytest.CaptureFixture[str]
):
    main(["add", str(package)])
    (data_folder() / "keys" / "garden-leaves" / "characters.yaml").write_text("characters: [}")

    assert main(["labels", "bay leaves"]) == 0
    told = capsys.readouterr()
    assert "kitchen-leaves" in told.out
    assert "The key garden-leaves has a mistake" in told.err


def test_the_ending_says_the_form_and_what_is_left_out_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
):
    assert main(["export", "kitchen-leaves", str(tmp_path / "leaves.nex")]) == 0
    assert "How often a state occurs was left out" in capsys.readouterr().out
    assert main(["export", "kitchen-leaves", str(tmp_path / "leaves.doc")]) == 2
    assert "does not say which form" in capsys.readouterr().err
