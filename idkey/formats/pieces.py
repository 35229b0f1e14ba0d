"""A key in small pieces with an address each, so that two versions can be laid side by side."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from idkey.formats.plain import documents
from idkey.model.key import Key


class Part(StrEnum):
    """What a piece belongs to, in the order in which changes are told."""

    KEY = "key"
    TAXON = "taxon"
    CHARACTER = "character"
    SCORE = "score"
    LABEL = "label"
    COUPLET = "couplet"
    SOURCE = "source"
    CHECK = "check"


LISTS: Mapping[Part, str] = {
    Part.TAXON: "taxa",
    Part.CHARACTER: "characters",
    Part.LABEL: "labels",
    Part.COUPLET: "couplets",
    Part.SOURCE: "sources",
    Part.CHECK: "checks",
}
"""Name of the list of entries per part."""

ORDER = "order"
"""Field of the piece that holds the ids of a part in order."""

_KIND = ("kind", "states", "unit")


@dataclass(frozen=True, slots=True, order=True)
class Place:
    """Address of a piece.

    Attributes:
        part: What it belongs to.
        id: Id of the entry; the taxon for a score; empty for the key itself and for orders.
        field: Name of the field; ``character sex stage`` for a score. A character's kind,
            states and unit are one piece under ``kind``, since they only make sense together.
    """

    part: Part
    id: str
    field: str


def pieces(key: Key) -> dict[Place, Any]:
    """Every piece of the key as a plain value."""
    whole = documents(key)
    found: dict[Place, Any] = {}
    lists = {name: whole.pop(name) for name in LISTS.values()}
    found |= _fields(Part.KEY, "", whole)
    for part, name in LISTS.items():
        entries = _entries(lists[name])
        if part is not Part.TAXON:
            found[Place(part, "", ORDER)] = list(entries)
        for own, entry in entries.items():
            found |= _fields(part, own, entry)
    return found


def _entries(listed: Any) -> dict[str, dict[str, Any]]:
    if isinstance(listed, Mapping):
        return {own: {"id": own, **entry} for own, entry in listed.items()}
    return {entry["id"]: entry for entry in listed}


def _fields(part: Part, own: str, entry: Mapping[str, Any]) -> dict[Place, Any]:
    found: dict[Place, Any] = {}
    for field, value in entry.items():
        if field == "scores":
            found |= _scores(own, value)
        elif part is not Part.CHARACTER or field not in _KIND:
            found[Place(part, own, field)] = value
    if part is Part.CHARACTER:
        found[Place(part, own, "kind")] = {f: entry[f] for f in _KIND if f in entry}
    return found


def _scores(taxon: str, scores: Mapping[str, Any]) -> dict[Place, Any]:
    found = {}
    for character, cell in scores.items():
        for score in cell if isinstance(cell, list) else [cell]:
            field = score_field(character, score.get("sex", ""), score.get("stage", ""))
            found[Place(Part.SCORE, taxon, field)] = score
    return found


def score_field(character: str, sex: str, stage: str) -> str:
    """The field of a score; sex and stage are empty where it holds for all."""
    return f"{character} {sex} {stage}"


def is_order(place: Place) -> bool:
    """Whether the piece is the order of a part."""
    return not place.id and place.field == ORDER


def entries(found: Mapping[Place, Any]) -> set[Place]:
    """Every entry that has a piece, as a place without field."""
    return {Place(p.part, p.id, "") for p in found if p.id and p.part is not Part.SCORE}


def owners(place: Place) -> set[Place]:
    """The entries whose coming or going says all about this piece."""
    if place.part is Part.SCORE:
        character = place.field.split(" ")[0]
        return {Place(Part.TAXON, place.id, ""), Place(Part.CHARACTER, character, "")}
    return {Place(place.part, place.id, "")}


def joined(found: Mapping[Place, Any]) -> dict[str, Any]:
    """The documents that consist of these pieces; the reverse of `pieces`."""
    whole: dict[str, Any] = {}
    entries: dict[Part, dict[str, dict[str, Any]]] = {part: {} for part in LISTS}
    for place, value in found.items():
        if place.part is Part.KEY:
            whole[place.field] = value
        elif place.part is not Part.SCORE and place.field != ORDER:
            own = entries[place.part].setdefault(place.id, {})
            own |= value if place.field == "kind" and place.part is Part.CHARACTER else {
                place.field: value
            }  # fmt: skip
    for place, value in found.items():
        if place.part is Part.SCORE and place.id in entries[Part.TAXON]:
            scores = entries[Part.TAXON][place.id].setdefault("scores", {})
            scores.setdefault(place.field.split(" ")[0], []).append(value)
    for part, name in LISTS.items():
        order = found.get(Place(part, "", ORDER), sorted(entries[part]))
        listed = [entries[part][own] for own in _present(order, entries[part])]
        whole[name] = listed
    whole["sources"] = {e["id"]: _without_id(e) for e in whole["sources"]}
    return whole


def _present(order: Iterable[str], entries: Mapping[str, Any]) -> list[str]:
    known = [own for own in order if own in entries]
    return [*known, *(own for own in entries if own not in known)]


def _without_id(entry: Mapping[str, Any]) -> dict[str, Any]:
    return {field: value for field, value in entry.items() if field != "id"}
