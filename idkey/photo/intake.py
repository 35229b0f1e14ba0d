"""Takes a picture in: checks the file, turns it upright, leaves only the picture itself."""

import hashlib
import io
import struct
import warnings
import zlib
from dataclasses import dataclass
from pathlib import Path

from PIL import Image, ImageCms, ImageOps, UnidentifiedImageError

from idkey.photo.faults import Refused

try:
    import pillow_heif
except ImportError:  # an optional extra
    HEIC = False
else:
    pillow_heif.register_heif_opener()
    HEIC = True

FORMATS = ("JPEG", "PNG", "WEBP", "HEIF") if HEIC else ("JPEG", "PNG", "WEBP")
"""What is read."""

QUALITY = 95
"""JPEG quality of what is kept; with full colour resolution, since colours are measured."""

_KINDS = "JPEG, PNG, WebP or HEIC"
_SAVE_AS = "If that does not help, open it in a picture program and save it as JPEG or PNG."
_BROKEN = (
    OSError,  # Pillow's own errors are of this kind
    ValueError,
    SyntaxError,
    TypeError,
    KeyError,
    IndexError,
    AttributeError,
    ArithmeticError,
    EOFError,
    MemoryError,
    RuntimeError,
    struct.error,
    zlib.error,
)
"""What decoders raise on files that are not what they say."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """How large a picture may be.

    Attributes:
        size_bytes: Of the file.
        pixels: Width times height; the largest ordinary phone pictures have 50 million.
        frames: Pictures in one file; further ones are hidden companions and are left out.
        side: Shortest side that still shows something, in pixels.
    """

    size_bytes: int = 60_000_000
    pixels: int = 80_000_000
    frames: int = 32
    side: int = 48


LIMITS = Limits()


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """What is known of a picture that is kept.

    Attributes:
        id: SHA-256 of the kept bytes, as 64 hexadecimal digits.
        width: In pixels, upright.
        height: In pixels, upright.
        media_type: ``"image/jpeg"`` or ``"image/png"``.
        original: SHA-256 of the file as it came, before anything was stripped.
    """

    id: str
    width: int
    height: int
    media_type: str
    original: str


@dataclass(frozen=True, slots=True)
class Incoming:
    """A picture ready to be kept.

    Attributes:
        picture: What is known of it.
        content: The bytes to keep: upright, sRGB, without any metadata.
        image: The same, decoded; mode RGB.
    """

    picture: Picture
    content: bytes
    image: Image.Image


def read_file(path: Path, limits: Limits = LIMITS) -> Incoming:
    """Take in a picture file; the file stays as it is.

    Raises:
        Refused: It is missing, no file, too large, or not a picture that can be used.
    """
    try:
        if not path.is_file():
            raise Refused(f"{path.name or path} is not a file.", "Choose a picture file.")
        with path.open("rb") as stream:
            source = stream.read(limits.size_bytes + 1)
    except OSError as err:
        raise Refused(
            f"{path.name} cannot be read: {err.strerror or 'unknown reason'}.",
            "Check that it still exists and that you may open it.",
        ) from err
    return read_bytes(source, path.name, limits)


def read_bytes(source: bytes, name: str = "The picture", limits: Limits = LIMITS) -> Incoming:
    """Take in a picture.

    Args:
        source: The file as it came.
        name: What to call it in messages.
        limits: How large it may be.

    Returns:
        The picture upright and in sRGB. Place, time, camera, profiles, comments, hidden
        companions and whatever follows the picture in the file are left out.

    Raises:
        Refused: It is too large, no picture of a known kind, damaged or an animation.
    """
    if len(source) > limits.size_bytes:
        raise Refused(
            f"{name} is larger than {limits.size_bytes // 1_000_000} MB.",
            "Save it smaller, or cut it to the animal, and add it again.",
        )
    image, lossless = _decoded(source, name, limits)
    content = _encoded(image, lossless=lossless)
    picture = Picture(
        id=hashlib.sha256(content).hexdigest(),
        width=image.width,
        height=image.height,
        media_type="image/png" if lossless else "image/jpeg",
        original=hashlib.sha256(source).hexdigest(),
    )
    return Incoming(picture, content, image)


def _decoded(source: bytes, name: str, limits: Limits) -> tuple[Image.Image, bool]:
    """The picture, and whether it came without loss."""
    try:
        with warnings.catch_warnings():
            # Pillow only warns where we refuse; sizes are checked before any pixel is read.
            warnings.simplefilter("ignore")
            with Image.open(io.BytesIO(source), formats=FORMATS) as opened:
                _check(opened, name, limits)
                return _in_srgb(ImageOps.exif_transpose(opened)), opened.format == "PNG"
    except Refused:
        raise
    except Image.DecompressionBombError as err:
        raise _too_many_pixels(name, limits) from err
    except UnidentifiedImageError as err:
        raise _unknown(source, name) from err
    except _BROKEN as err:
        raise Refused(
            f"{name} is damaged or was cut short while it was copied.",
            f"Copy it again from the phone or camera. {_SAVE_AS}",
        ) from err


def _check(image: Image.Image, name: str, limits: Limits) -> None:
    width, height = image.size
    if width * height > limits.pixels:
        raise _too_many_pixels(name, limits)
    if min(width, height) < limits.side:
        raise Refused(
            f"{name} has only {width} × {height} pixels.",
            f"Take a picture with at least {limits.side} pixels on its short side.",
        )
    frames = int(getattr(image, "n_frames", 1))
    moving = image.format in ("PNG", "WEBP") and frames > 1
    if moving or frames > limits.frames:
        raise Refused(
            f"{name} holds {frames} pictures, like a film.",
            "Save the one picture that shows the animal best, and add that.",
        )


def _too_many_pixels(name: str, limits: Limits) -> Refused:
    return Refused(
        f"{name} has more than {limits.pixels // 1_000_000} million pixels.",
        "Save it smaller, or cut it to the animal, and add it again.",
    )


def _unknown(source: bytes, name: str) -> Refused:
    if source[4:8] == b"ftyp" and source[8:12] in (b"heic", b"heix", b"mif1", b"msf1", b"hevc"):
        return Refused(
            f"{name} is a HEIC picture, and the part that reads those is not installed.",
            "Install it with: pip install 'idkey[heic]', or let the phone save pictures as JPEG.",
        )
    what = "is empty" if not source else f"is not a picture in {_KINDS}"
    return Refused(f"{name} {what}.", f"Choose a picture, or copy it again. {_SAVE_AS}")


def _in_srgb(image: Image.Image) -> Image.Image:
    """The picture as 8-bit sRGB on white, without its metadata."""
    profile = image.info.get("icc_profile")
    if image.mode.startswith("I"):  # 16 bits a pixel
        image = image.point(lambda value: value / 256).convert("L")
    if image.mode in ("P", "PA", "LA", "La", "RGBa") or "transparency" in image.info:
        image = image.convert("RGBA")
    if image.mode == "RGBA":
        ground = Image.new("RGBA", image.size, "white")
        image = Image.alpha_composite(ground, image).convert("RGB")
    if profile and image.mode in ("RGB", "CMYK", "L"):
        image = _converted(image, profile)
    return image if image.mode == "RGB" else image.convert("RGB")


def _converted(image: Image.Image, profile: bytes) -> Image.Image:
    """The picture in sRGB; as it is when its profile cannot be read."""
    try:
        source = ImageCms.ImageCmsProfile(io.BytesIO(profile))
        target = ImageCms.createProfile("sRGB")
        turned = ImageCms.profileToProfile(image, source, target, outputMode="RGB")
    except (ImageCms.PyCMSError, OSError, ValueError, TypeError):
        return image
    return image if turned is None else turned


def _encoded(image: Image.Image, *, lossless: bool) -> bytes:
    bare = Image.frombytes("RGB", image.size, image.tobytes())
    stream = io.BytesIO()
    if lossless:
        bare.save(stream, "PNG", compress_level=4)
    else:
        bare.save(stream, "JPEG", quality=QUALITY, subsampling=0)
    return stream.getvalue()
