"""What a shop label claims, and what else is sold under it."""

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """What a label usually turns out to be, before the shop's own cases.

    Attributes:
        shares: Share per taxon id; what is missing from one is spread over the other taxa.
        animals: How many animals these shares are worth.
        sources: Source ids.
    """

    shares: Mapping[str, float]
    animals: float = 4.0
    sources: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """One label entry of the key.

    Attributes:
        id: Stable name, unique within the key.
        text: The label as the trade writes it.
        variants: Other spellings and languages.
        covers: Ids of the taxa the label properly covers; may be empty.
        covers_outside: Taxa it properly covers that this key lacks, in words.
        sold_as: Ids of other taxa that are often sold under it.
        sold_outside: The same for taxa that this key lacks, in words.
        why: Why the mix-up happens.
        deciding: Ids of the characters that decide it, best first.
        evidence: ``"trade"``, ``"taxonomy"`` or ``"common_practice"``.
        safety: What a wrong label does to a person; empty when nothing.
        law: What a wrong label does to the papers; empty when nothing.
        rates: Starting rates; None when nobody has counted.
        sources: Source ids.
    """

    id: str
    text: str
    variants: tuple[str, ...] = ()
    covers: tuple[str, ...] = ()
    covers_outside: tuple[str, ...] = ()
    sold_as: tuple[str, ...] = ()
    sold_outside: tuple[str, ...] = ()
    why: str = ""
    deciding: tuple[str, ...] = ()
    evidence: str = ""
    safety: str = ""
    law: str = ""
    rates: Rates | None = field(default=None)
    sources: tuple[str, ...] = ()
