"""A small tarantula that says where on the animal a figure is."""

from collections.abc import Sequence

from idkey.figures.drawing import Group, Item, Line, Patch, group
from idkey.figures.geometry import (
    MIRROR,
    Outline,
    Place,
    Point,
    ellipse,
    mirrored,
    moved,
    scaled,
    smooth,
    straight,
)
from idkey.figures.ink import POINTER, SHADOW
from idkey.figures.spider.leg import LEG_COURSES, PALP_COURSE, SEGMENTS

GROUPS = {
    "femora": "femur",
    "patellae": "patella",
    "tibiae": "tibia",
    "metatarsi": "metatarsus",
}
"""Segment names by the names of the parts they make up."""

_SHIELD = (-0.02j, 0.28 + 0.03j, 0.46 + 0.4j, 0.48 + 0.75j, 0.2 + 1.02j, 1.02j)
_BELLY = (0.98j, 0.2 + 0.98j, 0.5 + 1.35j, 0.5 + 1.85j, 0.2 + 2.3j, 2.32j)
_JAWS = (-0.4j, 0.1 - 0.42j, 0.24 - 0.2j, 0.22 + 0.05j, 0.05j)


def inset(parts: Sequence[str], *, below: bool = False, corner: Point = 4 + 5j) -> Group:
    """The small tarantula with some parts marked.

    Args:
        parts: Of carapace, abdomen, chelicerae, palps, legs, leg_1, leg_4, femora, patellae,
            tibiae, metatarsi, body.
        below: Whether it is seen from below; nothing changes but the band of the belly.
        corner: Upper left corner of its box, 58 wide and 62 high.
    """
    del below
    place = moved(corner + 29 + 24j).after(scaled(10.2))
    marked = set(parts)
    if "body" in marked:
        marked |= {"carapace", "abdomen"}
    found: list[Item] = []
    for side in (Place(), MIRROR):
        found += _legs(place.after(side), marked)
        palp = [place.after(side)(complex(*point)) for point in PALP_COURSE]
        found.append(_way(palp, 2.0, "palps" in marked))
    for name, half in (("chelicerae", _JAWS), ("abdomen", _BELLY), ("carapace", _SHIELD)):
        ring = smooth(mirrored(half)).placed(place)
        found.append(_area(ring, name in marked))
    if "carapace" not in marked:
        found.append(_area(ellipse(place(0.07j), 1.0, 0.7), marked=False))
    return group(*found, name="inset")


def _legs(place: Place, marked: set[str]) -> list[Item]:
    found: list[Item] = []
    for name, course in LEG_COURSES.items():
        points = [place(complex(*point)) for point in course]
        found.append(_way(points, 2.1, bool(marked & {"legs", name})))
        for index, segment in enumerate(SEGMENTS):
            plural = next((k for k, v in GROUPS.items() if v == segment), "")
            if plural in marked or f"{name}_{segment}" in marked:
                found.append(_way(points[index : index + 2], 3.2, marked=True))
    return found


def _way(points: Sequence[Point], weight: float, marked: bool) -> Line:
    colour = POINTER if marked else SHADOW
    return Line(outline=straight(tuple(points), closed=False), colour=colour, weight=weight)


def _area(ring: Outline, marked: bool) -> Patch:
    return Patch(outline=ring, colour=POINTER if marked else SHADOW)
