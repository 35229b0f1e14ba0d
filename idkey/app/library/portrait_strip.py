"""What the animals of a key look like, in three pictures."""

from PySide6.QtCore import QSize, Qt, Slot
from PySide6.QtGui import QPixmap, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QWidget

from idkey.app.parts.desk import Desk
from idkey.app.parts.tips import tip
from idkey.model.key import Key

PICTURES = 3


class PortraitStrip(QWidget):
    """Portraits of the first, the middle and the last taxon; tiles where a key draws no animal.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._key: Key | None = None
        px = desk.theme.px
        self._gap = px(8)
        self._size = QSize(px(118), px(72))
        self._labels = tuple(QLabel() for _ in range(PICTURES))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(self._gap)
        for label in self._labels:
            label.setProperty("pane", "plate")
            label.setAlignment(Qt.AlignmentFlag.AlignCenter)
            label.setMinimumWidth(1)
            label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
            label.setFixedHeight(self._size.height() + px(16))
            row.addWidget(label, 1)
        desk.pictures.arrived.connect(self._on_pictures_arrived)

    def show_key(self, key: Key | None) -> None:
        """Show another key; nothing for none."""
        self._key = key
        self._draw()

    def showEvent(self, event: QShowEvent) -> None:
        """Draw with the density of the screen it is on."""
        super().showEvent(event)
        self._draw()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the pictures to the room there is."""
        super().resizeEvent(event)
        px = self._desk.theme.px
        room = (event.size().width() - 2 * self._gap) // PICTURES - px(16)
        wide = max(min(room, px(118)), px(40))
        if wide != self._size.width():
            self._size = QSize(wide, px(72))
            self._draw()

    def _draw(self) -> None:
        pictures = self._pictures(self._key) if self._key is not None else []
        self.setVisible(bool(pictures))
        for number, label in enumerate(self._labels):
            pixmap, name = pictures[number] if number < len(pictures) else (None, "")
            label.setVisible(number < len(pictures))
            label.setPixmap(pixmap or QPixmap())
            label.setAccessibleName(name)
            label.setToolTip(tip(name))

    def _pictures(self, key: Key) -> list[tuple[QPixmap | None, str]]:
        ratio = self.devicePixelRatioF()
        if key.body_plan and key.taxa:
            last = len(key.taxa) - 1
            chosen = dict.fromkeys(key.taxa[n] for n in (0, last // 2, last))
            portrait = self._desk.pictures.portrait
            return [
                (portrait(key, taxon.id, size=self._size, ratio=ratio, scaled=False), taxon.name)
                for taxon in chosen
            ]
        return self._tiles(key, ratio)

    def _tiles(self, key: Key, ratio: float) -> list[tuple[QPixmap | None, str]]:
        pictures, found = self._desk.pictures, list[tuple[QPixmap | None, str]]()
        for character in key.characters:
            drawn = [s for s in character.states if pictures.has_tile(key, character, s)]
            if drawn:
                state = drawn[len(found) % len(drawn)]
                tile = pictures.tile(key, character, state, size=self._size, ratio=ratio)
                found.append((tile, f"{character.name}: {state.label}"))
            if len(found) == PICTURES:
                break
        return found

    @Slot()
    def _on_pictures_arrived(self) -> None:
        if self.isVisible():  # else it is drawn when it comes into sight
            self._draw()
