"""The other questions as rows, grouped by how one looks."""

from collections.abc import Iterable
from dataclasses import dataclass

from idkey.app.bench.session import Session
from idkey.app.parts.words import upper_first
from idkey.engine.labels import normalised
from idkey.engine.result import Blocked, Question
from idkey.model.character import Character, Look
from idkey.report.language import Language
from idkey.report.words import blocked_words, look_words, seen_words


@dataclass(frozen=True, slots=True, kw_only=True)
class OtherRow:
    """A question, or the heading of a group.

    Attributes:
        character: Character id; empty for a heading.
        text: Name of the character, or the heading.
        question: The question in plain words; what was seen where it is answered.
        worth: Value against the best open question, from 0 to 1.
        answered: Whether there is a finding.
        blocked: Why it is not proposed now; empty otherwise.
        current: Whether it is on the card.
    """

    text: str
    character: str = ""
    question: str = ""
    worth: float = 0.0
    answered: bool = False
    blocked: str = ""
    current: bool = False


def other_rows(session: Session, search: str, language: Language) -> tuple[OtherRow, ...]:
    """Headings and questions; only those that `search` finds, unless it is empty."""
    wanted = [q for q in session.reasoned.questions if _found(session, q, search)]
    best = max((q.value for q in session.reasoned.questions if q.blocked is None), default=0.0)
    current = session.character.id if session.character else ""
    rows: list[OtherRow] = []
    for look in Look:
        group = [q for q in wanted if q.look is look]
        if group:
            rows.append(OtherRow(text=upper_first(look_words(look, language))))
            rows += [_row(session, q, best, language=language, here=current) for q in group]
    return tuple(rows)


def _row(
    session: Session, question: Question, best: float, *, language: Language, here: str
) -> OtherRow:
    character = session.key.character[question.character]
    finding = session.case.finding(character.id)
    why = question.blocked
    blocked = blocked_words(why, language) if why and why is not Blocked.ANSWERED else ""
    return OtherRow(
        text=character.name,
        character=character.id,
        question=seen_words(session.key, finding, language) if finding else character.question,
        worth=question.value / best if best > 0 and why is None else 0.0,
        answered=finding is not None,
        blocked="" if finding else blocked,
        current=character.id == here,
    )


def _found(session: Session, question: Question, search: str) -> bool:
    sought = normalised(search).split()
    if not sought:
        return True
    text = normalised(" ".join(_texts(session.key.character[question.character])))
    return all(word in text for word in sought)


def _texts(character: Character) -> Iterable[str]:
    yield from (character.name, character.question, character.part, character.definition)
    yield from character.words
    yield from (state.label for state in character.states)
