"""A taxon of the key: its names, its dangers, its papers."""

from dataclasses import dataclass, field
from enum import StrEnum


class Danger(StrEnum):
    """What a sting, bite or hair does, by its worst usual outcome."""

    HARMLESS = "harmless"
    MILD = "mild"
    PAINFUL = "painful"
    SIGNIFICANT = "medically_significant"


class Climate(StrEnum):
    """The climate a taxon is kept in, in a word."""

    MOIST_FOREST = "moist_forest"
    SAVANNA = "savanna"
    ARID = "arid"
    OTHER = "other"


@dataclass(frozen=True, slots=True, kw_only=True)
class Hazard:
    """What the animal can do to a person.

    Attributes:
        level: Worst usual outcome.
        means: ``"sting"``, ``"bite"`` or ``"hairs"``; may name several.
        note: One sentence of detail; empty when there is none.
        sources: Source ids.
    """

    level: Danger = Danger.MILD
    means: tuple[str, ...] = ()
    note: str = ""
    sources: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Permit:
    """What papers trade in the taxon needs; always to be checked locally.

    Attributes:
        cites: Appendix ``"I"``, ``"II"`` or ``"III"``; empty when not listed.
        eu: Annex ``"A"`` to ``"D"`` of Regulation (EC) 338/97; empty when not listed.
        listed_as: Names the lists use for it.
        since: When it was listed, in words.
        as_of: Date of the data, ISO 8601 or year; empty when unknown.
        from_memory: Whether the entry was not seen in an official text.
        note: One sentence of detail.
        sources: Source ids.
    """

    cites: str = ""
    eu: str = ""
    listed_as: tuple[str, ...] = ()
    since: str = ""
    as_of: str = ""
    from_memory: bool = False
    note: str = ""
    sources: tuple[str, ...] = ()

    @property
    def listed(self) -> bool:
        """Whether any list names the taxon."""
        return bool(self.cites or self.eu)


@dataclass(frozen=True, slots=True, kw_only=True)
class Taxon:
    """One taxon of the key.

    Attributes:
        id: Stable name, unique within the key, such as ``"pandinus_imperator"``.
        name: Accepted name without authority.
        authority: Author and year, with ICZN article 51 parentheses where the genus changed.
        family: Family name.
        subfamily: Subfamily name; empty when not given.
        rank: ``"species"`` unless told otherwise.
        group: Name of the species group it cannot always be told from; empty when none.
        synonyms: Older combinations and synonyms, with authority where known.
        vernacular: Everyday names.
        range: Where it lives, in words.
        size: Adult size in words, with unit.
        size_mm: Adult (smallest, largest) length in mm; None is unknown.
        hazard: What it can do to a person.
        permit: What papers it needs.
        climate: The climate it is kept in.
        climate_note: One sentence of detail.
        note: Remark on the taxon.
        sources: Source ids.
    """

    id: str
    name: str
    authority: str = ""
    family: str = ""
    subfamily: str = ""
    rank: str = "species"
    group: str = ""
    synonyms: tuple[str, ...] = ()
    vernacular: tuple[str, ...] = ()
    range: str = ""
    size: str = ""
    size_mm: tuple[float | None, float | None] = (None, None)
    hazard: Hazard = field(default_factory=Hazard)
    permit: Permit = field(default_factory=Permit)
    climate: Climate = Climate.OTHER
    climate_note: str = ""
    note: str = ""
    sources: tuple[str, ...] = ()

    @property
    def genus(self) -> str:
        """First word of the name."""
        return self.name.split(" ", 1)[0]

    @property
    def epithet(self) -> str:
        """What follows the genus; empty for a genus."""
        return self.name.partition(" ")[2]

    @property
    def dangerous(self) -> bool:
        """Whether it is medically significant: never handled, never dismissed lightly."""
        return self.hazard.level is Danger.SIGNIFICANT

    @property
    def listed(self) -> bool:
        """Whether it is permit-listed."""
        return self.permit.listed
