"""Where one entry of a key names another: counted, renamed, let go of, in one place."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from idkey.app.workshop.couplet_edit import Goals, with_goals
from idkey.app.workshop.forms_entries import EntryKind, entries, entry, with_entries
from idkey.model.character import Character
from idkey.model.check import Check
from idkey.model.couplet import Sees
from idkey.model.key import Key
from idkey.model.label import Label
from idkey.model.score import Score, Shows
from idkey.model.taxon import Taxon

Swap = Callable[[str], str | None]
"""The id that stands for an id; None lets go of it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Uses:
    """What names an entry.

    Attributes:
        scores: Number of scores.
        characters: Ids of characters.
        taxa: Ids of taxa.
        labels: Ids of labels.
        couplets: Ids of couplets.
        checks: Ids of checks.
    """

    scores: int = 0
    characters: tuple[str, ...] = ()
    taxa: tuple[str, ...] = ()
    labels: tuple[str, ...] = ()
    couplets: tuple[str, ...] = ()
    checks: tuple[str, ...] = ()

    @property
    def any(self) -> bool:
        """Whether anything names it."""
        return self != Uses()


def renamed(key: Key, kind: EntryKind, old: str, new: str) -> Key:
    """The key with another id for an entry, and with everything that names it following."""
    key = with_references(key, kind, lambda name: new if name == old else name)
    found = tuple(replace(e, id=new) if e.id == old else e for e in entries(key, kind))
    return with_entries(key, kind, found)


def removed(key: Key, kind: EntryKind, name: str) -> Key:
    """The key without an entry; what names it lets go of it, and its scores go."""
    if entry(key, kind, name) is None:
        return key
    key = with_references(key, kind, lambda one: None if one == name else one)
    return with_entries(key, kind, tuple(e for e in entries(key, kind) if e.id != name))


def uses(key: Key, kind: EntryKind, name: str) -> Uses:
    """What would change if an entry went."""
    return changes(key, with_references(key, kind, lambda one: None if one == name else one))


def changes(key: Key, other: Key) -> Uses:
    """What of `key` differs in `other`; scores are counted by how many are gone or new."""
    return Uses(
        scores=abs(len(key.scores) - len(other.scores)),
        characters=_differing(key.characters, other.characters),
        taxa=_differing(key.taxa, other.taxa),
        labels=_differing(key.labels, other.labels),
        couplets=_differing(key.couplets, other.couplets),
        checks=_differing(key.checks, other.checks),
    )


def _differing(ours: Iterable[object], others: Iterable[object]) -> tuple[str, ...]:
    there = {getattr(one, "id", ""): one for one in others}
    return tuple(
        str(one.id)  # type: ignore[attr-defined]  # every entry has an id
        for one in ours
        if there.get(one.id) != one  # type: ignore[attr-defined]
    )


def with_references(key: Key, kind: EntryKind, swap: Swap) -> Key:
    """The key with every reference to an entry of that kind swapped."""
    if kind is EntryKind.TAXON:
        return _with_taxa(key, swap)
    if kind is EntryKind.CHARACTER:
        return _with_characters(key, swap)
    if kind is EntryKind.SOURCE:
        return _with_sources(key, swap)
    if kind is EntryKind.COUPLET:
        return replace(key, couplets=with_goals(key.couplets, Goals(couplet=swap)))
    return key


def swapped(names: Iterable[str], swap: Swap) -> tuple[str, ...]:
    """The names that stand for some names, without those let go of and without repeats."""
    found = (swap(name) for name in names)
    return tuple(dict.fromkeys(name for name in found if name is not None))


def _with_taxa(key: Key, swap: Swap) -> Key:
    def label(one: Label) -> Label:
        rates = one.rates
        if rates is not None:
            shares = {
                new: share
                for name, share in rates.shares.items()
                if (new := swap(name)) is not None
            }
            rates = replace(rates, shares=shares) if shares else None
        covers, sold_as = swapped(one.covers, swap), swapped(one.sold_as, swap)
        return replace(one, covers=covers, sold_as=sold_as, rates=rates)

    def check(one: Check) -> Check:
        return replace(one, remain=swapped(one.remain, swap), exclude=swapped(one.exclude, swap))

    return replace(
        key,
        scores=_scores(key, "taxon", swap),
        labels=tuple(label(one) for one in key.labels),
        checks=tuple(check(one) for one in key.checks),
        couplets=with_goals(key.couplets, Goals(taxon=swap)),
    )


