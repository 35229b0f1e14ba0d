"""Marks that carry a meaning by shape: danger, papers, conflict."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF


def draw_hazard(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """A triangle with an exclamation mark."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    side = min(box.width(), box.height())
    left, top = box.center().x() - side / 2, box.center().y() - side / 2
    shape = QPolygonF(
        [
            QPointF(left + side / 2, top + side * 0.06),
            QPointF(left + side * 0.98, top + side * 0.92),
            QPointF(left + side * 0.02, top + side * 0.92),
        ]
    )
    pen = QPen(colour, side * 0.08)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(colour)
    painter.drawPolygon(shape)
    _exclaim(painter, QRectF(left, top, side, side), ground)
    painter.restore()


def draw_permit(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """A sheet of paper with a folded corner and lines."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    side = min(box.width(), box.height())
    left, top = box.center().x() - side * 0.38, box.center().y() - side / 2
    sheet = QPainterPath(QPointF(left, top + side * 0.04))
    sheet.lineTo(left + side * 0.48, top + side * 0.04)
    sheet.lineTo(left + side * 0.76, top + side * 0.32)
    sheet.lineTo(left + side * 0.76, top + side * 0.96)
    sheet.lineTo(left, top + side * 0.96)
    sheet.closeSubpath()
    painter.fillPath(sheet, colour)
    painter.setPen(QPen(ground, side * 0.09))
    for height in (0.5, 0.66, 0.82):
        painter.drawLine(
            QPointF(left + side * 0.14, top + side * height),
            QPointF(left + side * 0.62, top + side * height),
        )
    painter.restore()


def draw_doubt(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """A diamond with an exclamation mark: something does not fit."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    side = min(box.width(), box.height())
    middle = box.center()
    half = side / 2
    shape = QPolygonF(
        [
            QPointF(middle.x(), middle.y() - half),
            QPointF(middle.x() + half, middle.y()),
            QPointF(middle.x(), middle.y() + half),
            QPointF(middle.x() - half, middle.y()),
        ]
    )
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    painter.drawPolygon(shape)
    _exclaim(
        painter, QRectF(middle.x() - half, middle.y() - half * 1.1, side, side), ground, size=0.8
    )
    painter.restore()


def draw_tick(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """A disc with a tick: chosen."""
    painter.save()
    _disc(painter, box, colour)
    pen = QPen(ground, box.width() * 0.13)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    x, y, side = box.x(), box.y(), box.width()
    painter.drawPolyline(
        QPolygonF(
            [
                QPointF(x + side * 0.27, y + side * 0.53),
                QPointF(x + side * 0.43, y + side * 0.69),
                QPointF(x + side * 0.74, y + side * 0.34),
            ]
        )
    )
    painter.restore()


def draw_cross(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """A disc with a cross: not this one."""
    painter.save()
    _disc(painter, box, colour)
    pen = QPen(ground, box.width() * 0.13)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    inner = box.adjusted(*(box.width() * share for share in (0.32, 0.32, -0.32, -0.32)))
    painter.drawLine(inner.topLeft(), inner.bottomRight())
    painter.drawLine(inner.topRight(), inner.bottomLeft())
    painter.restore()


def draw_magnifier(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """A magnifying glass on a disc."""
    painter.save()
    _disc(painter, box, ground)
    pen = QPen(colour, box.width() * 0.08)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    x, y, side = box.x(), box.y(), box.width()
    painter.drawEllipse(QPointF(x + side * 0.44, y + side * 0.44), side * 0.19, side * 0.19)
    painter.drawLine(
        QPointF(x + side * 0.59, y + side * 0.59), QPointF(x + side * 0.75, y + side * 0.75)
    )
    painter.restore()


def _disc(painter: QPainter, box: QRectF, colour: QColor) -> None:
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    painter.drawEllipse(box)


def _exclaim(painter: QPainter, box: QRectF, colour: QColor, size: float = 1.0) -> None:
    side, x = box.width(), box.center().x()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    wide = side * 0.1 * size
    painter.drawRoundedRect(
        QRectF(x - wide / 2, box.y() + side * 0.34, wide, side * 0.3 * size), wide / 2, wide / 2
    )
    painter.drawEllipse(
        QPointF(x, box.y() + side * 0.78 * (0.92 if size < 1 else 1)), wide * 0.6, wide * 0.6
    )


def draw_camera(painter: QPainter, box: QRectF, colour: QColor, ground: QColor) -> None:
    """A camera with a plus: a picture can be added."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    x, y, side = box.x(), box.y(), box.width()
    painter.setPen(QPen(colour, side * 0.09))
    painter.setBrush(ground)
    body = QRectF(x + side * 0.06, y + side * 0.3, side * 0.78, side * 0.54)
    painter.drawRoundedRect(QRectF(x + side * 0.3, y + side * 0.18, side * 0.3, side * 0.2), 2, 2)
    painter.drawRoundedRect(body, side * 0.1, side * 0.1)
    painter.drawEllipse(body.center(), side * 0.14, side * 0.14)
    middle, arm = QPointF(x + side * 0.84, y + side * 0.2), side * 0.15
    painter.drawLine(middle - QPointF(arm, 0), middle + QPointF(arm, 0))
    painter.drawLine(middle - QPointF(0, arm), middle + QPointF(0, arm))
    painter.restore()
