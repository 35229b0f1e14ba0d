"""The written reasons for a verdict, as plain data and as JSON."""

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any

from idkey import __version__
from idkey.engine.compile import compiled
from idkey.engine.labels import claimed
from idkey.engine.questions import questions
from idkey.engine.result import Assessment, Caution, Level, Stake
from idkey.engine.thumbs import leaning
from idkey.errors import IdKeyError
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.report.label_words import covers_words, mixup_warning, stakes_words
from idkey.report.language import Language, in_language
from idkey.report.look_alikes import look_alikes
from idkey.report.names import scientific_names
from idkey.report.notes import (
    ClaimNote,
    KeyStamp,
    Notice,
    PictureNote,
    PriorNote,
    Reference,
    RevisionStamp,
    SaleNote,
)
from idkey.report.permit_words import papers_note
from idkey.report.question_words import next_step
from idkey.report.reasons import Rationale, agreed
from idkey.report.seen import seen_findings, unseen_characters
from idkey.report.terms import hazard_words, permit_words, verdict_title
from idkey.report.thumb_words import thumb_words
from idkey.report.verdict_words import (
    caution_sentence,
    prior_words,
    unmet_words,
    verdict_sentence,
    written_name,
)
from idkey.store.codec import Form, canonical, digest
from idkey.store.record import Papers, Revision, Sale

_FORM = Form(Rationale)

DIGEST = "sha256"
"""Name of the field that holds the digest of all others."""


def rationale(
    key: Key,
    assessment: Assessment,
    *,
    sale: Sale | None = None,
    revision: Revision | None = None,
    language: str = "en",
    pictures: Sequence[PictureNote] = (),
    papers: Papers | None = None,
) -> Rationale:
    """The reasons for the verdict on a case.

    Args:
        key: The key it was judged with.
        assessment: What the findings say.
        sale: The sale; its buyer does not enter the document.
        revision: The revision of the record it is written from.
        language: One of `idkey.report.language.CODES`.
        pictures: Pictures that are shown.
        papers: Permit fields that are noted.
    """
    spoken = in_language(language)
    bare = Rationale(
        **_said(key, assessment, spoken),
        **_weighed(key, assessment, spoken),
        at=revision.at if revision else assessment.case.created,
        claim=_claim(key, assessment, spoken),
        notices=tuple(_notice(key, caution, spoken) for caution in assessment.cautions),
        findings=seen_findings(key, assessment, spoken),
        prior=_prior(key, assessment, spoken),
        key=_stamp(key),
        key_cautions=key.cautions,
        references=(),
        sale=_sale(sale) if sale else None,
        revision=_revision(revision) if revision else None,
        pictures=tuple(pictures),
        papers=papers_note(key, assessment, papers, spoken),
    )
    return _referenced(key, bare)


def _weighed(key: Key, assessment: Assessment, language: Language) -> dict[str, Any]:
    """Fields about what else it could be, and what was not looked at."""
    verdict = assessment.verdict
    matrix = compiled(key, assessment.case.specimen, assessment.case.care)
    asked, alike = questions(matrix, assessment), look_alikes(key, assessment, language)
    leans = leaning(matrix, assessment)
    return {
        "look_alikes": alike,
        "others": len(key.taxa) - len(alike) - len(verdict.taxa),
        "unseen": unseen_characters(key, assessment, asked),
        "next_step": next_step(key, assessment, asked, language, leaning=leans),
        "thumbs": thumb_words(key, leans, verdict, language) if leans else (),
    }


def _said(key: Key, assessment: Assessment, language: Language) -> dict[str, Any]:
    """Fields about the verdict itself."""
    verdict, case = assessment.verdict, assessment.case
    established = verdict.level is Level.ESTABLISHED
    leader = key.taxon[verdict.taxa[0]]
    settled = verdict.level in (Level.ESTABLISHED, Level.GROUP)
    named = [key.taxon[taxon] for taxon in verdict.taxa] if settled else []
    return {
        "language": language.code,
        "by": case.by,
        "case": public_case(case),
        "kind": verdict.kind,
        "level": verdict.level,
        "title": verdict_title(verdict.kind, language, labelled=bool(case.claim.text.strip())),
        "sentence": verdict_sentence(key, assessment, language),
        "name": verdict.name,
        "heading": written_name(verdict, language),
        "authority": leader.authority if established else "",
        "vernacular": leader.vernacular[0] if established and leader.vernacular else "",
        "hazard": "; ".join(dict.fromkeys(hazard_words(t.hazard, language) for t in named)),
        "permit": "; ".join(
            dict.fromkeys(permit_words(t.permit, language) for t in named if t.listed)
        ),
        "taxa": verdict.taxa,
        "support": agreed(verdict.support),
        "answers": verdict.answers,
        "fit": None if verdict.fit is None else agreed(verdict.fit),
        "separated": verdict.separated,
        "unmet": tuple(unmet_words(key, unmet, language) for unmet in verdict.unmet),
    }


