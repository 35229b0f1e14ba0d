"""The underside: coxae, sternum, genital operculum, pectines."""

import itertools
from dataclasses import dataclass, replace

from idkey.figures.drawing import Dot, Group, Item, Line, Part, group
from idkey.figures.geometry import (
    MIRROR,
    Outline,
    Place,
    Point,
    Points,
    mapped,
    mirrored,
    moved,
    scaled,
    smooth,
    straight,
)
from idkey.figures.ink import LINE_WEIGHT, Skin
from idkey.figures.rod import rod

PENTAGON: Points = (84j, 14 + 95j, 14.5 + 125j, 120j)
TRIANGLE: Points = (84j, 6.5 + 104j, 13 + 125j, 121j)
"""Right halves of the sternum, in units of which the coxae are 84 wide on each side."""

_COXAE: tuple[Points, ...] = (
    (
        2 + 50j,
        3 + 30j,
        10 + 22j,
        22 + 34j,
        46 + 42j,
        64 + 42j,
        66 + 56j,
        44 + 60j,
        20 + 60j,
        6 + 62j,
    ),
    (3 + 66j, 22 + 63j, 46 + 62j, 72 + 60j, 75 + 78j, 48 + 83j, 22 + 84j, 4 + 82j),
    (18 + 88j, 48 + 86j, 78 + 82j, 82 + 102j, 52 + 109j, 19 + 110j),
    (19 + 113j, 52 + 112j, 84 + 106j, 91 + 124j, 88 + 142j, 58 + 140j, 34 + 136j, 19 + 130j),
)
_PALP: Points = (14 + 20j, 20 + 4j, 40 - 4j, 62 + 8j, 66 + 36j, 48 + 38j, 26 + 32j)


@dataclass(frozen=True, slots=True, kw_only=True)
class Comb:
    """The build of one pecten.

    Attributes:
        teeth: Number of teeth.
        length: From its base to its end.
        depth: Length of a tooth.
    """

    teeth: int
    length: float
    depth: float


def sternum_outline(half: Points) -> Outline:
    """A sternum from its right half, corners kept."""
    return straight(mirrored(half))


def coxae_drawing(sternum: Points, skins: tuple[Skin, Skin], *, limbs: Skin | None = None) -> Group:
    """Coxae of pedipalps and legs with the sternum between them.

    Args:
        sternum: Right half of the sternum.
        skins: Of the coxae and of the sternum.
        limbs: Skin of the stubs of legs and arms; None leaves them out.
    """
    ground = smooth(mirrored((30j, 30 + 26j, 62 + 60j, 74 + 120j, 24 + 134j, 134j)))
    items: list[Item] = []
    if limbs:
        items += [
            Part(outline=ring.placed(side), skin=limbs)
            for side in (Place(), MIRROR)
            for ring in _stubs()
        ]
    items.append(Part(outline=ground, skin=replace(skins[0], fill=skins[0].shade), shaded=False))
    for side in (Place(), MIRROR):
        items.append(Part(outline=smooth(_PALP).placed(side), skin=skins[0]))
        for index, points in enumerate(_COXAE):
            ring = _closing(points, sternum) if index > 1 else points
            items.append(Part(outline=smooth(ring).placed(side), skin=skins[0]))
    items.append(Part(outline=sternum_outline(sternum), skin=skins[1], name="sternum"))
    return group(*items)


def _closing(points: Points, sternum: Points) -> Points:
    """Coxa III or IV with its inner edge drawn up to the sternum."""

    def near(point: Point) -> Point:
        if point.real > 20:
            return point
        return complex(max(_half_width(sternum, point.imag) + 2.5, 3), point.imag)

    return mapped(points, near)


def _half_width(sternum: Points, height: float) -> float:
    for upper, lower in itertools.pairwise(sternum):
        if upper.imag <= height <= lower.imag:
            share = (height - upper.imag) / (lower.imag - upper.imag)
            return upper.real + share * (lower.real - upper.real)
    return sternum[-2].real if height > sternum[-2].imag else 0.0


