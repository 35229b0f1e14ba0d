"""The abdomen of a tarantula from above: leaf, long hairs, spinnerets."""

import math
from dataclasses import dataclass

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group
from idkey.figures.fields import hair, hairs, scatter
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
    straight,
)
from idkey.figures.ink import HAIR_WEIGHT, Skin


@dataclass(frozen=True, slots=True, kw_only=True)
class Belly:
    """How an abdomen is coloured from above.

    Attributes:
        skin: Its ground.
        hair: Colour of the long hairs; empty for none.
        curl: How strongly they wave.
        folio: ``"full"``, ``"half"`` or empty.
        folio_colours: Of the leaf and of the spots that edge it.
    """

    skin: Skin
    hair: str = ""
    curl: float = 0.0
    folio: str = ""
    folio_colours: tuple[str, str] = ("#b9b4a6", "#2a2725")


def abdomen_outline(size: float, length: float) -> Outline:
    """An abdomen `length` carapace lengths long, its front at 0."""
    half = (
        0.0j,
        0.11 + 0.0j,
        0.28 + 0.075j,
        0.44 + 0.27j,
        0.52 + 0.55j,
        0.465 + 0.8j,
        0.27 + 0.96j,
        1.0j,
    )
    return smooth(mirrored(half)).placed(scaled(size, size * length))


def abdomen_drawing(size: float, length: float, belly: Belly, *, name: str = "") -> Group:
    """An abdomen with its leaf and its long hairs."""
    outline = abdomen_outline(size, length)
    items: list[Item] = [Part(outline=outline, skin=belly.skin, name=name)]
    items += _folio(size, length, belly)
    if belly.hair:
        items += _long_hairs(outline, size, belly)
    return group(*items)


def _long_hairs(outline: Outline, size: float, belly: Belly) -> list[Item]:
    ring = outline.flat(6)
    low, high = bounds(ring)
    middle = (low + high) / 2
    count = 34 if size > 50 else 22
    long = size * 0.17
    roots = list(scatter(ring, size * 0.16, margin=size * 0.06))
    weight = HAIR_WEIGHT if size < 60 else 1.2
    found: list[Item] = []
    for index, root in enumerate(roots):
        course = (root - middle) / (abs(root - middle) or 1) * 0.5 + 0.8j
        way = hair(root, course / abs(course) * long, belly.curl if index % 2 else -belly.curl)
        found.append(Line(outline=way, colour=belly.hair, weight=weight))
    for way in hairs(outline, count, length=long, start=0.1, end=0.9):
        root, tip = way.start, way.pieces[-1][2]
        bent = hair(root, tip - root + 0.3j * long, belly.curl)
        found.append(Line(outline=bent, colour=belly.hair, weight=weight, haloed=True))
    return found


def _folio(size: float, length: float, belly: Belly) -> list[Item]:
    if not belly.folio:
        return []
    leaf, dark = belly.folio_colours
    end = 0.93 if belly.folio == "full" else 0.52
    lobes = 6 if belly.folio == "full" else 3
    place = scaled(size, size * length)
    edge = []
    for index in range(lobes * 2 + 1):
        y = 0.06 + (end - 0.06) * index / (lobes * 2)
        swell = 0.2 + 0.1 * math.sin(math.pi * min(1.0, (y - 0.02) / 0.94))
        taper = 1.0 if index < lobes * 2 else 0.25
        edge.append(complex((swell + (0.06 if index % 2 else -0.03)) * taper, y))
    ring = smooth(mirrored((complex(0, 0.03), *edge, complex(0, end + 0.01))))
    items: list[Item] = [
        Patch(outline=_shifted_wide(ring, 1.22).placed(place), colour=dark),
        Patch(outline=ring.placed(place), colour=leaf),
    ]
    stripe = smooth(
        mirrored(
            (
                0.08j,
                0.05 + 0.14j,
                0.035 + end * 0.5j,
                0.02 + (end - 0.05) * 1j,
                complex(0, end - 0.03),
            )
        )
    )
    items.append(Patch(outline=stripe.placed(place), colour=dark))
    if belly.folio == "half":
        items += [Patch(outline=spot.placed(place), colour=leaf) for spot in _linked_spots()]
    return items


def _linked_spots() -> list[Outline]:
    """Three spots on a thread, behind a leaf that ends half-way."""
    heights = (0.62, 0.735, 0.845)
    spots = [ellipse(complex(0, y), 0.125 - 0.02 * i, 0.042) for i, y in enumerate(heights)]
    thread = straight((0.6j - 0.018, 0.6j + 0.018, 0.018 + 0.85j, -0.018 + 0.85j))
    return [thread, *spots]


def _shifted_wide(outline: Outline, share: float) -> Outline:
    return outline.placed(scaled(share, 1.0))


def spinnerets_drawing(size: float, at: Point, ground: Skin) -> Group:
    """The two long spinnerets at the end of the abdomen."""
    half = (0.02 - 0.04j, 0.1 - 0.02j, 0.12 + 0.1j, 0.09 + 0.2j, 0.04 + 0.1j)
    outline = smooth([p * size for p in half])
    return group(
        *(
            Part(outline=outline.placed(moved(at).after(side)), skin=ground)
            for side in (Place(), MIRROR)
        )
    )
