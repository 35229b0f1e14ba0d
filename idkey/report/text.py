"""The verdict as plain text, for terminals and for the notes of a till."""

from collections.abc import Sequence
from textwrap import wrap

from idkey.engine.result import Assessment, Question
from idkey.engine.thumbs import Leaning
from idkey.model.case import Claim
from idkey.model.key import Key
from idkey.report.finding_words import finding_words
from idkey.report.label_words import stakes_words
from idkey.report.language import ENGLISH, Language
from idkey.report.question_words import next_step
from idkey.report.terms import level_words, verdict_title
from idkey.report.thumb_words import thumb_words
from idkey.report.verdict_words import (
    caution_sentence,
    prior_words,
    unmet_words,
    verdict_sentence,
    written_name,
)

WIDTH = 78
"""Characters in a line: fits a terminal and most note fields."""


def verdict_text(
    key: Key,
    assessment: Assessment,
    questions: Sequence[Question] = (),
    language: Language = ENGLISH,
    *,
    leaning: Leaning | None = None,
) -> str:
    """Verdict, cautions, findings, what is missing, and what to look at next.

    Args:
        key: The key in use.
        assessment: What is known.
        questions: Questions as the engine ranks them; may be empty.
        language: Language to speak.
        leaning: What rests on rules of thumb.

    Returns:
        Lines of at most `WIDTH` characters, without an end of line after the last.
    """
    say, verdict, case = language.say, assessment.verdict, assessment.case
    title = verdict_title(verdict.kind, language, labelled=bool(case.claim.text.strip()))
    name = f"{written_name(verdict, language)} ({level_words(verdict.level, language)})"
    lines = [*_block(f"{title.upper()}: {name}"), ""]
    lines += _block(verdict_sentence(key, assessment, language))
    lines += _block(_claim_line(case.claim, language))
    warnings = [caution_sentence(key, caution, language) for caution in assessment.cautions]
    for warning in (*warnings, *stakes_words(key, case.claim, verdict, language)):
        lines += _item("!", warning)
    thumbs = thumb_words(key, leaning, verdict, language) if leaning else ()
    lines += _section(say("Rules of thumb"), thumbs)
    seen = [finding_words(key, finding, language) for finding in case.findings]
    lines += _section(say("Findings"), seen)
    missing = [unmet_words(key, unmet, language) for unmet in verdict.unmet]
    lines += _section(say("Still missing for a name"), missing)
    lines += ["", *_block(next_step(key, assessment, questions, language, leaning=leaning))]
    if assessment.prior:
        lines += _block(prior_words(key, assessment, language))
    lines += ["", *_block(key_line(key, language))]
    return "\n".join(lines)


def key_line(key: Key, language: Language = ENGLISH) -> str:
    """Which key was used: title, version and the start of its digest."""
    text = language.say("Key: {title}, version {version}", title=key.title, version=key.version)
    return f"{text} ({key.digest[:12]})" if key.digest else text


def _claim_line(claim: Claim, language: Language) -> str:
    if not claim.text.strip():
        return ""
    label = " ".join(claim.text.split())
    text = language.say("Label: {label}", label=language.quote(label))
    facts = (claim.supplier, language.day(claim.date), claim.sex, claim.size, claim.origin)
    told = ", ".join(fact for fact in facts if fact)
    return f"{text} ({told})" if told else text


def _section(title: str, items: Sequence[str]) -> list[str]:
    if not items:
        return []
    return ["", f"{title}:", *(line for item in items for line in _item("-", item))]


def _item(sign: str, text: str) -> list[str]:
    return wrap(text, WIDTH, initial_indent=f"{sign} ", subsequent_indent="  ")


def _block(text: str) -> list[str]:
    return wrap(text, WIDTH)
