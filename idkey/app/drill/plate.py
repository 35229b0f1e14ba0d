"""A drawing on its plate, with a line of words below; says so while it is being drawn."""

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPixmap
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QSizePolicy, QWidget

from idkey.app.parts.theme import Theme


class Plate(QWidget):
    """Shows SVG as large as it fits.

    Args:
        theme: The look.
        least: Least width and height at 100 %, in pixels.
    """

    def __init__(self, theme: Theme, least: tuple[int, int] = (200, 150)) -> None:
        super().__init__()
        self._theme = theme
        self._least = least
        self._source: bytes | None = b""
        self._words = ""
        self._caption = ""
        self._tone = ""
        self._picture: QPixmap | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_drawing(
        self, source: bytes | None, words: str = "", *, caption: str = "", tone: str = ""
    ) -> None:
        """Show a drawing.

        Args:
            source: SVG; None while it is being drawn; empty when there is none.
            words: What to say in its place when there is none.
            caption: The line below it.
            tone: ``"accent"`` or ``"doubt"`` frames it; empty does not.
        """
        if source != self._source:
            self._picture = None
        self._source, self._words, self._caption, self._tone = source, words, caption, tone
        self.setAccessibleName(" ".join(part for part in (caption, words) if part))
        self.update()

    @property
    def drawn(self) -> bool:
        """Whether there is a drawing to see."""
        return bool(self._source)

    @property
    def words(self) -> str:
        """What it says in words."""
        return self._words

    def sizeHint(self) -> QSize:
        """Half as large again as the least."""
        return self.minimumSizeHint() * 1.5

    def minimumSizeHint(self) -> QSize:
        """Room enough to see something; where text is huge it leaves that room to the words."""
        scale = min(self._theme.scale, 130) / 100
        return QSize(*(round(length * scale) for length in self._least))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw plate, drawing and words."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px, colour = self._theme.px, self._theme.colour
        foot = px(26) if self._caption else 0
        plate = QRectF(1, 1, self.width() - 2, self.height() - 2 - foot)
        tone = self._tone
        painter.setPen(QPen(colour(tone), 2) if tone else QPen(colour("line"), 1))
        painter.setBrush(colour("plate"))
        painter.drawRoundedRect(plate, 8, 8)
        room = plate.adjusted(px(10), px(10), -px(10), -px(10))
        if self._source:
            self._draw_picture(painter, room)
        else:
            self._draw_words(painter, room)
        if self._caption:
            painter.setPen(colour(tone) if tone else colour("soft"))
            painter.setFont(self._theme.font(13, bold=bool(tone)))
            line = QRectF(2, self.height() - foot, self.width() - 4, foot)
            text = painter.fontMetrics().elidedText(
                self._caption, Qt.TextElideMode.ElideRight, int(line.width())
            )
            painter.drawText(line, Qt.AlignmentFlag.AlignCenter, text)
        painter.end()

    def _draw_words(self, painter: QPainter, room: QRectF) -> None:
        painter.setPen(self._theme.colour("plate_ink"))
        waiting = self._source is None
        painter.setFont(self._theme.font(13 if waiting else 17, bold=not waiting))
        text = self.tr("Being drawn …") if waiting else self._words
        flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
        painter.drawText(room, int(flags), text)

    def _draw_picture(self, painter: QPainter, room: QRectF) -> None:
        ratio = self.devicePixelRatioF()
        if self._picture is None or self._picture.deviceIndependentSize() != room.size():
            self._picture = _rendered(self._source or b"", room, ratio)
        painter.drawPixmap(room.topLeft(), self._picture)


def _rendered(source: bytes, room: QRectF, ratio: float) -> QPixmap:
    """The drawing in the middle of a pixmap as large as `room`."""
    pixmap = QPixmap((room.size() * ratio).toSize())
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(Qt.GlobalColor.transparent)
    renderer = QSvgRenderer(QByteArray(source))
    if pixmap.isNull() or not renderer.isValid():
        return pixmap
    paper = renderer.viewBoxF().size()
    scale = min(room.width() / paper.width(), room.height() / paper.height())
    wide, high = paper.width() * scale, paper.height() * scale
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    middle = QRectF((room.width() - wide) / 2, (room.height() - high) / 2, wide, high)
    renderer.render(painter, middle)
    painter.end()
    return pixmap
