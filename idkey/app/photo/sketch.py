"""Marks while they are being made: which pen is in hand, the open line, the chosen point."""

import math
from dataclasses import dataclass, replace
from enum import StrEnum

from idkey.engine.tilt import Stroke
from idkey.photo.marks import Box, Marks, Point, Spot


class Pen(StrEnum):
    """What the next click makes."""

    LINE = "line"
    OTHER = "other"
    SPOT = "spot"
    PATCH = "patch"
    NEUTRAL = "neutral"

    @property
    def boxes(self) -> bool:
        """Whether two clicks make a box."""
        return self in (Pen.PATCH, Pen.NEUTRAL)


LEAST_SIDE = 3.0
"""Shortest side of a box that is kept, in pixels of the picture."""

OPEN = -1
"""Number of the line that is still being drawn."""


@dataclass(frozen=True, slots=True)
class Ref:
    """A point among the marks.

    Attributes:
        pen: What it belongs to.
        number: Which line, spot or box; `OPEN` for the line being drawn.
        point: Which point of it; a box has its upper left and its lower right corner.
    """

    pen: Pen
    number: int
    point: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Sketch:
    """Marks and the hand that makes them; every step is a new value.

    Attributes:
        marks: What is drawn.
        pen: What the next click makes.
        open: Points of the line or box that is not finished.
        bent: Whether lines may have joints; then they end with `finished`.
        chosen: The point the arrow keys move; None for none.
    """

    marks: Marks
    pen: Pen = Pen.LINE
    open: Stroke = ()
    bent: bool = False
    chosen: Ref | None = None

    def with_pen(self, pen: Pen) -> "Sketch":
        """Another pen in hand; an unfinished line is dropped."""
        return self if pen is self.pen else replace(self, pen=pen, open=(), chosen=None)

    def with_bends(self, bent: bool) -> "Sketch":
        """Lines with joints, or straight ones."""
        return replace(self, bent=bent)

    def placed(self, point: Point) -> "Sketch":
        """A point put down."""
        if self.pen is Pen.SPOT:
            spots = (*self.marks.spots, Spot(*point))
            marks = replace(self.marks, spots=spots)
            return replace(self, marks=marks, chosen=Ref(Pen.SPOT, len(spots) - 1))
        if self.open and math.dist(self.open[-1], point) < 0.5:
            return self
        longer = replace(self, open=(*self.open, point), chosen=Ref(self.pen, OPEN, len(self.open)))
        ends = len(longer.open) == 2 and (self.pen.boxes or not self.bent)
        return longer.finished() if ends else longer

    def finished(self) -> "Sketch":
        """The open line kept; one of a single point is dropped."""
        if len(self.open) < 2:
            return replace(self, open=(), chosen=None)
        if self.pen.boxes:
            box = _box(self.open[0], self.open[1])
            if min(box[2:]) < LEAST_SIDE:
                return replace(self, open=(), chosen=None)
            marks = (
                replace(self.marks, patch=box)
                if self.pen is Pen.PATCH
                else replace(self.marks, neutral=box)
            )
            return replace(self, marks=marks, open=(), chosen=Ref(self.pen, 0, 1))
        strokes = (*self._strokes(self.pen), self.open)
        last = Ref(self.pen, len(strokes) - 1, len(self.open) - 1)
        return replace(self, marks=self._with(self.pen, strokes), open=(), chosen=last)

    def taken_back(self) -> "Sketch":
        """The last point of the open line gone, or the last thing this pen made."""
        if self.open:
            return replace(self, open=self.open[:-1], chosen=None)
        if self.pen is Pen.SPOT:
            return replace(
                self, marks=replace(self.marks, spots=self.marks.spots[:-1]), chosen=None
            )
        if self.pen.boxes:
            return self._without(Ref(self.pen, 0))
        return replace(self, marks=self._with(self.pen, self._strokes(self.pen)[:-1]), chosen=None)

    def removed(self) -> "Sketch":
        """The thing with the chosen point gone; without one, the last thing is taken back."""
        if self.chosen is None or self.chosen.number == OPEN:
            return self.taken_back()
        return self._without(self.chosen)

    def let_go(self) -> "Sketch":
        """No point chosen."""
        return replace(self, chosen=None) if self.chosen else self

    def choose(self, ref: Ref | None) -> "Sketch":
        """Another point chosen."""
        return replace(self, chosen=ref)

    def next_point(self, step: int = 1) -> "Sketch":
        """The next point of all, in the order they were made; round and round."""
        refs = [ref for ref, _ in self.points()]
        if not refs:
            return self
        here = refs.index(self.chosen) if self.chosen in refs else (-1 if step > 0 else 0)
        return replace(self, chosen=refs[(here + step) % len(refs)])

    def moved(self, ref: Ref, point: Point) -> "Sketch":
        """A point somewhere else."""
        if ref.number == OPEN:
            return replace(self, open=_swapped(self.open, ref.point, point), chosen=ref)
        if ref.pen is Pen.SPOT:
            old = self.marks.spots[ref.number]
            spot = replace(old, x=point[0], y=point[1])
            spots = (*self.marks.spots[: ref.number], spot, *self.marks.spots[ref.number + 1 :])
            return replace(self, marks=replace(self.marks, spots=spots), chosen=ref)
        if ref.pen.boxes:
            corners = self._corners(ref.pen)
            box = _box(corners[1 - ref.point], _apart(corners[1 - ref.point], point, ref.point))
            marks = (
                replace(self.marks, patch=box)
                if ref.pen is Pen.PATCH
                else replace(self.marks, neutral=box)
            )
            return replace(self, marks=marks, chosen=ref)
        strokes = self._strokes(ref.pen)
        stroke = _swapped(strokes[ref.number], ref.point, point)
        strokes = (*strokes[: ref.number], stroke, *strokes[ref.number + 1 :])
        return replace(self, marks=self._with(ref.pen, strokes), chosen=ref)

    def doubted(self) -> "Sketch":
        """The chosen spot, or the last one, doubtful or sure."""
        spots = self.marks.spots
        if not spots:
            return self
        chosen = self.chosen
        number = chosen.number if chosen and chosen.pen is Pen.SPOT else len(spots) - 1
        spot = replace(spots[number], doubtful=not spots[number].doubtful)
        spots = (*spots[:number], spot, *spots[number + 1 :])
        return replace(self, marks=replace(self.marks, spots=spots))

    def points(self) -> tuple[tuple[Ref, Point], ...]:
        """Every point there is, with where it lies."""
        found: list[tuple[Ref, Point]] = []
        for pen in (Pen.LINE, Pen.OTHER):
            for number, stroke in enumerate(self._strokes(pen)):
                found += [(Ref(pen, number, n), point) for n, point in enumerate(stroke)]
        for pen in (Pen.PATCH, Pen.NEUTRAL):
            found += [(Ref(pen, 0, n), corner) for n, corner in enumerate(self._corners(pen))]
        found += [(Ref(Pen.SPOT, n), (s.x, s.y)) for n, s in enumerate(self.marks.spots)]
        found += [(Ref(self.pen, OPEN, n), point) for n, point in enumerate(self.open)]
        return tuple(found)

    def place_of(self, ref: Ref | None) -> Point | None:
        """Where a point lies; None when there is none."""
        return next((point for one, point in self.points() if one == ref), None)

    def nearest(self, point: Point, within: float) -> Ref | None:
        """The point next to a place of the picture, if one lies within so many pixels."""
        near = [(math.dist(place, point), n) for n, (_, place) in enumerate(self.points())]
        far, number = min(near, default=(math.inf, 0))
        return self.points()[number][0] if far <= within else None

    def _strokes(self, pen: Pen) -> tuple[Stroke, ...]:
        return self.marks.lines if pen is Pen.LINE else self.marks.others

    def _with(self, pen: Pen, strokes: tuple[Stroke, ...]) -> Marks:
        if pen is Pen.LINE:
            return replace(self.marks, lines=strokes)
        return replace(self.marks, others=strokes)

    def _corners(self, pen: Pen) -> tuple[Point, ...]:
        box = self.marks.patch if pen is Pen.PATCH else self.marks.neutral
        if box is None:
            return ()
        return (box[0], box[1]), (box[0] + box[2], box[1] + box[3])

    def _without(self, ref: Ref) -> "Sketch":
        if ref.pen is Pen.SPOT:
            spots = self.marks.spots
            kept = replace(self.marks, spots=spots[: ref.number] + spots[ref.number + 1 :])
        elif ref.pen is Pen.PATCH:
            kept = replace(self.marks, patch=None)
        elif ref.pen is Pen.NEUTRAL:
            kept = replace(self.marks, neutral=None)
        else:
            strokes = self._strokes(ref.pen)
            kept = self._with(ref.pen, strokes[: ref.number] + strokes[ref.number + 1 :])
        return replace(self, marks=kept, chosen=None)


def _box(one: Point, other: Point) -> Box:
    left, top = min(one[0], other[0]), min(one[1], other[1])
    return left, top, abs(one[0] - other[0]), abs(one[1] - other[1])


def _apart(fixed: Point, point: Point, corner: int) -> Point:
    """The point, kept on its side of the fixed corner: a box does not turn inside out."""
    if corner:
        return max(point[0], fixed[0] + LEAST_SIDE), max(point[1], fixed[1] + LEAST_SIDE)
    return min(point[0], fixed[0] - LEAST_SIDE), min(point[1], fixed[1] - LEAST_SIDE)


def _swapped(stroke: Stroke, number: int, point: Point) -> Stroke:
    return (*stroke[:number], point, *stroke[number + 1 :])
