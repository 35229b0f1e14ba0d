"""key.yaml, sources.yaml, labels.yaml: the documents and what their fields mean."""

from typing import Annotated, Literal

from pydantic import Field, StringConstraints, WithJsonSchema

from idkey.formats.document import Document, Id, Number, Share, Text, Words

SEMANTIC_VERSION = (
    r"^(0|[1-9][0-9]*)\.(0|[1-9][0-9]*)\.(0|[1-9][0-9]*)(-[0-9A-Za-z.-]+)?(\+[0-9A-Za-z.-]+)?$"
)


class KeyDoc(Document):
    """The whole of key.yaml."""

    format: Annotated[Literal["1"], WithJsonSchema({"const": 1})]
    """Version of this file format; always 1."""
    id: Id
    """Name of the folder."""
    title: Words
    """Title for people."""
    version: Annotated[str, StringConstraints(pattern=SEMANTIC_VERSION, max_length=100)]
    """Semantic version of the content, such as 1.0.0."""
    licence: Text = ""
    """SPDX identifier, such as CC-BY-4.0."""
    body_plan: Text = ""
    """Portrait template and plates to use; empty for none."""
    authors: tuple[Words, ...] = ()
    """Authors, each with a role, in words."""
    scope: Text = ""
    """What the key covers and what it does not."""
    cautions: tuple[Words, ...] = ()
    """Sentences shown with every verdict of this key."""
    glossary: dict[Annotated[str, StringConstraints(min_length=1, max_length=150)], Text] = {}
    """Term to explanation."""


class SourceDoc(Document):
    """A work that is cited."""

    citation: Words
    """Author, year, title and place, in one line."""
    url: Text = ""
    """Where it was read."""
    kind: Text = ""
    """primary, institution, legal, hobby_web, memory, ..."""
    seen: bool = False
    """Whether the author of the key has seen the text."""
    scope: Text = ""
    """How much of it was seen; empty when all of it was."""


class SourcesDoc(Document):
    """The whole of sources.yaml."""

    sources: dict[Id, SourceDoc] = {}
    """Source id to work."""


class RatesDoc(Document):
    """What a label usually turns out to be, before the shop's own cases."""

    shares: dict[Id, Share]
    """Share per taxon id; what is missing from one is spread over the other taxa."""
    animals: Annotated[Number, Field(gt=0)] = 4.0
    """How many animals these shares are worth."""
    sources: tuple[Id, ...] = ()
    """Source ids."""


class LabelDoc(Document):
    """One shop label."""

    id: Id
    """Stable name, unique within the key."""
    text: Words
    """The label as the trade writes it."""
    variants: tuple[Words, ...] = ()
    """Other spellings and languages."""
    covers: tuple[Id, ...] = ()
    """Ids of the taxa the label properly covers."""
    covers_outside: tuple[Words, ...] = ()
    """Taxa it properly covers that this key lacks, in words."""
    sold_as: tuple[Id, ...] = ()
    """Ids of other taxa that are often sold under it."""
    sold_outside: tuple[Words, ...] = ()
    """The same for taxa that this key lacks, in words."""
    why: Text = ""
    """Why the mix-up happens."""
    deciding: tuple[Id, ...] = ()
    """Ids of the characters that decide it, best first."""
    evidence: Text = ""
    """trade, taxonomy or common_practice."""
    safety: Text = ""
    """What a wrong label does to a person."""
    law: Text = ""
    """What a wrong label does to the papers."""
    rates: RatesDoc | None = None
    """Starting rates, where somebody has counted."""
    sources: tuple[Id, ...] = ()
    """Source ids."""


class LabelsDoc(Document):
    """The whole of labels.yaml."""

    labels: tuple[LabelDoc, ...] = ()
    """Labels, in any order."""
