"""Fixed words for the values of the lower layers, in any language."""

from idkey.engine.result import Blocked, Level, VerdictKind
from idkey.model.case import Certainty
from idkey.model.character import Look, Sex, Stage
from idkey.model.source import Basis
from idkey.model.taxon import Climate, Danger, Hazard, Permit
from idkey.report.language import ENGLISH, Language, phrase

_KINDS = {
    VerdictKind.HOLDS: phrase("Label holds"),
    VerdictKind.TOO_BROAD: phrase("Label too broad"),
    VerdictKind.CONTRADICTED: phrase("Label contradicted"),
    VerdictKind.OPEN: phrase("Open"),
    VerdictKind.OUTSIDE: phrase("Outside the key"),
    VerdictKind.LABEL_UNKNOWN: phrase("Label not known"),
}
_LEVELS = {
    Level.ESTABLISHED: phrase("established"),
    Level.GROUP: phrase("narrowed to a small group"),
    Level.OPEN: phrase("not decided"),
    Level.OUTSIDE: phrase("not explained by this key"),
}
_CERTAINTIES = {
    Certainty.SURE: phrase("sure"),
    Certainty.LIKELY: phrase("likely"),
    Certainty.GUESS: phrase("a guess"),
}
_LOOKS = {
    Look.TUB: phrase("through the tub"),
    Look.ABOVE: phrase("photo from above"),
    Look.BELOW: phrase("photo from below"),
    Look.UV: phrase("under a UV torch"),
    Look.LENS: phrase("with a hand lens"),
    Look.MOULT: phrase("on a moult"),
    Look.DEAD: phrase("on a dead animal"),
}
_TROUBLES = {
    Look.TUB: phrase("a glance through the tub"),
    Look.ABOVE: phrase("one photo from above"),
    Look.BELOW: phrase("one photo from below, through the floor of the tub"),
    Look.UV: phrase("a dark room and a UV torch"),
    Look.LENS: phrase("a hand lens, close to the animal"),
    Look.MOULT: phrase("a moult to look at"),
    Look.DEAD: phrase("a dead animal"),
}
_SEXES = {Sex.FEMALE: phrase("female"), Sex.MALE: phrase("male")}
_STAGES = {Stage.JUVENILE: phrase("juvenile"), Stage.ADULT: phrase("adult")}
_BASES = {
    Basis.SOURCE: phrase("printed"),
    Basis.INFERRED: phrase("follows from print"),
    Basis.PARTLY_MEMORY: phrase("partly from memory"),
    Basis.MEMORY: phrase("from memory"),
    Basis.COMMON_PRACTICE: phrase("hobby practice, no source"),
}
_DANGERS = {
    Danger.HARMLESS: phrase("harmless"),
    Danger.MILD: phrase("mild"),
    Danger.PAINFUL: phrase("painful"),
    Danger.SIGNIFICANT: phrase("medically significant"),
}
_CLIMATES = {
    Climate.MOIST_FOREST: phrase("moist forest"),
    Climate.SAVANNA: phrase("savanna"),
    Climate.ARID: phrase("dry land"),
    Climate.OTHER: phrase("a climate of its own"),
}
_MEANS = {"sting": phrase("sting"), "bite": phrase("bite"), "hairs": phrase("hairs")}
_BLOCKS = {
    Blocked.ANSWERED: phrase("Answered already."),
    Blocked.HANDLING: phrase(
        "Not proposed: it means handling, and a medically significant species is still possible."
    ),
    Blocked.SEX: phrase("It shows on one sex only, and this is not known to be that sex."),
    Blocked.STAGE: phrase("It does not show at this stage."),
    Blocked.REQUIRES: phrase("Another character has to be seen first."),
}


def verdict_title(kind: VerdictKind, language: Language = ENGLISH, *, labelled: bool = True) -> str:
    """The verdict in two or three words; `labelled` is whether the animal had a label at all."""
    if kind is VerdictKind.LABEL_UNKNOWN and not labelled:
        return language.say("No label")
    return language.say(_KINDS[kind])


def level_words(level: Level, language: Language = ENGLISH) -> str:
    """How far the evidence carries a name."""
    return language.say(_LEVELS[level])


def certainty_words(certainty: Certainty, language: Language = ENGLISH) -> str:
    """How sure the observer is."""
    return language.say(_CERTAINTIES[certainty])


def look_words(look: Look, language: Language = ENGLISH) -> str:
    """A way of looking."""
    return language.say(_LOOKS[look])


def trouble_words(look: Look, language: Language = ENGLISH) -> str:
    """What a way of looking costs."""
    return language.say(_TROUBLES[look])


def sex_words(sex: Sex | None, language: Language = ENGLISH) -> str:
    """A sex; None is unknown."""
    return language.say(_SEXES[sex] if sex else "unknown")


def stage_words(stage: Stage | None, language: Language = ENGLISH) -> str:
    """A stage; None is unknown."""
    return language.say(_STAGES[stage] if stage else "unknown")


def basis_words(basis: Basis, language: Language = ENGLISH) -> str:
    """How a value reached the key."""
    return language.say(_BASES[basis])


def danger_words(danger: Danger, language: Language = ENGLISH) -> str:
    """The worst usual outcome of a sting, bite or hair."""
    return language.say(_DANGERS[danger])


def climate_words(climate: Climate, language: Language = ENGLISH) -> str:
    """The climate a taxon is kept in."""
    return language.say(_CLIMATES[climate])


def blocked_words(blocked: Blocked, language: Language = ENGLISH) -> str:
    """Why a question is not proposed now."""
    return language.say(_BLOCKS[blocked])


def means_words(hazard: Hazard, language: Language = ENGLISH) -> str:
    """What does the harm, such as ``"sting"``; empty when the key does not say."""
    return language.join([language.say(_MEANS.get(m, m)) for m in hazard.means])


def hazard_words(hazard: Hazard, language: Language = ENGLISH) -> str:
    """Level and means, such as ``"medically significant (sting)"``."""
    means = means_words(hazard, language)
    level = danger_words(hazard.level, language)
    return f"{level} ({means})" if means else level


def permit_words(permit: Permit, language: Language = ENGLISH) -> str:
    """Which lists name a taxon, with their date; "not listed" as far as the key knows."""
    if not permit.listed:
        return language.say("not listed, as far as this key knows")
    lists = []
    if permit.cites:
        lists.append(language.say("CITES Appendix {number}", number=permit.cites))
    if permit.eu:
        lists.append(language.say("EU Annex {letter}", letter=permit.eu))
    text = ", ".join(lists)
    if permit.as_of:
        text = language.say("{lists} (data as of {date})", lists=text, date=permit.as_of)
    if permit.from_memory:
        text = language.say("{lists}, from memory", lists=text)
    return text
