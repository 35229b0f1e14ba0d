"""The characters of a key by the part of the animal they are seen on."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QCoreApplication

from idkey.app.bench.session import Session
from idkey.app.parts.words import upper_first
from idkey.engine.labels import normalised
from idkey.figures.plates import Plate, PlatePart
from idkey.model.character import Character
from idkey.report.language import Language
from idkey.report.words import seen_words

translate = QCoreApplication.translate


@dataclass(frozen=True, slots=True, kw_only=True)
class PartEntry:
    """A character that is seen on a part.

    Attributes:
        character: Character id.
        name: Its name.
        line: The question in plain words; what was seen where it is answered.
        answered: Whether there is a finding.
        words: Everything it can be found by, normalised.
    """

    character: str
    name: str
    line: str
    answered: bool
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PartGroup:
    """A part of the animal with its characters.

    Attributes:
        part: Part id; empty for characters that name none.
        title: What it is called.
        entries: Its characters in the order of the key.
    """

    part: str
    title: str
    entries: tuple[PartEntry, ...]


def part_title(plates: Sequence[Plate], part: str, language: Language) -> str:
    """What a part is called in a language; its id where no plate names it."""
    found = next((shown for plate in plates if (shown := plate.part(part))), None)
    return part if found is None else shown_name(found, language)


def shown_name(shown: Plate | PlatePart, language: Language) -> str:
    """The name of a plate or of a part in a language, else in English."""
    return shown.names.get(language.code, shown.names["en"])


def part_groups(
    session: Session, plates: Sequence[Plate], language: Language
) -> tuple[PartGroup, ...]:
    """All characters by part: the parts of the plates in order, then what is on none."""
    key = session.key
    shown = dict.fromkeys(part.id for plate in plates for part in plate.parts)
    named = dict.fromkeys(c.part for c in key.characters if c.part)
    names = {p.id: " ".join(p.names.values()) for plate in plates for p in plate.parts}
    groups = []
    for part in (*shown, *(p for p in named if p not in shown), ""):
        title = upper_first(part_title(plates, part, language))
        entries = tuple(
            _entry(session, character, names.get(part, part), language)
            for character in key.characters
            if character.part == part
        )
        if entries:
            title = title or translate("plates", "On no single part")
            groups.append(PartGroup(part=part, title=title, entries=entries))
    return tuple(groups)


def found_groups(
    groups: Sequence[PartGroup], *, part: str = "", search: str = ""
) -> tuple[PartGroup, ...]:
    """What of `groups` lies on a part (empty: on any) and answers a search (empty: all)."""
    sought = normalised(search).split()
    found = []
    for group in groups:
        fits = tuple(e for e in group.entries if all(word in e.words for word in sought))
        if fits and part in ("", group.part):
            found.append(replace(group, entries=fits))
    return tuple(found)


def named_part(plates: Sequence[Plate], search: str) -> str:
    """Id of the first part whose name in any language holds the search; empty when none does."""
    sought = normalised(search)
    for plate in plates:
        for part in plate.parts:
            if sought and any(sought in normalised(name) for name in part.names.values()):
                return part.id
    return ""


def _entry(session: Session, character: Character, part: str, language: Language) -> PartEntry:
    finding = session.case.finding(character.id)
    seen = seen_words(session.key, finding, language) if finding else ""
    texts = (part, character.name, character.question, *character.words)
    states = (state.label for state in character.states)
    return PartEntry(
        character=character.id,
        name=character.name,
        line=seen or character.question,
        answered=finding is not None,
        words=normalised(" ".join((*texts, *states))),
    )
