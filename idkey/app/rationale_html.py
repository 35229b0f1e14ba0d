"""The rationale in short, as it will stand in the document."""

from collections.abc import Iterable
from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.report.reasons import LookAlike, Rationale, SeenFinding
from idkey.report.words import rich_text

_tr = QCoreApplication.translate


def preview_html(found: Rationale) -> str:
    """Verdict, name, cautions, findings, look-alikes and what was not looked at."""

    def rich(text: str) -> str:
        return rich_text(found.italic, text)

    cautions = (f'<span class="{n.stake.value}">{rich(n.sentence)}</span>' for n in found.notices)
    unseen = ", ".join(character.name for character in found.unseen)
    parts = [
        f"<h2>{escape(found.title)}: {rich(found.heading)}</h2>",
        f"<p>{rich(found.sentence)}</p>",
        _list(cautions),
        _list(map(rich, found.claim.stakes)),
        _section(_tr("preview", "Findings"), _list(rich(_finding(f)) for f in found.findings)),
        _section(_tr("preview", "Look-alikes"), _list(rich(_alike(a)) for a in found.look_alikes)),
        _section(_tr("preview", "Still missing for a name"), _list(map(rich, found.unmet))),
        _section(_tr("preview", "Not looked at"), f"<p>{escape(unseen)}</p>" if unseen else ""),
        _section(_tr("preview", "Next"), f"<p>{rich(found.next_step)}</p>"),
    ]
    return "".join(parts)


def _finding(finding: SeenFinding) -> str:
    how = ", ".join(part for part in (finding.certainty, finding.means) if part)
    return f"{finding.name}: {finding.seen}" + (f" ({how})" if how else "")


def _alike(alike: LookAlike) -> str:
    if not alike.apart:
        return f"{alike.name}: " + _tr("preview", "nothing sets it apart yet")
    names = ", ".join(separation.name for separation in alike.apart)
    return f"{alike.name}: " + _tr("preview", "set apart by {names}").format(names=names)


def _section(head: str, body: str) -> str:
    return f"<h2>{escape(head)}</h2>{body}" if body else ""


def _list(lines: Iterable[str]) -> str:
    items = "".join(f"<li>{line}</li>" for line in lines)
    return f"<ul>{items}</ul>" if items else ""
