"""The bench: claim, verdict, question, line-up and ledger on one screen."""

from PySide6.QtCore import QPoint, Qt, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QApplication, QBoxLayout, QVBoxLayout, QWidget

from idkey.app.bench.claim_view import ClaimView
from idkey.app.bench.ledger_view import LedgerView
from idkey.app.bench.lineup_view import LineupView
from idkey.app.bench.middle import Middle
from idkey.app.bench.offers import Offers
from idkey.app.bench.plate_view import PlateView
from idkey.app.bench.popover import LargePictures, TermPopover
from idkey.app.bench.session import Session
from idkey.app.bench.state import BenchState
from idkey.app.bench.verdict_view import VerdictView
from idkey.app.parts.desk import Desk
from idkey.app.parts.page import Page
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.words import reading_words
from idkey.model.case import Claim

STACKED = 820
"""Below this width at 100 % text the areas stand one below the other, in pixels."""

_ANY = 16_777_215  # QWIDGETSIZE_MAX


class BenchView(QWidget):
    """Shows the session of a state; every area says what the person wants, the state does it.

    Where there is little room for the size of the text, the areas stand one below the other
    and the bench scrolls.

    Args:
        state: The state of the bench.
        desk: Look, drawings, language.
    """

    def __init__(self, state: BenchState, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self._state = state
        self._desk = desk
        self._case = ""
        self.claim = ClaimView(desk.theme)
        self.verdict = VerdictView(desk)
        self.middle = Middle(state, desk)
        self.lineup = LineupView(desk)
        self.ledger = LedgerView(desk)
        self._top = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._body = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lay_out()
        self._large = LargePictures(desk, self)
        self.term = TermPopover(desk, self)
        self.offers = Offers(desk.theme, self)
        self.claim.use_offers(self.offers)
        self._connect()
        self.show_session(state.session)

    def close_work(self) -> None:
        """Let go of work under way."""
        self.middle.close_work()

    @Slot(object)
    def show_session(self, session: Session) -> None:
        """Show a session in all areas."""
        fresh = session.case.id != self._case
        self._case = session.case.id
        label, small = map(self._state.drafted, ("label", "tag")) if fresh else ("", "")
        self.claim.show_claim(session.case.claim, label, small)
        self.claim.offer(tuple(match.text for match in session.matches))
        self.verdict.show_session(session)
        self.lineup.show_session(session)
        self.ledger.show_session(session)
        self.middle.show_session(session)

    @property
    def overflow(self) -> int:
        """How far the bench has to scroll to be seen whole, in pixels."""
        return self._scroll.verticalScrollBar().maximum()

    def areas(self) -> tuple[QWidget, ...]:
        """Where F6 goes, in order."""
        return (
            self.claim.label,
            self.middle,
            self.middle.others.list,
            self.lineup.list,
            self.ledger.list,
        )

    def next_area(self, step: int) -> None:
        """Put the focus into the next area that has something in it."""
        areas = [area for area in self.areas() if area.isVisible()]
        focus = QApplication.focusWidget()
        here = [n for n, area in enumerate(areas) if focus and _within(area, focus)]
        place = (here[-1] + step) % len(areas) if here else 0
        if areas[place] is self.middle:
            self.middle.focus_answer()
        else:
            areas[place].setFocus(Qt.FocusReason.ShortcutFocusReason)
        self._scroll.ensureWidgetVisible(areas[place])

    @Slot()
    @Slot(str)
    def open_plates(self, part: str = "") -> None:
        """Show the parts of the animal, and put what is chosen there on the card.

        Raises:
            IdKeyError: The list of plates is damaged.
        """
        plates = PlateView(self._state.session, self._desk, self.window())
        plates.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        plates.asked.connect(self.middle.ask)
        plates.choose(part)
        plates.open()

    def look_at_animal(self) -> None:
        """Go to the question; on an empty bench this says that there is no label."""
        session = self._state.session
        if session.blank and session.open_questions:
            self._state.ask(session.open_questions[0].character)
        self.middle.focus_answer()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give each area what it needs at this width."""
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        px = self._desk.theme.px
        stacked = self.width() < px(STACKED)
        way = QBoxLayout.Direction
        direction = way.TopToBottom if stacked else way.LeftToRight
        self._top.setDirection(direction)
        self._body.setDirection(direction)
        if stacked:
            self.claim.setFixedWidth(min(px(360), self.width() - 32))
            self.lineup.setMinimumSize(0, px(300))
            self.lineup.setMaximumWidth(_ANY)
            self.middle.setMinimumHeight(px(430))
        else:
            self.claim.setFixedWidth(min(px(360), max(self.width() * 3 // 10, px(288))))
            self.lineup.setMinimumHeight(0)
            self.lineup.setFixedWidth(min(max(px(276), self.width() // 4), px(400)))
            self.middle.setMinimumHeight(min(px(330), self.height() // 2))

    def _lay_out(self) -> None:
        self._top.setSpacing(16)
        self._top.addWidget(self.claim, 0, Qt.AlignmentFlag.AlignTop)
        self._top.addWidget(self.verdict, 1)
        self._body.setSpacing(12)
        self._body.addWidget(self.middle, 1)
        self._body.addWidget(self.lineup)
        floor = QWidget()
        floor.setProperty("pane", "ground")
        whole = QVBoxLayout(floor)
        whole.setContentsMargins(16, 12, 16, 12)
        whole.setSpacing(12)
        whole.addLayout(self._top)
        whole.addLayout(self._body, 1)
        whole.addWidget(self.ledger)
        self._scroll = scrolled(floor)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self._scroll)

    def _connect(self) -> None:
        state, middle = self._state, self.middle
        self.claim.typed.connect(state.type_label)
        self.claim.drafted.connect(self._on_small_drafted)
        self.claim.claimed.connect(self._on_claimed)
        self.claim.filled.connect(middle.focus_answer)
        self.verdict.reasons_asked.connect(middle.open_reasons)
        middle.start.unlabelled.connect(self.look_at_animal)
        middle.start.key_chosen.connect(state.new_case)
        middle.question.large_asked.connect(self._on_large_asked)
        middle.question.term_asked.connect(self._on_term_asked)
        middle.question.where.asked.connect(self.open_plates)
        middle.paged.connect(self._on_paged)
        middle.question.observed.connect(self._on_answered)
        middle.walk.taken.connect(self._on_answered)
        self.lineup.opened.connect(middle.open_taxon)
        self.lineup.comparison_asked.connect(middle.open_comparison)
        self.lineup.several_chosen.connect(self._on_several_chosen)
        self.ledger.asked.connect(middle.ask)
        self.ledger.withdrawn.connect(state.withdraw)
        self.ledger.undo_asked.connect(state.undo)
        self.ledger.redo_asked.connect(state.redo)
        self.term.ended.connect(middle.focus_answer)
        self._large.ended.connect(middle.focus_answer)
        state.changed.connect(self.show_session)
        state.fetcher.fetching.connect(self._on_fetching)

    @Slot(object)
    def _on_claimed(self, claim: Claim) -> None:
        """The label is written: go on to the question, unless another field is being filled."""
        at_label = self.claim.label.hasFocus()
        self._state.claim(claim)
        if at_label and claim.text:
            self.middle.focus_answer()

    @Slot(bool)
    def _on_fetching(self, busy: bool) -> None:
        if busy:
            self.verdict.say(reading_words())
        else:
            self.verdict.show_session(self._state.session)

    @Slot(str)
    def _on_small_drafted(self, text: str) -> None:
        self._state.draft("tag", text)

    @Slot()
    def _on_answered(self) -> None:
        self.middle.focus_answer()

    @Slot(object)
    def _on_several_chosen(self, taxa: tuple[str, ...]) -> None:
        self.middle.open_comparison(taxa)
        self.lineup.list.setFocus()  # a third one may follow

    @Slot(str)
    def _on_large_asked(self, state: str) -> None:
        session = self._state.session
        if session.character is not None:
            self._large.show_state(session.key, session.character, state)

    @Slot(str)
    def _on_term_asked(self, character: str) -> None:
        card = self.middle.question
        place = card.mapTo(self, QPoint(card.width() - self._desk.theme.px(400), 48))
        key = self._state.session.key
        self.term.explain(key, key.character[character], place)

    @Slot(object)
    def _on_paged(self, page: Page) -> None:
        self.lineup.setVisible(page is not Page.COMPARISON)


def _within(area: QWidget, widget: QWidget) -> bool:
    return area is widget or area.isAncestorOf(widget)
