"""Permit fields in words: what each is called, what its codes mean, what is missing."""

from collections.abc import Mapping

from idkey.engine.result import Assessment, Stake
from idkey.model.key import Key
from idkey.model.taxon import Permit
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.notes import PapersNote
from idkey.store.permits import Code, Fault, Gap, gaps, purpose_codes, source_codes, strictest
from idkey.store.record import Papers

_FIELDS = {
    "name": phrase("Name on the papers"),
    "appendix": phrase("CITES Appendix"),
    "annex": phrase("EU Annex"),
    "source": phrase("Source code"),
    "purpose": phrase("Purpose code"),
    "document": phrase("Number of the document"),
    "authority": phrase("Issued by"),
    "issued": phrase("Date of the document"),
    "origin": phrase("Country of origin, or breeder"),
    "mark": phrase("Mark of the animal (chip, ring, photo set)"),
}
_MISSING = {
    "name": phrase("The name as the papers write it is missing; it may be an older one."),
    "appendix": phrase("The CITES Appendix on the papers is missing."),
    "annex": phrase("The EU Annex on the papers is missing."),
    "source": phrase("The source code is missing."),
    "purpose": phrase("The purpose code is missing; it is needed where a border is crossed."),
    "document": phrase("The number of the permit or certificate is missing."),
    "authority": phrase("Who issued the document is missing."),
    "issued": phrase("The date of the document is missing."),
    "origin": phrase("The country of origin or the breeder is missing."),
    "mark": phrase("What ties the papers to this animal (chip, ring, photo set) is missing."),
}
_ODD = {
    Fault.UNKNOWN_CODE: phrase("“{given}” is no such code; choose one of the list."),
    Fault.PLANTS_ONLY: phrase("Code {given} is for plants only."),
    Fault.STRICTEST_ONLY: phrase(
        "Source code D is for Appendix I or Annex A; a captive-bred animal takes C or F."
    ),
    Fault.NO_DATE: phrase("“{given}” is no date; write it as 2026-03-12."),
}
_SOURCES = {
    "W": phrase("taken from the wild"),
    "R": phrase("ranched: eggs or young taken from the wild and reared"),
    "D": phrase("bred for trade: Appendix I at a registered breeder, or EU Annex A"),
    "A": phrase("artificially propagated (plants only)"),
    "C": phrase("bred in captivity"),
    "F": phrase("born in captivity without counting as bred in captivity"),
    "U": phrase("unknown; the reason has to be given"),
    "I": phrase("confiscated or seized"),
    "O": phrase("acquired before the Convention applied"),
    "X": phrase("from the sea outside every State"),
    "Y": phrase("plants from assisted production (plants only)"),
}
_PURPOSES = {
    "T": phrase("commercial"),
    "Z": phrase("zoo"),
    "G": phrase("botanical garden"),
    "Q": phrase("circus or travelling show"),
    "S": phrase("scientific"),
    "H": phrase("hunting trophy"),
    "P": phrase("personal"),
    "M": phrase("medical, with biomedical research"),
    "E": phrase("educational"),
    "N": phrase("return to or release into the wild"),
    "B": phrase("breeding in captivity or artificial propagation"),
    "L": phrase("law enforcement, courts, forensics"),
}
CODES: Mapping[str, tuple[Code, ...]] = {"source": source_codes(), "purpose": purpose_codes()}
"""Codes of the fields that take one."""

_MEANINGS = {"source": _SOURCES, "purpose": _PURPOSES}


def field_words(field: str, language: Language = ENGLISH) -> str:
    """What a permit field is called."""
    return language.say(_FIELDS[field])


def code_words(field: str, letter: str, language: Language = ENGLISH) -> str:
    """A code with its meaning, such as ``"C: bred in captivity"``; unknown ones as they are."""
    meaning = _MEANINGS.get(field, {}).get(letter.strip().upper())
    return f"{letter.strip().upper()}: {language.say(meaning)}" if meaning else letter


def gap_words(gap: Gap, language: Language = ENGLISH) -> str:
    """What is wrong with a field, as a sentence."""
    if gap.fault is Fault.MISSING:
        return language.say(_MISSING[gap.field])
    return language.say(_ODD[gap.fault], given=gap.given)


def check_locally(language: Language = ENGLISH) -> str:
    """The sentence that stands under every list of permit fields."""
    return language.say(
        "Permit law differs by country and changes: check locally, with the authority or a "
        "licensed adviser, what this animal and this sale need."
    )


def codes_dated(language: Language = ENGLISH) -> str:
    """Of when the lists of codes are."""
    dates = dict.fromkeys(code.as_of for codes in CODES.values() for code in codes)
    return language.say(
        "Codes as of {dates}; the list may have changed since: see the form of your authority.",
        dates=", ".join(dates),
    )


def permit_needed(key: Key, assessment: Assessment) -> tuple[Permit, str]:
    """What the lists may ask for, and which taxa that are still possible stand on them.

    Returns:
        The strictest listing, and the taxa in words; unlisted and empty when none is listed.
    """
    caution = next((one for one in assessment.cautions if one.stake is Stake.PERMIT), None)
    taxa = [key.taxon[name] for name in caution.taxa if name in key.taxon] if caution else []
    listed = [taxon for taxon in taxa if taxon.listed]
    words = ", ".join(taxon.name for taxon in listed)
    return strictest(taxon.permit for taxon in listed), words


def papers_note(
    key: Key, assessment: Assessment, papers: Papers | None, language: Language = ENGLISH
) -> PapersNote | None:
    """The permit fields for a rationale; None where none is noted."""
    if papers is None or papers == Papers():
        return None
    permit, _ = permit_needed(key, assessment)
    given = {name: getattr(papers, name).strip() for name in _FIELDS}
    return PapersNote(
        fields=tuple(
            (field_words(name, language), code_words(name, value, language))
            for name, value in given.items()
            if value
        ),
        missing=tuple(gap_words(gap, language) for gap in gaps(papers, permit)),
        check=check_locally(language),
    )
