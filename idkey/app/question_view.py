"""The question card: one question, its tiles or its number, and how sure the answer is."""

from dataclasses import replace

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout

from idkey.app.answer import Answer
from idkey.app.captions import KeyButton, button, caption, headed
from idkey.app.choice import Choice
from idkey.app.desk import Desk
from idkey.app.flow import FlowLayout
from idkey.app.number_entry import NumberEntry
from idkey.app.range_strip import bands
from idkey.app.segments import Segments
from idkey.app.session import Session
from idkey.app.state_tile import StateTile, TileGrid
from idkey.app.words import aim_words, upper_first
from idkey.engine.result import Question
from idkey.model.case import Certainty
from idkey.model.character import Character
from idkey.report.words import certainty_words, look_words, why_question


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
        self.answer = Answer()
        self._build()
        self._bind_keys()

    @property
    def character(self) -> Character | None:
        """The character on the card."""
        return self._character

    def show_session(self, session: Session, draft: str = "") -> None:
        """Show the question of a session.

        Args:
            session: The session.
            draft: The answer that was not confirmed last time; empty when there is none.
        """
        same = self._session is not None and self._same_question(self._session, session)
        self._session = session
        question, character = session.question, session.character
        if question is None or character is None:
            return
        self._why.setText(headed(self.tr("Why now"), self._reason(session, question)))
        if same:
            self._number.strip.show_bands(self._bands(), character.unit)
            return
        finding = session.case.finding(character.id)
        self._character = character
        if draft:
            self.answer = Answer.from_text(draft, question.look)
        elif finding is not None and not finding.unseen:
            self.answer = Answer.of(finding, question.look)
        else:
            self.answer = Answer(look=question.look)
        self._show_character(character)
        self._show_answer()

    def focus_answer(self) -> None:
        """Put the focus where the answer is given."""
        if self._grid.tiles:
            marked = [tile for tile in self._grid.tiles if tile.isChecked()]
            (marked or self._grid.tiles)[0].setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self._number.focus()

    def put_number(self, text: str, spread: str) -> None:
        """Put a measured number on the card."""
        self._change(replace(self.answer, number=text, spread=spread))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Render the drawings at their new size."""
        super().resizeEvent(event)
        self._render_tiles()

    def _build(self) -> None:
        self._question = caption(rank="question")
        self._term = button(role="link")
        self._look_line = caption(rank="soft")
        self._grid = TileGrid()
        self._number = NumberEntry(self._desk.theme)
        self._several = KeyButton(self.tr("Several apply"), "S", self._desk.theme, "quiet")
        self._several.setCheckable(True)
        self._several.setToolTip(self.tr("Mark more than one: it is one of these."))
        self._none = KeyButton(self.tr("None of these"), "N", self._desk.theme, "quiet")
        self._unseen = KeyButton(self.tr("Cannot see it"), "X", self._desk.theme, "quiet")
        self._certainty = Segments(self.tr("How sure"), Certainty, self._sureness)
        self._looks = Choice(self.tr("How it was looked at"), self._desk.theme)
        self._note_it = KeyButton(self.tr("Note it"), "Enter", self._desk.theme, "main")
        self._pitfalls = caption(rank="small")
        self._why = caption(rank="small")
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 16)
        column.setSpacing(8)
        heading = QHBoxLayout()
        heading.addWidget(self._question, 1)
        heading.addWidget(self._term, 0, Qt.AlignmentFlag.AlignTop)
        column.addLayout(heading)
        column.addWidget(self._look_line)
        column.addSpacing(4)
        column.addWidget(self._grid)
        column.addWidget(self._number)
        column.addSpacing(4)
        column.addLayout(self._sure_row())
        column.addLayout(self._other_row())
        column.addSpacing(4)
        column.addWidget(self._pitfalls)
        column.addWidget(self._why)
        self._connect()

    def _sure_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self._certainty)
        row.addWidget(self._looks)
        row.addStretch(1)
        row.addWidget(self._note_it)
        return row

    def _other_row(self) -> FlowLayout:
        flow = FlowLayout(gap=8)
        for part in (self._several, self._none, self._unseen):
            flow.addWidget(part)
        return flow

    def _connect(self) -> None:
        self._term.clicked.connect(self._on_term_clicked)
        self._grid.opened.connect(self._on_grid_opened)
        self._number.edited.connect(self._on_number_edited)
        self._number.measure_asked.connect(self._on_number_measure_asked)
        self._several.clicked.connect(self._on_several_clicked)
        self._none.clicked.connect(self._on_none_clicked)
        self._unseen.clicked.connect(self._on_unseen_clicked)
        self._certainty.chosen.connect(self._on_certainty_chosen)
        self._looks.activated.connect(self._on_looks_activated)
        self._note_it.clicked.connect(self.confirm)

    def _bind_keys(self) -> None:
        """Keys without modifiers work only while the focus is in the card (WCAG 2.1.4)."""
        keys = {
            "Return": self.confirm,
            "Enter": self.confirm,
            "X": self._on_unseen_clicked,
            "N": self._on_none_clicked,
            "S": self._several.click,
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

    def _sureness(self, certainty: Certainty) -> str:
        return upper_first(certainty_words(certainty, self._desk.language))

    def _reason(self, session: Session, question: Question) -> str:
        chosen = self.tr("Chosen for: {aim}").format(aim=aim_words(session.case.aim))
        why = why_question(session.key, question, self._desk.language)
        return f"{why} {chosen}" if question.blocked is None else why

    def _same_question(self, before: Session, after: Session) -> bool:
        was, now = self._character, after.character
        if was is None or now is None or was.id != now.id or before.key is not after.key:
            return False
        if before.case.id != after.case.id:
            return False
        return before.case.finding(now.id) == after.case.finding(now.id)

    def _bands(self) -> tuple:  # type: ignore[type-arg]
        session, character = self._session, self._character
        if session is None or character is None or not character.kind.numeric:
            return ()
        taxa = tuple(c.taxon for c in session.reasoned.assessment.standing)
        return bands(session.key, character, taxa)

    def _show_character(self, character: Character) -> None:
        self._question.setText(character.question)
        self._term.setText(character.name)
        self._term.setToolTip(self.tr("What this means (G)"))
        self._look_line.setText(character.how)
        self._pitfalls.setText(headed(self.tr("What goes wrong"), character.pitfalls))
        self._pitfalls.setVisible(bool(character.pitfalls))
        self._looks.clear()
        for look in character.looks:
            self._looks.addItem(upper_first(look_words(look, self._desk.language)), look)
        numeric = character.kind.numeric
        self._number.setVisible(numeric)
        self._grid.setVisible(not numeric)
        self._several.setVisible(len(character.states) > 2)
        self._none.setVisible(not numeric)
        self._show_tiles(character)
        if numeric:
            self._number.show_character(character, self._bands())

    def _show_tiles(self, character: Character) -> None:
        session = self._session
        assert session is not None
        drawn = any(
            self._desk.pictures.has_tile(session.key, character, s) for s in character.states
        )
        tiles = []
        for number, state in enumerate(character.states, start=1):
            tile = StateTile(state, number if number < 10 else 0, theme=self._desk.theme)
            tile.picture_expected = drawn
            tile.clicked.connect(self._on_tile_clicked)
            tiles.append(tile)
        self._grid.replace(tiles)
        self._render_tiles()

    def _render_tiles(self) -> None:
        session, character = self._session, self._character
        if session is None or character is None:
            return
        for tile in self._grid.tiles:
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
        answer = self.answer
        for tile in self._grid.tiles:
            tile.setChecked(tile.state.id in answer.marked)
        self._several.setChecked(answer.several)
        self._certainty.set_value(answer.certainty)
        self._looks.choose(answer.look)
        self._number.show_answer(answer)
        character = self._character
        ready = character is not None and answer.finding(character) is not None
        self._note_it.setEnabled(ready)
        self._none.setText(
            self.tr("Not what I marked") if answer.marked else self.tr("None of these")
        )

    def _change(self, answer: Answer) -> None:
        if answer != self.answer and self._character is not None:
            self.answer = answer
            self._show_answer()
            self.drafted.emit(self._character.id, answer.text())

    @Slot()
    def confirm(self) -> None:
        """Note what is marked or typed; nothing happens while that says nothing."""
        if self._character is not None:
            finding = self.answer.finding(self._character)
            if finding is not None:
                self.observed.emit(finding)

    @Slot()
    def _on_tile_clicked(self) -> None:
        tile = self.sender()
        if isinstance(tile, StateTile):
            self._change(self.answer.mark(tile.state.id))
            self._show_answer()

    @Slot()
    def _on_number_key(self) -> None:
        shortcut = self.sender()
        if isinstance(shortcut, QShortcut):
            number = int(shortcut.key().toString()) - 1
            if number < len(self._grid.tiles):
                self._grid.tiles[number].setFocus(Qt.FocusReason.ShortcutFocusReason)
                self._change(self.answer.mark(self._grid.tiles[number].state.id))

    @Slot()
    def _on_number_edited(self) -> None:
        number, spread = self._number.number.text(), self._number.spread.text()
        self._change(replace(self.answer, number=number, spread=spread))

    @Slot()
    def _on_none_clicked(self) -> None:
        if self._character is not None:
            finding = self.answer.finding(self._character, negated=True)
            if finding is not None:
                self.observed.emit(finding)

    @Slot()
    def _on_unseen_clicked(self) -> None:
        if self._character is not None:
            self.observed.emit(self.answer.unseen(self._character))

    @Slot()
    def _on_several_clicked(self) -> None:
        self._change(self.answer.severally(self._several.isChecked()))

    @Slot(object)
    def _on_certainty_chosen(self, value: Certainty) -> None:
        self._change(replace(self.answer, certainty=value))

    @Slot(int)
    def _on_looks_activated(self, row: int) -> None:
        self._change(replace(self.answer, look=self._looks.itemData(row)))

    @Slot()
    def _on_term_clicked(self) -> None:
        if self._character is not None:
            self.term_asked.emit(self._character.id)

    @Slot(object)
    def _on_grid_opened(self, tile: StateTile) -> None:
        self.large_asked.emit(tile.state.id)

    @Slot()
    def _on_number_measure_asked(self) -> None:
        if self._character is not None:
            self.measure_asked.emit(self._character.id)
