"""Drawings and bitmaps as pixmaps of the size they are shown at."""

from pathlib import Path

from PySide6.QtCore import QByteArray, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import QImageIOHandler, QImageReader, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from idkey.app.parts.theme import Theme


def rendered(source: bytes, size: QSize, ratio: float, zoom: float = 1.0) -> QPixmap:
    """A drawing fitted into `size`; with a zoom, its middle alone."""
    if not source or size.isEmpty():
        return QPixmap()
    renderer = QSvgRenderer(QByteArray(source))
    if not renderer.isValid():
        return QPixmap()
    paper = renderer.viewBoxF()
    middle = QRectF(0, 0, paper.width() / zoom, paper.height() / zoom)
    middle.moveCenter(paper.center())
    renderer.setViewBox(middle)
    keep = Qt.AspectRatioMode.KeepAspectRatio
    fitted = renderer.viewBoxF().size().scaled(QSizeF(size), keep).toSize()
    pixmap = QPixmap(fitted * ratio)
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, fitted.width(), fitted.height()))
    painter.end()
    # What was painted on keeps its painting engine, half a megabyte; a copy does not.
    return pixmap.copy()


def scaled_bitmap(path: Path, size: QSize, ratio: float) -> QPixmap:
    """A bitmap at its size on the screen; larger ones are never unpacked whole where avoidable."""
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    whole = reader.size()
    if size.isEmpty() or not whole.isValid():
        return QPixmap()
    turned = reader.transformation() & QImageIOHandler.Transformation.TransformationRotate90
    room = (size.transposed() if turned else size) * ratio
    reader.setScaledSize(whole.scaled(room, Qt.AspectRatioMode.KeepAspectRatio))
    pixmap = QPixmap.fromImage(reader.read())
    pixmap.setDevicePixelRatio(ratio)
    return pixmap.copy()


def on_plate(drawn: QPixmap | None, size: QSize, *, ratio: float, theme: Theme) -> QPixmap:
    """A drawing in the middle of the plate it is drawn for, light in the dark scheme too.

    Args:
        drawn: The drawing; None leaves the plate empty.
        size: Size of the plate.
        ratio: Pixels of the screen per pixel of `size`.
        theme: The look.
    """
    plate = QPixmap(size * ratio)
    plate.setDevicePixelRatio(ratio)
    plate.fill(Qt.GlobalColor.transparent)
    painter = QPainter(plate)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.colour("plate"))
    painter.drawRoundedRect(QRectF(0, 0, size.width(), size.height()), 6, 6)
    if drawn is not None:
        whole = drawn.deviceIndependentSize()
        x, y = (size.width() - whole.width()) / 2, (size.height() - whole.height()) / 2
        painter.drawPixmap(round(x), round(y), drawn)
    painter.end()
    return plate
