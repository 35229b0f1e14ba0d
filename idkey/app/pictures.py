"""Drawings as pixmaps: state tiles and portraits, rendered once per size."""

from collections import OrderedDict
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from idkey.model.character import Character, State
from idkey.model.key import Key

KEPT = 800
"""How many rendered pictures are kept."""

TileOf = Callable[[Key, Character, State], Path | None]
PortraitOf = Callable[[Key, str], str]


class Pictures:
    """Renders the drawings of a key.

    Args:
        tile_of: Path of the drawing that shows a state; None when there is none.
        portrait_of: Portrait of a taxon as SVG text; empty when the key has no body plan.
    """

    def __init__(self, tile_of: TileOf, portrait_of: PortraitOf) -> None:
        self._tile_of = tile_of
        self._portrait_of = portrait_of
        self._portraits: OrderedDict[tuple[str, str, str], str] = OrderedDict()
        self._kept: OrderedDict[tuple[str, int, int, float], QPixmap] = OrderedDict()

    def has_tile(self, key: Key, character: Character, state: State) -> bool:
        """Whether a drawing shows the state."""
        return self._tile_of(key, character, state) is not None

    def tile(
        self, key: Key, character: Character, state: State, *, size: QSize, ratio: float
    ) -> QPixmap | None:
        """The drawing of a state, fitted into `size` (device-independent pixels)."""
        path = self._tile_of(key, character, state)
        if path is None:
            return None
        return self._pixmap(str(path), lambda: path.read_bytes(), size, ratio)

    def portrait(self, key: Key, taxon: str, *, size: QSize, ratio: float) -> QPixmap | None:
        """The portrait of a taxon, fitted into `size` (device-independent pixels)."""
        place = (key.id, key.digest or str(id(key)), taxon)
        if place not in self._portraits:
            self._portraits[place] = self._portrait_of(key, taxon)
        text = self._portraits[place]
        if not text:
            return None
        return self._pixmap("/".join(place), lambda: text.encode("utf-8"), size, ratio)

    def _pixmap(
        self, name: str, source: Callable[[], bytes], size: QSize, ratio: float
    ) -> QPixmap | None:
        place = (name, size.width(), size.height(), ratio)
        found = self._kept.pop(place, None)
        if found is None:
            found = _rendered(source(), size, ratio)
        self._kept[place] = found
        while len(self._kept) > KEPT:
            self._kept.popitem(last=False)
        return None if found.isNull() else found


def _rendered(source: bytes, size: QSize, ratio: float) -> QPixmap:
    renderer = QSvgRenderer(QByteArray(source))
    if not renderer.isValid() or size.isEmpty():
        return QPixmap()
    fitted = renderer.defaultSize().scaled(size, Qt.AspectRatioMode.KeepAspectRatio)
    pixmap = QPixmap(fitted * ratio)
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    renderer.render(painter, QRectF(0, 0, fitted.width(), fitted.height()))
    painter.end()
    return pixmap
