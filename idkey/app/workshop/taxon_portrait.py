"""The portrait of a taxon as its scores say it now."""

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt, QTimer, Slot
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.desk import Desk
from idkey.errors import IdKeyError
from idkey.figures.portrait import View, portrait
from idkey.model.key import Key

HEIGHT = 170
"""Height at 100 % text, in pixels."""

_VIEW = View(width=520, height=200)


class TaxonPortrait(QWidget):
    """Draws a taxon from its scores; what is not scored stays dashed.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._theme = desk.theme
        self._key: Key | None = None
        self._taxon = ""
        self._drawn: object = None
        self._renderer = QSvgRenderer(self)
        self._wait = QTimer(self, singleShot=True, interval=30)
        self._wait.timeout.connect(self._on_waited)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Portrait drawn from the scores"))

    def show_taxon(self, key: Key, taxon: str) -> None:
        """Draw a taxon of a key soon; nothing is drawn anew while its scores stay the same."""
        self._key, self._taxon = key, taxon
        self.setVisible(bool(key.body_plan))
        self._wait.start()

    @property
    def is_drawn(self) -> bool:
        """Whether there is a drawing."""
        return self._renderer.isValid()

    def sizeHint(self) -> QSize:
        """Room for the drawing."""
        return QSize(self._theme.px(320), self._theme.px(HEIGHT))

    def minimumSizeHint(self) -> QSize:
        """As high, and narrow."""
        return QSize(self._theme.px(120), self._theme.px(HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the plate and the animal."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme.colour("plate"))
        painter.drawRoundedRect(QRectF(self.rect()), 8, 8)
        if self._renderer.isValid():
            room = QRectF(self.rect()).adjusted(10, 6, -10, -6)
            size = self._renderer.viewBoxF().size()
            size.scale(room.size(), Qt.AspectRatioMode.KeepAspectRatio)
            place = QRectF(0, 0, size.width(), size.height())
            place.moveCenter(room.center())
            self._renderer.render(painter, place)
        painter.end()

    @Slot()
    def _on_waited(self) -> None:
        key, taxon = self._key, self._taxon
        if key is None or taxon not in key.taxon or not key.body_plan:
            return
        own = tuple(score for score in key.scores if score.taxon == taxon)
        drawn = (key.body_plan, key.taxon[taxon].name, own, key.characters)
        if drawn == self._drawn:
            return
        self._drawn = drawn
        try:
            source = portrait(key, taxon, view=_VIEW)
        except IdKeyError:
            source = ""
        self._renderer.load(QByteArray(source.encode("utf-8")))
        self.update()
