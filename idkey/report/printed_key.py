"""A single-access key as it is printed: bracketed or indented couplets, as data and as text."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import StrEnum
from textwrap import wrap

from idkey.model.couplet import Couplet
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.report.names import name_of


class Layout(StrEnum):
    """How couplets stand on paper."""

    BRACKETED = "bracketed"
    INDENTED = "indented"


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintedLead:
    """One line of a printed key.

    Attributes:
        couplet: Id of its couplet, usually a number.
        place: Which lead of the couplet, from 0.
        origin: Couplet that led here; empty for the start, and for indented lines.
        depth: How far it is indented; 0 in a bracketed key.
        statement: What the animal shows.
        to: Couplet it goes to; empty at an end, and where that couplet stands right below.
        ends: Names it ends in.
        dangerous: Whether one of them is medically significant.
        listed: Whether one of them is permit-listed.
        remark: What cannot be told apart here, or a caution.
        note: Note of the couplet; on its first lead only.
    """

    couplet: str
    place: int
    statement: str
    origin: str = ""
    depth: int = 0
    to: str = ""
    ends: tuple[str, ...] = ()
    dangerous: bool = False
    listed: bool = False
    remark: str = ""
    note: str = ""

    @property
    def first(self) -> bool:
        """Whether it is the first lead of its couplet."""
        return self.place == 0


def printed_key(key: Key, layout: Layout = Layout.BRACKETED) -> tuple[PrintedLead, ...]:
    """The couplets of a key as lines, under the key's own numbers.

    Args:
        key: The key; couplets nobody reaches are left out.
        layout: Bracketed keeps the leads of a couplet together, in the order of the key;
            indented puts what follows a lead right below it, and refers to a couplet that was
            printed already.
    """
    if not key.couplets:
        return ()
    if layout is Layout.BRACKETED:
        return tuple(_bracketed(key))
    return tuple(_indented(key, key.couplets[0].id, 0, set()))


def _origins(key: Key) -> dict[str, str]:
    """The couplet that first leads to each couplet that can be reached; the start has none."""
    found = {key.couplets[0].id: ""}
    waiting = [key.couplets[0].id]
    while waiting:
        couplet = waiting.pop(0)
        for lead in key.couplet[couplet].leads:
            if lead.to in key.couplet and lead.to not in found:
                found[lead.to] = couplet
                waiting.append(lead.to)
    return found


def _bracketed(key: Key) -> Iterator[PrintedLead]:
    origins = _origins(key)
    for couplet in key.couplets:
        if couplet.id in origins:
            for place, lead in enumerate(couplet.leads):
                line = _line(key, couplet, place)
                yield replace(line, origin=origins[couplet.id], to=lead.to)


def _indented(key: Key, couplet: str, depth: int, printed: set[str]) -> Iterator[PrintedLead]:
    printed.add(couplet)
    known = key.couplet[couplet]
    for place, lead in enumerate(known.leads):
        follows = lead.to in key.couplet and lead.to not in printed
        yield replace(_line(key, known, place), depth=depth, to="" if follows else lead.to)
        if follows:
            yield from _indented(key, lead.to, depth + 1, printed)


def _line(key: Key, couplet: Couplet, place: int) -> PrintedLead:
    lead = couplet.leads[place]
    taxa = [key.taxon[taxon] for taxon in lead.taxa if taxon in key.taxon]
    return PrintedLead(
        couplet=couplet.id,
        place=place,
        statement=lead.statement.rstrip(". "),
        ends=tuple(name_of(key, taxon) for taxon in lead.taxa),
        dangerous=any(taxon.dangerous for taxon in taxa),
        listed=any(taxon.listed for taxon in taxa),
        remark=lead.remark,
        note=couplet.note if place == 0 else "",
    )


def mark_words(lead: PrintedLead, language: Language = ENGLISH) -> str:
    """Danger and papers of what a lead ends in, in words, unless its remark says so."""
    marks = (
        language.say("medically significant") if lead.dangerous else "",
        language.say("permit-listed") if lead.listed else "",
    )
    said = lead.remark.casefold()
    return ", ".join(mark for mark in marks if mark and mark.casefold() not in said)


def number_words(lead: PrintedLead, layout: Layout = Layout.BRACKETED) -> str:
    """What stands before a lead.

    Bracketed: ``"3(1)"`` (reached from 1), then dashes. Indented: ``"3"``, ``"3′"``, ``"3′′"``.
    """
    if layout is Layout.INDENTED:
        return lead.couplet + "′" * lead.place
    if not lead.first:
        return "–"
    return f"{lead.couplet}({lead.origin})" if lead.origin else lead.couplet


def end_words(lead: PrintedLead, language: Language = ENGLISH) -> str:
    """Where a lead goes: a couplet number, or names."""
    if lead.ends:
        return language.join(lead.ends, "or")
    return lead.to


def printed_text(
    key: Key,
    layout: Layout = Layout.BRACKETED,
    language: Language = ENGLISH,
    *,
    width: int = 78,
) -> str:
    """The key as plain text of at most `width` signs a line."""
    lines = [*wrap(f"{key.title}, {language.say('version {n}', n=key.version)}", width), ""]
    for lead in printed_key(key, layout):
        lines += _text(lead, layout, language, width)
    return "\n".join(lines) + "\n"


def _text(lead: PrintedLead, layout: Layout, language: Language, width: int) -> list[str]:
    indent = "  " * min(lead.depth, 12)
    number = number_words(lead, layout)
    head = f"{indent}{number:<{6 if layout is Layout.BRACKETED else 4}} "
    hang = " " * len(head)
    lines = []
    if lead.note:
        lines += wrap(f"[{lead.note}]", width, initial_indent=hang, subsequent_indent=hang)
    end, marks = end_words(lead, language), mark_words(lead, language)
    text = f"{lead.statement} … {end}" if end else f"{lead.statement}:"
    text = f"{text} ({marks})" if marks else text
    lines += wrap(text, width, initial_indent=head, subsequent_indent=hang)
    if lead.remark:
        lines += wrap(lead.remark, width, initial_indent=hang, subsequent_indent=hang)
    return lines
