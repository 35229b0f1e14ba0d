"""Names in sentences: how they are listed, and which letters of a text are set in italics."""

import re
from collections.abc import Iterable, Sequence
from functools import lru_cache
from html import escape

from idkey.engine.labels import name_only
from idkey.model.key import Key
from idkey.report.language import Language

_SIGNS = r"(?:cf|aff|gr|ex gr)\."
"""Signs of open nomenclature that stand upright between two italic words."""


@lru_cache(maxsize=8)
def scientific_names(key: Key) -> tuple[str, ...]:
    """Names of the key that are set in italics: genera, species, older names, short forms."""
    found: dict[str, None] = {}
    for taxon in key.taxa:
        older = (name_only(name) for name in (*taxon.synonyms, *taxon.permit.listed_as))
        for name in (taxon.name, *older):
            genus, _, epithet = name.partition(" ")
            found[name] = None
            found[genus] = None
            if epithet:
                found[f"{genus[0]}. {epithet}"] = None
    return tuple(found)


def runs(names: Iterable[str], text: str) -> tuple[tuple[str, bool], ...]:
    """The text in pieces, each with whether it is set in italics.

    Args:
        names: Names to look for, as `scientific_names` gives them.
        text: Any sentence.

    Returns:
        Pieces that join to `text`.
    """
    pattern = _pattern(tuple(names))
    if pattern is None:
        return ((text, False),) if text else ()
    found: list[tuple[str, bool]] = []
    place = 0
    for match in pattern.finditer(text):
        found.append((text[place : match.start()], False))
        found.extend(_signed(match))
        place = match.end()
    found.append((text[place:], False))
    return tuple(piece for piece in found if piece[0])


def _signed(match: re.Match[str]) -> list[tuple[str, bool]]:
    """The pieces of one name; a sign between its words stands upright."""
    if match["sign"] is None:
        return [(match[0], True)]
    return [(match["name"], True), (f" {match['sign']} ", False), (match["rest"], True)]


@lru_cache(maxsize=32)
def _pattern(names: tuple[str, ...]) -> re.Pattern[str] | None:
    if not names:
        return None
    longest = sorted(names, key=len, reverse=True)
    one = "|".join(re.escape(name) for name in longest)
    tail = rf"(?: (?P<sign>{_SIGNS}) (?P<rest>[a-z-]+))?"
    return re.compile(rf"\b(?P<name>{one})\b{tail}")


def rich(key: Key, text: str) -> str:
    """The text as HTML, escaped, with the names of the key in italics."""
    return rich_text(scientific_names(key), text)


def rich_text(names: Iterable[str], text: str) -> str:
    """The text as HTML, escaped, with `names` in italics."""
    return "".join(
        f"<i>{escape(piece)}</i>" if italic else escape(piece)
        for piece, italic in runs(names, text)
    )


def name_of(key: Key, taxon: str) -> str:
    """Accepted name of a taxon id; the id itself when this key lacks it."""
    known = key.taxon.get(taxon)
    return known.name if known else taxon


def listing(
    key: Key, taxa: Sequence[str], language: Language, *, last: str = "and", most: int = 4
) -> str:
    """Accepted names of taxon ids as a list in words, cut after `most` with what is left."""
    names = [name_of(key, taxon) for taxon in taxa]
    if len(names) <= most:
        return language.join(names, last)
    shown = names[: most - 1]
    return language.say("{names} and {n} more", names=", ".join(shown), n=len(names) - len(shown))


def character_name(key: Key, character: str) -> str:
    """Name of a character id; the id itself when this key lacks it."""
    known = key.character.get(character)
    return known.name if known else character


def state_labels(key: Key, character: str, states: Sequence[str]) -> tuple[str, ...]:
    """Labels of state ids; the ids themselves where this key lacks them."""
    known = key.character.get(character)
    labels = {state.id: state.label for state in known.states} if known else {}
    return tuple(labels.get(state, state) for state in states)
