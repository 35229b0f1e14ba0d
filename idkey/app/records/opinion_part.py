"""The second opinions of a case, as part of its page."""

from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.prose import bullets, head, link, paragraph
from idkey.app.records.agreement_words import agreement_words
from idkey.app.records.work import Detail, Opinion
from idkey.engine.agreement import CharacterMatch, Match
from idkey.model.case import Finding
from idkey.report.finding_words import seen_words
from idkey.report.language import Language

translate = QCoreApplication.translate

COMPARE = "compare"
"""Kind of the link that lays an unfinished second opinion open."""

CASE = "case"
"""Kind of a link to another case."""


def opinion_part(found: Detail, language: Language, *, shown: frozenset[str]) -> list[str]:
    """What second keepers found, beside the first; nothing where nobody was asked.

    Args:
        found: The case.
        language: Language of the findings.
        shown: Ids of unfinished second opinions that the person wants to see all the same.
    """
    if found.first:
        said = translate(
            "records",
            "This is a second opinion, given blind. It counts in no rate; the first one is",
        )
        case = translate("records", "case {id}").format(id=found.first[:8])
        return [paragraph(f"{escape(said)} {link(CASE, found.first, escape(case))}.", "soft")]
    if not found.opinions:
        return []
    parts = [head(translate("records", "Second opinions"))]
    for one in found.opinions:
        parts += _opinion(found, one, language, shown=shown)
    if found.agreement is not None:
        parts.append(paragraph(escape(agreement_words(found.agreement, language)), "soft"))
    return parts


def _opinion(
    found: Detail, one: Opinion, language: Language, *, shown: frozenset[str]
) -> list[str]:
    case = one.second.case
    first = escape(found.stored.case.by or translate("records", "First"))
    who = escape(case.by or translate("records", "Somebody"))
    if not one.finished and case.id not in shown:
        said = translate(
            "records", "{who} is still at it, blind: {n} findings, no verdict of their own yet."
        ).format(who=who, n=len(case.findings))
        look = translate("records", "Compare all the same")
        return [
            paragraph(
                f"{said} {link(CASE, case.id, escape(translate('records', 'Open it')))} · "
                f"{link(COMPARE, case.id, escape(look))}"
            )
        ]
    parts = [paragraph(f"<b>{who}</b>: {_verdicts(one)}")]
    matches = one.comparison.characters
    apart = [m for m in matches if m.match in (Match.PARTLY, Match.DIFFERENT) or _seen_by_one(m)]
    parts.append(bullets(_apart(found, match, (first, who), language) for match in apart))
    same = ", ".join(_name(found, m) for m in matches if m.match is Match.SAME)
    parts.append(paragraph(escape(_counted(one, same)), "soft"))
    return parts


def _seen_by_one(match: CharacterMatch) -> bool:
    """Whether just one of the two saw something."""
    seen = [finding is not None and not finding.unseen for finding in (match.one, match.other)]
    return any(seen) and not all(seen)


def _verdicts(one: Opinion) -> str:
    told = one.second.summary
    name = f"<i>{escape(told.name)}</i>" if told and told.name else translate("records", "no name")
    if one.comparison.same_taxa is None:
        return name
    if one.comparison.same_taxa:
        return translate("records", "the same name, {name}").format(name=name)
    return translate("records", "another name, {name}").format(name=name)


def _apart(
    found: Detail, match: CharacterMatch, people: tuple[str, str], language: Language
) -> str:
    one, other = (escape(_seen(found, finding, language)) for finding in (match.one, match.other))
    told = f"{people[0]}: {one} · {people[1]}: {other}"
    return f"<b>{escape(_name(found, match))}</b> {escape(_match(match.match))}<br>{told}"


def _name(found: Detail, match: CharacterMatch) -> str:
    known = found.key.character.get(match.character) if found.key is not None else None
    return known.name if known is not None else match.character


def _seen(found: Detail, finding: Finding | None, language: Language) -> str:
    if finding is None:
        return "–"
    if found.key is None:
        return ", ".join(finding.states) or str(finding.value or "–")
    return seen_words(found.key, finding, language)


def _match(match: Match) -> str:
    return {
        Match.SAME: translate("records", "✓ same"),
        Match.PARTLY: translate("records", "≈ partly"),
        Match.DIFFERENT: translate("records", "✗ different"),
        Match.ONE_SIDED: translate("records", "· one only"),
    }[match]


def _counted(one: Opinion, same: str) -> str:
    both = [m for m in one.comparison.characters if m.match is not Match.ONE_SIDED]
    number = sum(m.match is Match.SAME for m in both)
    said = translate("records", "Seen by both: {n} characters; the same on {same}").format(
        n=len(both), same=number
    )
    return f"{said} ({same})." if same else f"{said}."
