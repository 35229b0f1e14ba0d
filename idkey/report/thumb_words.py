"""What is said when a verdict rests on a rule of thumb."""

from collections.abc import Iterator

from idkey.engine.result import Verdict
from idkey.engine.thumbs import Failure, Leaning
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.report.names import character_name, listing
from idkey.report.terms import level_words, verdict_title
from idkey.report.verdict_words import written_name

NAMED = 5
"""Taxa that show the same which are named."""


def thumb_line(key: Key, found: Leaning, verdict: Verdict, language: Language = ENGLISH) -> str:
    """The warning in one line; empty when the verdict stands without rules of thumb.

    Args:
        key: The key.
        found: What rests on them.
        verdict: The verdict with them.
        language: Language to speak.
    """
    if not found.failures:
        return ""
    return language.count(
        len(found.failures),
        "Rests on a rule of thumb: {characters}. Without it: {verdict}.",
        "Rests on rules of thumb: {characters}. Without them: {verdict}.",
        characters="; ".join(character_name(key, one.character) for one in found.failures),
        verdict=_otherwise(found, verdict, language),
    ).replace("..", ".")


def thumb_words(
    key: Key, found: Leaning, verdict: Verdict, language: Language = ENGLISH
) -> tuple[str, ...]:
    """The warning in full: how each rule does in this key, what stands without, what to look at.

    Args:
        key: The key.
        found: What rests on rules of thumb.
        verdict: The verdict with them.
        language: Language to speak.
    """
    return tuple(_sentences(key, found, verdict, language))


def _sentences(key: Key, found: Leaning, verdict: Verdict, language: Language) -> Iterator[str]:
    if found.failures:
        line = thumb_line(key, found, verdict, language)
        yield f"{line} {language.say('Common practice, no published source for the rule.')}"
        for failure in found.failures:
            yield _failure(key, failure, verdict, language)
        yield _instead(key, found, language)
    if found.kept:
        yield language.say(
            "The caution stays: nothing but a rule of thumb speaks firmly enough against {taxa}.",
            taxa=listing(key, found.kept, language),
        )


def _otherwise(found: Leaning, verdict: Verdict, language: Language) -> str:
    """The verdict without the rules; its kind only where that changes."""
    bare = found.without
    kind = (
        language.quote(verdict_title(bare.kind, language)) if bare.kind is not verdict.kind else ""
    )
    if kind and not bare.name.certain:
        return kind
    name = f"{written_name(bare, language)} ({level_words(bare.level, language)})"
    return f"{kind}, {name}" if kind else name


def _failure(key: Key, failure: Failure, verdict: Verdict, language: Language) -> str:
    """What the matrix says about one rule."""
    others = [taxon for taxon in failure.alike if taxon not in verdict.taxa]
    name = character_name(key, failure.character)
    if not others:
        return _alone(key, failure, name, language)
    text = language.count(
        len(others),
        "{character}: in this key {names} can show the same; {scored} of {taxa} taxa are scored.",
        "{character}: in this key {n} more taxa can show the same ({names}); {scored} of {taxa} "
        "taxa are scored.",
        character=name,
        names=listing(key, others, language, most=NAMED),
        scored=failure.scored,
        taxa=len(key.taxa),
    )
    if not failure.torn:
        return text
    torn = language.say(
        "It is not constant in {taxa}.", taxa=listing(key, failure.torn, language, most=NAMED)
    )
    return f"{text} {torn}"


def _alone(key: Key, failure: Failure, name: str, language: Language) -> str:
    if failure.scored < len(key.taxa):
        return language.say(
            "{character}: no other taxon scored for it shows the same, but only {scored} of "
            "{taxa} taxa are scored.",
            character=name,
            scored=failure.scored,
            taxa=len(key.taxa),
        )
    return language.say(
        "{character}: no other taxon of this key shows the same; beyond the key nobody has "
        "tested it.",
        character=name,
    )


def _instead(key: Key, found: Leaning, language: Language) -> str:
    if not found.instead:
        return language.say("This key has nothing else to look at now that would carry it.")
    names = "; ".join(character_name(key, character) for character in found.instead)
    return language.say("Look at this instead: {characters}.", characters=names)
