"""Growing a key from divisions: nodes, ends and what they cost."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from idkey.engine.entropy import entropy_bits, surprise_bits
from idkey.engine.splits import Splits

Rows = NDArray[np.intp]
Weights = NDArray[np.float64]

GAIN = 1e-3
"""Bits per effort below which a division separates nothing."""

DIGITS = 9
"""Decimals to which gains and efforts are compared: what differs by less differs by rounding,
which another processor does otherwise."""

TIE = 10.0**-DIGITS
"""The same as a number."""


@dataclass(frozen=True, slots=True)
class Leaf:
    """Taxa that come out together, with the weight each arrives with."""

    rows: tuple[int, ...]
    weights: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Node:
    """A division, and what follows on each branch that some taxon takes."""

    division: int
    branches: tuple[tuple[int, "Node | Leaf"], ...]


Tree = Node | Leaf


def pruned(tree: Tree) -> Tree:
    """The tree without divisions on whose every branch the same taxa come out together.

    They make a name likelier and rule none out, which a printed key cannot say.
    """
    if isinstance(tree, Leaf):
        return tree
    below = tuple((branch, pruned(part)) for branch, part in tree.branches)
    ends = [part for _, part in below if isinstance(part, Leaf)]
    if len(ends) < len(below) or len({end.rows for end in ends}) > 1:
        return Node(tree.division, below)
    weights = zip(*(end.weights for end in ends), strict=True)
    return Leaf(ends[0].rows, tuple(map(sum, weights)))


@dataclass(frozen=True, slots=True)
class Pool:
    """Taxa on their way through a key, with weights, and the characters already asked."""

    rows: Rows
    weights: Weights
    asked: frozenset[int] = frozenset()

    @property
    def weight(self) -> float:
        """Weight of all of them."""
        return float(self.weights.sum())

    def leaf(self) -> Leaf:
        """The end at which they come out together."""
        return Leaf(tuple(self.rows.tolist()), tuple(self.weights.tolist()))


class Ground:
    """Divisions prepared for growing: entropies and doubtful cells, computed once.

    Args:
        splits: The divisions.
    """

    def __init__(self, splits: Splits) -> None:
        self.splits = splits
        self._share = splits.share.astype(float)
        self.spread = np.add.reduceat(surprise_bits(self._share), splits.starts, axis=1)
        self.fuzzy = (self.spread > 1e-6) | ~splits.known
        self._known = splits.known.astype(float)
        self.clean = not self.fuzzy.any()
        self._lacks = bool(splits.lacking.any())

    def worth(self, pool: Pool) -> Weights:
        """Bits each division gains per effort; zero where asking again would prove nothing.

        Unscored taxa gain nothing: they go down every branch. Nor does what one of the taxa has
        no part for: nobody could answer it. Rounded, so that equally good divisions are equal
        on every processor, and the first of them is taken.
        """
        gained = np.round(self._worth(pool), DIGITS)
        if self._lacks:
            gained[self.splits.lacking[pool.rows].any(axis=0)] = 0.0
        return gained

    def _worth(self, pool: Pool) -> Weights:
        weight = pool.weights / pool.weight
        whole = len(pool.rows) == len(self.spread)
        table = self._share if whole else self._share[pool.rows]
        if self.clean:
            ahead = np.add.reduceat(surprise_bits(weight @ table), self.splits.starts)
            return np.asarray(ahead / self.splits.effort, dtype=float)
        spread = self.spread if whole else self.spread[pool.rows]
        known = self._known if whole else self._known[pool.rows]
        ahead = np.add.reduceat(surprise_bits(weight @ table), self.splits.starts)
        ahead -= surprise_bits(weight @ known)
        gain = np.maximum(ahead - weight @ spread, 0.0).astype(float)
        for character in pool.asked:
            same = np.flatnonzero(self.splits.character == character)
            if self.fuzzy[np.ix_(pool.rows, same)].any():
                gain[same] = 0.0
        return np.asarray(gain / self.splits.effort)

    def copies(self, pool: Pool) -> Weights:
        """On how many branches of each division a taxon of `pool` goes on, on average."""
        splits = self.splits
        goes = splits.share[pool.rows] > 0
        widths = np.diff([*splits.starts, len(splits.sees)])
        lost = np.repeat(~splits.known[pool.rows], widths, axis=1) & goes.any(axis=0)
        number = np.add.reduceat((goes | lost).sum(axis=0), splits.starts)
        return np.asarray(np.maximum(number / len(pool.rows), 1.0))

    def divide(self, pool: Pool, division: int) -> list[tuple[int, Pool]]:
        """The branches of a division that some scored taxon takes, with the taxa on them."""
        place = self.splits.branches(division)
        flow = pool.weights[:, None] * self.splits.share[pool.rows, place]
        total = flow.sum(axis=0)
        lost = ~self.splits.known[pool.rows, division]
        flow[lost] = pool.weights[lost, None] * (total / total.sum())
        asked = pool.asked | {int(self.splits.character[division])}
        found = []
        for offset in range(flow.shape[1]):
            kept = flow[:, offset] > 0
            if kept.any():
                branch = Pool(pool.rows[kept], flow[kept, offset], asked)
                found.append((place.start + offset, branch))
        return found


@dataclass(frozen=True, slots=True, kw_only=True)
class Cost:
    """What a tree costs.

    Attributes:
        questions: Expected number of questions.
        effort: Expected effort.
        most_questions: Questions on the longest way.
        most_effort: Effort on the costliest way.
        bound: Entropy of the weights over log2 of the most leads: no key asks fewer on average
            (Shannon 1948; Huffman 1952 gives the best tree if any division were possible).
        leaves: Ends, counting a taxon as often as it comes out.
    """

    questions: float
    effort: float
    most_questions: int
    most_effort: float
    bound: float
    leaves: int


def cost(tree: Tree, splits: Splits, weights: Weights) -> Cost:
    """What `tree` costs for taxa with these weights, which sum to one."""
    questions = effort = 0.0
    deepest, dearest, leaves, widest = 0, 0.0, 0, 2
    todo: list[tuple[Tree, int, float]] = [(tree, 0, 0.0)]
    while todo:
        here, depth, spent = todo.pop()
        if isinstance(here, Leaf):
            share = sum(here.weights)
            questions += share * depth
            effort += share * spent
            deepest, dearest = max(deepest, depth), max(dearest, spent)
            leaves += len(here.rows)
            continue
        widest = max(widest, len(here.branches))
        price = float(splits.effort[here.division])
        todo += [(below, depth + 1, spent + price) for _, below in here.branches]
    bound = entropy_bits(weights) / float(np.log2(widest))
    return Cost(
        questions=questions,
        effort=effort,
        most_questions=deepest,
        most_effort=dearest,
        bound=bound,
        leaves=leaves,
    )


def leaves(tree: Tree) -> list[Leaf]:
    """The ends of a tree."""
    if isinstance(tree, Leaf):
        return [tree]
    return [leaf for _, below in tree.branches for leaf in leaves(below)]
