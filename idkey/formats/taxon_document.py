"""taxa/<id>.yaml: a taxon and its scores, and what the fields mean."""

from typing import Annotated, Any

from pydantic import Discriminator, Field, Tag

from idkey.formats.document import Document, Id, Number, Share, Text, Words
from idkey.model.character import Sex, Stage
from idkey.model.score import Often
from idkey.model.source import Basis
from idkey.model.taxon import Climate, Danger


class HazardDoc(Document):
    """What the animal can do to a person."""

    level: Danger = Danger.MILD
    """Worst usual outcome."""
    means: tuple[Words, ...] = ()
    """sting, bite or hairs; may name several."""
    note: Text = ""
    """One sentence of detail."""
    sources: tuple[Id, ...] = ()
    """Source ids."""


class PermitDoc(Document):
    """What papers trade in the taxon needs; always to be checked locally."""

    cites: Text = ""
    """Appendix I, II or III; left out: not listed."""
    eu: Text = ""
    """Annex A to D of Regulation (EC) 338/97; left out: not listed."""
    listed_as: tuple[Words, ...] = ()
    """Names the lists use for it."""
    since: Text = ""
    """When it was listed, in words."""
    as_of: Text = ""
    """Date of the data, ISO 8601 or year."""
    from_memory: bool = False
    """Whether the entry was not seen in an official text."""
    note: Text = ""
    """One sentence of detail."""
    sources: tuple[Id, ...] = ()
    """Source ids."""


def _spelling(value: Any) -> str:
    return "shares" if isinstance(value, dict) else "states"


Shows = Annotated[
    Annotated[Annotated[tuple[Id, ...], Field(min_length=1)], Tag("states")]
    | Annotated[
        Annotated[
            dict[Id, Annotated[Often | Share | None, Field(union_mode="left_to_right")]],
            Field(min_length=1),
        ],
        Tag("shares"),
    ],
    Discriminator(_spelling),
]


class ScoreDoc(Document):
    """What the taxon shows for one character: states, a range, or nothing to look at."""

    sex: Sex | None = None
    """The sex it holds for; left out: both."""
    stage: Stage | None = None
    """The stage it holds for; left out: all."""
    shows: Shows | None = None
    """The states, as a list, or as a mapping of state to how often (a word, or a share)."""
    low: Number | None = None
    """Smallest printed value; left out: open."""
    high: Number | None = None
    """Largest printed value; left out: open."""
    mean: Number | None = None
    """Mean, where the source gives one."""
    sd: Annotated[Number, Field(ge=0)] | None = None
    """Standard deviation, where the source gives one."""
    n: Annotated[int, Field(ge=1)] | None = None
    """Number of specimens behind the range."""
    inapplicable: bool | None = None
    """true: the taxon lacks the part, so the character cannot be seen on it."""
    basis: Basis = Basis.SOURCE
    """How the value reached the key."""
    sources: tuple[Id, ...] = ()
    """Source ids."""
    note: Text = ""
    """Remark, such as a conflict between sources."""


def _one_or_more(value: Any) -> str:
    return "several" if isinstance(value, list) else "one"


Cell = Annotated[
    Annotated[ScoreDoc, Tag("one")]
    | Annotated[Annotated[tuple[ScoreDoc, ...], Field(min_length=1)], Tag("several")],
    Discriminator(_one_or_more),
]


class TaxonDoc(Document):
    """The whole of taxa/<id>.yaml."""

    id: Id
    """Stable name, and the name of the file."""
    name: Words
    """Accepted name without authority."""
    authority: Text = ""
    """Author and year, in parentheses where the genus has changed."""
    family: Text = ""
    """Family name."""
    subfamily: Text = ""
    """Subfamily name."""
    rank: Words = "species"
    """Rank; species unless told otherwise."""
    group: Text = ""
    """Name of the species group it cannot always be told from."""
    synonyms: tuple[Words, ...] = ()
    """Older combinations and synonyms."""
    vernacular: tuple[Words, ...] = ()
    """Everyday names."""
    range: Text = ""
    """Where it lives, in words."""
    size: Text = ""
    """Adult size in words, with unit."""
    size_mm: tuple[Number | None, Number | None] = (None, None)
    """Adult [smallest, largest] length in mm; null is unknown."""
    hazard: HazardDoc = HazardDoc()
    """What it can do to a person."""
    permit: PermitDoc = PermitDoc()
    """What papers it needs."""
    climate: Climate = Climate.OTHER
    """The climate it is kept in."""
    climate_note: Text = ""
    """One sentence of detail."""
    note: Text = ""
    """Remark on the taxon."""
    sources: tuple[Id, ...] = ()
    """Source ids."""
    scores: dict[Id, Cell] = {}
    """Character id to a score, or to a list of scores where sex or stage matters."""
