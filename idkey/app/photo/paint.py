"""How marks, the crosshair and the magnifier look on the screen."""

import math
from collections.abc import Iterable, Mapping
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPen

from idkey.app.parts.theme import Theme
from idkey.app.photo.levels import Levels, middle
from idkey.app.photo.sight import Sight
from idkey.app.photo.sketch import Pen, Ref, Sketch
from idkey.photo.drawn import COUNTED, DARK, MEASURED, OTHER, RIM
from idkey.photo.marks import Box, Point, Spot

LOUPE = 176
"""Side of the magnifier at 100 %, in pixels."""

INKS = {
    Pen.LINE: MEASURED,
    Pen.OTHER: OTHER,
    Pen.SPOT: COUNTED,
    Pen.PATCH: MEASURED,
    Pen.NEUTRAL: OTHER,
}


class MarkPainter:
    """Paints the marks of a sketch over its picture, always in the same weight.

    Args:
        painter: Paints the window.
        sight: Where the picture is.
        theme: The look.
    """

    def __init__(self, painter: QPainter, sight: Sight, theme: Theme) -> None:
        self._painter = painter
        self._sight = sight
        self._theme = theme
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)

    def sketch(self, sketch: Sketch, names: Mapping[Pen, str]) -> None:
        """Everything drawn, each kind named at its newest."""
        marks = sketch.marks
        for pen, strokes in ((Pen.OTHER, marks.others), (Pen.LINE, marks.lines)):
            for stroke in strokes:
                self._line(stroke, INKS[pen])
            if strokes:
                last = strokes[-1]
                place = middle(*_longest(last)) if pen is Pen.LINE else last[-1]
                self._tag(place, names.get(pen, ""))
        for pen, box in ((Pen.NEUTRAL, marks.neutral), (Pen.PATCH, marks.patch)):
            if box is not None:
                self._box(box, INKS[pen])
                self._tag((box[0] + box[2] / 2, box[1]), names.get(pen, ""))
        for number, spot in enumerate(marks.spots, start=1):
            self._spot(spot, number)
        if sketch.chosen is not None:
            self._chosen(sketch, sketch.chosen)

    def open_line(self, sketch: Sketch, cursor: Point | None) -> None:
        """The line being drawn, with a dashed way to the cursor."""
        if not sketch.open:
            return
        ink = INKS[sketch.pen]
        if sketch.pen.boxes and cursor is not None:
            (x, y), (u, v) = sketch.open[0], cursor
            self._box((min(x, u), min(y, v), abs(u - x), abs(v - y)), ink)
            return
        self._line(sketch.open, ink)
        if cursor is not None:
            start, end = self._at(sketch.open[-1]), self._at(cursor)
            for colour, wide in ((DARK, 3.0), (RIM, 1.4)):
                self._painter.setPen(QPen(QColor(colour), wide, Qt.PenStyle.DashLine))
                self._painter.drawLine(start, end)

    def crosshair(self, cursor: Point) -> None:
        """Where a key would put a point."""
        at = self._at(cursor)
        for colour, wide in ((DARK, 3.4), (RIM, 1.6)):
            self._painter.setPen(QPen(QColor(colour), wide))
            for x, y in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                way = QPointF(x, y)
                self._painter.drawLine(at + way * 5, at + way * 15)

    def _at(self, point: Point) -> QPointF:
        return QPointF(*self._sight.on_screen(point))

    def _line(self, stroke: Iterable[Point], ink: str) -> None:
        points = [self._at(point) for point in stroke]
        path = QPainterPath()
        for start, end in pairwise(points):
            path.moveTo(start)
            path.lineTo(end)
        if len(points) > 1:
            for end, toward in ((points[0], points[1]), (points[-1], points[-2])):
                across = _across(end, toward) * 7
                path.moveTo(end - across)
                path.lineTo(end + across)
        self._rimmed(path, ink)
        for point in points if len(points) == 1 else points[1:-1]:
            self._ring(point, 3.5, ink)

    def _box(self, box: Box, ink: str) -> None:
        path = QPainterPath()
        corner = self._at((box[0], box[1]))
        path.addRect(QRectF(corner, self._at((box[0] + box[2], box[1] + box[3]))))
        self._rimmed(path, ink)

    def _rimmed(self, path: QPainterPath, ink: str) -> None:
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, wide in ((DARK, 4.6), (RIM, 3.2), (ink, 1.6)):
            self._painter.setPen(QPen(QColor(colour), wide))
            self._painter.drawPath(path)

    def _ring(self, at: QPointF, radius: float, ink: str) -> None:
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, wide in ((DARK, 4.0), (RIM, 2.6), (ink, 1.4)):
            self._painter.setPen(QPen(QColor(colour), wide))
            self._painter.drawEllipse(at, radius, radius)

    def _spot(self, spot: Spot, number: int) -> None:
        at = self._at((spot.x, spot.y))
        self._painter.setPen(QPen(QColor(DARK), 1.2))
        self._painter.setBrush(QColor(COUNTED))
        self._painter.drawEllipse(at, 3.4, 3.4)
        text = f"{number}?" if spot.doubtful else str(number)
        self._words(text, at + QPointF(9, -9), centred=False)

    def _chosen(self, sketch: Sketch, ref: Ref) -> None:
        place = sketch.place_of(ref)
        if place is not None:
            self._ring(self._at(place), 9.0, self._theme.colours.accent)

    def _tag(self, at: Point, text: str) -> None:
        if text:
            self._words(text, self._at(at) + QPointF(0, -16), centred=True)

    def _words(self, text: str, at: QPointF, *, centred: bool) -> None:
        font = self._theme.font(12, bold=True)
        size = QFontMetricsF(font).boundingRect(text).size()
        left = at.x() - size.width() / 2 if centred else at.x()
        box = QRectF(left - 4, at.y() - size.height() / 2 - 1, size.width() + 8, size.height() + 2)
        ground = QColor(DARK)
        ground.setAlpha(205)
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(ground)
        self._painter.drawRoundedRect(box, 4, 4)
        self._painter.setPen(QColor(RIM))
        self._painter.setFont(font)
        self._painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def draw_empty(painter: QPainter, area: QRectF, words: str, theme: Theme) -> None:
    """The place for a picture, with what to do there."""
    margin = theme.px(24)
    frame = area.adjusted(margin, margin, -margin, -margin)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(theme.colour("outline"), 1.5, Qt.PenStyle.DashLine))
    painter.drawRoundedRect(frame, 12, 12)
    painter.setPen(theme.colour("soft"))
    flags = int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap)
    for size, edge in ((15, margin), (13, 4), (11, 4)):  # large text in a small place
        room = frame.adjusted(edge, edge, -edge, -edge)
        painter.setFont(theme.font(size))
        if room.contains(painter.boundingRect(room, flags, words)):
            break
    painter.drawText(room, flags, words)


