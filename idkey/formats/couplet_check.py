"""Whether the couplets of a key lead somewhere: no circle, no dead end, nobody forgotten."""

from collections.abc import Iterator

import networkx as nx

from idkey.formats.character_document import CoupletDoc, LeadDoc
from idkey.formats.draft import Draft, Entry
from idkey.formats.known import Known
from idkey.formats.problem import Problem, Severity
from idkey.formats.yaml_text import Loc


def checked_couplets(draft: Draft, known: Known) -> Iterator[Problem]:
    """Mistakes in the couplets, one by one and as a whole."""
    for entry in draft.couplets:
        for index, lead in enumerate(entry.doc.leads):
            yield from _lead(entry, (*entry.loc, "leads", index), lead, known)
    graph = _graph(draft)
    yield from _circles(draft, graph)
    if draft.couplets and len(draft.couplets) == len(draft.plain["couplets"]):
        yield from _unreachable(draft, graph)
        yield from _forgotten(draft)


def _lead(entry: Entry[CoupletDoc], loc: Loc, lead: LeadDoc, known: Known) -> Iterator[Problem]:
    yaml = entry.yaml
    if lead.to and lead.taxa:
        problem = f"A lead of couplet '{entry.id}' goes on and ends at once."
        yield yaml.problem(loc, problem, "Keep either to or taxa.")
    elif lead.to:
        if said := known.unknown("couplet", lead.to):
            yield yaml.problem((*loc, "to"), *said)
    elif not lead.taxa:
        problem = f"A lead of couplet '{entry.id}' goes nowhere."
        yield yaml.problem(loc, problem, "Add to: a couplet, or taxa: [...].")
    yield from known.each("taxon", lead.taxa, yaml, (*loc, "taxa"))
    yield from known.sees(lead.sees, yaml, (*loc, "sees"))


def _graph(draft: Draft) -> "nx.DiGraph[str]":
    graph: nx.DiGraph[str] = nx.DiGraph()
    graph.add_nodes_from(entry.id for entry in draft.couplets)
    for entry in draft.couplets:
        for lead in entry.doc.leads:
            if lead.to is not None and lead.to in graph:
                graph.add_edge(entry.id, lead.to)
    return graph


def _circles(draft: Draft, graph: "nx.DiGraph[str]") -> Iterator[Problem]:
    """One circle for each knot of couplets that lead back into each other."""
    entries = {entry.id: entry for entry in draft.couplets}
    order = list(entries)
    for knot in nx.strongly_connected_components(graph):
        first = min(knot, key=order.index)
        if len(knot) == 1 and not graph.has_edge(first, first):
            continue
        circle = [start for start, _ in nx.find_cycle(graph.subgraph(knot), first)]
        turn = min(range(len(circle)), key=lambda n: order.index(circle[n]))
        circle = [*circle[turn:], *circle[:turn]]
        last = entries[circle[-1]]
        index = next(n for n, lead in enumerate(last.doc.leads) if lead.to == circle[0])
        yield last.yaml.problem(
            (*last.loc, "leads", index, "to"),
            f"The couplets run in a circle: {' → '.join([*circle, circle[0]])}.",
            "Let this lead go on to a later couplet, or end in taxa.",
        )


def _unreachable(draft: Draft, graph: "nx.DiGraph[str]") -> Iterator[Problem]:
    start = draft.couplets[0].id
    reached = nx.descendants(graph, start) | {start}
    for entry in draft.couplets:
        if entry.id not in reached:
            yield entry.yaml.problem(
                (*entry.loc, "id"),
                f"No lead comes to couplet '{entry.id}'.",
                f"Point a lead to it, or remove it; the start is couplet '{start}'.",
                severity=Severity.WARNING,
            )


def _forgotten(draft: Draft) -> Iterator[Problem]:
    named = {t for e in draft.couplets for lead in e.doc.leads for t in lead.taxa}
    for entry in draft.taxa:
        if entry.id not in named:
            yield entry.yaml.problem(
                ("id",),
                f"No couplet ends in '{entry.id}'.",
                "Add it to the taxa of a lead in couplets.yaml.",
                severity=Severity.WARNING,
            )
