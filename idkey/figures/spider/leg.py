"""Legs and palps of a tarantula: segments with bands, flames and hairs."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from idkey.figures.drawing import Group, Item, Line, Part, Patch, group
from idkey.figures.fields import fringe
from idkey.figures.geometry import Outline, Place, Point, smooth
from idkey.figures.ink import HAIR_WEIGHT, Skin
from idkey.figures.rod import profile, rod

SEGMENTS = ("femur", "patella", "tibia", "metatarsus", "tarsus")
"""Segments of a leg that show from above, from the body outwards."""
PALP_SEGMENTS = ("femur", "patella", "tibia", "tarsus")
BELLY = 0.03
"""How much wider a segment is in its middle."""
WIDTHS = (1.0, 0.98, 0.86, 0.68, 0.62)
"""Width of each segment, as a share of the femur's."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """A patch of colour across a segment.

    Attributes:
        start: Where it begins, as a share of the segment from the body outwards.
        end: Where it ends.
        colour: As ``#rrggbb``.
        shape: ``"band"``, ``"flame"``, ``"wedge"``, ``"spot"`` or ``"broken"``.
    """

    start: float
    end: float
    colour: str
    shape: str = "band"


@dataclass(frozen=True, slots=True, kw_only=True)
class Pelt:
    """How one segment looks.

    Attributes:
        skin: Its ground.
        marks: Patches of colour on it, in painting order.
        hair: Colour of its hairs; empty for none.
        hairs: How many on each side.
        length: Length of the longest, as a share of the femur's width.
    """

    skin: Skin
    marks: tuple[Mark, ...] = ()
    hair: str = ""
    hairs: int = 9
    length: float = 0.32


Pelts = Mapping[str, Pelt]
"""Pelts by segment name."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Limb:
    """The course of a leg.

    Attributes:
        joints: Points from the body to the tip.
        width: Width of the femur.
        names: Segment names, from the body outwards.
        widths: Width of each segment, as a share of `width`.
    """

    joints: tuple[Point, ...]
    width: float
    names: tuple[str, ...] = SEGMENTS
    widths: tuple[float, ...] = field(default=WIDTHS)


def limb_drawing(limb: Limb, pelts: Pelts, *, name: str = "", shown: str = "") -> Group:
    """A leg, its tip first in painting order.

    Args:
        limb: Its course.
        pelts: How each segment looks.
        name: Id of the whole.
        shown: Segment that gets the id ``subject``; empty for none.
    """
    items: list[Item] = []
    for index in range(len(limb.joints) - 2, -1, -1):
        segment = limb.names[index]
        ends = (limb.joints[index], limb.joints[index + 1])
        widths = _widths(limb, index)
        drawn = segment_drawing(ends, widths, pelts[segment], scale=limb.width)
        items.append(Group(drawn.items, "subject" if segment == shown else ""))
    return group(*items, name=name)


def _widths(limb: Limb, index: int) -> tuple[float, float]:
    here = limb.widths[min(index, len(limb.widths) - 1)]
    after = limb.widths[min(index + 1, len(limb.widths) - 1)]
    return limb.width * here, limb.width * (here + after) / 2


def segment_drawing(
    ends: tuple[Point, Point], widths: tuple[float, float], pelt: Pelt, *, scale: float
) -> Group:
    """One segment with its marks and hairs.

    Args:
        ends: Near and far joint.
        widths: Width near either joint.
        pelt: How it looks.
        scale: Width of the femur, which sets the length of the hairs.
    """
    outline = rod(*ends, *widths, belly=BELLY)
    items: list[Item] = [Part(outline=outline, skin=pelt.skin)]
    items += [
        Patch(outline=shape, colour=mark.colour)
        for mark in pelt.marks
        for shape in mark_outlines(ends, widths, mark)
    ]
    if pelt.hair:
        items += segment_hairs(ends, widths, pelt, scale=scale)
    return group(*items)


