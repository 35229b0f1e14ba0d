"""The permit fields of a case, as part of its page."""

from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.prose import bullets, head, link, paragraph, toned
from idkey.app.records.work import Detail
from idkey.report.language import Language
from idkey.report.permit_words import check_locally, code_words, field_words, gap_words
from idkey.report.terms import permit_words
from idkey.store.permits import gaps
from idkey.store.record import Papers

translate = QCoreApplication.translate

FILL = "papers"
"""Kind of the link that opens the permit fields."""


def permit_part(found: Detail, language: Language) -> list[str]:
    """What is noted of papers and what is missing; nothing where no list names the animal."""
    papers = found.papers or Papers()
    if not found.permit.listed and papers == Papers():
        return []
    parts = [head(translate("records", "Permit fields"))]
    if found.permit.listed:
        said = translate("records", "May stand on a list: {taxa} ({lists}).")
        told = said.format(taxa=found.listed, lists=permit_words(found.permit, language))
        parts.append(paragraph(toned("permit", escape(told))))
    noted = (
        f"{field_words(name, language)}: {code_words(name, value, language)}"
        for name in Papers.__dataclass_fields__
        if (value := getattr(papers, name).strip())
    )
    parts.append(bullets(map(escape, noted)))
    missing = [gap_words(gap, language) for gap in gaps(papers, found.permit)]
    if missing:
        count = translate("records", "Missing or odd: {n} of the fields.").format(n=len(missing))
        fill = link(FILL, "", escape(translate("records", "Fill them in")))
        parts.append(paragraph(f"{toned('doubt', escape(count))} {fill}"))
    parts.append(paragraph(escape(check_locally(language)), "soft"))
    return parts
