"""Notes in a rationale: on the key, the label, the record, the sale, the works cited."""

from dataclasses import dataclass

from idkey.engine.result import Stake, VerdictKind


@dataclass(frozen=True, slots=True, kw_only=True)
class Notice:
    """A caution as it was shown.

    Attributes:
        stake: Danger or papers.
        sentence: In words.
        taxa: Ids of the taxa that keep it up, best supported first.
        certain: Whether only such taxa are left.
        likely: Whether the animal is one of them in all likelihood, though others are left.
        sources: Source ids behind the taxa's danger or listing.
    """

    stake: Stake
    sentence: str
    taxa: tuple[str, ...] = ()
    certain: bool = False
    likely: bool = False
    sources: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Reference:
    """A work that is cited; `number` is what stands in square brackets."""

    id: str
    number: int
    citation: str
    url: str = ""
    seen: bool = False
    scope: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyStamp:
    """Which key was used, and the program that used it."""

    id: str
    title: str
    version: str
    digest: str = ""
    licence: str = ""
    taxa: int = 0
    program: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class PriorNote:
    """Whether starting rates of the label counted, and the verdict without them.

    Attributes:
        used: Whether they counted.
        sentence: In words.
        shares: Share per taxon id.
        without: Kind of verdict without them where that differs; None otherwise.
    """

    used: bool
    sentence: str
    shares: tuple[tuple[str, float], ...] = ()
    without: VerdictKind | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SaleNote:
    """The sale it is attached to; the buyer is left to the sale record."""

    number: str
    date: str = ""
    price: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class PapersNote:
    """The permit fields as they were noted when the rationale was written.

    Attributes:
        fields: Name and value, in words.
        missing: What is missing or odd in them, one sentence each.
        check: Whom to ask what is needed.
    """

    fields: tuple[tuple[str, str], ...]
    missing: tuple[str, ...]
    check: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RevisionStamp:
    """The revision of the record it was written from."""

    number: int
    at: str
    by: str = ""
    digest: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class PictureNote:
    """A picture shown in the document.

    Attributes:
        id: Id of the picture, as findings name it.
        caption: What it shows.
        sha256: Digest of the file it was made from; empty when unknown.
    """

    id: str
    caption: str = ""
    sha256: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class ClaimNote:
    """What the label says, and what the key makes of it.

    Attributes:
        covers: What it properly covers, as a sentence; empty when the key has no entry.
        warning: What else is sold under it, as sentences; empty likewise.
        stakes: What a wrong label costs here, one sentence each.
        confirmed: The label as the key's entry writes it; empty likewise.
        sources: Source ids of the entry.
    """

    covers: str = ""
    warning: str = ""
    stakes: tuple[str, ...] = ()
    confirmed: str = ""
    sources: tuple[str, ...] = ()
