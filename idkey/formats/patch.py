"""A changed key file in which every line that still holds stays as somebody wrote it.

Comments, blank lines, line breaks and the order of fields survive; only what says something
else than before is written anew, in the canonical layout.
"""

import re
from collections.abc import Iterator
from typing import Any

import yaml

from idkey.formats.emit import entry_lines, field_lines
from idkey.formats.yaml_text import YamlText

_ODD_BREAKS = re.compile("\r(?!\n)|[\x85\u2028\u2029]")
_COMMENT = re.compile(r"\s+(#.*)$")
_DASH = re.compile(r" *-\s+")


class _CannotPatchError(Exception):
    """The file is laid out in a way that lines cannot be exchanged in."""


def patched(file: YamlText, old: dict[str, Any], new: dict[str, Any]) -> str | None:
    """The text of a file after a change; None when its layout does not allow single lines.

    Args:
        file: The file as it is.
        old: The document that it says, in canonical form.
        new: The document that it shall say.
    """
    text = file.text.replace("\r\n", "\n")
    if _ODD_BREAKS.search(text) or not isinstance(file.root, yaml.MappingNode):
        return None
    try:
        lines = list(_Patch(text).whole(file.root, old, new))
    except _CannotPatchError:
        return None
    return "".join(f"{line}\n" for line in lines)


