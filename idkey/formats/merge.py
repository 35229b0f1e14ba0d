"""How two people's edits of one key join, score by score."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from idkey.formats.piece_words import entry_words, place_words, sentence, value_words
from idkey.formats.pieces import Place, entries, is_order, joined, owners, pieces
from idkey.formats.plain import canonical
from idkey.formats.whole import whole
from idkey.model.key import Key


class Side(StrEnum):
    """Whose edit."""

    MINE = "mine"
    THEIRS = "theirs"


@dataclass(frozen=True, slots=True, kw_only=True)
class Clash:
    """A piece that two people changed in different ways.

    Attributes:
        place: Where; the field is empty when one removed an entry that the other changed.
        words: What clashes, as a sentence.
        base: The value before both edits, in words.
        mine: My value, in words.
        theirs: Their value, in words.
        taken: Whose value the merged key has.
    """

    place: Place
    words: str
    base: str
    mine: str
    theirs: str
    taken: Side = field(default=Side.MINE)


def merge(
    base: Key, mine: Key, theirs: Key, choices: Mapping[Place, Side] | None = None
) -> tuple[Key, tuple[Clash, ...]]:
    """Join two people's edits of one key, score by score and field by field.

    Where both changed the same piece differently, mine is taken and the clash is told; where
    one removed an entry that the other changed, the entry stays. The result may hold references
    to entries that the other person removed: check it before it is saved.

    Args:
        base: The key that both started from.
        mine: My key.
        theirs: Their key.
        choices: Side per place of a clash that a person has decided; it is then no clash.

    Returns:
        The merged key without digest, and the clashes left, in the order of their places.
    """
    return _Merge(base, mine, theirs, choices or {}).result()


class _Merge:
    def __init__(self, base: Key, mine: Key, theirs: Key, choices: Mapping[Place, Side]) -> None:
        self._keys = (mine, theirs, base)
        self._base, self._mine, self._theirs = pieces(base), pieces(mine), pieces(theirs)
        self._choices = choices
        self._clashes: list[Clash] = []

    def result(self) -> tuple[Key, tuple[Clash, ...]]:
        removed = self._removed()
        merged: dict[Place, Any] = {}
        for place in {**self._mine, **self._theirs}:
            if owners(place) & removed:
                continue
            if is_order(place):
                merged[place] = self._order(place)
                continue
            value = self._value(place)
            if value is not None:
                merged[place] = value
        key = canonical(whole(joined(merged)))
        return key, tuple(sorted(self._clashes, key=lambda clash: clash.place))

    def _removed(self) -> set[Place]:
        """Entries that one person removed and the other left as they were, or removed too."""
        before = entries(self._base)
        kept_mine, kept_theirs = entries(self._mine), entries(self._theirs)
        gone: set[Place] = set()
        for place in sorted(before - (kept_mine & kept_theirs)):
            here, there = place in kept_mine, place in kept_theirs
            if not here and not there:
                gone.add(place)
                continue
            edited = self._edited(place, self._mine if here else self._theirs)
            keeper, remover = (Side.MINE, Side.THEIRS) if here else (Side.THEIRS, Side.MINE)
            choice = self._choices.get(place, keeper if edited else remover)
            if choice is remover:
                gone.add(place)
            elif place not in self._choices:
                self._tell_removed(place, keeper)
        return gone

    def _edited(self, entry: Place, edition: Mapping[Place, Any]) -> bool:
        places = {p for p in {*self._base, *edition} if entry in owners(p)}
        return any(self._base.get(p) != edition.get(p) for p in places)

    def _tell_removed(self, place: Place, keeper: Side) -> None:
        what = sentence(entry_words(place.part, place.id, *self._keys))
        here = keeper is Side.MINE
        self._clashes.append(
            Clash(
                place=place,
                words=f"{what} was removed on one side and changed on the other.",
                base="as it was",
                mine="changed" if here else "removed",
                theirs="removed" if here else "changed",
                taken=keeper,
            )
        )

    def _value(self, place: Place) -> Any:
        base, mine, theirs = (found.get(place) for found in (self._base, self._mine, self._theirs))
        if mine == theirs or theirs == base:
            return mine if not self._entry_gone(place, self._mine) else theirs
        if mine == base or self._entry_gone(place, self._mine):
            return theirs if not self._entry_gone(place, self._theirs) else mine
        if self._entry_gone(place, self._theirs):
            return mine
        if place in self._choices:
            return theirs if self._choices[place] is Side.THEIRS else mine
        self._clashes.append(
            Clash(
                place=place,
                words=sentence(f"{place_words(place, *self._keys)} was changed on both sides."),
                base=value_words(place, base, *self._keys),
                mine=value_words(place, mine, *self._keys),
                theirs=value_words(place, theirs, *self._keys),
            )
        )
        return mine

    def _entry_gone(self, place: Place, edition: Mapping[Place, Any]) -> bool:
        """Whether a piece is missing there only because its whole entry is."""
        if not place.id or place in edition:
            return False
        return any(Place(o.part, o.id, "id") not in edition for o in owners(place))

    def _order(self, place: Place) -> list[str]:
        """Mine, unless only they changed it; what the other added comes after its neighbour."""
        base, mine, theirs = (
            list(found.get(place, ())) for found in (self._base, self._mine, self._theirs)
        )
        first, second = (theirs, mine) if _kept(mine, base) == _kept(base, mine) else (mine, theirs)
        order = list(first)
        for index, own in enumerate(second):
            if own not in order:
                before = next((o for o in reversed(second[:index]) if o in order), None)
                order.insert(0 if before is None else order.index(before) + 1, own)
        return order


def _kept(order: list[str], other: list[str]) -> list[str]:
    return [own for own in order if own in other]
