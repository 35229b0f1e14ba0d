"""Three short questions that end a case: the label, the danger, the papers."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from idkey.app.drill.answers import Answers, Row
from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.drill.conclusion import CONCLUSIONS, Conclusion
from idkey.engine.result import VerdictKind
from idkey.report.words import verdict_title

_BACK = "back"
_YES, _NO = "yes", "no"


class Concluding(QWidget):
    """Asks one thing after the other.

    Args:
        desk: Look, drawings, language.
        keys_in: The widget in which number keys count.

    Signals:
        concluded(conclusion: object): All three were answered.
        left(): The person wants to look further.
    """

    concluded = Signal(object)
    left = Signal()

    def __init__(self, desk: Desk, keys_in: QWidget) -> None:
        super().__init__()
        self._desk = desk
        self._verdict: VerdictKind | None = None
        self._hazard: bool | None = None
        self.question = caption(rank="strong")
        self.answers = Answers(desk.theme, keys_in)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.question)
        column.addWidget(self.answers)
        self.answers.chosen.connect(self._on_answers_chosen)

    def begin(self) -> None:
        """Ask about the label."""
        self._verdict = self._hazard = None
        rows = [Row(name=k.value, text=verdict_title(k, self._desk.language)) for k in CONCLUSIONS]
        rows.append(Row(name=_BACK, text=self.tr("Look at more first"), key="B"))
        self._ask(self.tr("About the label:"), rows)

    def focus(self) -> None:
        """Put the focus on the first answer."""
        self.answers.focus()

    def _ask(self, question: str, rows: list[Row]) -> None:
        self.question.setText(question)
        self.answers.replace(rows)
        self.answers.focus()

    def _ask_whether(self, question: str) -> None:
        yes, no = Row(name=_YES, text=self.tr("Yes")), Row(name=_NO, text=self.tr("No"))
        self._ask(question, [yes, no])

    @Slot(str)
    def _on_answers_chosen(self, name: str) -> None:
        if name == _BACK:
            self.left.emit()
        elif self._verdict is None:
            self._verdict = VerdictKind(name)
            self._ask_whether(self.tr("Must it still be treated as medically significant?"))
        elif self._hazard is None:
            self._hazard = name == _YES
            self._ask_whether(self.tr("Must it still be treated as permit-listed?"))
        else:
            verdict, hazard = self._verdict, self._hazard
            self.answers.replace(())
            self.concluded.emit(Conclusion(verdict=verdict, hazard=hazard, permit=name == _YES))
