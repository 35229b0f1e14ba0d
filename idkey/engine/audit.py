"""What is weak about a key: pairs it cannot split, things that never decide, missing sources."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from idkey.engine.checks import failed_checks
from idkey.engine.compile import compile_key
from idkey.engine.grower import Tick, silent
from idkey.engine.matrix import Matrix
from idkey.engine.separation import printed_apart, surely
from idkey.engine.walk import graph, reachable
from idkey.model.character import Look, Reliability
from idkey.model.couplet import Couplet, Lead
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Shows, Spans


class Weakness(StrEnum):
    """What is weak."""

    INSEPARABLE = "inseparable"
    FRAGILE = "fragile"
    IDLE_CHARACTER = "idle_character"
    IDLE_STATE = "idle_state"
    UNSOURCED = "unsourced"
    UNUSED_SOURCE = "unused_source"
    COUPLET_AGAINST_MATRIX = "couplet_against_matrix"
    UNREACHED_COUPLET = "unreached_couplet"
    UNREACHED_TAXON = "unreached_taxon"
    LABEL_WITHOUT_CHARACTERS = "label_without_characters"
    FAILED_CHECK = "failed_check"


@dataclass(frozen=True, slots=True, kw_only=True)
class Remark:
    """One weakness of a key.

    Attributes:
        weakness: What is weak.
        about: Ids it is about: taxa, a character and a state, a couplet and a lead number …
        detail: Ids that explain it, such as the characters a fragile pair rests on.
    """

    weakness: Weakness
    about: tuple[str, ...]
    detail: tuple[str, ...] = ()


def audit(key: Key, tick: Tick = silent) -> tuple[Remark, ...]:
    """Every weakness of `key`, grouped by kind, in the order of `Weakness`.

    Args:
        key: The key; it has no errors.
        tick: Told (done, total) after each taxon; may raise to stop.
    """
    matrix = compile_key(key)
    weak, used = _apart(matrix, tick)
    found = [
        *weak,
        *_idle(matrix, used),
        *_sources(key),
        *_couplets(key),
        *_labels(key),
        *_checks(key),
    ]
    order = {weakness: place for place, weakness in enumerate(Weakness)}
    return tuple(sorted(found, key=lambda remark: order[remark.weakness]))


def pairs(matrix: Matrix) -> tuple[Remark, ...]:
    """Pairs of taxa whose scores no character sets apart, or only fragile ones do.

    Fragile is: of low reliability, of one sex only, to be seen only by handling or on a dead
    animal, or a pair of printed ranges that more specimens might bring together.
    """
    return _apart(matrix, silent)[0]


def _apart(matrix: Matrix, tick: Tick) -> tuple[tuple[Remark, ...], NDArray[np.bool_]]:
    """The pairs, and which characters set any two taxa apart, shape (characters,)."""
    characters = matrix.key.characters
    sound = np.array([_sound(matrix, n) for n in range(len(characters))], bool)
    used = np.zeros(len(characters), bool)
    found = []
    for row, taxon in enumerate(matrix.taxa):
        tick(row, len(matrix.taxa))
        sure = surely(matrix, row)
        apart = printed_apart(matrix, row, sure)
        used |= apart.any(axis=0)
        weak = ~(sure & sound).any(axis=1)
        for other in np.flatnonzero(weak[row + 1 :]) + row + 1:
            both = (taxon, matrix.taxa[other])
            names = tuple(characters[n].id for n in np.flatnonzero(apart[other]))
            kind = Weakness.FRAGILE if names else Weakness.INSEPARABLE
            found.append(Remark(weakness=kind, about=both, detail=names))
    return tuple(found), used


def _sound(matrix: Matrix, number: int) -> bool:
    character = matrix.key.characters[number]
    easy = [look for look in character.looks if not look.handling and look is not Look.DEAD]
    return bool(easy) and character.reliability is not Reliability.LOW and character.sex is None


def _idle(matrix: Matrix, used: NDArray[np.bool_]) -> list[Remark]:
    """Characters that separate no pair, and states no taxon shows."""
    found = [
        Remark(weakness=Weakness.IDLE_CHARACTER, about=(character.id,))
        for character, decides in zip(matrix.key.characters, used, strict=True)
        if not decides
    ]
    shown = {
        (score.character, state)
        for score in matrix.key.scores
        if isinstance(score.value, Shows)
        for state in score.value.states
    }
    return found + [
        Remark(weakness=Weakness.IDLE_STATE, about=(character.id, state))
        for character in matrix.key.characters
        for state in character.state_ids
        if (character.id, state) not in shown
    ]


def _sources(key: Key) -> list[Remark]:
    found = [
        Remark(weakness=Weakness.UNSOURCED, about=(score.taxon, score.character))
        for score in key.scores
        if not score.sources
    ]
    cited = {
        source
        for part in (key.scores, key.characters, key.labels, key.checks, key.taxa)
        for one in part
        for source in one.sources
    }
    cited |= {s for taxon in key.taxa for s in (*taxon.hazard.sources, *taxon.permit.sources)}
    cited |= {s for label in key.labels if label.rates for s in label.rates.sources}
    return found + [
        Remark(weakness=Weakness.UNUSED_SOURCE, about=(source.id,))
        for source in key.sources
        if source.id not in cited
    ]


def _couplets(key: Key) -> list[Remark]:
    if not key.couplets:
        return []
    below = reachable(key.couplets)
    start = key.couplets[0].id
    drawn = graph(key.couplets)
    arrived = {node for node in below if drawn.in_degree(node)} | {start}
    found = [
        Remark(weakness=Weakness.UNREACHED_COUPLET, about=(couplet.id,))
        for couplet in key.couplets
        if couplet.id not in arrived
    ]
    found += [
        Remark(weakness=Weakness.UNREACHED_TAXON, about=(taxon.id,))
        for taxon in key.taxa
        if taxon.id not in below[start]
    ]
    for couplet in key.couplets:
        found += _against_matrix(key, couplet, below)
    return found


def _against_matrix(
    key: Key, couplet: Couplet, reach: Mapping[str, frozenset[str]]
) -> list[Remark]:
    found = []
    for number, lead in enumerate(couplet.leads, start=1):
        taxa = reach.get(lead.to, frozenset()) if lead.to else frozenset(lead.taxa)
        wrong = tuple(sorted(taxon for taxon in taxa if not agrees(key, taxon, lead)))
        if wrong:
            found.append(
                Remark(
                    weakness=Weakness.COUPLET_AGAINST_MATRIX,
                    about=(couplet.id, str(number)),
                    detail=wrong,
                )
            )
    return found


def agrees(key: Key, taxon: str, lead: Lead) -> bool:
    """Whether some scored sex or stage of the taxon can show what the lead stands for.

    Unscored characters agree.
    """
    for sees in lead.sees:
        scores = key.cells.get((taxon, sees.character), ())
        fits = [_fits(score.value, sees.states, sees.low, sees.high) for score in scores]
        if scores and not any(fits):
            return False
    return True


def _fits(
    value: Shows | Spans | Inapplicable,
    states: tuple[str, ...],
    low: float | None,
    high: float | None,
) -> bool:
    if isinstance(value, Inapplicable):
        return False
    if isinstance(value, Shows):
        return bool(set(value.states) & set(states))
    over = low is not None and value.high is not None and value.high < low
    under = high is not None and value.low is not None and value.low > high
    return not (over or under)


def _labels(key: Key) -> list[Remark]:
    return [
        Remark(weakness=Weakness.LABEL_WITHOUT_CHARACTERS, about=(label.id,))
        for label in key.labels
        if label.sold_as and not label.deciding
    ]


def _checks(key: Key) -> list[Remark]:
    return [
        Remark(
            weakness=Weakness.FAILED_CHECK,
            about=(result.check.id,),
            detail=(*result.wrongly_excluded, *result.wrongly_kept),
        )
        for result in failed_checks(key)
    ]
