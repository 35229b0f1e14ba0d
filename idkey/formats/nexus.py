"""Writes a key's matrix as NEXUS, in the form that common readers of it share.

Format: Maddison, Swofford & Maddison 1997, Syst. Biol. 46: 590-621. The format has no ranges,
units, frequencies, certainty, sources or dependence; what is lost is reported.
"""

import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.nexus_bins import Bins, bins
from idkey.formats.plain import canonical
from idkey.formats.replacing import replacing
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows, Spans

SYMBOLS = "0123456789ABCDEFGHJKLMNPQRSTUVWXYZ"
"""Signs for states; I and O are left out since they look like 1 and 0."""

_ODD = re.compile(r"[^\w .,;:()/+<>=%°-]")


@dataclass(frozen=True, slots=True)
class _Column:
    """A character as the file has it: its states, or classes of its numbers."""

    character: Character
    labels: tuple[str, ...]
    bins: Bins | None = None

    def symbols(self, score: Score) -> set[str]:
        """The signs a score stands for; "-" for inapplicable."""
        value = score.value
        if isinstance(value, Inapplicable):
            return {"-"}
        if isinstance(value, Shows):
            ids = self.character.state_ids
            return {SYMBOLS[ids.index(state)] for state in value.states}
        return {SYMBOLS[number] for number in self.bins.classes(value)} if self.bins else set()


def write_nexus(key: Key, file: Path) -> tuple[str, ...]:
    """Write the matrix to `file`; returns what the format could not hold, as sentences.

    Raises:
        IdKeyError: The key has no character that the format can hold, or the disk is full.
    """
    text, left = nexus_text(key)
    with replacing(file) as new:
        new.write_text(text, encoding="utf-8", newline="\n")
    return left


def nexus_text(key: Key) -> tuple[str, tuple[str, ...]]:
    """The matrix as text, and what the format could not hold, as sentences."""
    key = canonical(key)
    columns = tuple(filter(None, (_column(key, character) for character in key.characters)))
    if not columns:
        raise IdKeyError(
            f"The key {key.id} has no character that NEXUS can hold.",
            "Score characters with states, or numbers that differ between taxa.",
        )
    names = _names(key)
    most = max(len(column.labels) for column in columns)
    lines = [
        "#NEXUS",
        f"[{_plain(key.title)}, version {_plain(key.version)}]",
        "BEGIN TAXA;",
        f"  DIMENSIONS NTAX={len(names)};",
        f"  TAXLABELS {' '.join(map(_quoted, names))};",
        "END;",
        "BEGIN CHARACTERS;",
        f"  DIMENSIONS NCHAR={len(columns)};",
        f'  FORMAT DATATYPE=STANDARD SYMBOLS="{SYMBOLS[:most]}" MISSING=? GAP=-;',
        "  CHARSTATELABELS",
        *_state_labels(columns),
        "  ;",
        "  MATRIX",
        *_rows(key, names, columns),
        "  ;",
        "END;",
    ]
    return "\n".join(lines) + "\n", tuple(_left_out(key, columns))


def _column(key: Key, character: Character) -> _Column | None:
    if not character.kind.numeric:
        if len(character.states) > len(SYMBOLS):
            return None
        return _Column(character, tuple(state.label for state in character.states))
    own = [s.value for s in key.scores if s.character == character.id]
    found = bins((value for value in own if isinstance(value, Spans)), character.unit)
    return None if found is None else _Column(character, found.labels(), found)


def _names(key: Key) -> tuple[str, ...]:
    """Names of the taxa, no two alike; the id where a name is not unique or nothing is left."""
    names = [_plain(taxon.name) for taxon in key.taxa]
    times = Counter(name.casefold() for name in names)
    used: set[str] = set()
    found = []
    for name, taxon in zip(names, key.taxa, strict=True):
        stem = name if name and times[name.casefold()] == 1 else _plain(taxon.id)
        own, number = stem, 2
        while own.casefold() in used:
            own, number = f"{stem} {number}", number + 1
        used.add(own.casefold())
        found.append(own)
    return tuple(found)


def _plain(text: str) -> str:
    """The text without signs that readers of NEXUS stumble over."""
    text = text.replace("'", "’").replace("[", "(").replace("]", ")").replace("_", " ")
    return " ".join(_ODD.sub(" ", text.replace("’", " ")).split())


def _quoted(text: str) -> str:
    return f"'{_plain(text) or 'unnamed'}'"


def _state_labels(columns: Iterable[_Column]) -> Iterable[str]:
    listed = list(columns)
    for number, column in enumerate(listed, start=1):
        states = " ".join(map(_quoted, column.labels))
        end = "" if number == len(listed) else " ,"
        yield f"    {number} {_quoted(column.character.name)} / {states}{end}"


def _rows(key: Key, names: tuple[str, ...], columns: tuple[_Column, ...]) -> Iterable[str]:
    width = max(len(_quoted(name)) for name in names)
    for taxon, name in zip(key.taxa, names, strict=True):
        cells = "".join(_cell(key, taxon.id, column) for column in columns)
        yield f"    {_quoted(name):<{width}}  {cells}"


def _cell(key: Key, taxon: str, column: _Column) -> str:
    scores = key.cells.get((taxon, column.character.id), ())
    symbols = set().union(*(column.symbols(score) for score in scores))
    if symbols == {"-"}:
        return "-"
    states = sorted(symbols - {"-"}, key=SYMBOLS.index)
    if not states:
        return "?"
    return states[0] if len(states) == 1 else f"({''.join(states)})"


def _left_out(key: Key, columns: tuple[_Column, ...]) -> Iterable[str]:
    written = {column.character.id for column in columns}
    for character in key.characters:
        if character.id not in written:
            why = (
                "its numbers do not tell the taxa apart"
                if character.kind.numeric
                else f"it has more than {len(SYMBOLS)} states"
            )
            yield f"The character '{character.name}' was left out, because {why}."
    numeric = [column.character.name for column in columns if column.bins]
    if numeric:
        yield f"Numbers were written as classes: {', '.join(numeric)}."
    shares = (s.value for s in key.scores if isinstance(s.value, Shows))
    if any(share is not None for shows in shares for share in shows.states.values()):
        yield "How often a state occurs was left out; every state counts alike."
    if any(len(scores) > 1 for scores in key.cells.values()):
        yield "Scores for one sex or stage were joined with those for the other."
    lost = {
        "labels": key.labels,
        "couplets": key.couplets,
        "published checks": key.checks,
        "sources": key.sources,
        "dependence between characters": [c for c in key.characters if c.requires],
        "cautions": key.cautions,
        "glossary": key.glossary,
        "authors": key.authors,
        "licence": key.licence,
    }
    if named := [name for name, value in lost.items() if value]:
        yield f"The format has no place for {', '.join(named)}."
    yield (
        "Only names of taxa, characters and states were written, not what is said about them: "
        "no authorities, dangers or permits."
    )
    if changed := sum(_plain(name) != " ".join(name.split()) for name in _written(key, columns)):
        yield f"Signs that other readers stumble over were left out of names ({changed})."


def _written(key: Key, columns: tuple[_Column, ...]) -> Iterable[str]:
    """Every name as the key has it."""
    yield from (taxon.name for taxon in key.taxa)
    for column in columns:
        yield column.character.name
        yield from (state.label for state in column.character.states)
