"""Looks at an animal in a practised case, what was concluded, and how that stands."""

from dataclasses import dataclass
from enum import StrEnum

from idkey.engine.result import VerdictKind
from idkey.model.character import Look
from idkey.store.drill_log import Sighting

CONCLUSIONS = (
    VerdictKind.HOLDS,
    VerdictKind.TOO_BROAD,
    VerdictKind.CONTRADICTED,
    VerdictKind.OPEN,
)
"""What a person can conclude about the label."""


class Outcome(StrEnum):
    """How a conclusion stands to what the findings carry and to what the animal is."""

    RIGHT = "right"
    UNFINISHED = "unfinished"
    OVERSTATED = "overstated"
    UNDERSTATED = "understated"
    MISREAD = "misread"
    WRONG = "wrong"


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """One look at the animal.

    Attributes:
        character: Character id.
        look: How.
        visible: Whether it could be seen that way.
        wary: Whether a medically significant species was still possible then.
        needless: Whether the hand came near although it was not safe, or not needed.
        sighting: The answer beside the truth; None while it is open, and when it was not to be
            seen.
    """

    character: str
    look: Look
    visible: bool
    wary: bool
    needless: bool
    sighting: Sighting | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Conclusion:
    """What the person concludes.

    Attributes:
        verdict: About the label, one of `CONCLUSIONS`.
        hazard: Whether it must be treated as medically significant.
        permit: Whether it must be treated as permit-listed.
    """

    verdict: VerdictKind
    hazard: bool
    permit: bool
