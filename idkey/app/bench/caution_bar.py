"""Cautions beside the verdict: a mark, a word, what to do."""

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.marks import draw_hazard, draw_permit
from idkey.app.parts.tips import tip
from idkey.engine.result import Caution, Stake
from idkey.model.key import Key
from idkey.report.words import caution_sentence


class Mark(QWidget):
    """A mark of its own: danger or papers.

    Args:
        stake: HAZARD or PERMIT.
        desk: Look, drawings, language.
        side: Side length at 100 % text, in pixels.
    """

    def __init__(self, stake: Stake, desk: Desk, side: int = 24) -> None:
        super().__init__()
        self._stake = stake
        self._desk = desk
        self._side = side
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """A square."""
        return QSize(self._desk.theme.px(self._side), self._desk.theme.px(self._side))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the mark."""
        painter = QPainter(self)
        colour = self._desk.theme.colour
        draw = draw_hazard if self._stake is Stake.HAZARD else draw_permit
        name = "hazard" if self._stake is Stake.HAZARD else "permit"
        draw(painter, QRectF(self.rect()), colour(name), colour(f"{name}_soft"))
        painter.end()


class CautionBar(QFrame):
    """One caution; the whole sentence, with the taxa, is its tool tip and its description.

    A caution may go and come back while evidence goes both ways. One that comes back in the same
    case says so in words, and is spoken by readers of the screen.

    Args:
        stake: HAZARD or PERMIT.
        desk: Look, drawings, language.

    Signals:
        pressed(): The person wants to know why.
        spoken(text: str): Readers of the screen were told.
    """

    pressed = Signal()
    spoken = Signal(str)

    def __init__(self, stake: Stake, desk: Desk) -> None:
        super().__init__()
        self.stake = stake
        self._desk = desk
        self._case = ""
        self._known = self._again = False
        self.setProperty("pane", "hazard" if stake is Stake.HAZARD else "permit")
        row = QHBoxLayout(self)
        row.setContentsMargins(10, 6, 10, 6)
        row.setSpacing(8)
        row.addWidget(Mark(stake, desk))
        self._text = caption(tone="hazard" if stake is Stake.HAZARD else "permit")
        self._text.setTextFormat(Qt.TextFormat.RichText)
        row.addWidget(self._text, 1)
        self.hide()

    @property
    def text(self) -> str:
        """What it says; empty while there is no caution."""
        return "" if self.isHidden() else self._text.text()

    def show_caution(self, key: Key, caution: Caution | None, *, case: str) -> None:
        """Show a caution of a case, by its id; None takes it away."""
        came = caution is not None and self.isHidden() and case == self._case
        if case != self._case:
            self._case, self._known, self._again = case, False, False
        self._again = caution is not None and (self._again or (came and self._known))
        self._known = self._known or caution is not None
        self.setVisible(caution is not None)
        if caution is not None:
            head, rest = self._words(caution)
            self._text.setText(f"<b>{head}</b> {rest}")
            whole = caution_sentence(key, caution, self._desk.language)
            self.setToolTip(tip(whole))
            self.setAccessibleName(f"{head} {rest}")
            self.setAccessibleDescription(whole)
        if came:
            self._announce()

    def _announce(self) -> None:
        """Have it spoken at once: it may matter before the next touch."""
        event = QAccessibleAnnouncementEvent(self, self.accessibleName())
        event.setPoliteness(QAccessible.AnnouncementPoliteness.Assertive)
        QAccessible.updateAccessibility(event)
        self.spoken.emit(self.accessibleName())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Say that the person wants to know why."""
        self.pressed.emit()

    def _words(self, caution: Caution) -> tuple[str, str]:
        if self.stake is Stake.HAZARD:
            head = self.tr("Again: do not handle.") if self._again else self.tr("Do not handle.")
            likely = self.tr("Most likely it is a medically significant species.")
            only = self.tr("Only medically significant species are left.")
            again = self.tr("A medically significant species is possible again.")
            still = self.tr("A medically significant species is still possible.")
        else:
            returned, first = self.tr("Again: treat as listed."), self.tr("Treat as listed.")
            head = returned if self._again else first
            likely = self.tr("Most likely it is a permit-listed species.")
            only = self.tr("Only permit-listed species are left.")
            again = self.tr("A permit-listed species is possible again.")
            still = self.tr("A permit-listed species is still possible.")
        if caution.certain or caution.likely:
            return head, only if caution.certain else likely
        return head, again if self._again else still