class _Patch:
    def __init__(self, text: str) -> None:
        self._lines = text.removesuffix("\n").split("\n")

    def whole(
        self, root: yaml.MappingNode, old: dict[str, Any], new: dict[str, Any]
    ) -> Iterator[str]:
        """The lines of the whole file, what stands above and below the fields included."""
        yield from self._mapping(root, old, new, (), 0)
        yield from self._lines[self._last(root) + 1 :]

    def _mapping(
        self,
        node: yaml.Node,
        old: dict[str, Any],
        new: dict[str, Any],
        loc: tuple[str | int, ...],
        above: int,
    ) -> list[str]:
        """The lines of a mapping; `above` is the first line that may belong to it."""
        pairs = self._pairs(node)
        column = pairs[0][0].start_mark.column
        indent = " " * column
        blocks: dict[str, list[str]] = {}
        start = above
        for key, value in pairs:
            name = key.value
            lead = self._lines[start : key.start_mark.line]
            start = self._last_of(key, value) + 1
            if name in old and name not in new:
                blocks[name] = _apart(lead)
            elif name not in new or old.get(name) == new[name]:
                blocks[name] = lead + self._lines[key.start_mark.line : start]
            else:
                here = (*loc, name)
                blocks[name] = lead + self._changed(key, value, old.get(name), new[name], here)
        return [line for name in _order(list(blocks), list(new)) for line in (
            blocks[name] if name in blocks else field_lines(name, new[name], (*loc, name), indent)
        )]  # fmt: skip

    def _pairs(self, node: yaml.Node) -> list[tuple[yaml.Node, yaml.Node]]:
        """The fields of a mapping that has each on lines of its own."""
        if not isinstance(node, yaml.MappingNode) or node.flow_style or not node.value:
            raise _CannotPatchError
        pairs: list[tuple[yaml.Node, yaml.Node]] = node.value
        begun = [key.start_mark.line for key, _ in pairs]
        columns = {key.start_mark.column for key, _ in pairs}
        if len(set(begun)) < len(begun) or len(columns) > 1:
            raise _CannotPatchError
        return pairs

    def _changed(
        self, key: yaml.Node, value: yaml.Node, old: Any, new: Any, loc: tuple[str | int, ...]
    ) -> list[str]:
        """The lines of a field with another value, its heading included."""
        first = key.start_mark.line
        below = value.start_mark.line > first and not getattr(value, "flow_style", True)
        try:
            if below and isinstance(old, dict) and isinstance(new, dict) and new:
                body = self._mapping(value, old, new, loc, first + 1)
                return [self._lines[first], *body]
            if below and isinstance(old, list) and isinstance(new, list) and new:
                body = self._sequence(value, old, new, loc, first + 1)
                return [self._lines[first], *body]
        except _CannotPatchError:
            pass
        indent = " " * key.start_mark.column
        lines = field_lines(str(loc[-1]), new, loc, indent)
        return self._with_comment(lines, value, indent)

    def _with_comment(self, lines: list[str], value: yaml.Node, indent: str) -> list[str]:
        """The lines with the comment that stood behind the old value."""
        end = value.end_mark
        found = _COMMENT.match(self._lines[end.line], end.column) if end.column else None
        if found is None:
            return lines
        if len(lines) == 1:
            return [f"{lines[0]}  {found[1]}"]
        return [f"{indent}{found[1]}", *lines]

    def _sequence(
        self,
        node: yaml.Node,
        old: list[Any],
        new: list[Any],
        loc: tuple[str | int, ...],
        above: int,
    ) -> list[str]:
        """The lines of a list; entries are known by their ids, so that they may move."""
        if not isinstance(node, yaml.SequenceNode) or len(node.value) != len(old):
            raise _CannotPatchError
        column = self._dash(node.value[0])
        known: dict[object, tuple[list[str], yaml.Node, Any]] = {}
        start = above
        spaced = False
        for number, (item, said) in enumerate(zip(node.value, old, strict=True)):
            if self._dash(item) != column:
                raise _CannotPatchError
            lead = self._lines[start : item.start_mark.line]
            spaced = spaced or (number > 0 and "" in lead)
            start = self._last(item) + 1
            known.setdefault(_name(said, number), (lead, item, said))
        lines: list[str] = []
        for number, said in enumerate(new):
            lead, item, before = known.get(_name(said, number), ([], None, None))
            if item is None:
                gap = [""] if spaced and lines else []
                lines += gap + entry_lines(said, (*loc, number), " " * column)
            elif before == said:
                lines += lead + self._lines[item.start_mark.line : self._last(item) + 1]
            else:
                lines += lead + self._entry(item, before, said, (*loc, number), column)
        return lines

    def _dash(self, item: yaml.Node) -> int:
        """The column of the dash of an entry, which must stand on the line of its start."""
        before = self._lines[item.start_mark.line][: item.start_mark.column]
        if not _DASH.fullmatch(before):
            raise _CannotPatchError
        return before.index("-")

    def _entry(
        self, item: yaml.Node, old: Any, new: Any, loc: tuple[str | int, ...], column: int
    ) -> list[str]:
        """The lines of a changed entry of a list."""
        first = item.start_mark.line
        raw = self._lines[first]
        if isinstance(old, dict) and isinstance(new, dict):
            try:
                # without its dash the first line is a field like the others
                self._lines[first] = f"{raw[:column]} {raw[column + 1 :]}"
                lines = self._mapping(item, old, new, loc, first)
                return [f"{lines[0][:column]}-{lines[0][column + 1 :]}", *lines[1:]]
            except _CannotPatchError:
                pass
            finally:
                self._lines[first] = raw
        lines = entry_lines(new, loc, " " * column)
        return self._with_comment(lines, item, " " * column)

    def _last_of(self, key: yaml.Node, value: yaml.Node) -> int:
        """The last line of a field."""
        return max(self._last(value, key.start_mark.column), key.end_mark.line)

    def _last(self, node: yaml.Node, column: int = 0) -> int:
        """The last line that a value stands on, without comments and blanks below it."""
        if isinstance(node, yaml.CollectionNode) and not node.flow_style and node.value:
            last = node.value[-1]
            if isinstance(last, tuple):
                return self._last_of(*last)
            return self._last(last, node.start_mark.column)
        if isinstance(node, yaml.ScalarNode) and node.style in ("|", ">"):
            line = node.start_mark.line
            for number in range(line + 1, len(self._lines)):
                text = self._lines[number]
                if text.strip() and len(text) - len(text.lstrip()) <= column:
                    break
                line = number if text.strip() else line
            return line
        end: int = node.end_mark.line
        return end


def _apart(lead: list[str]) -> list[str]:
    """What stands above a field that is gone and is not about it: all down to a blank line."""
    for number in range(len(lead) - 1, -1, -1):
        if not lead[number].strip():
            return lead[: number + 1]
    return []


def _order(kept: list[str], new: list[str]) -> list[str]:
    """The fields in the order they had; a new one after the one it follows canonically."""
    order = list(kept)
    for number, name in enumerate(new):
        if name not in order:
            before = next((n for n in reversed(new[:number]) if n in order), None)
            order.insert(0 if before is None else order.index(before) + 1, name)
    return order


def _name(entry: Any, number: int) -> object:
    """What an entry of a list is known by in both versions."""
    if not isinstance(entry, dict):
        return number
    if "id" in entry:
        return ("id", entry["id"])
    if "statement" in entry:
        return ("statement", entry["statement"])
    return (entry.get("sex"), entry.get("stage"))
