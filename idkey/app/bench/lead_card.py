"""One lead of a couplet as a card: its statement, its pictures, where it goes."""

from PySide6.QtCore import QPoint, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QStyle

from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_tick
from idkey.app.parts.tips import plain_button, tip
from idkey.model.character import Character, State
from idkey.model.couplet import Lead
from idkey.model.key import Key

TILE = (112, 84)
"""Size of a picture at 100 % text, in pixels."""

LEAST_WIDTH = 180
"""Narrower than that at 100 % text no lead can be read, in pixels."""


class LeadCard(QAbstractButton):
    """A lead that can be marked.

    Args:
        key: The key.
        lead: The lead.
        number: Its number, from 1.
        desk: Look, drawings, language.
    """

    def __init__(self, key: Key, lead: Lead, number: int, *, desk: Desk) -> None:
        super().__init__()
        self.lead = lead
        self.number = number
        self._key = key
        self._desk = desk
        self._tiles = _pictured(key, lead, desk)
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.setText(plain_button(lead.statement))
        self.setAccessibleName(lead.statement)
        shown = (desk.pictures.credit(key, character, state) for character, state in self._tiles)
        credits_ = [credit for credit in dict.fromkeys(shown) if credit]
        self.setAccessibleDescription(". ".join((self._goal(), *credits_)))
        self.setToolTip(tip("\n".join(credits_)))
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def sizeHint(self) -> QSize:
        """Room for the statement and one row of pictures."""
        px = self._desk.theme.px
        return QSize(px(240), self.heightForWidth(px(240)))

    def minimumSizeHint(self) -> QSize:
        """Narrower than that nothing can be read."""
        return QSize(self._desk.theme.px(LEAST_WIDTH), self._desk.theme.px(120))

    def hasHeightForWidth(self) -> bool:
        """Narrower is higher."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Height for statement, pictures and goal at a width."""
        px = self._desk.theme.px
        rows = -(-len(self._tiles) // self._columns(width)) if self._tiles else 0
        pictures = rows * (self._tile(width).height() + px(6))
        return px(16) + self._statement_height(width) + px(8) + pictures + px(34)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the card."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        px, colour = self._desk.theme.px, self._desk.theme.colour
        chosen = self.isChecked()
        painter.setBrush(colour("accent_soft" if chosen or self.underMouse() else "raised"))
        painter.setPen(QPen(colour("accent" if chosen else "outline"), 2 if chosen else 1))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(2, 2, -2, -2), 10, 10)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(colour("ink"), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 11, 11)
        high = self._statement_height(self.width())
        painter.setFont(self._desk.theme.font(15, bold=True))
        painter.setPen(colour("ink"))
        box = self._placed(QRect(px(38), px(14), self.width() - px(66), high))
        painter.drawText(box, int(Qt.TextFlag.TextWordWrap), self.lead.statement)
        self._draw_pictures(painter, px(14) + high + px(8))
        painter.setFont(self._desk.theme.font(12))
        painter.setPen(colour("soft"))
        foot = QRect(px(14), self.height() - px(30), self.width() - px(28), px(22))
        metrics = painter.fontMetrics()
        goal = metrics.elidedText(self._goal(), Qt.TextElideMode.ElideRight, foot.width())
        painter.drawText(foot, int(Qt.AlignmentFlag.AlignVCenter), goal)
        self._draw_corners(painter)
        painter.end()

    def _draw_pictures(self, painter: QPainter, top: int) -> None:
        px, colour = self._desk.theme.px, self._desk.theme.colour
        size, columns = self._tile(self.width()), self._columns(self.width())
        for number, (character, state) in enumerate(self._tiles):
            row, column = divmod(number, columns)
            x = px(14) + column * (size.width() + px(6))
            y = top + row * (size.height() + px(6))
            plate = self._placed(QRect(QPoint(x, y), size))
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour("plate"))
            painter.drawRoundedRect(QRectF(plate), 6, 6)
            picture = self._desk.pictures.tile(
                self._key, character, state, size=size, ratio=self.devicePixelRatioF()
            )
            if picture is not None:
                painter.drawPixmap(plate.topLeft(), picture)

    def _draw_corners(self, painter: QPainter) -> None:
        px, colour = self._desk.theme.px, self._desk.theme.colour
        box = QRectF(self._placed(QRect(px(12), px(14), px(18), px(18))))
        painter.setPen(QPen(colour("outline"), 1))
        painter.setBrush(colour("raised"))
        painter.drawRoundedRect(box, 4, 4)
        painter.setPen(colour("ink"))
        painter.setFont(self._desk.theme.font(11, bold=True))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(self.number))
        if self.isChecked():
            side = px(18)
            place = self._placed(QRect(self.width() - px(12) - side, px(14), side, side))
            draw_tick(painter, QRectF(place), colour("accent"), colour("raised"))

    def _placed(self, rect: QRect) -> QRect:
        """A part of the card, turned round where text runs from the right."""
        return QStyle.visualRect(self.layoutDirection(), self.rect(), rect)

    def _columns(self, width: int) -> int:
        px = self._desk.theme.px
        return max(1, (width - px(22)) // (self._tile(width).width() + px(6)))

    def _tile(self, width: int) -> QSize:
        """Size of a picture: two stand side by side on a narrow card too."""
        px = self._desk.theme.px
        wide = min(px(TILE[0]), max((width - px(28) - px(6)) // 2, px(72)))
        return QSize(wide, wide * TILE[1] // TILE[0])

    def _statement_height(self, width: int) -> int:
        metrics = QFontMetrics(self._desk.theme.font(15, bold=True))
        px = self._desk.theme.px
        room = QRect(0, 0, max(width - px(66), 40), 10_000)
        return metrics.boundingRect(
            room, int(Qt.TextFlag.TextWordWrap), self.lead.statement
        ).height()

    def _goal(self) -> str:
        if self.lead.to:
            return self.tr("on to couplet {number}").format(number=self.lead.to)
        names = ", ".join(
            self._key.taxon[taxon].name for taxon in self.lead.taxa if taxon in self._key.taxon
        )
        return self.tr("ends at {names}").format(names=names)


def _pictured(key: Key, lead: Lead, desk: Desk) -> tuple[tuple[Character, State], ...]:
    """The states of a lead that have a drawing."""
    found = []
    for sees in lead.sees:
        character = key.character[sees.character]
        for state in character.states:
            if state.id in sees.states and desk.pictures.has_tile(key, character, state):
                found.append((character, state))
    return tuple(found[:6])
