"""Drawings as pixels, through the same renderer the window uses."""

from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QByteArray, QRectF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from idkey.engine.colour import lab_of_rgb

Pixels = NDArray[np.float64]
TILE = (160, 120)


def pixels(drawing: Path | str, *, size: tuple[int, int] = TILE, ground: str = "#ffffff") -> Pixels:
    """Channels of sRGB from 0 to 1, shape (height, width, 3)."""
    source = drawing.read_bytes() if isinstance(drawing, Path) else drawing.encode()
    renderer = QSvgRenderer(QByteArray(source))
    assert renderer.isValid()
    return painted(renderer, size, ground=ground)


def painted(
    renderer: QSvgRenderer, size: tuple[int, int], *, ground: str, border: int = 0
) -> Pixels:
    """The drawing with a border of bare ground around it."""
    wide, high = size
    image = QImage(wide + 2 * border, high + 2 * border, QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    renderer.render(painter, QRectF(border, border, wide, high))
    painter.end()
    flat = np.frombuffer(image.constBits(), np.uint8)
    return flat.reshape(image.height(), image.width(), 4)[:, :, 2::-1] / 255.0


def lab(drawing: Path | str, *, size: tuple[int, int] = TILE, ground: str = "#ffffff") -> Pixels:
    """CIELAB of the drawing, shape (height, width, 3)."""
    return lab_of_rgb(pixels(drawing, size=size, ground=ground))
