"""Tell the pair apart: the whole animal, where to look first, the close-up, the decision."""

from html import escape

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QVBoxLayout

from idkey.app.drill.answers import Row
from idkey.app.drill.exercise_view import ExerciseView
from idkey.app.drill.feedback import Figure
from idkey.app.drill.figures import DrillFigures
from idkey.app.drill.plate import Plate
from idkey.app.drill.words import answer_words, fault_words, kind_words
from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.drill.exercises import NEITHER, Fault, TellPair
from idkey.drill.telling import value_of
from idkey.model.character import Character
from idkey.model.score import Shows
from idkey.report.words import name_of, rich, value_words


class TellingView(ExerciseView):
    """Asks which character to look at first, then which of the two it is.

    Args:
        desk: Look, drawings, language.
        figures: Draws the animals.
    """

    def __init__(self, desk: Desk, figures: DrillFigures) -> None:
        super().__init__(desk, figures)
        self._run: TellPair | None = None
        self._asked: tuple[str, ...] | None = None
        self.animal = Plate(desk.theme, (260, 180))
        self.close_up = Plate(desk.theme, (260, 180))
        self.pair = caption(rank="question")
        self.pair.setTextFormat(Qt.TextFormat.RichText)
        self.step = caption(rank="strong")
        self._lay_out()
        self.answers.chosen.connect(self._on_answers_chosen)

    def show_run(self, run: TellPair) -> None:
        """Show an exercise at whatever step it is."""
        self._run = run
        names = [f"<i>{escape(name_of(run.key, taxon))}</i>" for taxon in run.pair]
        self.pair.setText(self.tr("{one} or {other}?").format(one=names[0], other=names[1]))
        self.show_figures()
        if run.done:
            if self._asked != run.looks:
                self._ask_taxon(run)
            self._end(run)
        elif run.looking:
            self._ask_taxon(run)
        else:
            self._ask_look(run)

    def show_figures(self) -> None:
        """Show what has been drawn meanwhile."""
        run = self._run
        if run is None:
            return
        one, language = run.individual, self._desk.language
        kind = kind_words(run.key, one.kind, language)
        self.animal.show_drawing(
            self._figures.portrait(run.key, one), self.tr("No portrait in this key"), caption=kind
        )
        self.animal.setVisible(bool(run.key.body_plan) or not run.looking)
        self.close_up.setVisible(bool(run.looking))
        if run.looking:
            character = run.key.character[run.looking]
            shown = one.shown(character.id)
            words = answer_words(character, shown, language)
            source = self._figures.close_up(run.key, one, character.id)
            self.close_up.show_drawing(source, words, caption=character.name)

    def focus_answer(self) -> None:
        """Put the focus where the answer is given."""
        if self._run is not None and self._run.done:
            self.feedback.onward.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.answers.focus()

    def _ask_look(self, run: TellPair) -> None:
        self._asked = None
        first = not run.looks
        self.step.setText(
            self.tr("What do you look at first?")
            if first
            else self.tr("Right, that tells nothing. What do you look at instead?")
        )
        rows = [
            Row(name=one, text=run.key.character[one].name, detail=run.key.character[one].question)
            for one in run.open_choices
        ]
        self._offer(rows)

    def _ask_taxon(self, run: TellPair) -> None:
        self._asked = run.looks
        name = run.key.character[run.looking].name
        self.step.setText(self.tr("{name}: which is it?").format(name=name))
        rows = [Row(name=t, text=name_of(run.key, t), italic=True) for t in run.pair]
        rows.append(Row(name=NEITHER, text=self.tr("This does not tell them apart"), key="0"))
        self._offer(rows)

    def _offer(self, rows: list[Row]) -> None:
        self.answers.replace(rows)
        self.feedback.hide()
        self.compared.show_figures(())
        self.answers.focus()

    def _end(self, run: TellPair) -> None:
        self.answers.show_marks(run.truth, run.said)
        teller = run.key.character[run.item.character]
        looked = run.key.character[run.looking].name
        lines = [self._shows(run, teller, taxon) for taxon in run.pair]
        if run.fault is not Fault.NONE:
            lines += self.feedback.where_to_look(teller)
        words = fault_words(run.fault, run.key, run.truth, teller, looked)
        self.feedback.say(words, lines, right=run.correct)
        self.compared.show_figures(self._both(run, teller))

    def _shows(self, run: TellPair, teller: Character, taxon: str) -> str:
        scores = run.key.cells.get((taxon, teller.id), ())
        kind = run.individual.kind
        fitting = [s for s in scores if s.sex in (None, kind.sex) and s.stage in (None, kind.stage)]
        texts = [value_words(run.key, score, self._desk.language) for score in fitting or scores]
        text = f"{name_of(run.key, taxon)}: {'; '.join(dict.fromkeys(texts))}"
        return rich(run.key, text)

    def _both(self, run: TellPair, teller: Character) -> list[Figure]:
        """The key's drawings of what each of the two usually shows."""
        found = []
        for taxon in run.pair:
            value = value_of(run.key, taxon, teller, run.individual.kind)
            if not isinstance(value, Shows):
                return []
            shares = value.shares()
            state = max(shares, key=lambda one: shares[one])
            found.append(
                Figure(
                    source=self._figures.drawing(run.key, teller.id, state),
                    caption=name_of(run.key, taxon),
                    words=teller.state(state).label,
                    tone="accent" if taxon == run.truth else "",
                )
            )
        return found

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(12)
        left.addWidget(self.animal, 3)
        left.addWidget(self.close_up, 3)
        column = QVBoxLayout()
        column.setSpacing(8)
        column.addWidget(self.pair)
        column.addWidget(self.step)
        column.addSpacing(4)
        column.addWidget(self.answers)
        column.addWidget(self.feedback)
        column.addWidget(self.compared)
        column.addStretch(1)
        self.set_columns((left, 4), (column, 5))

    @Slot(str)
    def _on_answers_chosen(self, name: str) -> None:
        run = self._run
        if run is not None and not run.done:
            self.answered.emit(run.decide(name) if run.looking else run.look(name))
