"""The rationale in short, in the words and the language of the document."""

from html import escape

from idkey.app.parts.prose import bullets, head, paragraph, rich_head, toned
from idkey.report.language import Language, in_language
from idkey.report.reasons import LookAlike, Rationale, SeenFinding
from idkey.report.words import rich_text


def preview_html(found: Rationale) -> str:
    """Verdict, name, cautions, findings, look-alikes and what was not looked at."""
    language = in_language(found.language)
    say = language.say

    def rich(text: str) -> str:
        return rich_text(found.italic, text)

    cautions = (toned(n.stake.value, rich(n.sentence)) for n in found.notices)
    alike = (rich(_alike(one, language)) for one in found.look_alikes)
    unseen = ", ".join(character.name for character in found.unseen)
    parts = [
        rich_head(f"{escape(found.title)}: {rich(found.heading)}"),
        paragraph(rich(found.sentence)),
        bullets(cautions),
        bullets(map(rich, found.claim.stakes)),
        _section(say("Rules of thumb"), bullets(map(rich, found.thumbs))),
        _section(say("What was seen"), bullets(rich(_finding(f)) for f in found.findings)),
        _section(say("Look-alikes, and what separates them"), bullets(alike)),
        _section(say("What was not looked at"), paragraph(escape(unseen)) if unseen else ""),
        _section(say("Permit fields"), bullets(_papers(found))),
        _section(say("How far this goes"), bullets(map(rich, (*found.unmet, found.next_step)))),
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


def _alike(alike: LookAlike, language: Language) -> str:
    names = ", ".join(separation.name for separation in alike.apart)
    return f"{alike.name}: {names or language.say('Nothing that was seen separates them.')}"


def _section(title: str, body: str) -> str:
    return head(title) + body if body else ""
