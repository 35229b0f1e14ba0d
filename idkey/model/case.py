"""One animal being checked: the claim, the specimen, the findings."""

from dataclasses import dataclass, field, replace
from enum import StrEnum

from idkey.model.character import Look, Sex, Stage


class Certainty(StrEnum):
    """How sure the observer is."""

    SURE = "sure"
    LIKELY = "likely"
    GUESS = "guess"


class Care(StrEnum):
    """How the looking was done; scales the chance of mistakes."""

    CAREFUL = "careful"
    ORDINARY = "ordinary"
    HURRIED = "hurried"

    @property
    def factor(self) -> float:
        """Factor on every error rate: 5 %, 10 %, 20 % around a middle of 10 %."""
        return {"careful": 0.5, "ordinary": 1.0, "hurried": 2.0}[self]


class Aim(StrEnum):
    """What the person needs to know."""

    LABEL = "label"
    TAXON = "taxon"
    HAZARD = "hazard"
    PERMIT = "permit"


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """One observation of one character.

    Attributes:
        character: Character id.
        states: States seen: one, or several for "one of these"; empty for a number.
        negated: True for "none of `states`".
        value: Number seen, in the unit of the character.
        uncertainty: Standard uncertainty of `value`; None takes the character's own.
        unseen: True for "looked, could not see it"; it rules nothing out.
        certainty: How sure.
        look: How it was looked at; None when not told.
        note: Free text.
        pictures: Ids of pictures that show it.
        marks: What was drawn on them, as the text of `idkey.photo.marks`; empty for nothing.
        lead: Lead of a couplet it came from, such as ``"3/1"``; empty otherwise.
        at: When, ISO 8601 in UTC; empty when not told.
        by: Who, as initials or alias.
    """

    character: str
    states: tuple[str, ...] = ()
    negated: bool = False
    value: float | None = None
    uncertainty: float | None = None
    unseen: bool = False
    certainty: Certainty = Certainty.SURE
    look: Look | None = None
    note: str = ""
    pictures: tuple[str, ...] = ()
    marks: str = ""
    lead: str = ""
    at: str = ""
    by: str = ""

    def __post_init__(self) -> None:
        said = (bool(self.states), self.value is not None, self.unseen)
        if sum(said) != 1:
            raise ValueError("a finding is states, a number, or 'could not see': exactly one")
        if self.negated and not self.states:
            raise ValueError("'none of these' needs states")
        if self.uncertainty is not None and self.uncertainty < 0:
            raise ValueError("an uncertainty is not negative")

    @property
    def same_as(self) -> tuple[object, ...]:
        """What was observed, without who, when and remarks."""
        return (self.character, self.states, self.negated, self.value, self.unseen)


@dataclass(frozen=True, slots=True, kw_only=True)
class Claim:
    """What the label says.

    Attributes:
        text: The label, verbatim.
        label: Id of the key's label entry the person confirmed; empty when none.
        supplier: Who supplied it, as a name or alias.
        date: Date of arrival, ISO 8601.
        sex: Claimed sex, verbatim.
        size: Claimed size, verbatim.
        origin: Claimed origin, verbatim.
        price: Price on the label, verbatim.
    """

    text: str = ""
    label: str = ""
    supplier: str = ""
    date: str = ""
    sex: str = ""
    size: str = ""
    origin: str = ""
    price: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Specimen:
    """What is known of the animal itself; None is unknown."""

    sex: Sex | None = None
    stage: Stage | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One step of a walk by couplets: the lead numbers taken there (several: "both")."""

    couplet: str
    leads: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One animal (or one lot) being checked; every change makes a new value.

    Attributes:
        id: Stable id, a UUID as text.
        key: Id of the key in use.
        key_version: Its version when the case was last judged.
        key_digest: Its digest then.
        claim: What the label says.
        specimen: What is known of the animal.
        findings: In the order they were made; at most one per character.
        aim: What the person needs to know.
        tolerance: How many conflicts a taxon may have and still stand.
        care: How the looking was done.
        use_prior: Whether what the label usually turns out to be counts as evidence.
        walk: Steps taken through the couplets.
        note: Free text.
        by: Who determines, as initials or alias.
        created: ISO 8601 in UTC.
        language: Code of the language its rationale was last signed in; empty before that.
    """

    id: str
    key: str
    key_version: str = ""
    key_digest: str = ""
    claim: Claim = field(default_factory=Claim)
    specimen: Specimen = field(default_factory=Specimen)
    findings: tuple[Finding, ...] = ()
    aim: Aim = Aim.LABEL
    tolerance: int = 0
    care: Care = Care.ORDINARY
    use_prior: bool = False
    walk: tuple[Step, ...] = ()
    note: str = ""
    by: str = ""
    created: str = ""
    language: str = ""

    def finding(self, character: str) -> Finding | None:
        """The finding on that character, if there is one."""
        return next((f for f in self.findings if f.character == character), None)

    def observe(self, finding: Finding) -> "Case":
        """The case with `finding`, which replaces one on the same character in its place."""
        if self.finding(finding.character) == finding:
            return self
        if self.finding(finding.character) is None:
            return replace(self, findings=(*self.findings, finding))
        kept = (finding if f.character == finding.character else f for f in self.findings)
        return replace(self, findings=tuple(kept))

    def withdraw(self, character: str) -> "Case":
        """The case without the finding on `character`; the same one when there is none."""
        kept = tuple(f for f in self.findings if f.character != character)
        return self if len(kept) == len(self.findings) else replace(self, findings=kept)
