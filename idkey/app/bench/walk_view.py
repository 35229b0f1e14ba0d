"""The key by couplets: leads side by side, the way walked, the way back."""

from html import escape

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QStyle,
    QVBoxLayout,
    QWidget,
)

from idkey.app.bench.couplet_map import CoupletMap
from idkey.app.bench.lead_card import LEAST_WIDTH, LeadCard
from idkey.app.bench.session import Session
from idkey.app.bench.walk_words import conflict_with_support, end_html, step_words
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.keyboard_order import put_in_turn
from idkey.app.parts.scrolling import scrolled
from idkey.engine import walk
from idkey.model.couplet import Couplet
from idkey.report.words import rich

GAP = 10
"""Space between leads, in pixels."""

MAP_FROM = 560
"""From this width at 100 % text there is room for a narrow map, in pixels."""

WIDE_MAP_FROM = 640
"""From this width on the map is as wide as it gets."""


class WalkView(QFrame):
    """Walks a case by couplets.

    Args:
        desk: Look, drawings, language.

    Signals:
        taken(couplet: str, leads: object): One lead was taken, or several.
        back_asked(): One couplet back.
        linked(kind: str, name: str): A link was followed, such as ("taxon", id).
    """

    taken = Signal(str, object)
    back_asked = Signal()
    linked = Signal(str, str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._desk = desk
        self._couplet: Couplet | None = None
        self._shown: object = None
        self.cards: tuple[LeadCard, ...] = ()
        self._build()
        self._bind_keys()

    def show_session(self, session: Session) -> None:
        """Show where the walk of a case stands."""
        key, case = session.key, session.case
        here = walk.here(key, case)
        self._couplet = here[0] if here else None
        self._map.show_session(session)
        self._trail.setText(self._trail_html(session))
        self._back.setEnabled(bool(case.walk))
        self._heading.setText(self._head(session))
        note = self._couplet.note if self._couplet else end_html(session)
        self._note.setText(rich(key, note) if self._couplet else note)
        self._note.setVisible(bool(note))
        clash = conflict_with_support(session, self._desk.language)
        self._clash.setText(rich(key, clash))
        self._clash_frame.setVisible(bool(clash))
        self._show_leads(session)
        for part in (self._both, self._take):
            part.setVisible(self._couplet is not None)

    @property
    def clash(self) -> str:
        """Where the walk and the findings disagree, as rich text; empty when they do not."""
        return "" if self._clash_frame.isHidden() else self._clash.text()

    @property
    def note(self) -> str:
        """How to look, or where the walk ended, as rich text."""
        return self._note.text()

    def focus_answer(self) -> None:
        """Put the focus on the marked lead, else on the first."""
        marked = [card for card in self.cards if card.isChecked()]
        for card in (marked or self.cards)[:1]:
            card.setFocus(Qt.FocusReason.OtherFocusReason)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave the map out where the leads need its room."""
        super().resizeEvent(event)
        self._place_leads()

    def _place_leads(self) -> None:
        """As many leads side by side as can be read, in rows filled evenly.

        The map goes where it would cost a place beside another.
        """
        px, wide, count = self._desk.theme.px, self.width(), len(self.cards)
        chart = px(150 if wide >= px(WIDE_MAP_FROM) else 90)
        room = wide - 32 - 6 - self.style().pixelMetric(QStyle.PixelMetric.PM_ScrollBarExtent)
        side = [min((w + GAP) // (px(LEAST_WIDTH) + GAP), count) for w in (room, room - chart - 12)]
        mapped = wide >= px(MAP_FROM) and side[0] == side[1]
        self._map.setVisible(mapped)
        self._map.setFixedWidth(chart)
        rows = -(-count // max(side[0], 1))
        columns = -(-count // max(rows, 1))
        for column in range(max(self._leads.columnCount(), columns)):
            self._leads.setColumnStretch(column, 1 if column < columns else 0)
        for number, card in enumerate(self.cards):
            self._leads.removeWidget(card)
            self._leads.addWidget(card, *divmod(number, columns), Qt.AlignmentFlag.AlignTop)

    def _build(self) -> None:
        theme = self._desk.theme
        self._heading = caption(rank="question")
        self._trail = caption(rank="small")
        self._trail.setTextFormat(Qt.TextFormat.RichText)
        self._trail.setTextInteractionFlags(Qt.TextInteractionFlag.LinksAccessibleByMouse)
        self._note = caption(rank="soft")
        self._note.setTextFormat(Qt.TextFormat.RichText)
        self._note.linkActivated.connect(self._on_note_link_activated)
        self._clash_frame = QFrame()
        self._clash_frame.setProperty("pane", "doubt")
        self._clash = caption(tone="doubt")
        clash = QVBoxLayout(self._clash_frame)
        clash.setContentsMargins(12, 6, 12, 6)
        clash.addWidget(self._clash)
        self._leads = QGridLayout()
        self._leads.setSpacing(GAP)
        self._map = CoupletMap(self._desk)
        self._back = KeyButton(self.tr("Back"), "Backspace", theme, "quiet")
        self._both = KeyButton(self.tr("Both could be right"), "B", theme, "quiet")
        self._both.setCheckable(True)
        self._both.setToolTip(self.tr("Mark more than one lead and follow them all"))
        self._take = KeyButton(self.tr("Take it"), "Enter", theme, "main")
        self._lay_out()
        self._back.clicked.connect(self._on_back_clicked)
        self._both.clicked.connect(self._on_both_clicked)
        self._take.clicked.connect(self.take)

    def _lay_out(self) -> None:
        foot = FlowRow(gap=8)
        for key in (self._take, self._back, self._both):
            foot.add(key)
        column = QVBoxLayout()
        column.setSpacing(8)
        for part in (self._trail, self._heading, self._note, self._clash_frame):
            column.addWidget(part)
        column.addLayout(self._leads)
        column.addStretch(1)
        column.setContentsMargins(0, 0, 6, 0)
        self._inner = inner = QWidget()
        inner.setLayout(column)
        whole = QVBoxLayout()
        whole.setSpacing(8)
        whole.addWidget(scrolled(inner), 1)
        whole.addWidget(foot)
        row = QHBoxLayout(self)
        row.setContentsMargins(20, 12, 12, 12)
        row.setSpacing(12)
        row.addLayout(whole, 1)
        row.addWidget(self._map)

    def _bind_keys(self) -> None:
        """Keys without modifiers work only while the focus is in the card (WCAG 2.1.4)."""
        keys = {
            "Return": self.take,
            "Enter": self.take,
            "Backspace": self._on_back_clicked,
            "B": self._both.click,
        }
        for key, slot in keys.items():
            self._shortcut(key).activated.connect(slot)
        for number in range(1, 10):
            self._shortcut(str(number)).activated.connect(self._on_number_key)

    def _shortcut(self, key: str) -> QShortcut:
        made = QShortcut(QKeySequence(key), self)
        made.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        return made

    def _head(self, session: Session) -> str:
        if self._couplet is None:
            return self.tr("The couplets end here")
        return self.tr("Couplet {number}: which fits?").format(number=self._couplet.id)

    def _trail_html(self, session: Session) -> str:
        if not session.case.walk:
            return escape(self.tr("The walk starts here."))
        steps = " › ".join(escape(step_words(step)) for step in session.case.walk)
        here = walk.here(session.key, session.case)
        also = ", ".join(couplet.id for couplet in here[1:])
        if also:
            steps += " · " + escape(self.tr("also open: {couplets}").format(couplets=also))
        way = escape(self.tr("The way so far"))
        return f"{way}: <b>{steps}</b>"

    def _show_leads(self, session: Session) -> None:
        shown = (session.key, self._couplet, session.case.id, len(session.case.walk))
        if shown != self._shown:
            self._shown = shown
            for old in self.cards:
                old.hide()
                old.deleteLater()
            self._both.setChecked(False)
            leads = self._couplet.leads if self._couplet else ()
            self.cards = tuple(
                LeadCard(session.key, lead, number, desk=self._desk)
                for number, lead in enumerate(leads, start=1)
            )
            for card in self.cards:
                card.setParent(self._inner)
                put_in_turn(self._inner, card)
                card.show()  # the layout would do so later, too late for the focus
                card.clicked.connect(self._on_card_clicked)
            self._place_leads()
        if self._couplet is not None and not any(card.isChecked() for card in self.cards):
            decided = walk.decided(session.case, self._couplet)
            if len(decided) < len(self.cards):
                self._mark(decided[:1] if len(decided) == 1 else decided)
        self._ready()

    def _mark(self, leads: tuple[int, ...]) -> None:
        if len(leads) > 1:
            self._both.setChecked(True)
        for number, card in enumerate(self.cards):
            card.setChecked(number in leads)

    def _ready(self) -> None:
        self._take.setEnabled(any(card.isChecked() for card in self.cards))

    @Slot()
    def take(self) -> None:
        """Take what is marked; nothing happens while nothing is."""
        leads = tuple(n for n, card in enumerate(self.cards) if card.isChecked())
        if self._couplet is not None and leads:
            self.taken.emit(self._couplet.id, leads)

    @Slot()
    def _on_card_clicked(self) -> None:
        card = self.sender()
        if isinstance(card, LeadCard) and not self._both.isChecked():
            for other in self.cards:
                other.setChecked(other is card)
        self._ready()

    @Slot()
    def _on_number_key(self) -> None:
        shortcut = self.sender()
        if isinstance(shortcut, QShortcut):
            number = int(shortcut.key().toString()) - 1
            if number < len(self.cards):
                self.cards[number].setFocus(Qt.FocusReason.ShortcutFocusReason)
                self.cards[number].click()

    @Slot()
    def _on_both_clicked(self) -> None:
        marked = [card for card in self.cards if card.isChecked()]
        if self._both.isChecked() and len(self.cards) == 2:
            self._mark((0, 1))
        elif not self._both.isChecked():
            for card in marked[1:]:
                card.setChecked(False)
        self._ready()

    @Slot()
    def _on_back_clicked(self) -> None:
        self.back_asked.emit()

    @Slot(str)
    def _on_note_link_activated(self, link: str) -> None:
        kind, _, name = link.partition(":")
        self.linked.emit(kind, name)
