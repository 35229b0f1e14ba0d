"""Pictures are kept to the pixel, and without the place where they were taken."""

import io

import pytest
from PIL import Image
from PIL.PngImagePlugin import PngInfo
from sqlalchemy import text

from idkey.errors import IdKeyError
from idkey.store.book import Store
from idkey.store.faults import Missing
from idkey.store.pictures import picture, put_picture, without_place

SECRET = b"Rue des Lanternes"


def photo(kind: str, *, turned: int = 1, progressive: bool = False) -> bytes:
    """A small picture with a place in every corner a camera or editor would write one."""
    image = Image.effect_noise((64, 48), 80).convert("RGB")
    exif = Image.Exif()
    exif[0x0112] = turned
    exif[0x010E] = SECRET.decode()  # description
    exif.get_ifd(0x8825)[1] = "N"  # place
    exif.get_ifd(0x8825)[2] = (52.0, 31.0, 12.0)
    out = io.BytesIO()
    if kind == "PNG":
        info = PngInfo()
        info.add_text("Comment", SECRET.decode())
        image.save(out, kind, exif=exif, pnginfo=info)
    elif kind == "JPEG":
        xmp = b"<x:xmpmeta>" + SECRET + b"</x:xmpmeta>"
        image.save(
            out, kind, exif=exif, comment=SECRET, xmp=xmp, quality=90, progressive=progressive
        )
    else:
        image.save(out, kind, exif=exif)
    return out.getvalue() + b"trailer " + SECRET


@pytest.mark.parametrize(
    "content",
    [
        pytest.param(photo("JPEG"), id="JPEG"),
        pytest.param(photo("JPEG", progressive=True), id="progressive JPEG"),
        pytest.param(photo("PNG"), id="PNG"),
        pytest.param(photo("WEBP"), id="WebP"),
        pytest.param(photo("TIFF"), id="TIFF"),
    ],
)
def test_nothing_of_the_place_is_left_and_no_pixel_changes(content: bytes):
    bare, media_type = without_place(content)
    with Image.open(io.BytesIO(content)) as before, Image.open(io.BytesIO(bare)) as after:
        assert before.convert("RGB").tobytes() == after.convert("RGB").tobytes()
        assert not after.getexif().get_ifd(0x8825)
        assert Image.MIME[after.format] == media_type
    assert SECRET in content
    assert SECRET not in bare


@pytest.mark.parametrize("turned", range(1, 9))
def test_a_turned_photograph_stays_turned(turned: int):
    bare, _ = without_place(photo("JPEG", turned=turned))
    with Image.open(io.BytesIO(bare)) as after:
        assert after.getexif().get(0x0112, 1) == turned


def test_cleaning_twice_changes_nothing_more():
    once, _ = without_place(photo("JPEG", turned=6))

    assert without_place(once) == (once, "image/jpeg")


def test_a_picture_is_kept_once_under_the_digest_of_its_bytes(store: Store):
    first = put_picture(store, photo("PNG"), note="telson")
    kept = picture(store, first)

    assert put_picture(store, kept.content) == first
    assert (kept.id, kept.media_type, kept.note) == (first, "image/png", "telson")


def test_a_picture_that_was_exchanged_is_refused(store: Store):
    kept = put_picture(store, photo("PNG"))
    with store.database.writes() as connection:
        connection.execute(text("UPDATE pictures SET content = :x"), {"x": b"other"})

    with pytest.raises(IdKeyError, match="was changed after it was kept"):
        picture(store, kept)


def test_an_unknown_picture_is_missing(store: Store):
    with pytest.raises(Missing, match="no picture abc"):
        picture(store, "abc")


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"no picture",
        pytest.param(photo("JPEG")[:300], id="JPEG cut short"),
        pytest.param(photo("PNG")[:300], id="PNG cut short"),
        pytest.param(photo("PNG").replace(b"IDAT", b"IDAU", 1), id="PNG with a broken chunk"),
    ],
)
def test_what_is_no_picture_is_refused(store: Store, content: bytes):
    with pytest.raises(IdKeyError, match="no picture this program can read"):
        put_picture(store, content)
