"""What the question card shows, worked out from a session."""

from PySide6.QtCore import QCoreApplication, QSize
from PySide6.QtGui import QPixmap

from idkey.app.bench.range_strip import Band, bands
from idkey.app.bench.session import Session
from idkey.app.parts.desk import Desk
from idkey.app.parts.words import aim_words
from idkey.engine.result import Question
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.report.words import next_step, why_question

translate = QCoreApplication.translate


def same_question(was: Character | None, before: Session, after: Session) -> bool:
    """Whether the card stays as it is: same case, same key, same question, same finding."""
    now = after.character
    if was is None or now is None or was is not now or before.key is not after.key:
        return False
    if before.case.id != after.case.id:
        return False
    return before.case.finding(now.id) == after.case.finding(now.id)


def bands_shown(session: Session | None, character: Character | None) -> tuple[Band, ...]:
    """Where each standing taxon lies on the strip of a number; empty for states."""
    if session is None or character is None or not character.kind.numeric:
        return ()
    taxa = tuple(c.taxon for c in session.reasoned.assessment.standing)
    return bands(session.key, character, taxa)


def measure_drawing(desk: Desk, key: Key, character: Character, ratio: float) -> QPixmap | None:
    """How a number is taken, drawn; None where there is no drawing or it is still to come."""
    size = QSize(desk.theme.px(176), desk.theme.px(132))
    return desk.pictures.measure(key, character, size=size, ratio=ratio)


def why_now(session: Session, question: Question | None, desk: Desk) -> str:
    """Why a question is asked, or why it is not proposed; without one, what is left to do."""
    if question is None:
        known = session.reasoned
        told, asked, leaning = known.assessment, known.questions, known.leaning
        return next_step(session.key, told, asked, desk.language, leaning=leaning)
    answered = session.reasoned.assessment.verdict.answers > 0
    first = bool(session.open_questions) and session.open_questions[0] == question
    why = why_question(session.key, question, desk.language, fresh=first and not answered)
    if question.blocked:
        return why
    chosen = translate("QuestionView", "Chosen for: {aim}").format(aim=aim_words(session.case.aim))
    return f"{why} {chosen}"
