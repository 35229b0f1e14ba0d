"""Reads a key from SDD 1.1, as loosely as it is found."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from idkey.errors import IdKeyError
from idkey.formats.imported import (
    HAZARD_UNTOLD,
    LOOKS_UNTOLD,
    UNKNOWN_HAZARD,
    Ids,
    Imported,
    imported,
)
from idkey.formats.json_key import key_of_documents
from idkey.formats.new_key import FIRST_VERSION
from idkey.formats.sdd_characters import (
    Found,
    detail_of,
    label_of,
    own_id,
    read_characters,
    read_dependence,
)
from idkey.formats.sdd_descriptions import Scores, read_descriptions
from idkey.formats.sdd_faults import sdd_faults
from idkey.formats.sdd_leads import LeadsReader
from idkey.formats.sdd_terms import LONGEST_STATEMENT, RANKS, more_of, restored
from idkey.formats.xml_nodes import Node, parse_xml

_RANKS = {code: rank for rank, code in RANKS.items()}
_MOST_NOTES = 200
_UNREAD = (
    "NaturalLanguageDescriptions",
    "MediaObjects",
    "GeographicAreas",
    "Audiences",
    "Specimens",
)


def parse_sdd(raw: bytes, file: Path) -> Imported:
    """The key in `raw`, which was read from `file`.

    Raises:
        IdKeyError: It is no SDD, holds no characters, or cannot become a key.
    """
    try:
        return _read(parse_xml(raw, file.name), file)
    except RecursionError as err:
        raise IdKeyError(f"{file.name} is deeper than any key.", "Split it.") from err


def _read(root: Node, file: Path) -> Imported:
    datasets = [root] if root.tag == "Dataset" else list(root.all("Dataset"))
    if root.tag not in ("Datasets", "Dataset") or not datasets:
        raise IdKeyError(f"{file.name} is no SDD document.", "Choose a file with Datasets in it.")
    dataset = next((d for d in datasets if d.first("Characters") is not None), datasets[0])
    by_id: dict[str, Node] = {}
    for node in root.below():
        if own := node.attributes.get("id"):
            by_id.setdefault(own, node)
    found = Found(dataset, "id" in more_of(dataset), by_id)
    if len(datasets) > 1:
        found.notes.append(f"{len(datasets) - 1} further data sets were left out.")
    found.notes += [f"Line {f.line}: {f.problem}" for f in sdd_faults(root, file)]
    read_characters(found)
    if not found.characters:
        raise IdKeyError(
            f"{file.name} holds no character that tells anything apart.",
            "Choose a file with characters and descriptions.",
        )
    read_dependence(found)
    key = key_of_documents(_documents(found, file), file)
    return imported(key, tuple(_notes(found)), file.name)


def _notes(found: Found) -> Iterator[str]:
    unread = [tag for tag in _UNREAD if found.dataset.first(tag) is not None]
    notes = list(dict.fromkeys(found.notes))
    yield from notes[:_MOST_NOTES]
    if len(notes) > _MOST_NOTES:
        yield f"… and {len(notes) - _MOST_NOTES} more remarks."
    if unread and not found.ours:
        yield f"Not read: {', '.join(unread)}."
    if not found.ours:
        yield LOOKS_UNTOLD
        yield HAZARD_UNTOLD


def _documents(found: Found, file: Path) -> dict[str, Any]:
    """The key as documents."""
    remarks: dict[str, list[str]] = {}
    scores = read_descriptions(found, remarks)
    taxa = _taxa(found, scores, remarks)
    groups: dict[str, tuple[str, ...]] = {own: (taxon["id"],) for own, taxon in taxa.items()}
    groups |= _groups(found, {taxon["id"] for taxon in taxa.values()})
    leads = LeadsReader(found, groups)
    more = more_of(found.dataset)
    title = label_of(found.dataset) or file.stem or "Imported key"
    head: dict[str, Any] = {
        "format": 1,
        "id": Ids("key").new(file.stem),
        "version": FIRST_VERSION,
        "title": restored(more, "title", title),
    }
    if detail := detail_of(found.dataset):
        head["scope"] = restored(more, "scope", detail, LONGEST_STATEMENT)
    head |= {"licence": _licence(found)} if _licence(found) else {}
    head |= {"authors": authors} if (authors := _authors(found)) else {}
    rest = {n: v for n, v in more.items() if n not in ("title", "scope")}
    order = rest.pop("couplet_order", None)
    apart = rest.pop("couplets_apart", None)
    return {
        **head,
        "labels": [],
        "checks": [],
        **rest,
        "characters": list(found.characters.values()),
        "taxa": list(taxa.values()),
        "couplets": _ordered(leads.couplets(), apart, order),
        "sources": dict(_sources(found)),
    }


def _ordered(couplets: list[dict[str, Any]], apart: Any, order: Any) -> list[dict[str, Any]]:
    whole = [*couplets, *(apart if isinstance(apart, list) else [])]
    if not isinstance(order, list):
        return whole
    rank = {str(own): number for number, own in enumerate(order)}
    return sorted(whole, key=lambda couplet: rank.get(str(couplet.get("id")), len(rank)))


def _taxa(found: Found, scores: Scores, remarks: dict[str, list[str]]) -> dict[str, dict[str, Any]]:
    """Our taxa per the document's id: those that are described, or that a lead ends in."""
    names = list(found.dataset.all("TaxonNames", "TaxonName"))
    ends = {
        lead.ref("TaxonName")
        for lead in found.dataset.below()
        if lead.tag == "Lead" and lead.ref("TaxonName")
    }
    wanted = [
        node
        for node in names
        if (own := node.attributes.get("id", "")) in scores
        or (own in ends and "group_of" not in more_of(node))
    ]
    ids = Ids("taxon")
    found_taxa: dict[str, dict[str, Any]] = {}
    places = _Places(found)
    for node in wanted or [n for n in names if "group_of" not in more_of(n)]:
        own = node.attributes.get("id", "")
        name = label_of(node) or _text(node, "CanonicalName", "Simple") or own or "unnamed"
        taxon = _taxon(node, own_id(found, node, "t", ids, name), name)
        if not found.ours:
            taxon |= places.fields(own)
            taxon["hazard"] = {
                "level": UNKNOWN_HAZARD.level.value,
                "note": UNKNOWN_HAZARD.note,
            }
        if said := remarks.get(own):
            taxon["note"] = " ".join(filter(None, (taxon.get("note"), *said)))[:10_000]
        cells = scores.get(own, {})
        taxon["scores"] = {c: v[0] if len(v) == 1 else v for c, v in cells.items()}
        found_taxa[own] = taxon
    return found_taxa


