"""What the screens of the three exercises have in common."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QLayout, QVBoxLayout, QWidget

from idkey.app.drill.answers import Answers
from idkey.app.drill.feedback import Feedback, SideBySide
from idkey.app.drill.figures import DrillFigures
from idkey.app.parts.columns import filled
from idkey.app.parts.desk import Desk
from idkey.app.parts.scrolling import scrolled

GAP = 18
"""Room between the columns, in pixels."""


class ExerciseView(QWidget):
    """Pictures on the left, the question with its answers on the right, then the feedback.

    Args:
        desk: Look, drawings, language.
        figures: Draws the animals.

    Signals:
        answered(run: object): The exercise one step on.
        done(): The person has read how it turned out.
    """

    answered = Signal(object)
    done = Signal()

    def __init__(self, desk: Desk, figures: DrillFigures) -> None:
        super().__init__()
        self._desk = desk
        self._figures = figures
        self.answers = Answers(desk.theme, self)
        self.feedback = Feedback(desk)
        self.compared = SideBySide(desk)
        self.feedback.done.connect(self._on_feedback_done)
        figures.arrived.connect(self._on_figures_arrived)

    def show_figures(self) -> None:
        """Show what has been drawn meanwhile."""
        raise NotImplementedError

    def focus_answer(self) -> None:
        """Put the focus where the answer is given."""
        raise NotImplementedError

    def set_columns(self, *columns: tuple[QLayout, int]) -> None:
        """Put columns side by side with their shares of the width; all but the first scroll."""
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GAP)
        for number, (column, share) in enumerate(columns):
            if number and isinstance(column, QVBoxLayout):
                row.addWidget(scrolled(filled(column), as_wide=True), share)
            else:
                row.addLayout(column, share)

    @Slot()
    def _on_figures_arrived(self) -> None:
        if self.isVisible():
            self.show_figures()

    @Slot()
    def _on_feedback_done(self) -> None:
        self.done.emit()
