"""Documents that have passed every check, as the values of the model."""

from collections.abc import Mapping
from functools import lru_cache
from typing import Any

from idkey.formats.character_document import CharacterDoc, CheckDoc, CoupletDoc, LeadDoc, StateDoc
from idkey.formats.document import SeesDoc
from idkey.formats.key_document import KeyDoc, LabelDoc, SourceDoc
from idkey.formats.taxon_document import ScoreDoc, TaxonDoc
from idkey.model.character import Character, Requirement, State
from idkey.model.check import Check
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key
from idkey.model.label import Label, Rates
from idkey.model.score import Inapplicable, Often, Score, Shows, Spans, Value
from idkey.model.source import Source
from idkey.model.taxon import Hazard, Permit, Taxon


def key_head(doc: KeyDoc) -> Key:
    """The key without its content."""
    return Key(
        id=doc.id,
        title=doc.title,
        version=doc.version,
        scope=doc.scope,
        body_plan=doc.body_plan,
        authors=doc.authors,
        licence=doc.licence,
        cautions=doc.cautions,
        glossary=dict(doc.glossary),
    )


def source(id: str, doc: SourceDoc) -> Source:  # noqa: A002 - the field's name
    """A cited work."""
    return Source(id=id, **doc.model_dump())


def character(doc: CharacterDoc) -> Character:
    """A character."""
    fields = {name: getattr(doc, name) for name in CharacterDoc.model_fields}
    states = (
        State(**{name: getattr(s, name) for name in StateDoc.model_fields}) for s in doc.states
    )
    needed = doc.requires
    fields |= {
        "looks": doc.looks,
        "states": tuple(states),
        "words": doc.words,
        "sources": doc.sources,
        "requires": needed and Requirement(character=needed.character, states=needed.states),
    }
    return Character(**fields)


def taxon(doc: TaxonDoc) -> Taxon:
    """A taxon, without its scores."""
    fields: dict[str, Any] = {n: getattr(doc, n) for n in TaxonDoc.model_fields}
    del fields["scores"]
    fields["hazard"] = Hazard(**dict(doc.hazard))
    fields["permit"] = Permit(**dict(doc.permit))
    return Taxon(**fields)


def label(doc: LabelDoc) -> Label:
    """A label."""
    fields: dict[str, Any] = {n: getattr(doc, n) for n in LabelDoc.model_fields}
    if doc.rates is not None:
        fields["rates"] = Rates(
            shares=dict(doc.rates.shares),
            animals=doc.rates.animals,
            sources=doc.rates.sources,
        )
    return Label(**fields)


def couplet(doc: CoupletDoc) -> Couplet:
    """A couplet."""
    return Couplet(id=doc.id, note=doc.note, leads=tuple(_lead(lead) for lead in doc.leads))


def _lead(doc: LeadDoc) -> Lead:
    return Lead(
        statement=doc.statement,
        sees=sees(doc.sees),
        to=doc.to or "",
        taxa=doc.taxa,
        remark=doc.remark,
    )


def check(doc: CheckDoc) -> Check:
    """A published statement."""
    fields: dict[str, Any] = {n: getattr(doc, n) for n in CheckDoc.model_fields}
    fields["sees"] = sees(doc.sees)
    return Check(**fields)


def sees(doc: SeesDoc) -> tuple[Sees, ...]:
    """What is asked for, one entry a character."""
    return tuple(
        Sees(character=name, states=asked)
        if isinstance(asked, tuple)
        else Sees(character=name, low=asked.low, high=asked.high)
        for name, asked in doc.items()
    )


def score(taxon_id: str, character_id: str, doc: ScoreDoc) -> Score:
    """One cell."""
    return Score(
        taxon=taxon_id,
        character=character_id,
        value=_value(doc),
        sex=doc.sex,
        stage=doc.stage,
        basis=doc.basis,
        sources=doc.sources,
        note=doc.note,
    )


def _value(doc: ScoreDoc) -> Value:
    if doc.inapplicable:
        return Inapplicable()
    if isinstance(doc.shows, tuple):
        return _shown(doc.shows)
    if doc.shows is not None:
        shares: Mapping[str, Often | float | None] = dict(doc.shows)
        return Shows(shares)
    return Spans(low=doc.low, high=doc.high, mean=doc.mean, sd=doc.sd, n=doc.n)


@lru_cache(maxsize=4096)
def _shown(states: tuple[str, ...]) -> Shows:
    return Shows(dict.fromkeys(states))
