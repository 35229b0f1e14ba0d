"""What a new version of a key makes of a recorded case, and why, in words."""

from collections.abc import Iterator

from idkey.engine.result import Assessment, Level, Stake, VerdictKind
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.report.terms import level_words, verdict_title
from idkey.report.verdict_words import caution_sentence, unmet_words
from idkey.report.words import conflict_words
from idkey.store.record import VerdictSummary


def altered_words(
    before: VerdictSummary, after: VerdictSummary, language: Language = ENGLISH
) -> tuple[str, ...]:
    """What the later verdict says otherwise, one sentence each; none when only the key moved."""
    say, told = language.say, []
    if before.name != after.name:
        none = say("no name")
        told.append(
            say("Name: {then}, now {now}.", then=before.name or none, now=after.name or none)
        )
    elif set(before.taxa) != set(after.taxa):
        told.append(say("The name stands for other taxa now."))
    if before.kind != after.kind:
        then, now = (_kind(one.kind, language) for one in (before, after))
        told.append(say("Verdict: {then}, now {now}.", then=then, now=now))
    if before.level != after.level:
        then, now = (_level(one.level, language) for one in (before, after))
        told.append(say("How far the name goes: {then}, now {now}.", then=then, now=now))
    if new := _stakes(after, before, language):
        told.append(say("New caution: {stakes}.", stakes=new))
    if gone := _stakes(before, after, language):
        told.append(say("Caution no longer in force: {stakes}.", stakes=gone))
    return tuple(told)


def altered_reasons(
    key: Key, before: VerdictSummary, assessment: Assessment, language: Language = ENGLISH
) -> tuple[str, ...]:
    """Why the key in hand says otherwise than `before`, one sentence each; never empty."""
    say = language.say
    if before.key_digest == key.digest:
        return (
            say(
                "The key is the same: other cases under this label were decided meanwhile, and "
                "they count as starting rates."
            ),
        )
    versions = say("Key {then}, now {now}.", then=before.key_version or "–", now=key.version)
    found = tuple(dict.fromkeys(_reasons(key, before, assessment, language)))
    return (versions, *(found or (say("The new key weighs the same findings otherwise."),)))


def _reasons(
    key: Key, before: VerdictSummary, assessment: Assessment, language: Language
) -> Iterator[str]:
    standing = {one.taxon: one for one in assessment.lineup}
    for taxon in before.taxa:
        if taxon not in standing:
            yield language.say("{taxon} is no longer in the key.", taxon=taxon.replace("_", " "))
        elif standing[taxon].ruled_out:
            why = "; ".join(
                conflict_words(key, conflict, language) for conflict in standing[taxon].conflicts
            )
            name = key.taxon[taxon].name
            yield language.say("{taxon} is ruled out now: {why}.", taxon=name, why=why.rstrip("."))
    for finding in assessment.case.findings:
        if finding.character not in key.character:
            name = finding.character.replace("_", " ")
            yield language.say(
                "The finding on {name} no longer counts: the key dropped it.", name=name
            )
    if before.level == Level.ESTABLISHED and assessment.verdict.level is not Level.ESTABLISHED:
        for unmet in assessment.verdict.unmet:
            yield unmet_words(key, unmet, language)
    known = set(before.cautions)
    for caution in assessment.cautions:
        if caution.stake.value not in known:
            yield caution_sentence(key, caution, language)


def _kind(kind: str, language: Language) -> str:
    return verdict_title(VerdictKind(kind), language) if kind in list(VerdictKind) else kind


def _level(level: str, language: Language) -> str:
    return level_words(Level(level), language) if level in list(Level) else level


def _stakes(one: VerdictSummary, other: VerdictSummary, language: Language) -> str:
    """Cautions that only the first has, in words."""
    words = {Stake.HAZARD: language.say("danger"), Stake.PERMIT: language.say("papers")}
    only = sorted(set(one.cautions) - set(other.cautions))
    return language.join([words[Stake(s)] if s in list(Stake) else s for s in only])
