"""A taxon in words: names, range, dangers, papers, diagnosis, mix-ups, sources."""

from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.prose import bullets, head, link, paragraph, toned
from idkey.engine.diagnosis import Diagnosis
from idkey.engine.whatif import Return
from idkey.model.key import Key
from idkey.model.taxon import Taxon
from idkey.report.language import Language
from idkey.report.words import (
    climate_words,
    conflict_words,
    expected_words,
    hazard_words,
    name_of,
    permit_words,
    rich,
)

translate = QCoreApplication.translate


def facts_html(key: Key, taxon: Taxon, language: Language) -> str:
    """Names, range, size, climate, danger and papers as a table."""
    low, high = taxon.size_mm
    size = taxon.size or _size(low, high)
    rows = [
        (translate("taxon", "Family"), rich(key, _family(taxon))),
        (translate("taxon", "Also called"), escape(", ".join(taxon.vernacular))),
        (translate("taxon", "Older names"), rich(key, "; ".join(taxon.synonyms))),
        (translate("taxon", "Lives in"), escape(taxon.range)),
        (translate("taxon", "Adult size"), escape(size)),
        (
            translate("taxon", "Climate"),
            _with_note(climate_words(taxon.climate, language), taxon.climate_note),
        ),
        (translate("taxon", "Danger"), _danger(taxon, language)),
        (translate("taxon", "Papers"), _papers(key, taxon, language)),
        (translate("taxon", "Remark"), rich(key, taxon.note)),
    ]
    cells = "".join(
        f'<tr><td class="soft">{escape(head)}</td><td>{body}</td></tr>'
        for head, body in rows
        if body
    )
    return f"<table>{cells}</table>"


def diagnosis_html(key: Key, found: Diagnosis, language: Language) -> str:
    """The fewest characters that tell a taxon from all others."""
    lines = []
    for character in found.characters:
        scores = key.cells.get((found.taxon, character), ())
        name = escape(key.character[character].name)
        shown = rich(key, expected_words(key, scores, language))
        lines.append(f"{link('character', character, name)}: {shown}")
    title = translate("taxon", "Told from every other taxon of this key by")
    html = head(title) + bullets(lines)
    if found.thin:
        names = ", ".join(name_of(key, taxon) for taxon, _ in found.thin)
        text = translate("taxon", "The characters of this key do not surely tell it from {names}.")
        html += paragraph(rich(key, text.format(names=names)), "doubt")
    return html


def standing_html(key: Key, found: Return | None, language: Language) -> str:
    """What speaks against a taxon in this case, and what would bring it back."""
    if found is None or not found.against:
        return ""
    title = translate("taxon", "What speaks against it here")
    lines = (rich(key, conflict_words(key, conflict, language)) for conflict in found.against)
    html = head(title) + bullets(lines)
    if found.withdraw:
        names = ", ".join(key.character[c].name for c in found.withdraw)
        text = translate("taxon", "It would come back without: {names}.").format(names=names)
        html += paragraph(escape(text))
    return html


def labels_html(key: Key, taxon: str) -> str:
    """Labels it is sold under, rightly and wrongly."""
    rightly = [label.text for label in key.labels if taxon in label.covers]
    wrongly = [label.text for label in key.labels if taxon in label.sold_as]
    lines = []
    if rightly:
        lines.append(
            translate("taxon", "Rightly sold as: {labels}").format(labels=", ".join(rightly))
        )
    if wrongly:
        lines.append(
            translate("taxon", "Wrongly sold as: {labels}").format(labels=", ".join(wrongly))
        )
    title = translate("taxon", "Labels")
    return head(title) + bullets(map(escape, lines)) if lines else ""


def sources_html(key: Key, taxon: Taxon) -> str:
    """The cited works, and which scores rest on memory."""
    remembered = [
        key.character[score.character].name
        for score in key.scores
        if score.taxon == taxon.id and not score.basis.printed
    ]
    html = ""
    if remembered:
        text = translate("taxon", "Not from print, but from memory or practice: {names}.")
        names = ", ".join(dict.fromkeys(remembered))
        html += paragraph(escape(text.format(names=names)), "doubt")
    cited = dict.fromkeys((*taxon.sources, *taxon.hazard.sources, *taxon.permit.sources))
    lines = [escape(key.source[source].citation) for source in cited if source in key.source]
    if lines or html:
        html = head(translate("taxon", "Sources")) + html + bullets(lines)
    return html


def _family(taxon: Taxon) -> str:
    return ", ".join(part for part in (taxon.family, taxon.subfamily) if part)


def _size(low: float | None, high: float | None) -> str:
    if low is None and high is None:
        return ""
    return " – ".join("…" if x is None else f"{x:g}" for x in (low, high)) + " mm"


def _with_note(text: str, note: str) -> str:
    return escape(f"{text}; {note}" if note else text)


def _danger(taxon: Taxon, language: Language) -> str:
    words = escape(hazard_words(taxon.hazard, language))
    marked = toned("hazard", f"⚠ {words}") if taxon.dangerous else words
    return f"{marked}. {escape(taxon.hazard.note)}" if taxon.hazard.note else marked


def _papers(key: Key, taxon: Taxon, language: Language) -> str:
    permit = taxon.permit
    words = escape(permit_words(permit, language))
    parts = [toned("permit", words) if permit.listed else words]
    if permit.since:
        parts.append(escape(translate("taxon", "since {when}").format(when=permit.since)))
    if permit.listed_as:
        names = ", ".join(permit.listed_as)
        parts.append(rich(key, translate("taxon", "listed as {names}").format(names=names)))
    text = ", ".join(parts)
    return f"{text}. {rich(key, permit.note)}" if permit.note else text
