"""The rationale in short, as it will stand in the document."""

from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.prose import bullets, head, paragraph, rich_head, toned
from idkey.report.reasons import LookAlike, Rationale, SeenFinding
from idkey.report.words import rich_text

translate = QCoreApplication.translate


def preview_html(found: Rationale) -> str:
    """Verdict, name, cautions, findings, look-alikes and what was not looked at."""

    def rich(text: str) -> str:
        return rich_text(found.italic, text)

    cautions = (toned(n.stake.value, rich(n.sentence)) for n in found.notices)
    unseen = ", ".join(character.name for character in found.unseen)
    parts = [
        rich_head(f"{escape(found.title)}: {rich(found.heading)}"),
        paragraph(rich(found.sentence)),
        bullets(cautions),
        bullets(map(rich, found.claim.stakes)),
        _section(translate("preview", "Rules of thumb"), bullets(map(rich, found.thumbs))),
        _section(
            translate("preview", "Findings"), bullets(rich(_finding(f)) for f in found.findings)
        ),
        _section(
            translate("preview", "Look-alikes"), bullets(rich(_alike(a)) for a in found.look_alikes)
        ),
        _section(translate("preview", "Still missing for a name"), bullets(map(rich, found.unmet))),
        _section(
            translate("preview", "Not looked at"), paragraph(escape(unseen)) if unseen else ""
        ),
        _section(translate("preview", "Permit fields"), bullets(_papers(found))),
        _section(translate("preview", "Next"), paragraph(rich(found.next_step))),
    ]
    return "".join(parts)


def _papers(found: Rationale) -> tuple[str, ...]:
    if found.papers is None:
        return ()
    noted = (f"{name}: {value}" for name, value in found.papers.fields)
    return tuple(map(escape, (*noted, *found.papers.missing, found.papers.check)))


def _finding(finding: SeenFinding) -> str:
    how = ", ".join(part for part in (finding.certainty, finding.means) if part)
    return f"{finding.name}: {finding.seen}" + (f" ({how})" if how else "")


def _alike(alike: LookAlike) -> str:
    if not alike.apart:
        return f"{alike.name}: " + translate("preview", "nothing sets it apart yet")
    names = ", ".join(separation.name for separation in alike.apart)
    return f"{alike.name}: " + translate("preview", "set apart by {names}").format(names=names)


def _section(title: str, body: str) -> str:
    return head(title) + body if body else ""
