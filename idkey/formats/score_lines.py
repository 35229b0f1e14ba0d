"""A short cut through taxon files in the canonical layout, where a score is a line.

Such lines are so plain that JSON can read them after its quotes are put in, several times as
fast as YAML. Whatever is written otherwise goes the long way: the short cut says None. A test
holds both ways against each other.
"""

import json
import re
from typing import Any

_WORD = r"[A-Za-z0-9_][A-Za-z0-9_.+-]{0,99}+"
_WORDS = r"\w[\w.()/+;'-]*+(?: [\w.()/+;'-]++)*+"
_QUOTED = r'"(?:[^"\\]|\\["\\/bfnrt])*+"'
_TEXT = rf"(?:{_QUOTED}|{_WORDS})"
_LIST = rf"\[(?:{_TEXT}(?:, {_TEXT})*+)?\]"
_FIELDS = r"\{{(?:{word}: {value}(?:, {word}: {value})*+)?\}}"
_MAPPING = _FIELDS.format(word=_WORD, value=_TEXT)
_SCORE = _FIELDS.format(word=_WORD, value=f"(?:{_TEXT}|{_LIST}|{_MAPPING})")

_CELL = re.compile(rf"  ({_WORD}):(?: ({_SCORE}))?(?: +#.*)?")
_ITEM = re.compile(rf"    - ({_SCORE})(?: +#.*)?")
_TOKEN = re.compile(rf"{_QUOTED}|{_WORDS}")
_FOREIGN = re.compile(
    "[^\n\x20-\x7e\xa0-\u2027\u202a-\ud7ff\ue000-\ufefe\uff00-\ufffd\U00010000-\U0010ffff]"
    "|^(?:---|\\.\\.\\.)",
    re.MULTILINE,
)
_NOTHING = frozenset(("null", "Null", "NULL"))
_START = "\nscores:\n"


def split_scores(text: str) -> tuple[str, dict[str, Any]] | None:
    """The text above the scores and the scores as plain values; None for any other layout.

    Args:
        text: The whole of a taxon file.
    """
    text = text.replace("\r\n", "\n")
    head, start, body = text.partition(_START)
    if not start or _FOREIGN.search(text):
        return None
    lines = _Lines()
    if not all(lines.take(line) for line in body.split("\n")):
        return None
    scores = lines.scores()
    return None if scores is None else (f"{head}\n", scores)


class _Lines:
    """What the lines below ``scores:`` say; each is a cell, an item of a list, or nothing."""

    def __init__(self) -> None:
        self._names: set[str] = set()
        self._places: list[tuple[str, bool]] = []
        self._values: list[str] = []
        self._list = ""
        self._awaited = False

    def take(self, line: str) -> bool:
        """Note the line; False when it is none of these."""
        if line.startswith("    -"):
            item = _ITEM.fullmatch(line)
            if item is None or not self._list:
                return False
            self._awaited = False
            self._note(self._list, item[1], listed=True)
            return True
        cell = _CELL.fullmatch(line)
        if cell is None:
            return line.strip(" ")[:1] in ("", "#")
        name, value = cell.groups()
        if self._awaited or name in self._names:
            return False
        self._names.add(name)
        self._awaited = value is None
        self._list = name if value is None else ""
        if value is not None:
            self._note(name, value, listed=False)
        return True

    def _note(self, name: str, value: str, *, listed: bool) -> None:
        self._places.append((name, listed))
        self._values.append(_TOKEN.sub(_quoted, value))

    def scores(self) -> dict[str, Any] | None:
        """The scores by character; None when a line says what only YAML can tell."""
        if self._awaited:
            return None
        try:
            values = json.loads(f"[{','.join(self._values)}]", object_pairs_hook=_once)
        except ValueError:
            return None
        scores: dict[str, Any] = {}
        for (name, listed), value in zip(self._places, values, strict=True):
            if listed:
                scores.setdefault(name, []).append(value)
            else:
                scores[name] = value
        return scores


def _quoted(token: re.Match[str]) -> str:
    text = token[0]
    if text[0] == '"':
        return text
    return "null" if text in _NOTHING else f'"{text}"'


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """The fields of a mapping; a field that is given twice is for the long way to explain."""
    fields = dict(pairs)
    if len(fields) < len(pairs):
        raise ValueError("a field is given twice")
    return fields
