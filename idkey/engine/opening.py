"""The opening of a key that its author keeps, and where built couplets take over from it."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

import numpy as np

from idkey.engine.couplet_cost import arrivals
from idkey.engine.couplets import TOGETHER
from idkey.engine.matrix import Matrix
from idkey.engine.tree import Rows, Tree, Weights, leaves
from idkey.engine.walk import reachable
from idkey.model.couplet import Couplet, Lead
from idkey.model.key import Key


@dataclass(frozen=True, slots=True)
class Stub:
    """A way out of the opening: the couplet it led to, and the taxa that come that way.

    Attributes:
        to: Id of the couplet that is grown anew.
        rows: The taxa.
        weights: How often each comes that way.
        asked: Numbers of the characters that the opening has asked about.
    """

    to: str
    rows: Rows
    weights: Weights
    asked: frozenset[int]


@dataclass(frozen=True, slots=True)
class Below:
    """What was grown below a way out."""

    tree: Tree
    couplets: tuple[Couplet, ...]


def kept(couplets: tuple[Couplet, ...], number: int) -> tuple[Couplet, ...]:
    """The first `number` couplets, without those that none of them leads to; at least one."""
    found = couplets[:1]
    for couplet in couplets[1 : max(number, 1)]:
        if any(lead.to == couplet.id for one in found for lead in one.leads):
            found = (*found, couplet)
    return found


def stubs(matrix: Matrix, opening: tuple[Couplet, ...], share: Weights) -> Iterator[Stub]:
    """The ways out of an opening, in the order of the walk."""
    couplets = matrix.key.couplets
    below = reachable(couplets)
    own = {couplet.id for couplet in opening}
    arrived = arrivals(matrix, couplets, share)
    asked = frozenset(
        matrix.number[sees.character]
        for couplet in opening
        for lead in couplet.leads
        for sees in lead.sees
        if sees.character in matrix.number
    )
    outside = (lead.to for c in opening for lead in c.leads if lead.to and lead.to not in own)
    for to in dict.fromkeys(outside):
        rows = np.array(sorted(matrix.row[t] for t in below[to] if t in matrix.row), np.intp)
        weights = np.maximum(arrived[to][rows], 1e-12)
        yield Stub(to, rows, weights, asked)


def spliced(
    key: Key, opening: tuple[Couplet, ...], grown: Mapping[str, Below]
) -> tuple[Couplet, ...]:
    """The opening with what was grown in place of what it led to."""
    leads = {
        couplet.id: tuple(_led(key, lead, grown.get(lead.to)) for lead in couplet.leads)
        for couplet in opening
    }
    kept_ones = tuple(replace(couplet, leads=leads[couplet.id]) for couplet in opening)
    return (*kept_ones, *(couplet for below in grown.values() for couplet in below.couplets))


def _led(key: Key, lead: Lead, below: Below | None) -> Lead:
    if below is None:
        return lead
    if below.couplets:
        return replace(lead, to=below.couplets[0].id)
    (end,) = leaves(below.tree)
    taxa = tuple(key.taxa[row].id for row in end.rows)
    remark = lead.remark or (TOGETHER if len(taxa) > 1 else "")
    return replace(lead, to="", taxa=taxa, remark=remark)
