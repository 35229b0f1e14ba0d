"""Reads a matrix of states from NEXUS, as loosely as it is found."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.imported import (
    HAZARD_UNTOLD,
    LOOKS_UNTOLD,
    UNKNOWN_HAZARD,
    Ids,
    Imported,
    imported,
)
from idkey.formats.new_key import FIRST_VERSION
from idkey.formats.nexus_matrix import Cell, Format, rows
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows
from idkey.model.taxon import Taxon

LARGEST_NEXUS = 8 * 2**20

_TOKEN = re.compile(r"'((?:[^']|'')*)'|\"([^\"]*)\"|([^\s'\"();,/={}\[\]]+)|([;,/=(){}])")
_TITLE = re.compile(r"^#nexus\b", re.IGNORECASE)
_MEND = "Export the matrix again with states (DATATYPE=STANDARD)."


@dataclass
class _Block:
    """A CHARACTERS or DATA block as it is read."""

    format: Format = field(default_factory=Format)
    characters: int | None = None
    names: dict[int, str] = field(default_factory=dict)
    states: dict[int, list[str]] = field(default_factory=dict)
    rows: dict[str, list[Cell]] | None = None


def parse_nexus(raw: bytes, name: str) -> Imported:
    """The key whose matrix `raw` holds, which was read from a file called `name`.

    Raises:
        IdKeyError: It is no NEXUS, or holds no matrix of states.
    """
    if len(raw) > LARGEST_NEXUS:
        raise IdKeyError(f"{name} is larger than {LARGEST_NEXUS // 2**20} MB.", "Split it.")
    try:
        text = raw.decode("utf-8-sig")
        notes = []
    except UnicodeDecodeError:
        text = raw.decode("cp1252", "replace")
        notes = ["The file is not UTF-8; it was read as Windows-1252."]
    if not _TITLE.match(text.lstrip()):
        raise IdKeyError(f"{name} does not start with #NEXUS.", "Choose a NEXUS file.")
    blocks, others = _blocks(_without_comments(text, name), name)
    if not blocks:
        raise IdKeyError(f"{name} holds no matrix of states.", _MEND)
    notes += [f"The block {other} was left out." for other in others]
    key, more = _key(blocks, name)
    return imported(key, (*notes, *more, LOOKS_UNTOLD, HAZARD_UNTOLD), name)


def _without_comments(text: str, name: str) -> str:
    """The text without [comments], which may be nested but not inside quotes."""
    parts: list[str] = []
    depth = start = 0
    quoted = False
    for match in re.finditer(r"[\[\]']", text):
        sign = match[0]
        if sign == "'" and not depth:
            quoted = not quoted
        elif sign == "[" and not quoted:
            if not depth:
                parts.append(text[start : match.start()])
            depth += 1
        elif sign == "]" and depth:
            depth -= 1
            start = match.end()
    if depth:
        raise IdKeyError(f"A comment in {name} is never closed.", "Add the missing ']'.")
    return " ".join([*parts, text[start:]])


def _blocks(text: str, name: str) -> tuple[list[_Block], list[str]]:
    blocks: list[_Block] = []
    others: list[str] = []
    current: _Block | None = None
    for command in _commands(text.lstrip()[6:]):
        word, rest = _word(command)
        if word == "BEGIN":
            title = rest.strip().upper()
            current = _Block() if title in ("CHARACTERS", "DATA") else None
            if current is None and title != "TAXA":
                others.append(title[:40])
        elif word in ("END", "ENDBLOCK"):
            if current is not None and current.rows is not None:
                blocks.append(current)
            current = None
        elif current is not None:
            _take(current, word, rest, name)
    if current is not None and current.rows is not None:
        blocks.append(current)
    return blocks, others


def _commands(text: str) -> Iterator[str]:
    """The commands, which end in semicolons outside of quotes."""
    start, quoted = 0, False
    for match in re.finditer("[;']", text):
        if match[0] == "'":
            quoted = not quoted
        elif not quoted:
            yield text[start : match.start()].strip()
            start = match.end()


def _word(command: str) -> tuple[str, str]:
    word, rest = (*command.split(None, 1), "", "")[:2]
    return word.upper(), rest


def _take(block: _Block, word: str, rest: str, name: str) -> None:
    if word == "DIMENSIONS":
        found = re.search(r"NCHAR\s*=\s*(\d{1,7})\b", rest, re.IGNORECASE)
        block.characters = int(found[1]) if found else None
    elif word == "FORMAT":
        block.format = Format.of(rest, name)
    elif word == "MATRIX":
        if block.characters is None:
            raise IdKeyError(f"{name} does not say how many characters it has (NCHAR).", _MEND)
        block.rows = rows(rest, block.characters, block.format, name)
    else:
        _take_labels(block, word, rest)


def _take_labels(block: _Block, word: str, rest: str) -> None:
    if word == "CHARLABELS":
        words = (_spoken(_text(match)) for match in _TOKEN.finditer(rest))
        block.names |= dict(enumerate(words, start=1))
    elif word == "CHARSTATELABELS":
        _both_labels(block, rest)
    elif word == "STATELABELS":
        for number, labels in _numbered(rest):
            block.states[number] = labels


def _text(match: re.Match[str]) -> str:
    quoted, double, word, sign = match.groups()
    if quoted is not None:
        return quoted.replace("''", "'")
    if double is not None:
        return double
    return word.replace("_", " ") if word is not None else sign


def _spoken(text: str) -> str:
    return " ".join(text.split())


def _entries(text: str) -> Iterator[list[str]]:
    entry: list[str] = []
    for match in _TOKEN.finditer(text):
        if match[4] == ",":
            yield entry
            entry = []
        elif match[4] == "/":
            entry.append("\0/")
        else:
            entry.append(_spoken(_text(match)))
    yield entry


def _numbered(text: str) -> Iterator[tuple[int, list[str]]]:
    for entry in _entries(text):
        if entry and entry[0].isdecimal() and len(entry[0]) < 8:
            yield int(entry[0]), entry[1:]


def _both_labels(block: _Block, text: str) -> None:
    for number, words in _numbered(text):
        at = words.index("\0/") if "\0/" in words else len(words)
        if words[:at]:
            block.names[number] = " ".join(words[:at])
        if words[at + 1 :]:
            block.states[number] = words[at + 1 :]


def _key(blocks: list[_Block], name: str) -> tuple[Key, list[str]]:
    title = Path(name).stem
    notes: list[str] = []
    taxon_ids = Ids("taxon")
    taxa: dict[str, str] = {}
    for block in blocks:
        for row in block.rows or {}:
            if row not in taxa:
                taxa[row] = taxon_ids.new(row)
    character_ids = Ids("character")
    characters: list[Character] = []
    scores: list[Score] = []
    for block in blocks:
        for index in range(block.characters or 0):
            made = _character(block, index, character_ids)
            if isinstance(made, str):
                notes.append(made)
                continue
            character, symbols = made
            characters.append(character)
            scores += _scores(block, index, character, symbols, taxa)
    if not characters:
        raise IdKeyError(f"No character in {name} has two states or more.", _MEND)
    key = Key(
        id=Ids("key").new(title),
        title=title[:200] or "Imported key",
        version=FIRST_VERSION,
        taxa=tuple(Taxon(id=own, name=row, hazard=UNKNOWN_HAZARD) for row, own in taxa.items()),
        characters=tuple(characters),
        scores=tuple(scores),
    )
    return key, notes


def _character(block: _Block, index: int, ids: Ids) -> tuple[Character, dict[str, str]] | str:
    """The character and its state id per symbol; a note when it tells nothing apart."""
    name = block.names.get(index + 1) or f"Character {index + 1}"
    labels = block.states.get(index + 1, [])
    used = {s for row in (block.rows or {}).values() for s in row[index].symbols}
    symbols = block.format.symbols
    wanted = [s for n, s in enumerate(symbols) if s in used or n < len(labels)]
    wanted += sorted(used - set(symbols))
    if len(wanted) < 2:
        return f"The character '{name[:80]}' was left out, because it has no two states."
    state_ids = Ids("state")
    states = []
    named = {}
    for symbol in wanted:
        place = symbols.find(symbol)
        label = labels[place] if 0 <= place < len(labels) and labels[place] else f"state {symbol}"
        named[symbol] = state_ids.new(label)
        states.append(State(id=named[symbol], label=label))
    character = Character(
        id=ids.new(name),
        name=name,
        question=f"{name}: which applies?",
        kind=Kind.CATEGORICAL,
        looks=(Look.LENS,),
        states=tuple(states),
    )
    return character, named


def _scores(
    block: _Block, index: int, character: Character, named: dict[str, str], taxa: dict[str, str]
) -> Iterator[Score]:
    for row, cells in (block.rows or {}).items():
        cell = cells[index]
        if cell.gap:
            yield Score(taxon=taxa[row], character=character.id, value=Inapplicable())
        elif cell.symbols:
            shown = Shows(dict.fromkeys(named[symbol] for symbol in cell.symbols))
            note = "one of these; which one is not known" if cell.uncertain else ""
            yield Score(taxon=taxa[row], character=character.id, value=shown, note=note)
