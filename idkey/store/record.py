"""What the record book hands out: revisions, rows, sales. Values only."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from idkey.engine.result import Assessment
from idkey.model.case import Case


@dataclass(frozen=True, slots=True, kw_only=True)
class VerdictSummary:
    """What was concluded when a revision was saved, in plain words that stay readable.

    Attributes:
        kind: About the claim, such as ``"holds"``.
        level: About the identity, such as ``"established"``.
        name: The name to write, in open nomenclature.
        taxa: Ids of the established taxon, the group, or the leader.
        cautions: Stakes that were still possible, such as ``"hazard"``.
        key_version: Version of the key that was used.
        key_digest: Digest of the key that was used.
    """

    kind: str
    level: str
    name: str = ""
    taxa: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    key_version: str = ""
    key_digest: str = ""

    @classmethod
    def of(cls, assessment: Assessment) -> "VerdictSummary":
        """The summary of an assessment, with the key its case names."""
        verdict = assessment.verdict
        return cls(
            kind=verdict.kind.value,
            level=verdict.level.value,
            name=verdict.name.text,
            taxa=verdict.taxa,
            cautions=tuple(caution.stake.value for caution in assessment.cautions),
            key_version=assessment.case.key_version,
            key_digest=assessment.case.key_digest,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Revision:
    """One saved state of a case; never changed, never removed.

    Attributes:
        case_id: The case.
        number: 1 for the first revision of the case, then without a gap.
        entry: Place in the book as a whole; orders everything, whatever the clock said.
        at: When it was saved, ISO 8601 in UTC, by the clock of the machine.
        by: Who saved it, as initials or alias.
        digest: SHA-256 of this entry, content and `previous` included.
        previous: Digest of the entry before it in the book; 64 zeros for the first.
    """

    case_id: str
    number: int
    entry: int
    at: str
    by: str
    digest: str
    previous: str


def revision_of(entry: Mapping[Any, Any]) -> Revision:
    """The revision that a row of the chain stands for."""
    same = ("case_id", "number", "entry", "at", "by", "digest", "previous")
    return Revision(**{name: entry[name] for name in same})


@dataclass(frozen=True, slots=True, kw_only=True)
class StoredCase:
    """A case as it was saved."""

    case: Case
    summary: VerdictSummary | None
    revision: Revision


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseRow:
    """One line of a list of cases: the newest revision in short.

    Attributes:
        case_id: The case.
        revision: Number of its newest revision.
        label: The label, verbatim.
        label_id: The label entry the person confirmed; empty when none.
        supplier: Who supplied the animal.
        day: Day of arrival if the label gives one, else the day it was first saved.
        kind: About the claim; empty before a verdict.
        level: About the identity; empty before a verdict.
        name: The name to write; empty before a verdict.
        cautions: Stakes still possible then.
        findings: How many findings it has.
        by: Who saved it last.
        at: When it was saved last, ISO 8601 in UTC.
    """

    case_id: str
    revision: int
    label: str
    label_id: str
    supplier: str
    day: str
    kind: str
    level: str
    name: str
    cautions: tuple[str, ...]
    findings: int
    by: str
    at: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Query:
    """What to look for; empty fields ask for nothing.

    Words match from their start, without regard to case and accents; all must match.

    Attributes:
        text: Words anywhere: label, name, supplier, remarks, sale numbers, case id.
        label: Words of the label or of the id of its entry.
        label_id: Exactly that label entry.
        name: Words of the name.
        supplier: Words of the supplier's name.
        taxon: Id of a taxon the verdict names.
        since: First day, ISO 8601.
        until: Last day, ISO 8601, included.
        verdict: Kind of verdict, such as ``"contradicted"``.
        limit: Most rows wanted.
    """

    text: str = ""
    label: str = ""
    label_id: str = ""
    name: str = ""
    supplier: str = ""
    taxon: str = ""
    since: str = ""
    until: str = ""
    verdict: str = ""
    limit: int = 50


@dataclass(frozen=True, slots=True, kw_only=True)
class Papers:
    """Permit fields of one animal; each may be empty. What is needed, check locally.

    Attributes:
        name: Scientific name as the papers write it.
        appendix: CITES appendix as the papers write it.
        annex: EU annex as the papers write it.
        source: CITES source code, such as ``"C"``.
        purpose: CITES purpose code, such as ``"T"``.
        document: Number of the permit or certificate.
        authority: Who issued it.
        issued: When, ISO 8601.
        origin: Country of origin, or breeder.
        mark: Chip, ring or photo set that ties the papers to the animal.
    """

    name: str = ""
    appendix: str = ""
    annex: str = ""
    source: str = ""
    purpose: str = ""
    document: str = ""
    authority: str = ""
    issued: str = ""
    origin: str = ""
    mark: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sale:
    """A sale the animal went out with.

    Attributes:
        number: Number of the sale in the shop's till.
        date: ISO 8601.
        price: As the till prints it, currency included.
        buyer: Reference to the buyer; optional, and can be erased later.
        papers: Permit fields.
        note: Free text.
    """

    number: str
    date: str = ""
    price: str = ""
    buyer: str = ""
    papers: Papers = field(default_factory=Papers)
    note: str = ""

    def __post_init__(self) -> None:
        if not self.number.strip():
            raise ValueError("a sale needs a number")


@dataclass(frozen=True, slots=True, kw_only=True)
class ChainFault:
    """A place where the book is not what was once saved.

    Attributes:
        entry: Place in the book.
        case_id: The case it concerns; empty when it concerns the book as a whole.
        number: Revision number there; 0 when it is not a revision.
        problem: What is wrong, as one sentence.
    """

    entry: int
    case_id: str
    number: int
    problem: str
