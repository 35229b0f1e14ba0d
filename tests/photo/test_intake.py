"""Pictures are taken in upright, bare and within limits; all else is refused in words."""

import hashlib
import io
import struct
import zlib
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageCms

from idkey.photo.faults import Refused
from idkey.photo.intake import HEIC, Limits, read_bytes, read_file
from tests.photo.pictures import card, put, saved, with_place_and_time

ORIENTATIONS = {
    # Exif 2.3, CIPA DC-008, tag 0x0112: where row 0 and column 0 of the stored picture are.
    1: None,
    2: Image.Transpose.FLIP_LEFT_RIGHT,
    3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM,
    5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_90,
    7: Image.Transpose.TRANSVERSE,
    8: Image.Transpose.ROTATE_270,
}
"""What to do to an upright picture so that a reader who heeds the tag sees it upright."""


def red(image: Image.Image, x: int, y: int) -> bool:
    r, g, b = image.getpixel((x, y))
    return r > 150 and g < 90 and b < 90


@pytest.mark.parametrize("orientation", ORIENTATIONS, ids=lambda n: f"Exif orientation {n}")
def test_a_picture_is_turned_upright_whatever_way_the_phone_was_held(orientation: int):
    turn = ORIENTATIONS[orientation]
    stored = card() if turn is None else card().transpose(turn)

    incoming = read_bytes(with_place_and_time(stored, orientation))

    assert (incoming.picture.width, incoming.picture.height) == (240, 160)
    assert red(incoming.image, 10, 10)
    assert not red(incoming.image, 230, 10)


def test_place_time_camera_owner_and_comments_are_not_kept():
    source = with_place_and_time(card())
    assert b"Lantern Street" in source
    assert Image.open(io.BytesIO(source)).getexif().get_ifd(0x8825)

    incoming = read_bytes(source)

    kept = Image.open(io.BytesIO(incoming.content))
    assert dict(kept.getexif()) == {}
    assert set(kept.info) <= {"jfif", "jfif_version", "jfif_density", "jfif_unit"}
    for word in (b"Exif", b"GPS", b"Lantern", b"home", b"Somebody", b"http"):
        assert word not in incoming.content


def test_texts_in_a_png_are_not_kept():
    from PIL import PngImagePlugin

    note = PngImagePlugin.PngInfo()
    note.add_text("Author", "Somebody")

    incoming = read_bytes(saved(card(), "PNG", pnginfo=note))

    assert b"Somebody" not in incoming.content
    assert incoming.picture.media_type == "image/png"


def test_what_follows_the_picture_in_the_file_is_not_kept():
    film = with_place_and_time(card()) + b"ftypmp42 a film with sound"

    incoming = read_bytes(film)

    assert b"film with sound" not in incoming.content


def test_the_digest_of_the_original_is_kept_and_the_id_is_that_of_the_kept_bytes():
    source = with_place_and_time(card())

    picture = read_bytes(source).picture

    assert picture.original == hashlib.sha256(source).hexdigest()
    assert picture.id == hashlib.sha256(read_bytes(source).content).hexdigest()


def test_a_png_keeps_every_pixel():
    image = card()

    incoming = read_bytes(saved(image, "PNG"))

    assert Image.open(io.BytesIO(incoming.content)).tobytes() == image.tobytes()


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
def test_kinds_that_are_read(kind: str):
    incoming = read_bytes(saved(card(), kind))

    assert red(incoming.image, 10, 10)


@pytest.mark.skipif(not HEIC, reason="pillow-heif is not installed")
def test_heic_is_read_where_its_reader_is_installed():
    incoming = read_bytes(saved(card(), "HEIF", quality=90))

    assert red(incoming.image, 10, 10)
    assert incoming.picture.media_type == "image/jpeg"


@pytest.mark.skipif(not HEIC, reason="pillow-heif is not installed")
def test_without_its_reader_a_heic_picture_is_named_as_such():
    from idkey.photo.intake import _unknown

    refused = _unknown(saved(card(), "HEIF"), "IMG_1.HEIC")

    assert "HEIC picture" in refused.problem
    assert "idkey[heic]" in refused.remedy


GREY = 153  # a step of the palette, so that no mode has to round it


@pytest.mark.parametrize("mode", ["L", "P", "LA", "RGBA", "CMYK", "I;16"])
def test_odd_ways_of_storing_colour_come_out_as_8_bit_colour(mode: str):
    if mode == "I;16":
        image = Image.frombytes("I;16", (64, 64), struct.pack("<H", GREY << 8) * 64 * 64)
    else:
        image = Image.new("RGB", (64, 64), (GREY,) * 3).convert(mode)

    incoming = read_bytes(saved(image, "JPEG" if mode == "CMYK" else "PNG"))

    assert incoming.image.mode == "RGB"
    assert incoming.image.getpixel((5, 5)) == pytest.approx((GREY,) * 3, abs=2)


def test_what_is_see_through_comes_out_white():
    image = Image.new("RGBA", (64, 64), (0, 0, 0, 0))

    incoming = read_bytes(saved(image, "PNG"))

    assert incoming.image.getpixel((5, 5)) == (255, 255, 255)


def test_colours_with_a_profile_are_turned_into_srgb():
    """The profile has red and green changed round, so the colours must be, too."""
    plain = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    turned = plain.replace(b"rXYZ", b"----").replace(b"gXYZ", b"rXYZ").replace(b"----", b"gXYZ")
    image = Image.new("RGB", (64, 64), (120, 60, 30))

    incoming = read_bytes(saved(image, "PNG", icc_profile=turned))

    assert incoming.image.getpixel((3, 3)) == pytest.approx((60, 120, 30), abs=2)
    assert "icc_profile" not in Image.open(io.BytesIO(incoming.content)).info


