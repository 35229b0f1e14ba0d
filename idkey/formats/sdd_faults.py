"""Structural faults of an SDD document that its schema does not see.

The identity constraints of the schema name elements that it no longer defines, so that they
fire in part or never; and some impossible things are well formed.
"""

import math
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import networkx as nx

from idkey.formats.problem import Problem
from idkey.formats.xml_nodes import Node

_LOWER = ("Min", "UMethLower", "ObserverEstLower")
_UPPER = ("Max", "UMethUpper", "ObserverEstUpper")
_OUTCOMES = ("TaxonName", "Subkey", "Reticulation")


class _Document:
    """A document and its objects by id."""

    def __init__(self, root: Node, file: Path) -> None:
        self.root = root
        self._file = file
        self.by_id: dict[str, Node] = {}
        for node in root.below():
            if own := node.attributes.get("id"):
                self.by_id.setdefault(own, node)

    def problem(self, node: Node, problem: str, remedy: str) -> Problem:
        """A fault at the line where `node` starts."""
        return Problem(
            file=self._file, line=node.line or 1, column=1, problem=problem, remedy=remedy
        )

    def is_a(self, own: str, *tags: str) -> bool:
        """Whether an object of that id is there, and one of these kinds."""
        return own in self.by_id and self.by_id[own].tag in tags


def sdd_faults(root: Node, file: Path) -> tuple[Problem, ...]:
    """Faults that the schema lets through, in the order of their lines.

    Args:
        root: The root element.
        file: Where it was read, for the places of the faults.
    """
    document = _Document(root, file)
    found = [*_references(document), *_descriptions(document), *_numbers(document)]
    for key in (node for node in root.below() if node.tag == "IdentificationKey"):
        found += _leads(document, key)
    return tuple(sorted(found, key=lambda problem: problem.line))


def _references(document: _Document) -> Iterator[Problem]:
    """Pointers that no identity constraint of the schema looks at."""
    kinds = {
        "Subkey": ("IdentificationKey",),
        "Reticulation": ("Lead",),
        "Text": ("TextCharacter",),
    }
    characters = ("CategoricalCharacter", "QuantitativeCharacter", "TextCharacter")
    for node in document.root.below():
        ref = node.attributes.get("ref")
        if node.tag in kinds and ref is not None and not document.is_a(ref, *kinds[node.tag]):
            yield document.problem(node, f"{node.tag} points to '{ref}', which is not there.", _FIX)
        if node.tag == "CharNode":
            own, parent = node.ref("Character"), node.ref("Parent")
            if own and not document.is_a(own, *characters, "SequenceCharacter"):
                problem = f"A node points to the character '{own}', which is not there."
                yield document.problem(node, problem, _FIX)
            if parent and not document.is_a(parent, "Node"):
                problem = f"A node lies below '{parent}', which is not there."
                yield document.problem(node, problem, _FIX)


_FIX = "Correct the reference, or remove it."


def _descriptions(document: _Document) -> Iterator[Problem]:
    states = {
        own: {s.attributes.get("id") or s.attributes.get("ref") for s in _states(node)}
        for own, node in document.by_id.items()
        if node.tag == "CategoricalCharacter"
    }
    for description in document.root.below():
        if description.tag not in ("SummaryData", "SamplingUnit"):
            continue
        times: Counter[str] = Counter()
        for score in description.children:
            own = score.attributes.get("ref", "")
            times[own] += 1
            if own and times[own] == 2 and description.tag == "SummaryData":
                problem = f"The character '{own}' is scored twice in one description."
                yield document.problem(score, problem, "Join the two scores.")
            for state in score.all("State") if own in states else ():
                ref = state.attributes.get("ref", "")
                if ref in document.by_id and ref not in states[own]:
                    problem = f"'{ref}' is no state of the character '{own}'."
                    yield document.problem(state, problem, "Point to one of its own states.")


def _states(character: Node) -> Iterator[Node]:
    for tag in ("StateDefinition", "StateReference"):
        yield from character.all("States", tag)


def _numbers(document: _Document) -> Iterator[Problem]:
    for node in document.root.below():
        if node.tag == "ProportionRange":
            low = _number(node.attributes.get("lowerestimate"))
            high = _number(node.attributes.get("upperestimate"))
            if low is not None and high is not None and low > high:
                problem = f"The proportion runs from {low:g} down to {high:g}."
                yield document.problem(node, problem, "Swap the two.")
        if node.tag == "Quantitative":
            yield from _measures(document, node)


def _measures(document: _Document, score: Node) -> Iterator[Problem]:
    said: dict[str, float] = {}
    for measure in (*score.all("Measure"), *score.all("PMeasure"), score):
        text = measure.attributes.get("value")
        value = _number(text)
        if value is not None and not math.isfinite(value):
            problem = f"The value '{text}' is no finite number."
            yield document.problem(measure, problem, "Leave it out.")
        elif value is not None:
            said[measure.attributes.get("type", "")] = value
    for lower, upper in zip(_LOWER, _UPPER, strict=True):
        if lower in said and upper in said and said[lower] > said[upper]:
            problem = f"{lower} {said[lower]:g} is above {upper} {said[upper]:g}."
            yield document.problem(score, problem, "Look in its source and correct them.")


def _number(text: str | None) -> float | None:
    try:
        return None if text is None else float(text)
    except ValueError:
        return None


def _leads(document: _Document, key: Node) -> Iterator[Problem]:
    leads = list(key.all("Leads", "Lead"))
    own = {lead.attributes.get("id", ""): lead for lead in leads}
    children = Counter(lead.ref("Parent") for lead in leads)
    graph: nx.DiGraph[str] = nx.DiGraph()
    for lead in leads:
        parent, name = lead.ref("Parent"), lead.attributes.get("id", "")
        if parent and parent not in own:
            problem = f"The lead '{name}' lies below '{parent}', which is not in its key."
            yield document.problem(lead, problem, "Point it to a lead of the same key.")
        elif parent:
            graph.add_edge(parent, name)
        yield from _outcome(document, lead, children[name] if name else 0)
    for parent, count in children.items():
        if count == 1 and (not parent or parent in own):
            first = next(lead for lead in leads if lead.ref("Parent") == parent)
            problem = "A step of the key has a single lead."
            yield document.problem(
                first, problem, "Add the other lead, or join it with its parent."
            )
    for knot in nx.strongly_connected_components(graph):
        if len(knot) > 1 or any(graph.has_edge(name, name) for name in knot):
            first = min((own[name] for name in knot), key=lambda lead: lead.line)
            names = ", ".join(sorted(knot))
            problem = f"Leads lie below each other in a circle: {names}."
            yield document.problem(first, problem, "Give one of them another parent.")


def _outcome(document: _Document, lead: Node, children: int) -> Iterator[Problem]:
    ends = [tag for tag in _OUTCOMES if lead.first(tag) is not None]
    name = lead.attributes.get("id", "")
    if ends and children:
        problem = f"The lead '{name}' ends in a {ends[0]} and goes on as well."
        yield document.problem(lead, problem, "Remove one of the two.")
    elif not ends and not children:
        problem = f"The lead '{name}' goes nowhere."
        yield document.problem(lead, problem, "Name the taxon it ends in, or add leads below it.")
