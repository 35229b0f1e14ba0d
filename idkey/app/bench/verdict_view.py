"""The verdict so far, what to look at next, and the cautions."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from idkey.app.bench.caution_bar import CautionBar
from idkey.app.bench.one_line import OneLine
from idkey.app.bench.session import Session
from idkey.app.parts.captions import KeyButton, caption, restyle
from idkey.app.parts.desk import Desk
from idkey.app.parts.words import reading_words
from idkey.engine.result import Stake
from idkey.report.words import next_step, rich, thumb_line, verdict_sentence

LONG = 110
"""From this many letters on a verdict is set smaller."""


class VerdictView(QWidget):
    """One sentence, the next step, the dangers; the reasons open from here.

    Args:
        desk: Look, drawings, language.

    Signals:
        reasons_asked(): The person wants the reasons.
    """

    reasons_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.setAccessibleName(self.tr("Verdict"))
        self._sentence = caption(rank="lead")
        self._sentence.setTextFormat(Qt.TextFormat.RichText)
        self._next = OneLine(desk.theme)
        self._thumb = OneLine(desk.theme, colour="doubt")
        self._thumb.hide()
        self._why = KeyButton(self.tr("Why?"), "F4", desk.theme, "quiet")
        self._why.setAccessibleName(self.tr("Why: the reasons behind the verdict"))
        self.hazard = CautionBar(Stake.HAZARD, desk)
        self.permit = CautionBar(Stake.PERMIT, desk)
        top = QHBoxLayout()
        top.setSpacing(8)
        top.addWidget(self._sentence, 1)
        top.addWidget(self._why, 0, Qt.AlignmentFlag.AlignTop)
        cautions = QHBoxLayout()
        cautions.setSpacing(8)
        cautions.addWidget(self.hazard, 1)
        cautions.addWidget(self.permit, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 2, 0, 2)
        column.setSpacing(6)
        column.addLayout(top)
        column.addWidget(self._next)
        column.addWidget(self._thumb)
        column.addStretch(1)
        column.addLayout(cautions)
        self._why.clicked.connect(self._on_why_clicked)
        self.hazard.pressed.connect(self._on_why_clicked)
        self.permit.pressed.connect(self._on_why_clicked)

    @property
    def sentence(self) -> str:
        """The verdict as it is shown, plain."""
        return self._sentence.accessibleName()

    @property
    def thumb(self) -> str:
        """The warning of a rule of thumb as it is shown; empty without one."""
        return self._thumb.text

    def say(self, text: str) -> None:
        """Say something in place of the verdict until a session is shown again."""
        self._sentence.setText(text)
        self._sentence.setAccessibleName(text)
        self._next.hide()

    def show_session(self, session: Session) -> None:
        """Show what is known in a session."""
        key, assessment = session.key, session.reasoned.assessment
        language = self._desk.language
        reading = session.reading
        sentence = reading_words() if reading else verdict_sentence(key, assessment, language)
        self._sentence.setText(sentence if reading else rich(key, sentence))
        restyle(self._sentence, "rank", "strong" if len(sentence) > LONG else "lead")
        self._sentence.setAccessibleName(sentence)
        leaning = session.reasoned.leaning
        questions = session.reasoned.questions
        step = next_step(key, assessment, questions, language, leaning=leaning)
        self._next.show_text(step)
        self._next.setVisible(not session.thinking)
        thumb = thumb_line(key, leaning, assessment.verdict, language) if leaning else ""
        self._thumb.show_text(thumb)
        self._thumb.setVisible(bool(thumb) and not session.thinking)
        found = {caution.stake: caution for caution in assessment.cautions}
        self.hazard.show_caution(key, found.get(Stake.HAZARD), case=session.case.id)
        self.permit.show_caution(key, found.get(Stake.PERMIT), case=session.case.id)

    @Slot()
    def _on_why_clicked(self) -> None:
        self.reasons_asked.emit()
