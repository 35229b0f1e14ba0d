"""Drawings as pixmaps: state tiles and portraits, rendered once per size."""

from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterable
from pathlib import Path

from PySide6.QtCore import QByteArray, QObject, QRectF, QSize, QSizeF, Qt, Signal, Slot
from PySide6.QtGui import QImageIOHandler, QImageReader, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.words import credit_words
from idkey.errors import IdKeyError
from idkey.figures.own import shown_figure, supplied
from idkey.figures.plates import Plate, plate_text, read_plates
from idkey.figures.portrait import (
    View,
    length_found,
    lineup_view,
    portrait,
    portrait_of_findings,
)
from idkey.figures.traits import traits_of_case
from idkey.model.case import Case
from idkey.model.character import Character, State
from idkey.model.key import Key

LONE = View(width=520, height=240)
"""A portrait by itself, with its bar."""

KEPT = 800
"""How many rendered pictures are kept."""

DRAWN = 400
"""How many portraits are kept as drawings."""

PAPER = (400.0, 200.0)
"""Paper of the portraits of a line-up, in the proportions of its rows."""

UNSCALED = View(width=PAPER[0], height=PAPER[1], bar=False)
"""An animal of unknown length beside a line-up."""

Place = tuple[Hashable, ...]


class Pictures(QObject):
    """Renders the drawings of keys.

    Args:
        images: Folder of the drawings.
        parent: Owner.
        libraries: Folders with one folder per key, where a key may have pictures of its own.

    Signals:
        arrived(): A portrait that was asked for has been drawn; ask again.
    """

    arrived = Signal()

    def __init__(
        self, images: Path, parent: QObject | None = None, *, libraries: Iterable[Path] = ()
    ) -> None:
        super().__init__(parent)
        self._images = images
        self._libraries = tuple(libraries)
        self._jobs = Jobs(threads=1, parent=self)
        self._portraits: OrderedDict[Place, bytes | None] = OrderedDict()
        self._paths: dict[Place, Path | None] = {}
        self._views: dict[Place, View] = {}
        self._plates: dict[str, tuple[Plate, ...]] = {"": ()}
        self._kept: OrderedDict[Place, QPixmap] = OrderedDict()

    def has_tile(self, key: Key, character: Character, state: State) -> bool:
        """Whether a drawing shows the state."""
        return self._path(key, character, state.id) is not None

    def tile(
        self, key: Key, character: Character, state: State, *, size: QSize, ratio: float
    ) -> QPixmap | None:
        """The drawing of a state, fitted into `size` (device-independent pixels)."""
        path = self._path(key, character, state.id)
        return self._of_file(path, size, ratio) if path else None

    def credit(self, key: Key, character: Character, state: State) -> str:
        """Who made the picture of a state, and its licence; empty for the shipped drawing."""
        path = self._path(key, character, state.id)
        theirs = supplied(self._images, key, character.id, state.id, figure=path)
        return credit_words(state) if theirs else ""

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

        def drawn() -> str:  # on a pool thread
            return portrait(key, taxon, view=self._view(key) if scaled else LONE)

        return self._portrait(key, (taxon, scaled), drawn, size, ratio)

    def found(self, key: Key, case: Case, *, size: QSize, ratio: float) -> QPixmap | None:
        """The animal as found so far, fitted into `size`; None while it is being drawn.

        It stands at the scale of the line-up once its length is known, else it fills the paper.

        Args:
            key: The key.
            case: The case.
            size: Room in device-independent pixels.
            ratio: Device pixels per such pixel.
        """
        traits = frozenset(traits_of_case(key, case).items())

        def drawn() -> str:  # on a pool thread
            view = self._view(key) if length_found(key, case) else UNSCALED
            return portrait_of_findings(key, case, view=view)

        return self._portrait(key, (traits, case.specimen), drawn, size, ratio)

    def plates(self, key: Key) -> tuple[Plate, ...]:
        """The orientation plates of a key; none when its body plan has none.

        Raises:
            IdKeyError: The list of plates is damaged.
        """
        if key.body_plan not in self._plates:
            self._plates[key.body_plan] = read_plates(self._images, key.body_plan)
        return self._plates[key.body_plan]

    def plate_drawing(self, plate: Plate, *, language: str, ink: str, lines: str) -> bytes:
        """A plate as SVG, its names in a language and in colours (``#rrggbb``)."""
        text = plate_text(self._images, plate, language=language, ink=ink, lines=lines)
        return text.encode("utf-8")

    @property
    def busy(self) -> bool:
        """Whether a portrait is being drawn."""
        return self._jobs.busy

    def close(self) -> None:
        """Let go of drawing under way."""
        self._jobs.close()

    def _portrait(
        self, key: Key, subject: Place, drawn: Callable[[], str], size: QSize, ratio: float
    ) -> QPixmap | None:
        if not key.body_plan:
            return None
        place = (key.id, key.digest, *subject)
        if place not in self._portraits:
            self._portraits[place] = None
            self._draw(place, drawn)
        self._portraits.move_to_end(place)
        source = self._portraits[place]
        if source is None:
            return None
        return self._kept_or(place, lambda: _rendered(source, size, ratio), size, ratio)

    def _draw(self, place: Place, drawn: Callable[[], str]) -> None:
        def work(tick: Tick) -> tuple[Place, bytes]:  # on a pool thread
            tick(0, 1)
            try:
                return place, drawn().encode("utf-8")
            except IdKeyError:
                return place, b""

        job = Job(work)
        job.succeeded.connect(self._on_drawn)
        self._jobs.start(job)

    @Slot(object)
    def _on_drawn(self, drawn: tuple[Place, bytes]) -> None:
        place, source = drawn
        self._portraits[place] = source
        while len(self._portraits) > DRAWN:
            self._portraits.popitem(last=False)
        self.arrived.emit()

    def _view(self, key: Key) -> View:  # on a pool thread
        place = (key.id, key.digest)
        if place not in self._views:
            taxa = [taxon.id for taxon in key.taxa]
            self._views[place] = lineup_view(key, taxa, width=PAPER[0], height=PAPER[1])
        return self._views[place]

    def _path(self, key: Key, character: Character, state: str) -> Path | None:
        place = (key.id, key.digest, character.id, state)
        if place not in self._paths:
            self._paths[place] = shown_figure(
                self._images, self._libraries, key, character=character.id, state=state or None
            )
        return self._paths[place]

    def _of_file(self, path: Path, size: QSize, ratio: float) -> QPixmap | None:
        def made() -> QPixmap:
            if path.suffix == ".svg":
                return _rendered(path.read_bytes(), size, ratio)
            return _scaled(path, size, ratio)

        return self._kept_or((path,), made, size, ratio)

    def _kept_or(
        self, name: Place, made: Callable[[], QPixmap], size: QSize, ratio: float
    ) -> QPixmap | None:
        place = (*name, size.width(), size.height(), ratio)
        found = self._kept.pop(place, None)
        if found is None:
            found = made()
        self._kept[place] = found
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return None if found.isNull() else found


def _rendered(source: bytes, size: QSize, ratio: float) -> QPixmap:
    if not source or size.isEmpty():
        return QPixmap()
    renderer = QSvgRenderer(QByteArray(source))
    if not renderer.isValid():
        return QPixmap()
    keep = Qt.AspectRatioMode.KeepAspectRatio
    fitted = renderer.viewBoxF().size().scaled(QSizeF(size), keep).toSize()
    pixmap = QPixmap(fitted * ratio)
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, fitted.width(), fitted.height()))
    painter.end()
    return pixmap


def _scaled(path: Path, size: QSize, ratio: float) -> QPixmap:
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
    return pixmap
