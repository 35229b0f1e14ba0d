"""What the documents of a key say about each other, and where that cannot be."""

from collections import Counter
from collections.abc import Iterator

import networkx as nx

from idkey.formats.character_document import CharacterDoc, CheckDoc
from idkey.formats.draft import Draft, Entry
from idkey.formats.key_document import LabelDoc
from idkey.formats.known import Known, inverted
from idkey.formats.problem import Problem, Severity
from idkey.formats.taxon_document import TaxonDoc
from idkey.model.character import Kind

_MORE_THAN_ALL = 1.0 + 1e-6


def crosschecked(draft: Draft, known: Known) -> Iterator[Problem]:
    """Mistakes between entries: characters, taxa, labels, checks and the key's own id."""
    named = draft.folder.resolve().name if draft.folder.is_dir() else None
    if draft.key is not None and named is not None and draft.key.id != named:
        yield draft.key.yaml.problem(
            ("id",),
            f"The id '{draft.key.id}' is not the name of the folder.",
            f"Rename the folder to {draft.key.id}, or correct the id.",
            severity=Severity.WARNING,
        )
    for character in draft.characters:
        yield from _character(character, known)
    yield from _circles(draft)
    for taxon in draft.taxa:
        yield from _taxon(taxon, known)
    for label in draft.labels:
        yield from _label(label, known)
    for check in draft.checks:
        yield from _check(check, known)
    yield from _cases(draft)


def _character(entry: Entry[CharacterDoc], known: Known) -> Iterator[Problem]:
    doc, yaml, loc = entry.doc, entry.yaml, entry.loc
    if doc.kind.numeric and doc.states:
        problem = f"'{doc.id}' is a {doc.kind}, so it has no states."
        yield yaml.problem((*loc, "states"), problem, "Remove the states or change the kind.")
    if not doc.kind.numeric and len(doc.states) < 2:
        problem = f"'{doc.id}' is {doc.kind}, so it needs two states or more."
        yield yaml.problem(loc, problem, "Add states or change the kind.")
    if doc.kind is Kind.MEASUREMENT and not doc.unit:
        problem = f"'{doc.id}' is a measurement without a unit."
        yield yaml.problem(loc, problem, "Add the unit, such as unit: mm.")
    if not doc.kind.numeric and doc.unit:
        problem = f"'{doc.id}' has states, so it has no unit."
        yield yaml.problem((*loc, "unit"), problem, "Remove the unit or change the kind.")
    times = Counter(state.id for state in doc.states)
    for index, state in enumerate(doc.states):
        if times[state.id] > 1:
            times[state.id] = 1
            problem = f"The state id '{state.id}' is used twice in '{doc.id}'."
            yield yaml.problem((*loc, "states", index, "id"), problem, "Give one another id.")
        if state.figure:
            yield from _terms(entry, index)
    if doc.requires is not None:
        yield from _requirement(entry, known)
    yield from known.each("source", doc.sources, yaml, (*loc, "sources"))


def _terms(entry: Entry[CharacterDoc], index: int) -> Iterator[Problem]:
    """Whether a figure of the author's own says who made it and how it may be used."""
    state, yaml = entry.doc.states[index], entry.yaml
    loc = (*entry.loc, "states", index, "figure")
    lacking = {
        "who made it": ("figure_credit: and a name", state.figure_credit),
        "how it may be used": ("figure_licence: such as CC-BY-4.0", state.figure_licence),
    }
    for what, (mend, said) in lacking.items():
        if not said.strip():
            problem = f"The figure '{state.figure}' does not say {what}."
            yield yaml.problem(loc, problem, f"Add {mend}.", severity=Severity.WARNING)


def _requirement(entry: Entry[CharacterDoc], known: Known) -> Iterator[Problem]:
    needed, yaml, loc = entry.doc.requires, entry.yaml, (*entry.loc, "requires")
    if needed is None:
        return
    if said := known.unknown("character", needed.character):
        yield yaml.problem((*loc, "character"), *said)
    elif known.trait(needed.character).numeric:
        problem = f"'{needed.character}' is a number, so nothing can require a state of it."
        yield yaml.problem((*loc, "character"), problem, "Require a character with states.")
    else:
        yield from known.states(needed.character, needed.states, yaml, (*loc, "states"))