def public_case(case: Case) -> Case:
    """The case without what is for the shop alone."""
    return replace(case, note="", claim=replace(case.claim, price=""))


def _notice(key: Key, caution: Caution, language: Language) -> Notice:
    taxa = [key.taxon[taxon] for taxon in caution.taxa if taxon in key.taxon]
    hazard = caution.stake is Stake.HAZARD
    sources = (s for t in taxa for s in (t.hazard if hazard else t.permit).sources)
    return Notice(
        stake=caution.stake,
        sentence=caution_sentence(key, caution, language),
        taxa=caution.taxa,
        certain=caution.certain,
        likely=caution.likely,
        sources=tuple(dict.fromkeys(sources)),
    )


def _claim(key: Key, assessment: Assessment, language: Language) -> ClaimNote:
    label = claimed(key, assessment.case)
    stakes = stakes_words(key, assessment.case.claim, assessment.verdict, language)
    if label is None:
        return ClaimNote(stakes=stakes)
    return ClaimNote(
        covers=covers_words(key, label, language),
        warning=mixup_warning(key, label, language),
        stakes=stakes,
        confirmed=label.text,
        sources=label.sources,
    )


def _stamp(key: Key) -> KeyStamp:
    return KeyStamp(
        id=key.id,
        title=key.title,
        version=key.version,
        digest=key.digest,
        licence=key.licence,
        taxa=len(key.taxa),
        program=__version__,
    )


def _prior(key: Key, assessment: Assessment, language: Language) -> PriorNote:
    return PriorNote(
        used=bool(assessment.prior),
        sentence=prior_words(key, assessment, language),
        shares=assessment.prior,
        without=assessment.verdict.blind,
    )


def _sale(sale: Sale) -> SaleNote:
    return SaleNote(number=sale.number, date=sale.date, price=sale.price)


def _revision(revision: Revision) -> RevisionStamp:
    return RevisionStamp(
        number=revision.number, at=revision.at, by=revision.by, digest=revision.digest
    )


def _referenced(key: Key, found: Rationale) -> Rationale:
    """The rationale with the works it cites, in the order it cites them, and its italics."""
    numbered = dict.fromkeys(_cited(key, found))
    references = []
    for number, name in enumerate(numbered, start=1):
        source = key.source.get(name)
        references.append(
            Reference(
                id=name,
                number=number,
                citation=source.citation if source else name,
                url=source.url if source else "",
                seen=source.seen if source else False,
                scope=source.scope if source else "",
            )
        )
    text = canonical(_FORM.plain(found))
    names = tuple(name for name in scientific_names(key) if name in text)
    return replace(found, references=tuple(references), italic=names)


def _cited(key: Key, found: Rationale) -> Iterator[str]:
    """Source ids in the order the document cites them."""
    for notice in found.notices:
        yield from notice.sources
    for finding in found.findings:
        for shown in finding.leader:
            yield from shown.sources
    for alike in found.look_alikes:
        for apart in alike.apart:
            for shown in apart.shows:
                yield from shown.sources
    yield from found.claim.sources
    label = claimed(key, found.case)
    if label is not None and label.rates is not None and found.prior.used:
        yield from label.rates.sources


def rationale_digest(found: Rationale) -> str:
    """SHA-256 of what the rationale says, as hex: equal values, equal digests."""
    return digest(canonical(_FORM.plain(found)))


def rationale_json(found: Rationale) -> str:
    """The rationale as JSON text, its digest among its fields."""
    fields = {**_FORM.plain(found), DIGEST: rationale_digest(found)}
    return json.dumps(fields, ensure_ascii=False, indent=2) + "\n"


def rationale_from(text: str) -> tuple[Rationale, str]:
    """The rationale that JSON text holds, and the digest written in it.

    Raises:
        IdKeyError: It is no JSON, or no rationale this program can read.
    """
    try:
        fields = json.loads(text)
    except ValueError as err:
        raise IdKeyError(f"The file is not JSON: {err}.", _WRONG_FILE) from err
    if not isinstance(fields, Mapping):
        raise IdKeyError("The file holds no rationale.", _WRONG_FILE)
    rest = dict(fields)
    written = rest.pop(DIGEST, "")
    return _FORM.value_from(rest), written if isinstance(written, str) else ""


_WRONG_FILE = "Choose the PDF or JSON file that was written as a rationale."
