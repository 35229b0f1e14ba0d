"""Only pictures that are what they say, and do nothing but show, come in."""

import io
import struct
import zlib
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from PIL import Image

from idkey.errors import IdKeyError
from idkey.formats.pictures import LARGEST_PICTURE, check_picture
from idkey.places import images_folder

SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">{}</svg>'


def raster(kind: str) -> bytes:
    out = io.BytesIO()
    Image.new("RGB", (8, 8), "brown").save(out, kind)
    return out.getvalue()


@pytest.mark.parametrize(
    "inside",
    [
        '<path d="M0 0L9 9" style="fill:#123456"/>',
        '<defs><linearGradient id="a"/></defs><rect fill="url(#a)" width="9" height="9"/>',
        '<g id="a"/><use href="#a"/>',
        "<title>A tail</title><desc>Drawn for this test</desc>",
    ],
)
def test_a_drawing_that_only_draws_is_let_in(inside: str):
    check_picture("tail.svg", SVG.format(inside).encode())


@pytest.mark.parametrize("folder", ["figures", "plates", "bodyplans"])
def test_our_own_drawings_are_let_in(folder: str):
    files = sorted((images_folder() / folder).rglob("*.svg"))
    for file in files:
        check_picture(file.name, file.read_bytes())

    assert files


@pytest.mark.parametrize(
    ("drawing", "message"),
    [
        (SVG.format("<script>alert(1)</script>"), "holds <script>, which does more than draw"),
        (SVG.format("<foreignObject/>"), "holds <foreignObject>, which does more than draw"),
        (SVG.format('<image href="http://x.example/a.png"/>'), "holds <image>"),
        (SVG.format('<path onclick="x()"/>'), "has 'onclick' that runs or fetches"),
        (SVG.format('<use href="http://x.example/a.svg#b"/>'), "has 'href' that runs or fetches"),
        (SVG.format('<use href="other.svg#b"/>'), "has 'href' that runs or fetches"),
        (
            '<svg xmlns="http://www.w3.org/2000/svg" xmlns:x="http://www.w3.org/1999/xlink">'
            '<use x:href="//x.example"/></svg>',
            "has 'href' that runs or fetches",
        ),
        (SVG.format('<rect fill="url(http://x.example)"/>'), "has 'fill' that runs or fetches"),
        (SVG.format('<rect style="fill:u\\72l(http://x)"/>'), "has 'style' that runs or fetches"),
        (SVG.format("<style>@import 'http://x.example';</style>"), "fetches something in its"),
        (SVG.format('<animate attributeName="href"/>'), "holds <animate>"),
        ('<!DOCTYPE svg [<!ENTITY a "b">]><svg>&a;</svg>', "is not plain SVG"),
        ('<!DOCTYPE svg SYSTEM "file:///etc/passwd"><svg/>', "is not plain SVG"),
        ("<svg", "is not plain SVG"),
        ("<html/>", "is not SVG"),
        ("", "is not plain SVG"),
        ('<?xml version="1.0" encoding="no-such"?><svg/>', "is not plain SVG"),
    ],
)
def test_a_drawing_that_does_more_is_refused(drawing: str, message: str):
    with pytest.raises(IdKeyError) as caught:
        check_picture("tail.svg", drawing.encode())

    assert message in caught.value.problem


@pytest.mark.parametrize(
    ("name", "kind"), [("a.png", "PNG"), ("a.JPG", "JPEG"), ("a.webp", "WEBP")]
)
def test_an_image_is_let_in(name: str, kind: str):
    check_picture(name, raster(kind))


def huge_png() -> bytes:
    """A PNG of a hundred bytes that claims 60,000 x 60,000 pixels."""
    header = struct.pack(">IIBBBBB", 60_000, 60_000, 8, 2, 0, 0, 0)
    chunk = b"IHDR" + header
    start = b"\x89PNG\r\n\x1a\n" + struct.pack(">I", 13) + chunk
    return start + struct.pack(">I", zlib.crc32(chunk)) + b"\0\0\0\0IDAT"


@pytest.mark.parametrize(
    ("name", "raw", "message"),
    [
        ("a.png", b"not a picture", "a.png is not the PNG picture its name says."),
        ("a.png", raster("JPEG"), "a.png is not the PNG picture its name says."),
        ("a.png", raster("PNG")[:40], "a.png is not the PNG picture its name says."),
        ("a.png", huge_png(), "a.png is not the PNG picture its name says."),
        ("a.png", bytes(LARGEST_PICTURE + 1), "The picture a.png is larger than 8 MB."),
        ("a.gif", raster("GIF"), "a.gif is no kind of picture."),
        ("a", b"", "a is no kind of picture."),
    ],
    ids=["text", "other kind", "cut off", "huge", "too many bytes", "gif", "no ending"],
)
def test_what_is_no_picture_is_refused(name: str, raw: bytes, message: str):
    with pytest.raises(IdKeyError) as caught:
        check_picture(name, raw)

    assert caught.value.problem == message


def test_an_image_of_too_many_pixels_is_refused():
    out = io.BytesIO()
    Image.new("1", (7000, 6000)).save(out, "PNG")

    with pytest.raises(IdKeyError, match="has 7000 x 6000 pixels"):
        check_picture("a.png", out.getvalue())


@given(raw=st.binary(max_size=200), ending=st.sampled_from([".svg", ".png", ".jpg", ".webp"]))
@example(raw=b"\xff\xfe<\0s\0v\0g\0/\0>\0", ending=".svg")
def test_no_bytes_at_all_do_more_than_be_refused(raw: bytes, ending: str):
    with suppress(IdKeyError):
        check_picture(f"a{ending}", raw)


CORPUS = sorted((Path(__file__).parent / "corpus" / "pictures").iterdir())


@pytest.mark.parametrize("file", CORPUS, ids=lambda file: file.name)
def test_the_hostile_pictures_of_the_corpus_are_refused(file: Path):
    with pytest.raises(IdKeyError):
        check_picture(file.name, file.read_bytes())
