"""Carapace and tergites from above; the front edge of the carapace at 0, the tail below."""

from dataclasses import dataclass

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group
from idkey.figures.geometry import (
    MIRROR,
    Outline,
    Place,
    Point,
    bounds,
    ellipse,
    mirrored,
    moved,
    scaled,
    smooth,
)
from idkey.figures.ink import EDGE, LINE_WEIGHT, Skin, lightened


@dataclass(frozen=True, slots=True, kw_only=True)
class Shield:
    """The build of a carapace.

    Attributes:
        length: From the middle of the front edge to the hind edge.
        width: Greatest width, at the hind corners.
        notch: Depth of the notch in the front edge, as a share of the length.
        eyes: Where the median eyes lie, as a share of the length from the front.
        front: Width of the front edge, as a share of `width`.
    """

    length: float
    width: float
    notch: float = 0.1
    eyes: float = 0.42
    front: float = 0.62


def shield_outline(shield: Shield) -> Outline:
    """The outline of the carapace; its length is measured on the middle line."""
    n, f = shield.notch, shield.front / 2
    half = (
        complex(0, 0),
        complex(f * 0.22, -n * 0.62),
        complex(f * 0.58, -n * 0.98),
        complex(f * 0.9, -n * 0.72 + 0.02),
        complex(f + 0.035, 0.1),
        complex(f + 0.085, 0.36),
        complex(0.475, 0.68),
        complex(0.5, 0.92),
        complex(0.465, 0.985),
        complex(0.25, 1.0),
        complex(0, 1.0),
    )
    ring = smooth(mirrored(half), sharp=(0,) if n > 0.04 else ())
    return ring.placed(scaled(shield.width, shield.length))


def shield_drawing(shield: Shield, skin: Skin, *, gloss: float = 1, name: str = "") -> Group:
    """The carapace with eyes and furrows."""
    place = scaled(shield.width, shield.length)
    eye = shield.eyes
    furrows = (
        (0.012j + 0, complex(0, eye - 0.1)),
        (complex(0, eye + 0.09), complex(0, 0.97)),
    )
    items: list[Item] = [
        Part(outline=shield_outline(shield), skin=skin, name=name, gloss=gloss),
        *(
            Line(outline=smooth(way, closed=False).placed(place), colour=skin.detail)
            for way in furrows
        ),
    ]
    for side in (scaled(1), MIRROR):
        items += _half_marks(shield, skin, place.after(side))
    items.append(_ocular(shield, skin))
    return group(*items)


def _half_marks(shield: Shield, skin: Skin, place: Place) -> list[Item]:
    eye = shield.eyes
    ways = (
        (complex(0.03, eye - 0.1), complex(0.1, eye - 0.2), complex(0.13, 0.1)),
        (complex(0.02, 0.93), complex(0.14, 0.8), complex(0.3, 0.74), complex(0.38, 0.62)),
    )
    lines: list[Item] = [
        Line(outline=smooth(way, closed=False).placed(place), colour=skin.detail) for way in ways
    ]
    size = 0.019 * shield.length
    for index in range(3):
        at = complex(shield.front / 2 + 0.012 + 0.006 * index, 0.085 + index * 0.052)
        lines.append(Patch(outline=ellipse(place(at), size), colour=EDGE))
        lines.append(Patch(outline=ellipse(place(at) - size * 0.3, size * 0.3), colour=skin.light))
    return lines


def _ocular(shield: Shield, skin: Skin) -> Group:
    size = shield.length * 0.07
    at = complex(0, shield.eyes * shield.length)
    mound = ellipse(at, size * 0.95, size * 1.3)
    items: list[Item] = [Part(outline=mound, skin=skin, weight=LINE_WEIGHT)]
    for side in (-1, 1):
        eye = at + side * size * 0.62
        items.append(Patch(outline=ellipse(eye, size * 0.42, size * 0.5), colour=EDGE))
        glint = ellipse(eye - size * (0.1 + 0.16j), size * 0.13)
        items.append(Patch(outline=glint, colour=skin.light))
    return group(*items)


