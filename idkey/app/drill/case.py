"""Run a case: label and animal on the left, the step at hand in the middle, what is known right."""

from PySide6.QtCore import QModelIndex, Qt, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QListView, QVBoxLayout

from idkey.app.drill.answers import Row
from idkey.app.drill.case_end import case_lines, misread_figures
from idkey.app.drill.concluding import Concluding
from idkey.app.drill.exercise_view import ExerciseView
from idkey.app.drill.figures import DrillFigures
from idkey.app.drill.number import NumberAnswer
from idkey.app.drill.plate import Plate
from idkey.app.drill.tag import Tag
from idkey.app.drill.words import answer_words, kind_words, outcome_words, verdict_words
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.columns import airy
from idkey.app.parts.desk import Desk
from idkey.app.parts.fitting import HUGE
from idkey.app.parts.rows import ROW_ROLE, RowsModel
from idkey.drill.casework import RunCase
from idkey.drill.conclusion import Conclusion
from idkey.model.character import Look
from idkey.report.words import finding_words, look_words, name_of, rich

Way = tuple[str, Look, str]
"""Character id, way of looking, and both in words."""


class CaseView(ExerciseView):
    """Lets a person identify one animal.

    Args:
        desk: Look, drawings, language.
        figures: Draws the animals.
    """

    def __init__(self, desk: Desk, figures: DrillFigures) -> None:
        super().__init__(desk, figures)
        self._run: RunCase | None = None
        self._concluding = False
        self.tag = Tag(desk.theme)
        self.animal = Plate(desk.theme, (220, 150))
        self.close_up = Plate(desk.theme, (220, 150))
        self.step = caption(rank="question")
        self.hint = caption(rank="soft")
        self.ways: RowsModel[Way] = RowsModel(
            {
                int(Qt.ItemDataRole.DisplayRole): lambda way: way[2],
                int(Qt.ItemDataRole.AccessibleTextRole): lambda way: way[2],
            },
            parent=self,
        )
        self.list = QListView()
        self.list.setModel(self.ways)
        self.list.setAccessibleName(self.tr("What to look at"))
        self.list.setWordWrap(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        airy(self.list, desk.theme)
        self.number = NumberAnswer(desk.theme)
        self.unseen = KeyButton(self.tr("Cannot tell"), "X", desk.theme, "quiet")
        self.conclude = KeyButton(self.tr("Conclude"), "C", desk.theme, "main")
        self.concluding = Concluding(desk, self)
        self.ledger = caption(rank="small")
        self.standing = caption(rank="small")
        for label in (self.ledger, self.standing):
            label.setTextFormat(Qt.TextFormat.RichText)
            label.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._lay_out()
        self._connect()

    def show_run(self, run: RunCase) -> None:
        """Show a case at whatever step it is."""
        before, self._run = self._run, run
        if before is None or before.individual != run.individual:
            self._concluding = False
            label = run.key.label[run.item.label]
            self.tag.show_label(label.text)
        self.show_figures()
        self._show_known(run)
        self._show_step()

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
        at = run.open_look
        self.animal.setVisible(bool(run.key.body_plan) or at is None)
        self.close_up.setVisible(at is not None)
        if at is not None:
            character = run.key.character[at.character]
            words = answer_words(character, one.shown(character.id), language)
            source = self._figures.close_up(run.key, one, character.id)
            self.close_up.show_drawing(source, words, caption=character.name)

    def focus_answer(self) -> None:
        """Put the focus where the next step is taken."""
        run = self._run
        if run is None:
            return
        if run.done:
            self.feedback.onward.setFocus(Qt.FocusReason.OtherFocusReason)
        elif self._concluding:
            self.concluding.focus()
        elif run.open_look is None:
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)
        elif self.number.isVisibleTo(self):
            self.number.focus()
        else:
            self.answers.focus()

    def _show_step(self) -> None:
        run = self._run
        assert run is not None
        at = run.open_look
        choosing = not run.done and at is None and not self._concluding
        numeric = at is not None and run.key.character[at.character].kind.numeric
        self.list.setVisible(choosing)
        self.conclude.setVisible(choosing)
        self.number.setVisible(numeric)
        self.unseen.setVisible(at is not None)
        self.concluding.setVisible(self._concluding and not run.done)
        self.answers.replace(())
        self.feedback.hide()
        self.compared.show_figures(())
        if run.done:
            self._end(run)
        elif self._concluding:
            self.step.setText(self.tr("What do the findings carry?"))
            self.hint.setText(self.tr("No more than was seen: open is an answer too."))
        elif at is None:
            self._ask_look(run)
        else:
            self._ask_state(run, at.character)
        self.focus_answer()

    def _ask_look(self, run: RunCase) -> None:
        self.step.setText(self.tr("What do you look at?"))
        last = run.looked[-1] if run.looked else None
        blind = last is not None and not last.visible
        self.hint.setText(
            self.tr("That could not be seen this way.")
            if blind
            else self.tr("Choose a character and a way of looking; typing finds it.")
        )
        language = self._desk.language
        found = [
            (c.id, look, f"{c.name}  ·  {look_words(look, language)}")
            for c in run.to_look_at
            for look in run.ways(c.id)
        ]
        row = self.list.currentIndex().row()
        self.ways.replace(tuple(found))
        self.list.setCurrentIndex(self.ways.index(min(max(row, 0), max(len(found) - 1, 0))))

    def _ask_state(self, run: RunCase, character_id: str) -> None:
        character = run.key.character[character_id]
        self.step.setText(character.question)
        self.hint.setText(character.name)
        if character.kind.numeric:
            self.number.ask(character)
        else:
            rows = [Row(name=s.id, text=s.label, detail=s.detail) for s in character.states]
            self.answers.replace(rows)

    def _end(self, run: RunCase) -> None:
        assert run.conclusion is not None
        language, marks = self._desk.language, run.marks
        said, carried, truth = (
            verdict_words(kind, language) for kind in (marks.verdict, marks.carried, marks.truth)
        )
        self.step.setText(self.tr("How it went"))
        self.hint.setText("")
        headline = outcome_words(run.outcome, said, carried, truth)
        self.feedback.say(headline, case_lines(run, language), right=run.correct)
        self.compared.show_figures(misread_figures(run, self._figures, language))

    def _show_known(self, run: RunCase) -> None:
        language = self._desk.language
        seen = [rich(run.key, finding_words(run.key, f, language)) for f in run.case.findings]
        self.ledger.setText("<br>".join(seen) or self.tr("Nothing yet."))
        names = [rich(run.key, name_of(run.key, c.taxon)) for c in run.assessment.standing]
        shown = [*sorted(names)[:14], *(["…"] if len(names) > 14 else [])]
        self.standing.setText("<br>".join(shown))

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(12)
        left.addWidget(self.tag)
        left.addWidget(self.animal, 3)
        left.addWidget(self.close_up, 4)
        right = QVBoxLayout()
        right.setSpacing(4)
        right.addWidget(caption(self.tr("Seen so far"), "strong"))
        right.addWidget(self.ledger)
        right.addSpacing(10)
        right.addWidget(caption(self.tr("Not ruled out"), "strong"))
        right.addWidget(self.standing)
        right.addStretch(1)
        middle = self._middle()
        if self._desk.theme.scale < HUGE:
            self.set_columns((left, 9), (middle, 10), (right, 7))
            return
        middle.addLayout(right)
        self.set_columns((left, 9), (middle, 10))

    def _middle(self) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setSpacing(8)
        for part in (self.hint, self.step):
            column.addWidget(part)
        column.addWidget(self.list, 1)
        for widget in (self.answers, self.number, self.concluding):
            column.addWidget(widget)
        for button in (self.unseen, self.conclude):
            column.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.feedback)
        column.addWidget(self.compared)
        column.addStretch(0)
        return column

    def _connect(self) -> None:
        self.list.activated.connect(self._on_list_activated)
        self.answers.chosen.connect(self._on_answered)
        self.number.given.connect(self._on_answered)
        self.number.unseen.connect(self._on_unseen_clicked)
        for pressed in (self.unseen, self.conclude):
            pressed.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.unseen.clicked.connect(self._on_unseen_clicked)
        self.conclude.clicked.connect(self._on_conclude_clicked)
        self.concluding.concluded.connect(self._on_concluded)
        self.concluding.left.connect(self._on_concluding_left)
        for key, slot in (("X", self._on_unseen_clicked), ("C", self._on_conclude_clicked)):
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    @Slot(QModelIndex)
    def _on_list_activated(self, index: QModelIndex) -> None:
        way = index.data(ROW_ROLE)
        if self._run is not None and way is not None:
            self.answered.emit(self._run.look(way[0], way[1]))

    @Slot(object)
    def _on_answered(self, said: object) -> None:
        run = self._run
        if run is not None and run.open_look is not None and isinstance(said, str | float):
            self.answered.emit(run.answer(said))

    @Slot()
    def _on_unseen_clicked(self) -> None:
        if self._run is not None and self._run.open_look is not None:
            self.answered.emit(self._run.answer(None))

    @Slot()
    def _on_conclude_clicked(self) -> None:
        run = self._run
        if run is not None and not run.done and run.open_look is None and not self._concluding:
            self._concluding = True
            self.concluding.begin()
            self._show_step()

    @Slot()
    def _on_concluding_left(self) -> None:
        self._concluding = False
        self._show_step()

    @Slot(object)
    def _on_concluded(self, conclusion: Conclusion) -> None:
        if self._run is not None:
            self.answered.emit(self._run.conclude(conclusion))
