"""A picture for the screen, halved again and again, so that any zoom draws quickly."""

from dataclasses import dataclass

from PIL import Image
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter, QPixmap

from idkey.app.photo.sight import Sight
from idkey.photo.marks import Point

SMALLEST = 700
"""Longest side of the last halving, in pixels."""


@dataclass(frozen=True, slots=True)
class Levels:
    """A picture and its halvings, largest first; each is half as wide as the one before."""

    images: tuple[QImage, ...]

    @property
    def size(self) -> tuple[float, float]:
        """Width and height of the picture."""
        return float(self.images[0].width()), float(self.images[0].height())

    def draw(self, painter: QPainter, sight: Sight, area: QRectF) -> None:
        """Draw what `sight` shows.

        Args:
            painter: Paints the window; its origin is the window's corner.
            sight: Which part, how large.
            area: Part of the window to fill.
        """
        number, halved = 0, 1.0
        dense = sight.scale * painter.device().devicePixelRatioF()
        while number + 1 < len(self.images) and dense <= halved / 2:
            number, halved = number + 1, halved / 2
        left, top = sight.in_picture((area.left(), area.top()))
        right, bottom = sight.in_picture((area.right(), area.bottom()))
        left, top = max(left, 0.0), max(top, 0.0)
        right, bottom = min(right, self.size[0]), min(bottom, self.size[1])
        if right <= left or bottom <= top:
            return
        start, end = sight.on_screen((left, top)), sight.on_screen((right, bottom))
        target = QRectF(QPointF(*start), QPointF(*end))
        part = QRectF(left, top, right - left, bottom - top)
        scaled = QRectF(part.topLeft() * halved, part.size() * halved)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, sight.scale < 6)
        painter.drawImage(target, self.images[number], scaled)

    def cut(self, box: tuple[float, float, float, float], size: QSize, ratio: float) -> QPixmap:
        """A part of the picture, fitted into `size` (device-independent pixels)."""
        left, top, width, height = (round(side) for side in box)
        part = self.images[0].copy(left, top, max(width, 1), max(height, 1))
        keep, smooth = (
            Qt.AspectRatioMode.KeepAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )
        made = QPixmap.fromImage(part.scaled(size * ratio, keep, smooth))
        made.setDevicePixelRatio(ratio)
        return made


def levels_of(picture: Image.Image) -> Levels:  # also on a pool thread
    """A picture ready for the screen."""
    plain = picture.convert("RGB")
    images = [_image(plain)]
    while max(plain.size) > SMALLEST:
        plain = plain.reduce(2)
        images.append(_image(plain))
    return Levels(tuple(images))


def levels_of_pixmap(pixmap: QPixmap, ground: str) -> Levels:
    """A drawing on its ground, ready for the screen."""
    image = QImage(pixmap.size(), QImage.Format.Format_RGB32)
    image.fill(ground)
    painter = QPainter(image)
    painter.drawPixmap(0, 0, pixmap.width(), pixmap.height(), pixmap)
    painter.end()
    return Levels((image,))


def middle(one: Point, other: Point) -> Point:
    """The point between two points."""
    return (one[0] + other[0]) / 2, (one[1] + other[1]) / 2


def _image(plain: Image.Image) -> QImage:
    data = plain.tobytes()
    made = QImage(data, plain.width, plain.height, 3 * plain.width, QImage.Format.Format_RGB888)
    return made.convertToFormat(QImage.Format.Format_RGB32)