def draw_loupe(
    painter: QPainter, levels: Levels, sight: Sight, cursor: Point, theme: Theme
) -> QRectF:
    """The magnifier beside the cursor, on the side where there is room.

    Returns:
        Where it stands.
    """
    side = theme.px(LOUPE)
    x, y = sight.on_screen(cursor)
    gap = theme.px(30)
    left = x + gap if x + gap + side <= sight.window[0] else max(x - gap - side, 2)
    top = y - gap - side if y - gap - side >= 0 else min(y + gap, sight.window[1] - side - 2)
    box = QRectF(left, top, side, side)
    near = Sight(
        picture=sight.picture,
        window=(side, side),
        centre=cursor,
        scale=min(max(4 * sight.scale, 4.0), 16.0),
    )
    painter.save()
    frame = QPainterPath()
    frame.addRoundedRect(box, 12, 12)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillPath(frame, theme.colour("ground"))
    painter.setClipPath(frame)
    painter.translate(box.topLeft())
    levels.draw(painter, near, QRectF(0, 0, side, side))
    middle_of = QPointF(side / 2, side / 2)
    for colour, wide in ((DARK, 3.0), (RIM, 1.2)):
        painter.setPen(QPen(QColor(colour), wide))
        for way in (QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)):
            painter.drawLine(middle_of + way * 4, middle_of + way * (side / 2))
    painter.restore()
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for name, wide in (("raised", 4.0), ("outline", 1.4)):
        painter.setPen(QPen(theme.colour(name), wide))
        painter.drawRoundedRect(box, 12, 12)
    return box


def _across(end: QPointF, toward: QPointF) -> QPointF:
    way = toward - end
    far = math.hypot(way.x(), way.y()) or 1.0
    return QPointF(-way.y() / far, way.x() / far)


def _longest(stroke: tuple[Point, ...]) -> tuple[Point, Point]:
    return max(pairwise(stroke), key=lambda ends: math.dist(*ends))
