"""Plane geometry of drawings: points are complex numbers, x to the right, y down."""

import cmath
import itertools
import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.complex128]
Point = complex
Points = tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class Place:
    """A real-linear map of the plane, z -> turn*z + flip*conj(z) + shift."""

    turn: complex = 1 + 0j
    flip: complex = 0j
    shift: complex = 0j

    def __call__(self, point: Point) -> Point:
        """Where `point` goes."""
        return self.turn * point + self.flip * point.conjugate() + self.shift

    def after(self, first: "Place") -> "Place":
        """The map that does `first`, then this one."""
        return Place(
            self.turn * first.turn + self.flip * first.flip.conjugate(),
            self.turn * first.flip + self.flip * first.turn.conjugate(),
            self(first.shift),
        )


def moved(by: Point) -> Place:
    """Shift by `by`."""
    return Place(shift=by)


def turned(degrees: float, about: Point = 0j) -> Place:
    """Turn clockwise on the page about a point."""
    turn = cmath.rect(1, math.radians(degrees))
    return Place(turn, 0j, about - turn * about)


def scaled(along_x: float, along_y: float | None = None) -> Place:
    """Stretch about the origin; one number keeps proportions, negative ones mirror."""
    along_y = along_x if along_y is None else along_y
    return Place(complex((along_x + along_y) / 2), complex((along_x - along_y) / 2))


MIRROR = scaled(-1, 1)
"""Left and right swapped."""


def laid(start: Point, end: Point, *, mirrored: bool = False) -> Place:
    """Puts the unit x axis on the way from `start` to `end`, keeping proportions.

    Args:
        start: Where 0 goes.
        end: Where 1 goes.
        mirrored: Whether the positive y side changes sides.
    """
    way = end - start
    return Place(0j, way, start) if mirrored else Place(way, 0j, start)


@dataclass(frozen=True, slots=True)
class Outline:
    """A curve of cubic Bézier pieces.

    Attributes:
        start: Where it starts.
        pieces: (first handle, second handle, end) of each piece.
        closed: Whether the end joins the start.
    """

    start: Point
    pieces: tuple[tuple[Point, Point, Point], ...]
    closed: bool = True

    def placed(self, place: Place) -> "Outline":
        """The same curve elsewhere."""
        pieces = tuple((place(a), place(b), place(c)) for a, b, c in self.pieces)
        return Outline(place(self.start), pieces, self.closed)

    def flat(self, steps: int = 10) -> Points:
        """Points along it, `steps` to a piece, the start first; closed curves end before it."""
        points = [self.start]
        here = self.start
        for one, two, end in self.pieces:
            for step in range(1, steps + 1):
                t = step / steps
                u = 1 - t
                points.append(u**3 * here + 3 * u * u * t * one + 3 * u * t * t * two + t**3 * end)
            here = end
        return tuple(points[:-1] if self.closed else points)

    def at(self, share: float) -> tuple[Point, Point]:
        """The point at that share of the way (0 to 1) and the unit direction there."""
        points = self.flat(16)
        points = (*points, points[0]) if self.closed else points
        steps = [abs(b - a) for a, b in itertools.pairwise(points)]
        left = max(0.0, min(1.0, share)) * sum(steps)
        for index, step in enumerate(steps):
            if left <= step or index == len(steps) - 1:
                way = points[index + 1] - points[index]
                unit = way / step if step else 1 + 0j
                return points[index] + unit * min(left, step), unit
            left -= step
        raise ValueError("an outline needs a piece")


def smooth(points: Sequence[Point], *, sharp: Sequence[int] = (), closed: bool = True) -> Outline:
    """A curve through `points`, smooth except at the points numbered in `sharp`.

    Args:
        points: In order; at least three when closed.
        sharp: Numbers of corner points; negative ones count from the end.
        closed: Whether the last point joins the first.
    """
    count = len(points)
    corners = {index % count for index in sharp}
    pieces = []
    for index in range(count if closed else count - 1):
        a, b = points[index], points[(index + 1) % count]
        reach = abs(b - a) * 0.36
        out = _tangent(points, index, corners, closed)
        into = _tangent(points, (index + 1) % count, corners, closed)
        first = a + out * reach if out else a + (b - a) / 3
        second = b - into * reach if into else b - (b - a) / 3
        pieces.append((first, second, b))
    return Outline(points[0], tuple(pieces), closed)


