"""Drawings and bitmaps as pixmaps of the size they are shown at."""

from pathlib import Path

from PySide6.QtCore import QByteArray, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import QImageIOHandler, QImageReader, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer


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
