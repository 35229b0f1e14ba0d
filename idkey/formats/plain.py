"""A key as plain values in canonical order: what is written, hashed and compared.

The documents are those of a key folder under the same names; a field that has its default is
left out, whole numbers are written without a fraction, taxa stand in the order of their ids,
scores in the order of the characters and within a cell by sex and stage, states in the order
of their character.
"""

from collections.abc import Iterable, Mapping
from dataclasses import MISSING, Field, fields, is_dataclass, replace
from enum import Enum
from typing import Any

from idkey.errors import IdKeyError
from idkey.model.character import Sex, Stage
from idkey.model.check import Check
from idkey.model.couplet import Couplet, Lead, Sees
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows

Plain = dict[str, Any]

_SEXES = (None, Sex.MALE, Sex.FEMALE)
_STAGES = (None, Stage.JUVENILE, Stage.ADULT)
_EXACT = 2.0**53
_CONTENT = ("taxa", "characters", "scores", "labels", "couplets", "sources", "checks")


def canonical(key: Key) -> Key:
    """The key in canonical order; equal keys become equal values, digest left as it is."""
    order = {character.id: n for n, character in enumerate(key.characters)}
    taxa = tuple(sorted(key.taxa, key=lambda taxon: taxon.id))
    rank = {taxon.id: n for n, taxon in enumerate(taxa)}

    def place(score: Score) -> tuple[int, ...]:
        within = (_SEXES.index(score.sex), _STAGES.index(score.stage))
        return rank[score.taxon], order[score.character], *within

    try:
        scores = tuple(sorted(key.scores, key=place))
    except KeyError as err:
        raise IdKeyError(
            f"The key {key.id} has a score for '{err.args[0]}', which it does not define.",
            "Add that taxon or character, or remove its scores.",
        ) from err
    return replace(key, taxa=taxa, scores=scores)


def key_document(key: Key) -> Plain:
    """key.yaml."""
    skipped = (*_CONTENT, "digest")
    return {"format": 1, **_fields(key, skipped)}


def characters_document(key: Key) -> Plain:
    """characters.yaml."""
    return {"characters": [_fields(character) for character in key.characters]}


def labels_document(key: Key) -> Plain:
    """labels.yaml."""
    return {"labels": [_fields(label) for label in key.labels]}


def sources_document(key: Key) -> Plain:
    """sources.yaml."""
    return {"sources": {source.id: _fields(source, ("id",)) for source in key.sources}}


def couplets_document(key: Key) -> Plain:
    """couplets.yaml."""
    return {"couplets": [_couplet(couplet) for couplet in key.couplets]}


def checks_document(key: Key) -> Plain:
    """checks.yaml."""
    return {"checks": [_check(check) for check in key.checks]}


def taxon_documents(key: Key) -> dict[str, Plain]:
    """taxa/<id>.yaml per taxon id."""
    states = {c.id: c.state_ids for c in key.characters}
    cells: dict[str, dict[str, list[Plain]]] = {taxon.id: {} for taxon in key.taxa}
    for score in key.scores:
        own = cells[score.taxon].setdefault(score.character, [])
        own.append(score_document(score, states[score.character]))
    return {
        taxon.id: _fields(taxon)
        | {"scores": {n: c[0] if len(c) == 1 else c for n, c in cells[taxon.id].items()}}
        for taxon in key.taxa
    }


def documents(key: Key) -> Plain:
    """The whole key; the same content gives the same value, whatever its order was."""
    key = canonical(key)
    return {
        **key_document(key),
        **characters_document(key),
        "taxa": list(taxon_documents(key).values()),
        **labels_document(key),
        **couplets_document(key),
        **sources_document(key),
        **checks_document(key),
    }


def _couplet(couplet: Couplet) -> Plain:
    return _fields(couplet, ("leads",)) | {"leads": [_lead(lead) for lead in couplet.leads]}


def _lead(lead: Lead) -> Plain:
    where = f"The lead '{lead.statement}'"
    return {"statement": lead.statement, **_asked(lead.sees, where), **_fields(lead, _LEAD)}


def _check(check: Check) -> Plain:
    first = {name: _value(getattr(check, name)) for name in ("id", "kind", "statement")}
    asked = _asked(check.sees, f"The check '{check.id}'")
    return first | asked | _fields(check, ("sees", *first))


_LEAD = ("statement", "sees")


def _asked(sees: Iterable[Sees], where: str) -> Plain:
    found: Plain = {}
    for one in sees:
        if one.character in found:
            raise IdKeyError(
                f"{where} asks for '{one.character}' twice.", "Join the two, or remove one."
            )
        bounds = {"low": one.low, "high": one.high}
        found[one.character] = list(one.states) or {
            n: number(v) for n, v in bounds.items() if v is not None
        }
    return {"sees": found} if found else {}


def score_document(score: Score, states: tuple[str, ...]) -> Plain:
    """A score as it stands under its character.

    Args:
        score: The score.
        states: Ids of the character's states, in order.
    """
    said: Plain = {}
    if score.sex is not None:
        said["sex"] = score.sex.value
    if score.stage is not None:
        said["stage"] = score.stage.value
    value = score.value
    if isinstance(value, Shows):
        said["shows"] = _shown(value, states)
    elif isinstance(value, Inapplicable):
        said["inapplicable"] = True
    else:
        for name in _SPANS:
            if (bound := getattr(value, name)) is not None:
                said[name] = number(bound)
    if score.basis is not _SOURCE:
        said["basis"] = score.basis.value
    if score.sources:
        said["sources"] = list(score.sources)
    if score.note:
        said["note"] = score.note
    return said


_SPANS = ("low", "high", "mean", "sd", "n")
_SOURCE = Score(taxon="", character="", value=Inapplicable()).basis


def _shown(shows: Shows, order: tuple[str, ...]) -> Any:
    states = shows.states
    named = [s for s in order if s in states]
    if len(named) < len(states):
        named += sorted(s for s in states if s not in order)
    if any(states.values()):
        return {s: _value(states[s]) for s in named}
    return named


def _fields(value: Any, skipped: tuple[str, ...] = ()) -> Plain:
    """Fields that differ from their defaults, in the order of the model."""
    said: Plain = {}
    for name, default in _defaults(type(value)):
        own = getattr(value, name)
        if name not in skipped and own != default:
            said[name] = _value(own)
    return said


def _defaults(kind: type) -> tuple[tuple[str, Any], ...]:
    if kind not in _DEFAULTS:
        _DEFAULTS[kind] = tuple((field.name, _default(field)) for field in fields(kind))
    return _DEFAULTS[kind]


_DEFAULTS: dict[type, tuple[tuple[str, Any], ...]] = {}


def _default(field: Field[Any]) -> Any:
    return field.default if field.default_factory is MISSING else field.default_factory()


def _value(value: Any) -> Any:
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, float):
        return number(value)
    if is_dataclass(value):
        return _fields(value)
    if isinstance(value, Mapping):
        return {name: _value(inner) for name, inner in value.items()}
    if isinstance(value, tuple | list):
        return [_value(inner) for inner in value]
    return value


def number(value: float) -> float | int:
    """The number without a needless fraction: 120.0 is written 120."""
    whole = abs(value) < _EXACT and value == int(value)
    return int(value) if whole else float(value)
