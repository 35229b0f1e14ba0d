"""The animal as found so far, beside the taxa it may be."""

from PySide6.QtCore import QRect, QSize, Qt, Slot
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent, QPen, QPixmap, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QStyle, QWidget

from idkey.app.bench.lineup_delegate import portrait_frame
from idkey.app.bench.session import Session
from idkey.app.parts.desk import Desk
from idkey.app.parts.tips import tip
from idkey.errors import IdKeyError
from idkey.figures.portrait import findings_drawn, length_found
from idkey.report.words import seen_words

HEIGHT = 74
"""Height at 100 % text, in pixels: that of a row of the line-up, and a hairline."""


class AsFound(QWidget):
    """Draws what the findings say, hatched where they say nothing; away while they say nothing.

    It lies over the rows of the line-up with its drawing in line with theirs, and at their scale
    once the length of the animal is known.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._session: Session | None = None
        self._picture: QPixmap | None = None
        self._zoom = 1.0
        self.known: tuple[str, ...] = ()
        self.scaled = False
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("The animal as found so far"))
        desk.pictures.arrived.connect(self._on_pictures_arrived)
        self.hide()

    @property
    def picture(self) -> QPixmap | None:
        """What is drawn; None while the first drawing is still to come."""
        return self._picture

    def show_session(self, session: Session) -> None:
        """Show the findings of a session; the drawing follows as soon as it is made."""
        if self._session is None or self._session.case.id != session.case.id:
            self._picture = None
        self._session = session
        key, case, language = session.key, session.case, self._desk.language
        try:
            drawn, self.scaled = findings_drawn(key, case), length_found(key, case)
        except IdKeyError:  # a damaged body plan: the line-up does without its drawings too
            drawn, self.scaled = (), False
        self.known = tuple(
            f"{key.character[finding.character].name}: {seen_words(key, finding, language)}"
            for finding in drawn
        )
        lines = (self._title(), *self.known, self.tr("Hatched: not known yet"))
        self.setAccessibleDescription("; ".join(lines))
        self.setToolTip(tip("\n".join(lines)))
        self._redraw()

    def enlarge(self, zoom: float) -> None:
        """Draw the animal larger, as the taxa are."""
        if zoom != self._zoom:
            self._zoom = zoom
            self._redraw()

    def sizeHint(self) -> QSize:
        """As high as a row of the line-up."""
        px = self._desk.theme.px
        return QSize(px(200), px(HEIGHT))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may leave another room for the drawing."""
        super().resizeEvent(event)
        self._redraw()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the animal and what is known of it."""
        px, colour = self._desk.theme.px, self._desk.theme.colour
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        left = self._frame().right() + px(10)
        frame = self._placed(self._frame())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour("plate"))
        painter.drawRoundedRect(frame, 6, 6)
        if self._picture is not None:
            size = self._picture.deviceIndependentSize().toSize()
            place = QRect(frame.topLeft(), size)
            place.moveCenter(frame.center())
            painter.drawPixmap(place.topLeft(), self._picture)
        self._draw_words(painter, left)
        painter.setPen(QPen(colour("line"), 1))
        painter.drawLine(px(12), self.height() - 2, self.width() - px(12), self.height() - 2)
        painter.end()

    def _draw_words(self, painter: QPainter, left: int) -> None:
        theme = self._desk.theme
        px, room = theme.px, self.width() - theme.px(12) - left
        lines = (
            (self._title(), theme.font(13, bold=True), "ink"),
            (self._count(), theme.font(12), "ink"),
            (self.tr("Hatched: not known yet"), theme.font(12), "soft"),
        )
        top = px(10)
        for text, font, name in lines:
            painter.setFont(font)
            painter.setPen(theme.colour(name))
            shown = QFontMetrics(font).elidedText(text, Qt.TextElideMode.ElideRight, room)
            box = self._placed(QRect(left, top, room, px(18)))
            painter.drawText(box, Qt.AlignmentFlag.AlignVCenter, shown)
            top += px(18)

    def _placed(self, rect: QRect) -> QRect:
        """A part of the row, turned round where text runs from the right."""
        return QStyle.visualRect(self.layoutDirection(), self.rect(), rect)

    def _title(self) -> str:
        return self.tr("As found so far") if self.scaled else self.tr("As found, not to scale")

    def _count(self) -> str:
        if len(self.known) == 1:
            return self.tr("From one finding")
        return self.tr("From {n} findings").format(n=len(self.known))

    def _redraw(self) -> None:
        """Ask for the drawing; the one before stays until the new one has come."""
        session = self._session
        if session is None or not self.known:
            return
        made = self._desk.pictures.found(
            session.key,
            session.case,
            size=self._frame().size(),
            ratio=self.devicePixelRatioF(),
            zoom=self._zoom if self.scaled else 1.0,
        )
        if made is not None:
            self._picture = made
        self.update()

    def _frame(self) -> QRect:
        row = self.rect().adjusted(0, 0, 0, -self._desk.theme.px(4))
        return portrait_frame(row, self.width(), self._desk.theme)

    @Slot()
    def _on_pictures_arrived(self) -> None:
        self._redraw()
