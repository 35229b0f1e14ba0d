"""Drawings as pixmaps: state tiles and portraits, rendered once per size."""

from collections import OrderedDict
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QByteArray, QObject, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.errors import IdKeyError
from idkey.figures.portrait import View, lineup_scale_mm, portrait
from idkey.figures.tiles import figure_path
from idkey.model.character import Character, State
from idkey.model.key import Key

KEPT = 800
"""How many rendered pictures are kept."""


CROP = 0.11
"""Share of a portrait's height cut off above and below: the foot holds a bar too small to read."""


class Pictures(QObject):
    """Renders the drawings of keys.

    Args:
        images: Folder of the drawings.
        parent: Owner.

    Signals:
        arrived(): A portrait that was asked for has been drawn; ask again.
    """

    arrived = Signal()

    def __init__(self, images: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._images = images
        self._jobs = Jobs(threads=1, parent=self)
        self._portraits: dict[tuple[str, str, str, bool], bytes | None] = {}
        self._paths: dict[tuple[str, str, str, str], Path | None] = {}
        self._scales: dict[tuple[str, str], float | None] = {}
        self._kept: OrderedDict[tuple[str, int, int, float], QPixmap] = OrderedDict()

    def has_tile(self, key: Key, character: Character, state: State) -> bool:
        """Whether a drawing shows the state."""
        return self._path(key, character, state.id) is not None

    def tile(
        self, key: Key, character: Character, state: State, *, size: QSize, ratio: float
    ) -> QPixmap | None:
        """The drawing of a state, fitted into `size` (device-independent pixels)."""
        path = self._path(key, character, state.id)
        return self._of_file(path, size, ratio) if path else None

    def measure(
        self, key: Key, character: Character, *, size: QSize, ratio: float
    ) -> QPixmap | None:
        """The drawing of how a number is taken, fitted into `size`."""
        path = self._path(key, character, "")
        return self._of_file(path, size, ratio) if path else None

    def portrait(
        self, key: Key, taxon: str, *, size: QSize, ratio: float, scaled: bool = True
    ) -> QPixmap | None:
        """The portrait of a taxon, fitted into `size`; None while it is being drawn.

        Args:
            key: The key.
            taxon: Taxon id.
            size: Room in device-independent pixels.
            ratio: Device pixels per such pixel.
            scaled: Whether all taxa of the key share one scale; else it fills the paper.
        """
        if not key.body_plan:
            return None
        place = (key.id, key.digest, taxon, scaled)
        if place not in self._portraits:
            self._portraits[place] = None
            self._draw(key, place)
        source = self._portraits[place]
        if source is None:
            return None
        crop = CROP if scaled else 0.0
        return self._kept_or(
            "/".join(map(str, place)), lambda: _rendered(source, size, ratio, crop), size, ratio
        )

    @property
    def busy(self) -> bool:
        """Whether a portrait is being drawn."""
        return self._jobs.busy

    def close(self) -> None:
        """Let go of drawing under way."""
        self._jobs.close()

    def _draw(self, key: Key, place: tuple[str, str, str, bool]) -> None:
        def work(tick: Tick) -> tuple[tuple[str, str, str, bool], bytes]:  # on a pool thread
            tick(0, 1)
            view = View(scale_mm=self._scale(key)) if place[3] else View(width=520, height=240)
            try:
                return place, portrait(key, place[2], view=view).encode("utf-8")
            except IdKeyError:
                return place, b""

        job = Job(work)
        job.succeeded.connect(self._on_drawn)
        self._jobs.start(job)

    @Slot(object)
    def _on_drawn(self, drawn: tuple[tuple[str, str, str, bool], bytes]) -> None:
        place, source = drawn
        self._portraits[place] = source
        self.arrived.emit()

    def _scale(self, key: Key) -> float | None:
        place = (key.id, key.digest)
        if place not in self._scales:
            self._scales[place] = lineup_scale_mm(key, [taxon.id for taxon in key.taxa])
        return self._scales[place]

    def _path(self, key: Key, character: Character, state: str) -> Path | None:
        place = (key.id, key.digest, character.id, state)
        if place not in self._paths:
            self._paths[place] = figure_path(self._images, key, character.id, state or None)
        return self._paths[place]

    def _of_file(self, path: Path, size: QSize, ratio: float) -> QPixmap | None:
        def made() -> QPixmap:
            if path.suffix == ".svg":
                return _rendered(path.read_bytes(), size, ratio)
            return _scaled(path, size, ratio)

        return self._kept_or(str(path), made, size, ratio)

    def _kept_or(
        self, name: str, made: Callable[[], QPixmap], size: QSize, ratio: float
    ) -> QPixmap | None:
        place = (name, size.width(), size.height(), ratio)
        found = self._kept.pop(place, None)
        if found is None:
            found = made()
        self._kept[place] = found
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return None if found.isNull() else found


def _rendered(source: bytes, size: QSize, ratio: float, crop: float = 0.0) -> QPixmap:
    if not source or size.isEmpty():
        return QPixmap()
    renderer = QSvgRenderer(QByteArray(source))
    if not renderer.isValid():
        return QPixmap()
    paper = renderer.viewBoxF()
    cut = paper.height() * crop
    paper.adjust(0, cut, 0, -cut)
    renderer.setViewBox(paper)
    whole = paper.size().toSize()
    fitted = whole.scaled(size, Qt.AspectRatioMode.KeepAspectRatio)
    pixmap = QPixmap(fitted * ratio)
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, fitted.width(), fitted.height()))
    painter.end()
    return pixmap


def _scaled(path: Path, size: QSize, ratio: float) -> QPixmap:
    pixmap = QPixmap(str(path))
    if pixmap.isNull() or size.isEmpty():
        return QPixmap()
    keep, smooth = Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
    pixmap = pixmap.scaled(size * ratio, keep, smooth)
    pixmap.setDevicePixelRatio(ratio)
    return pixmap
