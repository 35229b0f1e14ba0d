"""Texts as cells that no spreadsheet takes for a formula, a date or a number, and back."""

import json
import re
from pathlib import Path
from typing import Any

from idkey.formats.emit import flow
from idkey.formats.yaml_text import parse_yaml

LONGEST_CELL = 32_767
"""Characters a cell of a spreadsheet can hold."""

_PLAIN = re.compile(r"[^\s\"'\[{=+@\-\x00-\x1f][^\x00-\x09\x0b-\x1f\x7f-\x9f\ufffe\uffff]*")
_LIKE_VALUE = re.compile(r"[-+]?[\d.,:/]+([eE][-+]?\d+)?%?|true|false", re.IGNORECASE)
_ESCAPE = re.compile(r"_x[0-9a-f]{4}_", re.IGNORECASE)
_UNSAFE = re.compile("[\x7f-\x9f\u2028\u2029\ufffe\uffff]")


def safe(value: Any) -> str:
    """A plain value as the text of a cell; lists and mappings in brackets.

    A text that a spreadsheet might take for something else stands in double quotes, since a
    cell that starts with a quote is never worked out.
    """
    if isinstance(value, dict | list):
        return _ascii_controls(flow(value))
    if isinstance(value, bool):
        return "true" if value else "false"
    if not isinstance(value, str):
        return repr(value)
    plain = _PLAIN.fullmatch(value) and value == value.strip() and not _LIKE_VALUE.fullmatch(value)
    if value and plain and not _ESCAPE.search(value):
        return value
    return _ascii_controls(json.dumps(value, ensure_ascii=False))


def _ascii_controls(text: str) -> str:
    text = _UNSAFE.sub(lambda sign: f"\\u{ord(sign[0]):04x}", text)
    return _ESCAPE.sub(lambda found: f"\\u005f{found[0][1:]}", text)


def unsafe(text: str) -> Any:
    """The plain value that a cell says; the reverse of `safe`, with numbers left as text.

    Raises:
        ValueError: Quotes or brackets are not closed.
    """
    if text[:1] not in ('"', "[", "{"):
        return text
    yaml, problems = parse_yaml(Path("cell"), text)
    if yaml is None or problems:
        raise ValueError(problems[0].problem if problems else "it says nothing")
    return yaml.plain
