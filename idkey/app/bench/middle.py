"""The middle of the bench: start, question, couplets, and the pages that lie over them."""

from PySide6.QtCore import QSize, Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from idkey.app.bench.bar import BenchBar
from idkey.app.bench.compare_view import CompareView
from idkey.app.bench.deeper import Deeper
from idkey.app.bench.label_note import LabelNote
from idkey.app.bench.others_view import OthersView
from idkey.app.bench.question_page import QuestionPage
from idkey.app.bench.reasons_view import ReasonsView
from idkey.app.bench.session import Mode, Session
from idkey.app.bench.start_view import StartView
from idkey.app.bench.state import BenchState
from idkey.app.bench.taxon_sheet import TaxonSheet
from idkey.app.bench.walk_view import WalkView
from idkey.app.parts.desk import Desk
from idkey.app.parts.page import Page
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.words import reading_words
from idkey.engine.diagnosis import Diagnosis
from idkey.engine.whatif import Turn


class Middle(QWidget):
    """Shows one page; what lies over the question goes away when a question is asked.

    Args:
        state: The state of the bench.
        desk: Look, drawings, language.

    Signals:
        paged(page: object): Another page stands in the middle.
    """

    paged = Signal(object)

    def __init__(self, state: BenchState, desk: Desk) -> None:
        super().__init__()
        self._state = state
        self._desk = desk
        self._over: Page | None = None
        self._note_wanted = self._note_away = ""
        self._deeper = Deeper(state.reasoner, self)
        self.bar = BenchBar(desk)
        self.note = LabelNote(desk)
        self.start = StartView(desk)
        self._card = QuestionPage(desk)
        self.question, self.others = self._card.question, self._card.others
        self.all_questions = OthersView(desk)
        self.walk = WalkView(desk)
        self.reasons = ReasonsView(desk)
        self.taxon = TaxonSheet(desk)
        self.comparison = CompareView(desk)
        self._lay_out()
        self._connect()

    def close_work(self) -> None:
        """Let go of work under way."""
        self._deeper.close()

    @property
    def busy(self) -> bool:
        """Whether something is being worked out off the screen's thread."""
        return self._deeper.busy

    @property
    def page(self) -> Page:
        """The page that stands in the middle."""
        if self._over is not None:
            return self._over
        session = self._state.session
        if session.mode is Mode.COUPLETS:
            return Page.WALK
        return Page.START if session.blank else Page.QUESTION

    def hasHeightForWidth(self) -> bool:
        """It takes the height there is: its pages scroll by themselves."""
        return False

    def sizeHint(self) -> QSize:
        """No more than it needs at least."""
        return QSize(600, self.minimumHeight())

    def show_session(self, session: Session) -> None:
        """Show a session on the page that stands in the middle."""
        page = self.page
        self.bar.show_session(session)
        self.bar.setVisible(page in (Page.QUESTION, Page.WALK))
        self._show_note(session)
        shown = {
            Page.START: self._show_start,
            Page.QUESTION: self._show_question,
            Page.WALK: self.walk.show_session,
            Page.QUESTIONS: self.all_questions.show_session,
            Page.REASONS: self._show_reasons,
            Page.TAXON: self._show_taxon,
        }
        if page in shown:
            shown[page](session)
        self._stack.setCurrentWidget(self._pages[page])
        self.paged.emit(page)

    @Slot()
    def open_reasons(self) -> None:
        """Lay the reasons over the question, or take them away."""
        self._open(None if self._over is Page.REASONS else Page.REASONS)

    @Slot(str)
    def open_taxon(self, taxon: str) -> None:
        """Lay the sheet of a taxon over the question."""
        if taxon in self._state.session.key.taxon:
            self.taxon.taxon = taxon
            self._open(Page.TAXON)

    @Slot(object)
    def open_comparison(self, taxa: tuple[str, ...]) -> None:
        """Lay a comparison over the question."""
        if len(taxa) > 1:
            self.comparison.show_taxa(self._state.session, taxa)
            self._open(Page.COMPARISON)

    @Slot()
    def open_questions(self) -> None:
        """Go to the search of the other questions: where they are, else on their own page."""
        session = self._state.session
        self._note_wanted, self._note_away = "", session.case.id
        if session.blank and session.open_questions:
            self._state.ask(session.open_questions[0].character)
        if self.page is Page.QUESTION and self._card.roomy:
            self.show_session(self._state.session)
            self.others.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        else:
            self._open(Page.QUESTIONS)

    @Slot(str)
    def ask(self, character: str) -> None:
        """Put a character on the card."""
        self._over = None
        self._state.go_by(Mode.FREE)
        self._state.ask(character)
        self.show_session(self._state.session)
        self.focus_answer()

    @Slot()
    def leave(self) -> None:
        """Take away what lies over the question."""
        self._open(None)
        self.focus_answer()

    def open_note(self) -> None:
        """Show what is sold under the label, also once something was looked at."""
        self._note_wanted, self._note_away = self._state.session.case.id, ""
        self.show_session(self._state.session)

    def focus_answer(self) -> None:
        """Put the focus where an answer is given."""
        if self.page is Page.WALK:
            self.walk.focus_answer()
        elif self.page is Page.QUESTION:
            self._card.focus_answer()
        else:
            self._first.get(self.page, self._pages[self.page]).setFocus()

    def _open(self, page: Page | None) -> None:
        self._over = page
        self.show_session(self._state.session)
        if page is not None:
            self._first.get(page, self._pages[page]).setFocus()

    def _lay_out(self) -> None:
        self._stack = QStackedWidget()
        self._pages: dict[Page, QWidget] = {
            Page.START: scrolled(self.start),
            Page.QUESTION: self._card,
            Page.WALK: self.walk,
            Page.QUESTIONS: self.all_questions,
            Page.REASONS: self.reasons,
            Page.TAXON: self.taxon,
            Page.COMPARISON: self.comparison,
        }
        self._first = {
            Page.QUESTIONS: self.all_questions.search,
            Page.COMPARISON: self.comparison.table,
            Page.REASONS: self.reasons.text,
            Page.TAXON: self.taxon.text,
        }
        for page in self._pages.values():
            self._stack.addWidget(page)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.bar)
        column.addWidget(self.note)
        column.addWidget(self._stack, 1)

    def _connect(self) -> None:
        state = self._state
        self.bar.aim_chosen.connect(state.want)
        self.bar.mode_chosen.connect(state.go_by)
        self.bar.animal.described.connect(state.describe)
        self.bar.animal.cared.connect(state.look_with)
        self.note.asked.connect(self.ask)
        self.note.label_chosen.connect(state.confirm_label)
        self.note.label_chosen.connect(self.focus_answer)
        self.note.opened.connect(self.open_note)
        self.note.put_away.connect(self._on_note_put_away)
        self.question.observed.connect(state.observe)
        self.question.drafted.connect(self._on_question_drafted)
        self._card.others_asked.connect(self.open_questions)
        self.walk.taken.connect(state.take)
        self.walk.back_asked.connect(state.step_back)
        self.walk.linked.connect(self._on_linked)
        self.reasons.prior_wanted.connect(self._on_prior_wanted)
        self.taxon.comparison_asked.connect(self.open_comparison)
        for asking in (self.others, self.all_questions, self.comparison):
            asking.asked.connect(self.ask)
        for sheet in (self.reasons, self.taxon, self.comparison):
            sheet.left.connect(self.leave)
            sheet.linked.connect(self._on_linked)
        self._desk.pictures.arrived.connect(self._on_pictures_arrived)
        inside = Qt.ShortcutContext.WidgetWithChildrenShortcut
        QShortcut(QKeySequence("Esc"), self, context=inside).activated.connect(self.leave)
        self._deeper.turned.connect(self._on_deeper_turned)
        self._deeper.diagnosed.connect(self._on_deeper_diagnosed)

    def _show_start(self, session: Session) -> None:
        self.start.show_keys(self._state.keys.titles, session.key)
        self.start.show_recent(self._state.keeper.store.recent(6))

    def _show_question(self, session: Session) -> None:
        character = session.character
        draft = self._state.drafted(f"answer/{character.id}") if character else ""
        self._card.show_session(session, draft, crowded=not self.note.isHidden())

    def _show_reasons(self, session: Session) -> None:
        if session.reading:
            self.reasons.show_html(f"<p>{reading_words()}</p>")
            return
        self.reasons.show_session(session)
        self._deeper.look_for_turns(session)

    def _show_taxon(self, session: Session) -> None:
        self.taxon.show_taxon(
            session,
            self.taxon.taxon,
            way_back=self._deeper.way_back(session, self.taxon.taxon),
            diagnosis=self._deeper.diagnosis(session, self.taxon.taxon),
        )

    def _show_note(self, session: Session) -> None:
        case = session.case
        wanted = self._note_wanted == case.id
        called = bool(case.claim.text) and (not case.findings or wanted)
        away = self._note_away == case.id or self._over is not None or session.reading
        shown = called and not away
        if shown:
            self.note.show_session(session, brief=bool(session.asked) and not wanted)
        self.note.setVisible(shown)

    @Slot()
    def _on_note_put_away(self) -> None:
        self._note_wanted, self._note_away = "", self._state.session.case.id
        self.show_session(self._state.session)
        self.focus_answer()

    @Slot(str, str)
    def _on_question_drafted(self, character: str, text: str) -> None:
        self._state.draft(f"answer/{character}", text)
        if text and self._state.session.thinking:
            self._state.ask(character)  # what is being answered stays on the card

    @Slot(bool)
    def _on_prior_wanted(self, count: bool) -> None:
        self._state.weigh_label(count=count)

    @Slot(str, str)
    def _on_linked(self, kind: str, name: str) -> None:
        if kind == "taxon":
            self.open_taxon(name)
        elif kind == "character":
            self.ask(name)

    @Slot(str, object)
    def _on_deeper_turned(self, case_id: str, turns: tuple[Turn, ...]) -> None:
        session = self._state.session
        if self.page is Page.REASONS and case_id == session.case.id:
            self.reasons.show_session(session, turns)

    @Slot()
    def _on_pictures_arrived(self) -> None:
        if self.page is Page.TAXON:
            self.taxon.show_portrait()

    @Slot(str, object)
    def _on_deeper_diagnosed(self, taxon: str, _: Diagnosis) -> None:
        if self.page is Page.TAXON and taxon == self.taxon.taxon:
            self._show_taxon(self._state.session)
