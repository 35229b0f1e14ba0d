"""The picture one draws on: zoom, pan, points by click or key, the magnifier."""

import math
from collections.abc import Mapping
from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QWidget

from idkey.app.parts.theme import Theme
from idkey.app.photo.hand import ZOOM_STEP, Hand
from idkey.app.photo.levels import Levels
from idkey.app.photo.paint import MarkPainter, draw_empty, draw_loupe
from idkey.app.photo.sight import Sight
from idkey.app.photo.sketch import Pen, Ref, Sketch
from idkey.photo.marks import Point

GRIP = 10.0
"""How near a click has to be to take hold of a point, in screen pixels."""

STILL = 4.0
"""How far the hand may stray in a click, in screen pixels."""

LARGE_ENOUGH = 8.0
"""Screen pixels per pixel from which on no magnifier is needed."""


class PhotoCanvas(QWidget):
    """Shows a picture with a sketch on it, and lets the sketch be changed.

    Args:
        theme: The look.
        draws: Whether marks can be made; else it only shows.

    Signals:
        sketched(sketch: object): The person changed the sketch.
        looked(sight: object): The person zoomed or panned.
    """

    sketched = Signal(object)
    looked = Signal(object)

    def __init__(self, theme: Theme, *, draws: bool = True) -> None:
        super().__init__()
        self._theme = theme
        self._draws = draws
        self._levels: Levels | None = None
        self._hand: Hand | None = None
        self._names: Mapping[Pen, str] = {}
        self._pressed: QPointF | None = None
        self._held: Ref | None = None
        self._panning = False
        self._steered = False
        self.magnifies = draws
        self.empty_words = ""
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.CrossCursor if draws else Qt.CursorShape.OpenHandCursor)
        self.setAccessibleName(self.tr("Picture"))

    @property
    def hand(self) -> Hand | None:
        """What is seen and drawn; None without a picture."""
        return self._hand

    def sizeHint(self) -> QSize:
        """Whatever there is."""
        return QSize(480, 360)

    def show_picture(self, levels: Levels | None) -> None:
        """Show another picture whole, or none; the same one again changes nothing."""
        if levels is self._levels and levels is not None:
            return
        self._levels, self._hand = levels, None
        if levels is not None:
            hand = Hand(sketch=None, sight=Sight.whole(levels.size, self._room()))
            self._hand = hand.focused() if self.hasFocus() else hand
        self.update()

    def show_sketch(self, sketch: Sketch, names: Mapping[Pen, str]) -> None:
        """Show marks; `names` says what is written on the newest of each kind."""
        self._names = names
        if self._hand is not None and self._draws:
            self._hand = replace(self._hand, sketch=sketch)
            self._speak()
        self.update()

    def say_empty(self, words: str) -> None:
        """What stands there without a picture."""
        if words != self.empty_words:
            self.empty_words = words
            self.update()

    def look(self, sight: Sight) -> None:
        """Show another part, without telling anybody."""
        if self._hand is not None and sight != self._hand.sight:
            self._hand = replace(self._hand, sight=sight)
            self.update()

    def zoom(self, factor: float) -> None:
        """Larger or smaller."""
        if self._hand is not None:
            self._take(self._hand.zoomed(factor))

    def fit(self) -> None:
        """The whole picture."""
        if self._hand is not None:
            whole = Sight.whole(self._hand.sight.picture, self._room())
            self._take(replace(self._hand, sight=whole))

    def magnify(self, magnifies: bool) -> None:
        """Show the magnifier, or not."""
        self.magnifies = magnifies
        self.update()

    def _take(self, hand: Hand) -> None:
        """Show what the person did, and tell what came of it."""
        before, self._hand = self._hand, hand
        self.update()
        self._speak()
        if before is None or hand.sight != before.sight:
            self.looked.emit(hand.sight)
        if hand.sketch is not None and (before is None or hand.sketch != before.sketch):
            self.sketched.emit(hand.sketch)

    def _room(self) -> tuple[float, float]:
        return max(self.width(), 1.0), max(self.height(), 1.0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep what fitted whole fitting whole."""
        if self._hand is not None:
            self._hand = replace(self._hand, sight=self._hand.sight.resized(self._room()))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the picture, the marks, the crosshair and the magnifier."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.colour("surface"))
        if self._levels is None or self._hand is None:
            draw_empty(painter, QRectF(self.rect()), self.empty_words, self._theme)
        else:
            self._levels.draw(painter, self._hand.sight, QRectF(self.rect()))
            self._draw_marks(painter, self._levels, self._hand)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        focus = self.hasFocus()
        painter.setPen(QPen(self._theme.colour("accent" if focus else "line"), 2 if focus else 1))
        inset = 1 if focus else 0
        painter.drawRect(self.rect().adjusted(inset, inset, -1 - inset, -1 - inset))
        painter.end()

    def _draw_marks(self, painter: QPainter, levels: Levels, hand: Hand) -> None:
        pen = MarkPainter(painter, hand.sight, self._theme)
        if hand.sketch is not None:
            pen.sketch(hand.sketch, self._names)
            pen.open_line(hand.sketch, hand.cursor)
        if not self._draws or hand.cursor is None or self._panning:
            return
        spot = hand.chosen if hand.by_key and hand.chosen is not None else hand.cursor
        if hand.by_key and hand.chosen is None:
            pen.crosshair(spot)
        wanted = self.magnifies and (self._steered or not hand.by_key)
        if wanted and hand.sight.scale < LARGE_ENOUGH:
            draw_loupe(painter, levels, hand.sight, spot, self._theme)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom about the mouse."""
        turns = event.angleDelta().y() / 120
        if turns and self._hand is not None:
            place = (event.position().x(), event.position().y())
            sight = self._hand.sight.zoomed(ZOOM_STEP**turns, place)
            self._take(replace(self._hand, sight=sight, by_key=False))
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of a point, begin a box, or begin to pan."""
        if self._hand is None:
            return
        self._pressed, point = event.position(), self._point(event)
        hand = replace(self._hand, cursor=point, by_key=False)
        self._panning = event.button() is not Qt.MouseButton.LeftButton
        sketch = hand.sketch
        if sketch is not None and not self._panning:
            self._held = sketch.nearest(point, GRIP / hand.sight.scale)
            if self._held is not None and not sketch.open:
                sketch = sketch.choose(self._held)
            elif sketch.pen.boxes and not sketch.open:
                sketch = sketch.placed(point)
        self._take(replace(hand, sketch=sketch))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move the held point, pan, or move the magnifier."""
        if self._hand is None:
            return
        hand = replace(self._hand, cursor=self._point(event), by_key=False)
        self._hand = hand
        if self._pressed is not None and (self._panning or self._far(event) > STILL):
            if self._held is not None and hand.sketch is not None and hand.cursor is not None:
                self._hand = replace(hand, sketch=hand.sketch.moved(self._held, hand.cursor))
            elif self._panning or hand.sketch is None or not hand.sketch.pen.boxes:
                self._panning = True
                step = event.position() - self._pressed
                self._pressed = event.position()
                self._take(replace(hand, sight=hand.sight.panned(step.x(), step.y())))
        self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Put a point where the mouse was clicked; let go of what was held."""
        clicked = self._pressed is not None and self._far(event) <= STILL
        panned, held = self._panning, self._held
        self._pressed, self._held, self._panning = None, None, False
        hand = self._hand
        if hand is None or hand.sketch is None or panned:
            self.update()
            return
        point, sketch = self._point(event), hand.sketch
        if held is not None and not clicked:
            self.sketched.emit(sketch)
        elif sketch.pen.boxes and held is None:
            far = math.dist(sketch.open[0], point) * hand.sight.scale if sketch.open else 0.0
            if far > STILL:
                self._take(replace(hand, sketch=sketch.placed(point)))
        elif clicked and (held is None or sketch.open):
            self._take(replace(hand, sketch=sketch.placed(point)))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """End a line with joints; its last point was put down by the first click."""
        hand = self._hand
        if hand is not None and hand.sketch is not None and hand.sketch.bent and hand.sketch.open:
            self._take(replace(hand, sketch=hand.sketch.finished()))

    def leaveEvent(self, event: object) -> None:
        """Take the magnifier away."""
        if self._hand is not None and not self._hand.by_key:
            self._hand = replace(self._hand, cursor=None)
            self.update()

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show the crosshair when one came by key."""
        if self._hand is not None and event.reason() is not Qt.FocusReason.MouseFocusReason:
            self._hand, self._steered = self._hand.focused(), False
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Take the crosshair away."""
        if self._hand is not None and self._hand.by_key:
            self._hand = replace(self._hand, by_key=False, cursor=None)
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Do with keys what the mouse can do."""
        key = Qt.Key(event.key())
        if key is Qt.Key.Key_M and self._draws:
            self.magnify(not self.magnifies)
            return
        hand = None if self._hand is None else self._hand.after_key(key, event.modifiers())
        if hand is None:
            super().keyPressEvent(event)
        else:
            self._steered = True
            self._take(hand)

    def _speak(self) -> None:
        if self._hand is None:
            self.setAccessibleDescription(self.empty_words)
            return
        said = []
        if self._hand.cursor is not None:
            x, y = self._hand.cursor
            said.append(self.tr("At {x}, {y} pixels.").format(x=round(x), y=round(y)))
        if self._hand.sketch is not None:
            points = len(self._hand.sketch.points())
            said.append(self.tr("{n} points drawn.").format(n=points))
        self.setAccessibleDescription(" ".join(said))

    def _point(self, event: QMouseEvent) -> Point:
        assert self._hand is not None
        sight, place = self._hand.sight, event.position()
        return sight.inside(sight.in_picture((place.x(), place.y())))

    def _far(self, event: QMouseEvent) -> float:
        step = event.position() - (self._pressed or event.position())
        return math.hypot(step.x(), step.y())
