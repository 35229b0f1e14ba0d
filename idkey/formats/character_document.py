"""characters.yaml, couplets.yaml, checks.yaml: the documents and what their fields mean."""

from typing import Annotated

from pydantic import Field, StringConstraints

from idkey.formats.document import Document, Id, Number, SeesDoc, Text, Words
from idkey.model.character import Kind, Look, Reliability, Sex, Stage
from idkey.model.check import CheckKind

Colour = Annotated[str, StringConstraints(pattern=r"^#[0-9A-Fa-f]{6}$")]
Figure = Annotated[str, StringConstraints(pattern=r"^([\w-][\w. -]*(/[\w-][\w. -]*)*)?$")]


class StateDoc(Document):
    """One way a character can look."""

    id: Id
    """Stable name, unique within its character."""
    label: Words
    """The words on the tile."""
    detail: Text = ""
    """A second line where the label needs one."""
    colours: tuple[Colour, ...] = ()
    """Reference colours as "#rrggbb" in sRGB, typical one first."""
    figure: Figure = ""
    """Path of a drawing below images/; left out: the one named after the state."""
    figure_credit: Text = ""
    """Who made the figure; it is shown with it."""
    figure_licence: Text = ""
    """How the figure may be used, such as CC-BY-4.0; it is shown with it."""


class RequirementDoc(Document):
    """Another character that must show one of these states first."""

    character: Id
    """Id of that character."""
    states: Annotated[tuple[Id, ...], Field(min_length=1)]
    """Ids of its states, one of which must show."""


class CharacterDoc(Document):
    """Something to look at."""

    id: Id
    """Stable name, unique within the key."""
    name: Words
    """The term of the trade."""
    question: Words
    """The question in plain words, as put to a keeper."""
    kind: Kind
    """What sort of value it takes; count, measurement and ratio are numbers."""
    looks: Annotated[tuple[Look, ...], Field(min_length=1)]
    """Ways of looking that can show it, easiest first."""
    states: tuple[StateDoc, ...] = ()
    """States in order (ordinal: from least to most); none for numbers."""
    unit: Text = ""
    """Unit of a number as printed, such as mm."""
    definition: Text = ""
    """What exactly is looked at."""
    how: Text = ""
    """How to look, in one sentence."""
    pitfalls: Text = ""
    """What commonly goes wrong."""
    reliability: Reliability = Reliability.MEDIUM
    """How well observers agree."""
    error: Annotated[Number, Field(ge=0, lt=1)] | None = None
    """Measured chance of recording another state; left out: taken from reliability."""
    effort: Annotated[Number, Field(gt=0)] | None = None
    """Trouble relative to a glance; left out: taken from the way of looking."""
    uncertainty: Annotated[Number, Field(ge=0)] | None = None
    """Standard uncertainty of one measurement in the unit; left out: unknown."""
    sex: Sex | None = None
    """The only sex that shows it; left out: both."""
    stage: Stage | None = None
    """The only stage that shows it; left out: all."""
    group: Text = ""
    """Dependence group: characters that hang together and are weighed as one."""
    requires: RequirementDoc | None = None
    """Another character that must show a certain state first."""
    part: Text = ""
    """Body part for the orientation plate."""
    words: tuple[Words, ...] = ()
    """Other words people search for."""
    rule_of_thumb: bool = False
    """Whether shops lean on it more than it can bear."""
    sources: tuple[Id, ...] = ()
    """Source ids."""


class CharactersDoc(Document):
    """The whole of characters.yaml."""

    characters: tuple[CharacterDoc, ...] = ()
    """Characters in printed order."""


class LeadDoc(Document):
    """One way on from a couplet: to another couplet, or to its end in taxa."""

    statement: Words
    """What the animal shows, as a sentence."""
    sees: SeesDoc = {}
    """What taking the lead says about characters; all of it holds."""
    to: Id | None = None
    """Id of the next couplet."""
    taxa: tuple[Id, ...] = ()
    """Ids of the taxa the lead ends in."""
    remark: Text = ""
    """What cannot be told apart here, or a caution."""


class CoupletDoc(Document):
    """Two or more leads, of which the animal fits one."""

    id: Id
    """Stable name, usually its number in quotes."""
    note: Text = ""
    """How to look, or a caution."""
    leads: Annotated[tuple[LeadDoc, ...], Field(min_length=2)]
    """The leads, in order."""


class CoupletsDoc(Document):
    """The whole of couplets.yaml; the first couplet is the start."""

    couplets: tuple[CoupletDoc, ...] = ()
    """Couplets."""


class CheckDoc(Document):
    """A published statement: these findings leave and exclude these taxa."""

    id: Id
    """Stable name."""
    kind: CheckKind
    """What it is about; matrix and name can be computed."""
    statement: Words
    """The statement in your own words."""
    sees: SeesDoc = {}
    """What is observed."""
    sex: Sex | None = None
    """Sex of the specimen."""
    stage: Stage | None = None
    """Stage of the specimen."""
    names: tuple[Words, ...] = ()
    """Label text that must lead to the remaining taxa (kind name)."""
    remain: tuple[Id, ...] = ()
    """Ids of taxa that must not be excluded."""
    exclude: tuple[Id, ...] = ()
    """Ids of taxa that must be excluded."""
    origin: Text = ""
    """Country or region the statement rests on (kind label_origin)."""
    independence: Text = ""
    """Whether the statement rests on the same text as the scores."""
    note: Text = ""
    """Remark."""
    sources: tuple[Id, ...] = ()
    """Source ids."""


class ChecksDoc(Document):
    """The whole of checks.yaml."""

    checks: tuple[CheckDoc, ...] = ()
    """Published statements."""
