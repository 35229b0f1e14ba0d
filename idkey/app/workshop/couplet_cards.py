"""Couplets and ends as cards on a sheet, and the leads as lines between them."""

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from idkey.app.parts.marks import draw_doubt, draw_hazard
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip
from idkey.app.workshop.couplet_facts import LeadFact
from idkey.app.workshop.couplet_layout import Spot

ROW = 24.0
"""Height of a row at 100 % text, in pixels."""

FAR = 0.5
"""Below this scale only the numbers of couplets are drawn: nobody could read more."""

CARD, END, GAP = 240.0, 190.0, 48.0
"""Widths of a couplet and of an end, and the room between columns, at 100 % text."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Card:
    """A couplet as it is drawn.

    Attributes:
        id: Its id.
        leads: Letter and statement of each lead.
        facts: How each lead stands.
        chosen: Number of the lead that is chosen; -1 for the couplet, None for nothing.
        reached: Whether a lead comes to it.
        wrong: Whether it has a mistake.
    """

    id: str
    leads: tuple[tuple[str, str], ...]
    facts: tuple[LeadFact | None, ...]
    chosen: int | None
    reached: bool
    wrong: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Ending:
    """An end as it is drawn: names of its taxa, and whether one of them is dangerous."""

    names: tuple[str, ...]
    dangerous: bool
    chosen: bool


class CardItem(QGraphicsItem):
    """A couplet: its number, and a row for each lead."""

    def __init__(self, card: Card, theme: Theme) -> None:
        super().__init__()
        self.card = card
        self._theme = theme
        self.target = False

    def boundingRect(self) -> QRectF:
        """All of it, with its edge."""
        return self.frame().adjusted(-3, -3, 3, 3)

    def frame(self) -> QRectF:
        """The card."""
        row = self._row()
        wide = self._theme.px(CARD)
        return QRectF(0, 0, wide, row * (1 + len(self.card.leads)))

    def row_at(self, y: float) -> int:
        """Number of the lead at a height; -1 for the head."""
        return min(int(y // self._row()), len(self.card.leads)) - 1

    def port(self, lead: int) -> QPointF:
        """Where the line of a lead starts."""
        edge = 0.0 if self._theme.mirrored else self.frame().right()
        return QPointF(edge, self._row() * (lead + 1.5))

    def entry(self) -> QPointF:
        """Where lines arrive."""
        return QPointF(self.frame().right() if self._theme.mirrored else 0, self._row() / 2)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Draw the card."""
        colour, frame, row = self._theme.colour, self.frame(), self._row()
        bad = self.card.wrong or not self.card.reached
        edge = "accent" if self.target or self.card.chosen == -1 else "doubt" if bad else "outline"
        pen = QPen(colour(edge), 2 if edge != "outline" else 1)
        if not self.card.reached:
            pen.setStyle(Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.setBrush(colour("accent_soft" if self.target else "raised"))
        painter.drawRoundedRect(frame, 8, 8)
        painter.setPen(colour("ink"))
        if option.levelOfDetailFromTransform(painter.worldTransform()) < FAR:
            self._draw_far(painter)
            return
        painter.setFont(self._theme.font(14, bold=True))
        head = QRectF(10, 0, frame.width() - 40, row)
        painter.drawText(self._turned(head), Qt.AlignmentFlag.AlignVCenter, self.card.id)
        if bad:
            side = row * 0.6
            box = QRectF(frame.right() - row, row * 0.2, side, side)
            draw_doubt(painter, self._turned(box), colour("doubt"), colour("raised"))
        for number in range(len(self.card.leads)):
            self._draw_lead(painter, number)

    def _draw_far(self, painter: QPainter) -> None:
        """The number alone, as large as it fits, and what is chosen."""
        colour, frame, row = self._theme.colour, self.frame(), self._row()
        chosen = self.card.chosen
        if chosen is not None and chosen >= 0:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour("accent"))
            painter.drawRect(QRectF(0, row * (chosen + 1), frame.width(), row))
        painter.setPen(colour("ink"))
        painter.setFont(self._theme.font(46, bold=True))
        painter.drawText(frame, Qt.AlignmentFlag.AlignCenter, self.card.id)

    def _draw_lead(self, painter: QPainter, number: int) -> None:
        colour, row = self._theme.colour, self._row()
        box = QRectF(1, row * (number + 1), self.frame().width() - 2, row)
        fact = self.card.facts[number]
        bad = fact is not None and bool(fact.wrong or fact.circles or fact.lost)
        if self.card.chosen == number:
            painter.setPen(QPen(colour("accent"), 2))
            painter.setBrush(colour("accent_soft"))
            painter.drawRoundedRect(box.adjusted(2, 1, -2, -1), 5, 5)
        letter, words = self.card.leads[number]
        painter.setPen(colour("soft"))
        painter.setFont(self._theme.font(12, bold=True))
        place = self._turned(box.adjusted(9, 0, 0, 0))
        painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, letter)
        font = self._theme.font(12)
        painter.setFont(font)
        painter.setPen(colour("ink"))
        text = box.adjusted(self._theme.px(28), 0, -row if bad else -10, 0)
        shown = QFontMetrics(font).elidedText(words, Qt.TextElideMode.ElideRight, int(text.width()))
        painter.drawText(self._turned(text), Qt.AlignmentFlag.AlignVCenter, shown)
        if bad:
            side = row * 0.6
            mark = QRectF(box.right() - row * 0.9, box.top() + row * 0.2, side, side)
            draw_doubt(painter, self._turned(mark), colour("doubt"), colour("raised"))

    def _turned(self, box: QRectF) -> QRectF:
        return turned(box, self.frame().width()) if self._theme.mirrored else box

    def _row(self) -> float:
        return float(self._theme.px(ROW))


