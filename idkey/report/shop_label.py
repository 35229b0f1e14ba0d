"""What a corrected shop label says."""

from dataclasses import dataclass

from idkey.engine.result import Level, Stake
from idkey.model.taxon import Danger
from idkey.report.language import Language, in_language
from idkey.report.notes import Notice
from idkey.report.reasons import Rationale
from idkey.report.terms import danger_words, sex_words, stage_words


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelMark:
    """A warning on a label: its shape is that of `stake`, its words stand beside it."""

    stake: Stake
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ShopLabel:
    """A corrected shop label.

    Attributes:
        name: The name to write, in open nomenclature.
        italic: Scientific names in it.
        below: Everyday name, or how far the name goes.
        facts: Sex and stage, in words.
        marks: Warnings.
        price: As the till prints it; empty for none.
        case_id: The case, for the square code and the small print.
        key: Title and version of the key, for the small print.
        language: ISO 639-1 code.
    """

    name: str
    italic: tuple[str, ...] = ()
    below: str = ""
    facts: str = ""
    marks: tuple[LabelMark, ...] = ()
    price: str = ""
    case_id: str = ""
    key: str = ""
    language: str = "en"


def shop_label(found: Rationale, *, price: str = "") -> ShopLabel:
    """The corrected label for an animal, with no more certainty than its rationale has.

    Args:
        found: The rationale.
        price: Price to print.
    """
    language = in_language(found.language)
    animal = found.case.specimen
    facts = (
        sex_words(animal.sex, language) if animal.sex else "",
        stage_words(animal.stage, language) if animal.stage else "",
    )
    return ShopLabel(
        name=found.heading,
        italic=found.italic,
        below=found.vernacular or _reach(found, language),
        facts=", ".join(fact for fact in facts if fact),
        marks=tuple(mark for mark in (_hazard(found, language), _permit(found, language)) if mark),
        price=price,
        case_id=found.case.id,
        key=f"{found.key.title} {found.key.version}",
        language=found.language,
    )


def _reach(found: Rationale, language: Language) -> str:
    if found.level is Level.ESTABLISHED:
        return ""
    if found.level is Level.GROUP:
        return language.say("cannot be told further apart")
    return language.say("not identified to species") if found.name.certain else ""


def _hazard(found: Rationale, language: Language) -> LabelMark | None:
    warned = next((n for n in found.notices if n.stake is Stake.HAZARD), None)
    if warned is not None:
        return LabelMark(stake=Stake.HAZARD, words=_warning(warned, language))
    painful = danger_words(Danger.PAINFUL, language)
    if painful in found.hazard:
        return LabelMark(
            stake=Stake.HAZARD, words=language.say("Danger: {level}", level=found.hazard)
        )
    return None


def _warning(warned: Notice, language: Language) -> str:
    if warned.certain:
        return language.say("DANGEROUS. Do not handle.")
    if warned.likely:
        return language.say("MOST LIKELY DANGEROUS. Do not handle.")
    return language.say("MAY BE DANGEROUS. Do not handle.")


def _permit(found: Rationale, language: Language) -> LabelMark | None:
    warned = next((n for n in found.notices if n.stake is Stake.PERMIT), None)
    if found.permit:
        text = found.permit.split(" (")[0].split(f", {language.say('from memory')}")[0]
        words = language.say("{lists}. Papers: check locally.", lists=text)
    elif warned is not None:
        words = language.say("MAY BE PERMIT-LISTED. Papers: check locally.")
    else:
        return None
    return LabelMark(stake=Stake.PERMIT, words=words)
