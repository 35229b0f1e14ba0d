"""Writes a key as SDD 1.1: the standard's own elements, and the rest in a namespace of ours."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from idkey.formats.plain import documents
from idkey.formats.replacing import replacing
from idkey.formats.sdd_leads_writing import Leads
from idkey.formats.sdd_scores_writing import add_descriptions
from idkey.formats.sdd_terms import (
    LONGEST_STATEMENT,
    OWN,
    PREFIX,
    RANKS,
    SDD,
    add_more,
    collapsed,
    parted_unit,
    taken,
)
from idkey.formats.xml_nodes import Node, xml_text
from idkey.model.character import Kind
from idkey.model.key import Key
from idkey.model.score import Often

CREATED = "2000-01-01T00:00:00Z"
"""The standard wants a time of writing; the same key must give the same file, so it is fixed."""

_LISTS = ("characters", "taxa", "labels", "couplets", "sources", "checks")


def write_sdd(key: Key, file: Path) -> tuple[str, ...]:
    """Write `key` to `file`; returns what other programs will not see, as sentences.

    Raises:
        IdKeyError: The file cannot be written.
    """
    text, left = sdd_text(key)
    with replacing(file) as new:
        new.write_text(text, encoding="utf-8", newline="\n")
    return left


def sdd_text(key: Key) -> tuple[str, tuple[str, ...]]:
    """The key as an XML document, and what other programs will not see, as sentences."""
    whole = documents(key)
    lists: dict[str, Any] = {name: whole.pop(name) for name in _LISTS}
    leads = Leads(lists["couplets"])
    root = Node("Datasets")
    root.add("TechnicalMetadata", created=CREATED).add("Generator", name="idkey", version="1")
    dataset = root.add("Dataset", **{"xml:lang": "en"})
    _add_head(dataset, whole, lists, leads)
    _add_taxa(dataset, lists["taxa"], leads)
    _add_concepts(dataset)
    _add_characters(dataset, lists["characters"])
    _add_tree(dataset, lists["characters"])
    add_descriptions(dataset, lists["taxa"], lists["characters"])
    leads.add_keys(dataset, str(whole.get("title", "")))
    _add_people(dataset, key.authors)
    _add_publications(dataset, lists["sources"])
    return xml_text(root, {"": SDD, PREFIX: OWN}), tuple(_unseen(key))


def _object(parent: Node, tag: str, own: str, label: str, detail: str = "") -> Node:
    """A new object with its names."""
    node = parent.add(tag, **({"id": own} if own else {}))
    names = node.add("Representation")
    names.add("Label", label)
    if detail:
        names.add("Detail", detail, role="Description")
    return node


def _add_head(dataset: Node, whole: dict[str, Any], lists: dict[str, Any], leads: Leads) -> None:
    names = dataset.add("Representation")
    names.add("Label", taken(whole, "title"))
    if "scope" in whole:
        names.add("Detail", taken(whole, "scope", LONGEST_STATEMENT), role="Description")
    licence = whole.get("licence")
    version = str(whole["version"])
    rest = {n: lists[n] for n in ("labels", "checks") if lists[n]}
    add_more(dataset, {**whole, **rest, **leads.rest()})
    if whole.get("authors"):
        revision = dataset.add("RevisionData")
        creators = revision.add("Creators")
        for number in range(1, len(whole["authors"]) + 1):
            creators.add("Agent", ref=f"a-{number}", role="aut")
        major, minor, patch = (*version.split("."), "0", "0")[:3]
        revision.add("Version", major=major, minor=minor, revision=patch)
    if licence:
        statements = dataset.add("IPRStatements")
        statements.add("IPRStatement", role="License").add("Label", collapsed(licence))


def _add_taxa(dataset: Node, taxa: list[dict[str, Any]], leads: Leads) -> None:
    names = dataset.add("TaxonNames")
    families: dict[str, str] = {}
    synonyms: dict[str, list[str]] = {}
    for taxon in taxa:
        _add_taxon(names, taxon)
        if family := collapsed(str(taxon.get("family") or "")) if taxon.get("family") else "":
            families.setdefault(family, f"f-{len(families) + 1}")
    for family, own in families.items():
        _object(names, "TaxonName", own, family).add("Rank", code="fam")
    number = 0
    for taxon in taxa:
        for synonym in taxon.get("synonyms", ()):
            number += 1
            _object(names, "TaxonName", f"y-{number}", collapsed(synonym))
            synonyms.setdefault(taxon["id"], []).append(f"y-{number}")
    leads.add_groups(names)
    hierarchies = dataset.add("TaxonHierarchies")
    hierarchy = _object(hierarchies, "TaxonHierarchy", "h-1", "Classification")
    hierarchy.add("TaxonHierarchyType", "UnspecifiedTaxonomy")
    nodes = hierarchy.add("Nodes")
    for own in families.values():
        nodes.add("Node", id=f"n-{own}").add("TaxonName", ref=own)
    for taxon in taxa:
        _add_place(nodes, taxon, families, synonyms.get(taxon["id"], []))


def _add_taxon(names: Node, taxon: dict[str, Any]) -> None:
    fields = {n: v for n, v in taxon.items() if n not in ("scores", "id")}
    name = taken(fields, "name")
    node = _object(names, "TaxonName", f"t-{taxon['id']}", name)
    rank = RANKS.get(str(fields.get("rank", "species")))
    authority = taken(fields, "authority") if "authority" in fields else ""
    if rank:
        fields.pop("rank", None)
    add_more(node, fields)
    if rank:
        node.add("Rank", code=rank)
    node.add("CanonicalName").add("Simple", name)
    if authority:
        node.add("CanonicalAuthorship").add("Simple", authority)


def _add_place(
    nodes: Node, taxon: dict[str, Any], families: dict[str, str], synonyms: list[str]
) -> None:
    node = nodes.add("Node", id=f"n-t-{taxon['id']}")
    family = collapsed(str(taxon["family"])) if taxon.get("family") else ""
    if family:
        node.add("Parent", ref=f"n-{families[family]}")
    node.add("TaxonName", ref=f"t-{taxon['id']}")
    if synonyms:
        listed = node.add("Synonyms")
        for own in synonyms:
            listed.add("TaxonName", ref=own)


def _add_concepts(dataset: Node) -> None:
    concepts = dataset.add("DescriptiveConcepts")
    modifiers = _object(concepts, "DescriptiveConcept", "d-often", "How often").add("Modifiers")
    for often in (*Often, "share"):
        modifier = _object(modifiers, "Modifier", f"m-{often}", str(often))
        modifier.add("ModifierClass", "Frequency")
    for stage in ("juvenile", "adult"):
        _object(concepts, "DescriptiveConcept", f"d-{stage}", stage)


def _add_characters(dataset: Node, characters: list[dict[str, Any]]) -> None:
    listed = dataset.add("Characters")
    for number, character in enumerate(characters, start=1):
        fields = {n: v for n, v in character.items() if n not in ("id", "states", "requires")}
        numeric = Kind(character["kind"]).numeric
        tag = "QuantitativeCharacter" if numeric else "CategoricalCharacter"
        detail = ""
        label = taken(fields, "name")
        if "definition" in fields:
            detail = taken(fields, "definition", LONGEST_STATEMENT)
        node = _object(listed, tag, f"c-{character['id']}", label, detail)
        del fields["kind"]
        unit = fields.pop("unit", "")
        base, prefix = parted_unit(unit)
        if unit and joined_unit_of(unit) != unit:
            fields["unit"] = unit
        if character["kind"] == Kind.RATIO or (character["kind"] == Kind.COUNT and unit):
            fields["kind"] = character["kind"]
        add_more(node, fields)
        if numeric:
            _add_number(node, character["kind"], base, prefix)
        else:
            _add_states(node, character, number)


def joined_unit_of(unit: str) -> str:
    """What reading makes of the unit once it is written."""
    base, prefix = parted_unit(unit)
    return f"{unit[0]}{base}" if prefix else collapsed(unit)


def _add_number(node: Node, kind: str, base: str, prefix: str) -> None:
    assumptions = node.add("Assumptions")
    assumptions.add("MeasurementScale", "Ratio")
    if kind == Kind.COUNT:
        assumptions.add("ValuesAreInteger", "true")
    if base:
        node.add("MeasurementUnit").add("Label", collapsed(base), role="Abbrev")
    if prefix:
        node.add("Default").add("MeasurementUnitPrefix", prefix)


def _add_states(node: Node, character: dict[str, Any], number: int) -> None:
    states = node.add("States")
    for state in character["states"]:
        fields = {n: v for n, v in state.items() if n != "id"}
        label = taken(fields, "label")
        detail = taken(fields, "detail", LONGEST_STATEMENT) if "detail" in fields else ""
        add_more(
            _object(states, "StateDefinition", f"s{number}-{state['id']}", label, detail), fields
        )
    scale = "Ordinal" if character["kind"] == Kind.ORDINAL else "Nominal"
    node.add("Assumptions").add("MeasurementScale", scale)


def _add_tree(dataset: Node, characters: list[dict[str, Any]]) -> None:
    numbers = {c["id"]: n for n, c in enumerate(characters, start=1)}
    tree = _object(dataset.add("CharacterTrees"), "CharacterTree", "r-1", "All characters")
    tree.add("DesignedFor").add("Role", "InteractiveIdentification")
    tree.add("ShouldContainAllCharacters", "true")
    nodes = tree.add("Nodes")
    for character in characters:
        leaf = nodes.add("CharNode")
        if needed := character.get("requires"):
            rule = leaf.add("DependencyRules").add("OnlyApplicableIf")
            for state in needed["states"]:
                rule.add("State", ref=f"s{numbers[needed['character']]}-{state}")
        leaf.add("Character", ref=f"c-{character['id']}")


def _add_people(dataset: Node, authors: tuple[str, ...]) -> None:
    if authors:
        agents = dataset.add("Agents")
        for number, author in enumerate(authors, start=1):
            _object(agents, "Agent", f"a-{number}", collapsed(author))


def _add_publications(dataset: Node, sources: dict[str, dict[str, Any]]) -> None:
    if sources:
        publications = dataset.add("Publications")
        for own, source in sources.items():
            fields = dict(source)
            citation = taken(fields, "citation")
            add_more(_object(publications, "Publication", f"p-{own}", citation), fields)


def _unseen(key: Key) -> Iterator[str]:
    lost = {
        "labels": key.labels,
        "published checks": key.checks,
        "cautions": key.cautions,
        "glossary": key.glossary,
        "sources and basis of scores": [s for s in key.scores if s.sources],
        "states that couplets stand for": [lead for c in key.couplets for lead in c.leads],
    }
    named = [name for name, value in lost.items() if value]
    yield (
        "The standard has no place for how characters are looked at, their reliability, dangers "
        f"and permits{''.join(f', {name}' for name in named)}; they stand in elements of this "
        "program's own, which other programs skip."
    )
    if any(len(lead.taxa) > 1 for couplet in key.couplets for lead in couplet.leads):
        yield "Leads that end in several taxa end in a group of them, as the standard wants."
