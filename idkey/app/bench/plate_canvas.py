"""A drawn animal whose parts can be pointed at."""

from PySide6.QtCore import QByteArray, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.bench.plate_groups import shown_name
from idkey.app.parts.colours import LIGHT
from idkey.app.parts.desk import Desk
from idkey.figures.plates import Plate, PlatePart

EDGE = 10
"""Rim around the plate at 100 % text, in pixels."""


class PlateCanvas(QWidget):
    """Shows a plate; the mouse, or the arrows and Enter, point at its parts.

    Args:
        desk: Look, drawings, language.

    Signals:
        pointed(part: str): This part is pointed at; empty when none is any more.
        chosen(part: str): The person chose this part; empty for none.
        entered(): The person wants to go on to what belongs to the chosen part.
    """

    pointed = Signal(str)
    chosen = Signal(str)
    entered = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._renderer = QSvgRenderer(self)
        self._paths: dict[str, QPainterPath] = {}
        self.plate: Plate | None = None
        self.marked = ""
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._say()

    def show_plate(self, plate: Plate) -> None:
        """Show a plate, labelled in the language of the desk."""
        text = self._desk.pictures.plate_drawing(
            plate, language=self._desk.language.code, ink=LIGHT.plate_ink, lines=LIGHT.soft
        )
        self._renderer.load(QByteArray(text))
        self.plate = plate
        self._paths = {}
        self._say()
        self.update()

    def mark(self, part: str) -> None:
        """Mark a part; empty marks none."""
        if part != self.marked:
            self.marked = part
            self._say()
            self.update()

    def place_of(self, part: str) -> QPointF:
        """A point of the widget at which a click hits that part: the middle of its name."""
        assert self.plate is not None
        shown = self.plate.part(part)
        assert shown is not None
        return self._paper_to_widget(_name_place(shown))

    def sizeHint(self) -> QSize:
        """Room to read the names."""
        px = self._desk.theme.px
        return QSize(px(600), px(540))

    def minimumSizeHint(self) -> QSize:
        """It can be made out."""
        return QSize(260, 220)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Point at what lies under the mouse."""
        part = self._part_at(event.position())
        self.setCursor(Qt.CursorShape.PointingHandCursor if part else Qt.CursorShape.ArrowCursor)
        self.pointed.emit(part)

    def leaveEvent(self, event: object) -> None:
        """Point at nothing any more."""
        self.pointed.emit("")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose what lies under the mouse."""
        if event.button() is Qt.MouseButton.LeftButton:
            self.chosen.emit(self._part_at(event.position()))

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Start at a part, so that the arrows have somewhere to go from."""
        super().focusInEvent(event)
        if not self.marked and event.reason() is not Qt.FocusReason.MouseFocusReason:
            self._step(0)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Take the frame away."""
        super().focusOutEvent(event)
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go from part to part with the arrows, choose with Enter or the space bar."""
        keys = Qt.Key
        steps = {keys.Key_Down: 1, keys.Key_Right: 1, keys.Key_Up: -1, keys.Key_Left: -1}
        if event.key() in steps:
            self._step(steps[Qt.Key(event.key())])
        elif event.key() in (keys.Key_Return, keys.Key_Enter, keys.Key_Space) and self.marked:
            self.chosen.emit(self.marked)
            self.entered.emit()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the plate, the marked part, and the focus."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = self._desk.theme.colour
        painter.setPen(QPen(colour("ink"), 2) if self.hasFocus() else Qt.PenStyle.NoPen)
        painter.setBrush(colour("plate"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 10, 10)
        if self.plate is not None:
            self._renderer.render(painter, self._paper())
            self._draw_mark(painter)
        painter.end()

    def _draw_mark(self, painter: QPainter) -> None:
        """Outline and tint: the outline alone says which part is meant."""
        part = self.plate.part(self.marked) if self.plate else None
        if part is None:
            return
        path = self._paths.get(part.id) or _path(part)
        self._paths[part.id] = path
        paper = self._paper()
        scale = self._scale()
        painter.translate(paper.topLeft())
        painter.scale(scale, scale)
        tint = QColor(LIGHT.accent)  # plates are light in both schemes
        painter.setPen(QPen(tint, 2.5 / scale))
        tint.setAlpha(70)
        painter.setBrush(tint)
        painter.drawPath(path)

    def _step(self, by: int) -> None:
        """Point at the next part from top to bottom, as the names stand."""
        if self.plate is None or not self.plate.parts:
            return
        down = sorted(self.plate.parts, key=lambda part: _name_place(part).imag)
        order = [part.id for part in down]
        here = order.index(self.marked) + by if self.marked in order else 0
        self.pointed.emit(order[here % len(order)])

    def _part_at(self, point: QPointF) -> str:
        if self.plate is None:
            return ""
        spot = (point - self._paper().topLeft()) / self._scale()
        part = self.plate.part_at(spot.x(), spot.y())
        return part.id if part else ""

    def _scale(self) -> float:
        if self.plate is None:
            return 1.0
        rim = 2 * self._desk.theme.px(EDGE)
        wide = (self.width() - rim) / self.plate.width
        return max(min(wide, (self.height() - rim) / self.plate.height), 0.05)

    def _paper(self) -> QRectF:
        assert self.plate is not None
        scale = self._scale()
        paper = QRectF(0, 0, self.plate.width * scale, self.plate.height * scale)
        paper.moveCenter(QRectF(self.rect()).center())
        return paper

    def _paper_to_widget(self, point: complex) -> QPointF:
        return QPointF(point.real, point.imag) * self._scale() + self._paper().topLeft()

    def _say(self) -> None:
        """Say for readers that speak what is shown and marked."""
        language = self._desk.language
        name = shown_name(self.plate, language) if self.plate else ""
        self.setAccessibleName(self.tr("Drawn animal: {view}").format(view=name))
        part = self.plate.part(self.marked) if self.plate else None
        self.setAccessibleDescription(shown_name(part, language) if part else "")


def _path(part: PlatePart) -> QPainterPath:
    """The outline around all areas of a part."""
    whole = QPainterPath()
    for ring in part.areas:
        piece = QPainterPath()
        piece.setFillRule(Qt.FillRule.WindingFill)
        piece.addPolygon(QPolygonF([QPointF(p.real, p.imag) for p in ring]))
        piece.closeSubpath()
        whole = whole.united(piece)
    return whole


def _name_place(part: PlatePart) -> complex:
    """The middle of the name of a part, on the paper."""
    ring = part.areas[-1]
    return sum(ring) / len(ring)