def place_of(spot: Spot, wide: float, theme: Theme) -> QPointF:
    """Where a card of that width stands on the sheet; columns go the way text runs."""
    px = theme.px
    x, y = spot.column * px(CARD + GAP), spot.top * px(ROW)
    return QPointF(px(CARD) - px(wide) - x if theme.mirrored else x, y)


def turned(box: QRectF, wide: float) -> QRectF:
    """A box on a card of that width, where text runs from the right."""
    return QRectF(wide - box.right(), box.top(), box.width(), box.height())


class EndItem(QGraphicsItem):
    """An end: the taxa a lead ends in."""

    def __init__(self, ending: Ending, theme: Theme) -> None:
        super().__init__()
        self.ending = ending
        self._theme = theme
        self.setToolTip(tip("\n".join(ending.names)))

    def boundingRect(self) -> QRectF:
        """All of it, with its edge."""
        return self.frame().adjusted(-3, -3, 3, 3)

    def frame(self) -> QRectF:
        """The card."""
        return QRectF(0, 0, self._theme.px(END), self._theme.px(ROW))

    def entry(self) -> QPointF:
        """Where the line arrives."""
        frame = self.frame()
        return QPointF(frame.right() if self._theme.mirrored else 0, frame.height() / 2)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Draw the card."""
        colour, frame = self._theme.colour, self.frame()
        chosen = self.ending.chosen
        painter.setPen(QPen(colour("accent" if chosen else "line"), 2 if chosen else 1))
        painter.setBrush(colour("accent_soft" if chosen else "surface"))
        painter.drawRoundedRect(frame, frame.height() / 2, frame.height() / 2)
        left = 12.0
        if self.ending.dangerous:
            side = frame.height() * 0.62
            box = QRectF(10, frame.height() * 0.19, side, side)
            box = turned(box, frame.width()) if self._theme.mirrored else box
            draw_hazard(painter, box, colour("hazard"), colour("surface"))
            left += side + 4
        if option.levelOfDetailFromTransform(painter.worldTransform()) < FAR:
            return
        font = self._theme.font(12, italic=True)
        more = f" +{len(self.ending.names) - 1}" if len(self.ending.names) > 1 else ""
        text = frame.adjusted(left, 0, -10, 0)
        text = turned(text, frame.width()) if self._theme.mirrored else text
        metrics = QFontMetrics(font)
        room = int(text.width()) - metrics.horizontalAdvance(more)
        name = metrics.elidedText(self.ending.names[0], Qt.TextElideMode.ElideRight, room)
        painter.setFont(font)
        painter.setPen(colour("ink"))
        painter.drawText(text, Qt.AlignmentFlag.AlignVCenter, name + more)


class LeadLine(QGraphicsItem):
    """A line from a lead to where it goes."""

    def __init__(self, start: QPointF, end: QPointF, theme: Theme, *, tone: str) -> None:
        super().__init__()
        self._theme = theme
        self._tone = tone
        bend = max(abs(end.x() - start.x()) / 2, theme.px(30)) * (-1 if theme.mirrored else 1)
        self._path = QPainterPath(start)
        self._path.cubicTo(start + QPointF(bend, 0), end - QPointF(bend, 0), end)
        self.setZValue(-1 if tone == "outline" else -0.5)

    def boundingRect(self) -> QRectF:
        """All of the line."""
        return self._path.boundingRect().adjusted(-4, -4, 4, 4)

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Draw the line: thick where it is chosen, dashed where it runs in a circle."""
        near = max(option.levelOfDetailFromTransform(painter.worldTransform()), 0.1)
        wide = 1.2 if self._tone == "outline" else 2.6
        pen = QPen(self._theme.colour(self._tone), wide / min(near, 1.0))
        if self._tone == "doubt":
            pen.setStyle(Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(self._path)
