"""What is said about a shop label: what it covers, what hides under it, what an error costs."""

from collections.abc import Callable

from idkey.engine.labels import GENUS, label_entry
from idkey.engine.result import Level, Stake, Verdict
from idkey.model.case import Claim
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.taxon import Taxon
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name, listing
from idkey.report.terms import climate_words, danger_words

_EVIDENCE = {
    "trade": phrase("Published for the trade or for keepers."),
    "taxonomy": phrase("Published in taxonomic works or maps."),
    "common_practice": phrase("From hobby practice; no source for the mix-up itself."),
}
_ALL = 12
"""More names than this are cut short even where all matter."""


def covers_words(key: Key, label: Label, language: Language = ENGLISH) -> str:
    """What a label properly covers, in one sentence or two."""
    text = _covers(key, label, language).replace("..", ".")  # after "spp."
    moved = any(key.taxon[t].genus != label.text for t in label.covers if t in key.taxon)
    if label.id.startswith(GENUS) and moved:
        return f"{text} {language.say('Taxa that have left the genus count under the old name.')}"
    return text


def _covers(key: Key, label: Label, language: Language) -> str:
    inside = listing(key, label.covers, language, most=_ALL)
    outside = "; ".join(label.covers_outside)
    quoted = language.quote(label.text)
    if inside and outside:
        return language.say(
            "{label} properly covers {taxa}, and outside this key: {outside}.",
            label=quoted,
            taxa=inside,
            outside=outside,
        )
    if inside:
        return language.say("{label} properly covers {taxa}.", label=quoted, taxa=inside)
    if outside:
        return language.say(
            "{label} properly covers nothing in this key, but outside it: {outside}.",
            label=quoted,
            outside=outside,
        )
    return language.say("{label} properly covers no known taxon.", label=quoted)


def mixup_warning(key: Key, label: Label, language: Language = ENGLISH) -> str:
    """What else is sold under a label, why, what decides it, and what an error costs.

    Under a bare name nothing may be on record; then what the taxon's trade label hides is told.
    """
    if label.evidence == "name" and (known := _trade_label(key, label)) is not None:
        return _under(key, known, language)
    parts = [_sold_as(key, label, language)]
    if label.why:
        parts.append(label.why)
    parts += _decides(key, label, language)
    if label.law:
        parts.append(language.say("Papers: {text}", text=label.law))
    if label.evidence in _EVIDENCE and (label.sold_as or label.sold_outside):
        parts.append(language.say(_EVIDENCE[label.evidence]))
    return " ".join(_ended(part) for part in parts)


def _trade_label(key: Key, name: Label) -> Label | None:
    """The first label of the key that covers the one taxon of a bare name and hides others."""
    if len(name.covers) != 1:
        return None
    hiding = (one for one in key.labels if name.covers[0] in one.covers and one.sold_as)
    return next(hiding, None)


def _under(key: Key, known: Label, language: Language) -> str:
    """What hides under the trade label of a taxon that came under its bare name."""
    sentence = language.say(
        "Nothing is recorded under this name itself. Under {label}, which covers it too, these are "
        "sold as well: {taxa}.",
        label=language.quote(known.text),
        taxa=listing(key, known.sold_as, language, most=_ALL),
    )
    return " ".join(_ended(part) for part in (sentence, *_decides(key, known, language)))


def _decides(key: Key, label: Label, language: Language) -> list[str]:
    """What to look at, and what a wrong label can do to somebody."""
    parts = []
    if label.deciding:
        names = [character_name(key, character) for character in label.deciding]
        parts.append(language.say("Look at: {characters}.", characters="; ".join(names)))
        parts += _thumbs(key, label, language)
    if label.safety:
        parts.append(language.say("Danger: {text}", text=label.safety))
    return parts


def _thumbs(key: Key, label: Label, language: Language) -> list[str]:
    """A warning where shops lean on a deciding character more than it can bear."""
    known = (key.character[c] for c in label.deciding if c in key.character)
    thumbs = [character.name for character in known if character.rule_of_thumb]
    if not thumbs:
        return []
    return [
        language.count(
            len(thumbs),
            "A rule of thumb, no proof by itself: {characters}.",
            "Rules of thumb, no proof by themselves: {characters}.",
            characters="; ".join(thumbs),
        )
    ]


def _sold_as(key: Key, label: Label, language: Language) -> str:
    inside = listing(key, label.sold_as, language, most=_ALL)
    outside = "; ".join(label.sold_outside)
    quoted = language.quote(label.text)
    if inside and outside:
        return language.say(
            "Also sold as {label}: {taxa}; not in this key: {outside}.",
            label=quoted,
            taxa=inside,
            outside=outside,
        )
    if inside or outside:
        sentence = (
            phrase("Also sold as {label}: {taxa}.")
            if inside
            else phrase("Also sold as {label}, but not in this key: {taxa}.")
        )
        return language.say(sentence, label=quoted, taxa=inside or outside)
    return language.say(
        "This key records nothing else that is sold as {label}; that proves nothing.", label=quoted
    )


def _ended(text: str) -> str:
    """The text with a full stop if it has no end of its own."""
    return text if text.endswith((".", "!", "?")) else f"{text}."


def stakes_words(
    key: Key, claim: Claim, verdict: Verdict, language: Language = ENGLISH
) -> tuple[str, ...]:
    """What a wrong label costs here, one sentence per stake of the verdict."""
    label = label_entry(key, claim.label)
    covered = label.covers if label else ()
    promised = [key.taxon[taxon] for taxon in covered if taxon in key.taxon]
    known = verdict.level in (Level.ESTABLISHED, Level.GROUP)
    found = [key.taxon[taxon] for taxon in verdict.taxa if known and taxon in key.taxon]
    said = {
        Stake.HAZARD: _danger_stake,
        Stake.PERMIT: _permit_stake,
        Stake.CLIMATE: _climate_stake,
    }
    return tuple(said[stake](promised, found, language) for stake in verdict.stakes)


def _kinds(taxa: list[Taxon], word: Callable[[Taxon], str], language: Language) -> str:
    return language.join(list(dict.fromkeys(word(taxon) for taxon in taxa)), "or")


def _danger_stake(promised: list[Taxon], found: list[Taxon], language: Language) -> str:
    def word(taxon: Taxon) -> str:
        return danger_words(taxon.hazard.level, language)

    claim = _kinds(promised, word, language)
    if not found:
        return language.say(
            "Danger by the label: {claim}; something worse is still possible.",
            claim=claim,
        )
    evidence = _kinds(found, word, language)
    return language.say(
        "Danger by the label: {claim}; by the findings: {evidence}.",
        claim=claim,
        evidence=evidence,
    )


def _permit_stake(_: list[Taxon], found: list[Taxon], language: Language) -> str:
    if not found:
        return language.say(
            "Papers: permit-listed and unlisted taxa are both still possible; check locally."
        )
    if any(taxon.listed for taxon in found):
        return language.say(
            "Papers: the label does not show that this may be a permit-listed taxon; check locally."
        )
    return language.say(
        "Papers: what the label covers is permit-listed, what the findings leave is not; check "
        "locally."
    )


def _climate_stake(promised: list[Taxon], found: list[Taxon], language: Language) -> str:
    def word(taxon: Taxon) -> str:
        return climate_words(taxon.climate, language)

    claim = _kinds(promised, word, language)
    if not found:
        return language.say(
            "Climate by the label: {claim}; something that needs another is still possible.",
            claim=claim,
        )
    evidence = _kinds(found, word, language)
    return language.say(
        "Climate by the label: {claim}; by the findings: {evidence}.",
        claim=claim,
        evidence=evidence,
    )
