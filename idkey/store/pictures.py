"""Pictures of findings, without the place where they were taken."""

import io
import struct
import zlib
from collections.abc import Iterator
from dataclasses import dataclass

from PIL import Image
from sqlalchemy import insert, select

from idkey.errors import IdKeyError
from idkey.store.book import Store
from idkey.store.codec import sha256, storable
from idkey.store.faults import Missing
from idkey.store.schema import pictures

_ORIENTATION = 0x0112  # tag of the Exif standard
_JPEG_KEPT = {0xE0, 0xE2, 0xEE}  # JFIF, colour profile, colour transform
_PNG_KEPT = {b"tRNS", b"gAMA", b"cHRM", b"sRGB", b"iCCP", b"sBIT", b"bKGD", b"pHYs", b"cICP"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """A picture as it is kept.

    Attributes:
        id: SHA-256 of `content`; findings name it, so that the chain protects the picture too.
        media_type: ``"image/jpeg"`` or ``"image/png"``.
        content: The file, without place, time, camera, thumbnails and remarks.
        note: Free text.
    """

    id: str
    media_type: str
    content: bytes
    note: str = ""


def put_picture(store: Store, content: bytes, note: str = "") -> str:
    """Keep a picture and return its id; the same picture again has the same id.

    Args:
        store: The book.
        content: A JPEG or PNG file, kept to the pixel; other formats become PNG.
        note: Free text.

    Raises:
        IdKeyError: It is no picture this program can read.
    """
    bare, media_type = without_place(content)
    picture_id = sha256(bare)
    with store.database.writes() as connection:
        known = select(pictures.c.id).where(pictures.c.id == picture_id)
        if connection.execute(known).first() is None:
            row = {"id": picture_id, "media_type": media_type, "content": bare}
            connection.execute(insert(pictures).values(**row, note=storable(note)))
    return picture_id


def picture(store: Store, picture_id: str) -> Picture:
    """The picture with that id.

    Raises:
        Missing: There is none.
        IdKeyError: It is not what was kept.
    """
    with store.database.reads() as connection:
        wanted = select(pictures).where(pictures.c.id == picture_id)
        row = connection.execute(wanted).mappings().first()
    if row is None:
        raise Missing(
            f"The record book has no picture {picture_id[:12]}.",
            "It may lie in another book; the finding itself is unharmed.",
        )
    if sha256(row["content"]) != picture_id:
        raise IdKeyError(
            f"Picture {picture_id[:12]} was changed after it was kept.",
            "Take it from a backup.",
        )
    return Picture(**{**row, "content": bytes(row["content"])})


def without_place(content: bytes) -> tuple[bytes, str]:
    """The picture without anything but what is needed to show it, and its media type.

    JPEG and PNG lose no quality; how a JPEG is turned is kept.

    Raises:
        IdKeyError: It is no picture this program can read.
    """
    try:
        with Image.open(io.BytesIO(content)) as opened:
            kind, turned = opened.format, opened.getexif().get(_ORIENTATION, 1)
            if kind in ("JPEG", "MPO"):
                return b"".join(_jpeg_parts(content, turned)), "image/jpeg"
            if kind == "PNG":
                return b"".join(_png_parts(content)), "image/png"
            png = io.BytesIO()
            opened.convert("RGBA").save(png, "PNG")
            return png.getvalue(), "image/png"
    except (OSError, ValueError, struct.error, IndexError, Image.DecompressionBombError) as err:
        raise IdKeyError(
            "The file is no picture this program can read.", "Save it as JPEG or PNG and add that."
        ) from err


def _jpeg_parts(content: bytes, turned: int) -> Iterator[bytes]:
    """The segments of a JPEG that show something (ITU-T T.81, annex B), up to its end."""
    yield content[:2]
    if turned in range(2, 9):
        yield _turned(turned)
    at = 2
    while content[at + 1] != 0xD9:
        marker, (size,) = content[at + 1], struct.unpack_from(">H", content, at + 2)
        end = at + 2 + size
        if marker == 0xDA:
            end = _scan_end(content, end)
        if not (0xE0 <= marker <= 0xEF or marker == 0xFE) or marker in _JPEG_KEPT:
            yield content[at:end]
        at = end
    yield b"\xff\xd9"


def _scan_end(content: bytes, start: int) -> int:
    """Where the compressed pixels that begin at `start` end: at the next marker proper."""
    at = content.index(b"\xff", start)
    while content[at + 1] in (0x00, 0xFF) or 0xD0 <= content[at + 1] <= 0xD7:
        at = content.index(b"\xff", at + (1 if content[at + 1] == 0xFF else 2))
    return at


def _turned(orientation: int) -> bytes:
    tiff = b"II*\0" + struct.pack("<IHHHIHHI", 8, 1, _ORIENTATION, 3, 1, orientation, 0, 0)
    return b"\xff\xe1" + struct.pack(">H", 2 + 6 + len(tiff)) + b"Exif\0\0" + tiff


def _png_parts(content: bytes) -> Iterator[bytes]:
    """The chunks of a PNG that show something (PNG specification, section 11), up to its end."""
    yield content[:8]
    at, name = 8, b""
    while name != b"IEND":
        (size,) = struct.unpack_from(">I", content, at)
        name, end = content[at + 4 : at + 8], at + 12 + size
        if zlib.crc32(content[at + 4 : end - 4]) != struct.unpack_from(">I", content, end - 4)[0]:
            raise ValueError("a chunk is damaged")
        if not name[0] & 0x20 or name in _PNG_KEPT:
            yield content[at:end]
        at = end
