"""Draws a finding of the ledger as a card."""

from dataclasses import dataclass

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from idkey.app.bench.thumbs import Thumbs
from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_camera, draw_doubt
from idkey.app.parts.rows import ROW_ROLE, placed
from idkey.model.case import Certainty
from idkey.report.words import certainty_words

Index = QModelIndex | QPersistentModelIndex

THUMB = 46
"""Side of a small picture at 100 % text, in pixels."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LedgerRow:
    """One finding as it is shown.

    Attributes:
        character: Character id.
        name: Its name.
        seen: What was seen, in words.
        effect: What it changed, in a few words.
        certainty: How sure.
        unseen: Whether it could not be seen.
        note: The remark; empty for none.
        against: Whether it speaks against the name that leads.
        pictures: Ids of its pictures.
        spoken: All of it in sentences.
    """

    character: str
    name: str
    seen: str
    effect: str
    certainty: Certainty
    unseen: bool
    note: str
    against: bool
    spoken: str
    pictures: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class _Line:
    """A line of a card: place and height at 100 % text, in pixels; `short` ends it earlier."""

    top: int
    text: str
    height: float
    colour: str
    bold: bool = False
    short: int = 0


class LedgerDelegate(QStyledItemDelegate):
    """Name, what was seen, how sure, what it changed; a corner for pictures.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.thumbs = Thumbs(self)

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """A card; wider where it shows a picture."""
        px, row = self._desk.theme.px, index.data(ROW_ROLE)
        return QSize(px(196) + (px(THUMB) if row.pictures else 0), px(66))

    def picture_box(self, option: QStyleOptionViewItem, index: Index) -> QRect:
        """The corner of a row that shows its first picture, or offers to add one."""
        px, rect = self._desk.theme.px, option.rect
        pictured = bool(index.data(ROW_ROLE).pictures)
        side = px(THUMB) if pictured else max(px(24), 24)
        top = rect.center().y() - side // 2 if pictured else rect.bottom() - side - px(5)
        return placed(option, QRect(rect.right() - px(14) - side, top, side, side))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the card."""
        row: LedgerRow = index.data(ROW_ROLE)
        px, colour = self._desk.theme.px, self._desk.theme.colour
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_ground(painter, option)
        box = self.picture_box(option, index)
        if row.pictures:
            self._draw_picture(painter, box, row, option)
        else:
            draw_camera(painter, QRectF(box), colour("soft"), colour("surface"))
        taken = px(THUMB + 6) if row.pictures else 0
        inner = option.rect.adjusted(px(12), px(5), -px(14) - taken, -px(3))
        if row.against:
            doubt = QRect(inner.right() - px(14), inner.top(), px(15), px(15))
            draw_doubt(painter, QRectF(placed(option, doubt)), colour("doubt"), colour("raised"))
        self._draw_lines(painter, inner, row, option)
        painter.restore()

    def _draw_lines(
        self, painter: QPainter, inner: QRect, row: LedgerRow, option: QStyleOptionViewItem
    ) -> None:
        sure = "" if row.certainty is Certainty.SURE or row.unseen else self._sureness(row)
        note = f"✎ {row.note}" if row.note else ""
        foot = " · ".join(part for part in (row.effect, sure, note) if part)
        corner = 0 if row.pictures else 26
        lines = (
            _Line(0, row.name, 11.5, "soft", short=18 if row.against else 0),
            _Line(17, row.seen, 13, "ink", bold=not row.unseen),
            _Line(37, foot, 11.5, "doubt" if row.against else "accent", short=corner),
        )
        for line in lines:
            self._draw_line(painter, inner, line, option)

    def _draw_picture(
        self, painter: QPainter, box: QRect, row: LedgerRow, option: QStyleOptionViewItem
    ) -> None:
        colour, theme = self._desk.theme.colour, self._desk.theme
        ratio = option.widget.devicePixelRatioF()
        painter.setPen(QPen(colour("outline"), 1))
        painter.setBrush(colour("plate"))
        painter.drawRect(box)
        small = self.thumbs.picture(row.pictures[0], box.size(), ratio)
        if small is not None:
            painter.drawPixmap(box.topLeft(), small)
        elif self.thumbs.missing(row.pictures[0]):
            third = box.width() // 3
            inner = QRectF(box.adjusted(third, third, -third, -third))
            draw_doubt(painter, inner, colour("doubt"), colour("raised"))
        if len(row.pictures) > 1:
            side = theme.px(17)
            badge = QRect(box.right() - side, box.bottom() - side, side, side)
            painter.setPen(QPen(colour("outline"), 1))
            painter.setBrush(colour("raised"))
            painter.drawRect(badge)
            painter.setPen(colour("ink"))
            painter.setFont(theme.font(11, bold=True))
            painter.drawText(badge, Qt.AlignmentFlag.AlignCenter, str(len(row.pictures)))

    def _draw_ground(self, painter: QPainter, option: QStyleOptionViewItem) -> None:
        colour, flag, state = self._desk.theme.colour, QStyle.StateFlag, option.state
        box = QRectF(placed(option, option.rect.adjusted(2, 2, -6, -2)))
        active = state & (flag.State_Selected | flag.State_MouseOver)
        focus = state & flag.State_HasFocus
        painter.setBrush(colour("accent_soft" if active else "surface"))
        painter.setPen(QPen(colour("accent" if focus else "line"), 2 if focus else 1))
        painter.drawRoundedRect(box, 8, 8)

    def _draw_line(
        self, painter: QPainter, inner: QRect, line: _Line, option: QStyleOptionViewItem
    ) -> None:
        theme = self._desk.theme
        font = theme.font(line.height, bold=line.bold)
        metrics = QFontMetrics(font)
        wide = inner.width() - theme.px(line.short)
        box = QRect(inner.left(), inner.top() + theme.px(line.top), wide, metrics.height())
        shown = metrics.elidedText(line.text, Qt.TextElideMode.ElideRight, wide)
        painter.setFont(font)
        painter.setPen(theme.colour(line.colour))
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(placed(option, box), flags, shown)

    def _sureness(self, row: LedgerRow) -> str:
        return certainty_words(row.certainty, self._desk.language)
