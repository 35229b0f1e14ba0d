"""What can be said of couplets against their matrix: reached, in a circle, agreeing."""

from collections.abc import Mapping
from dataclasses import dataclass, field

import networkx as nx

from idkey.engine.audit import agrees
from idkey.engine.walk import graph
from idkey.model.couplet import Lead, Sees
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
    agree = _Agreement(key)
    knots: dict[str, int] = {}
    for number, knot in enumerate(nx.strongly_connected_components(drawn)):
        knots |= dict.fromkeys(knot, number)
    start = key.couplets[0].id
    reached = nx.descendants(drawn, start) | {start}
    below = _below(key, drawn)
    leads = {}
    for couplet in key.couplets:
        for number, lead in enumerate(couplet.leads):
            taxa = below.get(lead.to, ()) if lead.to else lead.taxa
            leads[couplet.id, number] = LeadFact(
                taxa=taxa,
                wrong=agree.against(lead, taxa),
                circles=bool(lead.to) and knots[couplet.id] == knots[lead.to],
                lost=bool(lead.to) and lead.to not in key.couplet,
            )
    ends = {taxon for couplet in key.couplets for lead in couplet.leads for taxon in lead.taxa}
    return CoupletFacts(
        leads=leads,
        unreached=frozenset(couplet.id for couplet in key.couplets if couplet.id not in reached),
        forgotten=tuple(taxon.id for taxon in key.taxa if taxon.id not in ends),
    )


class _Agreement:
    """Which taxa the scores let stand for what a lead asks; asked once for each character."""

    def __init__(self, key: Key) -> None:
        self._key = key
        self._against: dict[Sees, frozenset[str]] = {}

    def against(self, lead: Lead, taxa: tuple[str, ...]) -> tuple[str, ...]:
        """Those of the taxa whose scores speak against the lead."""
        wrong = [self._wrong(sees) for sees in lead.sees]
        return tuple(taxon for taxon in taxa if any(taxon in one for one in wrong))

    def _wrong(self, sees: Sees) -> frozenset[str]:
        if sees not in self._against:
            lead = Lead(statement="", sees=(sees,), to="-")
            self._against[sees] = frozenset(
                taxon.id for taxon in self._key.taxa if not agrees(self._key, taxon.id, lead)
            )
        return self._against[sees]


def _below(key: Key, drawn: "nx.DiGraph[str]") -> Mapping[str, tuple[str, ...]]:
    """Taxa each couplet can lead to, in the order of the key; a circle leads to all in it."""
    own = {
        couplet.id: {taxon for lead in couplet.leads for taxon in lead.taxa}
        for couplet in key.couplets
    }
    knots = nx.condensation(drawn)
    found: dict[int, set[str]] = {}
    for knot in reversed(list(nx.topological_sort(knots))):
        found[knot] = set().union(*(found[goal] for goal in knots.successors(knot)))
        for name in knots.nodes[knot]["members"]:
            found[knot] |= own.get(name, set())
    place = {taxon.id: n for n, taxon in enumerate(key.taxa)}
    rank = {
        name: tuple(sorted(taxa, key=lambda t: place.get(t, -1))) for name, taxa in found.items()
    }
    mapping = knots.graph["mapping"]
    return {couplet.id: rank[mapping[couplet.id]] for couplet in key.couplets}
