"""Pictures are kept once, bare, and a lost or broken one is said to be so."""

import hashlib
import io
from pathlib import Path

import pytest
from PIL import Image

from idkey.photo.faults import Gone, PictureError
from idkey.photo.shelf import THUMBNAIL, Condition, PictureShelf
from tests.photo.pictures import card, put, saved, with_place_and_time


@pytest.fixture
def shelf(tmp_path: Path) -> PictureShelf:
    return PictureShelf(tmp_path / "pictures")


def file_of(shelf: PictureShelf, picture_id: str) -> Path:
    (found,) = shelf.folder.glob(f"*/{picture_id}.jpg")
    return found


def test_a_kept_picture_is_named_after_its_bytes(shelf: PictureShelf):
    picture = shelf.add_bytes(with_place_and_time(card()))

    content = shelf.content(picture.id)
    assert hashlib.sha256(content).hexdigest() == picture.id
    assert shelf.picture(picture.id) == picture
    assert shelf.condition(picture.id) is Condition.WHOLE
    assert shelf.image(picture.id).size == (240, 160)


def test_the_same_picture_is_kept_once(shelf: PictureShelf, tmp_path: Path):
    source = saved(card())
    first = shelf.add_bytes(source)

    again = shelf.add_file(put(tmp_path, "a.jpg", source))

    assert again == first
    assert shelf.ids() == (first.id,)


def test_only_the_owner_may_read_a_kept_picture(shelf: PictureShelf):
    picture = shelf.add_bytes(saved(card()))

    assert file_of(shelf, picture.id).stat().st_mode & 0o077 == 0


def test_a_thumbnail_is_small_and_is_made_again_when_it_is_lost(shelf: PictureShelf):
    picture = shelf.add_bytes(saved(card(1200, 800)))
    (small,) = shelf.folder.glob("*/*.small.jpg")
    small.unlink()

    made = shelf.thumbnail(picture.id)

    assert made is not None
    assert max(Image.open(io.BytesIO(made)).size) == THUMBNAIL
    assert small.read_bytes() == made


def test_a_missing_picture_is_said_to_be_missing_and_never_breaks_anything(shelf: PictureShelf):
    picture = shelf.add_bytes(saved(card()))
    file_of(shelf, picture.id).unlink()

    assert shelf.condition(picture.id) is Condition.MISSING
    assert shelf.thumbnail(picture.id) is not None
    with pytest.raises(Gone, match="no longer in") as gone:
        shelf.image(picture.id)
    assert "stand without it" in gone.value.remedy


def test_a_damaged_picture_is_said_to_be_damaged(shelf: PictureShelf):
    picture = shelf.add_bytes(saved(card()))
    file = file_of(shelf, picture.id)
    file.write_bytes(file.read_bytes()[:-7])

    assert shelf.condition(picture.id) is Condition.DAMAGED
    with pytest.raises(Gone, match="not what was kept"):
        shelf.content(picture.id)


def test_adding_a_damaged_picture_again_mends_it(shelf: PictureShelf):
    source = saved(card())
    picture = shelf.add_bytes(source)
    file_of(shelf, picture.id).write_bytes(b"broken")

    shelf.add_bytes(source)

    assert shelf.condition(picture.id) is Condition.WHOLE


def test_a_picture_nobody_ever_added_is_missing_without_an_error(shelf: PictureShelf):
    unknown = "0" * 64

    assert shelf.condition(unknown) is Condition.MISSING
    assert shelf.picture(unknown) is None
    assert shelf.thumbnail(unknown) is None
    assert shelf.ids() == ()


@pytest.mark.parametrize("name", ["../../etc/passwd", "", "ab/cd", "A" * 64, "0" * 63])
def test_an_id_that_is_no_id_never_becomes_a_path(shelf: PictureShelf, name: str):
    assert shelf.picture(name) is None
    assert shelf.condition(name) is Condition.MISSING
    assert shelf.thumbnail(name) is None
    with pytest.raises(Gone):
        shelf.content(name)


def test_a_note_that_lies_about_its_picture_is_not_believed(shelf: PictureShelf):
    picture = shelf.add_bytes(saved(card()))
    note = file_of(shelf, picture.id).with_suffix(".json")
    note.write_text(note.read_text().replace("image/jpeg", "text/html"))

    assert shelf.picture(picture.id) is None
    assert shelf.condition(picture.id) is Condition.MISSING


def test_marks_that_are_not_noted_yet_are_kept_with_picture_and_character(shelf: PictureShelf):
    picture = shelf.add_bytes(saved(card()))

    shelf.put_draft(picture.id, "length", "some text")
    shelf.put_draft(picture.id, "../width", "other text")

    assert shelf.draft(picture.id, "length") == "some text"
    assert shelf.draft(picture.id, "../width") == "other text"
    assert shelf.draft(picture.id, "colour") == ""
    assert shelf.ids() == (picture.id,)


def test_empty_marks_remove_the_draft_and_no_other(shelf: PictureShelf):
    picture = shelf.add_bytes(saved(card()))
    shelf.put_draft(picture.id, "length", "some text")
    shelf.put_draft(picture.id, "width", "some text")

    shelf.put_draft(picture.id, "length", "")
    assert shelf.draft(picture.id, "length") == ""
    assert shelf.draft(picture.id, "width") == "some text"


def test_drafts_are_not_kept_for_what_is_no_picture(shelf: PictureShelf):
    assert shelf.draft("../x", "length") == ""
    with pytest.raises(Gone):
        shelf.put_draft("../x", "length", "text")


def test_a_folder_that_cannot_be_written_is_said_in_words(tmp_path: Path):
    blocked = tmp_path / "file"
    blocked.write_text("not a folder")

    with pytest.raises(PictureError, match="cannot be kept in"):
        PictureShelf(blocked / "pictures").add_bytes(saved(card()))