def _circles(draft: Draft) -> Iterator[Problem]:
    """Characters that require each other, so that none could ever be asked."""
    entries = {entry.id: entry for entry in draft.characters}
    graph: nx.DiGraph[str] = nx.DiGraph()
    for entry in draft.characters:
        if entry.doc.requires is not None:
            graph.add_edge(entry.id, entry.doc.requires.character)
    for circle in nx.simple_cycles(graph):
        first = next(e for e in draft.characters if e.id in circle)
        turn = circle.index(first.id)
        way = " → ".join([*circle[turn:], *circle[:turn], first.id])
        yield entries[first.id].yaml.problem(
            (*first.loc, "requires"),
            f"Characters require each other in a circle: {way}.",
            "Remove one of these requirements.",
        )


def _taxon(entry: Entry[TaxonDoc], known: Known) -> Iterator[Problem]:
    doc, yaml = entry.doc, entry.yaml
    if said := inverted(*doc.size_mm):
        yield yaml.problem(("size_mm",), *said)
    yield from known.each("source", doc.sources, yaml, ("sources",))
    yield from known.each("source", doc.hazard.sources, yaml, ("hazard", "sources"))
    yield from known.each("source", doc.permit.sources, yaml, ("permit", "sources"))


def _label(entry: Entry[LabelDoc], known: Known) -> Iterator[Problem]:
    doc, yaml, loc = entry.doc, entry.yaml, entry.loc
    yield from known.each("taxon", doc.covers, yaml, (*loc, "covers"))
    yield from known.each("taxon", doc.sold_as, yaml, (*loc, "sold_as"))
    yield from known.each("character", doc.deciding, yaml, (*loc, "deciding"))
    yield from known.each("source", doc.sources, yaml, (*loc, "sources"))
    for index, taxon in enumerate(doc.sold_as):
        if taxon in doc.covers:
            problem = f"'{taxon}' is both covered by the label and sold under it by mistake."
            yield yaml.problem((*loc, "sold_as", index), problem, "Remove it from one list.")
    if not doc.deciding and (doc.covers or doc.sold_as):
        problem = f"The label '{doc.text}' names no characters that decide it."
        yield yaml.problem(
            loc, problem, "Add them under deciding, best first.", severity=Severity.WARNING
        )
    if doc.rates is not None:
        here = (*loc, "rates")
        for taxon in doc.rates.shares:
            if said := known.unknown("taxon", taxon):
                yield yaml.problem_at_key((*here, "shares", taxon), *said)
        total = sum(doc.rates.shares.values())
        if total > _MORE_THAN_ALL:
            problem = f"The shares sum to {total:.3g}, which is more than one."
            yield yaml.problem((*here, "shares"), problem, "Lower them.")
        yield from known.each("source", doc.rates.sources, yaml, (*here, "sources"))


def _check(entry: Entry[CheckDoc], known: Known) -> Iterator[Problem]:
    doc, yaml, loc = entry.doc, entry.yaml, entry.loc
    yield from known.sees(doc.sees, yaml, (*loc, "sees"))
    yield from known.each("taxon", doc.remain, yaml, (*loc, "remain"))
    yield from known.each("taxon", doc.exclude, yaml, (*loc, "exclude"))
    yield from known.each("source", doc.sources, yaml, (*loc, "sources"))
    for index, taxon in enumerate(doc.exclude):
        if taxon in doc.remain:
            problem = f"'{taxon}' is asked to remain and to be excluded."
            yield yaml.problem((*loc, "exclude", index), problem, "Remove it from one list.")


def _cases(draft: Draft) -> Iterator[Problem]:
    """Taxa whose files some machines cannot keep apart."""
    before: dict[str, str] = {}
    for entry in draft.taxa:
        other = before.setdefault(entry.id.casefold(), entry.id)
        if other != entry.id:
            problem = f"'{entry.id}' differs from '{other}' in capitals only."
            yield entry.yaml.problem(("id",), problem, "Give it another id.")
