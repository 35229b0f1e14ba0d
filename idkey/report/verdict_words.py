"""The verdict, its cautions and what is still missing, as sentences."""

from idkey.engine.labels import label_entry
from idkey.engine.result import (
    Assessment,
    Caution,
    Level,
    Need,
    Stake,
    Unmet,
    Verdict,
    VerdictKind,
)
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name, listing
from idkey.report.terms import means_words, verdict_title

EVEN = 1e-9
"""Starting rates that differ by less are even."""

_SETTLED = {
    Level.ESTABLISHED: phrase("among the taxa of this key, the findings establish {name}"),
    Level.GROUP: phrase("among the taxa of this key, the findings leave {name}"),
}


def verdict_sentence(key: Key, assessment: Assessment, language: Language = ENGLISH) -> str:
    """What is known, in one sentence, with no more certainty than the evidence has."""
    title, colon, rest = _sentence(key, assessment, language).partition(": ")
    if language.code == "de" and rest:
        rest = rest[0].upper() + rest[1:]  # German starts a sentence after a colon anew
    return f"{title}{colon}{rest}".replace("..", ".")  # after "sp." and "indet."


def _sentence(key: Key, assessment: Assessment, language: Language) -> str:
    verdict = assessment.verdict
    claim = assessment.case.claim
    label = label_entry(key, claim.label) if claim.label else None
    if verdict.kind is VerdictKind.OUTSIDE:
        return language.say(
            "Outside the key: no taxon of this key explains the findings well enough, so the "
            "animal may be something this key does not cover."
        )
    if verdict.answers == 0:
        return language.say("Open: nothing has been seen yet that this key can use.")
    if verdict.kind is VerdictKind.LABEL_UNKNOWN or label is None:
        return _without_label(claim.text, verdict, language)
    said = {
        VerdictKind.HOLDS: _holds,
        VerdictKind.TOO_BROAD: _too_broad,
        VerdictKind.CONTRADICTED: _contradicted,
        VerdictKind.OPEN: _open,
    }
    return said[verdict.kind](key, label, verdict, language)


def written_name(verdict: Verdict, language: Language = ENGLISH) -> str:
    """The name to write, in open nomenclature; "or" and "not identified" in the language."""
    if not verdict.name.certain and not verdict.name.italic:
        return language.say("not identified")
    return language.join(verdict.name.text.split(" or "), "or")


def identity_sentence(verdict: Verdict, language: Language = ENGLISH) -> str:
    """How far the name goes, without the label; a sentence without capital and full stop."""
    name = written_name(verdict, language)
    if verdict.level in _SETTLED:
        return language.say(_SETTLED[verdict.level], name=name)
    if not verdict.name.certain:
        return language.say("the findings do not decide yet, not even on a genus")
    return language.say(
        "the findings do not decide yet; among the taxa of this key the name goes as far as {name}",
        name=name,
    )


def _without_label(text: str, verdict: Verdict, language: Language) -> str:
    identity = identity_sentence(verdict, language)
    if not text.strip():
        return language.say("No label was given: {identity}.", identity=identity)
    return language.say(
        "Label not known: this key has no entry for {label}; {identity}.",
        label=language.quote(text.strip()),
        identity=identity,
    )


def _holds(_: Key, label: Label, verdict: Verdict, language: Language) -> str:
    return language.say(
        "The label holds: {identity}, the one taxon that {label} properly covers.",
        identity=identity_sentence(verdict, language),
        label=language.quote(label.text),
    )


def _too_broad(key: Key, label: Label, verdict: Verdict, language: Language) -> str:
    covered = len([taxon for taxon in label.covers if taxon in key.taxon])
    quoted = language.quote(label.text)
    if not covered and not label.covers_outside:
        return language.say(
            "The label is too broad: {label} names no particular taxon; {identity}.",
            label=quoted,
            identity=identity_sentence(verdict, language),
        )
    if verdict.level not in _SETTLED:
        return language.say(
            "The label is too broad: {label} covers {n} taxa of this key, the findings leave only "
            "such taxa, and the name goes as far as {name}.",
            label=quoted,
            n=covered,
            name=written_name(verdict, language),
        )
    return language.count(
        covered,
        "The label is too broad: {label} covers one taxon of this key and others outside it; "
        "{identity}.",
        "The label is too broad: {label} covers {n} taxa of this key; {identity}.",
        label=quoted,
        identity=identity_sentence(verdict, language),
    )


def _contradicted(key: Key, label: Label, verdict: Verdict, language: Language) -> str:
    quoted, identity = language.quote(label.text), identity_sentence(verdict, language)
    if not any(taxon in key.taxon for taxon in label.covers):
        return language.say(
            "The label is contradicted: {label} covers no taxon of this key; {identity}.",
            label=quoted,
            identity=identity,
        )
    if verdict.level in _SETTLED:
        return language.say(
            "The label is contradicted: {identity}, which {label} does not cover.",
            identity=identity,
            label=quoted,
        )
    if not verdict.name.certain:
        return language.say(
            "The label is contradicted: the findings speak firmly against every taxon that "
            "{label} covers; what it is instead is open.",
            label=quoted,
        )
    return language.say(
        "The label is contradicted: the findings speak firmly against every taxon that {label} "
        "covers; what it is instead is open, and the name goes as far as {name}.",
        label=quoted,
        name=written_name(verdict, language),
    )


