"""What keys do on a picture: the crosshair, the chosen point, the view; values only."""

from collections.abc import Callable
from dataclasses import dataclass, replace

from PySide6.QtCore import Qt

from idkey.app.photo.sight import Sight
from idkey.app.photo.sketch import Sketch
from idkey.photo.marks import Point

ZOOM_STEP = 1.25
STEP = 8.0
"""How far an arrow key moves the crosshair, in screen pixels; six times as far with Shift."""

_WAYS: dict[Qt.Key, tuple[int, int]] = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}
_ZOOMS = {
    Qt.Key.Key_Plus: ZOOM_STEP,
    Qt.Key.Key_Equal: ZOOM_STEP,
    Qt.Key.Key_Minus: 1 / ZOOM_STEP,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Hand:
    """A sketch, the view of its picture, and where the hand is.

    Attributes:
        sketch: What is drawn; None where nothing can be.
        sight: Which part of the picture is seen.
        cursor: Point of the picture under the mouse or the crosshair; None for neither.
        by_key: Whether the crosshair is moved by keys.
    """

    sketch: Sketch | None
    sight: Sight
    cursor: Point | None = None
    by_key: bool = False

    @property
    def chosen(self) -> Point | None:
        """Where the chosen point lies; None without one."""
        return self.sketch.place_of(self.sketch.chosen) if self.sketch else None

    def after_key(self, key: Qt.Key, modifiers: Qt.KeyboardModifier) -> "Hand | None":
        """What a key makes of it; None for a key that means nothing here."""
        if key in _WAYS:
            return self._steered(_WAYS[key], modifiers)
        if key in _ZOOMS:
            return self.zoomed(_ZOOMS[key])
        if key is Qt.Key.Key_0:
            return replace(self, sight=Sight.whole(self.sight.picture, self.sight.window))
        back = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
        return None if self.sketch is None else self._drawn(self.sketch, key, back=back)

    def zoomed(self, factor: float) -> "Hand":
        """Larger or smaller about the crosshair, or about the middle."""
        place = (self.sight.window[0] / 2, self.sight.window[1] / 2)
        if self.by_key and self.cursor is not None:
            place = self.sight.on_screen(self.cursor)
        return replace(self, sight=self.sight.zoomed(factor, place))

    def focused(self) -> "Hand":
        """With the crosshair where it was, or in the middle."""
        return replace(
            self, by_key=True, cursor=self.cursor or self.sight.inside(self.sight.centre)
        )

    def _drawn(self, sketch: Sketch, key: Qt.Key, *, back: bool) -> "Hand | None":
        if key is Qt.Key.Key_Escape:
            return self._escaped(sketch)
        ends = sketch.bent and len(sketch.open) > 1
        acts: dict[Qt.Key, Callable[[], Hand]] = {
            Qt.Key.Key_Space: self._put,
            Qt.Key.Key_Return: (lambda: self._with(sketch.finished())) if ends else self._put,
            Qt.Key.Key_Delete: lambda: self._with(sketch.removed()),
            Qt.Key.Key_Backspace: lambda: self._with(sketch.taken_back()),
            Qt.Key.Key_N: lambda: self._with(sketch.next_point(-1 if back else 1)),
            Qt.Key.Key_D: lambda: self._with(sketch.doubted()),
        }
        acts[Qt.Key.Key_Enter] = acts[Qt.Key.Key_Return]
        return acts[key]() if key in acts else None

    def _escaped(self, sketch: Sketch) -> "Hand | None":
        """Drop the open line, else let go of the point; the next Esc leaves."""
        if sketch.open:
            return self._with(replace(sketch, open=(), chosen=None))
        return self._with(sketch.let_go()) if sketch.chosen else None

    def _put(self) -> "Hand":
        """A point at the crosshair; while a point is held, it is let go instead."""
        assert self.sketch is not None
        if self.sketch.chosen is not None and self.by_key:
            held = replace(self, cursor=self.chosen or self.cursor)
            return replace(held, sketch=self.sketch.let_go())
        if self.cursor is None:
            return self.focused()
        placed = self.sketch.placed(self.cursor).let_go()
        return replace(self, sketch=placed, by_key=True)

    def _with(self, sketch: Sketch) -> "Hand":
        """Another sketch; what is chosen in it comes into the window."""
        moved = replace(self, sketch=sketch)
        if moved.chosen is None:
            return moved
        return replace(
            moved, by_key=True, cursor=moved.chosen, sight=self.sight.showing(moved.chosen)
        )

    def _steered(self, way: tuple[int, int], modifiers: Qt.KeyboardModifier) -> "Hand":
        """Arrows move the chosen point by a pixel, else the crosshair; with Ctrl the picture."""
        if modifiers & Qt.KeyboardModifier.ControlModifier:
            return replace(self, sight=self.sight.panned(-60 * way[0], -60 * way[1]))
        fast = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
        chosen = self.chosen
        if self.sketch is not None and self.sketch.chosen is not None and chosen is not None:
            step = 10.0 if fast else 1.0
            there = self.sight.inside((chosen[0] + step * way[0], chosen[1] + step * way[1]))
            return self._with(self.sketch.moved(self.sketch.chosen, there))
        step = STEP * (6 if fast else 1) / self.sight.scale
        x, y = self.cursor or self.sight.centre
        there = self.sight.inside((x + step * way[0], y + step * way[1]))
        return replace(self, cursor=there, by_key=True, sight=self.sight.showing(there))