LENGTHS = (0.105, 0.118, 0.135, 0.15, 0.158, 0.158, 0.176)
"""Share of the mesosoma that each tergite takes, first to seventh."""
WIDTHS = (0.90, 0.985, 1.0, 1.0, 0.99, 0.955, 0.88)
"""Width of each tergite at its hind edge, as a share of the greatest."""


def tergite_outlines(length: float, width: float, tail: float) -> tuple[Outline, ...]:
    """The seven tergites, first at y = 0, each covering the front of the next.

    Args:
        length: Of the mesosoma.
        width: Greatest width.
        tail: Width of the first metasomal segment, which the seventh tergite narrows to.
    """
    found = []
    top = 0.0
    for index, (share, wide) in enumerate(zip(LENGTHS, WIDTHS, strict=True)):
        tall = share * length
        half = wide * width / 2
        ring = _last(half, tall, tail) if index == 6 else _tergite(half, tall)
        found.append(ring.placed(moved(complex(0, top))))
        top += tall
    return tuple(found)


def _tergite(half: float, tall: float) -> Outline:
    right = (
        complex(0, -tall * 0.25),
        complex(half * 0.8, -tall * 0.25),
        complex(half * 0.965, tall * 0.12),
        complex(half, tall * 0.62),
        complex(half * 0.96, tall * 0.94),
        complex(half * 0.72, tall * 1.02),
        complex(0, tall * 1.06),
    )
    return smooth(mirrored(right))


def _last(half: float, tall: float, tail: float) -> Outline:
    right = (
        complex(0, -tall * 0.25),
        complex(half * 0.82, -tall * 0.2),
        complex(half * 0.98, tall * 0.18),
        complex(half * 0.9, tall * 0.5),
        complex(max(tail * 0.56, half * 0.55), tall * 0.92),
        complex(tail * 0.5, tall * 1.03),
        complex(0, tall * 1.05),
    )
    return smooth(mirrored(right))


def tergites_drawing(
    outlines: tuple[Outline, ...], skin: Skin, *, keels: int = 0, gloss: float = 1, name: str = ""
) -> Group:
    """The tergites, hindmost first, with `keels` keels each: 0, 1 or 3."""
    items: list[Item] = []
    for index in range(len(outlines) - 1, -1, -1):
        label = f"{name}_{index + 1}" if name else ""
        items.append(Part(outline=outlines[index], skin=skin, name=label, gloss=gloss))
        if index < 6:
            items += _keels(outlines[index], skin, keels)
    return group(*items)


def _keels(outline: Outline, skin: Skin, keels: int) -> list[Item]:
    low, high = bounds(outline.flat(4))
    tall, wide = high.imag - low.imag, high.real - low.real
    offsets = {0: (), 1: (0.0,), 3: (-0.22, 0.0, 0.22)}[keels]
    weight = wide * (0.02 if keels == 1 else 0.03)
    items: list[Item] = []
    for offset in offsets:
        x = offset * wide
        reach = 0.62 if offset == 0 and keels == 3 else 0.5
        ends = (
            complex(x * 0.97, high.imag - tall * (0.1 + reach)),
            complex(x, high.imag - tall * 0.12),
        )
        items += _ridge(ends, skin, weight)
    return items


def _ridge(ends: tuple[Point, Point], skin: Skin, weight: float) -> list[Item]:
    """A raised line with its shadow; only a line where the drawing is small."""
    way = smooth(ends, closed=False)
    if weight < LINE_WEIGHT:
        return [Line(outline=way, colour=skin.detail)]
    shadow = smooth([p + weight * (0.5 + 0.2j) for p in ends], closed=False)
    return [
        Line(outline=shadow, colour=lightened(skin.fill, -34), weight=weight * 1.2),
        Line(outline=way, colour=skin.light, weight=weight),
    ]
