"""The question card: one question, its tiles or its number, and the answer."""

from dataclasses import replace

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QFrame, QVBoxLayout

from idkey.app.bench.answer_bar import AnswerBar
from idkey.app.bench.number_entry import NumberEntry
from idkey.app.bench.plate_link import PlateLink, headline
from idkey.app.bench.question_parts import bands_shown, measure_drawing, same_question, why_now
from idkey.app.bench.session import Session
from idkey.app.parts.answer import Answer
from idkey.app.parts.captions import button, caption, headed
from idkey.app.parts.desk import Desk
from idkey.app.parts.state_tile import StateTile
from idkey.app.parts.tile_grid import TileGrid
from idkey.app.parts.tips import plain_button
from idkey.app.parts.words import reading_words
from idkey.model.character import Character


class QuestionView(QFrame):
    """Asks one question.

    Args:
        desk: Look, drawings, language.

    Signals:
        observed(finding: object): The answer was confirmed.
        drafted(character: str, text: str): The answer changed and is not confirmed.
        term_asked(character: str): The person wants the term explained.
        large_asked(state: str): The person wants to see the drawings large, from that state on.
        measure_asked(character: str): The person wants to measure on a photograph.
    """

    observed = Signal(object)
    drafted = Signal(str, str)
    term_asked = Signal(str)
    large_asked = Signal(str)
    measure_asked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._desk = desk
        self._session: Session | None = None
        self._character: Character | None = None
        self._focus_owed = False
        self.answer = Answer()
        self._build()
        self._bind_keys()

    @property
    def character(self) -> Character | None:
        """The character on the card."""
        return self._character

    @property
    def reasons(self) -> str:
        """Why the question is asked and what goes wrong with it, as rich text."""
        return f"{self._why.text()} {self._pitfalls.text()}"

    def show_session(self, session: Session, draft: str = "") -> None:
        """Show the question of a session.

        Args:
            session: The session.
            draft: The answer that was not confirmed last time; empty when there is none.
        """
        before, self._session = self._session, session
        same = before is not None and same_question(self._character, before, session)
        question, character = session.question, session.character
        self._show_end(session)
        if question is None or character is None:
            return
        self._why.setText(headed(self.tr("Why now"), why_now(session, question, self._desk)))
        if same:
            self.entry.show_bands(bands_shown(self._session, self._character), character.unit)
            return
        finding, self._character = session.case.finding(character.id), character
        if draft:
            self.answer = Answer.from_text(draft, question.look)
        elif finding is not None and not finding.unseen:
            self.answer = Answer.of(finding, question.look)
        else:
            self.answer = Answer(look=question.look)
        self._show_character(character)
        self.where.show_character(session.key, character)
        self._show_answer()
        if self._focus_owed:
            self.focus_answer()

    def focus_answer(self) -> None:
        """Put the focus where the answer is given, as soon as there is a question."""
        self._focus_owed = self._session is not None and self._session.reading
        if self.grid.tiles:
            marked = [tile for tile in self.grid.tiles if tile.isChecked()]
            (marked or self.grid.tiles)[0].setFocus(Qt.FocusReason.OtherFocusReason)
        elif not self._focus_owed:
            self.entry.focus()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Render the drawings at their new size."""
        self._render_tiles()

    def _build(self) -> None:
        self._question = caption(rank="question")
        self._term = button(role="link")
        self.where = PlateLink(self._desk)
        self._how = caption(rank="soft")
        self.grid = TileGrid(self._desk.theme)
        self.entry = NumberEntry(self._desk.theme)
        self.bar = AnswerBar(self._desk)
        self._pitfalls = caption(rank="small")
        self._why = caption(rank="small")
        for headed_text in (self._pitfalls, self._why):
            headed_text.setTextFormat(Qt.TextFormat.RichText)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 10, 20, 10)
        column.setSpacing(6)
        column.addLayout(headline(self._question, self._term, self.where))
        for part in (self._how, self.grid, self.entry, self.bar, self._pitfalls, self._why):
            column.addWidget(part)
        self._term.clicked.connect(self._on_term_clicked)
        self.grid.opened.connect(self._on_grid_opened)
        self.entry.edited.connect(self._on_entry_edited)
        self.entry.measure_asked.connect(self._on_entry_measure_asked)
        self.bar.changed.connect(self._change)
        self.bar.confirmed.connect(self.confirm)
        self.bar.denied.connect(self._on_bar_denied)
        self.bar.unseen.connect(self._on_bar_unseen)

    def _bind_keys(self) -> None:
        """Keys without modifiers work only while the focus is in the card (WCAG 2.1.4)."""
        keys = {
            "Return": self.confirm,
            "Enter": self.confirm,
            "X": self._on_bar_unseen,
            "N": self.bar.deny,
            "S": self.bar.toggle_several,
            "R": self.bar.write_note,
            "G": self._on_term_clicked,
        }
        for key, slot in keys.items():
            self._shortcut(key).activated.connect(slot)
        for number in range(1, 10):
            self._shortcut(str(number)).activated.connect(self._on_number_key)

    def _shortcut(self, key: str) -> QShortcut:
        made = QShortcut(QKeySequence(key), self)
        made.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        return made

    def _show_end(self, session: Session) -> None:
        """Say that nothing is left to ask, or not yet, in place of a question."""
        reading = session.reading
        self._why.setHidden(reading)
        for part in (self._term, self.bar):
            part.setVisible(session.question is not None)
        if session.question is not None:
            return
        for gone in (self.grid, self.entry, self.where, self._pitfalls):
            gone.hide()
        self._character = None
        self.grid.replace(())
        over = self.tr("Nothing is left to ask now.")
        self._question.setText(reading_words() if reading else over)
        self._how.setText(why_now(session, None, self._desk))
        self._how.setHidden(reading)
        self._why.setText(
            self.tr(
                "Choose among the other questions what was passed over, open the reasons "
                "(F4), or write the rationale (Ctrl+R)."
            )
        )

    def _show_character(self, character: Character) -> None:
        self._question.setText(character.question)
        self._term.setText(plain_button(character.name))
        self._term.setToolTip(self.tr("What this means (G)"))
        self._how.setText(character.how)
        self._how.setVisible(bool(character.how))
        self._pitfalls.setText(headed(self.tr("What goes wrong"), character.pitfalls))
        self._pitfalls.setVisible(bool(character.pitfalls))
        self.entry.setVisible(character.kind.numeric)
        self.grid.setVisible(not character.kind.numeric)
        self.bar.show_character(character)
        self._show_tiles(character)
        if character.kind.numeric:
            self.entry.show_character(character, bands_shown(self._session, self._character))
            self._show_measure(character)

    def _show_measure(self, character: Character) -> None:
        if self._session is not None:
            key, ratio = self._session.key, self.devicePixelRatioF()
            self.entry.show_measure(measure_drawing(self._desk, key, character, ratio))

    def _show_tiles(self, character: Character) -> None:
        if self._session is None:
            return
        key, pictures = self._session.key, self._desk.pictures
        drawn = any(pictures.has_tile(key, character, state) for state in character.states)
        tiles = []
        for number, state in enumerate(character.states, start=1):
            tile = StateTile(state, number if number < 10 else 0, theme=self._desk.theme)
            tile.picture_expected = drawn
            tile.show_credit(pictures.credit(key, character, state))
            tile.clicked.connect(self._on_tile_clicked)
            tiles.append(tile)
        self.grid.replace(tiles)
        self._render_tiles()

    def _render_tiles(self) -> None:
        session, character = self._session, self._character
        if session is None or character is None:
            return
        for tile in self.grid.tiles:
            if tile.picture_expected:
                tile.picture = self._desk.pictures.tile(
                    session.key,
                    character,
                    tile.state,
                    size=tile.picture_room(),
                    ratio=self.devicePixelRatioF(),
                )
                tile.update()

    def _show_answer(self) -> None:
        answer, character = self.answer, self._character
        for tile in self.grid.tiles:
            tile.setChecked(tile.state.id in answer.marked)
        self.entry.show_answer(answer)
        ready = character is not None and answer.finding(character) is not None
        self.bar.show_answer(answer, ready=ready)

    @Slot(object)
    def _change(self, answer: Answer) -> None:
        if answer != self.answer and self._character is not None:
            self.answer = answer
            self.drafted.emit(self._character.id, answer.text())
        self._show_answer()

    @Slot()
    def confirm(self) -> None:
        """Note what is marked or typed; nothing happens while that says nothing."""
        self._observe(negated=False)

    def _observe(self, *, negated: bool) -> None:
        if self._character is not None:
            finding = self.answer.finding(self._character, negated=negated)
            if finding is not None:
                self.observed.emit(finding)

    @Slot()
    def _on_tile_clicked(self) -> None:
        tile = self.sender()
        if isinstance(tile, StateTile):
            self._change(self.answer.mark(tile.state.id))

    @Slot()
    def _on_number_key(self) -> None:
        shortcut = self.sender()
        if isinstance(shortcut, QShortcut):
            number = int(shortcut.key().toString()) - 1
            if number < len(self.grid.tiles):
                tile = self.grid.tiles[number]
                tile.setFocus(Qt.FocusReason.ShortcutFocusReason)
                self._change(self.answer.mark(tile.state.id))

    @Slot()
    def _on_entry_edited(self) -> None:
        number, spread = self.entry.number.text(), self.entry.spread.text()
        self._change(replace(self.answer, number=number, spread=spread))

    @Slot()
    def _on_bar_denied(self) -> None:
        self._observe(negated=True)

    @Slot()
    def _on_bar_unseen(self) -> None:
        if self._character is not None:
            self.observed.emit(self.answer.unseen(self._character))

    @Slot()
    def _on_term_clicked(self) -> None:
        if self._character is not None:
            self.term_asked.emit(self._character.id)

    @Slot(object)
    def _on_grid_opened(self, tile: StateTile) -> None:
        self.large_asked.emit(tile.state.id)

    @Slot()
    def _on_entry_measure_asked(self) -> None:
        if self._character is not None:
            self.measure_asked.emit(self._character.id)
