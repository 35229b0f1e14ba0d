"""Cases as rows of Darwin Core tables."""

import uuid
from collections.abc import Iterator
from dataclasses import dataclass, fields
from urllib.parse import quote

from idkey.model.case import Finding
from idkey.report.reasons import Rationale, SeenFinding
from idkey.store.day import iso_day
from idkey.store.record import Papers

Row = dict[str, str]

SEPARATOR = " | "
"""Between the parts of a list, as Darwin Core recommends."""

_PAPERS = {
    "source": "CITES source code",
    "purpose": "CITES purpose code",
    "appendix": "CITES Appendix",
    "annex": "EU Annex",
    "document": "permit or certificate number",
    "authority": "issuing authority",
    "origin": "country of origin or breeder",
    "mark": "mark of the animal",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class ArchivedCase:
    """A case for an archive.

    Attributes:
        current: The rationale that counts.
        earlier: Superseded ones, oldest first.
        papers: Permit fields; the buyer never enters an archive.
    """

    current: Rationale
    earlier: tuple[Rationale, ...] = ()
    papers: Papers | None = None


def occurrence_id(case_id: str) -> str:
    """A stable address of a case: a UUID as such, anything else under our own name."""
    try:
        return f"urn:uuid:{uuid.UUID(case_id)}"
    except ValueError:
        return f"urn:idkey:case:{quote(case_id, safe='')}"


def _made(*parts: str) -> str:
    """An address that is the same whenever it is made from the same parts."""
    return f"urn:uuid:{uuid.uuid5(uuid.NAMESPACE_URL, '/'.join(parts))}"


def occurrence(one: ArchivedCase) -> Row:
    """The animal in the shop on the day it was recorded."""
    found, case = one.current, one.current.case
    before = [earlier.heading for earlier in one.earlier]
    if case.claim.text.strip():
        before.insert(0, f"{_line(case.claim.text)} (shop label)")
    return {
        "occurrenceID": occurrence_id(case.id),
        "basisOfRecord": "LivingSpecimen",
        "organismID": _made(occurrence_id(case.id), "organism"),
        "catalogNumber": case.id,
        "eventDate": iso_day(case.claim.date) or case.created,
        "recordedBy": case.by,
        "individualCount": "1",
        "sex": case.specimen.sex.value if case.specimen.sex else "",
        "lifeStage": case.specimen.stage.value if case.specimen.stage else "",
        "verbatimLabel": case.claim.text,
        "verbatimIdentification": found.name.text,
        "previousIdentifications": SEPARATOR.join(before),
        **_name(found),
    }


def _name(found: Rationale) -> Row:
    """Only the certain part is a scientific name; the sign goes into the qualifier."""
    return {
        "scientificName": found.name.certain,
        "scientificNameAuthorship": found.authority,
        "taxonRank": found.name.rank,
        "identificationQualifier": found.name.qualifier,
    }


def identifications(one: ArchivedCase) -> Iterator[Row]:
    """The label's name, then every determination, the last one accepted."""
    case = one.current.case
    if case.claim.text.strip():
        yield {
            "occurrenceID": occurrence_id(case.id),
            "identificationID": _made(occurrence_id(case.id), "label"),
            "verbatimIdentification": _line(case.claim.text),
            "identificationType": "unknown",
            "isAcceptedIdentification": "false",
            "identifiedBy": "label of the supplier",
            "dateIdentified": iso_day(case.claim.date) or "",
            "identificationVerificationStatus": "not checked",
            "identificationRemarks": "Name on the label the animal came with.",
        }
    for found in (*one.earlier, one.current):
        yield _identification(found, accepted=found is one.current)


def _identification(found: Rationale, *, accepted: bool) -> Row:
    case = found.case
    number = str(found.revision.number) if found.revision else "0"
    key = f"{found.key.title}, version {found.key.version}"
    seen = "; ".join(f"{finding.name}: {finding.seen}" for finding in found.findings)
    return {
        "occurrenceID": occurrence_id(case.id),
        "identificationID": _made(occurrence_id(case.id), "revision", number, found.at),
        "verbatimIdentification": found.name.text,
        "taxonFormula": found.name.formula,
        "identificationType": "features",
        "isAcceptedIdentification": "true" if accepted else "false",
        "identifiedBy": found.by,
        "dateIdentified": found.at,
        "identificationReferences": SEPARATOR.join(
            (key, *(reference.citation for reference in found.references))
        ),
        "identificationVerificationStatus": "determined by one person with a key",
        "identificationRemarks": f"{found.sentence} {seen}".strip(),
        **_name(found),
    }


def measurements(one: ArchivedCase) -> Iterator[Row]:
    """The findings that say something, and the papers."""
    case = one.current.case
    run = _made(occurrence_id(case.id), "run")
    for finding, words in zip(case.findings, one.current.findings, strict=True):
        if not finding.unseen:
            yield {
                "occurrenceID": occurrence_id(case.id),
                "measurementID": _made(occurrence_id(case.id), finding.character),
                "parentMeasurementID": run,
                "measurementType": words.name,
                **_seen(finding, words),
                "measurementMethod": words.means,
                "measurementDeterminedBy": finding.by or case.by,
                "measurementDeterminedDate": finding.at,
                "measurementRemarks": _remarks(finding, words),
            }
    yield from _papers(one)


def _seen(finding: Finding, words: SeenFinding) -> Row:
    if finding.value is None:
        return {"measurementValue": words.seen}
    spread = finding.uncertainty
    return {
        "measurementValue": f"{finding.value:g}",
        "measurementUnit": words.unit,
        "measurementAccuracy": f"{spread:g}" if spread is not None else "",
    }


def _remarks(finding: Finding, words: SeenFinding) -> str:
    parts = (f"certainty: {finding.certainty.value}", f"character: {finding.character}", words.note)
    return "; ".join(part for part in parts if part)


def _papers(one: ArchivedCase) -> Iterator[Row]:
    if one.papers is None:
        return
    case = one.current.case
    for field in fields(one.papers):
        value = getattr(one.papers, field.name)
        if value and field.name in _PAPERS:
            yield {
                "occurrenceID": occurrence_id(case.id),
                "measurementID": _made(occurrence_id(case.id), "papers", field.name),
                "measurementType": _PAPERS[field.name],
                "measurementValue": value,
                "measurementMethod": "as on the papers shown; to be checked locally",
                "measurementDeterminedDate": one.papers.issued,
            }


def media(one: ArchivedCase, owner: str) -> Iterator[Row]:
    """The pictures, without any place."""
    case = one.current.case
    for picture in one.current.pictures:
        yield {
            "occurrenceID": occurrence_id(case.id),
            "identifier": _made(occurrence_id(case.id), "picture", picture.id),
            "type": "http://purl.org/dc/dcmitype/StillImage",
            "creator": case.by,
            "Owner": owner,
            "caption": picture.caption,
            "hashFunction": "SHA-256" if picture.sha256 else "",
            "hashValue": picture.sha256,
        }


def _line(text: str) -> str:
    return " ".join(text.split())
