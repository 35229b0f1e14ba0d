"""A single-access key: couplets and their leads."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Sees:
    """What a lead or a published check asks for on one character.

    Attributes:
        character: Character id.
        states: State ids, one of which must show; empty for a number.
        low: Smallest value that fits; None is open.
        high: Largest value that fits; None is open.
    """

    character: str
    states: tuple[str, ...] = ()
    low: float | None = None
    high: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Lead:
    """One way on from a couplet.

    Attributes:
        statement: What the animal shows, as a sentence.
        sees: What taking the lead says about characters; all of it holds.
        to: Id of the next couplet; empty at an end.
        taxa: Ids of the taxa the lead ends in; empty when it goes on.
        remark: What cannot be told apart here, or a caution.
    """

    statement: str
    sees: tuple[Sees, ...] = ()
    to: str = ""
    taxa: tuple[str, ...] = ()
    remark: str = ""

    def __post_init__(self) -> None:
        if bool(self.to) == bool(self.taxa):
            raise ValueError("a lead goes to a couplet or ends in taxa, not both")


@dataclass(frozen=True, slots=True, kw_only=True)
class Couplet:
    """Two or more leads, of which the animal fits one.

    Attributes:
        id: Stable name, usually its number.
        leads: In order; at least two.
        note: How to look, or a caution.
    """

    id: str
    leads: tuple[Lead, ...]
    note: str = ""

    def __post_init__(self) -> None:
        if len(self.leads) < 2:
            raise ValueError(f"couplet {self.id!r} needs at least two leads")
