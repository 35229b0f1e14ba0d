"""What to look at next, and why."""

from collections.abc import Sequence

from idkey.engine.questions import telling, useful
from idkey.engine.result import (
    Assessment,
    Blocked,
    Level,
    Need,
    Question,
    Stake,
    Verdict,
    VerdictKind,
)
from idkey.engine.thumbs import Leaning
from idkey.model.character import Look
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name
from idkey.report.terms import blocked_words, look_words, trouble_words

NAMED = 3
"""Characters named at most."""


def next_step(
    key: Key,
    assessment: Assessment,
    questions: Sequence[Question] = (),
    language: Language = ENGLISH,
    *,
    leaning: Leaning | None = None,
) -> str:
    """What to look at or to do next.

    Args:
        key: The key in use.
        assessment: What is known.
        questions: Questions as the engine ranks them; empty falls back on what the unmet
            conditions name.
        language: Language to speak.
        leaning: What rests on rules of thumb; what would take their place is looked at before
            anything is called settled.
    """
    verdict = assessment.verdict
    if verdict.kind is VerdictKind.OUTSIDE:
        return _again(assessment, language)
    settled = verdict.kind is not VerdictKind.OPEN and verdict.level is Level.ESTABLISHED
    character, look = ("", None) if settled else _best(key, assessment, questions)
    if not character and leaning is not None and leaning.instead:
        character = leaning.instead[0]
        look = next((q.look for q in questions if q.character == character), None)
    if character:
        return _look_at(key, character, look, language)
    if settled:
        return language.say("Nothing more has to be looked at; a second person may look again.")
    return _stuck(key, assessment, questions, language)


def _again(assessment: Assessment, language: Language) -> str:
    """What to do with an animal that nothing in the key explains."""
    if not assessment.cautions:
        return language.say(
            "Look at the findings again, the least sure ones first; if they stand, show it to "
            "someone who knows the group."
        )
    return language.say(
        "Look at the findings again, the least sure ones first; if they stand, show the animal to "
        "someone who knows the group, and treat it as dangerous and listed until then."
    )


def _best(
    key: Key, assessment: Assessment, questions: Sequence[Question]
) -> tuple[str, Look | None]:
    """The best question that tells something; none when nothing does."""
    for question in questions:
        if useful(question):
            return question.character, question.look
    blocked = {q.character for q in questions if q.blocked is not None}
    looks = {q.character: q.look for q in questions}
    for unmet in assessment.verdict.unmet:  # the aim is served, but a name wants more
        for character in unmet.characters:
            known = key.character.get(character)
            if known and character not in blocked and not known.only_dead:
                return character, looks.get(character)
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


def _stuck(
    key: Key, assessment: Assessment, questions: Sequence[Question], language: Language
) -> str:
    """What to do when no question that may be asked now tells anything more."""
    verdict = assessment.verdict
    told = [question for question in questions if telling(question)]
    if waiting := _waiting(key, assessment, told):
        opened = language.say(
            "Say the sex and the stage, where they can be told: that opens {characters}.",
            characters=_named(key, waiting),
        )
        return _with_care(assessment, opened, language)
    if unseen := _unseen(key, assessment, told):
        return _with_care(assessment, _again_at(key, unseen, language), language)
    withheld = [q.character for q in told if q.blocked is Blocked.HANDLING]
    if withheld:
        return language.say(
            "What is left to look at means handling ({characters}); while a medically significant "
            "species is possible, wait for a moult or use photographs.",
            characters=_named(key, withheld),
        )
    if any(unmet.need is Need.FIT for unmet in verdict.unmet):
        return language.say("Look again at the findings that do not fit.")
    if [unmet.need for unmet in verdict.unmet] == [Need.ANSWERS]:
        any_open = next((q for q in questions if q.blocked is None and _alive(q)), None)
        if any_open is not None:
            return _one_more(key, any_open, int(verdict.unmet[0].want - verdict.answers), language)
    after = [q.character for q in told if q.blocked is None and not _alive(q)]
    said = _beyond(key, after or _dead(key, verdict), language)
    return _with_care(assessment, said, language)


def _with_care(assessment: Assessment, said: str, language: Language) -> str:
    """The sentence, and how to treat the animal meanwhile."""
    if not any(caution.stake is Stake.HAZARD for caution in assessment.cautions):
        return said
    careful = language.say("Until then treat it as the most dangerous taxon that is left.")
    return f"{said} {careful}"


def _waiting(key: Key, assessment: Assessment, told: Sequence[Question]) -> list[str]:
    """Characters that would tell once sex or stage is said, and that a live animal shows."""
    specimen = assessment.case.specimen
    open_now = {Blocked.SEX: specimen.sex is None, Blocked.STAGE: specimen.stage is None}
    return [
        question.character
        for question in told
        if question.blocked and open_now.get(question.blocked, False)
        if not key.character[question.character].only_dead
    ]


def _unseen(key: Key, assessment: Assessment, told: Sequence[Question]) -> list[str]:
    """Characters that would tell and could not be seen, though a live animal shows them."""
    passed_over = {f.character for f in assessment.case.findings if f.unseen}
    return [
        question.character
        for question in told
        if question.character in passed_over and not key.character[question.character].only_dead
    ]


def _again_at(key: Key, characters: Sequence[str], language: Language) -> str:
    named = _named(key, characters)
    if any(Look.MOULT in key.character[character].looks for character in characters):
        return language.say(
            "What could not be seen would tell more ({characters}): look again in better light, "
            "on a photograph or on the next moult.",
            characters=named,
        )
    return language.say(
        "What could not be seen would tell more ({characters}): look again in better light or on "
        "a photograph.",
        characters=named,
    )


def _dead(key: Key, verdict: Verdict) -> list[str]:
    """Characters that would tell the rivals apart on a dead animal only."""
    named = dict.fromkeys(c for unmet in verdict.unmet for c in unmet.characters)
    return [c for c in named if c in key.character and key.character[c].only_dead]


def _alive(question: Question) -> bool:
    return question.look is not Look.DEAD


def _named(key: Key, characters: Sequence[str]) -> str:
    shown = "; ".join(character_name(key, character) for character in characters[:NAMED])
    return f"{shown} …" if len(characters) > NAMED else shown


def _one_more(key: Key, question: Question, short: int, language: Language) -> str:
    """Enough to tell the rivals apart is known, but too little to trust."""
    known = key.character[question.character]
    return language.count(
        short,
        "Nothing stands against the name, but one more answer is wanted to test it: {name} "
        "({look}). {question}",
        "Nothing stands against the name, but {n} more answers are wanted to test it: {name} "
        "({look}). {question}",
        name=known.name,
        look=look_words(question.look, language),
        question=known.question,
    )


def _beyond(key: Key, after: Sequence[str], language: Language) -> str:
    """What could still tell when nothing in sight does."""
    if after:
        return language.say(
            "Nothing more is to be seen on a live animal; under a microscope or on a dead animal "
            "this would tell: {characters}.",
            characters=_named(key, after),
        )
    if any(Look.MOULT in character.looks for character in key.characters):
        return language.say(
            "Nothing left in this key would tell more; a moult under the microscope, a DNA "
            "barcode, another key or someone who knows the group might."
        )
    return language.say(
        "Nothing left in this key would tell more; another key or someone who knows the group "
        "might."
    )


def why_question(
    key: Key, question: Question, language: Language = ENGLISH, *, fresh: bool = False
) -> str:
    """Why a question is asked now, or why it is not; `fresh` while nothing leads yet."""
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
    if fresh:
        sentence = phrase("It divides what is possible best for its trouble; {trouble}.")
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
