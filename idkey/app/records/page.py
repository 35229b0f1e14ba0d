"""One recorded case as a page to read."""

from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.changes import change_words
from idkey.app.parts.moments import moment
from idkey.app.parts.prose import bullets, head, paragraph, toned
from idkey.app.records.opinion_part import opinion_part
from idkey.app.records.permit_part import permit_part
from idkey.app.records.work import Detail, Step
from idkey.engine.result import Stake, VerdictKind
from idkey.engine.sample import SAMPLE_ID
from idkey.report.language import Language
from idkey.report.terms import verdict_title
from idkey.report.words import rich

translate = QCoreApplication.translate


def kind_words(kind: str, language: Language) -> str:
    """A kind of verdict in words; what an older book calls otherwise stays as it is."""
    if kind not in list(VerdictKind):
        return kind or translate("records", "No verdict yet")
    return verdict_title(VerdictKind(kind), language)


def case_page(found: Detail, language: Language, *, shown: frozenset[str] = frozenset()) -> str:
    """The case as HTML: what was claimed and concluded, what became of it, its revisions.

    Args:
        found: The case.
        language: Language of the fixed words.
        shown: Ids of unfinished second opinions that are to be shown all the same.
    """
    case, summary = found.stored.case, found.stored.summary
    claim = case.claim
    title = language.quote(claim.text) if claim.text else translate("records", "No label")
    parts = [head(title)]
    facts = (claim.supplier, language.day(claim.date), claim.sex, claim.size)
    told = " · ".join(fact for fact in facts if fact)
    if told:
        parts.append(paragraph(escape(told), "soft"))
    verdict = kind_words(summary.kind if summary else "", language)
    name = f": {_name(found, summary.name)}" if summary and summary.name else ""
    parts.append(paragraph(f"<b>{escape(verdict)}</b>{name}"))
    parts += [_caution(stake) for stake in (summary.cautions if summary else ())]
    parts.append(paragraph(escape(_basis(found)), "soft"))
    if case.id == SAMPLE_ID:
        said = translate("records", "This is the sample: no rate and no starting rate counts it.")
        parts.append(paragraph(escape(said), "soft"))
    if found.moved_on:
        said = translate(
            "records", "The key has changed since: writing it again judges the case anew."
        )
        parts.append(paragraph(escape(said), "doubt"))
    parts += permit_part(found, language)
    parts += opinion_part(found, language, shown=shown)
    parts += _dealings(found)
    return "".join((*parts, *_history(found, language)))


def _name(found: Detail, name: str) -> str:
    """The name as HTML: only what is Latin is set in italics."""
    return rich(found.key, name) if found.key else escape(name)


def _caution(stake: str) -> str:
    if stake == Stake.HAZARD:
        said = translate("records", "A dangerous species was not ruled out: do not handle.")
        return paragraph(toned("hazard", escape(said)))
    said = translate("records", "A permit-listed species was not ruled out: check papers.")
    return paragraph(toned("permit", escape(said)))


def _basis(found: Detail) -> str:
    case = found.stored.case
    text = translate("records", "{n} findings · key {key} {version} · case {id}")
    return text.format(n=len(case.findings), key=case.key, version=case.key_version, id=case.id[:8])


def _dealings(found: Detail) -> list[str]:
    """Intake, sales and documents; nothing where there are none."""
    lines = []
    if found.intake is not None:
        text = translate("records", "Came in as {number} on {date}")
        lines.append(text.format(number=found.intake.number, date=found.intake.date or "–"))
    for sale in found.sales:
        facts = (sale.date, sale.price, sale.note)
        buyer = translate("records", "buyer noted") if sale.buyer else ""
        told = ", ".join(fact for fact in (*facts, buyer) if fact)
        text = translate("records", "Sold as {number}").format(number=sale.number)
        lines.append(f"{text} ({told})" if told else text)
    for paper in found.issued:
        text = translate("records", "Rationale {file} of revision {number}")
        lines.append(text.format(file=paper.file, number=paper.revision))
    if not lines:
        return []
    return [head(translate("records", "Sale and papers")), bullets(map(escape, lines))]


def _history(found: Detail, language: Language) -> list[str]:
    lines = [_step(step, found, language) for step in found.steps]
    parts = [head(translate("records", "Revisions")), bullets(lines)]
    if found.more:
        text = translate("records", "and {n} before them").format(n=found.more)
        parts.append(paragraph(escape(text), "soft"))
    return parts


def _step(step: Step, found: Detail, language: Language) -> str:
    revision = step.revision
    by = f", {revision.by}" if revision.by else ""
    first = f"<b>{revision.number}</b>&ensp;{escape(moment(revision.at) + by)}"
    if revision.number == 1:
        changed = translate("records", "case opened")
    else:
        changed = change_words(step.changed, found.key) or translate("records", "judged")
    verdict = kind_words(step.kind, language) if step.kind else ""
    second = " → ".join(part for part in (changed, verdict) if part)
    return f"{first}<br>{toned('soft', escape(second))}"
