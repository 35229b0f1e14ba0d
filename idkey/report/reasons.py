"""What a rationale holds: plain values, readable without the key and without the program."""

from dataclasses import dataclass
from enum import StrEnum

from idkey.engine.result import Level, OpenName, VerdictKind
from idkey.model.case import Case
from idkey.model.source import Basis
from idkey.report.notes import (
    ClaimNote,
    KeyStamp,
    Notice,
    PapersNote,
    PictureNote,
    PriorNote,
    Reference,
    RevisionStamp,
    SaleNote,
)


def agreed(share: float) -> float:
    """A share to the digits on which all processors agree.

    Another machine makes the rationale again from the record, and both have to be the same.
    What is next to nothing does not become nothing, nor what is next to all become all.
    """
    return min(max(round(share, 9), 1e-9), 1 - 1e-9)


class Tie(StrEnum):
    """Why a look-alike is compared, the most pressing reason first."""

    COVERED = "covered"
    SOLD_AS = "sold_as"
    DANGER = "danger"
    RIVAL = "rival"


class Unseen(StrEnum):
    """Why a character carries no weight."""

    LOOKED = "looked"
    NOT_ASKED = "not_asked"
    HANDLING = "handling"
    DEAD = "dead"


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """What the key says a taxon shows.

    Attributes:
        text: In words, for whom where sex or stage matters.
        basis: How the value reached the key.
        sources: Source ids.
    """

    text: str
    basis: Basis = Basis.SOURCE
    sources: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class SeenFinding:
    """One finding.

    Attributes:
        character: Character id.
        name: Its name.
        seen: What was seen, in words.
        means: How it was looked at, in words; empty when not told.
        certainty: How sure, in words; empty when it could not be seen.
        unit: Unit of a number; empty otherwise.
        note: Remark of the observer.
        by: Who saw it.
        leader: What the leading taxon shows; several where sex or stage is unknown.
        fits: Whether the leading taxon explains it; None when nothing is scored or seen.
        figures: Drawings of the states seen, as paths below images/ with forward slashes.
        figure_terms: Who made those that came with the key, and their licences; else empty.
        pictures: Ids of pictures that show it.
    """

    character: str
    name: str
    seen: str
    means: str = ""
    certainty: str = ""
    unit: str = ""
    note: str = ""
    by: str = ""
    leader: tuple[Shown, ...] = ()
    fits: bool | None = None
    figures: tuple[str, ...] = ()
    figure_terms: str = ""
    pictures: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Separation:
    """A finding that sets the animal apart from a look-alike.

    Attributes:
        character: Character id.
        name: Its name.
        seen: What was seen, in words.
        shows: What the look-alike shows instead.
        conflict: Whether the look-alike cannot explain it at all (else it speaks against it).
    """

    character: str
    name: str
    seen: str
    shows: tuple[Shown, ...] = ()
    conflict: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class LookAlike:
    """A taxon the animal could be taken for.

    Attributes:
        taxon: Taxon id.
        name: Accepted name.
        tie: Why it is compared.
        support: Its support, 0 to 1.
        ruled_out: Whether it is ruled out.
        apart: What separates the animal from it, firmest first; may be empty.
        help: Names of characters that would separate them.
        hazard: What it can do, in words.
        permit: Which lists name it, in words; empty when none.
    """

    taxon: str
    name: str
    tie: Tie
    support: float
    ruled_out: bool = False
    apart: tuple[Separation, ...] = ()
    help: tuple[str, ...] = ()
    hazard: str = ""
    permit: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class UnseenCharacter:
    """A character that was not looked at, or could not be seen."""

    character: str
    name: str
    reason: Unseen
    deciding: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Rationale:
    """The written reasons for one verdict.

    Attributes:
        language: ISO 639-1 code of its words.
        at: When the judged state was saved, ISO 8601 in UTC; empty when never.
        by: Who determined, as initials or alias.
        case: The case as it was judged, with the claim verbatim; without remarks and price.
        kind: The verdict on the claim.
        level: How far the name is carried.
        title: The verdict in two or three words.
        sentence: The verdict in one sentence.
        name: The name to write, in open nomenclature.
        heading: The same in the language of the document ("or", "not identified").
        authority: Author and year of an established name; empty short of that.
        vernacular: Everyday name of an established taxon; empty when there is none.
        hazard: What the named taxa can do, in words; empty while no name is settled.
        permit: Which lists name them, in words; empty likewise, or when none does.
        taxa: Ids of the taxa the name stands for.
        support: Their summed support, 0 to 1.
        answers: Findings that count.
        fit: p-value of the findings under the leading taxon; None when untested.
        separated: Fewest separating findings against any rival.
        unmet: Conditions of an established name that are not met, as sentences.
        next_step: What to do or to look at next, as a sentence.
        claim: What the key makes of the claim.
        notices: Cautions in force.
        findings: In the order they were made.
        look_alikes: Taxa compared, the most pressing first.
        others: How many further taxa the key holds that were compared but are not listed.
        unseen: What carries no weight, the deciding characters first.
        prior: Starting rates.
        key: The key used.
        key_cautions: Sentences the key wants shown with every verdict.
        references: Works cited, by number.
        sale: The sale; None without one.
        revision: The revision of the record; None when it was not saved.
        pictures: Pictures shown.
        italic: Scientific names in its sentences, which are set in italics.
        papers: Permit fields that are noted; None without any.
        thumbs: What rests on rules of thumb, as sentences; empty when nothing does.
    """

    language: str
    at: str
    by: str
    case: Case
    kind: VerdictKind
    level: Level
    title: str
    sentence: str
    name: OpenName
    heading: str
    authority: str
    taxa: tuple[str, ...]
    support: float
    answers: int
    fit: float | None
    separated: int
    unmet: tuple[str, ...]
    next_step: str
    claim: ClaimNote
    notices: tuple[Notice, ...]
    findings: tuple[SeenFinding, ...]
    look_alikes: tuple[LookAlike, ...]
    others: int
    unseen: tuple[UnseenCharacter, ...]
    prior: PriorNote
    key: KeyStamp
    key_cautions: tuple[str, ...]
    references: tuple[Reference, ...]
    sale: SaleNote | None = None
    revision: RevisionStamp | None = None
    pictures: tuple[PictureNote, ...] = ()
    italic: tuple[str, ...] = ()
    vernacular: str = ""
    hazard: str = ""
    permit: str = ""
    papers: PapersNote | None = None
    thumbs: tuple[str, ...] = ()

    def cited(self, sources: tuple[str, ...]) -> str:
        """Numbers of the cited works in brackets, such as ``"[3, 7]"``; empty without any."""
        numbers = {reference.id: reference.number for reference in self.references}
        found = sorted({numbers[source] for source in sources if source in numbers})
        return f"[{', '.join(map(str, found))}]" if found else ""
