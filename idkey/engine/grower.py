"""Grows a tree from divisions, for the least expected effort.

Exact by search over weighted sets with pruning up to `EXACT` taxa; above, look-ahead greedy: the
few divisions that gain most per effort are tried one step further where that is affordable.
"""

from collections.abc import Callable, Sequence

import numpy as np

from idkey.engine.danger_first import DangerFirst
from idkey.engine.entropy import entropy_bits, huffman_length
from idkey.engine.splits import Splits
from idkey.engine.tree import DIGITS, GAIN, TIE, Ground, Leaf, Node, Pool, Tree, Weights

Tick = Callable[[int, int], None]

EXACT = 15
"""Most taxa in a set for the exact search."""

EXACT_KEY = 60
"""Most taxa in the whole key for it to be worth its time in parts."""

MESSY = 6
"""The same where some cells are polymorphic or unscored, which multiplies the sets."""

MESSY_STEPS = 2_500
"""The same where cells are polymorphic or unscored: a step costs more and gains less."""

STEPS = 20_000
"""Divisions the exact search may try in all before the rest settles for look-ahead."""

AHEAD = 5
"""Divisions tried one step further."""

ROLLED = 2
"""Depth to which, in such a key, each likely division is tried to the very end."""

POOL_STEPS = 1_500
"""Divisions the exact search may try for one set."""

AHEAD_KEY = 300
"""Most taxa in the whole key for which a step ahead is affordable."""

DEEPEST = 60
"""No key is deeper; further taxa come out together."""

RARE = 0.05
"""Share of one taxon's weight below which a way is too rare to be divided further; its taxa
come out together. Keeps polymorphic and unscored taxa from blowing a key up."""


def silent(_: int, __: int) -> None:
    """Nobody waits."""


def grow(
    ways: Splits, weights: Weights, first: Sequence[int] = (), *, tick: Tick = silent
) -> tuple[Tree, bool]:
    """The tree with the least expected effort that the search finds.

    Args:
        ways: The divisions.
        weights: Weight per taxon, shape (taxa,); sums to one.
        first: Character numbers to ask first.
        tick: Called now and then with (0, 1); is where a stop is heard.

    Returns:
        The tree, and whether it is proved to be the best.
    """
    ground = Ground(ways)
    pool = whole_pool(weights)
    if first:
        return Grower(ground, tick=tick).tree(pool, tuple(first)), False
    plain = Grower(ground, plain=True, tick=tick).tree(pool)
    leads = int(np.diff([*ways.starts, len(ways.sees)]).max())
    least = huffman_length(pool.weights, leads) * float(ways.effort.min())
    best = effort_of(plain, ground) <= least + 1e-9
    if best or len(weights) > AHEAD_KEY:
        return plain, best
    search = Grower(ground, tick=tick)
    found = search.tree(pool)
    if search.exact:
        return found, True
    thrifty = [] if ground.clean else [Grower(ground, thrift=1.0, tick=tick).tree(pool)]
    return min([found, plain, *thrifty], key=lambda tree: effort_of(tree, ground)), False


def whole_pool(weights: Weights) -> Pool:
    """All taxa at the start, with their weights."""
    return Pool(np.arange(len(weights), dtype=np.intp), np.asarray(weights, dtype=float))


