"""What a key cannot do, and what somebody should verify, as Markdown."""

import re
from collections.abc import Iterable, Iterator
from functools import lru_cache
from itertools import combinations

import numpy as np

from idkey.engine.compile import compile_key
from idkey.engine.separation import surely
from idkey.model.character import Character, Look, Reliability
from idkey.model.key import Key
from idkey.model.score import Score, Shows
from idkey.model.source import Basis
from idkey.report.finding_words import value_words
from idkey.report.markdown import (
    amount,
    character_names,
    escaped,
    in_italics,
    table,
    taxon_names,
)

RECALLED = (Basis.PARTLY_MEMORY, Basis.MEMORY)
_CONFLICT = re.compile(r"conflict\b", re.IGNORECASE)

Pair = tuple[str, str]


@lru_cache(maxsize=8)
def separated(key: Key) -> tuple[tuple[Pair, tuple[str, ...]], ...]:
    """Every pair of taxa with the characters that tell it apart for sure.

    For sure is: both are scored and share no state, or their ranges do not overlap even when
    widened by what their specimens leave unseen.
    """
    matrix = compile_key(key)
    rows = {taxon: surely(matrix, row) for row, taxon in enumerate(matrix.taxa)}
    return tuple(
        ((one, other), tuple(key.characters[n].id for n in np.flatnonzero(apart)))
        for one, other in combinations(matrix.taxa, 2)
        for apart in (rows[one][matrix.row[other]],)
    )


def apart_section(key: Key) -> Iterator[str]:
    """Pairs that are never told apart, and pairs that hardly are."""
    never = [pair for pair, apart in separated(key) if not apart]
    fragile = [(pair, apart) for pair, apart in separated(key) if apart and _fragile(key, apart)]
    yield "## What it cannot tell apart"
    yield ""
    yield f"Of {amount(len(separated(key)), 'pair', 'pairs')} of taxa these have no character that"
    yield "tells them apart for sure: wherever both are scored they share a state or a range."
    yield ""
    yield from table(
        ("taxa", "characters both are scored for"),
        ((taxon_names(key, pair), _compared(key, pair)) for pair in never),
    )
    yield "These are told apart only by characters of low reliability, of one sex, or to be seen"
    yield "only by handling or on a dead animal:"
    yield ""
    yield from table(
        ("taxa", "told apart only by"),
        ((taxon_names(key, pair), character_names(key, apart)) for pair, apart in fragile),
    )


def _fragile(key: Key, apart: Iterable[str]) -> bool:
    return not any(_sound(key.character[character]) for character in apart)


def _sound(character: Character) -> bool:
    easy = [look for look in character.looks if not look.handling and look is not Look.DEAD]
    return bool(easy) and character.reliability is not Reliability.LOW and character.sex is None


def _compared(key: Key, pair: Pair) -> int:
    return sum(all((taxon, c.id) in key.cells for taxon in pair) for c in key.characters)


def conflicts_section(key: Key) -> Iterator[str]:
    """Scores whose note starts with "Conflict"."""
    yield "## Where sources disagree"
    yield ""
    yield from _score_table(key, (score for score in key.scores if _CONFLICT.match(score.note)))


def _score_table(key: Key, scores: Iterable[Score]) -> Iterator[str]:
    """A table of scores; taxa that share character, value and remark share a row."""
    rows: dict[tuple[str, str, str], list[str]] = {}
    for score in scores:
        said = (
            character_names(key, [score.character]),
            escaped(value_words(key, score)),
            in_italics(key, score.note),
        )
        rows.setdefault(said, []).append(score.taxon)
    return table(
        ("character", "value", "taxa", "remark"),
        (
            (character, value, taxon_names(key, taxa), note)
            for (character, value, note), taxa in rows.items()
        ),
    )


def memory_section(key: Key) -> Iterator[str]:
    """Values from memory, the most telling first, and permits and dangers from memory."""
    yield "## From memory: for someone to verify"
    yield ""
    first = [(pair, apart) for pair, apart in separated(key) if _rests_on_memory(key, pair, apart)]
    yield "First of all: pairs of taxa that values from memory alone tell apart."
    yield ""
    yield from table(
        ("taxa", "characters"),
        ((taxon_names(key, pair), character_names(key, apart)) for pair, apart in first),
    )
    recalled = [score for score in key.scores if score.basis in RECALLED]
    yield f"Wholly or partly from memory: {amount(len(recalled), 'value', 'values')}."
    yield ""
    yield from _score_table(key, recalled)
    permits = [taxon.id for taxon in key.taxa if taxon.permit.from_memory]
    dangers = [taxon.id for taxon in key.taxa if "memory" in taxon.hazard.sources]
    yield f"Permit entries not seen in an official text: {taxon_names(key, permits) or 'none'}."
    yield ""
    yield f"Dangers with memory among their sources: {taxon_names(key, dangers) or 'none'}."
    yield ""


def _rests_on_memory(key: Key, pair: Pair, apart: tuple[str, ...]) -> bool:
    return bool(apart) and all(_recalled(key, pair, character) for character in apart)


def _recalled(key: Key, pair: Pair, character: str) -> bool:
    cells = [key.cells.get((taxon, character), ()) for taxon in pair]
    return any(score.basis in RECALLED for cell in cells for score in cell)


def thumbs_section(key: Key) -> Iterator[str]:
    """Each rule of thumb against the matrix: the taxa that share a state."""
    thumbs = [character for character in key.characters if character.rule_of_thumb]
    yield "## Rules of thumb, put to the test"
    yield ""
    if thumbs:
        yield "People lean on these characters more than they can bear (common practice, no"
        yield "source). Taxa in one row share the state, so that it does not tell them apart."
    else:
        yield "No character of this key is marked as one."
    yield ""
    for character in thumbs:
        yield from _thumb(key, character)


def _thumb(key: Key, character: Character) -> Iterator[str]:
    showing = _showing(key, character)
    scored = {taxon for taxa in showing.values() for taxon in taxa}
    pairs = list(combinations(sorted(scored), 2))
    shared = sum(any(set(pair) <= set(taxa) for taxa in showing.values()) for pair in pairs)
    left = len(key.taxa) - len(scored)
    unscored = f"{amount(left, 'taxon is', 'taxa are')} not scored" if left else "all are scored"
    yield f"### {escaped(character.name)}"
    yield ""
    yield f"{shared or 'None'} of the {amount(len(pairs), 'pair', 'pairs')} of scored taxa"
    yield f"{'shares' if shared == 1 else 'share'} a state;"
    yield f"{unscored}."
    yield ""
    yield from table(
        ("state", "taxa that show it"),
        ((escaped(s.label), taxon_names(key, showing[s.id])) for s in character.states),
    )


def _showing(key: Key, character: Character) -> dict[str, tuple[str, ...]]:
    """State id to the taxa that may show it, in the order of the key."""
    shown: dict[str, set[str]] = {state: set() for state in character.state_ids}
    for taxon in key.taxa:
        for score in key.cells.get((taxon.id, character.id), ()):
            if isinstance(score.value, Shows):
                for state in score.value.states:
                    shown[state].add(taxon.id)
    return {s: tuple(t.id for t in key.taxa if t.id in taxa) for s, taxa in shown.items()}
