"""A remembered key is the key, and a changed file is read anew."""

import json
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings

from idkey.formats import memory
from idkey.formats.folder import digest, read_key
from idkey.formats.memory import KeyMemory
from idkey.formats.plain import canonical
from idkey.model.key import Key
from idkey.model.score import Score
from idkey.places import keys_folder
from tests.formats.invented import keys
from tests.formats.small_key import FILES, laid_out


@given(key=keys())
@settings(max_examples=13)
def test_every_key_is_remembered_as_it_was(key: Key, tmp_path_factory: pytest.TempPathFactory):
    whole = replace(canonical(key), digest=digest(key))
    kept = KeyMemory(tmp_path_factory.mktemp("cache"), Path("nowhere"))

    kept.keep(whole)

    assert kept.key() == whole


def test_scores_may_be_filled_in_without_their_constructor():
    assert not hasattr(Score, "__post_init__"), "memory.py must then check scores itself"


def test_a_shipped_key_is_remembered_with_its_digest(tmp_path: Path):
    folder = keys_folder() / "large-dark-scorpions"
    first = read_key(folder, tmp_path / "cache")
    again = read_key(folder, tmp_path / "cache")

    assert again == first == read_key(folder)
    assert len(list((tmp_path / "cache").iterdir())) == 1


def test_a_changed_file_is_read_anew(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    read_key(folder, tmp_path / "cache")
    text = FILES["taxa/alpha.yaml"].replace("Alpha prima", "Alpha altera")
    (folder / "taxa" / "alpha.yaml").write_text(text, "utf-8")

    assert read_key(folder, tmp_path / "cache").taxon["alpha"].name == "Alpha altera"


@pytest.mark.parametrize("rubbish", ["", "{", "[]", "{}", '{"head": {}}', '{"columns": [[9]]}'])
def test_a_damaged_memory_is_no_memory(tmp_path: Path, rubbish: str):
    folder = laid_out(tmp_path, FILES)
    first = read_key(folder, tmp_path / "cache")
    for file in (tmp_path / "cache").iterdir():
        file.write_text(rubbish, "utf-8")

    assert read_key(folder, tmp_path / "cache") == first


def test_a_memory_with_a_score_too_many_is_no_memory(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    first = read_key(folder, tmp_path / "cache")
    (file,) = (tmp_path / "cache").iterdir()
    said = json.loads(file.read_text("utf-8"))
    said["columns"][0].append(99)
    file.write_text(json.dumps(said), "utf-8")

    assert read_key(folder, tmp_path / "cache") == first


def test_a_place_that_cannot_be_written_is_no_reason_to_fail(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    (tmp_path / "cache").write_text("in the way", "utf-8")

    assert read_key(folder, tmp_path / "cache") == read_key(folder)


def test_only_the_latest_keys_are_remembered(tmp_path: Path):
    folder = laid_out(tmp_path, FILES)
    for number in range(memory.MOST_KEYS + 3):
        (folder / "taxa" / "alpha.yaml").write_text(f"{FILES['taxa/alpha.yaml']}# {number}\n")
        read_key(folder, tmp_path / "cache")

    assert len(list((tmp_path / "cache").iterdir())) == memory.MOST_KEYS
