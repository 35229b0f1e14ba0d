"""Taxa side by side: one row per character, differences first."""

from dataclasses import dataclass
from enum import IntEnum

from idkey.model.character import Character, State
from idkey.model.key import Key
from idkey.model.score import Score, Shows, Spans


class Contrast(IntEnum):
    """How far taxa differ in a character, plainest first."""

    DIFFERENT = 0
    OVERLAPPING = 1
    ALIKE = 2
    UNKNOWN = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class ComparedCell:
    """What one taxon shows.

    Attributes:
        scores: Its scores; empty when nothing is known.
        states: The states it shows; empty for numbers.
    """

    scores: tuple[Score, ...]
    states: tuple[State, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class ComparedRow:
    """One character across taxa."""

    character: Character
    contrast: Contrast
    cells: tuple[ComparedCell, ...]


def compared(key: Key, taxa: tuple[str, ...]) -> tuple[ComparedRow, ...]:
    """One row per character that any of the taxa is scored for, plainest difference first."""
    rows = []
    for character in key.characters:
        cells = tuple(_cell(key, character, taxon) for taxon in taxa)
        if any(cell.scores for cell in cells):
            contrast = _contrast(cells)
            rows.append(ComparedRow(character=character, contrast=contrast, cells=cells))
    return tuple(sorted(rows, key=lambda row: row.contrast))


def _cell(key: Key, character: Character, taxon: str) -> ComparedCell:
    scores = key.cells.get((taxon, character.id), ())
    shown = {s for score in scores if isinstance(score.value, Shows) for s in score.value.states}
    states = tuple(state for state in character.states if state.id in shown)
    return ComparedCell(scores=scores, states=states)


def _contrast(cells: tuple[ComparedCell, ...]) -> Contrast:
    """By the most different pair of taxa that are both known."""
    known = [cell for cell in cells if cell.scores]
    if len(known) < 2:
        return Contrast.UNKNOWN
    pairs = [(a, b) for n, a in enumerate(known) for b in known[n + 1 :]]
    found = min(_pair(a, b) for a, b in pairs)
    if found is Contrast.ALIKE and len(known) < len(cells):
        return Contrast.UNKNOWN
    return found


def _pair(one: ComparedCell, other: ComparedCell) -> Contrast:
    if one.states or other.states:
        first, second = set(one.states), set(other.states)
        if not first & second:
            return Contrast.DIFFERENT
        return Contrast.ALIKE if first == second else Contrast.OVERLAPPING
    return _ranges(_span(one), _span(other))


def _span(cell: ComparedCell) -> tuple[float, float]:
    spans = [score.value for score in cell.scores if isinstance(score.value, Spans)]
    lows = [s.low if s.low is not None else s.mean for s in spans]
    highs = [s.high if s.high is not None else s.mean for s in spans]
    low = min((x if x is not None else float("-inf") for x in lows), default=float("-inf"))
    high = max((x if x is not None else float("inf") for x in highs), default=float("inf"))
    return low, high


def _ranges(one: tuple[float, float], other: tuple[float, float]) -> Contrast:
    if one == other:
        return Contrast.ALIKE
    apart = one[1] < other[0] or other[1] < one[0]
    return Contrast.DIFFERENT if apart else Contrast.OVERLAPPING