def _open(key: Key, label: Label, verdict: Verdict, language: Language) -> str:
    identity = identity_sentence(verdict, language)
    if verdict.level not in _SETTLED:
        return language.say("Open: {identity}.", identity=identity)
    shared = tuple(taxon for taxon in verdict.taxa if taxon in label.covers)
    if not shared:
        return language.say(
            "Open: {identity}, and it is not firm yet that {label} does not fit.",
            identity=identity,
            label=language.quote(label.text),
        )
    return language.say(
        "Open: {identity}, of which {label} covers only {shared}.",
        identity=identity,
        label=language.quote(label.text),
        shared=listing(key, shared, language),
    )


def caution_sentence(key: Key, caution: Caution, language: Language = ENGLISH) -> str:
    """A danger or a permit that is still possible, with the taxa that keep it up."""
    if caution.certain and len(caution.taxa) == len(key.taxa):
        return _all_of_them(key, caution, language)
    taxa = listing(key, caution.taxa, language)
    means = _shared_means(key, caution, language) if caution.stake is Stake.HAZARD else ""
    sentence = _danger(caution) if caution.stake is Stake.HAZARD else _listing(caution)
    return language.say(sentence, taxa=taxa, means=f"; {means}" if means else "")


def _danger(caution: Caution) -> str:
    if caution.certain:
        return phrase("Only medically significant species of this key are left ({taxa}{means}): do "
                      "not handle the animal.")  # fmt: skip
    if caution.likely:
        return phrase("Most likely this is a medically significant species ({taxa}{means}): do not "
                      "handle the animal.")  # fmt: skip
    return phrase("A medically significant species of this key is still possible "
                  "({taxa}{means}): do not handle the animal.")  # fmt: skip


def _listing(caution: Caution) -> str:
    if caution.certain:
        return phrase("Only permit-listed species of this key are left ({taxa}): check locally "
                      "which papers are needed.")  # fmt: skip
    if caution.likely:
        return phrase("Most likely this is a permit-listed species ({taxa}): treat the animal as "
                      "listed, and check locally.")  # fmt: skip
    return phrase("A permit-listed species of this key is still possible ({taxa}): treat the "
                  "animal as listed, and check locally.")  # fmt: skip


def _all_of_them(key: Key, caution: Caution, language: Language) -> str:
    """A caution that holds whatever is found."""
    if caution.stake is Stake.PERMIT:
        return language.say(
            "Every species of this key is permit-listed: check locally which papers are needed."
        )
    means = _shared_means(key, caution, language)
    return language.say(
        "Every species of this key is medically significant{means}: do not handle the animal.",
        means=f" ({means})" if means else "",
    )


def _shared_means(key: Key, caution: Caution, language: Language) -> str:
    means = {
        means_words(key.taxon[taxon].hazard, language)
        for taxon in caution.taxa
        if taxon in key.taxon
    }
    return means.pop() if len(means) == 1 else ""


def unmet_words(key: Key, unmet: Unmet, language: Language = ENGLISH) -> str:
    """A condition of "established" that is not met, as a plain sentence or two."""
    rivals = listing(key, unmet.rivals, language)
    if unmet.need is Need.ANSWERS:
        text = language.say(
            "A name needs {want} answers; there are {have}.",
            want=int(unmet.want),
            have=int(unmet.have),
        )
    elif unmet.need is Need.SUPPORT:
        text = language.say(
            "A name needs {want} support; there is {have}. Closest: {rivals}.",
            want=language.share(unmet.want),
            have=language.share(unmet.have),
            rivals=rivals or "–",
        )
    elif unmet.need is Need.SEPARATORS:
        text = language.say(
            "A name needs {want} independent findings against every rival; too few stand against "
            "{rivals}.",
            want=int(unmet.want),
            rivals=rivals or "–",
        )
    elif unmet.need is Need.FIT:
        text = _fit(unmet, language)
    else:
        text = language.say("It holds only while the starting rates of the label count.")
    if not unmet.characters:
        return text
    helpful = "; ".join(character_name(key, character) for character in unmet.characters)
    return f"{text} {language.say('This would help: {characters}.', characters=helpful)}"


def _fit(unmet: Unmet, language: Language) -> str:
    if unmet.have == 0:
        return language.say("No finding puts the leading taxon to the test yet.")
    return language.say(
        "The findings fit the leading taxon poorly (p = {have}; wanted at least {want}).",
        have=language.number(float(f"{unmet.have:.2g}")),
        want=language.number(unmet.want),
    )


def prior_words(key: Key, assessment: Assessment, language: Language = ENGLISH) -> str:
    """Which starting rates count, and what the verdict would be without; says when none do."""
    if not assessment.prior:
        return language.say("Starting rates of the label are not counted as evidence.")
    ranked = sorted(assessment.prior, key=lambda entry: -entry[1])
    if ranked[0][1] - ranked[-1][1] < EVEN:
        return language.say(
            "Nobody has counted yet what this label turns out to be; every taxon starts even."
        )
    ranked = ranked[:3]
    rates = [
        f"{listing(key, (taxon,), language)} {language.share(share)}" for taxon, share in ranked
    ]
    text = language.say(
        "What this label usually turns out to be counts as evidence: {rates} …",
        rates=", ".join(rates),
    )
    blind = assessment.verdict.blind
    if blind is None:
        return f"{text} {language.say('Without it the verdict is the same.')}"
    other = verdict_title(blind, language)
    return f"{text} {language.say('Without it the verdict is: {verdict}.', verdict=other)}"
