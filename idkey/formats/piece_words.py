"""A piece of a key, and its value, in words for people who do not read key files."""

from collections.abc import Mapping
from typing import Any

from idkey.formats.emit import flow
from idkey.formats.pieces import ORDER, Part, Place
from idkey.model.key import Key

_LONGEST = 160
_NUMBERS = ("low", "high", "mean", "sd", "n")


def entry_words(part: Part, own: str, *keys: Key) -> str:
    """An entry by its name, taken from the first key that has it.

    Args:
        part: What it is.
        own: Its id.
        keys: Keys that may know it.
    """
    for key in keys:
        name = _name(part, own, key)
        if name:
            return f"the {part} {name}"
    return f"the {part} {own}"


def _name(part: Part, own: str, key: Key) -> str:
    if part is Part.TAXON and own in key.taxon:
        return key.taxon[own].name
    if part is Part.CHARACTER and own in key.character:
        return f"'{key.character[own].name}'"
    if part is Part.LABEL and own in key.label:
        return f"'{key.label[own].text}'"
    return ""


def place_words(place: Place, *keys: Key) -> str:
    """A piece in words, such as "the range of the taxon Alpha prima"."""
    if place.part is Part.KEY:
        return f"the {_field(place.field)} of the key"
    if place.field == ORDER:
        return f"the order of the {place.part}s"
    if place.part is Part.SCORE:
        character, sex, stage = place.field.split(" ")
        taxon = entry_words(Part.TAXON, place.id, *keys).removeprefix("the taxon ")
        named = entry_words(Part.CHARACTER, character, *keys).removeprefix("the character ")
        only = " ".join(filter(None, (stage, sex)))
        return f"the score of {taxon} for {named}{f' ({only})' if only else ''}"
    return f"the {_field(place.field)} of {entry_words(place.part, place.id, *keys)}"


def _field(field: str) -> str:
    return {"kind": "kind or states", "id": "id"}.get(field, field.replace("_", " "))


def value_words(place: Place, value: Any, *keys: Key) -> str:
    """The value of a piece in words, cut where it is long; "nothing" for None."""
    if value is None:
        return "nothing"
    if place.part is Part.SCORE:
        text = _score(place.field.split(" ")[0], value, keys)
    elif place.field == "kind" and place.part is Part.CHARACTER:
        text = _kind(value)
    elif isinstance(value, str):
        text = f"'{value}'"
    elif isinstance(value, list) and all(isinstance(inner, str) for inner in value):
        text = ", ".join(f"'{inner}'" if " " in inner else inner for inner in value) or "nothing"
    else:
        text = flow(value)
    return text if len(text) <= _LONGEST else f"{text[: _LONGEST - 1]}…"


def _kind(value: Mapping[str, Any]) -> str:
    states = ", ".join(state["label"] for state in value.get("states", ()))
    unit = f" in {value['unit']}" if value.get("unit") else ""
    return f"{value['kind']}{unit}{f': {states}' if states else ''}"


def _score(character: str, value: Mapping[str, Any], keys: tuple[Key, ...]) -> str:
    said = _shown(character, value, keys)
    if value.get("basis"):
        said += f", {str(value['basis']).replace('_', ' ')}"
    if value.get("sources"):
        said += f" [{', '.join(value['sources'])}]"
    return f"{said} ({value['note']})" if value.get("note") else said


def _shown(character: str, value: Mapping[str, Any], keys: tuple[Key, ...]) -> str:
    if value.get("inapplicable"):
        return "inapplicable"
    if "shows" not in value:
        return ", ".join(f"{n} {value[n]:g}" for n in _NUMBERS if n in value)
    shows = value["shows"]
    often = shows if isinstance(shows, Mapping) else dict.fromkeys(shows)
    labels = (f"{_label(character, s, keys)}{f' ({o})' if o else ''}" for s, o in often.items())
    return " or ".join(labels)


def _label(character: str, state: str, keys: tuple[Key, ...]) -> str:
    for key in keys:
        own = key.character.get(character)
        if own is not None and state in own.state_ids:
            return f"'{own.state(state).label}'"
    return f"'{state}'"


def sentence(words: str) -> str:
    """The words with a capital at the start."""
    return words[0].upper() + words[1:]
