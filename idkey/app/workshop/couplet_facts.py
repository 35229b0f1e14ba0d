"""What can be said of couplets against their matrix: reached, in a circle, agreeing."""

from collections.abc import Mapping
from dataclasses import dataclass, field

import networkx as nx

from idkey.app.workshop.couplet_edit import taxa_below
from idkey.engine.audit import agrees
from idkey.engine.walk import graph
from idkey.model.key import Key

LeadPlace = tuple[str, int]
"""Couplet id and number of the lead, from 0."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LeadFact:
    """How a lead stands.

    Attributes:
        taxa: Taxa it can come to.
        wrong: Those whose scores speak against it.
        circles: Whether it leads back to where it came from.
        lost: Whether the couplet it names is not there.
    """

    taxa: tuple[str, ...]
    wrong: tuple[str, ...] = ()
    circles: bool = False
    lost: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class CoupletFacts:
    """How the couplets of a key stand.

    Attributes:
        leads: Each lead.
        unreached: Couplets no lead comes to from the start.
        forgotten: Taxa no lead ends in.
    """

    leads: Mapping[LeadPlace, LeadFact] = field(default_factory=dict)
    unreached: frozenset[str] = frozenset()
    forgotten: tuple[str, ...] = ()


def couplet_facts(key: Key) -> CoupletFacts:
    """How the couplets of a key stand; circles and lost goals do no harm."""
    if not key.couplets:
        return CoupletFacts()
    drawn = graph(key.couplets)
    knots: dict[str, int] = {}
    for number, knot in enumerate(nx.strongly_connected_components(drawn)):
        knots |= dict.fromkeys(knot, number)
    start = key.couplets[0].id
    reached = nx.descendants(drawn, start) | {start}
    below = {couplet.id: taxa_below(key.couplets, couplet.id) for couplet in key.couplets}
    leads = {}
    for couplet in key.couplets:
        for number, lead in enumerate(couplet.leads):
            taxa = below.get(lead.to, ()) if lead.to else lead.taxa
            known = [taxon for taxon in taxa if taxon in key.taxon]
            leads[couplet.id, number] = LeadFact(
                taxa=taxa,
                wrong=tuple(taxon for taxon in known if not agrees(key, taxon, lead)),
                circles=bool(lead.to) and knots[couplet.id] == knots[lead.to],
                lost=bool(lead.to) and lead.to not in key.couplet,
            )
    ends = {taxon for couplet in key.couplets for lead in couplet.leads for taxon in lead.taxa}
    return CoupletFacts(
        leads=leads,
        unreached=frozenset(couplet.id for couplet in key.couplets if couplet.id not in reached),
        forgotten=tuple(taxon.id for taxon in key.taxa if taxon.id not in ends),
    )