def _taxon(node: Node, own: str, name: str) -> dict[str, Any]:
    more = more_of(node)
    fields: dict[str, Any] = {"id": own, "name": restored(more, "name", name)}
    if authority := _text(node, "CanonicalAuthorship", "Simple"):
        fields["authority"] = restored(more, "authority", authority)
    rank = node.first("Rank")
    code = "" if rank is None else rank.attributes.get("code", "")
    if code and _RANKS.get(code, code) != "species":
        fields["rank"] = _RANKS.get(code, code)
    return fields | {n: v for n, v in more.items() if n not in ("name", "authority", "id")}


def _text(node: Node, *path: str) -> str:
    found = node.first(*path)
    return "" if found is None else found.words()


class _Places:
    """Where taxa stand in the classification: their family and their synonyms."""

    def __init__(self, found: Found) -> None:
        self._found = found
        self._nodes: dict[str, Node] = {}
        self._of: dict[str, Node] = {}
        for node in found.dataset.all("TaxonHierarchies", "TaxonHierarchy", "Nodes", "Node"):
            self._nodes.setdefault(node.attributes.get("id", ""), node)
            self._of.setdefault(node.ref("TaxonName"), node)

    def fields(self, own: str) -> dict[str, Any]:
        """Family and synonyms of a taxon, as far as they are told."""
        node = self._of.get(own)
        if node is None:
            return {}
        said: dict[str, Any] = {}
        synonyms = (
            self._name(s.attributes.get("ref", "")) for s in node.all("Synonyms", "TaxonName")
        )
        if named := [name for name in synonyms if name]:
            said["synonyms"] = named
        seen: set[int] = set()
        step = self._nodes.get(node.ref("Parent"))
        while step is not None and id(step) not in seen:
            seen.add(id(step))
            taxon = self._found.by_id.get(step.ref("TaxonName"))
            rank = None if taxon is None else taxon.first("Rank")
            if rank is not None and rank.attributes.get("code") == "fam":
                said["family"] = self._name(step.ref("TaxonName"))
                break
            step = self._nodes.get(step.ref("Parent"))
        return {name: value for name, value in said.items() if value}

    def _name(self, own: str) -> str:
        return label_of(self._found.by_id.get(own))


def _groups(found: Found, known: set[str]) -> dict[str, tuple[str, ...]]:
    """Groups of taxa that leads of ours end in."""
    groups = {}
    for node in found.dataset.all("TaxonNames", "TaxonName"):
        listed = more_of(node).get("group_of")
        if isinstance(listed, list):
            groups[node.attributes.get("id", "")] = tuple(t for t in map(str, listed) if t in known)
    return groups


def _licence(found: Found) -> str:
    for node in found.dataset.all("IPRStatements", "IPRStatement"):
        if node.attributes.get("role") == "License":
            return _text(node, "Label")
    return ""


def _authors(found: Found) -> list[str]:
    refs = [
        a.attributes.get("ref", "") for a in found.dataset.all("RevisionData", "Creators", "Agent")
    ]
    return [name for ref in refs if (name := label_of(found.by_id.get(ref)))]


def _sources(found: Found) -> Iterator[tuple[str, dict[str, Any]]]:
    ids = Ids("source")
    for node in found.dataset.all("Publications", "Publication"):
        citation = label_of(node) or "unnamed"
        more = more_of(node)
        fields = {n: v for n, v in more.items() if n not in ("citation", "id")}
        own = own_id(found, node, "p", ids, citation)
        yield own, {"citation": restored(more, "citation", citation), **fields}
