"""Metasoma and telson, from above and from the side, along a tail that may curve."""

import cmath
import math
from collections.abc import Sequence
from dataclasses import dataclass

from idkey.figures.drawing import Group, Item, Line, Part, group
from idkey.figures.fields import hairs
from idkey.figures.geometry import (
    Outline,
    Place,
    Point,
    mirrored,
    scaled,
    smooth,
)
from idkey.figures.ink import HAIR_WEIGHT, Skin

SHARES = (0.118, 0.136, 0.15, 0.176, 0.22, 0.20)
"""Share of metasoma with telson that segments I to V and the telson take."""
TAPER = (1.0, 0.95, 0.92, 0.89, 0.83)
"""Width of segments I to V, as a share of the first."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tail:
    """The build of metasoma and telson.

    Attributes:
        length: Of metasoma and telson together, along the middle.
        width: Of the first segment.
        taper: Width of each segment, as a share of the first.
        bends: Turn before each segment and the telson, in degrees, clockwise.
    """

    length: float
    width: float
    taper: tuple[float, ...] = TAPER
    bends: tuple[float, ...] = (0, 0, 0, 0, 0, 0)


def joints(tail: Tail, start: Point = 0j, heading: float = 90) -> tuple[Point, ...]:
    """Where the segments and the telson begin, and where the telson ends: seven points.

    Args:
        tail: The tail.
        start: Where the first segment begins.
        heading: Direction of the tail, in degrees clockwise from the x axis.
    """
    points = [start]
    for share, bend in zip(SHARES, tail.bends, strict=True):
        heading += bend
        points.append(points[-1] + cmath.rect(share * tail.length, math.radians(heading)))
    return tuple(points)


def segment_outline(length: float, width: float) -> Outline:
    """One metasomal segment along x from 0 to `length`, from above or from the side."""
    right = (
        complex(0, -0.04 * length),
        complex(0.37 * width, -0.03 * length),
        complex(0.45 * width, 0.1 * length),
        complex(0.5 * width, 0.42 * length),
        complex(0.49 * width, 0.72 * length),
        complex(0.5 * width, 0.9 * length),
        complex(0.42 * width, 1.0 * length),
        complex(0, 1.0 * length),
    )
    return smooth(tuple(p * -1j for p in mirrored(right))).placed(scaled(1, 1))


def segment_drawing(
    ends: tuple[Point, Point], width: float, skin: Skin, *, keels: bool = True, name: str = ""
) -> Group:
    """One segment from joint to joint, with its dorsal keels."""
    length = abs(ends[1] - ends[0])
    place = Place((ends[1] - ends[0]) / length, 0j, ends[0])
    items: list[Item] = [
        Part(outline=segment_outline(length, width).placed(place), skin=skin, name=name)
    ]
    if keels:
        for side in (-1, 1):
            ways = ((0.12, 0.2), (0.4, 0.25), (0.75, 0.25), (0.93, 0.3))
            way = smooth([complex(x * length, side * y * width) for x, y in ways], closed=False)
            items.append(Line(outline=way.placed(place), colour=skin.detail))
    return group(*items)


def metasoma_drawing(tail: Tail, points: Sequence[Point], skin: Skin, name: str = "") -> Group:
    """Segments V to I, each covering the front of the next."""
    items = []
    for index in range(4, -1, -1):
        width = tail.width * tail.taper[index]
        label = f"{name}_{index + 1}" if name else ""
        items.append(segment_drawing((points[index], points[index + 1]), width, skin, name=label))
    return group(*items)


@dataclass(frozen=True, slots=True, kw_only=True)
class Sting:
    """The build of a telson from the side.

    Attributes:
        length: Straight length from the joint to the tip.
        depth: Greatest depth of the vesicle.
        vesicle: Share of `length` that the vesicle takes.
        tooth: Size of the tubercle below the aculeus, as a share of `depth`; 0 for none.
        hairs: Number of hairs.
        curve: How far the aculeus curls down, as a share of its own length.
    """

    length: float
    depth: float
    vesicle: float = 0.6
    tooth: float = 0.0
    hairs: int = 4
    curve: float = 0.45


def vesicle_outline(sting: Sting) -> Outline:
    """The vesicle from the side along x, the joint at 0, the underside at y > 0."""
    long, deep = sting.vesicle * sting.length, sting.depth
    points = (
        complex(0, -0.17 * deep),
        complex(0.12 * long, -0.27 * deep),
        complex(0.4 * long, -0.36 * deep),
        complex(0.7 * long, -0.32 * deep),
        complex(0.9 * long, -0.21 * deep),
        complex(1.04 * long, -0.13 * deep),
        complex(1.07 * long, 0.02 * deep),
        complex(1.0 * long, 0.14 * deep),
        complex(0.87 * long, 0.31 * deep),
        complex(0.7 * long, 0.53 * deep),
        complex(0.45 * long, 0.64 * deep),
        complex(0.2 * long, 0.52 * deep),
        complex(0.03 * long, 0.2 * deep),
    )
    return smooth(points)


def aculeus_outline(sting: Sting) -> Outline:
    """The aculeus from the side; its tip lies at `length` on the x axis, curled down."""
    root = sting.vesicle * sting.length
    reach = sting.length - root
    drop = sting.curve * reach
    thick = 0.125 * sting.depth
    points = (
        complex(root, -thick * 0.95),
        complex(root + 0.3 * reach, -thick * 0.92 + 0.03 * drop),
        complex(root + 0.66 * reach, -thick * 0.5 + 0.3 * drop),
        complex(root + 0.9 * reach, 0.62 * drop),
        complex(root + reach, 1.0 * drop),
        complex(root + 0.78 * reach, 0.66 * drop),
        complex(root + 0.52 * reach, thick * 0.42 + 0.34 * drop),
        complex(root + 0.2 * reach, thick * 0.72 + 0.12 * drop),
        complex(root, thick * 0.8),
    )
    return smooth(points, sharp=(0, 4, 8))


def sting_drawing(
    sting: Sting, skin: Skin, *, tip: Skin, name: str = "", place: Place | None = None
) -> Group:
    """The telson from the side: aculeus, tubercle, vesicle, hairs."""
    place = Place() if place is None else place
    vesicle = vesicle_outline(sting).placed(place)
    items: list[Item] = [
        Part(
            outline=aculeus_outline(sting).placed(place),
            skin=tip,
            name=f"{name}_aculeus" if name else "",
        )
    ]
    if sting.tooth > 0:
        items.append(Part(outline=_tooth(sting).placed(place), skin=skin))
    items.append(Part(outline=vesicle, skin=skin, name=f"{name}_vesicle" if name else ""))
    return group(*items, name=name)


def _tooth(sting: Sting) -> Outline:
    root = complex(0.96 * sting.vesicle * sting.length, 0.17 * sting.depth)
    size = sting.tooth * sting.depth
    points = (
        root + complex(-0.55, 0.15) * size,
        root + complex(-0.1, 0.6) * size,
        root + complex(0.42, 0.95) * size,
        root + complex(0.35, 0.3) * size,
        root + complex(0.4, -0.35) * size,
    )
    return smooth(points, sharp=(2,))


def sting_hairs(sting: Sting, place: Place, *, count: int, length: float, colour: str) -> Group:
    """Hairs of the vesicle, on its upper and under side."""
    ring = vesicle_outline(sting).placed(place)
    return group(
        *(
            Line(outline=hair, colour=colour, weight=HAIR_WEIGHT, haloed=True)
            for hair in hairs(ring, count, length=length, start=0.03, end=0.97)
        )
    )
