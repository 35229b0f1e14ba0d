"""Where a value comes from, and how much that is worth."""

from dataclasses import dataclass
from enum import StrEnum


class Basis(StrEnum):
    """How a value reached the key, strongest first."""

    SOURCE = "source"
    INFERRED = "inferred"
    PARTLY_MEMORY = "partly_memory"
    MEMORY = "memory"
    COMMON_PRACTICE = "common_practice"

    @property
    def printed(self) -> bool:
        """Whether the value stands in a text that somebody looked at, or follows from one."""
        return self in (Basis.SOURCE, Basis.INFERRED)


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """A work that is cited.

    Attributes:
        id: Stable short name, such as ``"prendini2016_genus"``.
        citation: Author, year, title and place, in one line.
        url: Where it was read; empty when unknown.
        kind: ``"primary"``, ``"institution"``, ``"legal"``, ``"hobby_web"``, ``"memory"`` …
        seen: Whether the author of the key has seen the text.
        scope: How much of it was seen; empty when all of it was.
    """

    id: str
    citation: str
    url: str = ""
    kind: str = ""
    seen: bool = False
    scope: str = ""
