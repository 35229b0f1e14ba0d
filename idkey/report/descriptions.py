"""Description and diagnosis of a taxon in words, out of its scores."""

from dataclasses import dataclass
from textwrap import wrap

from idkey.engine.diagnosis import Diagnosis, diagnosis
from idkey.engine.matrix import Matrix
from idkey.model.key import Key
from idkey.report.finding_words import held_words
from idkey.report.language import ENGLISH, Language, phrase
from idkey.report.names import character_name, listing, name_of
from idkey.report.terms import hazard_words, permit_words


@dataclass(frozen=True, slots=True, kw_only=True)
class Statement:
    """What a taxon shows for one character.

    Attributes:
        character: Character id.
        text: In words, with the character's name.
        sources: Source ids.
        note: Remarks on the scores, such as a conflict between sources.
    """

    character: str
    text: str
    sources: tuple[str, ...] = ()
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class PartDescription:
    """The statements on one part of the body; `part` is empty for the whole animal."""

    part: str
    statements: tuple[Statement, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Description:
    """A taxon in words.

    Attributes:
        taxon: Taxon id.
        name: Accepted name with authority.
        head: Family, range, size, danger and papers, one sentence each.
        parts: Statements by part of the body, in the order of the key.
        unscored: Names of characters nothing is known of.
    """

    taxon: str
    name: str
    head: tuple[str, ...]
    parts: tuple[PartDescription, ...]
    unscored: tuple[str, ...]


def description(key: Key, taxon: str, language: Language = ENGLISH) -> Description:
    """The taxon in words, out of its scores.

    Raises:
        KeyError: The key has no such taxon.
    """
    known = key.taxon[taxon]
    parts: dict[str, list[Statement]] = {}
    unscored = []
    for character in key.characters:
        if (taxon, character.id) in key.cells:
            statement = _statement(key, taxon, character.id, language)
            parts.setdefault(character.part, []).append(statement)
        else:
            unscored.append(character.name)
    return Description(
        taxon=taxon,
        name=f"{known.name} {known.authority}".strip(),
        head=_head(key, taxon, language),
        parts=tuple(
            PartDescription(part=part, statements=tuple(found)) for part, found in parts.items()
        ),
        unscored=tuple(unscored),
    )


def _statement(key: Key, taxon: str, character: str, language: Language) -> Statement:
    scores = key.cells.get((taxon, character), ())  # none where another score rules it out
    values = "; ".join(held_words(key, score, language) for score in scores)
    values = values or language.say("the part is lacking")
    return Statement(
        character=character,
        text=f"{character_name(key, character)}: {values}",
        sources=tuple(dict.fromkeys(source for score in scores for source in score.sources)),
        note=" ".join(dict.fromkeys(score.note for score in scores if score.note)),
    )


def _head(key: Key, taxon: str, language: Language) -> tuple[str, ...]:
    known = key.taxon[taxon]
    facts = (
        (known.family, phrase("{value}.")),
        (known.range, phrase("Range: {value}.")),
        (known.size, phrase("Size: {value}.")),
        (hazard_words(known.hazard, language), phrase("Danger: {value}.")),
        (permit_words(known.permit, language), phrase("Papers: {value}; check locally.")),
    )
    return tuple(language.say(form, value=value.rstrip(".")) for value, form in facts if value)


def description_text(key: Key, taxon: str, language: Language = ENGLISH, *, width: int = 78) -> str:
    """The description as plain text, sources in brackets, of at most `width` signs a line."""
    found = description(key, taxon, language)
    blocks = [found.name, " ".join(found.head)]
    for part in found.parts:
        said = "; ".join(_cited(statement) for statement in part.statements)
        blocks.append(f"{part_title(part, language)}. {said}.")
    if found.unscored:
        names = "; ".join(found.unscored)
        blocks.append(language.say("Nothing scored: {names}.", names=names))
    return "\n".join(line for block in blocks for line in wrap(block, width)) + "\n"


def part_title(part: PartDescription, language: Language) -> str:
    """What a part of the body is called at the beginning of its statements."""
    title = part.part.replace("_", " ") or language.say("whole animal")
    return f"{title[:1].upper()}{title[1:]}"


def _cited(statement: Statement) -> str:
    cited = f" [{', '.join(statement.sources)}]" if statement.sources else ""
    return f"{statement.text}{cited}"


def diagnosis_sentence(
    matrix: Matrix, taxon: str, language: Language = ENGLISH, *, margin: int = 1
) -> str:
    """What tells a taxon from every other one of the key, with the fewest characters.

    Args:
        matrix: The compiled key.
        taxon: Taxon id.
        language: Language to speak.
        margin: Characters wanted against each rival.
    """
    found = diagnosis(matrix, taxon, margin)
    key = matrix.key
    shown = [_statement(key, taxon, character, language).text for character in found.characters]
    name = name_of(key, taxon)
    if not shown:
        text = language.say("{name}: no character of this key tells it surely apart.", name=name)
    else:
        text = language.say(
            "{name}: told apart within this key by {characters}.",
            name=name,
            characters="; ".join(shown),
        )
    return f"{text} {_thin(key, found, language)}".strip()


def _thin(key: Key, found: Diagnosis, language: Language) -> str:
    """Rivals that fewer characters than wanted separate."""
    never = [taxon for taxon, count in found.thin if count == 0]
    few = [taxon for taxon, count in found.thin if count]
    parts = []
    if never and found.characters:
        names = listing(key, never, language, most=len(never))
        parts.append(language.say("Not surely told from {names}.", names=names))
    if few:
        names = listing(key, few, language, most=len(few))
        parts.append(
            language.say("Fewer than {n} characters tell {names}.", n=found.margin, names=names)
        )
    return " ".join(parts)
