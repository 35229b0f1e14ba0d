"""Marks spread over an outline: hatching, granules, hairs, shaded rims. Nothing here is chance."""

import itertools
import math
from collections.abc import Sequence

from idkey.figures.geometry import Outline, Point, Points, area, bounds, depths, inside, smooth

LIGHT = complex(-0.6, -0.8)
"""Direction the light comes from: upper left, as plates have it."""

_GOLDEN = (math.sqrt(5) - 1) / 2


def wobble(index: int, salt: int = 0) -> float:
    """An even-handed number from -1 to 1 for each `index`, always the same one.

    Source: the golden-ratio sequence, Weyl 1916, Math. Ann. 77: 313-352.
    """
    return 2 * (((index + 1) * _GOLDEN + salt * 0.3819) % 1.0) - 1


def hatching(
    ring: Sequence[Point], gap: float, *, degrees: float = -45, cut: float = 0
) -> tuple[Outline, ...]:
    """Parallel lines that fill the ring.

    Args:
        ring: Points of a closed outline.
        gap: Distance between lines.
        degrees: Their direction, clockwise from the x axis.
        cut: How far they stay from the border, along themselves.
    """
    turn = complex(math.cos(math.radians(degrees)), math.sin(math.radians(degrees)))
    flat = [p / turn for p in ring]
    low, high = bounds(flat)
    lines = []
    for step in range(math.ceil(low.imag / gap), math.floor(high.imag / gap) + 1):
        crossings = sorted(_crossings(flat, step * gap))
        for start, end in zip(crossings[::2], crossings[1::2], strict=False):
            if end - start > 2 * cut:
                ends = (complex(start + cut, step * gap), complex(end - cut, step * gap))
                lines.append(smooth([p * turn for p in ends], closed=False))
    return tuple(lines)


def _crossings(ring: Sequence[Point], height: float) -> list[float]:
    found = []
    before = ring[-1]
    for here in ring:
        if (here.imag > height) != (before.imag > height):
            share = (height - here.imag) / (before.imag - here.imag)
            found.append(here.real + share * (before.real - here.real))
        before = here
    return found


def scatter(ring: Sequence[Point], gap: float, *, margin: float = 0, jitter: float = 0.3) -> Points:
    """Points spread over the ring on a shaken triangular grid.

    Args:
        ring: Points of a closed outline.
        gap: Distance between neighbours.
        margin: Distance kept from the border.
        jitter: How far a point may stray, as a share of `gap`.
    """
    low, high = bounds(ring)
    rows = gap * math.sqrt(3) / 2
    spots = []
    for row in range(int((high.imag - low.imag) / rows) + 2):
        for column in range(int((high.real - low.real) / gap) + 2):
            index = row * 61 + column
            stray = complex(wobble(index), wobble(index, 3)) * gap * jitter
            shift = (row % 2) * gap / 2
            spots.append(low + complex(column * gap + shift, row * rows) + stray)
    return within(ring, spots, margin)


def within(ring: Sequence[Point], points: Sequence[Point], margin: float) -> Points:
    """Those of `points` that lie in the ring, at least `margin` from its border."""
    marks = zip(points, inside(ring, points), depths(ring, points), strict=True)
    return tuple(point for point, is_in, far in marks if is_in and far >= margin)


def rim(
    outline: Outline, *, toward: Point, near: float, far: float, spread: float = 0.15
) -> tuple[Outline, ...]:
    """Strips along the parts of a closed outline that face a direction.

    Args:
        outline: The closed outline.
        toward: The direction faced, any length.
        near: How far inside the strip starts where it faces the direction fully.
        far: How far inside it ends there.
        spread: How much a border must face it to count: 0 is edge-on, 1 is full.
    """
    ring = outline.flat(5)
    way = 1 if area(ring) > 0 else -1
    unit = toward / abs(toward)
    count = len(ring)
    facing = []
    for index in range(count):
        along = ring[(index + 1) % count] - ring[index - 1]
        normal = along * -1j * way / (abs(along) or 1)
        facing.append((normal, (normal * unit.conjugate()).real))
    marks = [much > spread for _, much in facing]
    eases = [math.sqrt(max(0.0, (much - spread) / (1 - spread))) for _, much in facing]
    rooms = _rooms(ring, [-normal for normal, _ in facing], [far * ease for ease in eases])
    strips = []
    for run in _runs(marks):
        steps = [(ring[i], facing[i][0] * eases[i] * rooms[i]) for i in run]
        if len(run) > 3:
            outer = [point - step * near for point, step in steps]
            strips.append(_strip(outer, [point - step * far for point, step in steps]))
    return tuple(strips)


