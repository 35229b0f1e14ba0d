"""What couplets cost to walk, whoever wrote them, so that two keys can be compared."""

from collections.abc import Iterator, Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from idkey.engine.entropy import entropy_bits
from idkey.engine.gaps import Single
from idkey.engine.matrix import Matrix
from idkey.engine.splits import below_cuts, pure_shares, state_shares
from idkey.engine.tree import Cost, Weights
from idkey.engine.walk import reachable
from idkey.model.couplet import Couplet, Lead, Sees

FAINT = 0.02
"""Share of a taxon that a lead has to take to count as its way."""


def couplet_cost(matrix: Matrix, couplets: Sequence[Couplet], share: Weights) -> Cost:
    """What it costs to bring every taxon to its end.

    A couplet takes the effort of every character its leads speak of; one that speaks of none is
    a glance. A taxon goes down the leads its scores allow, in their shares, as far as those
    leads can end in it.

    Args:
        matrix: The compiled key.
        couplets: The couplets; the first is the start.
        share: Share per taxon, shape (taxa,); sums to one.

    Raises:
        networkx.NetworkXUnfeasible: The couplets lead in a circle.
    """
    arrived = arrivals(matrix, couplets, share)
    effort = {couplet.id: couplet_effort(matrix, couplet) for couplet in couplets}
    depth, spent = _longest(couplets, effort, arrived)
    widest = max(len(couplet.leads) for couplet in couplets)
    return Cost(
        questions=float(sum(weights.sum() for weights in arrived.values())),
        effort=float(sum(effort[c] * weights.sum() for c, weights in arrived.items())),
        most_questions=depth,
        most_effort=spent,
        bound=entropy_bits(share) / float(np.log2(widest)),
        leaves=sum(len(lead.taxa) for couplet in couplets for lead in couplet.leads),
    )


def named_share(matrix: Matrix, couplets: Sequence[Couplet], share: Weights) -> float:
    """Share of the animals that come out under one name; the rest ends among several or nowhere."""
    found = 0.0
    for couplet, _, flow in _flows(matrix, couplets, share):
        alone = [len(lead.taxa) == 1 for lead in couplet.leads]
        found += float(flow[:, alone].sum())
    return found


def couplet_effort(matrix: Matrix, couplet: Couplet) -> float:
    """Trouble of deciding a couplet: that of all its characters together."""
    named = dict.fromkeys(sees.character for lead in couplet.leads for sees in lead.sees)
    known = matrix.key.character
    return float(sum(known[name].least_effort for name in named if name in known)) or 1.0


def arrivals(
    matrix: Matrix, couplets: Sequence[Couplet], share: Weights
) -> dict[str, NDArray[np.float64]]:
    """How much of each taxon comes to each couplet, shape (taxa,) per couplet id."""
    return {couplet.id: arrived for couplet, arrived, _ in _flows(matrix, couplets, share)}


def _flows(
    matrix: Matrix, couplets: Sequence[Couplet], share: Weights
) -> Iterator[tuple[Couplet, NDArray[np.float64], NDArray[np.float64]]]:
    """Each couplet from the start down with how much of each taxon comes to it and down its leads.

    Shapes are (taxa,) and (taxa, leads).
    """
    below = reachable(tuple(couplets))
    pure = pure_shares(matrix)
    arrived = {couplet.id: np.zeros(len(share)) for couplet in couplets}
    known = {couplet.id: couplet for couplet in couplets}
    first = couplets[0].id
    arrived[first] += share * [taxon in below[first] for taxon in matrix.taxa]
    for name in reversed(list(below)):  # from the start down
        couplet = known[name]
        flow = arrived[name][:, None] * _ways(matrix, pure, couplet, below)
        for place, lead in enumerate(couplet.leads):
            if lead.to in arrived:
                arrived[lead.to] += flow[:, place]
        yield couplet, arrived[name], flow


def _ways(
    matrix: Matrix, pure: Single, couplet: Couplet, below: Mapping[str, frozenset[str]]
) -> NDArray[np.float64]:
    """Share of each taxon that takes each lead, shape (taxa, leads); 0 where none ends in it."""
    ends = [below.get(lead.to, frozenset()) if lead.to else lead.taxa for lead in couplet.leads]
    open_ = np.array([[taxon in end for end in ends] for taxon in matrix.taxa], float)
    share = np.column_stack([_lead_share(matrix, pure, lead) for lead in couplet.leads])
    share = np.where(share < FAINT, 0.0, share) * open_
    total = share.sum(axis=1, keepdims=True)
    even = open_ / np.maximum(open_.sum(axis=1, keepdims=True), 1.0)
    return np.asarray(np.where(total > 0, share / np.maximum(total, 1e-12), even))


def _lead_share(matrix: Matrix, pure: Single, lead: Lead) -> NDArray[np.float64]:
    """Share of each taxon that shows what a lead stands for; 1 where it is not scored."""
    found = np.ones(len(matrix.taxa))
    for sees in lead.sees:
        number = matrix.number.get(sees.character)
        if number is not None:
            shows = _shows(matrix, pure, number, sees)
            scored = matrix.whole[:, number] & ~matrix.absent[:, number]
            found *= np.where(scored, shows, 1.0)
    return found


def _shows(matrix: Matrix, pure: Single, number: int, sees: Sees) -> NDArray[np.float64]:
    character = matrix.key.characters[number]
    if character.kind.numeric:
        whole = matrix.numbers[number].share.sum(axis=0)
        cuts = np.array([end for end in (sees.low, sees.high) if end is not None])
        below = below_cuts(matrix, number, cuts) if len(cuts) else np.zeros((len(whole), 0))
        least = below[:, 0] if sees.low is not None else 0.0
        most = below[:, -1] if sees.high is not None else whole
        return np.asarray(most - least)
    part = state_shares(matrix, pure, number)
    places = [n for n, state in enumerate(character.state_ids) if state in sees.states]
    return np.asarray(part[:, places].sum(axis=1), float)


def _longest(
    couplets: Sequence[Couplet],
    effort: dict[str, float],
    arrived: dict[str, NDArray[np.float64]],
) -> tuple[int, float]:
    """Couplets on the longest way and effort on the costliest, among those somebody comes to."""
    deep = {couplet.id: 1 for couplet in couplets}
    dear = dict(effort)
    known = {couplet.id: couplet for couplet in couplets}
    for name in reachable(tuple(couplets)):  # from the ends up
        onward = [lead.to for lead in known[name].leads if lead.to in deep]
        taken = [to for to in onward if arrived[to].any()]
        deep[name] = 1 + max((deep[to] for to in taken), default=0)
        dear[name] = effort[name] + max((dear[to] for to in taken), default=0.0)
    first = couplets[0].id
    return deep[first], dear[first]
