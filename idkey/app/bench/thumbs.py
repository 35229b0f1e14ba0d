"""Small pictures of findings, read off the UI thread and kept."""

from PySide6.QtCore import QObject, QSize, Qt, Signal, Slot
from PySide6.QtGui import QImage, QPixmap

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.photo.shelf import PictureShelf

KEPT = 300
"""How many small pictures are kept."""


class Thumbs(QObject):
    """Gives small pictures; without a shelf there are none.

    Args:
        parent: Owner.

    Signals:
        arrived(): A picture that was asked for has been read; ask again.
    """

    arrived = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.shelf: PictureShelf | None = None
        self._jobs = Jobs(threads=1, parent=self)
        self._known: dict[str, QPixmap | None] = {}

    def close(self) -> None:
        """Let go of work under way."""
        self._jobs.close()

    def missing(self, picture: str) -> bool:
        """Whether it was asked for and is not there, or is damaged."""
        known = self._known.get(picture)
        return known is not None and known.isNull()

    def picture(self, picture: str, size: QSize, ratio: float) -> QPixmap | None:
        """A picture that fills `size`; None while it is being read, or without it."""
        if picture not in self._known:
            self._known[picture] = None
            while len(self._known) > KEPT:
                self._known.pop(next(iter(self._known)))
            self._read(picture)
        known = self._known[picture]
        return None if known is None or known.isNull() else _filling(known, size, ratio)

    def _read(self, picture: str) -> None:
        shelf = self.shelf
        if shelf is None:
            return

        def work(tick: Tick) -> tuple[str, QImage]:  # on a pool thread
            tick(0, 1)
            small = shelf.thumbnail(picture)
            return picture, QImage.fromData(small) if small else QImage()

        job = Job(work)
        job.succeeded.connect(self._on_read)
        self._jobs.start(job)

    @Slot(object)
    def _on_read(self, read: tuple[str, QImage]) -> None:
        self._known[read[0]] = QPixmap.fromImage(read[1])
        self.arrived.emit()


def _filling(picture: QPixmap, size: QSize, ratio: float) -> QPixmap:
    """The middle of a picture, so large that it fills `size`."""
    keep = Qt.AspectRatioMode.KeepAspectRatioByExpanding
    wanted = size * ratio
    large = picture.scaled(wanted, keep, Qt.TransformationMode.SmoothTransformation)
    x, y = (large.width() - wanted.width()) // 2, (large.height() - wanted.height()) // 2
    cut = large.copy(x, y, wanted.width(), wanted.height())
    cut.setDevicePixelRatio(ratio)
    return cut
