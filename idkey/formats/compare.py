"""What changed between two versions of a key, in words, and how much its version must grow."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from idkey.formats.merge import Clash, Side, merge
from idkey.formats.piece_words import entry_words, place_words, sentence, value_words
from idkey.formats.pieces import LISTS, ORDER, Part, Place, entries, is_order, owners, pieces
from idkey.model.key import Key

__all__ = ["Change", "Clash", "How", "Side", "Step", "changes", "merge", "next_version", "step"]


class How(StrEnum):
    """What happened to a piece."""

    ADDED = "added"
    REMOVED = "removed"
    CHANGED = "changed"


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """One difference between two versions of a key.

    Attributes:
        how: What happened.
        place: Where; the field is empty when a whole entry came or went.
        words: The change as a sentence.
    """

    how: How
    place: Place
    words: str

    def __str__(self) -> str:
        return self.words


def changes(old: Key, new: Key) -> tuple[Change, ...]:
    """What changed from `old` to `new`, in the order key, taxa, characters, scores, rest.

    The scores of a taxon or a character that came or went are not told one by one.
    """
    before, after = pieces(old), pieces(new)
    went, came = entries(before), entries(after)
    found = [_entry(How.REMOVED, place, old, new) for place in went - came]
    found += [_entry(How.ADDED, place, new, old) for place in came - went]
    for place in {*before, *after}:
        told = owners(place)
        if before.get(place) == after.get(place) or told & (went ^ came) or is_order(place):
            continue
        found.append(_piece(place, before, after, (new, old)))
    found += _orders(before, after)
    rank = list(Part)
    return tuple(sorted(found, key=lambda c: (rank.index(c.place.part), c.place)))


def _entry(how: How, place: Place, has: Key, other: Key) -> Change:
    count = ""
    if place.part in (Part.TAXON, Part.CHARACTER):
        number = sum(place.id in (s.taxon, s.character) for s in has.scores)
        count = f" with {number} score{'' if number == 1 else 's'}"
    words = f"{entry_words(place.part, place.id, has, other)}{count} was {how}."
    return Change(how=how, place=place, words=sentence(words))


def _piece(
    place: Place, before: Mapping[Place, Any], after: Mapping[Place, Any], keys: tuple[Key, Key]
) -> Change:
    what = place_words(place, *keys)
    old = value_words(place, before.get(place), *keys)
    new = value_words(place, after.get(place), *keys)
    if place not in before:
        how, words = How.ADDED, f"filled in {what}: {new}."
    elif place not in after:
        how, words = How.REMOVED, f"emptied {what}; there was {old}."
    else:
        how, words = How.CHANGED, f"{what} changed from {old} to {new}."
    return Change(how=how, place=place, words=sentence(words))


def _orders(before: Mapping[Place, Any], after: Mapping[Place, Any]) -> Iterator[Change]:
    for part in LISTS:
        if part is Part.SOURCE:  # nobody reads them in order
            continue
        place = Place(part, "", ORDER)
        old, new = before.get(place, ()), after.get(place, ())
        if [own for own in old if own in new] != [own for own in new if own in old]:
            words = sentence(f"{place_words(place)} changed.")
            yield Change(how=How.CHANGED, place=place, words=words)


class Step(StrEnum):
    """Which part of a semantic version must grow."""

    MAJOR = "major"
    MINOR = "minor"
    PATCH = "patch"
    NONE = "none"


def step(found: tuple[Change, ...]) -> Step:
    """How much the version of a key must grow for these changes.

    Major: something that an older case may point to is gone. Minor: a verdict may change.
    Patch: words and references only.
    """
    if not found:
        return Step.NONE
    gone = (Part.TAXON, Part.CHARACTER, Part.LABEL)
    for change in found:
        entry = not change.place.field and change.place.part in gone
        if (entry and change.how is How.REMOVED) or _states_changed(change):
            return Step.MAJOR
    weighty = (Part.SCORE, Part.TAXON, Part.CHARACTER, Part.LABEL, Part.COUPLET)
    return Step.MINOR if any(c.place.part in weighty for c in found) else Step.PATCH


def _states_changed(change: Change) -> bool:
    return change.place.part is Part.CHARACTER and change.place.field == "kind"


def next_version(version: str, found: tuple[Change, ...]) -> str:
    """The version after `version` for these changes; the same one without any.

    Source: Semantic Versioning 2.0.0, items 6 to 8.
    """
    numbers = re.match(r"(\d+)\.(\d+)\.(\d+)", version)
    if numbers is None or step(found) is Step.NONE:
        return version
    major, minor, patch = (int(number) for number in numbers.groups())
    return {
        Step.MAJOR: f"{major + 1}.0.0",
        Step.MINOR: f"{major}.{minor + 1}.0",
        Step.PATCH: f"{major}.{minor}.{patch + 1}",
    }[step(found)]