def _tangent(points: Sequence[Point], index: int, corners: set[int], closed: bool) -> Point:
    if index in corners or (not closed and index in (0, len(points) - 1)):
        return 0j
    before, here = points[index - 1], points[index]
    after = points[(index + 1) % len(points)]
    far, near = abs(after - here), abs(here - before)
    way = (here - before) * far / (near or 1) + (after - here) * near / (far or 1)
    return way / abs(way) if abs(way) else 0j


def straight(points: Sequence[Point], *, closed: bool = True) -> Outline:
    """Straight lines through `points`."""
    return smooth(points, sharp=range(len(points)), closed=closed)


def ellipse(centre: Point, across: float, down: float | None = None, turn: float = 0) -> Outline:
    """An ellipse of half-widths `across` and `down`, turned clockwise by `turn` degrees."""
    down = across if down is None else down
    k = 0.5522847498
    quarter = [(1 + 0j, 1 + k * 1j, k + 1j, 1j)]
    pieces = []
    for step in range(4):
        turn_by = 1j**step
        _, one, two, end = (p * turn_by for p in quarter[0])
        pieces.append((one, two, end))
    unit = Outline(1 + 0j, tuple(pieces))
    return unit.placed(moved(centre).after(turned(turn)).after(scaled(across, down)))


def mirrored(half: Sequence[Point]) -> tuple[Point, ...]:
    """The right half of a figure (x >= 0, from top to bottom) and its mirror image, as one ring.

    Points on the axis (x = 0) are not doubled.
    """
    left = [-p.conjugate() for p in reversed(half) if abs(p.real) > 1e-9]
    return (*half, *left)


def bounds(points: Sequence[Point]) -> tuple[Point, Point]:
    """Upper left and lower right corner of the box around `points`."""
    xs, ys = [p.real for p in points], [p.imag for p in points]
    return complex(min(xs), min(ys)), complex(max(xs), max(ys))


def area(ring: Sequence[Point]) -> float:
    """Signed area; positive when the ring runs clockwise on the page."""
    following = (*ring[1:], ring[0])
    return sum((a.conjugate() * b).imag for a, b in zip(ring, following, strict=True)) / 2


def inside(ring: Sequence[Point], points: Sequence[Point]) -> list[bool]:
    """Whether each of `points` lies inside the ring (even-odd)."""
    here, before, at = _arrays(ring, points)
    crosses = (here.imag > at.imag) != (before.imag > at.imag)
    fall = np.where(here.imag == before.imag, 1.0, before.imag - here.imag)
    x = here.real + (at.imag - here.imag) / fall * (before.real - here.real)
    odd: list[bool] = ((crosses & (at.real < x)).sum(axis=1) % 2 == 1).tolist()
    return odd


def depths(ring: Sequence[Point], points: Sequence[Point]) -> list[float]:
    """Distance from each of `points` to the border of the ring."""
    here, before, at = _arrays(ring, points)
    way = here - before
    length = np.maximum(np.abs(way) ** 2, 1e-12)
    share = np.clip(((at - before) * way.conjugate()).real / length, 0, 1)
    nearest: list[float] = np.abs(at - before - share * way).min(axis=1).tolist()
    return nearest


def _arrays(ring: Sequence[Point], points: Sequence[Point]) -> tuple[Array, Array, Array]:
    here = np.asarray(ring, dtype=complex)[None, :]
    return here, np.roll(here, 1), np.asarray(points, dtype=complex).reshape(-1, 1)


def mapped(points: Sequence[Point], place: Callable[[Point], Point]) -> Points:
    """Each point through `place`."""
    return tuple(place(point) for point in points)
