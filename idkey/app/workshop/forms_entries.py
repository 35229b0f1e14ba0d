"""The entries of a key by kind: found, put in place, added, moved."""

import re
from collections.abc import Collection, Sequence
from dataclasses import replace
from enum import StrEnum
from typing import TypeVar
from unicodedata import combining, normalize

from idkey.formats.document import ID_PATTERN, LONGEST_ID
from idkey.model.character import Character
from idkey.model.check import Check
from idkey.model.couplet import Couplet
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.source import Source
from idkey.model.taxon import Taxon

T = TypeVar("T")

Entry = Character | Taxon | Label | Couplet | Source | Check


class EntryKind(StrEnum):
    """What an entry is; the value names its file and its field of the key."""

    CHARACTER = "characters"
    TAXON = "taxa"
    LABEL = "labels"
    COUPLET = "couplets"
    SOURCE = "sources"
    CHECK = "checks"


ORDERED = (EntryKind.CHARACTER, EntryKind.COUPLET)
"""Kinds whose order says something: how they are printed, and where one starts."""

_ID = re.compile(ID_PATTERN)


def entries(key: Key, kind: EntryKind) -> tuple[Entry, ...]:
    """All entries of a kind, in order."""
    found: tuple[Entry, ...] = getattr(key, kind.value)
    return found


def entry(key: Key, kind: EntryKind, name: str) -> Entry | None:
    """The entry with that id; None when there is none."""
    return next((one for one in entries(key, kind) if one.id == name), None)


def with_entries(key: Key, kind: EntryKind, found: tuple[Entry, ...]) -> Key:
    """The key with other entries of a kind."""
    fields: dict[str, tuple[Entry, ...]] = {kind.value: found}
    return replace(key, **fields)  # type: ignore[arg-type]  # the kind names the right field


def put(key: Key, kind: EntryKind, new: Entry) -> Key:
    """The key with `new` in place of the entry of the same id."""
    found = tuple(new if one.id == new.id else one for one in entries(key, kind))
    return with_entries(key, kind, found)


def added(key: Key, kind: EntryKind, new: Entry, after: str = "") -> Key:
    """The key with one more entry, after the one of that id, else at the end."""
    found = list(entries(key, kind))
    place = next((n + 1 for n, one in enumerate(found) if one.id == after), len(found))
    found.insert(place, new)
    return with_entries(key, kind, tuple(found))


def duplicated(key: Key, kind: EntryKind, name: str, new_id: str) -> Key:
    """The key with a copy of an entry behind it, and with its scores copied too."""
    old = entry(key, kind, name)
    if old is None:
        return key
    key = added(key, kind, replace(old, id=new_id), after=name)
    field = {EntryKind.CHARACTER: "character", EntryKind.TAXON: "taxon"}.get(kind)
    if field is None:
        return key
    copies = [
        replace(score, character=new_id) if field == "character" else replace(score, taxon=new_id)
        for score in key.scores
        if getattr(score, field) == name
    ]
    return replace(key, scores=(*key.scores, *copies))


def shifted(found: Sequence[T], here: int, steps: int) -> tuple[T, ...]:
    """The same things with one of them so many places further on; it stops at the ends."""
    rest = list(found)
    one = rest.pop(here)
    rest.insert(min(max(here + steps, 0), len(rest)), one)
    return tuple(rest)


def moved(key: Key, kind: EntryKind, name: str, steps: int) -> Key:
    """The key with an entry so many places further down; it stops at the ends."""
    found = entries(key, kind)
    here = next((n for n, one in enumerate(found) if one.id == name), None)
    return key if here is None else with_entries(key, kind, shifted(found, here, steps))


def is_id(text: str) -> bool:
    """Whether a text can be an id."""
    return bool(_ID.fullmatch(text)) and len(text) <= LONGEST_ID


def free_id(taken: Collection[str], wish: str) -> str:
    """An id like `wish` that nobody has.

    Args:
        taken: Ids in use.
        wish: Any text, such as a name.
    """
    if is_id(wish) and wish not in taken:
        return wish
    plain = wish if is_id(wish) else normalize("NFKD", wish.lower())
    plain = "".join(sign for sign in plain if not combining(sign))
    stem = re.sub(r"[^A-Za-z0-9.-]+", "_", plain).strip("_.")[: LONGEST_ID - 5] or "new"
    if stem not in taken:
        return stem
    plain = re.sub(r"_\d+$", "", stem)
    number = 2
    while f"{plain}_{number}" in taken:
        number += 1
    return f"{plain}_{number}"
