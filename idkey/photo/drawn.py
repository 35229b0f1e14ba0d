"""The marks of a finding painted onto its picture, for the rationale and for looking back."""

from collections.abc import Iterable
from functools import lru_cache
from itertools import pairwise

from PIL import Image, ImageDraw, ImageFont

from idkey import places
from idkey.engine.tilt import Stroke
from idkey.photo.marks import Box, Marks, Point

MEASURED = "#1a7fc2"
OTHER = "#e69f00"
COUNTED = "#d55e00"
RIM = "#ffffff"
DARK = "#141414"
"""Colours that are apart for every kind of colour sight; each line also has two rims and ends.

Source: Okabe & Ito 2008, Color Universal Design, the blue somewhat darker.
"""

LONGEST = 1600
"""Longest side of a painted picture, in pixels."""

MARGIN = 0.35
"""Room left around the marks of a cut, as a share of their extent."""


def drawn(
    picture: Image.Image,
    marks: Marks,
    *,
    caption: str = "",
    cut: bool = False,
    longest: int = LONGEST,
) -> Image.Image:
    """The picture with its marks.

    Args:
        picture: The kept picture.
        marks: What was drawn on it.
        caption: A line of text for the lower left corner, such as the number.
        cut: Whether to show only the part around the marks.
        longest: Longest side of the result, in pixels; smaller pictures stay as they are.

    Returns:
        A new picture in mode RGB; `picture` is not changed.
    """
    area = _room(picture, marks) if cut else (0, 0, *picture.size)
    shown = picture.convert("RGB").crop(area)
    scale = min(1.0, longest / max(shown.size))
    if scale < 1:
        size = (max(1, round(shown.width * scale)), max(1, round(shown.height * scale)))
        shown = shown.resize(size, Image.Resampling.LANCZOS)
    pen = _Pen(shown, (area[0], area[1]), scale)
    for strokes, colour in ((marks.others, OTHER), (marks.lines, MEASURED)):
        for stroke in strokes:
            pen.line(stroke, colour)
    for box, colour in ((marks.patch, MEASURED), (marks.neutral, OTHER)):
        if box is not None:
            pen.box(box, colour)
    for number, spot in enumerate(marks.spots, start=1):
        pen.number((spot.x, spot.y), f"{number}?" if spot.doubtful else str(number))
    if caption:
        pen.caption(caption)
    return shown


def extent(marks: Marks) -> Box | None:
    """The box around everything that is drawn; None for nothing."""
    points: list[Point] = [p for stroke in (*marks.lines, *marks.others) for p in stroke]
    points += [(spot.x, spot.y) for spot in marks.spots]
    for box in (marks.patch, marks.neutral):
        if box is not None:
            points += [(box[0], box[1]), (box[0] + box[2], box[1] + box[3])]
    if not points:
        return None
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys)


class _Pen:
    """Paints with strokes that keep their weight whatever the scale of the picture."""

    def __init__(self, shown: Image.Image, corner: Point, scale: float) -> None:
        self._draw = ImageDraw.Draw(shown)
        self._size = shown.size
        self._corner = corner
        self._scale = scale
        self._weight = max(2, round(max(shown.size) / 500))

    def line(self, stroke: Stroke, colour: str) -> None:
        """A line with short bars across its ends and dots at its joints."""
        points = [self._at(point) for point in stroke]
        ways = [*pairwise(points)]
        if len(points) > 1:
            ways += [_bar(points[0], points[1], 5 * self._weight)]
            ways += [_bar(points[-1], points[-2], 5 * self._weight)]
        self._rimmed(ways, colour)
        for x, y in points[1:-1]:
            self._dot(x, y, 1.6 * self._weight, colour)

    def box(self, box: Box, colour: str) -> None:
        """A frame."""
        left, top, width, height = box
        corners = [(left, top), (left + width, top), (left + width, top + height)]
        ring = [self._at(p) for p in (*corners, (left, top + height), (left, top))]
        self._rimmed(pairwise(ring), colour)

    def number(self, at: Point, text: str) -> None:
        """A dot where the thing is, and its number beside it."""
        x, y = self._at(at)
        self._dot(x, y, 1.5 * self._weight, COUNTED)
        font = _font(7 * self._weight)
        self._draw.text(
            (x + 2 * self._weight, y - 2 * self._weight),
            text,
            fill=RIM,
            font=font,
            anchor="ls",
            stroke_width=self._weight,
            stroke_fill=DARK,
        )

    def caption(self, text: str) -> None:
        """A line of text on a dark ground in the lower left corner."""
        font, pad = _font(10 * self._weight), 4 * self._weight
        left, top, right, bottom = self._draw.textbbox((0, 0), text, font=font)
        height = bottom - top + 2 * pad
        ground = (0, self._size[1] - height, right - left + 2 * pad, self._size[1])
        self._draw.rectangle(ground, fill=DARK)
        self._draw.text((pad - left, ground[1] + pad - top), text, fill=RIM, font=font)

    def _at(self, point: Point) -> Point:
        x, y = point
        return (x - self._corner[0]) * self._scale, (y - self._corner[1]) * self._scale

    def _rimmed(self, ways: Iterable[tuple[Point, Point]], colour: str) -> None:
        ways = tuple(ways)
        for weight, ink in ((4.4, DARK), (3.2, RIM), (1.8, colour)):
            for start, end in ways:
                self._draw.line((start, end), fill=ink, width=round(weight * self._weight * 0.7))

    def _dot(self, x: float, y: float, radius: float, colour: str) -> None:
        for size, ink in ((radius * 1.9, DARK), (radius * 1.5, RIM), (radius, colour)):
            self._draw.ellipse((x - size, y - size, x + size, y + size), fill=ink)


def _bar(end: Point, toward: Point, half: float) -> tuple[Point, Point]:
    """A short line across the end of a line."""
    (x, y), way = end, complex(toward[0] - end[0], toward[1] - end[1])
    across = way / (abs(way) or 1) * 1j * half
    return (x - across.real, y - across.imag), (x + across.real, y + across.imag)


def _room(picture: Image.Image, marks: Marks) -> tuple[int, int, int, int]:
    """The part of the picture around the marks, in whole pixels."""
    found = extent(marks)
    if found is None:
        return 0, 0, *picture.size
    left, top, width, height = found
    room = max(MARGIN * max(width, height), 40)
    return (
        max(0, int(left - room)),
        max(0, int(top - room)),
        min(picture.width, int(left + width + room) + 1),
        min(picture.height, int(top + height + room) + 1),
    )


@lru_cache
def _font(size: int) -> ImageFont.FreeTypeFont | ImageFont.ImageFont:
    for file in places.font_files():
        if "Bold" in file.name and "Italic" not in file.name:
            return ImageFont.truetype(str(file), size)
    return ImageFont.load_default(size)
