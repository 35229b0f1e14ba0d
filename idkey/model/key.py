"""A whole key."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property

from idkey.model.character import Character
from idkey.model.check import Check
from idkey.model.couplet import Couplet
from idkey.model.label import Label
from idkey.model.score import Score
from idkey.model.source import Source
from idkey.model.taxon import Taxon


@dataclass(frozen=True, kw_only=True)
class Key:
    """Everything a key folder says, in the order it says it.

    Attributes:
        id: Name of the folder.
        title: Title for people.
        version: Semantic version.
        scope: What it covers and what it does not.
        body_plan: Which portrait template and plates it uses; empty for none.
        authors: Authors by role, in words.
        licence: SPDX identifier.
        cautions: Sentences shown with every verdict of this key.
        glossary: Term to explanation.
        taxa: Taxa in order.
        characters: Characters in printed order.
        scores: Cells of the matrix; a missing cell is unknown.
        labels: Label entries.
        couplets: Couplets; the first one is the start.
        sources: Cited works.
        checks: Published statements.
        digest: SHA-256 of the canonical content, as hex; empty while unsaved.
    """

    id: str
    title: str
    version: str
    scope: str = ""
    body_plan: str = ""
    authors: tuple[str, ...] = ()
    licence: str = ""
    cautions: tuple[str, ...] = ()
    glossary: Mapping[str, str] = field(default_factory=dict)
    taxa: tuple[Taxon, ...] = ()
    characters: tuple[Character, ...] = ()
    scores: tuple[Score, ...] = ()
    labels: tuple[Label, ...] = ()
    couplets: tuple[Couplet, ...] = ()
    sources: tuple[Source, ...] = ()
    checks: tuple[Check, ...] = ()
    digest: str = ""

    def __hash__(self) -> int:
        return hash((self.id, self.version, self.digest))

    @cached_property
    def taxon(self) -> Mapping[str, Taxon]:
        """Taxa by id."""
        return {taxon.id: taxon for taxon in self.taxa}

    @cached_property
    def character(self) -> Mapping[str, Character]:
        """Characters by id."""
        return {character.id: character for character in self.characters}

    @cached_property
    def label(self) -> Mapping[str, Label]:
        """Labels by id."""
        return {label.id: label for label in self.labels}

    @cached_property
    def couplet(self) -> Mapping[str, Couplet]:
        """Couplets by id."""
        return {couplet.id: couplet for couplet in self.couplets}

    @cached_property
    def source(self) -> Mapping[str, Source]:
        """Sources by id."""
        return {source.id: source for source in self.sources}

    @cached_property
    def cells(self) -> Mapping[tuple[str, str], tuple[Score, ...]]:
        """Scores by (taxon id, character id); several where sex or stage matters."""
        cells: dict[tuple[str, str], list[Score]] = {}
        for score in self.scores:
            cells.setdefault((score.taxon, score.character), []).append(score)
        return {place: tuple(scores) for place, scores in cells.items()}
