"""What is weak about a key, in sentences for its author: what it is, and what mends it."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from idkey.engine.audit import Remark, Weakness
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name, listing, name_of, state_labels

MOST = 6
"""Names listed before the rest are counted."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RemarkWords:
    """One weakness in words.

    Attributes:
        what: What is weak, as a sentence.
        mend: What to do about it, as a sentence.
    """

    what: str
    mend: str


_TITLES: Mapping[Weakness, str] = {
    Weakness.INSEPARABLE: phrase("Pairs nothing tells apart"),
    Weakness.FRAGILE: phrase("Pairs hardly told apart"),
    Weakness.IDLE_CHARACTER: phrase("Characters that never decide"),
    Weakness.IDLE_STATE: phrase("States no taxon shows"),
    Weakness.UNSOURCED: phrase("Scores without a source"),
    Weakness.UNUSED_SOURCE: phrase("Sources nothing cites"),
    Weakness.COUPLET_AGAINST_MATRIX: phrase("Couplets against the scores"),
    Weakness.UNREACHED_COUPLET: phrase("Couplets nothing leads to"),
    Weakness.UNREACHED_TAXON: phrase("Taxa no couplet leads to"),
    Weakness.LABEL_WITHOUT_CHARACTERS: phrase("Labels without deciding characters"),
    Weakness.FAILED_CHECK: phrase("Published checks that fail"),
}

_MENDS: Mapping[Weakness, str] = {
    Weakness.INSEPARABLE: phrase(
        "Add a character that sets them apart, score what is missing, or treat them as one group."
    ),
    Weakness.FRAGILE: phrase(
        "Score a character that is seen without handling and holds for both sexes."
    ),
    Weakness.IDLE_CHARACTER: phrase("Score it for more taxa, or take it out: it only costs time."),
    Weakness.IDLE_STATE: phrase("Score the taxa that show it, or take the state out."),
    Weakness.UNSOURCED: phrase("Name the work it comes from, or say that it is from memory."),
    Weakness.UNUSED_SOURCE: phrase("Cite it where its values stand, or take it out."),
    Weakness.COUPLET_AGAINST_MATRIX: phrase(
        "Look up which of the two is right, and change the lead or the scores."
    ),
    Weakness.UNREACHED_COUPLET: phrase("Let a lead go there, or take the couplet out."),
    Weakness.UNREACHED_TAXON: phrase("Let a lead end in it."),
    Weakness.LABEL_WITHOUT_CHARACTERS: phrase("Name the characters that decide it."),
    Weakness.FAILED_CHECK: phrase(
        "Look up what the source says, and change the scores or the check."
    ),
}


def weakness_title(weakness: Weakness, language: Language = ENGLISH) -> str:
    """What such weaknesses are called together."""
    return language.say(_TITLES[weakness])


def remark_words(key: Key, remark: Remark, language: Language = ENGLISH) -> RemarkWords:
    """A weakness of `key` in words; what the key lacks meanwhile is named by its id."""
    what = _WHAT[remark.weakness](key, remark, language)
    return RemarkWords(what=what, mend=language.say(_MENDS[remark.weakness]))


def _taxa(key: Key, taxa: tuple[str, ...], language: Language) -> str:
    return listing(key, taxa, language, most=MOST)


def _characters(key: Key, characters: tuple[str, ...], language: Language) -> str:
    return language.join([character_name(key, one) for one in characters])


def _inseparable(key: Key, remark: Remark, language: Language) -> str:
    taxa = _taxa(key, remark.about, language)
    return language.say("{taxa}: no character sets them apart.", taxa=taxa)


def _fragile(key: Key, remark: Remark, language: Language) -> str:
    return language.say(
        "{taxa} are set apart by weak evidence only: {characters}.",
        taxa=_taxa(key, remark.about, language),
        characters=_characters(key, remark.detail, language),
    )


def _idle_character(key: Key, remark: Remark, language: Language) -> str:
    name = character_name(key, remark.about[0])
    return language.say("{character} sets no two taxa apart.", character=name)


def _idle_state(key: Key, remark: Remark, language: Language) -> str:
    character, state = remark.about
    return language.say(
        "{character}: no taxon shows {state}.",
        character=character_name(key, character),
        state=language.quote(state_labels(key, character, (state,))[0]),
    )


def _unsourced(key: Key, remark: Remark, language: Language) -> str:
    taxon, character = remark.about
    return language.say(
        "{taxon}, {character}: no source.",
        taxon=name_of(key, taxon),
        character=character_name(key, character),
    )


def _unused_source(_: Key, remark: Remark, language: Language) -> str:
    return language.say("Nothing cites the source {source}.", source=remark.about[0])


def _couplet(key: Key, remark: Remark, language: Language) -> str:
    couplet, lead = remark.about
    return language.say(
        "Couplet {couplet}, lead {lead}, leads to {taxa}, whose scores say otherwise.",
        couplet=couplet,
        lead=lead,
        taxa=_taxa(key, remark.detail, language),
    )


def _unreached_couplet(_: Key, remark: Remark, language: Language) -> str:
    return language.say("Nothing leads to couplet {couplet}.", couplet=remark.about[0])


def _unreached_taxon(key: Key, remark: Remark, language: Language) -> str:
    return language.say("No couplet leads to {taxon}.", taxon=name_of(key, remark.about[0]))


def _label(key: Key, remark: Remark, language: Language) -> str:
    own = remark.about[0]
    text = key.label[own].text if own in key.label else own
    return language.say(
        "{label} is sold for other taxa too, but names no character that decides.",
        label=language.quote(text),
    )


def _check(key: Key, remark: Remark, language: Language) -> str:
    own = remark.about[0]
    text = next((check.statement for check in key.checks if check.id == own), "") or own
    return language.say(
        "Check {check} fails for {taxa}: {statement}",
        check=own,
        taxa=_taxa(key, remark.detail, language),
        statement=text,
    )


_WHAT: Mapping[Weakness, Callable[[Key, Remark, Language], str]] = {
    Weakness.INSEPARABLE: _inseparable,
    Weakness.FRAGILE: _fragile,
    Weakness.IDLE_CHARACTER: _idle_character,
    Weakness.IDLE_STATE: _idle_state,
    Weakness.UNSOURCED: _unsourced,
    Weakness.UNUSED_SOURCE: _unused_source,
    Weakness.COUPLET_AGAINST_MATRIX: _couplet,
    Weakness.UNREACHED_COUPLET: _unreached_couplet,
    Weakness.UNREACHED_TAXON: _unreached_taxon,
    Weakness.LABEL_WITHOUT_CHARACTERS: _label,
    Weakness.FAILED_CHECK: _check,
}
