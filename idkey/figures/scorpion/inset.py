"""A small scorpion that says where on the animal a figure is."""

import cmath
import math
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
)
from idkey.figures.ink import POINTER, SHADOW
from idkey.figures.scorpion.claw import LOBED, claw
from idkey.figures.scorpion.limbs import LEGS

CARAPACE = (0, -0.02 - 0.06j, 0.3 - 0.08j, 0.42 + 0.35j, 0.52 + 0.9j, 0.5 + 1.0j, 1.0j)
TRUNK = (0.97j, 0.5 + 0.97j, 0.62 + 1.7j, 0.6 + 2.5j, 0.4 + 3.05j, 0.22 + 3.2j, 3.2j)
TAIL = (3.25j, 0.02 + 3.75j, 0.2 + 4.25j, 0.6 + 4.6j, 1.15 + 4.7j, 1.7 + 4.45j)
"""In carapace lengths, the front of the carapace at 0."""


def inset(parts: Sequence[str], *, below: bool = False, corner: Point = 5 + 5j) -> Group:
    """The small scorpion with some parts marked.

    Args:
        parts: Of carapace, tergites, metasoma, telson, chela, hand, fingers, patella, legs,
            chelicerae, coxae, sternum, pectines, body.
        below: Whether it is seen from below.
        corner: Upper left corner of its box, 56 wide and 78 high.
    """
    place = moved(corner + 27 + 25.5j).after(scaled(9.2))
    marked = set(parts)
    if "body" in marked:
        marked = {"carapace", "tergites"}
    plain = [item for name, item in _parts(place) if name not in marked]
    shown = [_tinted(item) for name, item in _parts(place) if name in marked]
    if below:
        shown += [item for name, item in _below(place) if name in marked]
    return group(*plain, *shown, name="inset")


def _parts(place: Place) -> list[tuple[str, Item]]:
    found: list[tuple[str, Item]] = []
    for side in (Place(), MIRROR):
        here = place.after(side)
        found += [("legs", _way([complex(x, y) for x, y in leg], here, 1.5)) for leg in LEGS]
        found += _arm(here)
        claw_tooth = smooth((0.03 + 0.1j, 0.24, 0.24 - 0.4j, 0.08 - 0.5j, 0.03 - 0.3j))
        found.append(("chelicerae", _area(claw_tooth, here)))
    half = tuple(complex(p) for p in CARAPACE if complex(p).real >= 0)
    found += [
        ("carapace", _area(smooth(mirrored(half)), place)),
        ("tergites", _area(smooth(mirrored([complex(p) for p in TRUNK])), place)),
        ("metasoma", _way(TAIL, place, 4.2)),
        ("telson", _area(_telson(), place)),
    ]
    return found


def _arm(here: Place) -> list[tuple[str, Item]]:
    shoulder, elbow = 0.3 + 0.15j, 0.98 - 0.3j
    wrist = elbow + cmath.rect(0.85, math.radians(-80))
    tip = wrist + cmath.rect(1.85, math.radians(-106))
    built = claw(1.85, 0.9, LOBED)
    lie = here.after(Place(0j, (tip - wrist) / 1.85, wrist))
    return [
        ("femur", _way((shoulder, elbow), here, 3.2)),
        ("patella", _way((elbow, wrist), here, 3.6)),
        ("chela", _area(built.finger, lie)),
        ("chela", _area(built.hand, lie)),
        ("hand", _area(built.manus, lie)),
    ]


def _telson() -> Outline:
    points = (1.5 + 4.6j, 1.8 + 4.72j, 2.15 + 4.5j, 2.3 + 4.1j, 2.2 + 3.55j, 2.08 + 3.95j)
    return smooth((*points, 1.85 + 4.12j, 1.6 + 4.3j), sharp=(4,))


def _below(place: Place) -> list[tuple[str, Item]]:
    coxae = smooth(mirrored((0.1j, 0.3 + 0.1j, 0.46 + 0.6j, 0.5 + 1.1j, 0.12 + 1.15j, 1.0j)))
    sternum = ellipse(0.92j, 0.24, 0.3)
    comb = smooth((0.05 + 1.3j, 0.3 + 1.35j, 0.62 + 1.75j, 0.55 + 1.9j, 0.25 + 1.6j, 0.05 + 1.5j))
    found: list[tuple[str, Item]] = [
        ("coxae", _tinted(_area(coxae, place))),
        ("sternum", _tinted(_area(sternum, place))),
    ]
    for side in (Place(), MIRROR):
        found.append(("pectines", _tinted(_area(comb, place.after(side)))))
    return found


def _way(points: Sequence[Point], place: Place, weight: float) -> Line:
    outline = smooth(tuple(points), closed=False).placed(place)
    return Line(outline=outline, colour=SHADOW, weight=weight)


def _area(outline: Outline, place: Place) -> Patch:
    return Patch(outline=outline.placed(place), colour=SHADOW)


def _tinted(item: Item) -> Item:
    if isinstance(item, Line):
        return Line(outline=item.outline, colour=POINTER, weight=item.weight)
    assert isinstance(item, Patch)
    return Patch(outline=item.outline, colour=POINTER)
