"""Findings, scores and conflicts as words."""

from math import floor, log10

from idkey.engine.result import Conflict, Effect
from idkey.model.case import Finding
from idkey.model.key import Key
from idkey.model.score import Often, Score, Shows, Spans
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name, listing, state_labels
from idkey.report.terms import basis_words, certainty_words, look_words, sex_words, stage_words

_OFTEN = {
    Often.USUALLY: phrase("usually {state}"),
    Often.SOMETIMES: phrase("sometimes {state}"),
    Often.RARELY: phrase("rarely {state}"),
}


def seen_words(key: Key, finding: Finding, language: Language = ENGLISH) -> str:
    """What was seen, without the character and without how sure."""
    if finding.unseen:
        return language.say("could not be seen")
    if finding.value is not None:
        return _measured(key, finding, language)
    labels = state_labels(key, finding.character, finding.states)
    if not finding.negated:
        return language.join(labels, "or")
    return language.say("not {states}", states=language.join(labels, "or"))


def _measured(key: Key, finding: Finding, language: Language) -> str:
    known = key.character.get(finding.character)
    value, spread = finding.value or 0.0, finding.uncertainty
    if spread:  # no digits that the measurement does not have
        spread = float(f"{spread:.2g}")
        value = round(value, 1 - floor(log10(spread)))
    elif spread is None and known is not None:
        spread = known.uncertainty
    number = language.number(value)
    text = f"{number} ± {language.number(spread)}" if spread else number
    return f"{text} {known.unit}" if known and known.unit else text


def means_seen(finding: Finding, language: Language = ENGLISH) -> str:
    """How sure and how it was looked at, such as ``"sure, through the tub"``."""
    how = look_words(finding.look, language) if finding.look else ""
    sure = "" if finding.unseen else certainty_words(finding.certainty, language)
    return ", ".join(part for part in (sure, how) if part)


def finding_words(key: Key, finding: Finding, language: Language = ENGLISH) -> str:
    """A finding in a line, such as ``"Sting bulb colour: dark (sure, through the tub)"``."""
    name = character_name(key, finding.character)
    seen = seen_words(key, finding, language)
    how = means_seen(finding, language)
    return f"{name}: {seen} ({how})" if how else f"{name}: {seen}"


def value_words(key: Key, score: Score, language: Language = ENGLISH) -> str:
    """What a taxon shows, without its sources."""
    value = score.value
    if isinstance(value, Shows):
        return _states(key, score.character, value, language)
    if isinstance(value, Spans):
        known = key.character.get(score.character)
        return _range(value, known.unit if known else "", language)
    return language.say("the part is lacking")


def _states(key: Key, character: str, value: Shows, language: Language) -> str:
    shares = value.shares()
    ranked = sorted(value.states.items(), key=lambda state: -shares[state[0]])
    labels = state_labels(key, character, tuple(state for state, _ in ranked))
    parts = []
    for label, (_, often) in zip(labels, ranked, strict=True):
        if isinstance(often, Often) and often in _OFTEN:
            parts.append(language.say(_OFTEN[often], state=label))
        elif isinstance(often, float) and len(labels) > 1:
            parts.append(f"{label} {language.share(often)}")
        else:
            parts.append(label)
    weighed = any(often is not None for often in value.states.values())
    return ", ".join(parts) if weighed else language.join(parts, "or")


def _range(value: Spans, unit: str, language: Language) -> str:
    low, high, mean = (
        language.number(x) if x is not None else "" for x in (value.low, value.high, value.mean)
    )
    tail = f" {unit}" if unit else ""
    if low and high:
        text = low if low == high else language.say("{low} to {high}", low=low, high=high)
    elif low:
        text = language.say("from {low}", low=low)
    elif high:
        text = language.say("up to {high}", high=high)
    else:
        text = language.say("mean {mean}", mean=mean)
    return f"{text}{tail}{_sample(value, language, mean if low or high else '')}"


def _sample(value: Spans, language: Language, mean: str) -> str:
    parts = [language.say("mean {mean}", mean=mean)] if mean else []
    if value.sd is not None:
        parts.append(f"s = {language.number(value.sd)}")
    if value.n is not None:
        parts.append(f"n = {value.n}")
    return f" ({', '.join(parts)})" if parts else ""


def held_words(key: Key, score: Score, language: Language = ENGLISH) -> str:
    """What a taxon shows and for whom, with its ground where that is not print."""
    text = value_words(key, score, language)
    holds = [sex_words(score.sex, language)] if score.sex else []
    holds += [stage_words(score.stage, language)] if score.stage else []
    if holds:
        text = f"{', '.join(holds)}: {text}"
    return text if score.basis.printed else f"{text} ({basis_words(score.basis, language)})"


def score_words(key: Key, score: Score, language: Language = ENGLISH) -> str:
    """What a taxon shows, and who says so, such as ``"120 to 220 mm [frwiki]"``."""
    text = held_words(key, score, language)
    return f"{text} [{', '.join(score.sources)}]" if score.sources else text


def expected_words(key: Key, scores: tuple[Score, ...], language: Language = ENGLISH) -> str:
    """What a taxon shows, its scores for each sex and stage side by side."""
    if not scores:
        return language.say("nothing scored")
    return "; ".join(score_words(key, score, language) for score in scores)


def conflict_words(key: Key, conflict: Conflict, language: Language = ENGLISH) -> str:
    """A finding that a taxon cannot explain, and what the taxon shows instead."""
    sentence = (
        phrase("{character}: seen {seen}, which lies next to what the taxon shows: {expected}")
        if conflict.near
        else phrase("{character}: seen {seen}, but the taxon shows: {expected}")
    )
    return language.say(
        sentence,
        character=character_name(key, conflict.finding.character),
        seen=seen_words(key, conflict.finding, language),
        expected=expected_words(key, conflict.expected, language),
    )


def effect_words(key: Key, effect: Effect, language: Language = ENGLISH) -> str:
    """What one finding changed, against the case without it."""
    parts = []
    if effect.ruled_out:
        gone = listing(key, effect.ruled_out, language)
        parts.append(language.say("It alone rules out {taxa}.", taxa=gone))
    bits = language.number(round(abs(effect.gain_bits), 2))
    if effect.gain_bits >= 0.005:
        parts.append(language.say("It took away {bits} bits of doubt.", bits=bits))
    elif effect.gain_bits <= -0.005:
        parts.append(language.say("It raised the doubt by {bits} bits.", bits=bits))
    else:
        parts.append(language.say("It hardly changed the line-up."))
    without = language.share(effect.leader_support)
    parts.append(language.say("Without it the leading taxon has {share} support.", share=without))
    return " ".join(parts)
