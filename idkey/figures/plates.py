"""Orientation plates: a drawn animal, its parts with their names, and where to click."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import yaml

from idkey.errors import IdKeyError
from idkey.figures.drawing import Dot, Group, Item, Line, Words, group
from idkey.figures.geometry import Point, Points, inside, straight
from idkey.figures.ink import MEASURE, SHADOW

Names = Mapping[str, str]
"""Name by language code, ``"en"`` always among them."""

_Loader: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
LETTER = 15.0
"""Size of the labels."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PlatePart:
    """A part on a plate.

    Attributes:
        id: Part id, as characters name it.
        names: Its names.
        areas: Rings around it and its label, in plate coordinates.
    """

    id: str
    names: Names
    areas: tuple[Points, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Plate:
    """One view of an animal with its parts.

    Attributes:
        id: Its name, such as ``"above"``.
        file: The drawing, below the image folder.
        names: What it is called.
        width: Width of the drawing's view box.
        height: Height of it.
        parts: Its parts; where areas overlap, the first one counts.
    """

    id: str
    file: str
    names: Names
    width: float
    height: float
    parts: tuple[PlatePart, ...]

    def part_at(self, x: float, y: float) -> PlatePart | None:
        """The part at a point of the view box; None beside all of them."""
        point = complex(x, y)
        for part in self.parts:
            if any(inside(ring, (point,))[0] for ring in part.areas):
                return part
        return None

    def part(self, part_id: str) -> PlatePart | None:
        """The part with that id; None when the plate does not show it."""
        return next((part for part in self.parts if part.id == part_id), None)


def read_plates(images: Path, body_plan: str) -> tuple[Plate, ...]:
    """The plates of a body plan; none when it has none.

    Raises:
        IdKeyError: The list of plates is damaged.
    """
    file = images / "plates" / f"{body_plan}.yaml"
    if not file.is_file():
        return ()
    try:
        content = yaml.load(file.read_text("utf-8"), Loader=_Loader)  # noqa: S506 - a safe one
        return tuple(_plate(entry, content["parts"]) for entry in content["plates"])
    except (yaml.YAMLError, KeyError, TypeError, ValueError) as err:
        raise IdKeyError(
            f"The list of plates {file.name} is damaged.", "Install idkey again, or draw it anew."
        ) from err


def _plate(entry: Mapping[str, object], names: Mapping[str, Names]) -> Plate:
    areas = entry["areas"]
    size = entry["size"]
    if not isinstance(areas, dict) or not isinstance(size, list):
        raise TypeError("areas are a mapping, a size is a list")
    return Plate(
        id=str(entry["id"]),
        file=str(entry["file"]),
        names=names_of(entry["names"]),
        width=float(size[0]),
        height=float(size[1]),
        parts=tuple(
            PlatePart(id=part, names=names_of(names[part]), areas=tuple(map(_ring, rings)))
            for part, rings in areas.items()
        ),
    )


def names_of(entry: object) -> Names:
    """Names by language, read from a list of plates.

    Raises:
        TypeError: It is no mapping.
    """
    if not isinstance(entry, dict):
        raise TypeError("names are a mapping")
    return {str(language): str(name) for language, name in entry.items()}


def _ring(numbers: list[float]) -> Points:
    return tuple(complex(x, y) for x, y in zip(numbers[::2], numbers[1::2], strict=True))


def plate_text(
    images: Path, plate: Plate, *, language: str = "en", ink: str = MEASURE, lines: str = SHADOW
) -> str:
    """The plate as SVG text, its labels in a language and in colours that suit the ground.

    Args:
        images: Folder of the drawings.
        plate: The plate.
        language: Language code; parts without a name in it keep the English one.
        ink: Colour of the letters, as ``#rrggbb``.
        lines: Colour of the leader lines.
    """
    text = (images / plate.file).read_text("utf-8")
    for part in plate.parts:
        english = part.names["en"]
        text = text.replace(f">{english}</text>", f">{part.names.get(language, english)}</text>")
    return text.replace(f'fill="{MEASURE}"', f'fill="{ink}"').replace(
        f'stroke="{SHADOW}"', f'stroke="{lines}"'
    )


def label(part: str, name: str, *, at: Point, to: Points, anchor: str) -> Group:
    """A name with a leader line.

    Args:
        part: Part id; the letters get the id ``label_`` with it.
        name: What it says.
        at: Where the name starts or ends, on its middle height.
        to: Points of the leader line from the name to the part.
        anchor: ``"start"``, ``"middle"`` or ``"end"``.
    """
    gap = {"start": -6 + 0j, "middle": 0.7j * LETTER, "end": 6 + 0j}[anchor]
    way = straight((at + gap, *to), closed=False)
    items: list[Item] = [
        Line(outline=way, colour=SHADOW, weight=1.4),
        Dot(at=to[-1], radius=3.0, colour=SHADOW),
        Words(
            text=name,
            at=at + 0.36j * LETTER,
            size=LETTER,
            colour=MEASURE,
            anchor=anchor,
            name=f"label_{part}",
        ),
    ]
    return group(*items)
