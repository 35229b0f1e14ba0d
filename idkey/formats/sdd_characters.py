"""Characters of an SDD document as documents of ours."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from idkey.formats.imported import Ids
from idkey.formats.sdd_terms import LONGEST_STATEMENT, joined_unit, more_of, restored
from idkey.formats.xml_nodes import Node
from idkey.model.character import Kind, Look


@dataclass(slots=True)
class Found:
    """What has been read so far.

    Attributes:
        dataset: The data set.
        ours: Whether this program wrote it, so that ids carry ours after a letter.
        by_id: Every object by its id in the document.
        characters: Our documents by the document's id of the character.
        states: Character and state id of ours per the document's id of a state.
        units: Prefix that the values of a character come in, per the document's id.
        texts: Names of text characters by the document's id.
        notes: What was left out or changed.
    """

    dataset: Node
    ours: bool
    by_id: dict[str, Node]
    characters: dict[str, dict[str, Any]] = field(default_factory=dict)
    states: dict[tuple[str, str], str] = field(default_factory=dict)
    units: dict[str, str] = field(default_factory=dict)
    texts: dict[str, str] = field(default_factory=dict)
    notes: list[str] = field(default_factory=list)


def label_of(node: Node | None) -> str:
    """The first name of an object; also in the form of older drafts. Empty without one."""
    names = None if node is None else node.first("Representation")
    if names is None:
        return ""
    labels = list(names.all("Label"))
    full = [n for n in labels if n.attributes.get("role", "Full") == "Full"] or labels
    return next((words for n in full if (words := n.words())), "")


def detail_of(node: Node) -> str:
    """The first description of an object; empty without one."""
    found = node.first("Representation", "Detail")
    return "" if found is None else found.words()


def own_id(found: Found, node: Node, letter: str, ids: Ids, name: str) -> str:
    """Our id of an object: the one it was written with, or a new one made from its name."""
    written = node.attributes.get("id", "")
    if found.ours and written.startswith(f"{letter}-") and len(written) > len(letter) + 1:
        return written[len(letter) + 1 :]
    return ids.new(name)


def read_characters(found: Found) -> None:
    """Read every character that can be one of ours into `found`."""
    ids = Ids("character")
    listed = found.dataset.first("Characters")
    for number, node in enumerate(listed.children if listed else (), start=1):
        own = node.attributes.get("id", "")
        name = label_of(node) or f"Character {number}"
        if node.tag == "TextCharacter":
            found.texts[own] = name
        elif node.tag == "CategoricalCharacter":
            _read_states(found, node, own_id(found, node, "c", ids, name), name)
        elif node.tag == "QuantitativeCharacter":
            _read_number(found, node, own_id(found, node, "c", ids, name), name)
        else:
            found.notes.append(f"The character '{name[:80]}' is a {node.tag}; it was left out.")
    if found.texts:
        found.notes.append(
            f"Text characters became remarks on their taxa: {', '.join(found.texts.values())}."
        )


def _started(node: Node, own: str, name: str, question: str) -> dict[str, Any]:
    more = more_of(node)
    fields: dict[str, Any] = {
        "id": own,
        "name": restored(more, "name", name),
        "question": f"{name}: {question}",
        "looks": [Look.LENS.value],
    }
    if detail := detail_of(node):
        fields["definition"] = restored(more, "definition", detail, LONGEST_STATEMENT)
    return fields | {n: v for n, v in more.items() if n not in ("name", "definition", "id")}


def _read_states(found: Found, node: Node, own: str, name: str) -> None:
    written = node.attributes.get("id", "")
    scale = node.first("Assumptions", "MeasurementScale")
    ordinal = scale is not None and scale.words() == "Ordinal"
    fields = _started(node, own, name, "which applies?")
    fields["kind"] = (Kind.ORDINAL if ordinal else Kind.CATEGORICAL).value
    states: list[dict[str, Any]] = []
    ids = Ids("state")
    for child in _definitions(node):
        target = found.by_id.get(child.attributes.get("ref", ""), child)
        ref = target.attributes.get("id", "")
        label = label_of(target) or label_of(child) or f"state {len(states) + 1}"
        state = ref.partition("-")[2] if found.ours and "-" in ref else ids.new(label)
        more = more_of(target)
        said = {"id": state, "label": restored(more, "label", label)}
        if detail := detail_of(target):
            said["detail"] = restored(more, "detail", detail, LONGEST_STATEMENT)
        rest = {n: v for n, v in more.items() if n not in ("label", "detail", "id")}
        states.append(said | rest)
        found.states[written, ref] = state
    if len(states) < 2:
        found.notes.append(f"The character '{name[:80]}' was left out: it has no two states.")
        return
    found.characters[written] = fields | {"states": states}


def _definitions(node: Node) -> Iterator[Node]:
    states = node.first("States")
    for child in states.children if states else ():
        if child.tag in ("StateDefinition", "StateReference"):
            yield child


def _read_number(found: Found, node: Node, own: str, name: str) -> None:
    written = node.attributes.get("id", "")
    fields = _started(node, own, name, "how much?")
    unit = node.first("MeasurementUnit")
    base = "" if unit is None else unit.words()
    prefix = node.first("Default", "MeasurementUnitPrefix")
    power = "" if prefix is None else prefix.words()
    if prefix is None and base:
        power = _common_prefix(found.dataset, written)
    whole = node.first("Assumptions", "ValuesAreInteger")
    if joined := joined_unit(base, power):
        fields.setdefault("unit", joined)
    if whole is not None and whole.words() in ("true", "1"):
        kind = Kind.COUNT
    else:
        kind = Kind.MEASUREMENT if fields.get("unit") else Kind.RATIO
    fields.setdefault("kind", kind.value)
    found.units[written] = power
    found.characters[written] = fields


def _common_prefix(dataset: Node, written: str) -> str:
    """The prefix that all scores of a character give, where the character itself gives none."""
    given = set()
    for node in dataset.below():
        if node.tag == "Quantitative" and node.attributes.get("ref") == written:
            prefix = node.first("MeasurementUnitPrefix")
            given.add(node.attributes.get("unitprefix", prefix.words() if prefix else ""))
    return given.pop() if len(given) == 1 else ""


def read_dependence(found: Found) -> None:
    """Turn the rules of character trees into what each character requires."""
    for tree in found.dataset.all("CharacterTrees", "CharacterTree"):
        nodes = {n.attributes.get("id", ""): n for n in tree.all("Nodes", "Node")}
        for leaf in tree.all("Nodes", "CharNode"):
            character = found.characters.get(leaf.ref("Character"))
            step: Node | None = leaf
            seen: set[int] = set()
            while character is not None and step is not None and id(step) not in seen:
                seen.add(id(step))
                rules = step.first("DependencyRules")
                if rules is not None and "requires" not in character:
                    _add_rule(found, character, rules)
                step = nodes.get(step.ref("Parent"))


def _add_rule(found: Found, character: dict[str, Any], rules: Node) -> None:
    for tag in ("OnlyApplicableIf", "InapplicableIf"):
        refs = [state.attributes.get("ref", "") for state in rules.all(tag, "State")]
        for written, needed in found.characters.items():
            named = [found.states[written, r] for r in refs if (written, r) in found.states]
            all_states = [state["id"] for state in needed.get("states", ())]
            if tag == "InapplicableIf":
                named = [s for s in all_states if named and s not in named]
            if named and needed is not character:
                character["requires"] = {"character": needed["id"], "states": named}
                if len(named) < len(refs) and tag == "OnlyApplicableIf":
                    found.notes.append(
                        f"'{character['name']}' depends on several characters; one was kept."
                    )
                return
