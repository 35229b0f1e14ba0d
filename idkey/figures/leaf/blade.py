"""A leaf blade and its stem."""

import cmath
import math
from dataclasses import dataclass

from idkey.figures.drawing import Group, Item, Line, Part, group
from idkey.figures.geometry import Outline, Place, Point, Points, smooth
from idkey.figures.ink import LINE_WEIGHT, Skin, skin

GREEN = "#7aa352"
"""Where the green of a leaf is not the matter."""
LEAF = skin(GREEN)
"""What a leaf is painted with there."""
STEM = skin("#8a9a5e")
"""What stems and stalks are painted with."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Blade:
    """The build of a blade; it runs along x from 0 to `length`.

    Attributes:
        length: From the foot to the tip, without the stalk.
        width: Greatest width.
        teeth: Teeth or lobes on each side; 0 for an even margin.
        depth: How deep they are cut, as a share of the half width.
        rounded: Whether their tips are rounded.
    """

    length: float
    width: float
    teeth: int = 0
    depth: float = 0.12
    rounded: bool = False


def half_width(share: float) -> float:
    """Half the width at a share of the length, for a blade of width 1."""
    return 0.5 * math.pow(math.sin(math.pi * math.pow(min(1.0, share), 0.82)), 0.9)


def blade_outline(blade: Blade) -> Outline:
    """The outline of a blade, its foot at 0."""
    upper = _side(blade)
    lower = tuple(p.conjugate() for p in reversed(upper))
    ring = (0j, *upper, complex(blade.length, 0), *lower)
    count = len(upper)
    tips = {0, count + 1}
    if blade.teeth and not blade.rounded:
        tips |= {*range(1, count + 1), *range(count + 2, 2 * count + 2)}
    elif blade.teeth:
        tips |= {1 + 3 * i for i in range(blade.teeth)}
        tips |= {2 * count + 1 - 3 * i for i in range(blade.teeth)}
    return smooth(ring, sharp=sorted(tips))


def _side(blade: Blade) -> Points:
    """Points of the upper edge, from foot to tip."""
    if not blade.teeth:
        return tuple(_at(blade, i / 12, 1.0) for i in range(1, 12))
    points: list[Point] = []
    for index in range(blade.teeth):
        start, end = index / blade.teeth, (index + 1) / blade.teeth
        span = end - start
        notch = _at(blade, max(start, 0.03), 1 - blade.depth)
        points.append(notch)
        if blade.rounded:
            points += [_at(blade, start + 0.3 * span, 1.0), _at(blade, start + 0.75 * span, 1.0)]
        else:
            points.append(_at(blade, start + 0.72 * span, 1 + blade.depth * 0.3))
    return tuple(points)


def _at(blade: Blade, share: float, out: float) -> Point:
    return complex(share * blade.length, -half_width(share) * blade.width * out)


def blade_drawing(
    blade: Blade, skin: Skin, place: Place, *, name: str = "", veins: int = 5
) -> Group:
    """A blade with its middle vein and side veins.

    Args:
        blade: Its build.
        skin: What it is painted with.
        place: Where it goes.
        name: Its id.
        veins: Side veins on each side.
    """
    items: list[Item] = [Part(outline=blade_outline(blade).placed(place), skin=skin, name=name)]
    middle = smooth((0.02 * blade.length + 0j, 0.95 * blade.length + 0j), closed=False)
    items.append(Line(outline=middle.placed(place), colour=skin.detail, weight=1.6))
    for index in range(veins):
        foot = (0.1 + 0.68 * index / max(veins, 1)) * blade.length
        tip_share = min(0.94, foot / blade.length + 0.2)
        reach = half_width(tip_share) * blade.width * (0.9 - (blade.depth if blade.teeth else 0.06))
        for side in (-1, 1):
            tip = complex(tip_share * blade.length, side * reach)
            bend = complex((foot + tip.real) / 2 + 0.02 * blade.length, side * reach * 0.42)
            way = smooth((foot + 0j, bend, tip), closed=False)
            items.append(Line(outline=way.placed(place), colour=skin.detail, weight=LINE_WEIGHT))
    return group(*items)


def stalk_drawing(start: Point, end: Point, width: float, skin: Skin) -> Part:
    """A stem or stalk from one point to another."""
    way = (end - start) / abs(end - start)
    across = way * 1j * width / 2
    ring = (start - across, end - across * 0.85, end + across * 0.85, start + across)
    return Part(outline=smooth(ring, sharp=(0, 1, 2, 3)), skin=skin, shaded=width > 8)


def lying(start: Point, degrees: float = -14) -> Place:
    """Puts a blade with its foot there, rising to the right."""
    return Place(cmath.rect(1, math.radians(degrees)), 0j, start)
