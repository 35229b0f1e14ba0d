"""Name the state: a figure on the left, the answers in words on the right."""

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QVBoxLayout

from idkey.app.drill.answers import Row
from idkey.app.drill.exercise_view import ExerciseView
from idkey.app.drill.feedback import Figure
from idkey.app.drill.figures import DrillFigures
from idkey.app.drill.number import NumberAnswer
from idkey.app.drill.plate import Plate
from idkey.app.drill.words import answer_words, slip_words
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.drill.exercises import NameState
from idkey.model.character import Character


class NamingView(ExerciseView):
    """Asks what one figure shows.

    Args:
        desk: Look, drawings, language.
        figures: Draws the animals.
    """

    def __init__(self, desk: Desk, figures: DrillFigures) -> None:
        super().__init__(desk, figures)
        self._run: NameState | None = None
        self.plate = Plate(desk.theme, (300, 220))
        self.question = caption(rank="question")
        self.hint = caption(rank="soft")
        self.number = NumberAnswer(desk.theme)
        self.unseen = KeyButton(self.tr("Cannot tell"), "X", desk.theme, "quiet")
        self._lay_out()
        self._connect()

    def show_run(self, run: NameState) -> None:
        """Show an exercise, answered or not."""
        before, self._run = self._run, run
        if before is None or before.individual != run.individual:
            self._begin(run)
        if run.done:
            self._end(run)

    def show_figures(self) -> None:
        """Show what has been drawn meanwhile."""
        if self._run is not None:
            source = self._figures.close_up(
                self._run.key, self._run.individual, self._run.character.id
            )
            self.plate.show_drawing(source, self.tr("No drawing"))

    def focus_answer(self) -> None:
        """Put the focus where the answer is given."""
        run = self._run
        if run is None or run.done:
            self.feedback.onward.setFocus(Qt.FocusReason.OtherFocusReason)
        elif run.character.kind.numeric:
            self.number.focus()
        else:
            self.answers.focus()

    def _begin(self, run: NameState) -> None:
        character = run.character
        self.question.setText(character.question)
        self.hint.setText(character.name)
        numeric = character.kind.numeric
        rows = [Row(name=s.id, text=s.label, detail=s.detail) for s in character.states]
        self.answers.replace(rows)
        self.number.setVisible(numeric)
        if numeric:
            self.number.ask(character)
        self.unseen.show()
        self.feedback.hide()
        self.compared.show_figures(())
        self.show_figures()
        self.focus_answer()

    def _end(self, run: NameState) -> None:
        seen, character = run.sighting, run.character
        assert seen is not None
        language = self._desk.language
        truth = answer_words(character, seen.truth, language)
        said = answer_words(character, seen.said, language)
        if not character.kind.numeric:
            self.answers.show_marks(str(seen.truth), str(seen.said))
            self.compared.show_figures(compared(self._figures, run, said=said, truth=truth))
        self.number.end()
        self.unseen.hide()
        lines = [] if seen.right else self.feedback.where_to_look(character)
        self.feedback.say(slip_words(run.slip, said, truth), lines, right=seen.right)

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(12)
        left.addWidget(self.plate, 3)
        left.addWidget(self.compared, 2)
        column = QVBoxLayout()
        column.setSpacing(8)
        column.addWidget(self.hint)
        column.addWidget(self.question)
        column.addSpacing(4)
        column.addWidget(self.answers)
        column.addWidget(self.number)
        column.addWidget(self.unseen, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.feedback)
        column.addStretch(1)
        self.set_columns((left, 5), (column, 4))

    def _connect(self) -> None:
        self.answers.chosen.connect(self._on_answers_chosen)
        self.number.given.connect(self._on_number_given)
        self.number.unseen.connect(self._on_unseen_clicked)
        self.unseen.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.unseen.clicked.connect(self._on_unseen_clicked)
        shortcut = QShortcut(QKeySequence("X"), self)
        shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        shortcut.activated.connect(self._on_unseen_clicked)

    @Slot(str)
    def _on_answers_chosen(self, state: str) -> None:
        if self._run is not None and not self._run.done:
            self.answered.emit(self._run.say(state))

    @Slot(float)
    def _on_number_given(self, value: float) -> None:
        if self._run is not None and not self._run.done:
            self.answered.emit(self._run.say(value))

    @Slot()
    def _on_unseen_clicked(self) -> None:
        if self._run is not None and not self._run.done:
            self.answered.emit(self._run.say(None))


def compared(figures: DrillFigures, run: NameState, *, said: str, truth: str) -> list[Figure]:
    """The key's drawings of what it is and, where that differs, of what was said."""
    seen, character = run.sighting, run.character
    assert seen is not None
    found = []
    if not seen.right and isinstance(seen.said, str):
        found.append(_figure(figures, run, character, seen.said, words=said, tone="doubt"))
    found.append(_figure(figures, run, character, str(seen.truth), words=truth, tone="accent"))
    return found


def _figure(
    figures: DrillFigures,
    run: NameState,
    character: Character,
    state: str,
    *,
    words: str,
    tone: str,
) -> Figure:
    source = figures.drawing(run.key, character.id, state)
    return Figure(source=source, caption=words, words=words, tone=tone)
