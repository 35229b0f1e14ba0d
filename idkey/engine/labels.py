"""What a typed label means: entries of the key, taxon names, near matches."""

import re
from collections.abc import Collection, Iterator
from dataclasses import replace
from functools import lru_cache

from rapidfuzz import fuzz, process

from idkey.engine.result import LabelMatch
from idkey.engine.spelling import abbreviated, bare, name_only, normalised, singular
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.taxon import Taxon

__all__ = ("GENUS", "claimed", "label_entry", "match_labels", "name_only", "normalised")

NEAR = 75.0
"""Likeness from which a near match is offered; it is never taken without asking."""

WITHIN = 95.0
"""Most that a label scores whose words are all within the other's."""

OFFERED = 6

GENUS = "genus:"
"""Begins the id of a label that is just a genus."""

ON_LABELS = 1900
"""Combinations first printed before this year are on no shop label of their genus."""


@lru_cache(maxsize=8)
def _entries(key: Key) -> dict[str, Label]:
    labels = (*key.labels, *map(_of_taxon, key.taxa), *_of_genera(key))
    return {label.id: label for label in labels}


def _of_taxon(taxon: Taxon) -> Label:
    """A label that is just the taxon's name, or an older name of it."""
    names = (*(name_only(s) for s in taxon.synonyms), *taxon.vernacular, *taxon.permit.listed_as)
    return Label(
        id=f"taxon:{taxon.id}", text=taxon.name, variants=names, covers=(taxon.id,), evidence="name"
    )


def _of_genera(key: Key) -> Iterator[Label]:
    """Labels that are just a genus: its taxa, and those a shop may still keep in it."""
    names = {taxon.name for taxon in key.taxa}
    members: dict[str, list[str]] = {taxon.genus: [] for taxon in key.taxa}
    for taxon in key.taxa:
        for genus in _genera(taxon) & members.keys():
            members[genus].append(taxon.id)
    for genus, taxa in members.items():
        if genus not in names:
            yield Label(
                id=f"{GENUS}{genus}",
                text=genus,
                covers=tuple(taxa),
                covers_outside=(f"{genus} spp.",),
                evidence="name",
            )


def _genera(taxon: Taxon) -> set[str]:
    """The genus of a taxon, and those a shop may still keep it in."""
    return {taxon.genus} | {name.partition(" ")[0] for name in taxon.synonyms if _recent(name)}


def _recent(name: str) -> bool:
    year = re.search(r"[0-9]{4}", name)
    return year is None or int(year[0]) >= ON_LABELS


def label_entry(key: Key, label_id: str) -> Label | None:
    """The label entry with that id; names of taxa and of genera are entries too.

    Their ids are ``"taxon:<id>"`` and ``"genus:<name>"``.
    """
    return _entries(key).get(label_id)


def claimed(key: Key, case: Case) -> Label | None:
    """The label entry the claim of a case stands for; None while nobody confirmed one."""
    return _entries(key).get(case.claim.label) if case.claim.label else None


@lru_cache(maxsize=8)
def _spellings(key: Key) -> dict[str, tuple[str, str]]:
    """Normalised spelling to spelling and label id, explicit entries first.

    A genus cut to its first letter counts where only one entry can be meant.
    """
    found: dict[str, tuple[str, str]] = {}
    short: dict[str, dict[str, str]] = {}
    for label in _entries(key).values():
        for spelling in (label.text, *label.variants):
            found.setdefault(singular(spelling), (spelling, label.id))
            if letter := abbreviated(spelling):
                _, meant = found[singular(spelling)]
                short.setdefault(letter, {}).setdefault(meant, spelling)
    for letter, meanings in short.items():
        if len(meanings) == 1:
            ((label_id, spelling),) = meanings.items()
            found.setdefault(letter, (spelling, label_id))
    found.pop("", None)
    return found


def match_labels(key: Key, text: str) -> tuple[LabelMatch, ...]:
    """Label entries that fit a typed text, best first, at most six, one per entry.

    An exact match is the same text after normalising, also without size, sex, authority and
    "sp.". The first one may be taken without asking; near ones are only offered.
    """
    plain, core = singular(text), bare(text)
    if not plain:
        return ()
    spellings = _spellings(key)
    best: dict[str, LabelMatch] = {}
    for known in (plain, core):
        if known in spellings:
            _take(best, spellings[known], 100.0, exact=True)
    near = tuple(_near(core or plain, tuple(spellings)))
    for known, score in near:
        _take(best, spellings[known], min(score, 99.0), exact=False)
    texts = {spellings[known][0] for known, _ in near}
    best = {label: _plainer(key, match, texts) for label, match in best.items()}
    return tuple(sorted(best.values(), key=lambda m: (-m.exact, -m.score)))[:OFFERED]


def _plainer(key: Key, match: LabelMatch, near: Collection[str]) -> LabelMatch:
    """A near match under the entry's own name, where that is near too."""
    own = _entries(key)[match.label].text
    return match if match.exact or own not in near else replace(match, text=own)


def _take(
    best: dict[str, LabelMatch], meant: tuple[str, str], score: float, *, exact: bool
) -> None:
    spelling, label = meant
    if label not in best or score > best[label].score:
        best[label] = LabelMatch(label=label, text=spelling, score=score, exact=exact)


def _near(text: str, known: tuple[str, ...]) -> Iterator[tuple[str, float]]:
    """Spellings that are like the text, or whose words are within it or the other way round."""
    limit = 4 * OFFERED
    alike = process.extract(
        text, known, scorer=fuzz.token_sort_ratio, limit=limit, score_cutoff=NEAR
    )
    yield from ((spelling, score) for spelling, score, _ in alike)
    within = process.extract(
        text, known, scorer=fuzz.token_set_ratio, limit=limit, score_cutoff=100.0
    )
    for spelling, _, _ in within:
        if set(spelling.split()) <= set(text.split()) or set(text.split()) <= set(spelling.split()):
            share = min(len(spelling), len(text)) / max(len(spelling), len(text))
            yield spelling, NEAR + (WITHIN - NEAR) * share
