r"""Couplets as plain text: written from a key, and read back with every mistake by its line.

A couplet is a line for each of its leads, with what belongs to a lead indented below it::

    1 note: Look from outside only.
    1 a. Sting bulb black. -> 2
      sees: telson_colour = dark; total_length = 120..
      remark: Medically significant.
    1 b. Sting bulb reddish. -> pandinus_imperator, pandinus_gambiensis

In texts ``\n`` stands for a new line, ``\\`` for a backslash and ``\_`` for a blank at an end.
"""

from collections.abc import Iterable
from string import ascii_lowercase

from idkey.app.workshop.couplet_reading import Mistake, Reader
from idkey.app.workshop.couplet_signs import packed
from idkey.app.workshop.forms_values import number_text
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key


def couplets_text(couplets: Iterable[Couplet]) -> str:
    """The couplets as text."""
    all_ = tuple(couplets)
    ids = frozenset(couplet.id for couplet in all_)
    return "\n\n".join(_couplet(couplet, ids) for couplet in all_) + ("\n" if all_ else "")


def _couplet(couplet: Couplet, ids: frozenset[str]) -> str:
    lines = [f"{couplet.id} note: {packed(couplet.note)}"] if couplet.note else []
    for place, lead in enumerate(couplet.leads):
        goal = _goal(lead, ids)
        lines.append(f"{couplet.id} {letter(place)}. {packed(lead.statement)} -> {goal}")
        if lead.sees:
            lines.append(f"  sees: {'; '.join(map(_sees, lead.sees))}")
        if lead.remark:
            lines.append(f"  remark: {packed(lead.remark)}")
    return "\n".join(lines)


def letter(place: int) -> str:
    """The letter of a lead, counted from 0: a to z, then aa."""
    more, rest = divmod(place, len(ascii_lowercase))
    return (letter(more - 1) if more else "") + ascii_lowercase[rest]


def _goal(lead: Lead, ids: frozenset[str]) -> str:
    if lead.to:
        return lead.to
    if len(lead.taxa) == 1 and lead.taxa[0] in ids:
        return f"taxon {lead.taxa[0]}"
    return ", ".join(lead.taxa)


def _sees(sees: Sees) -> str:
    if sees.states:
        return f"{sees.character} = {', '.join(sees.states)}"
    return f"{sees.character} = {number_text(sees.low)}..{number_text(sees.high)}"


def couplets_of_text(text: str, key: Key) -> tuple[tuple[Couplet, ...] | None, tuple[Mistake, ...]]:
    """The couplets a text says, None when it has mistakes, and all mistakes in order.

    Args:
        text: The text.
        key: The key, for its taxa, characters and states.
    """
    reader = Reader(key)
    for place, line in enumerate(text.split("\n"), start=1):
        reader.take(place, line)
    return reader.ended()