def test_a_profile_that_cannot_be_read_is_left_out():
    incoming = read_bytes(saved(card(), "PNG", icc_profile=b"not a profile" * 20))

    assert red(incoming.image, 10, 10)


def test_too_many_bytes_are_refused():
    with pytest.raises(Refused, match=r"big\.jpg is larger than 0 MB"):
        read_bytes(saved(card()), "big.jpg", Limits(size_bytes=1000))


def test_too_many_pixels_are_refused_before_any_is_read():
    with pytest.raises(Refused, match="more than 0 million pixels"):
        read_bytes(saved(card()), "big.jpg", Limits(pixels=1000))


@pytest.mark.parametrize("side", [12_000, 60_000], ids=["144 million", "3600 million"])
def test_a_small_file_that_would_unpack_to_a_huge_picture_is_refused(side: int):
    with pytest.raises(Refused, match=r"bomb\.png has more than 80 million pixels") as refused:
        read_bytes(bomb(side), "bomb.png")

    assert "cut it to the animal" in refused.value.remedy


def test_a_text_in_a_png_that_unpacks_to_gigabytes_is_refused():
    text = b"zTXt" + b"Comment\0\0" + zlib.compress(b"\0" * 70_000_000, 1)
    source = saved(card(), "PNG")
    chunk = struct.pack(">I", len(text) - 4) + text + struct.pack(">I", zlib.crc32(text))

    with pytest.raises(Refused, match="damaged"):
        read_bytes(source[:33] + chunk + source[33:])


@pytest.mark.parametrize("kind", ["PNG", "WEBP"])
def test_an_animation_is_refused(kind: str):
    other = card().transpose(Image.Transpose.FLIP_LEFT_RIGHT)
    film = saved(card(), kind, save_all=True, append_images=[other])

    with pytest.raises(Refused, match="holds 2 pictures, like a film"):
        read_bytes(film, "film")


def test_the_hidden_second_picture_of_a_phone_is_left_out():
    other = card().transpose(Image.Transpose.FLIP_LEFT_RIGHT)
    pair = saved(card(), "MPO", save_all=True, append_images=[other])

    incoming = read_bytes(pair)

    assert red(incoming.image, 10, 10)
    assert len(incoming.content) < len(pair)


@pytest.mark.parametrize(
    ("source", "words"),
    [
        (b"", "is empty"),
        (b"GIF89a" + bytes(40), "is not a picture in JPEG, PNG, WebP or HEIC"),
        (b"<svg xmlns='http://www.w3.org/2000/svg'/>", "is not a picture"),
        (b"%PDF-1.7 ", "is not a picture"),
        (b"%!PS-Adobe EPSF-3.0", "is not a picture"),
    ],
    ids=["nothing", "GIF", "SVG", "PDF", "PostScript"],
)
def test_other_files_are_refused_in_words(source: bytes, words: str):
    with pytest.raises(Refused, match=words) as refused:
        read_bytes(source, "thing")

    assert refused.value.remedy


def test_a_picture_that_shows_nothing_is_refused():
    with pytest.raises(Refused, match="only 20 × 90 pixels"):
        read_bytes(saved(card(20, 90), "PNG"))


def test_a_file_that_was_cut_short_is_refused():
    source = saved(card())

    with pytest.raises(Refused, match="damaged or was cut short"):
        read_bytes(source[: len(source) // 2])


@settings(max_examples=150)
@given(st.data())
def test_a_damaged_file_gives_a_picture_or_a_refusal_and_nothing_else(data: st.DataObject):
    kind = data.draw(st.sampled_from(["JPEG", "PNG", "WEBP"]))
    source = bytearray(saved(card(64, 64), kind))
    for _ in range(data.draw(st.integers(1, 12))):
        place = data.draw(st.integers(0, len(source) - 1))
        source[place] = data.draw(st.integers(0, 255))

    outcome = taken_or_refused(bytes(source))

    assert outcome == "RGB" or outcome.endswith(".")


def test_a_file_is_read_and_stays_as_it_is(tmp_path: Path):
    source = with_place_and_time(card())
    file = put(tmp_path, "animal.jpg", source)

    incoming = read_file(file)

    assert incoming.picture.original == hashlib.sha256(source).hexdigest()
    assert file.read_bytes() == source


def test_a_folder_and_a_missing_file_are_refused(tmp_path: Path):
    with pytest.raises(Refused, match="is not a file"):
        read_file(tmp_path)
    with pytest.raises(Refused, match="nowhere"):
        read_file(tmp_path / "nowhere.jpg")


def taken_or_refused(source: bytes) -> str:
    try:
        return read_bytes(source).image.mode
    except Refused as refused:
        return refused.remedy


def bomb(side: int) -> bytes:
    """A PNG of a few bytes that says it has `side` times `side` pixels."""

    def chunk(name: bytes, content: bytes) -> bytes:
        check = struct.pack(">I", zlib.crc32(name + content))
        return struct.pack(">I", len(content)) + name + content + check

    header = struct.pack(">IIBBBBB", side, side, 8, 2, 0, 0, 0)
    rows = chunk(b"IDAT", zlib.compress(bytes(1000)))
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + rows + chunk(b"IEND", b"")
