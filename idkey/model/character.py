"""What can be looked at on an animal, and how."""

from dataclasses import dataclass
from enum import StrEnum


class Kind(StrEnum):
    """What sort of value a character takes."""

    CATEGORICAL = "categorical"
    ORDINAL = "ordinal"
    COUNT = "count"
    MEASUREMENT = "measurement"
    RATIO = "ratio"

    @property
    def numeric(self) -> bool:
        """Whether a finding is a number and not a state."""
        return self in (Kind.COUNT, Kind.MEASUREMENT, Kind.RATIO)


class Look(StrEnum):
    """How one looks, from the least trouble to the most."""

    TUB = "tub"
    ABOVE = "photo_above"
    BELOW = "photo_below"
    UV = "uv"
    LENS = "lens"
    MOULT = "moult"
    DEAD = "dead"

    @property
    def handling(self) -> bool:
        """Whether the live animal has to be held or come within reach of the hand."""
        return self is Look.LENS

    @property
    def effort(self) -> float:
        """Trouble relative to a glance through the tub. Source: common practice, no source."""
        return _EFFORT[self]

    @property
    def blind(self) -> float:
        """Chance that it cannot be seen that way. Source: common practice, no source."""
        return _BLIND[self]


_EFFORT = {"tub": 1.0, "photo_above": 1.5, "photo_below": 2.0, "uv": 2.5}
_EFFORT |= {"lens": 3.0, "moult": 4.0, "dead": 8.0}
_BLIND = {"tub": 0.05, "photo_above": 0.1, "photo_below": 0.2, "uv": 0.3}
_BLIND |= {"lens": 0.2, "moult": 0.4, "dead": 0.8}


class Sex(StrEnum):
    """Sex of the specimen; unknown is None."""

    FEMALE = "female"
    MALE = "male"


class Stage(StrEnum):
    """Stage of the specimen; unknown is None."""

    JUVENILE = "juvenile"
    ADULT = "adult"


class Reliability(StrEnum):
    """How well observers agree on a character."""

    HIGH = "high"
    MEDIUM = "medium"
    LOW = "low"

    @property
    def error(self) -> float:
        """Chance that an ordinary observer records another state.

        Source: around 0.10 is the middle of what laboratories report, with under 0.05 within
        one laboratory and 0.15 common between several (Sneath & Johnson 1972, J. Gen. Microbiol.
        72: 377; cited from memory); the spread over the three classes is common practice.
        """
        return {"high": 0.06, "medium": 0.10, "low": 0.18}[self]


@dataclass(frozen=True, slots=True, kw_only=True)
class State:
    """One way a character can look.

    Attributes:
        id: Stable name, unique within its character.
        label: The words on the tile.
        detail: A second line where the label needs one; empty otherwise.
        colours: Reference colours as ``#rrggbb`` in sRGB (D65), typical one first.
        figure: Path of a drawing below images/; empty means the one named after the state.
        figure_credit: Who made the figure; empty for the drawings of the program.
        figure_licence: SPDX identifier or words on how it may be used; empty for those too.
    """

    id: str
    label: str
    detail: str = ""
    colours: tuple[str, ...] = ()
    figure: str = ""
    figure_credit: str = ""
    figure_licence: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Requirement:
    """Another character that must show one of `states` before this one applies."""

    character: str
    states: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Character:
    """Something to look at.

    Attributes:
        id: Stable name, unique within the key.
        name: The term of the trade, such as ``"Telson colour"``.
        question: The question in plain words, as put to a keeper.
        kind: What sort of value it takes.
        states: States in order (ordinal: from least to most); empty for numbers.
        unit: Unit of a number as printed, such as ``"mm"``; empty otherwise.
        looks: Ways of looking that can show it, easiest first; never empty.
        definition: What exactly is looked at.
        how: How to look, in one sentence.
        pitfalls: What commonly goes wrong.
        reliability: How well observers agree.
        error: Measured chance of recording another state; None takes it from `reliability`.
        effort: Trouble relative to a glance; None takes it from the way of looking.
        uncertainty: Standard uncertainty of one measurement in `unit`; None means unknown.
        sex: The only sex that shows it; None for both.
        stage: The only stage that shows it; None for all.
        group: Dependence group: characters that hang together and are weighed as one.
        requires: Another character that must show a certain state first.
        part: Body part for the orientation plate, such as ``"telson"``.
        words: Other words people search for.
        rule_of_thumb: Whether shops lean on it more than it can bear.
        sources: Source ids.
    """

    id: str
    name: str
    question: str
    kind: Kind
    looks: tuple[Look, ...]
    states: tuple[State, ...] = ()
    unit: str = ""
    definition: str = ""
    how: str = ""
    pitfalls: str = ""
    reliability: Reliability = Reliability.MEDIUM
    error: float | None = None
    effort: float | None = None
    uncertainty: float | None = None
    sex: Sex | None = None
    stage: Stage | None = None
    group: str = ""
    requires: Requirement | None = None
    part: str = ""
    words: tuple[str, ...] = ()
    rule_of_thumb: bool = False
    sources: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if not self.looks:
            raise ValueError(f"character {self.id!r} needs a way of looking")
        if self.kind.numeric == bool(self.states):
            raise ValueError(f"character {self.id!r}: states belong to states, units to numbers")
        if self.error is not None and not 0 <= self.error < 1:
            raise ValueError(f"error of {self.id!r} must lie in [0, 1)")

    @property
    def error_rate(self) -> float:
        """Chance that an ordinary observer records another state."""
        return self.reliability.error if self.error is None else self.error

    @property
    def least_effort(self) -> float:
        """Trouble relative to a glance, by the easiest way of looking."""
        return self.effort or min(look.effort for look in self.looks)

    @property
    def state_ids(self) -> tuple[str, ...]:
        """Ids of the states, in order."""
        return tuple(state.id for state in self.states)

    @property
    def handling(self) -> bool:
        """Whether every way of seeing it means handling the live animal."""
        return all(look.handling for look in self.looks)

    @property
    def only_dead(self) -> bool:
        """Whether nothing but a dead animal shows it."""
        return set(self.looks) == {Look.DEAD}

    def state(self, state_id: str) -> State:
        """The state with that id; raises KeyError when there is none."""
        for state in self.states:
            if state.id == state_id:
                return state
        raise KeyError(state_id)

    def suits(self, sex: Sex | None, stage: Stage | None) -> bool:
        """Whether a specimen of that sex and stage can show it; unknown may."""
        return (self.sex is None or sex in (None, self.sex)) and (
            self.stage is None or stage in (None, self.stage)
        )