def segment_hairs(
    ends: tuple[Point, Point], widths: tuple[float, float], pelt: Pelt, *, scale: float
) -> list[Item]:
    """Hairs along both edges of a segment."""
    length = abs(ends[1] - ends[0])
    place = _place(ends)
    found: list[Item] = []
    for side in (1, -1):
        points = [
            complex(x * length, -side * half_width(widths, x)) for x in (0.06, 0.3, 0.55, 0.8, 0.97)
        ]
        edge = smooth(points, closed=False)
        found += [
            Line(outline=way.placed(place), colour=pelt.hair, weight=HAIR_WEIGHT, haloed=True)
            for way in fringe(edge, pelt.hairs, length=scale * pelt.length, side=side)
        ]
    return found


def _place(ends: tuple[Point, Point]) -> Place:
    return Place((ends[1] - ends[0]) / abs(ends[1] - ends[0]), 0j, ends[0])


def half_width(widths: tuple[float, float], share: float) -> float:
    """Half the width of a segment at a share of its length."""
    for (x, low), (end, high) in pairwise(profile(*widths, belly=BELLY)):
        if share <= end:
            return low + (high - low) * (share - x) / (end - x)
    return 0.0


_INSIDE = 0.98
"""How far marks reach toward the edge, so that the outline stays clear."""


def mark_outlines(
    ends: tuple[Point, Point], widths: tuple[float, float], mark: Mark
) -> tuple[Outline, ...]:
    """The outlines of a mark on a segment; a broken band has two."""
    length, place = abs(ends[1] - ends[0]), _place(ends)

    def at(share: float, height: float) -> Point:
        return complex(share * length, height * half_width(widths, share) * _INSIDE)

    start, end = mark.start, mark.end
    middle = (start + end) / 2
    if mark.shape == "flame":
        tip = end + (end - start) * 0.55
        wide = end - start
        ring = [at(start, -0.9), at(start + 0.4 * wide, -0.86), at(start + 0.8 * wide, -0.5)]
        ring += [at(tip, 0), at(start + 0.8 * wide, 0.5), at(start + 0.4 * wide, 0.86)]
        ring += [at(start, 0.9)]
        return (smooth(ring, sharp=(0, 3, 6)).placed(place),)
    if mark.shape == "wedge":
        ring = [at(start, -0.95), at(start, 0.95), at(end, 0.1), at(end, -0.1)]
        return (smooth(ring, sharp=(0, 1, 2, 3)).placed(place),)
    if mark.shape == "spot":
        ring = [at(start, 0), at(middle, -0.62), at(end, 0), at(middle, 0.62)]
        return (smooth(ring).placed(place),)
    if mark.shape == "broken":
        halves = ((-1.0, -0.22), (0.22, 1.0))
        return tuple(_band(at, start, end, span).placed(place) for span in halves)
    return (_band(at, start, end, (-1.0, 1.0)).placed(place),)


def _band(
    at: Callable[[float, float], Point], start: float, end: float, span: tuple[float, float]
) -> Outline:
    low, high = span
    bulge = 0.05 * (high - low) / 2
    steps = [start + (end - start) * i / 3 for i in range(4)]
    middle = (low + high) / 2
    ring = [at(x, low) for x in steps] + [at(end + bulge, middle)]
    ring += [at(x, high) for x in reversed(steps)] + [at(start + bulge, middle)]
    return smooth(ring, sharp=(0, 3, 5, 8))


LEG_COURSES: Mapping[str, Sequence[tuple[float, float]]] = {
    "leg_1": (
        (0.33, 0.34),
        (0.84, -0.36),
        (1.02, -0.74),
        (1.2, -1.32),
        (1.3, -1.88),
        (1.34, -2.24),
    ),
    "leg_2": (
        (0.43, 0.5),
        (1.16, 0.16),
        (1.52, -0.04),
        (2.04, -0.38),
        (2.48, -0.72),
        (2.74, -0.94),
    ),
    "leg_3": ((0.44, 0.68), (1.14, 0.92), (1.48, 1.04), (1.96, 1.24), (2.38, 1.5), (2.62, 1.68)),
    "leg_4": ((0.37, 0.86), (0.96, 1.48), (1.2, 1.82), (1.52, 2.42), (1.78, 3.04), (1.92, 3.38)),
}
"""Joints of the right legs from the body to the tip, in carapace lengths."""
PALP_COURSE = ((0.2, 0.2), (0.42, -0.38), (0.5, -0.66), (0.55, -1.06), (0.53, -1.42))
"""The same for the palp."""
