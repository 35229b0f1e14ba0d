"""Which pictures may come into the house: drawings that only draw, and real images."""

import io
import re
import warnings
from xml.etree.ElementTree import Element, ParseError

import defusedxml.ElementTree as SafeTree
from defusedxml.common import DefusedXmlException
from PIL import Image

from idkey.errors import IdKeyError

LARGEST_PICTURE = 8 * 2**20
"""Bytes of one picture file."""

MOST_PIXELS = 40_000_000
MOST_ELEMENTS = 50_000

_SVG = "{http://www.w3.org/2000/svg}"
_DRAWING = """
    svg g defs symbol use path rect circle ellipse line polyline polygon text tspan title desc
    linearGradient radialGradient stop clipPath mask pattern marker style
"""
_ELEMENTS = frozenset(_DRAWING.split())
_LINKS = frozenset(("href", "src", "action", "from", "to", "values", "begin"))
_REMOTE = re.compile(
    r"url\(\s*['\"]?(?!['\"]?#)|@import|expression\(|javascript:|\\", re.IGNORECASE
)
_RASTER = {".png": "PNG", ".jpg": "JPEG", ".jpeg": "JPEG", ".webp": "WEBP"}
KINDS = (".svg", *_RASTER)
"""Endings of picture files that can be checked."""


def check_picture(name: str, raw: bytes) -> None:
    """Refuse a picture that is not what its name says, or that would do more than show itself.

    Args:
        name: File name; its ending says what it should be.
        raw: Its content.

    Raises:
        IdKeyError: It is too large, no picture, or holds scripts or remote references.
    """
    ending = name[name.rfind(".") :].lower()
    if len(raw) > LARGEST_PICTURE:
        raise IdKeyError(
            f"The picture {name} is larger than {LARGEST_PICTURE // 2**20} MB.", "Make it smaller."
        )
    if ending == ".svg":
        _check_drawing(name, raw)
    elif ending in _RASTER:
        _check_raster(name, raw, _RASTER[ending])
    else:
        raise IdKeyError(f"{name} is no kind of picture.", f"Use {', '.join(KINDS)}.")


def _check_raster(name: str, raw: bytes, kind: str) -> None:
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error")  # Pillow only warns of decompression bombs
            with Image.open(io.BytesIO(raw), formats=[kind]) as image:
                width, height = image.size
                if width * height > MOST_PIXELS:
                    raise IdKeyError(
                        f"The picture {name} has {width} x {height} pixels.", "Make it smaller."
                    )
                image.verify()
    except IdKeyError:
        raise
    except (OSError, ValueError, SyntaxError, Warning, Image.DecompressionBombError) as err:
        raise IdKeyError(
            f"{name} is not the {kind} picture its name says.", "Save the picture again."
        ) from err


def _check_drawing(name: str, raw: bytes) -> None:
    try:
        root = SafeTree.fromstring(raw, forbid_dtd=True)
    except (ParseError, DefusedXmlException, ValueError, LookupError) as err:
        raise IdKeyError(
            f"The drawing {name} is not plain SVG.", "Save it again as plain SVG without entities."
        ) from err
    if root.tag not in (f"{_SVG}svg", "svg"):
        raise IdKeyError(f"The drawing {name} is not SVG.", "Save it again as SVG.")
    for number, element in enumerate(root.iter()):
        if number >= MOST_ELEMENTS:
            raise IdKeyError(
                f"The drawing {name} has more than {MOST_ELEMENTS} parts.", "Simplify it."
            )
        _check_element(name, element)


def _check_element(name: str, element: Element) -> None:
    tag = str(element.tag).removeprefix(_SVG)
    if tag not in _ELEMENTS and not tag.startswith("{"):
        raise IdKeyError(
            f"The drawing {name} holds <{tag}>, which does more than draw.", "Remove it."
        )
    if tag == "style" and _REMOTE.search(element.text or ""):
        raise IdKeyError(f"The drawing {name} fetches something in its style.", "Remove it.")
    for field, value in element.attrib.items():
        plain = field.rpartition("}")[2].lower()
        linked = plain in _LINKS and not value.strip().startswith("#")
        if plain.startswith("on") or linked or _REMOTE.search(value):
            raise IdKeyError(
                f"The drawing {name} has '{plain}' that runs or fetches something.", "Remove it."
            )
