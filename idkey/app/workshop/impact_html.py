"""What the unsaved changes do, as pages of text."""

from collections.abc import Iterable
from html import escape

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.prose import bullets, head, paragraph, toned
from idkey.engine.audit import Remark, Weakness
from idkey.model.key import Key
from idkey.report.impact import CaseImpact, Impact, case_words
from idkey.report.language import Language
from idkey.report.names import rich
from idkey.report.remarks import remark_words

translate = QCoreApplication.translate

MOST = 60
"""Lines listed before the rest is counted."""

_COUPLETS = (
    Weakness.COUPLET_AGAINST_MATRIX,
    Weakness.UNREACHED_COUPLET,
    Weakness.UNREACHED_TAXON,
)


def changes_html(found: Impact, key: Key) -> str:
    """What changed since the key was saved."""
    return _listed([rich(key, change.words) for change in found.changes])


def effects_html(found: Impact, key: Key, language: Language) -> str:
    """What the changes do to the checks, the couplets and the rest of the key."""
    return "".join(
        (
            _checks(found, key),
            _remarks(
                translate("impact", "Couplets"),
                (
                    [r for r in found.worse if r.weakness in _COUPLETS],
                    [r for r in found.better if r.weakness in _COUPLETS],
                ),
                key,
                language,
            ),
            _remarks(
                translate("impact", "What the key can tell apart, and sources"),
                (_others(found.worse), _others(found.better)),
                key,
                language,
            ),
        )
    )


def cases_html(found: Iterable[CaseImpact], looked: int, language: Language) -> str:
    """Recorded cases that would be judged otherwise."""
    cases = tuple(found)
    title = head(translate("impact", "Recorded cases"))
    if not looked:
        text = translate("impact", "No recorded case has been judged with this key.")
        return title + paragraph(toned("soft", escape(text)))
    if not cases:
        text = translate("impact", "None would be judged otherwise, of {n} looked at.")
        return title + paragraph(escape(text.format(n=looked)))
    text = translate("impact", "{some} of {n} would be judged otherwise:")
    lines = [_case(one, language) for one in cases]
    said = paragraph(toned("doubt", escape(text.format(some=len(cases), n=looked))))
    return title + said + _listed(lines)


def _case(one: CaseImpact, language: Language) -> str:
    case = one.stored.case
    name = case.claim.text or case.id[:8]
    return f"<b>{escape(name)}</b> {escape(' '.join(case_words(one, language)))}"


def _checks(found: Impact, key: Key) -> str:
    title = head(translate("impact", "Published checks"))
    if not found.checks:
        text = translate("impact", "The key has no check that can be computed.")
        return title + paragraph(toned("soft", escape(text)))
    text = translate("impact", "{passing} of {n} pass.")
    said = paragraph(escape(text.format(passing=found.passing, n=found.checks)))
    known = {check.id: check.statement for check in key.checks}
    fails, passes = translate("impact", "fails now"), translate("impact", "passes now")
    lines = [_turn("hazard", fails, f"{own}: {known.get(own, '')}") for own in found.broken]
    lines += [_turn("accent", passes, f"{own}: {known.get(own, '')}") for own in found.mended]
    return title + said + _listed(lines)


def _others(remarks: tuple[Remark, ...]) -> list[Remark]:
    apart = (*_COUPLETS, Weakness.FAILED_CHECK)
    return [remark for remark in remarks if remark.weakness not in apart]


def _remarks(
    title: str, turned: tuple[list[Remark], list[Remark]], key: Key, language: Language
) -> str:
    worse, better = turned
    if not worse and not better:
        text = translate("impact", "Nothing gets worse or better.")
        return head(title) + paragraph(toned("soft", escape(text)))
    new, gone = translate("impact", "new"), translate("impact", "mended")
    lines = [_turn("doubt", new, remark_words(key, one, language).what) for one in worse]
    lines += [_turn("accent", gone, remark_words(key, one, language).what) for one in better]
    return head(title) + _listed(lines)


def _turn(tone: str, word: str, text: str) -> str:
    return f"{toned(tone, f'<b>{escape(word)}</b>')}&ensp;{escape(text)}"


def _listed(lines: list[str]) -> str:
    more = len(lines) - MOST
    told = lines[:MOST]
    if more > 0:
        told.append(escape(translate("impact", "… and {n} more").format(n=more)))
    return bullets(told)
