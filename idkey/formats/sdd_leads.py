"""Identification keys of an SDD document as couplets of ours.

A couplet is all leads below one lead, in the order of the document. Circles, dead ends and
steps of one lead, which the standard lets through, are mended here and told.
"""

from collections.abc import Mapping
from typing import Any

from idkey.formats.sdd_characters import Found
from idkey.formats.sdd_terms import LONGEST_STATEMENT, more_of, restored
from idkey.formats.xml_nodes import Node

_ROOT = ""


class LeadsReader:
    """Reads the keys of a data set.

    Args:
        found: The document.
        taxa: Our taxon ids per the document's id: one for a taxon, several for a group.
    """

    def __init__(self, found: Found, taxa: Mapping[str, tuple[str, ...]]) -> None:
        self._found = found
        self._taxa = taxa
        self._children: dict[tuple[str, str], list[Node]] = {}
        self._key_of: dict[str, str] = {}
        self._lead: dict[str, Node] = {}
        self._names: dict[tuple[str, str], str] = {}
        self._couplets: dict[tuple[str, str], dict[str, Any] | None] = {}
        self._open: set[tuple[str, str]] = set()
        self._single: dict[tuple[str, str], dict[str, Any]] = {}  # steps of one lead
        self._keys = list(found.dataset.all("IdentificationKeys", "IdentificationKey"))
        for key in self._keys:
            self._sort(key)

    def _sort(self, key: Node) -> None:
        own = key.attributes.get("id", "")
        for lead in _leads(key):
            name = lead.attributes.get("id", "")
            self._key_of[name] = own
            self._lead[name] = lead
            self._children.setdefault((own, lead.ref("Parent")), []).append(lead)

    def couplets(self) -> list[dict[str, Any]]:
        """The couplets, the start of the first key first."""
        if not self._keys:
            return []
        start = (self._keys[0].attributes.get("id", ""), _ROOT)
        order: list[tuple[str, str]] = []
        self._number(start, order)
        self._build(start)
        reached = [self._couplets[place] for place in order if self._couplets.get(place)]
        if len(self._keys) > 1:
            used = {key for key, _ in self._couplets}
            apart = [k for k in self._keys if k.attributes.get("id", "") not in used]
            if apart:
                self._found.notes.append(f"{len(apart)} further keys were left out.")
        return [couplet for couplet in reached if couplet is not None]

    def _number(self, start: tuple[str, str], order: list[tuple[str, str]]) -> None:
        """Name the couplets in the order in which a person meets them."""
        waiting = [start]
        while waiting:
            place = waiting.pop(0)
            if place in self._names or place not in self._children:
                continue
            own = self._children[place][0].attributes.get("couplet")
            taken = set(self._names.values())
            number = len(order) + 1
            while str(number) in taken:
                number += 1
            self._names[place] = own if own and own not in taken else str(number)
            order.append(place)
            waiting += [
                p for lead in self._children[place] if (p := self._target(lead)) is not None
            ]

    def _target(self, lead: Node) -> tuple[str, str] | None:
        """The couplet that a lead goes on to; None when it ends."""
        lead = self._resolved(lead)
        if other := lead.ref("Reticulation"):
            return (self._key_of.get(other, ""), other)
        if subkey := lead.ref("Subkey"):
            return (subkey, _ROOT)
        name = lead.attributes.get("id", "")
        below = (self._key_of.get(name, ""), name)
        return below if name and below in self._children else None

    def _resolved(self, lead: Node) -> Node:
        """The lead whose way on a lead takes: another one where it points to an end."""
        seen: set[str] = set()
        while other := lead.ref("Reticulation"):
            place = (self._key_of.get(other, ""), other)
            if place in self._children or other in seen or other not in self._lead:
                break
            seen.add(other)
            lead = self._lead[other]
        return lead

    def _build(self, place: tuple[str, str]) -> dict[str, Any] | None:
        """The couplet there; None when no two of its leads lead anywhere."""
        if place in self._couplets:
            return self._couplets[place]
        if place not in self._names or place in self._open:
            return None
        self._open.add(place)
        leads: list[dict[str, Any]] = []
        note = ""
        for lead in self._children[place]:
            more = more_of(lead)
            note = note or str(more.get("couplet_note", ""))
            made = self._lead_document(lead, more)
            if made is None:
                self._found.notes.append(
                    f"Line {lead.line}: a lead that goes nowhere was left out: "
                    f"'{_statement(lead)[:60]}'."
                )
            else:
                leads.append(made)
        self._open.discard(place)
        said = {"id": self._names[place], **({"note": note} if note else {}), "leads": leads}
        self._couplets[place] = said if len(leads) > 1 else None
        if len(leads) == 1:
            self._single[place] = leads[0]
        return self._couplets[place]

    def _lead_document(self, lead: Node, more: dict[str, Any]) -> dict[str, Any] | None:
        statement = restored(more, "statement", _statement(lead), LONGEST_STATEMENT)
        fields = {n: v for n, v in more.items() if n in ("sees", "remark")}
        said: dict[str, Any] = {"statement": statement, **fields}
        target = self._target(lead)
        if target is not None:
            couplet = self._build(target)
            if couplet is not None:
                return {**said, "to": couplet["id"]}
            if target in self._single:
                return self._joined(said, self._single[target])
            return None
        taxa = self._taxa.get(self._resolved(lead).ref("TaxonName"), ())
        return {**said, "taxa": list(taxa)} if taxa else None

    def _joined(self, said: dict[str, Any], single: dict[str, Any]) -> dict[str, Any]:
        """A lead and the only one below it as one."""
        self._found.notes.append(
            f"A step of a single lead was joined: '{single['statement'][:60]}'."
        )
        statement = f"{said['statement']} {single['statement']}"
        return {**single, **{n: v for n, v in said.items() if n != "sees"}, "statement": statement}


def _leads(key: Node) -> list[Node]:
    """The leads of a key, also where an older draft wraps or renames them."""
    found = key.first("Leads")
    if found is None:
        return []
    return [node for node in found.below() if node.tag in ("Lead", "Result")]


def _statement(lead: Node) -> str:
    words = " ".join(node.words() for node in lead.all("Statement"))
    return words or "as shown in the picture"