def _stubs() -> list[Outline]:
    ends = (
        (58 + 14j, 84 - 8j, 26),
        (62 + 49j, 96 + 38j, 15),
        (70 + 70j, 106 + 66j, 16),
        (78 + 93j, 112 + 96j, 17),
        (86 + 128j, 114 + 142j, 19),
    )
    return [rod(start, end, width, width * 0.9, belly=0.05) for start, end, width in ends]


def operculum_drawing(skin: Skin) -> Group:
    """The two valves of the genital operculum."""
    half = (1 + 131j, 12 + 129j, 24 + 133j, 23 + 142j, 9 + 148j, 1 + 147j)
    return group(*(Part(outline=smooth(half).placed(s), skin=skin) for s in (Place(), MIRROR)))


def comb_drawing(comb: Comb, skin: Skin, teeth: Skin, *, place: Place, name: str = "") -> Group:
    """One pecten: base at 0, running along x and bending down, its teeth on y > 0.

    Args:
        comb: Its build.
        skin: Of its lamellae.
        teeth: Of its teeth.
        place: Where it goes.
        name: Id of the teeth.
    """
    spine = [spine_at(comb, t / 24) for t in range(25)]
    rail = comb.depth * 0.5
    step = 1 / comb.teeth
    fingers: list[Item] = []
    for index in range(comb.teeth):
        at = 0.05 + 0.95 * (index + 0.5) * step
        ring = _tooth(comb, at, rail).placed(place)
        fingers.append(Part(outline=ring, skin=teeth, weight=LINE_WEIGHT, shaded=comb.depth > 14))
    upper = [p for p, _ in spine]
    lower = [p + n * rail for p, n in reversed(spine)]
    blade = smooth((*upper[::3], *lower[::3]), sharp=(0, 8, 9, 17)).placed(place)
    beads: list[Item] = [
        Dot(
            at=place(_bead(comb, 0.05 + 0.95 * (index + 1) * step, rail)),
            radius=comb.depth * 0.09,
            colour=skin.detail,
        )
        for index in range(comb.teeth - 1)
    ]
    seam = smooth([p + n * rail * 0.52 for p, n in spine[::3]], closed=False).placed(place)
    seams = [
        smooth((spine[k][0], spine[k][0] + spine[k][1] * rail * 0.5), closed=False).placed(place)
        for k in (9, 17)
    ]
    return group(
        group(*fingers, name=name),
        Part(outline=blade, skin=skin, shaded=False),
        *(Line(outline=way, colour=skin.detail) for way in (seam, *seams)),
        *beads,
    )


def spine_at(comb: Comb, share: float) -> tuple[Point, Point]:
    """A point on the front edge of the comb and the direction its teeth point."""
    start, bend, end = 0j, comb.length * (0.55 + 0.0j), comb.length * (0.93 + 0.36j)
    u = 1 - share
    at = u * u * start + 2 * u * share * bend + share * share * end
    way = 2 * u * (bend - start) + 2 * share * (end - bend)
    return at, way / abs(way) * 1j


def _tooth(comb: Comb, share: float, rail: float) -> Outline:
    at, down = spine_at(comb, share)
    along = -1j * down
    wide = comb.length * 0.95 / comb.teeth * 0.46
    long = comb.depth * (1 - 0.25 * share)
    root = at + down * rail * 0.7
    points = (
        root - along * wide,
        root - along * wide * 0.95 + down * long * 0.55,
        root - along * wide * 0.5 + down * long * 0.98,
        root + along * wide * 0.5 + down * long * 0.98,
        root + along * wide * 0.95 + down * long * 0.55,
        root + along * wide,
    )
    return smooth(points, sharp=(0, 5))


def _bead(comb: Comb, share: float, rail: float) -> Point:
    at, down = spine_at(comb, share)
    return at + down * rail * 0.8


def sized(share: float, at: Point) -> Place:
    """The underside drawn `share` as large with its middle line through `at`."""
    return moved(at).after(scaled(share))
