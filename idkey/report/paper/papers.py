"""The permit fields in a rationale."""

from idkey.report.language import Language
from idkey.report.paper.prose import paragraph, pieces
from idkey.report.paper.sections import body, section
from idkey.report.paper.sheet import Sheet
from idkey.report.reasons import Rationale


def papers_section(sheet: Sheet, found: Rationale, language: Language) -> None:
    """What is noted of the papers, what is missing, and whom to ask; nothing without any."""
    if found.papers is None:
        return
    section(sheet, language.say("Permit fields"))
    noted = "; ".join(f"{name}: {value}" for name, value in found.papers.fields)
    lines = (f"{noted}." if noted else "", *found.papers.missing, found.papers.check)
    paragraph(sheet, pieces(found.italic, " ".join(filter(None, lines))), body(sheet))
