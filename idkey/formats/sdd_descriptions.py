"""Coded descriptions of an SDD document as scores of ours."""

import math
import re
from collections.abc import Iterator
from typing import Any

from idkey.formats.sdd_characters import Found, label_of
from idkey.formats.sdd_terms import LONGEST_STATEMENT, PREFIXES, more_of, restored
from idkey.formats.xml_nodes import Node
from idkey.model.score import Often

Scores = dict[str, dict[str, list[dict[str, Any]]]]
"""Scores of ours per the document's id of the taxon, and the id of the character."""

_LOW = ("Min", "UMethLower", "ObserverEstLower")  # the widest range excludes the fewest
_HIGH = ("Max", "UMethUpper", "ObserverEstUpper")
_MEAN = ("Mean", "UMethCentral", "Median", "ObserverEstCentral")
_YOUNG = re.compile(r"juvenil|nymph|larva|immatur|hatchl|instar|young", re.IGNORECASE)
_SEXES = {"Male": "male", "Female": "female"}


def read_descriptions(found: Found, notes: dict[str, list[str]]) -> Scores:
    """The scores of all descriptions.

    Args:
        found: The document with its characters read.
        notes: Takes remarks per the document's id of the taxon.
    """
    scores: Scores = {}
    for node in found.dataset.all("CodedDescriptions", "CodedDescription"):
        place = _place(found, node)
        for taxon in _taxa(found, node):
            own = scores.setdefault(taxon, {})
            for score in node.all("SummaryData"):
                _read(found, score, own, place, notes.setdefault(taxon, []))
            for unit in node.all("SampleData", "SamplingEvent", "SamplingUnit"):
                _read_sample(found, unit, own, place)
    return scores


def _taxa(found: Found, description: Node) -> Iterator[str]:
    """The taxa a description is about, also through the animals it is about."""
    seen = set()
    for node in description.all("Scope", "TaxonName"):
        seen.add(node.attributes.get("ref", ""))
    for node in description.all("Scope", "Specimen"):
        specimen = found.by_id.get(node.attributes.get("ref", ""))
        if specimen is not None:
            seen.add(specimen.ref("TaxonName"))
    yield from sorted(seen - {""})


def _place(found: Found, description: Node) -> dict[str, str]:
    """Sex and stage of a description, as far as they are ours."""
    place: dict[str, str] = {}
    sexes = {node.words() for node in description.all("Scope", "Sex")}
    if len(sexes) == 1 and (sex := _SEXES.get(sexes.pop())):
        place["sex"] = sex
    stages = [
        found.by_id.get(n.attributes.get("ref", "")) for n in description.all("Scope", "Stage")
    ]
    words = " ".join(label_of(stage) for stage in stages if stage is not None)
    if _YOUNG.search(words):
        place["stage"] = "juvenile"
    elif "adult" in words.lower():
        place["stage"] = "adult"
    elif words:
        found.notes.append(f"The stage '{words[:60]}' was left out.")
    return place


def _read(
    found: Found,
    summary: Node,
    own: dict[str, list[dict[str, Any]]],
    place: dict[str, str],
    remarks: list[str],
) -> None:
    for node in summary.children:
        written = node.attributes.get("ref", "")
        if written in found.texts:
            text = " ".join(content.words() for content in node.all("Content"))
            remarks.append(f"{found.texts[written]}: {text}")
            continue
        character = found.characters.get(written)
        score = None if character is None else _score(found, node, written)
        if character is None or score is None:
            continue
        cell = own.setdefault(character["id"], [])
        if any(_same_place(one, place) for one in cell):
            found.notes.append(
                f"Line {node.line}: '{character['name'][:60]}' is scored again; the first was kept."
            )
        else:
            cell.append({**place, **score})


def _same_place(score: dict[str, Any], place: dict[str, str]) -> bool:
    return all(score.get(n) == place.get(n) for n in ("sex", "stage"))


def _score(found: Found, node: Node, written: str) -> dict[str, Any] | None:
    """A score, without sex and stage; None when it says nothing that can be kept."""
    more = more_of(node)
    fields = {n: v for n, v in more.items() if n in ("basis", "sources")}
    note = " ".join(child.words() for child in node.all("Note"))
    note = restored(more, "note", note, LONGEST_STATEMENT) if note else str(more.get("note", ""))
    codes = {status.attributes.get("code", "") for status in node.all("Status")}
    said: dict[str, Any] | None
    if "NotApplicable" in codes:
        said = {"inapplicable": True}
    elif "states" in found.characters[written]:
        said, remark = _states(found, node, written)
        note = "; ".join(filter(None, (note, remark)))
    else:
        said = _measures(found, node, written)
    if said is None:
        return None
    if "ToBeChecked" in codes:
        note = " ".join(filter(None, (note, "Marked as to be checked.")))
    return {**said, **fields, **({"note": note} if note else {})}


