"""Couplets as the leads of SDD: a tree in which every later way to a couplet is a reticulation."""

from typing import Any

from idkey.formats.sdd_terms import LONGEST_STATEMENT, PREFIX, add_more, collapsed, taken
from idkey.formats.xml_nodes import Node


class Leads:
    """The couplets of a key on their way into a file.

    Args:
        couplets: Their documents; the first is the start.
    """

    def __init__(self, couplets: list[dict[str, Any]]) -> None:
        self._couplets = {couplet["id"]: couplet for couplet in couplets}
        self._owner: dict[str, str] = {}
        self._order: list[str] = []
        self._groups: dict[tuple[str, ...], str] = {}
        if couplets:
            self._walk(couplets[0]["id"])
        for own in self._order:
            for lead in self._couplets[own]["leads"]:
                taxa = tuple(lead.get("taxa", ()))
                if len(taxa) > 1:
                    self._groups.setdefault(taxa, f"g-{len(self._groups) + 1}")

    def _walk(self, start: str) -> None:
        """Number the couplets that can be reached, each owned by the first lead to it."""
        waiting = [start]
        while waiting:
            own = waiting.pop(0)
            if own in self._order:
                continue
            self._order.append(own)
            for number, lead in enumerate(self._couplets[own]["leads"], start=1):
                target = lead.get("to")
                if target in self._couplets and target != start and target not in self._owner:
                    self._owner[target] = _lead_id(own, number)
                    waiting.append(target)

    def rest(self) -> dict[str, Any]:
        """What the standard cannot hold of the couplets as a whole."""
        apart = [c for own, c in self._couplets.items() if own not in self._order]
        order = list(self._couplets)
        found: dict[str, Any] = {"couplets_apart": apart} if apart else {}
        return found if order == self._order else {**found, "couplet_order": order}

    def add_groups(self, names: Node) -> None:
        """Taxon names for the ends of leads that name several taxa."""
        for taxa, own in self._groups.items():
            node = names.add("TaxonName", id=own)
            node.add("Representation").add("Label", collapsed(" / ".join(taxa)))
            add_more(node, {"group_of": list(taxa)})
            node.add("Rank", code="aggr")

    def add_keys(self, dataset: Node, title: str) -> None:
        """The identification key, when there are couplets."""
        if not self._order:
            return
        key = dataset.add("IdentificationKeys").add("IdentificationKey", id="k-1")
        key.add("Representation").add("Label", collapsed(title))
        leads = key.add("Leads")
        for own in self._order:
            for number, lead in enumerate(self._couplets[own]["leads"], start=1):
                self._add_lead(leads, own, number, lead)

    def _add_lead(self, leads: Node, own: str, number: int, lead: dict[str, Any]) -> None:
        fields = {n: v for n, v in lead.items() if n not in ("to", "taxa")}
        if number == 1 and "note" in self._couplets[own]:
            fields["couplet_note"] = self._couplets[own]["note"]
        node = leads.add("Lead", **{"id": _lead_id(own, number), f"{PREFIX}:couplet": own})
        if own in self._owner:
            node.add("Parent", ref=self._owner[own])
        node.add("Statement", taken(fields, "statement", LONGEST_STATEMENT))
        taxa = tuple(lead.get("taxa", ()))
        if taxa:
            node.add("TaxonName", ref=self._groups.get(taxa, f"t-{taxa[0]}"))
        elif self._owner.get(lead["to"]) != _lead_id(own, number):
            node.add("Reticulation", ref=self._owner.get(lead["to"], ""))
        add_more(node, fields)


def _lead_id(couplet: str, number: int) -> str:
    return f"l-{couplet}-{number}"
