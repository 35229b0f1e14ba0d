"""What a typed label means: entries of the key, taxon names, near matches."""

import re
import unicodedata
from functools import lru_cache

from rapidfuzz import fuzz, process

from idkey.engine.result import LabelMatch
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.taxon import Taxon

NEAR = 75.0
"""Likeness from which a near match is offered; it is never taken without asking."""

OFFERED = 6

_NOISE = re.compile(r"\b(cb|wc|ltc|adult|juv|juvenile|male|female|sp|spec|spp)\b\.?|[0-9.]+")


def normalised(text: str) -> str:
    """The label without accents, case, punctuation and double blanks."""
    plain = unicodedata.normalize("NFKD", text.casefold())
    plain = "".join(c for c in plain if not unicodedata.combining(c))
    return re.sub(r"[\W_]+", " ", plain).strip()


def _singular(text: str) -> str:
    """Like `normalised`, and a plural s at the end of a word is dropped."""
    return re.sub(r"(?<=[a-z]{3})(?<!s)s\b", "", text)


def name_only(synonym: str) -> str:
    """The name in a synonym entry, without authority: leading genus and epithets.

    Example: ``"Buthus (Heterometrus) spinifer Ehrenberg, 1828"`` gives
    ``"Buthus (Heterometrus) spinifer"``.
    """
    found = re.match(r"[A-Z][a-z]+(?: \([A-Z][a-z]+\))?(?: [a-z][a-z-]+){0,2}", synonym)
    return found.group(0) if found else synonym


@lru_cache(maxsize=8)
def _entries(key: Key) -> dict[str, Label]:
    return {label.id: label for label in (*key.labels, *map(_of_taxon, key.taxa))}


def _of_taxon(taxon: Taxon) -> Label:
    """A label that is just the taxon's name, or an older name of it."""
    names = (*(name_only(s) for s in taxon.synonyms), *taxon.vernacular, *taxon.permit.listed_as)
    return Label(
        id=f"taxon:{taxon.id}", text=taxon.name, variants=names, covers=(taxon.id,), evidence="name"
    )


def label_entry(key: Key, label_id: str) -> Label | None:
    """The label entry with that id; names of taxa are entries too (``"taxon:<id>"``)."""
    return _entries(key).get(label_id)


def claimed(key: Key, case: Case) -> Label | None:
    """The label entry the claim of a case stands for; None while nobody confirmed one."""
    return _entries(key).get(case.claim.label) if case.claim.label else None


@lru_cache(maxsize=8)
def _spellings(key: Key) -> tuple[tuple[str, str, str], ...]:
    """(normalised spelling, spelling, label id), explicit entries first."""
    found: dict[str, tuple[str, str, str]] = {}
    for label in _entries(key).values():
        for spelling in (label.text, *label.variants):
            plain = _singular(normalised(spelling))
            found.setdefault(plain, (plain, spelling, label.id))
    return tuple(found.values())


def match_labels(key: Key, text: str) -> tuple[LabelMatch, ...]:
    """Label entries that fit a typed text, best first, at most six, one per entry.

    An exact match is the same text after normalising, also without size, sex and "sp.". The
    first one may be taken without asking; near ones are only offered.
    """
    plain = _singular(normalised(text))
    if not plain:
        return ()
    bare = _singular(normalised(_NOISE.sub(" ", text.casefold())))
    spellings = _spellings(key)
    scored = process.extract(
        plain, [s[0] for s in spellings], scorer=fuzz.WRatio, limit=4 * OFFERED, score_cutoff=NEAR
    )
    best: dict[str, LabelMatch] = {}
    for _, score, place in scored:
        known, spelling, label = spellings[place]
        exact = known in (plain, bare)
        match = LabelMatch(
            label=label, text=spelling, score=100.0 if exact else min(score, 99.0), exact=exact
        )
        if label not in best or match.score > best[label].score:
            best[label] = match
    return tuple(sorted(best.values(), key=lambda m: (-m.exact, -m.score)))[:OFFERED]
