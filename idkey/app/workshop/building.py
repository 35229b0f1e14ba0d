"""What is asked of a builder of couplets, and how its key compares with the written one."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum

from idkey.app.parts.jobs import Tick
from idkey.drill.deck import shop_shares
from idkey.engine.build import Built, build, shares
from idkey.engine.compile import compile_key
from idkey.engine.couplet_cost import couplet_cost, named_share
from idkey.engine.matrix import Matrix
from idkey.engine.tree import Cost, Weights
from idkey.engine.walk import reachable
from idkey.errors import IdKeyError
from idkey.model.couplet import Couplet
from idkey.model.key import Key
from idkey.store.book import Store


class Goal(StrEnum):
    """What the couplets are built for."""

    EFFORT = "effort"
    SHORT = "short"


@dataclass(frozen=True, slots=True, kw_only=True)
class BuildWish:
    """What is asked of the builder.

    Attributes:
        goal: What the couplets are built for.
        two_leads: Whether each couplet has two leads, or one per state.
        danger_first: Whether dangerous taxa are told from the rest first.
        keep: How many of the written couplets are kept as the opening.
        as_seen: Whether taxa count as often as labels and recorded cases say they come in.
    """

    goal: Goal = Goal.EFFORT
    two_leads: bool = False
    danger_first: bool = False
    keep: int = 0
    as_seen: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """What some couplets cost, and how far they lead.

    Attributes:
        couplets: How many there are.
        cost: What it costs to walk them.
        named: Share of the animals that come out under one name.
        missing: Taxa none of them leads to.
        together: Ends with more than one taxon.
    """

    couplets: int
    cost: Cost
    named: float
    missing: tuple[str, ...]
    together: int


@dataclass(frozen=True, slots=True, kw_only=True)
class BuildResult:
    """Built couplets beside the written ones.

    Attributes:
        key: The key they were built from.
        couplets: The couplets.
        built: What they cost.
        written: What the written ones cost; None when the key has none.
        exact: Whether no key from these scores takes less effort.
    """

    key: Key
    couplets: tuple[Couplet, ...]
    built: Measured
    written: Measured | None
    exact: bool

    def fits(self, key: Key) -> bool:
        """Whether `key` still says what they were built from."""
        same = (self.key.taxa, self.key.characters, self.key.scores)
        return same == (key.taxa, key.characters, key.scores)


def built(key: Key, wish: BuildWish, store: Store | None, tick: Tick) -> BuildResult:
    """Build couplets and compare them with the written ones; on a pool thread.

    Args:
        key: The key; it has no errors.
        wish: What is asked.
        store: The record book, for how often taxa come in.
        tick: Is where a stop is heard.

    Raises:
        IdKeyError: No character can be used, or there is nothing to tell apart.
    """
    matrix = compile_key(key)
    seen = seen_shares(key, store) if wish.as_seen else None
    found = _built(matrix, wish, seen, tick)
    share = shares(matrix, seen)
    return BuildResult(
        key=key,
        couplets=found.couplets,
        built=measured(matrix, found.couplets, share),
        written=measured(matrix, key.couplets, share) if key.couplets else None,
        exact=found.exact,
    )


def _built(matrix: Matrix, wish: BuildWish, seen: Mapping[str, float] | None, tick: Tick) -> Built:
    try:
        found = build(
            matrix,
            seen,
            many_leads=not wish.two_leads,
            short=wish.goal is Goal.SHORT,
            danger_first=wish.danger_first,
            keep=wish.keep,
            tick=tick,
        )
    except ValueError as err:
        raise IdKeyError(
            "No character of this key can be used in couplets.",
            "Score characters that can be seen on a live animal, then build again.",
        ) from err
    if not found.couplets:
        raise IdKeyError(
            "The scores tell no two taxa apart, so there is nothing to build.",
            "Score characters that differ between the taxa, then build again.",
        )
    return found


def seen_shares(key: Key, store: Store | None) -> Mapping[str, float]:
    """Share of each taxon among the animals that come in, by label rates and recorded cases."""
    outcomes = (
        {label.id: store.outcomes(label.id, key=key.id) for label in key.labels} if store else {}
    )
    return shop_shares(key, outcomes)


def measured(matrix: Matrix, couplets: tuple[Couplet, ...], share: Weights) -> Measured:
    """What couplets cost for taxa with these shares, and how far they lead."""
    reached = reachable(couplets)[couplets[0].id]
    ends = [lead.taxa for couplet in couplets for lead in couplet.leads if len(lead.taxa) > 1]
    return Measured(
        couplets=len(couplets),
        cost=couplet_cost(matrix, couplets, share),
        named=named_share(matrix, couplets, share),
        missing=tuple(taxon for taxon in matrix.taxa if taxon not in reached),
        together=len(ends),
    )


def with_built(key: Key, found: BuildResult) -> Key:
    """The key with the built couplets in place of the written ones."""
    return replace(key, couplets=found.couplets, digest="")
