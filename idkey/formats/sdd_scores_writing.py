"""Coded descriptions of SDD: the scores of each taxon, by sex and stage."""

from typing import Any

from idkey.formats.sdd_terms import LONGEST_STATEMENT, add_more, collapsed, parted_unit, taken
from idkey.formats.xml_nodes import Node
from idkey.model.score import Often

_MEASURES = (
    ("low", "UMethLower"),
    ("high", "UMethUpper"),
    ("mean", "Mean"),
    ("sd", "SD"),
    ("n", "N"),
)


def add_descriptions(
    dataset: Node, taxa: list[dict[str, Any]], characters: list[dict[str, Any]]
) -> None:
    """A description per taxon, and further ones for a sex or a stage."""
    known = {c["id"]: (n, c) for n, c in enumerate(characters, start=1)}
    listed = dataset.add("CodedDescriptions")
    number = 0
    for taxon in taxa:
        for (sex, stage), scores in _by_place(taxon).items():
            number += 1
            words = " ".join(filter(None, (stage, sex)))
            label = collapsed(f"{taxon['name']}{f', {words}' if words else ''}")
            node = listed.add("CodedDescription", id=f"b-{number}")
            node.add("Representation").add("Label", label)
            scope = node.add("Scope")
            scope.add("TaxonName", ref=f"t-{taxon['id']}")
            if stage:
                scope.add("Stage", ref=f"d-{stage}")
            if sex:
                scope.add("Sex", sex.capitalize())
            if scores:
                summary = node.add("SummaryData")
                for character, score in scores:
                    _add_score(summary, *known[character], score)


def _by_place(taxon: dict[str, Any]) -> dict[tuple[str, str], list[tuple[str, dict[str, Any]]]]:
    """Scores per (sex, stage); the one for both sexes and all stages first, even if empty."""
    found: dict[tuple[str, str], list[tuple[str, dict[str, Any]]]] = {("", ""): []}
    for character, cell in taxon.get("scores", {}).items():
        for score in cell if isinstance(cell, list) else [cell]:
            place = (score.get("sex", ""), score.get("stage", ""))
            found.setdefault(place, []).append((character, score))
    return found


def _add_score(
    summary: Node, number: int, character: dict[str, Any], score: dict[str, Any]
) -> None:
    fields = {n: v for n, v in score.items() if n in ("basis", "sources", "note")}
    note = taken(fields, "note", LONGEST_STATEMENT) if "note" in fields else ""
    states = character.get("states")
    tag = "Categorical" if states else "Quantitative"
    node = summary.add(tag, ref=f"c-{character['id']}")
    add_more(node, fields)
    if note:
        node.add("Note", note)
    if score.get("inapplicable"):
        node.add("Status", code="NotApplicable")
    elif states:
        _add_states(node, number, score["shows"])
    else:
        for field, measure in _MEASURES:
            if field in score:
                node.add("Measure", type=measure, value=repr(score[field]))
        _, prefix = parted_unit(str(character.get("unit", "")))
        if prefix:
            node.add("MeasurementUnitPrefix", prefix)


def _add_states(node: Node, number: int, shows: Any) -> None:
    often = shows if isinstance(shows, dict) else dict.fromkeys(shows)
    for state, share in often.items():
        found = node.add("State", ref=f"s{number}-{state}")
        if isinstance(share, str):
            found.add("Modifier", ref=f"m-{Often(share).value}")
        elif share is not None:
            found.add("Modifier", ref="m-share", lower=repr(share), upper=repr(share))
