"""Plain values as YAML text in one layout, so that one changed value is one changed line."""

import json
import re
from collections.abc import Iterator
from typing import Any

from idkey.formats.yaml_text import Loc

_IN_BLOCK = re.compile(r"[^\W\d_](?:[\w.()/+;,'-]|[ ](?=\S))*")
_IN_FLOW = re.compile(r"[^\W\d_](?:[\w.()/+;'-]|[ ](?=\S))*")
_VERSION = re.compile(r"[0-9]+\.[0-9]+\.[0-9]+")
_RESERVED = frozenset(("null", "true", "false", "yes", "no", "on", "off", "nan", "inf"))
_UNSAFE = re.compile("[\x7f-\x9f\u2028\u2029\ufeff\ufffe\uffff\ud800-\udfff]")

Line = tuple[Loc, str]
"""The way to the value that a line begins with, and the line itself without its end."""


def emitted(document: dict[str, Any]) -> Iterator[Line]:
    """The lines of a document.

    Args:
        document: Texts, numbers, truth values, lists and mappings with text as names.
    """
    yield from _mapping(document, (), "")


def text_of(document: dict[str, Any]) -> str:
    """The document as one text that ends in a line end."""
    return "".join(f"{line}\n" for _, line in emitted(document))


def field_lines(name: str, value: Any, loc: Loc, indent: str) -> list[str]:
    """The lines of one field.

    Args:
        name: Its name.
        value: Its value.
        loc: The way to the value.
        indent: What its first line starts with.
    """
    return [line for _, line in _named(name, value, loc, indent)]


def entry_lines(value: Any, loc: Loc, indent: str) -> list[str]:
    """The lines of one entry of a list; see `field_lines`."""
    return [line for _, line in _entry(value, loc, indent)]


def _mapping(value: dict[str, Any], loc: Loc, indent: str) -> Iterator[Line]:
    for name, inner in value.items():
        yield from _named(name, inner, (*loc, name), indent)


def _named(name: str, value: Any, loc: Loc, indent: str) -> Iterator[Line]:
    head = f"{indent}{scalar(name)}:"
    if _is_flat(value, loc):
        yield loc, f"{head} {flow(value)}" if _is_collection(value) else f"{head} {scalar(value)}"
    elif isinstance(value, dict):
        yield loc, head
        yield from _mapping(value, loc, f"{indent}  ")
    else:
        yield loc, head
        yield from _entries(value, loc, f"{indent}  ")


def _entries(value: list[Any], loc: Loc, indent: str) -> Iterator[Line]:
    for index, inner in enumerate(value):
        if index and len(loc) == 1 and isinstance(inner, dict):
            yield loc, ""  # a blank line between characters, labels, couplets, checks
        yield from _entry(inner, (*loc, index), indent)


def _entry(value: Any, loc: Loc, indent: str) -> Iterator[Line]:
    if not isinstance(value, dict) or loc[0] == "scores":
        yield loc, f"{indent}- {flow(value) if _is_collection(value) else scalar(value)}"
        return
    lines = _mapping(value, loc, f"{indent}  ")
    _, first = next(lines)
    yield loc, f"{indent}- {first[len(indent) + 2 :]}"
    yield from lines


def _is_collection(value: Any) -> bool:
    return isinstance(value, dict | list)


def _is_flat(value: Any, loc: Loc) -> bool:
    """Whether the value stands on the line of its name."""
    if not value or not _is_collection(value):
        return True
    if isinstance(value, list):
        return all(not _is_collection(v) and _short(v) for v in value)
    within_scores = loc[0] == "scores" and len(loc) == 2
    return within_scores or loc[-1] in ("sees", "shares", "requires")


def _short(value: Any) -> bool:
    return not isinstance(value, str) or _IN_FLOW.fullmatch(value) is not None or len(value) < 20


def flow(value: Any) -> str:
    """The value on one line, in brackets where it holds others."""
    if isinstance(value, list):
        return f"[{', '.join(flow(inner) for inner in value)}]"
    if isinstance(value, dict):
        inner = (f"{scalar(n, _IN_FLOW)}: {flow(v)}" for n, v in value.items())
        return f"{{{', '.join(inner)}}}"
    return scalar(value, _IN_FLOW)


def scalar(value: Any, plain: re.Pattern[str] = _IN_BLOCK) -> str:
    """A text, number or truth value, in quotes only where it needs them."""
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true" if value else "false"
    if not isinstance(value, str):
        return repr(value)
    if plain.fullmatch(value) and value.lower() not in _RESERVED:
        return value
    if _VERSION.fullmatch(value):
        return value
    quoted = json.dumps(value, ensure_ascii=False)
    return _UNSAFE.sub(lambda sign: f"\\u{ord(sign[0]):04x}", quoted)
