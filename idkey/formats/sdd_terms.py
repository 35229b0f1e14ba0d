"""Names and small conversions shared by reading and writing SDD 1.1.

Format: Structure of Descriptive Data, TDWG standard 116 (2005), schema 1.1 of 2006.
"""

import json
from collections.abc import Mapping
from typing import Any

from idkey.formats.xml_nodes import Node, legal

SDD = "http://rs.tdwg.org/UBIF/2006/"
OWN = "urn:idkey:sdd:1"
"""Namespace of what the standard has no place for."""

PREFIX = "k"
MORE = "more"
"""Own element with the remaining fields of an object as JSON."""

LONGEST_LABEL = 255
LONGEST_STATEMENT = 64_000

RANKS = {
    "species": "sp",
    "subspecies": "ssp",
    "genus": "gen",
    "subgenus": "subgen",
    "family": "fam",
    "subfamily": "subfam",
    "species group": "aggr",
}
"""Code per rank; other ranks have none here and stay words."""

PREFIXES = {
    "kilo": 3,
    "hecto": 2,
    "deca": 1,
    "noprefix": 0,
    "": 0,
    "deci": -1,
    "centi": -2,
    "milli": -3,
    "micro": -6,
    "nano": -9,
    "Mega": 6,
    "Giga": 9,
    "Tera": 12,
    "pico": -12,
    "femto": -15,
    "atto": -18,
}
"""Power of ten per prefix of a unit."""

_SIGNS = {"k": "kilo", "c": "centi", "m": "milli", "µ": "micro", "n": "nano"}
_SPELLED = {name: sign for sign, name in _SIGNS.items()}
_BASES = ("m", "g")


def parted_unit(unit: str) -> tuple[str, str]:
    """Base unit and prefix of a unit, such as ("m", "milli") for mm; no prefix for others."""
    if len(unit) == 2 and unit[0] in _SIGNS and unit[1] in _BASES:
        return unit[1], _SIGNS[unit[0]]
    return unit, ""


def joined_unit(base: str, prefix: str) -> str:
    """The unit that a base and a prefix spell; the reverse of `parted_unit`."""
    if prefix in ("", "noprefix") or not base:
        return base
    return f"{_SPELLED.get(prefix, prefix)}{base}"


def collapsed(text: str, longest: int = LONGEST_LABEL) -> str:
    """The text as the standard can hold it: one line, cut, never empty."""
    plain = " ".join(legal(text).split())
    return (plain if len(plain) <= longest else f"{plain[: longest - 1]}…") or "unnamed"


def taken(fields: dict[str, Any], name: str, longest: int = LONGEST_LABEL) -> str:
    """A text for an element of the standard; the field is left only where it lost something."""
    text = str(fields.get(name, ""))
    plain = collapsed(text, longest)
    if plain == text:
        del fields[name]
    return plain


def restored(more: Mapping[str, Any], name: str, found: str, longest: int = LONGEST_LABEL) -> str:
    """The reverse of `taken`: our own text, unless somebody has changed the element since."""
    text = more.get(name)
    return text if isinstance(text, str) and collapsed(text, longest) == found else found


def add_more(node: Node, fields: Mapping[str, Any]) -> None:
    """Append the remaining fields of an object, where there are any."""
    if fields:
        text = json.dumps(fields, ensure_ascii=True, separators=(",", ":"))
        node.children.append(Node(MORE, text=text, space=PREFIX))


def more_of(node: Node) -> dict[str, Any]:
    """The remaining fields of an object; none when they are missing or damaged."""
    own = next((c for c in node.children if c.tag == MORE and c.space == OWN), None)
    if own is None:
        return {}
    try:
        found = json.loads(own.text)
    except (ValueError, RecursionError):
        return {}
    return found if isinstance(found, dict) else {}
