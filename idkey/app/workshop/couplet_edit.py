"""Changes to couplets that keep them whole: every lead goes somewhere, none stands alone."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

import networkx as nx

from idkey.app.workshop.forms_entries import shifted
from idkey.engine.walk import graph
from idkey.model.couplet import Couplet, Lead

Couplets = tuple[Couplet, ...]
Swap = Callable[[str], str | None]


def _same(name: str) -> str | None:
    return name


@dataclass(frozen=True, slots=True, kw_only=True)
class Goals:
    """How the goals of leads are swapped; None lets go of a goal.

    Attributes:
        couplet: For couplets.
        taxon: For taxa.
    """

    couplet: Swap = _same
    taxon: Swap = _same


def with_goals(couplets: Couplets, goals: Goals) -> Couplets:
    """The couplets with other goals.

    A lead whose couplet is let go of ends in the taxa that one led to. A lead without any goal
    goes; a couplet left with one lead is passed over, one left with none goes with what led there.
    """
    leads: dict[str, list[Lead]] = {}
    for couplet in couplets:
        leads[couplet.id] = [
            new for lead in couplet.leads if (new := _swapped(couplets, lead, goals)) is not None
        ]
    return _settled(couplets, leads)


def _swapped(couplets: Couplets, lead: Lead, goals: Goals) -> Lead | None:
    taxa: Iterable[str] = lead.taxa
    if lead.to:
        goal = goals.couplet(lead.to)
        if goal is not None:
            return replace(lead, to=goal)
        taxa = taxa_below(couplets, lead.to)
    found = tuple(dict.fromkeys(t for one in taxa if (t := goals.taxon(one)) is not None))
    return replace(lead, to="", taxa=found) if found else None


def _settled(couplets: Couplets, leads: dict[str, list[Lead]]) -> Couplets:
    """Couplets from lists of leads, without those that ask nothing any more."""
    while True:
        short = next((name for name, own in leads.items() if len(own) < 2), None)
        if short is None:
            return tuple(
                replace(couplet, leads=tuple(leads[couplet.id]))
                for couplet in couplets
                if couplet.id in leads
            )
        rest = leads.pop(short)
        for name, own in leads.items():
            leads[name] = [new for lead in own if (new := _passed(lead, short, rest)) is not None]


def _passed(lead: Lead, short: str, rest: list[Lead]) -> Lead | None:
    if lead.to != short:
        return lead
    if not rest or rest[0].to == short:
        return None
    remark = lead.remark or rest[0].remark
    return replace(lead, to=rest[0].to, taxa=rest[0].taxa, remark=remark)


def taxa_below(couplets: Couplets, name: str) -> tuple[str, ...]:
    """Taxa a couplet can lead to, in the order of the couplets; circles do no harm."""
    drawn = graph(couplets)
    if name not in drawn:
        return ()
    below = nx.descendants(drawn, name) | {name}
    ends = (t for c in couplets if c.id in below for lead in c.leads for t in lead.taxa)
    return tuple(dict.fromkeys(ends))


def lead_at(couplets: Couplets, name: str, number: int) -> Lead | None:
    """A lead by couplet and number from 0; None when there is none."""
    found = next((couplet for couplet in couplets if couplet.id == name), None)
    return found.leads[number] if found and 0 <= number < len(found.leads) else None


def with_lead(couplets: Couplets, name: str, number: int, *, lead: Lead) -> Couplets:
    """The couplets with a lead put in place of the one with that number, from 0."""
    return tuple(
        replace(c, leads=(*c.leads[:number], lead, *c.leads[number + 1 :])) if c.id == name else c
        for c in couplets
    )


def led_to(couplets: Couplets, name: str, number: int, *, goal: str) -> Couplets:
    """The couplets with a lead that goes on to another couplet."""
    lead = lead_at(couplets, name, number)
    if lead is None:
        return couplets
    return with_lead(couplets, name, number, lead=replace(lead, to=goal, taxa=()))


def without_lead(couplets: Couplets, name: str, number: int) -> Couplets:
    """The couplets without a lead; a couplet left with one lead is passed over."""
    leads = {c.id: list(c.leads) for c in couplets}
    if name in leads and 0 <= number < len(leads[name]):
        del leads[name][number]
    return _settled(couplets, leads)


def without_couplet(couplets: Couplets, name: str) -> Couplets:
    """The couplets without one; leads that went there end in the taxa it led to."""
    kept = with_goals(couplets, Goals(couplet=lambda goal: None if goal == name else goal))
    return tuple(couplet for couplet in kept if couplet.id != name)


def with_more(couplets: Couplets, name: str, lead: Lead) -> Couplets:
    """The couplets with one more lead at the end of a couplet."""
    return tuple(replace(c, leads=(*c.leads, lead)) if c.id == name else c for c in couplets)


def moved_lead(couplets: Couplets, name: str, number: int, *, there: int) -> Couplets:
    """The couplets with a lead at another place of its couplet."""
    return tuple(
        replace(one, leads=shifted(one.leads, number, there - number)) if one.id == name else one
        for one in couplets
    )


def split_below(couplets: Couplets, name: str, number: int, *, words: str) -> Couplets:
    """The couplets with a new one below a lead; both of its leads go where that lead went.

    Args:
        couplets: The couplets.
        name: Couplet of the lead.
        number: Number of the lead, from 0.
        words: Statement of the new leads.
    """
    lead = lead_at(couplets, name, number)
    if lead is None:
        return couplets
    new_id = next_number(couplets)
    half = Lead(statement=words, to=lead.to, taxa=lead.taxa)
    place = next(n for n, couplet in enumerate(couplets) if couplet.id == name) + 1
    new = Couplet(id=new_id, leads=(half, half))
    return led_to((*couplets[:place], new, *couplets[place:]), name, number, goal=new_id)


def next_number(couplets: Couplets) -> str:
    """The number after the largest one in use."""
    used = [int(c.id) for c in couplets if c.id.isascii() and c.id.isdecimal()]
    return str(max(used, default=0) + 1)


def renumbered(couplets: Couplets) -> Couplets:
    """The couplets numbered from 1 in their order."""
    names = {couplet.id: str(n) for n, couplet in enumerate(couplets, start=1)}
    return tuple(
        replace(
            couplet,
            id=names[couplet.id],
            leads=tuple(replace(lead, to=names.get(lead.to, lead.to)) for lead in couplet.leads),
        )
        for couplet in couplets
    )