def _rooms(ring: Points, ways: Sequence[Point], fars: Sequence[float]) -> list[float]:
    """How much of each step inward the outline has room for; little in its tips."""
    shares = (0.3, 0.6, 1.0)
    steps = list(zip(ring, ways, fars, strict=True))
    ends = [p + w * f * share * 1.9 for share in shares for p, w, f in steps]
    marks = inside(ring, ends)
    rooms = [0.12] * len(ring)
    for index, is_in in enumerate(marks):
        if is_in:
            rooms[index % len(ring)] = shares[index // len(ring)]
    return rooms


def _runs(marks: Sequence[bool]) -> list[list[int]]:
    count = len(marks)
    if all(marks):
        return [list(range(count))]
    first = next(i for i in range(count) if not marks[i])
    runs: list[list[int]] = [[]]
    for step in range(count):
        index = (first + step) % count
        if marks[index]:
            runs[-1].append(index)
        elif runs[-1]:
            runs.append([])
    return [run for run in runs if run]


def _strip(outer: list[Point], inner: list[Point]) -> Outline:
    length = sum(abs(b - a) for a, b in itertools.pairwise(outer))
    step = max(1, round(len(outer) / max(4, min(14, length / 7))))
    bends = _bends(outer)
    picked = sorted({*range(0, len(outer), step), len(outer) - 1, *bends})
    there = [outer[i] for i in picked]
    back = [inner[i] for i in reversed(picked)]
    last = len(there) - 1
    kept = [i for i, index in enumerate(picked) if index in bends or index in (0, len(outer) - 1)]
    sharp = [*kept, *(last + 1 + last - i for i in kept)]
    return smooth((*there, *back), sharp=sharp)


def _bends(points: list[Point]) -> set[int]:
    """Numbers of points where the way turns by over 25 degrees."""
    found = set()
    for index in range(1, len(points) - 1):
        before, after = points[index] - points[index - 1], points[index + 1] - points[index]
        if (
            before
            and after
            and abs(math.atan2((after / before).imag, (after / before).real)) > 0.44
        ):
            found.add(index)
    return found


def hairs(
    outline: Outline, count: int, *, length: float, start: float = 0, end: float = 1
) -> tuple[Outline, ...]:
    """Curved hairs that stand off an outline.

    Args:
        outline: What they stand on; they point to its outer side.
        count: How many.
        length: Length of the longest.
        start: Share of the way where they begin.
        end: Share of the way where they stop; past 1 it goes round again.
    """
    way = 1 if not outline.closed or area(outline.flat(6)) > 0 else -1
    found = []
    for index in range(count):
        share = start + (end - start) * (index + 0.5 + 0.3 * wobble(index)) / max(count, 1)
        root, along = outline.at(share % 1.0 if outline.closed else share)
        lean = complex(1, 0.28 * wobble(index, 5))
        normal = along * -1j * way * lean / abs(lean)
        reach = length * (0.72 + 0.28 * wobble(index, 2))
        bend = along * reach * 0.14 * wobble(index, 7)
        found.append(
            smooth(
                (root, root + normal * reach * 0.55 + bend / 2, root + normal * reach + bend * 1.6),
                closed=False,
            )
        )
    return tuple(found)


def fringe(
    way: Outline, count: int, *, length: float, side: int = 1, lean: float = 0.6, curl: float = 0.0
) -> tuple[Outline, ...]:
    """Hairs along an open curve, all leaning the way it runs.

    Args:
        way: What they stand on.
        count: How many.
        length: Length of the longest.
        side: 1 puts them on the left of the way it runs, -1 on the right.
        lean: How far they lean forward; 0 stands upright, 1 leans by 45 degrees.
        curl: How strongly they wave, as a share of their length.
    """
    found = []
    for index in range(count):
        share = (index + 0.5 + 0.35 * wobble(index)) / count
        root, along = way.at(share)
        tilt = lean * (1 + 0.3 * wobble(index, 5))
        course = along * complex(tilt, -side)
        course *= length * (0.75 + 0.25 * wobble(index, 2)) / abs(course)
        found.append(hair(root, course, curl if index % 2 else -curl))
    return tuple(found)


def hair(root: Point, course: Point, curl: float = 0.0) -> Outline:
    """One hair from `root` along `course`; `curl` makes it wave from side to side."""
    across = course * 1j
    if not curl:
        return smooth((root, root + course * 0.5 + across * 0.06, root + course), closed=False)
    waves = (0.0, 0.9, -0.7, 0.8, -0.3)
    points = [root + course * i / 5 + across * curl * w for i, w in enumerate(waves)]
    return smooth((*points, root + course * 0.86 + across * curl * 0.9), closed=False)
