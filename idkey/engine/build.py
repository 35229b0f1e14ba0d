"""Couplets from the matrix, for the least expected effort and whatever else their author wants."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from idkey.engine.couplet_cost import couplet_cost
from idkey.engine.couplets import couplet_count, couplets_of
from idkey.engine.danger_first import DangerFirst
from idkey.engine.grower import AHEAD_KEY, Grower, Tick, effort_of, grow, silent, whole_pool
from idkey.engine.matrix import Matrix
from idkey.engine.opening import Below, kept, spliced, stubs
from idkey.engine.splits import splits
from idkey.engine.tree import Cost, Ground, Pool, Tree, Weights, cost, leaves, pruned
from idkey.engine.walk import reachable
from idkey.model.couplet import Couplet

THRIFTS = (1.0, 2.0)
"""How much divisions are shunned that send taxa down several branches; each is tried."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Built:
    """A built key.

    Attributes:
        couplets: The couplets; the first is the start.
        cost: What it costs.
        exact: Whether no key from these divisions costs less effort.
        together: Sets of taxa that come out together because nothing separates them.
        missing: Taxa that no couplet leads to, because the kept opening leaves them out.
    """

    couplets: tuple[Couplet, ...]
    cost: Cost
    exact: bool
    together: tuple[tuple[str, ...], ...]
    missing: tuple[str, ...] = ()


def build(
    matrix: Matrix,
    weights: Mapping[str, float] | None = None,
    *,
    many_leads: bool = True,
    first: Sequence[str] = (),
    short: bool = False,
    danger_first: bool = False,
    keep: int = 0,
    tick: Tick = silent,
) -> Built:
    """Couplets that lead each taxon of the key to itself with the least expected effort.

    Args:
        matrix: The compiled key.
        weights: How often each taxon comes in; None is equally often.
        many_leads: One lead per state, or two leads each.
        first: Character ids to ask first, in this order, where they divide anything.
        short: Whether few couplets are wanted rather than little effort.
        danger_first: Whether medically significant taxa are told from the rest before
            anything else, and by nothing that means handling while one is still possible.
        keep: How many of the couplets the key has are kept as its opening, in their order.
        tick: Called now and then with (0, 1); is where a stop is heard.

    Raises:
        ValueError: No character can be used.
    """
    share = shares(matrix, weights)
    ground = Ground(splits(matrix, many_leads=many_leads))
    opening = tuple(matrix.number[character] for character in first)
    danger = DangerFirst(matrix, ground) if danger_first else None
    field = Field(matrix, ground, danger, short=short, tick=tick)
    if keep and matrix.key.couplets:
        return _below_opening(field, share, keep)
    if short or danger is not None:
        return _whole(field, share, field.tree(whole_pool(share), opening), exact=False)
    tree, exact = grow(ground.splits, share, opening, tick=tick)
    return _whole(field, share, pruned(tree), exact=exact)


def shares(matrix: Matrix, weights: Mapping[str, float] | None) -> Weights:
    """Share of each taxon, shape (taxa,), summing to one; None is equal shares."""
    share = np.array([weights.get(t, 0.0) if weights else 1.0 for t in matrix.taxa])
    share = np.maximum(share, 1e-9)
    return np.asarray(share / share.sum())


class Field:
    """Grows several trees over the same taxa and keeps the one that suits the aim.

    Args:
        matrix: The compiled key.
        ground: Its divisions.
        danger: Tells dangerous taxa from the rest first; None does not.
        short: Whether few couplets are wanted rather than little effort.
        tick: Called now and then with (0, 1); is where a stop is heard.
    """

    def __init__(
        self,
        matrix: Matrix,
        ground: Ground,
        danger: DangerFirst | None,
        *,
        short: bool,
        tick: Tick,
    ) -> None:
        self.matrix = matrix
        self.ground = ground
        self._short = short
        self._growers = [
            Grower(ground, thrift=thrift, danger=danger, tick=tick) for thrift in THRIFTS
        ]
        if not short and len(matrix.taxa) <= AHEAD_KEY:
            self._growers.append(Grower(ground, danger=danger, tick=tick))
        self._growers.append(Grower(ground, plain=True, danger=danger, tick=tick))

    def tree(self, pool: Pool, first: tuple[int, ...] = ()) -> Tree:
        """The tree over `pool` that suits the aim best."""
        grown = [pruned(grower.tree(pool, first)) for grower in self._growers]
        return min(grown, key=self._length if self._short else self._effort)

    def _effort(self, tree: Tree) -> float:
        return effort_of(tree, self.ground)

    def _length(self, tree: Tree) -> tuple[int, float]:
        return couplet_count(tree), self._effort(tree)


def _whole(field: Field, share: Weights, tree: Tree, *, exact: bool) -> Built:
    """A tree over all taxa as a built key."""
    matrix, ways = field.matrix, field.ground.splits
    sets = {leaf.rows for leaf in leaves(tree) if len(leaf.rows) > 1}
    return Built(
        couplets=couplets_of(tree, ways, matrix.key),
        cost=cost(tree, ways, share),
        exact=exact,
        together=tuple(tuple(matrix.taxa[row] for row in rows) for rows in sorted(sets)),
    )


def _below_opening(field: Field, share: Weights, keep: int) -> Built:
    """Couplets grown below each way out of the opening that the author keeps."""
    matrix, ways = field.matrix, field.ground.splits
    opening = kept(matrix.key.couplets, keep)
    taken = {couplet.id for couplet in opening}
    grown: dict[str, Below] = {}
    for stub in stubs(matrix, opening, share):
        tree = field.tree(Pool(stub.rows, stub.weights, stub.asked))
        below = couplets_of(tree, ways, matrix.key, taken=taken)
        taken |= {couplet.id for couplet in below}
        grown[stub.to] = Below(tree, below)
    couplets = spliced(matrix.key, opening, grown)
    ends = {lead.taxa for couplet in couplets for lead in couplet.leads if len(lead.taxa) > 1}
    reached = reachable(couplets)[couplets[0].id]
    return Built(
        couplets=couplets,
        cost=couplet_cost(matrix, couplets, share),
        exact=False,
        together=tuple(sorted(ends)),
        missing=tuple(taxon for taxon in matrix.taxa if taxon not in reached),
    )