def _scores(key: Key, field: str, swap: Swap) -> tuple[Score, ...]:
    found = []
    for score in key.scores:
        old = score.taxon if field == "taxon" else score.character
        new = swap(old)
        if new == old:
            found.append(score)
        elif new is not None and field == "taxon":
            found.append(replace(score, taxon=new))
        elif new is not None:
            found.append(replace(score, character=new))
    return tuple(found)


def _with_characters(key: Key, swap: Swap) -> Key:
    def character(one: Character) -> Character:
        if one.requires is None:
            return one
        new = swap(one.requires.character)
        return replace(one, requires=replace(one.requires, character=new) if new else None)

    def sees(asked: tuple[Sees, ...]) -> tuple[Sees, ...]:
        return tuple(
            replace(one, character=new) for one in asked if (new := swap(one.character)) is not None
        )

    key = with_sees(key, sees)
    return replace(
        key,
        scores=_scores(key, "character", swap),
        characters=tuple(character(one) for one in key.characters),
        labels=tuple(replace(one, deciding=swapped(one.deciding, swap)) for one in key.labels),
    )


def with_sees(key: Key, sees: Callable[[tuple[Sees, ...]], tuple[Sees, ...]]) -> Key:
    """The key with what its leads and checks ask for put otherwise."""
    couplets = tuple(
        replace(one, leads=tuple(replace(lead, sees=sees(lead.sees)) for lead in one.leads))
        for one in key.couplets
    )
    checks = tuple(replace(one, sees=sees(one.sees)) for one in key.checks)
    return replace(key, couplets=couplets, checks=checks)


def _with_sources(key: Key, swap: Swap) -> Key:
    def taxon(one: Taxon) -> Taxon:
        return replace(
            one,
            sources=swapped(one.sources, swap),
            hazard=replace(one.hazard, sources=swapped(one.hazard.sources, swap)),
            permit=replace(one.permit, sources=swapped(one.permit.sources, swap)),
        )

    def label(one: Label) -> Label:
        rates = one.rates and replace(one.rates, sources=swapped(one.rates.sources, swap))
        return replace(one, sources=swapped(one.sources, swap), rates=rates)

    return replace(
        key,
        taxa=tuple(taxon(one) for one in key.taxa),
        labels=tuple(label(one) for one in key.labels),
        characters=tuple(replace(c, sources=swapped(c.sources, swap)) for c in key.characters),
        scores=tuple(
            score
            if (new := swapped(score.sources, swap)) == score.sources
            else replace(score, sources=new)
            for score in key.scores
        ),
        checks=tuple(replace(c, sources=swapped(c.sources, swap)) for c in key.checks),
    )


def with_states(key: Key, character: str, swap: Swap) -> Key:
    """The key with every mention of the states of a character swapped; its own list stays."""

    def score(one: Score) -> Score | None:
        if one.character != character or not isinstance(one.value, Shows):
            return one
        shown = {
            new: often
            for state, often in one.value.states.items()
            if (new := swap(state)) is not None
        }
        return replace(one, value=Shows(shown)) if shown else None

    def sees(asked: tuple[Sees, ...]) -> tuple[Sees, ...]:
        found = []
        for one in asked:
            if one.character != character or not one.states:
                found.append(one)
            elif states := swapped(one.states, swap):
                found.append(replace(one, states=states))
        return tuple(found)

    def required(one: Character) -> Character:
        if one.requires is None or one.requires.character != character:
            return one
        states = swapped(one.requires.states, swap)
        return replace(one, requires=replace(one.requires, states=states) if states else None)

    key = with_sees(key, sees)
    scores = tuple(new for one in key.scores if (new := score(one)) is not None)
    return replace(key, scores=scores, characters=tuple(required(c) for c in key.characters))