class Grower:
    """Grows a tree; `exact` turns False once a part of it is not proved.

    Args:
        ground: The divisions.
        plain: Whether to take the best gain per effort at each step, without looking further.
        thrift: How much a division is shunned that sends taxa down several branches, which
            makes a key long; 0 does not care, 1 weighs it like effort.
        danger: Tells dangerous taxa from the rest before anything else; None does not.
        tick: Called now and then with (0, 1); is where a stop is heard.
    """

    def __init__(
        self,
        ground: Ground,
        *,
        plain: bool = False,
        thrift: float = 0.0,
        danger: DangerFirst | None = None,
        tick: Tick = silent,
    ) -> None:
        self.ground = ground
        self._plain = plain or bool(thrift)
        self._thrift = thrift
        self._danger = danger
        self._tick = tick
        self.exact = True
        self.rare = RARE / len(ground.spread)
        self._total = STEPS if ground.clean else MESSY_STEPS
        self._left = POOL_STEPS
        self._known: dict[tuple[object, ...], tuple[float, int]] = {}
        leads = np.diff([*ground.splits.starts, len(ground.splits.sees)])
        self._best_rate = float((np.log2(leads) / ground.splits.effort).max())

    def tree(self, pool: Pool, first: tuple[int, ...] = (), depth: int = 0) -> Tree:
        """The tree over `pool`; `first` are characters to ask before choosing freely."""
        self._tick(0, 1)
        if len(pool.rows) == 1 or depth >= DEEPEST or pool.weight < self.rare:
            return pool.leaf()
        worth = self.ground.worth(pool)
        division, rest = self._opening(worth, first)
        if division is None:
            if worth.max() <= GAIN:
                return pool.leaf()
            division = self._danger_first(pool, worth)
        if division is None:
            division = self._choice(pool, worth, depth)
        branches = self.ground.divide(pool, division)
        below = tuple((branch, self.tree(part, rest, depth + 1)) for branch, part in branches)
        return Node(division, below)

    def _opening(
        self, worth: Weights, first: tuple[int, ...]
    ) -> tuple[int | None, tuple[int, ...]]:
        """The best division by the next prescribed character that divides anything."""
        for place, character in enumerate(first):
            own = np.flatnonzero(self.ground.splits.character == character)
            if len(own) and worth[own].max() > GAIN:
                self.exact = False
                return int(own[np.argmax(worth[own])]), first[place + 1 :]
        return None, ()

    def _danger_first(self, pool: Pool, worth: Weights) -> int | None:
        """The division that danger asks for, or None where it leaves the choice free."""
        if self._danger is None:
            return None
        safe = self._danger.without_handling(pool, worth)
        division = self._danger.division(pool, safe)
        if division is None and safe is not worth:
            division = self._ahead(pool, safe)
        if division is not None:
            self.exact = False
        return division

    def _choice(self, pool: Pool, worth: Weights, depth: int) -> int:
        taxa = len(self.ground.spread)
        if self._thrift:
            worth = worth / self.ground.copies(pool) ** self._thrift
        if self._plain or len(pool.rows) == 2:
            return int(np.argmax(worth))
        if taxa <= EXACT_KEY:
            messy = bool(self.ground.fuzzy[pool.rows].any())
            if len(pool.rows) <= (MESSY if messy else EXACT):
                found = self._exactly(pool, worth)
                if found is not None:
                    return found
            if not messy and depth < ROLLED:
                self.exact = False
                return self._rolled(pool, worth, depth)
        self.exact = False
        return self._ahead(pool, worth)

    def _rolled(self, pool: Pool, worth: Weights, depth: int) -> int:
        """The best of the likeliest divisions when each is grown to the end."""

        def total(division: int) -> float:
            own = float(self.ground.splits.effort[division]) * pool.weight
            parts = [part for _, part in self.ground.divide(pool, division)]
            below = sum(effort_of(self.tree(p, (), depth + 1), self.ground) for p in parts)
            return round(own + below, DIGITS)

        return min(self._likeliest(worth), key=total)

    def _likeliest(self, worth: Weights) -> list[int]:
        ranked = np.argsort(-worth, kind="stable")[:AHEAD]
        return [int(d) for d in ranked if worth[d] > GAIN]

    def _ahead(self, pool: Pool, worth: Weights) -> int:
        return min(self._likeliest(worth), key=lambda d: self._one_step(pool, d))

    def _one_step(self, pool: Pool, division: int) -> float:
        """Effort of a division and a guess at what is left after it."""
        total = float(self.ground.splits.effort[division]) * pool.weight
        for _, part in self.ground.divide(pool, division):
            if len(part.rows) > 1:
                total += self._guess(part)
        return round(total, DIGITS)

    def _guess(self, pool: Pool) -> float:
        """Bits left over the best rate to be had at once."""
        left = entropy_bits(pool.weights / pool.weight)
        return pool.weight * left / max(float(self.ground.worth(pool).max()), GAIN)

    def _exactly(self, pool: Pool, worth: Weights) -> int | None:
        """The best division, or None when the search had to give up."""
        if self._total <= 0:
            return None
        self._left = POOL_STEPS
        _, division = self._least(pool, worth, np.inf)
        self._total -= POOL_STEPS - self._left
        return division if division >= 0 and self._left > 0 else None

    def _least(self, pool: Pool, worth: Weights, limit: float) -> tuple[float, int]:
        """Least effort to finish `pool`, and the division that gives it (-1 is none)."""
        if pool.weight < self.rare:
            return 0.0, -1
        name = _name(pool)
        if name in self._known:
            return self._known[name]
        best, chosen = np.inf, -1
        floors = self._floors(pool, worth)
        for division in np.argsort(floors, kind="stable"):
            if self._left <= 0 or floors[division] >= min(best, limit) - TIE:
                break
            total = self._with(pool, int(division), min(best, limit))
            if total < best - TIE:
                best, chosen = total, int(division)
        if chosen < 0 and worth.max() <= GAIN:
            best = 0.0
        if best < limit and self._left > 0:
            self._known[name] = (best, chosen)
        return best, chosen

    def _with(self, pool: Pool, division: int, limit: float) -> float:
        """Effort with `division` first; infinite as soon as `limit` is passed."""
        self._left -= 1
        self._tick(0, 1)
        total = float(self.ground.splits.effort[division]) * pool.weight
        parts = [p for _, p in self.ground.divide(pool, division) if len(p.rows) > 1]
        floors = [self._floor(part) for part in parts]
        ahead = sum(floors)
        for part, floor in zip(parts, floors, strict=True):
            if total + ahead >= limit - TIE:
                return float(np.inf)
            ahead -= floor
            total += self._least(part, self.ground.worth(part), limit - total - ahead)[0]
        return total

    def _floors(self, pool: Pool, worth: Weights) -> Weights:
        """No tree that starts with a division costs less; infinite where it divides nothing."""
        effort = self.ground.splits.effort
        left = entropy_bits(pool.weights / pool.weight) - worth * effort
        floors = pool.weight * (effort + np.maximum(left, 0.0) / self._best_rate)
        return np.where(worth > GAIN, np.round(floors, DIGITS), np.inf)

    def _floor(self, pool: Pool) -> float:
        """No tree over `pool` costs less: bits left over the best rate of any division."""
        if pool.asked and self.ground.worth(pool).max() <= GAIN:
            return 0.0
        return pool.weight * entropy_bits(pool.weights / pool.weight) / self._best_rate


def _name(pool: Pool) -> tuple[object, ...]:
    return (tuple(pool.rows.tolist()), tuple(np.round(pool.weights, 9)), pool.asked)


def effort_of(tree: Tree, ground: Ground) -> float:
    """Effort spent below the root of `tree`, weighted by how many come that way; rounded."""
    return round(_effort(tree, ground), DIGITS)


def _effort(tree: Tree, ground: Ground) -> float:
    if isinstance(tree, Leaf):
        return 0.0
    below = sum(_effort(part, ground) for _, part in tree.branches)
    return float(ground.splits.effort[tree.division]) * _weight(tree) + below


def _weight(tree: Tree) -> float:
    if isinstance(tree, Leaf):
        return sum(tree.weights)
    return sum(_weight(part) for _, part in tree.branches)
