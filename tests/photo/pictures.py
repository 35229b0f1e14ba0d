"""Pictures for tests, drawn here; nothing is taken from a camera."""

import io
from pathlib import Path

from PIL import Image, ImageDraw, TiffImagePlugin


def card(width: int = 240, height: int = 160) -> Image.Image:
    """White, with a red corner at the upper left and a blue bar along the bottom."""
    image = Image.new("RGB", (width, height), "white")
    draw = ImageDraw.Draw(image)
    draw.rectangle((0, 0, width // 4, height // 4), fill=(200, 30, 30))
    draw.rectangle((0, height - height // 8, width, height), fill=(30, 30, 200))
    return image


def saved(image: Image.Image, kind: str = "JPEG", **options: object) -> bytes:
    """The picture as a file."""
    stream = io.BytesIO()
    image.save(stream, kind, **options)
    return stream.getvalue()


def with_place_and_time(image: Image.Image, orientation: int = 1) -> bytes:
    """A JPEG as phones write it: place, time, camera, owner, a comment, an orientation."""
    exif = Image.Exif()
    exif[0x0112] = orientation
    exif[0x010F] = "Lantern Street Camera Works"
    exif[0x0132] = "2025:11:04 09:00:00"
    exif[0xA430] = "Somebody"
    rational = TiffImagePlugin.IFDRational
    exif.get_ifd(0x8825).update(
        {1: "N", 2: (rational(48), rational(12), rational(5)), 3: "E", 4: (rational(16), 0, 0)}
    )
    return saved(image, "JPEG", exif=exif, comment=b"taken at home", quality=95)


def put(folder: Path, name: str, content: bytes) -> Path:
    """A file with that content."""
    file = folder / name
    file.write_bytes(content)
    return file
