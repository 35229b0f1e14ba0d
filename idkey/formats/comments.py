"""Comments of a hand-written key file, carried over when the file is written again."""

import re
from collections.abc import Iterable, Iterator
from typing import Any

import yaml

from idkey.formats.emit import Line
from idkey.formats.yaml_text import Loc, YamlText

Place = tuple[str | int, ...]
"""A way in a file that survives inserted entries: list entries go by their ids."""

_TRAILING = re.compile(r"\s+(#.*)$")


class Comments:
    """The comments of one file and what each belongs to."""

    def __init__(self, text: YamlText) -> None:
        self._before: dict[Place, list[str]] = {}
        self._after: dict[Place, str] = {}
        self._foot: list[str] = []
        self._lines = text.text.splitlines()
        if "#" in text.text and (root := text.root) is not None:
            self._collect(root, text.plain)

    def _collect(self, root: yaml.Node, plain: Any) -> None:
        starts: dict[int, Place] = {}
        ends: dict[int, int] = {}
        inside: set[int] = set()
        for place, node, row in _nodes(root, plain):
            starts.setdefault(row, place)
            first, last = node.start_mark, node.end_mark
            if isinstance(node, yaml.ScalarNode) or getattr(node, "flow_style", False):
                ends[last.line] = max(ends.get(last.line, 0), last.column)
                stop = last.line + (last.column > 0)
                if isinstance(node, yaml.ScalarNode):
                    inside.update(range(first.line + 1, stop))
        waiting: list[str] = []
        for number, line in enumerate(self._lines):
            stripped = line.strip()
            if stripped.startswith("#") and number not in inside:
                waiting.append(stripped)
            elif number in starts and waiting:
                self._before.setdefault(starts[number], []).extend(waiting)
                waiting = []
            if number in ends and (found := _TRAILING.match(line, ends[number])):
                self._after[_last_start(starts, number)] = found[1]
        self._foot = waiting

    def woven(self, lines: Iterable[Line], plain: Any) -> Iterator[str]:
        """The lines of the new file with the comments where they belong.

        Args:
            lines: What is to be written.
            plain: The document that `lines` say.
        """
        placed = [(_place(loc, plain), line) for loc, line in lines]
        present = {place for place, _ in placed}
        before: dict[Place, list[str]] = {}
        for place, said in self._before.items():
            if (new := _nearest(place, present)) is not None:
                before.setdefault(new, []).extend(said)
        for place, said_after in self._after.items():
            if place not in present and (new := _nearest(place, present)) is not None:
                before.setdefault(new, []).append(said_after)
        for place, line in placed:
            indent = line[: len(line) - len(line.lstrip())]
            for said_before in before.pop(place, ()):
                yield f"{indent}{said_before}"
            after = self._after.get(place)
            yield f"{line}  {after}" if after and line else line
        yield from self._foot


def _last_start(starts: dict[int, Place], number: int) -> Place:
    """What begins on that line, or on the last line before it where something begins."""
    return starts[max(line for line in starts if line <= number)]


def _nodes(
    node: yaml.Node, plain: Any, place: Place = ()
) -> Iterator[tuple[Place, yaml.Node, int]]:
    """Every value with its place and the line on which it, or its name, begins."""
    if isinstance(node, yaml.MappingNode):
        for key, value in node.value:
            inner = plain.get(key.value) if isinstance(plain, dict) else None
            here = (*place, key.value)
            yield here, value, key.start_mark.line
            yield from _nodes(value, inner, here)
    elif isinstance(node, yaml.SequenceNode):
        for index, value in enumerate(node.value):
            inner = plain[index] if isinstance(plain, list) else None
            here = (*place, _step(index, inner))
            yield here, value, value.start_mark.line
            yield from _nodes(value, inner, here)


def _step(index: int, inner: Any) -> str | int:
    own = inner.get("id") if isinstance(inner, dict) else None
    return f"id {own}" if own is not None else index


def _place(loc: Loc, plain: Any) -> Place:
    found: list[str | int] = []
    for step in loc:
        plain = plain[step]
        found.append(_step(step, plain) if isinstance(step, int) else step)
    return tuple(found)


def _nearest(place: Place, present: set[Place]) -> Place | None:
    """Where a comment goes now; None when the entry it belongs to is gone."""
    while place not in present:
        gone = place[-1:]
        place = place[:-1]
        if not place or isinstance(gone[0], int) or str(gone[0]).startswith("id "):
            return None
        if place in (("scores",), ("sources",), ("glossary",)):
            return None
    return place
