"""What the buttons above the couplets do, and what is chosen afterwards."""

from PySide6.QtCore import QCoreApplication

from idkey.app.workshop.couplet_edit import (
    Couplets,
    lead_at,
    moved_lead,
    renumbered,
    split_below,
    with_more,
)
from idkey.app.workshop.couplet_facts import LeadPlace
from idkey.model.couplet import Couplet, Lead
from idkey.model.key import Key

translate = QCoreApplication.translate

Chosen = LeadPlace | None


def done(key: Key, what: str, chosen: Chosen, *, words: str) -> tuple[Couplets, Chosen]:
    """The couplets after a deed, and what is chosen then.

    Args:
        key: The key.
        what: "start", "lead", "below", "up", "down", "here" or "number".
        chosen: The lead that is chosen, or with -1 the couplet.
        words: Statement of new leads.
    """
    couplets = key.couplets
    if what == "start":
        return _started(key, words)
    if chosen is None:
        return couplets, chosen
    name, number = chosen
    if what == "lead":
        leads = key.couplet[name].leads
        more = Lead(statement=words, to=leads[-1].to, taxa=leads[-1].taxa)
        return with_more(couplets, name, more), (name, len(leads))
    if what == "number":
        place = next(n for n, one in enumerate(couplets, start=1) if one.id == name)
        return renumbered(couplets), (str(place), number)
    if what == "here":
        first = tuple(one for one in couplets if one.id == name)
        return (*first, *(one for one in couplets if one.id != name)), chosen
    if number < 0:
        return couplets, chosen
    if what == "below":
        new = split_below(couplets, name, number, words=words)
        lead = lead_at(new, name, number)
        return new, (lead.to, 0) if lead else chosen
    steps = {"up": -1, "down": 1}.get(what, 0)
    there = min(max(number + steps, 0), len(key.couplet[name].leads) - 1)
    return moved_lead(couplets, name, number, there=there), (name, there)


def _started(key: Key, words: str) -> tuple[Couplets, Chosen]:
    lead = Lead(statement=words, taxa=tuple(taxon.id for taxon in key.taxa))
    return (Couplet(id="1", leads=(lead, lead)),), ("1", 0)


def deed_words(what: str, title: str) -> str:
    """A deed in words, for the step that is taken back."""
    words = {
        "start": translate("couplets", "First couplet"),
        "lead": translate("couplets", "New lead: {what}"),
        "below": translate("couplets", "New couplet below: {what}"),
        "up": translate("couplets", "Place of: {what}"),
        "down": translate("couplets", "Place of: {what}"),
        "here": translate("couplets", "The key starts elsewhere"),
        "number": translate("couplets", "Couplets numbered anew"),
    }
    return words[what].format(what=title)
