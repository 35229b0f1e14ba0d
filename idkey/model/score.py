"""What one taxon shows for one character."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from math import isfinite

from idkey.model.character import Sex, Stage
from idkey.model.source import Basis


class Often(StrEnum):
    """How often a state occurs, in words."""

    ALWAYS = "always"
    USUALLY = "usually"
    SOMETIMES = "sometimes"
    RARELY = "rarely"

    @property
    def weight(self) -> float:
        """Weight before normalising. Source: common practice, no source."""
        return {"always": 1.0, "usually": 0.8, "sometimes": 0.3, "rarely": 0.05}[self]


@dataclass(frozen=True, slots=True)
class Shows:
    """The states a taxon shows.

    Attributes:
        states: How often per state: a word, a share in (0, 1], or None when the source only
            says that it occurs. A state that is not named is not shown.
    """

    states: Mapping[str, Often | float | None]

    def __post_init__(self) -> None:
        if not self.states:
            raise ValueError("a score of states names at least one state")
        for share in self.states.values():
            if isinstance(share, float) and not 0 < share <= 1:
                raise ValueError(f"share {share:g} must lie in (0, 1]")

    def shares(self) -> dict[str, float]:
        """Share per named state; they sum to one."""
        weights = {state: _weight(share) for state, share in self.states.items()}
        total = sum(weights.values())
        return {state: weight / total for state, weight in weights.items()}


def _weight(share: Often | float | None) -> float:
    if share is None:
        return Often.ALWAYS.weight
    return share.weight if isinstance(share, Often) else float(share)


@dataclass(frozen=True, slots=True, kw_only=True)
class Spans:
    """The range a taxon shows, in the unit of its character.

    Attributes:
        low: Smallest printed value; None is an open bound.
        high: Largest printed value; None is an open bound.
        mean: Mean where the source gives one.
        sd: Standard deviation where the source gives one.
        n: Number of specimens behind the range; None when not told.
    """

    low: float | None = None
    high: float | None = None
    mean: float | None = None
    sd: float | None = None
    n: int | None = None

    def __post_init__(self) -> None:
        numbers = [x for x in (self.low, self.high, self.mean, self.sd) if x is not None]
        if not numbers:
            raise ValueError("a range needs at least one number")
        if not all(isfinite(x) for x in numbers):
            raise ValueError("bounds must be finite; leave an open bound out")
        if self.low is not None and self.high is not None and self.low > self.high:
            raise ValueError(f"low {self.low:g} is above high {self.high:g}")
        if self.sd is not None and self.sd < 0:
            raise ValueError(f"sd {self.sd:g} is negative")


@dataclass(frozen=True, slots=True)
class Inapplicable:
    """The taxon lacks the part, so the character cannot be seen on it."""


Value = Shows | Spans | Inapplicable


@dataclass(frozen=True, slots=True, kw_only=True)
class Score:
    """One cell of the matrix, for a sex and a stage where that matters.

    Attributes:
        taxon: Taxon id.
        character: Character id.
        value: What the taxon shows.
        sex: The sex it holds for; None for both.
        stage: The stage it holds for; None for all.
        basis: How the value reached the key.
        sources: Source ids; never empty in a shipped key.
        note: Remark, such as a conflict between sources.
    """

    taxon: str
    character: str
    value: Value
    sex: Sex | None = None
    stage: Stage | None = None
    basis: Basis = Basis.SOURCE
    sources: tuple[str, ...] = ()
    note: str = ""
