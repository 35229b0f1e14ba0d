"""What points, measures and explains on a drawing: dimension lines, arrows, numbers, glow."""

import math

from idkey.figures.drawing import Group, Item, Line, Patch, Words, group
from idkey.figures.geometry import Outline, Point, ellipse, smooth, straight
from idkey.figures.ink import GLOW, MEASURE, POINTER, blended

BAR_WEIGHT = 2.2
LETTER_SIZE = 17.0


def bar(start: Point, end: Point, label: str = "", *, side: float = 1, tick: float = 6) -> Group:
    """A dimension line with end ticks and a label beside its middle.

    Args:
        start: First end point of the measurement.
        end: Second end point.
        label: Letter or number; empty for none.
        side: 1 puts the label to the right of the way from start to end, -1 to the left.
        tick: Half length of the end ticks.
    """
    unit = (end - start) / abs(end - start)
    across = unit * 1j
    ways = [(start, end), *((p - across * tick, p + across * tick) for p in (start, end))]
    items: list[Item] = [
        Line(outline=smooth(way, closed=False), colour=MEASURE, weight=BAR_WEIGHT) for way in ways
    ]
    if label:
        at = (start + end) / 2 + across * side * (LETTER_SIZE * 0.55 + 4)
        items.append(letter(label, at))
    return group(*items)


def letter(text: str, centre: Point, *, colour: str = MEASURE, size: float = LETTER_SIZE) -> Words:
    """A letter or number with its middle at `centre`."""
    return Words(text=text, at=centre + 0.36j * size, size=size, colour=colour)


def guide(start: Point, end: Point) -> Line:
    """A thin dashed line that carries an end point to its dimension line."""
    way = smooth((start, end), closed=False)
    return Line(outline=way, colour=MEASURE, weight=1.2, dash=(3.2, 3.2))


def end_point(at: Point) -> Patch:
    """A dot on an end point of a measurement."""
    return Patch(outline=ellipse(at, 3.6), colour=MEASURE, haloed=True)


def arrow(tip: Point, degrees: float, length: float = 26) -> Group:
    """An arrow whose tip lies at `tip`; it points along `degrees`, clockwise from the x axis."""
    unit = complex(math.cos(math.radians(degrees)), math.sin(math.radians(degrees)))
    tail = tip - unit * length
    neck = tip - unit * 10
    head = (tip, neck + unit * 6j, neck - unit * 6j)
    return group(
        Line(outline=smooth((tail, neck), closed=False), colour=POINTER, weight=3),
        Patch(outline=straight(head), colour=POINTER),
    )


def ring(centre: Point, radius: float) -> Line:
    """A ring round a spot to look at."""
    return Line(outline=ellipse(centre, radius), colour=POINTER, weight=2.2)


def glow(outline: Outline, weight: float = 12) -> Group:
    """A soft light around an outline, to be painted before what it lights."""
    return group(
        *(
            Line(outline=outline, colour=tone, weight=width)
            for tone, width in ((_soft(0.35), weight), (_soft(0.7), weight * 0.55))
        )
    )


def _soft(share: float) -> str:
    return blended("#f7e3bd", GLOW, share)


def male(centre: Point, size: float, colour: str = MEASURE) -> Group:
    """The sign for male."""
    heart = centre + complex(-0.18, 0.18) * size
    edge = heart + complex(0.27, -0.27) * size
    tip = centre + complex(0.5, -0.5) * size
    wings = (tip - 0.34 * size, tip, tip + 0.34j * size)
    return _sign(heart, size, ((edge, tip), wings), colour)


def female(centre: Point, size: float, colour: str = MEASURE) -> Group:
    """The sign for female."""
    heart = centre - 0.2j * size
    foot = centre + 0.62j * size
    cross = centre + 0.4j * size
    ways = ((heart + 0.36j * size, foot), (cross - 0.2 * size, cross + 0.2 * size))
    return _sign(heart, size, ways, colour)


def _sign(heart: Point, size: float, ways: tuple[tuple[Point, ...], ...], colour: str) -> Group:
    outlines = [ellipse(heart, 0.36 * size), *(straight(way, closed=False) for way in ways)]
    return group(*(Line(outline=way, colour=colour, weight=BAR_WEIGHT) for way in outlines))