def _states(found: Found, node: Node, written: str) -> tuple[dict[str, Any] | None, str]:
    often: dict[str, Any] = {}
    remarks: list[str] = []
    for state in node.all("State"):
        own = found.states.get((written, state.attributes.get("ref", "")))
        if own is None or own in often:
            continue
        share, remark, wrong = _modified(found, state)
        remarks += [f"{own}: {words}" for words in (remark, *_notes(state)) if words]
        if not wrong:
            often[own] = share
    if not often:
        return None, ""
    listed = all(share is None for share in often.values())
    return {"shows": list(often) if listed else often}, "; ".join(remarks)


def _notes(node: Node) -> Iterator[str]:
    for note in node.all("Note"):
        yield note.words()


def _modified(found: Found, state: Node) -> tuple[Any, str, bool]:
    """How often, what else is said, and whether the state is only a usual misreading."""
    share: Any = None
    remarks: list[str] = []
    wrong = False
    for reference in state.all("Modifier"):
        modifier = found.by_id.get(reference.attributes.get("ref", ""))
        if modifier is None:
            continue
        kind = modifier.first("ModifierClass")
        words = label_of(modifier)
        match "" if kind is None else kind.words():
            case "Frequency":
                share = _share(reference, modifier, words)
            case "TreatAsMisinterpretation":
                wrong = True
                remarks.append("often reported by mistake")
            case _ if words:
                remarks.append(words)
    return share, ", ".join(remarks), wrong


def _share(reference: Node, modifier: Node, words: str) -> Any:
    if words.lower() in list(Often):
        return words.lower()
    spread = modifier.first("ProportionRange") or modifier
    names = (("lower", "upper"), ("lowerestimate", "upperestimate"))
    for node, (low, high) in zip((reference, spread), names, strict=True):
        bounds = [_finite(node.attributes.get(name)) for name in (low, high)]
        if None not in bounds:
            middle = sum(b for b in bounds if b is not None) / 2
            return middle if 0 < middle <= 1 else None
    return None


def _measures(found: Found, node: Node, written: str) -> dict[str, Any] | None:
    values: dict[str, float] = {}
    for measure in node.all("Measure"):
        value = _finite(measure.attributes.get("value"))
        if value is not None:
            values[measure.attributes.get("type", "")] = value
    for measure in node.all("PMeasure"):
        value = _finite(measure.attributes.get("value"))
        tag = {"PercLower": "ObserverEstLower", "PercUpper": "ObserverEstUpper"}.get(
            measure.attributes.get("type", "")
        )
        if tag is not None and value is not None:
            values.setdefault(tag, value)
    prefix = node.first("MeasurementUnitPrefix")
    scale = _scale(found, written, "" if prefix is None else prefix.words())
    said: dict[str, Any] = {}
    for name, tags in (("low", _LOW), ("high", _HIGH), ("mean", _MEAN), ("sd", ("SD",))):
        if (own := next((values[tag] for tag in tags if tag in values), None)) is not None:
            said[name] = scale(own)
    if not said or said.get("low", -math.inf) > said.get("high", math.inf):
        return None
    if not said.get("low", -math.inf) <= said.get("mean", 0) <= said.get("high", math.inf):
        said.pop("mean", None)
    count = values.get("N")
    if count is not None and count >= 1 and count == int(count):
        said["n"] = int(count)
    return said


def _finite(text: str | None) -> float | None:
    try:
        value = None if text is None else float(text)
    except ValueError:
        return None
    return value if value is not None and math.isfinite(value) else None


def _scale(found: Found, written: str, prefix: str) -> Any:
    """How to turn a value with that prefix into one with the prefix of its character."""
    own = found.units.get(written, "")
    power = PREFIXES.get(prefix or own, 0) - PREFIXES.get(own, 0)

    def scaled(value: float) -> float:
        if power == 0:
            return value
        return float(value * 10**power if power > 0 else value / 10**-power)

    return scaled


def _read_sample(
    found: Found, unit: Node, own: dict[str, list[dict[str, Any]]], place: dict[str, str]
) -> None:
    """Single animals widen what their taxon shows."""
    for node in unit.children:
        written = node.attributes.get("ref", "")
        character = found.characters.get(written)
        if character is None:
            continue
        cell = own.setdefault(character["id"], [])
        score = next((one for one in cell if _same_place(one, place)), None)
        value = _finite(node.attributes.get("value"))
        if "states" in character:
            said, _ = _states(found, node, written)
            if said is not None:
                _widen_states(cell, score, list(said["shows"]), place)
        elif value is not None:
            value = _scale(found, written, node.attributes.get("unitprefix", ""))(value)
            _widen_range(cell, score, value, place)


def _widen_states(
    cell: list[dict[str, Any]],
    score: dict[str, Any] | None,
    states: list[str],
    place: dict[str, str],
) -> None:
    if score is None:
        cell.append({**place, "shows": states})
    elif "shows" in score:
        shows = score["shows"]
        new = [state for state in states if state not in shows]
        score["shows"] = {**shows, **dict.fromkeys(new)} if isinstance(shows, dict) else shows + new


def _widen_range(
    cell: list[dict[str, Any]], score: dict[str, Any] | None, value: float, place: dict[str, str]
) -> None:
    if score is None:
        cell.append({**place, "low": value, "high": value})
    elif "inapplicable" not in score:
        if "low" in score:
            score["low"] = min(score["low"], value)
        if "high" in score:
            score["high"] = max(score["high"], value)
