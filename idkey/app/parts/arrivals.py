"""Pictures that are dragged or pasted in, as files or bytes."""

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QMimeData
from PySide6.QtGui import QImage

FILTER = "*.jpg *.jpeg *.png *.webp *.heic *.heif"
"""Endings on offer when a file is chosen; what is in the file decides."""

_RAW = ("image/jpeg", "image/png", "image/webp", "image/heic", "image/heif")


@dataclass(frozen=True, slots=True)
class Arrivals:
    """What came.

    Attributes:
        files: Picture files.
        content: A picture that is in no file; empty when none is.
    """

    files: tuple[Path, ...] = ()
    content: bytes = b""

    @property
    def any(self) -> bool:
        """Whether anything came."""
        return bool(self.files or self.content)


def arrivals(mime: QMimeData) -> Arrivals:
    """The pictures in what is dragged or pasted: files first, else the bytes as they came."""
    files = tuple(Path(url.toLocalFile()) for url in mime.urls() if url.isLocalFile())
    if files:
        return Arrivals(files)
    for kind in _RAW:
        if mime.hasFormat(kind):
            return Arrivals(content=bytes(mime.data(kind).data()))
    image = mime.imageData() if mime.hasImage() else None
    return Arrivals(content=_png(image)) if isinstance(image, QImage) else Arrivals()


def _png(image: QImage) -> bytes:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")  # type: ignore[call-overload]
    return bytes(buffer.data().data())
