"""What comes in is recognised by its content; whatever it is, it ends in a key or a sentence."""

import os
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from idkey.errors import IdKeyError
from idkey.formats.archive import LARGEST_ARCHIVE
from idkey.formats.arrival import Arrival, Form, Grid, arrival_of, read_arrival
from idkey.formats.folder import read_key, write_key
from idkey.formats.giving import WAYS, Source
from idkey.formats.json_key import write_json
from idkey.formats.key_shelf import all_keys, put_in, set_aside
from idkey.formats.new_key import empty_key
from idkey.formats.nexus import nexus_text
from idkey.formats.sdd import sdd_text
from idkey.model.key import Key
from tests.formats.small_key import FILES, laid_out

SVG = '<svg xmlns="http://www.w3.org/2000/svg">'
PNG = b"\x89PNG\r\n\x1a\n"


@pytest.fixture
def small(tmp_path: Path) -> Path:
    return laid_out(tmp_path, FILES)


@pytest.fixture
def key(small: Path) -> Key:
    return read_key(small)


@pytest.mark.parametrize("way", WAYS, ids=lambda way: way.id)
@pytest.mark.parametrize("name", ["small", "x.txt", "x.xlsx"])
def test_the_content_counts_and_not_the_name(key: Key, small: Path, tmp_path: Path, way, name: str):
    place = tmp_path / "out" / ("small" if way.id == "folder" else name)
    place.parent.mkdir()
    way.write(Source(key=key, folder=small), place)

    found = read_arrival(place)

    if way.id == "csv":
        assert isinstance(found, Grid)
        return
    assert isinstance(found, Arrival)
    assert found.form.value.lower().startswith({"xlsx": "spread", "ods": "spread"}.get(
        way.id, way.id
    ))  # fmt: skip
    assert (found.key.digest == key.digest) == (way.id != "nexus")


@pytest.mark.parametrize(
    ("raw", "message"),
    [
        (b"", "x is empty."),
        (b" \n\t ", "x is empty."),
        (b"%PDF-1.7 ...", "x is a PDF, and holds no key."),
        (PNG, "x is a picture, and holds no key."),
        (b"SQLite format 3\x00", "x is a record book, and holds no key."),
        (b"\xd0\xcf\x11\xe0\xa1", "x is a spreadsheet of the old binary kind, and holds no key."),
        (b"ab\x00cd", "x is no text, and no file this program reads."),
        (b"PK\x03\x04 cut", "x is damaged."),
        (b"# a key\nformat: 1\nid: x\n", "x is one file of a key folder."),
        (b"<html></html>", "x is no SDD document."),
        (b"{", "x:1:2: This is no JSON."),
    ],
)
def test_what_is_no_key_is_told_apart(tmp_path: Path, raw: bytes, message: str):
    file = tmp_path / "x"
    file.write_bytes(raw)

    with pytest.raises(IdKeyError) as caught:
        read_arrival(file)

    assert caught.value.problem.replace(f"{tmp_path}/", "").startswith(message)
    assert caught.value.remedy


def test_a_file_that_never_ends_is_not_opened(tmp_path: Path):
    os.mkfifo(tmp_path / "pipe")

    with pytest.raises(IdKeyError, match="pipe is no plain file"):
        read_arrival(tmp_path / "pipe")


def test_a_file_beyond_any_sense_is_not_read_whole(tmp_path: Path):
    with (tmp_path / "big").open("wb") as stream:
        stream.truncate(LARGEST_ARCHIVE * 4)

    with pytest.raises(IdKeyError, match="big is larger than any key needs"):
        read_arrival(tmp_path / "big")


def test_utf16_with_a_mark_is_text(key: Key):
    found = arrival_of(sdd_text(key)[0].replace("UTF-8", "UTF-16").encode("utf-16"), Path("x"))

    assert isinstance(found, Arrival)
    assert (found.form, found.key.digest) == (Form.SDD, key.digest)


def test_a_folder_around_a_key_folder_or_its_key_yaml_is_the_key(small: Path, key: Key):
    for place in (small, small.parent, small / "key.yaml"):
        found = read_arrival(place)

        assert isinstance(found, Arrival)
        assert found.key.digest == key.digest
        assert found.files["key.yaml"] == (small / "key.yaml").read_bytes()


def test_a_folder_without_a_key_or_with_several_is_told(small: Path, tmp_path: Path):
    (tmp_path / "empty").mkdir()
    with pytest.raises(IdKeyError, match=r"The folder empty holds no key\.yaml"):
        read_arrival(tmp_path / "empty")
    write_key(replace(read_key(small), id="other"), tmp_path / "other")
    with pytest.raises(IdKeyError, match="holds several keys"):
        read_arrival(tmp_path)


