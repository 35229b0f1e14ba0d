"""What the library says about a key, as HTML; every text of a key is escaped."""

from collections.abc import Iterable
from html import escape
from itertools import islice

from PySide6.QtCore import QCoreApplication

from idkey.app.library.account import Account, Counts
from idkey.app.parts.prose import bullets, head, paragraph, toned
from idkey.app.parts.worded import worded
from idkey.formats.problem import Problem, Severity
from idkey.model.key import Key

translate = QCoreApplication.translate

MOST = 8
"""Pairs and mistakes that are listed; the rest is counted."""


def key_html(one: Account) -> str:
    """Everything about a key but its title and its bar."""
    if one.key is None or one.counts is None:
        return _mistakes(one) if one.broken else paragraph(translate("library", "Being read …"))
    parts = [_mistakes(one) if one.broken else "", _facts(one, one.key)]
    parts += [_holds(one.key, one.counts), _alike(one.counts), _scope(one.key)]
    parts.append(_warnings(one.problems))
    return "".join(filter(None, parts))


def numbers_html(key: Key, counts: Counts) -> str:
    """The same of a key that is not here yet, without where it lies."""
    parts = [_people(key), _holds(key, counts), _alike(counts), _scope(key)]
    return "".join(filter(None, parts))


def _facts(one: Account, key: Key) -> str:
    written = ""
    if one.written:
        text = translate("library", "Last written on {day}.")
        written = paragraph(escape(text.format(day=one.written)), "soft")
    return _people(key) + written


def _people(key: Key) -> str:
    lines = []
    if key.authors:
        text = translate("library", "By {authors}.")
        lines.append(text.format(authors=", ".join(key.authors)))
    if key.licence:
        lines.append(translate("library", "Licence: {licence}.").format(licence=key.licence))
    else:
        lines.append(translate("library", "No licence is stated."))
    seen = sum(source.seen for source in key.sources)
    text = translate("library", "Sources cited: {n}; seen by the authors: {seen}.")
    lines.append(text.format(n=len(key.sources), seen=seen))
    return paragraph(escape(" ".join(lines)))


def _holds(key: Key, counts: Counts) -> str:
    lines = []
    if counts.checks:
        text = translate("library", "{n} of {all} published statements hold.")
        said = escape(text.format(n=counts.passed, all=counts.checks))
        lines.append(said if counts.passed == counts.checks else toned("doubt", said))
    else:
        lines.append(escape(translate("library", "It carries no published statements.")))
    dangerous = sum(taxon.dangerous for taxon in key.taxa)
    if counts.untold:
        text = translate(
            "library",
            "Nobody has said yet how dangerous {n} of its taxa are; they are treated as "
            "medically significant.",
        )
        lines.append(toned("hazard", escape(text.format(n=counts.untold))))
    elif dangerous:
        text = translate("library", "Medically significant taxa: {n}.")
        lines.append(toned("hazard", escape(text.format(n=dangerous))))
    if listed := sum(taxon.listed for taxon in key.taxa):
        text = translate("library", "Permit-listed taxa: {n}; check locally.")
        said = escape(text.format(n=listed))
        if counts.law:
            of = translate("library", "The oldest of these entries is of {day}.")
            said += " " + escape(of.format(day=counts.law))
        lines.append(toned("permit", said))
    return bullets(lines)


def _alike(counts: Counts) -> str:
    if not counts.inseparable:
        return paragraph(escape(translate("library", "Every pair of taxa can be told apart.")))
    text = translate("library", "Pairs that no character of it sets apart: {n}")
    number = len(counts.inseparable)
    pairs = (escape(f"{one} – {other}") for one, other in counts.inseparable)
    return head(text.format(n=number)) + listed(pairs, number)


def listed(lines: Iterable[str], total: int, most: int = MOST) -> str:
    """The first lines, HTML already, as a list that ends in how many more there are."""
    told = list(islice(lines, most))
    if total > most:
        told.append(escape(translate("library", "… and {n} more").format(n=total - most)))
    return bullets(told)


def _scope(key: Key) -> str:
    if not key.scope:
        return ""
    return head(translate("library", "What it covers")) + paragraph(escape(key.scope))


def _mistakes(one: Account) -> str:
    said = worded(one.entry.problem) or translate(
        "library", "It cannot be used as it stands. Mend what is named here, then look again."
    )
    errors = [p for p in one.problems if p.severity is Severity.ERROR]
    told = _told(errors) if errors else ""
    return paragraph(toned("doubt", escape(said))) + told


def _warnings(problems: tuple[Problem, ...]) -> str:
    warnings = [p for p in problems if p.severity is not Severity.ERROR]
    if not warnings:
        return ""
    return head(translate("library", "Worth a look")) + _told(warnings)


def _told(problems: list[Problem]) -> str:
    lines = (
        f"<b>{escape(problem.file.name)}:{problem.line}</b> "
        f"{escape(worded(problem.problem))} {escape(worded(problem.remedy))}"
        for problem in problems
    )
    return listed(lines, len(problems))
