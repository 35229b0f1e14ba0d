"""What the engine answers: line-up, cautions, verdict, next questions. Values only."""

from dataclasses import dataclass
from enum import StrEnum

from idkey.model.case import Case, Finding
from idkey.model.character import Look
from idkey.model.score import Score


@dataclass(frozen=True, slots=True)
class Conflict:
    """A finding that a taxon cannot explain.

    Attributes:
        finding: The finding.
        expected: What the taxon shows instead; several where sex or stage is unknown.
        near: Whether it is a number just outside the printed range or a neighbouring state.
    """

    finding: Finding
    expected: tuple[Score, ...]
    near: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Candidate:
    """One taxon in the line-up.

    Attributes:
        taxon: Taxon id.
        support: P(taxon | findings), background included; all supports and the background sum to 1.
        conflicts: Findings it cannot explain.
        ruled_out: More conflicts than the case tolerates.
        separators: Characters that set the leader apart from it (at least 5 : 1 each, both
            scored, one per dependence group, no guesses).
        unscored: Findings on characters it has no score for.
    """

    taxon: str
    support: float
    conflicts: tuple[Conflict, ...] = ()
    ruled_out: bool = False
    separators: tuple[str, ...] = ()
    unscored: tuple[str, ...] = ()


class Stake(StrEnum):
    """What a wrong name costs."""

    HAZARD = "hazard"
    PERMIT = "permit"
    CLIMATE = "climate"


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """A danger or a permit that is still possible.

    Attributes:
        stake: HAZARD or PERMIT.
        taxa: Ids of the taxa that keep the caution up, best supported first; never empty.
        support: Their summed support.
        certain: Whether only such taxa are left.
        likely: Whether the animal is one of them in all likelihood, though others are left.
    """

    stake: Stake
    taxa: tuple[str, ...]
    support: float
    certain: bool = False
    likely: bool = False


class Level(StrEnum):
    """How far the evidence carries a name."""

    ESTABLISHED = "established"
    GROUP = "group"
    OPEN = "open"
    OUTSIDE = "outside"


class VerdictKind(StrEnum):
    """What the evidence says about the claim."""

    HOLDS = "holds"
    TOO_BROAD = "too_broad"
    CONTRADICTED = "contradicted"
    OPEN = "open"
    OUTSIDE = "outside"
    LABEL_UNKNOWN = "label_unknown"


class Need(StrEnum):
    """A condition of "established" that is not met yet."""

    ANSWERS = "answers"
    SUPPORT = "support"
    SEPARATORS = "separators"
    FIT = "fit"
    PRIOR = "prior"


@dataclass(frozen=True, slots=True, kw_only=True)
class Unmet:
    """One unmet condition: what there is and what is wanted.

    Attributes:
        need: Which condition.
        have: Value now.
        want: Value wanted.
        rivals: Taxa in the way.
        characters: Characters that would help, best first.
    """

    need: Need
    have: float
    want: float
    rivals: tuple[str, ...] = ()
    characters: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenName:
    """A name in open nomenclature (Sigovini, Keppel & Tagliapietra 2016).

    Attributes:
        text: The name to write, signs included; plain text.
        certain: The lowest taxon that is certain; what goes into Darwin Core's scientificName.
        rank: Rank of `certain`.
        qualifier: Sign and uncertain part; Darwin Core's identificationQualifier.
        formula: Darwin Core's taxonFormula.
        italic: Spans of `text` set in italics, as (start, end).
    """

    text: str
    certain: str = ""
    rank: str = ""
    qualifier: str = ""
    formula: str = ""
    italic: tuple[tuple[int, int], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """What the evidence supports, and no more.

    Attributes:
        kind: About the claim.
        level: About the identity.
        taxa: The established taxon, or the group; the leader alone while OPEN or OUTSIDE.
        name: The name to write.
        support: Summed support of `taxa`.
        answers: Findings that count (something was seen and the key can use it).
        fit: p-value of the findings under the leader; None without findings that test it.
        separated: Fewest separators of the leader from any rival outside `taxa`.
        unmet: Conditions that are not met; empty when established.
        stakes: What a wrong label costs here: differences between claim and evidence.
        contradicted: Findings that set the leader apart from every properly claimed taxon.
        blind: Kind without the prior, where the prior changes it; None otherwise.
    """

    kind: VerdictKind
    level: Level
    taxa: tuple[str, ...]
    name: OpenName
    support: float
    answers: int
    fit: float | None
    separated: int
    unmet: tuple[Unmet, ...] = ()
    stakes: tuple[Stake, ...] = ()
    contradicted: tuple[str, ...] = ()
    blind: VerdictKind | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Assessment:
    """Everything the findings of a case say.

    Attributes:
        case: The case it is about.
        lineup: Every taxon of the key once: standing ones by support, then ruled-out ones.
        background: Support of "something not in this key".
        cautions: Dangers and permits still possible.
        verdict: The verdict.
        prior: Prior share per taxon id in use; empty when flat.
    """

    case: Case
    lineup: tuple[Candidate, ...]
    background: float
    cautions: tuple[Caution, ...]
    verdict: Verdict
    prior: tuple[tuple[str, float], ...] = ()

    @property
    def standing(self) -> tuple[Candidate, ...]:
        """Candidates that are not ruled out."""
        return tuple(c for c in self.lineup if not c.ruled_out)

    @property
    def ruled_out(self) -> tuple[Candidate, ...]:
        """Candidates that are ruled out, fewest conflicts first."""
        return tuple(c for c in self.lineup if c.ruled_out)


class Blocked(StrEnum):
    """Why a character is not proposed now."""

    ANSWERED = "answered"
    HANDLING = "handling"
    SEX = "sex"
    STAGE = "stage"
    REQUIRES = "requires"


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """A character as the next thing to look at.

    Attributes:
        character: Character id.
        look: The easiest way of looking that is allowed now.
        gain_bits: Expected fall in the entropy of the aim's groups if it can be seen.
        effort: Trouble of `look` for this character.
        value: Bits per unit of effort, the chance of seeing it and the rivals that are not
            firmly set apart yet taken into account; the order.
        splits: How many of the leading taxa it would tell from the leader, and of how many.
        blocked: Why it is not proposed; None when it may be asked.
    """

    character: str
    look: Look
    gain_bits: float
    effort: float
    value: float
    splits: tuple[int, int]
    blocked: Blocked | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """What one finding changed, against the case without it.

    Attributes:
        character: Its character.
        ruled_out: Taxa that only this finding rules out.
        gain_bits: How much it lowered (or raised, below zero) the entropy of the line-up.
        leader_support: Support of the leader without it.
    """

    character: str
    ruled_out: tuple[str, ...]
    gain_bits: float
    leader_support: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelMatch:
    """A label entry that fits a typed text.

    Attributes:
        label: Label id.
        text: The spelling of the entry that matched.
        score: Likeness from 0 to 100; 100 is the same after normalising.
        exact: Whether it may be taken without asking.
    """

    label: str
    text: str
    score: float
    exact: bool
