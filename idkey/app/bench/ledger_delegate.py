"""Draws a finding of the ledger as a card."""

from dataclasses import dataclass

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_doubt
from idkey.app.parts.rows import ROW_ROLE
from idkey.model.case import Certainty
from idkey.report.words import certainty_words

Index = QModelIndex | QPersistentModelIndex


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
        noted: Whether it has a remark.
        against: Whether it speaks against the name that leads.
        spoken: All of it in sentences.
    """

    character: str
    name: str
    seen: str
    effect: str
    certainty: Certainty
    unseen: bool
    noted: bool
    against: bool
    spoken: str


class LedgerDelegate(QStyledItemDelegate):
    """Name, what was seen, how sure, what it changed.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """A card."""
        px = self._desk.theme.px
        return QSize(px(196), px(66))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Draw the card."""
        row: LedgerRow = index.data(ROW_ROLE)
        rect = QRect(option.rect)
        px, colour = self._desk.theme.px, self._desk.theme.colour
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_ground(painter, rect, option.state)
        inner = rect.adjusted(px(12), px(5), -px(14), -px(3))
        if row.against:
            box = QRectF(inner.right() - px(14), inner.top(), px(15), px(15))
            draw_doubt(painter, box, colour("doubt"), colour("raised"))
        self._line(painter, inner, 0, row.name, (11.5, False, "soft"))
        self._line(painter, inner, 17, row.seen, (13, not row.unseen, "ink"))
        sure = "" if row.certainty is Certainty.SURE or row.unseen else self._sureness(row)
        note = "✎" if row.noted else ""
        foot = " · ".join(part for part in (row.effect, sure, note) if part)
        self._line(painter, inner, 37, foot, (11.5, False, "doubt" if row.against else "accent"))
        painter.restore()

    def _draw_ground(self, painter: QPainter, rect: QRect, state: QStyle.StateFlag) -> None:
        colour, flag = self._desk.theme.colour, QStyle.StateFlag
        box = QRectF(rect).adjusted(2, 2, -6, -2)
        active = state & (flag.State_Selected | flag.State_MouseOver)
        focus = state & flag.State_HasFocus
        painter.setBrush(colour("accent_soft" if active else "surface"))
        painter.setPen(QPen(colour("accent" if focus else "line"), 2 if focus else 1))
        painter.drawRoundedRect(box, 8, 8)

    def _line(
        self, painter: QPainter, inner: QRect, top: int, text: str, look: tuple[float, bool, str]
    ) -> None:
        height, bold, name = look
        theme = self._desk.theme
        font = theme.font(height, bold=bold)
        metrics = QFontMetrics(font)
        painter.setFont(font)
        painter.setPen(theme.colour(name))
        box = QRect(inner.left(), inner.top() + theme.px(top), inner.width(), metrics.height())
        wide = inner.width() - (theme.px(18) if not top else 0)
        shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, wide)
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)

    def _sureness(self, row: LedgerRow) -> str:
        return certainty_words(row.certainty, self._desk.language)
