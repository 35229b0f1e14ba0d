"""What to look at next, and why."""

from collections.abc import Sequence

from idkey.engine.result import (
    Assessment,
    Blocked,
    Level,
    Need,
    Question,
    Stake,
    VerdictKind,
)
from idkey.model.character import Look
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name
from idkey.report.terms import blocked_words, look_words, trouble_words


def next_step(
    key: Key,
    assessment: Assessment,
    questions: Sequence[Question] = (),
    language: Language = ENGLISH,
) -> str:
    """What to look at or to do next.

    Args:
        key: The key in use.
        assessment: What is known.
        questions: Questions as the engine ranks them; empty falls back on what the unmet
            conditions name.
        language: Language to speak.
    """
    verdict = assessment.verdict
    if verdict.kind is VerdictKind.OUTSIDE:
        return language.say(
            "Look at the findings again, the least sure ones first; if they stand, show the "
            "animal to someone who knows the group, and treat it as dangerous and listed until "
            "then."
        )
    if verdict.kind is not VerdictKind.OPEN and verdict.level is not Level.OPEN:
        return language.say("Nothing more has to be looked at; a second person may look again.")
    character, look = _best(key, assessment, questions)
    if character:
        return _look_at(key, character, look, language)
    return _stuck(assessment, questions, language)


def _best(
    key: Key, assessment: Assessment, questions: Sequence[Question]
) -> tuple[str, Look | None]:
    for question in questions:
        if question.blocked is None and question.value > 0 and question.look is not Look.DEAD:
            return question.character, question.look
    blocked = {q.character for q in questions if q.blocked is not None}
    for unmet in assessment.verdict.unmet:  # the aim is served, but a name wants more
        for character in unmet.characters:
            if character in key.character and character not in blocked:
                return character, None
    return "", None


def _look_at(key: Key, character: str, look: Look | None, language: Language) -> str:
    known = key.character[character]
    if look is None:
        return language.say(
            "Look next at: {name}. {question}", name=known.name, question=known.question
        )
    return language.say(
        "Look next at: {name} ({look}). {question}",
        name=known.name,
        look=look_words(look, language),
        question=known.question,
    )


def _stuck(assessment: Assessment, questions: Sequence[Question], language: Language) -> str:
    """What to do when no question is left that may be asked now."""
    if any(question.blocked is Blocked.HANDLING for question in questions):
        return language.say(
            "What is left to look at means handling; while a medically significant species is "
            "possible, wait for a moult or use photographs."
        )
    if any(unmet.need is Need.FIT for unmet in assessment.verdict.unmet):
        return language.say("Look again at the findings that do not fit.")
    if any(caution.stake is Stake.HAZARD for caution in assessment.cautions):
        return language.say(
            "This key has nothing more to ask of a live animal; treat it as the most dangerous "
            "taxon that is left."
        )
    return language.say(
        "This key has nothing more to ask of a live animal; wait for a moult, or ask someone who "
        "knows the group."
    )


def why_question(key: Key, question: Question, language: Language = ENGLISH) -> str:
    """Why a question is asked now, or why it is not."""
    if question.blocked is not None:
        return _why_not(key, question, language)
    apart, leading = question.splits
    sentence = (
        phrase("It sets {apart} of {leading} close rivals apart from the leading taxon; {trouble}.")
        if apart
        else phrase("It tells no close rival apart by itself; {trouble}.")
    )
    if not leading:
        sentence = phrase("No close rival is left; {trouble}.")
    return language.say(
        sentence, apart=apart, leading=leading, trouble=trouble_words(question.look, language)
    )


def _why_not(key: Key, question: Question, language: Language) -> str:
    known = key.character.get(question.character)
    if question.blocked is Blocked.REQUIRES and known is not None and known.requires is not None:
        above = character_name(key, known.requires.character)
        return language.say("Look at {character} first.", character=above)
    assert question.blocked is not None
    return blocked_words(question.blocked, language)