def test_pictures_that_would_do_more_than_show_stay_behind(small: Path):
    images = small / "images" / "tail"
    images.mkdir(parents=True)
    (images / "leaf.svg").write_text(f'{SVG}<path d="M0 0"/></svg>')
    (images / "rope.svg").write_text(f"{SVG}<script/></svg>")
    (images / "none.png").write_bytes(b"GIF89a")
    (images / "notes.txt").write_text("mine")
    (images / "up.svg").symlink_to(images / "leaf.svg")

    found = read_arrival(small)

    assert isinstance(found, Arrival)
    assert [name for name in found.files if name.startswith("images")] == ["images/tail/leaf.svg"]
    told = "\n".join(found.notes)
    for name in ("rope.svg", "none.png", "notes.txt"):
        assert f"images/tail/{name} was left behind" in told


def test_comments_and_pictures_survive_the_way_in(small: Path, tmp_path: Path):
    text = (small / "key.yaml").read_text()
    (small / "key.yaml").write_text(f"# by hand\n{text}")
    found = read_arrival(small)
    assert isinstance(found, Arrival)

    folder = put_in(found.key, tmp_path / "own", files=found.files)

    assert (folder / "key.yaml").read_text().startswith("# by hand\n")
    other = put_in(replace(found.key, id="second"), tmp_path / "own", files=found.files)
    assert (other / "key.yaml").read_text().startswith("# by hand\n")
    assert read_key(other).id == "second"


def test_a_key_is_replaced_only_when_told_and_never_lost(key: Key, tmp_path: Path):
    own, removed = tmp_path / "own", tmp_path / "removed"
    put_in(key, own)
    with pytest.raises(IdKeyError, match="A key named 'small' is here already"):
        put_in(replace(key, version="2.0.0"), own)
    for version in ("2.0.0", "3.0.0"):
        put_in(replace(key, version=version), own, removed=removed)

    assert read_key(own / "small").version == "3.0.0"
    kept = {read_text(place) for place in removed.iterdir()}
    assert kept == {"1.0.0", "2.0.0"}
    assert [place.name for place in own.iterdir()] == ["small"]
    set_aside(own / "small", removed)
    assert len(list(removed.iterdir())) == 3


def read_text(folder: Path) -> str:
    lines = (folder / "key.yaml").read_text().splitlines()
    return next(line.split()[1] for line in lines if line.startswith("version:"))


def test_a_key_with_mistakes_is_not_put_in_and_leaves_nothing_behind(key: Key, tmp_path: Path):
    own = tmp_path / "own"
    with pytest.raises(IdKeyError, match="has a mistake"):
        put_in(replace(key, version="one"), own)

    assert list(own.iterdir()) == []


def test_an_own_key_of_a_shipped_name_is_listed_and_told(small: Path, key: Key, tmp_path: Path):
    put_in(replace(key, title="A mine"), tmp_path / "own")
    shelf = tmp_path / "shelf"
    shelf.mkdir()
    small.rename(shelf / "small")

    mine, theirs = all_keys(shelf, tmp_path / "own")

    assert (mine.own, theirs.own) == (True, False)
    assert "comes with the program, and that one is used" in mine.problem


def test_an_empty_key_is_a_key(tmp_path: Path):
    folder = put_in(empty_key("A first key: mine"), tmp_path)

    assert folder.name == "a-first-key-mine"
    assert read_key(folder).taxa[0].dangerous


WHOLE = {
    "json": write_json(empty_key("x")).encode(),
    "nexus": nexus_text(empty_key("x"))[0].encode(),
    "sdd": sdd_text(empty_key("x"))[0].encode(),
}


@settings(max_examples=150)
@given(
    form=st.sampled_from(sorted(WHOLE)),
    edits=st.lists(
        st.tuples(st.integers(0, 5000), st.integers(0, 30), st.binary(max_size=6)), max_size=3
    ),
)
@example(form="json", edits=[(0, 5000, b"\xff\xfe<")])
def test_whatever_is_damaged_ends_in_a_key_or_a_sentence(
    form: str, edits: list[tuple[int, int, bytes]]
):
    raw = WHOLE[form]
    for place, taken, new in edits:
        raw = raw[:place] + new + raw[place + taken :]
    try:
        found = arrival_of(raw, Path("x"))
    except IdKeyError:
        return
    assert isinstance(found, Arrival | Grid)
