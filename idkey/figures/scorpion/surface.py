"""Relief of a sclerite, as a hand lens shows it: granules, keels, nets."""

import math
from collections.abc import Sequence

from idkey.figures.drawing import Dot, Group, Item, Line, Patch, group
from idkey.figures.fields import LIGHT, scatter, within, wobble
from idkey.figures.geometry import Outline, Point, Points, bounds, depths, inside, smooth
from idkey.figures.ink import LINE_WEIGHT, Skin, lightened


def granules(points: Sequence[Point], skin: Skin, size: float, *, vary: float = 0.2) -> Group:
    """Round granules with light and shade.

    Args:
        points: Where they stand.
        skin: What the ground is painted with.
        size: Radius of the typical one.
        vary: How far the radius varies, as a share of `size`.
    """
    items: list[Item] = []
    for index, at in enumerate(points):
        radius = size * (1 + vary * wobble(index, 4))
        items.append(Dot(at=at - LIGHT * radius * 0.4, radius=radius * 1.05, colour=_deep(skin)))
        items.append(Dot(at=at, radius=radius * 0.92, colour=skin.light))
    return group(*items)


def _deep(skin: Skin) -> str:
    return lightened(skin.fill, -32)


def keel(points: Sequence[Point], skin: Skin, weight: float) -> Group:
    """A smooth ridge: a light line with its shade beside it."""
    way = smooth(tuple(points), closed=False)
    shade = smooth(tuple(p - LIGHT * weight * 0.7 for p in points), closed=False)
    return group(
        Line(outline=shade, colour=_deep(skin), weight=weight * 1.1),
        Line(outline=way, colour=skin.light, weight=weight * 0.8),
    )


def beaded(points: Sequence[Point], skin: Skin, size: float, gap: float) -> Group:
    """A ridge of granules along a curve."""
    way = smooth(tuple(points), closed=False)
    length = sum(abs(b - a) for a, b in zip(way.flat(8), way.flat(8)[1:], strict=False))
    count = max(2, int(length / gap))
    spots = [way.at((i + 0.5) / count)[0] for i in range(count)]
    return granules(spots, skin, size, vary=0.15)


def net(ring: Sequence[Point], skin: Skin, gap: float, margin: float) -> Group:
    """Low keels that meet in a net over the ring.

    Args:
        ring: Points of a closed outline.
        skin: What the ground is painted with.
        gap: Width of a mesh.
        margin: Distance kept from the border.
    """
    low, high = bounds(ring)
    rows = int((high.imag - low.imag) / (gap * 0.9)) + 3
    columns = int((high.real - low.real) / (gap * 0.52)) + 2
    edges = [
        (low + _knot(start) * gap / 2, low + _knot(end) * gap / 2)
        for row in range(rows)
        for column in range(columns)
        for start, end in _mesh(row, column)
    ]
    kept = set(within(ring, [end for edge in edges for end in edge], margin))
    return group(*(keel(edge, skin, 1.7) for edge in edges if kept.issuperset(edge)))


def _mesh(row: int, column: int) -> tuple[tuple[tuple[int, int], tuple[int, int]], ...]:
    """Edges of a honeycomb that belong to one knot; each edge belongs to one knot only."""
    beside = ((column, row), (column + 1, row))
    under = ((column, row), (column, row + 1))
    return (beside, under) if (row + column) % 2 else (beside,)


def _knot(place: tuple[int, int]) -> Point:
    column, row = place
    dent = 0.25 if (row + column) % 2 else -0.25
    index = row * 47 + column
    stray = complex(wobble(index, 1), wobble(index, 2)) * 0.22
    return complex(column * math.sqrt(3) * 0.6, row * 1.8 + dent * 1.2) + stray


def wrinkles(ring: Sequence[Point], skin: Skin, gap: float, margin: float) -> Group:
    """Short uneven folds and bumps over the ring, as on a rough sclerite."""
    items: list[Item] = []
    for index, at in enumerate(scatter(ring, gap, margin=margin, jitter=0.3)):
        turn = 3.1 * wobble(index, 6)
        reach = gap * (0.3 + 0.16 * wobble(index, 1))
        way = complex(math.cos(turn), math.sin(turn)) * reach
        bend = way * 0.7j * wobble(index, 3)
        items.append(keel((at - way, at + bend, at + way), skin, 4.4))
    return group(*items)


def beyond(points: Sequence[Point], ring: Sequence[Point], margin: float) -> Points:
    """Those of `points` that lie inside the ring within `margin` of its border."""
    marks = zip(points, inside(ring, points), depths(ring, points), strict=True)
    return tuple(point for point, is_in, far in marks if is_in and far < margin)


def contour(points: Sequence[Point], skin: Skin) -> Line:
    """A thin line on the part."""
    return Line(outline=smooth(tuple(points), closed=False), colour=skin.detail, weight=LINE_WEIGHT)


def hollow(outline: Outline, skin: Skin) -> Group:
    """A dent: dark on the side toward the light, light on the other."""
    return group(
        Patch(outline=outline, colour=lightened(skin.fill, -20)),
        Patch(outline=_inner(outline, 0.72, -LIGHT * 0.16), colour=skin.shade),
        Patch(outline=_inner(outline, 0.36, -LIGHT * 0.34), colour=skin.light),
    )


def _inner(outline: Outline, share: float, shift: Point) -> Outline:
    ring = outline.flat(4)
    centre = sum(ring) / len(ring)
    size = max(abs(p - centre) for p in ring)
    return smooth([centre + (p - centre) * share + shift * size for p in ring[::3]])
