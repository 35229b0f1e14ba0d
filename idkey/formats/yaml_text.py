"""YAML as plain text, lists and mappings, with the place of everything in it.

Every scalar stays the text that was written, so that a state called ``no`` stays a word; only
an empty value, ``~`` and ``null`` mean nothing. Anchors, aliases and tags are refused: a key
has no use for them, and they are how a small file grows into gigabytes or runs code.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from functools import cached_property
from pathlib import Path
from typing import Any

import yaml

from idkey.formats.problem import Problem, Severity
from idkey.formats.score_lines import split_scores
from idkey.formats.yaml_mistakes import in_words, tab_lines

LARGEST_FILE = 4 * 2**20
"""Bytes; a taxon with a thousand scores is about 0.1 MB."""

DEEPEST = 40
"""Values inside values; a key needs ten."""

Loc = tuple[str | int, ...]
"""The way to a value: keys of mappings and indices of lists."""

_Fields = dict[str | int, tuple[yaml.Node, yaml.Node]]

_Loader: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
_NOTHING = frozenset(("", "~", "null", "Null", "NULL"))


@dataclass(frozen=True)
class YamlText:
    """One parsed file.

    Attributes:
        file: Where it was read.
        text: What it says.
        plain: The same as text, lists, mappings and None.
        under: The way to `plain` when the file holds more than that.
        whole: The whole of a file of which this is a part, so that its places are looked up once.
    """

    file: Path
    text: str
    plain: Any
    under: Loc = ()
    whole: "YamlText | None" = field(default=None, repr=False, compare=False)

    def problem(
        self, loc: Loc, problem: str, remedy: str, *, severity: Severity = Severity.ERROR
    ) -> Problem:
        """A mistake at the value that `loc` leads to, or as near to it as the file goes."""
        line, column = self.place(loc)
        return Problem(
            file=self.file,
            line=line,
            column=column,
            problem=problem,
            remedy=remedy,
            severity=severity,
            loc=loc,
        )

    def problem_at_key(self, loc: Loc, problem: str, remedy: str) -> Problem:
        """A mistake at the name of the field that `loc` leads to."""
        node = self._node(loc[:-1])
        found = self._fields(node).get(loc[-1]) if isinstance(node, yaml.MappingNode) else None
        if found is None:
            return self.problem(loc, problem, remedy)
        return replace(_at(self.file, found[0].start_mark, problem, remedy), loc=loc)

    def place(self, loc: Loc) -> tuple[int, int]:
        """Line and column, from 1, of the value that `loc` leads to."""
        node = self._node(loc)
        return (1, 1) if node is None else (node.start_mark.line + 1, node.start_mark.column + 1)

    def _node(self, loc: Loc) -> yaml.Node | None:
        node = self.root
        for step in (*self.under, *loc):
            below = None if node is None else self._child(node, step)
            if below is None:
                return node
            node = below
        return node

    @cached_property
    def root(self) -> yaml.Node | None:
        """The content with the place of everything; made when first asked for."""
        if self.whole is not None:
            return self.whole.root
        if len(self.text) > LARGEST_FILE:  # looking for places takes a hundred times the room
            return None
        try:
            root: yaml.Node | None = yaml.compose(self.text, Loader=_Loader)
        except yaml.YAMLError:  # some JSON is no YAML; it then has no places
            return None
        return root

    def _child(self, node: yaml.Node, step: str | int) -> yaml.Node | None:
        if isinstance(node, yaml.MappingNode):
            found = self._fields(node).get(step)
            return None if found is None else found[1]
        if isinstance(node, yaml.SequenceNode) and isinstance(step, int) and step < len(node.value):
            child: yaml.Node = node.value[step]
            return child
        return None

    def _fields(self, node: yaml.MappingNode) -> _Fields:
        """Name and value per name; made once, since a file may have as many mistakes as lines."""
        known = (self.whole or self)._known
        if id(node) not in known:
            known[id(node)] = {key.value: (key, value) for key, value in reversed(node.value)}
        return known[id(node)]

    @cached_property
    def _known(self) -> dict[int, _Fields]:
        return {}


def read_yaml(file: Path) -> tuple[YamlText | None, list[Problem]]:
    """The content of `file` and its mistakes; None when it could not be read at all."""
    try:
        with file.open("rb") as stream:
            raw = stream.read(LARGEST_FILE + 1)
    except OSError as err:
        reason = err.strerror or "unknown reason"
        return None, [_start(file, f"The file cannot be read: {reason}.", "Restore the file.")]
    return parse_bytes(file, raw)


def parse_bytes(file: Path, raw: bytes) -> tuple[YamlText | None, list[Problem]]:
    """The content of `raw`, which was read from `file`, and its mistakes."""
    if len(raw) > LARGEST_FILE:
        size = LARGEST_FILE // 2**20
        return None, [_start(file, f"The file is larger than {size} MB.", "Split or shorten it.")]
    text, wrong = _decoded(file, raw)
    return (None, wrong) if text is None else parse_yaml(file, text)


def _decoded(file: Path, raw: bytes) -> tuple[str | None, list[Problem]]:
    try:
        return raw.decode("utf-8-sig"), []
    except UnicodeDecodeError as err:
        before = raw[: err.start]
        line = before.count(b"\n") + 1
        column = len(before[before.rfind(b"\n") + 1 :].decode("utf-8", "replace")) + 1
        problem = Problem(
            file=file,
            line=line,
            column=column,
            problem=f"The file is not UTF-8 text (byte 0x{raw[err.start]:02x}).",
            remedy="Save it again with the encoding UTF-8.",
        )
        return None, [problem]


def parse_yaml(file: Path, text: str) -> tuple[YamlText | None, list[Problem]]:
    """The content of `text`, which was read from `file`, and its mistakes."""
    quick = split_scores(text)
    if quick is not None:
        plain = _head(file, quick[0])
        if plain is not None:
            return YamlText(file=file, text=text, plain=plain | {"scores": quick[1]}), []
    return _parsed(file, text)


def _head(file: Path, text: str) -> dict[str, Any] | None:
    """What stands above the scores; None when it is no mapping that ends there."""
    yaml, problems = _parsed(file, text)
    plain = None if yaml is None or problems else yaml.plain
    return plain if isinstance(plain, dict) and "scores" not in plain else None


def _parsed(file: Path, text: str) -> tuple[YamlText | None, list[Problem]]:
    builder = _Builder(file)
    try:
        plain = builder.document(yaml.parse(text, Loader=_Loader))
    except (yaml.YAMLError, RecursionError) as err:
        tabs = tab_lines(text)
        if tabs:
            return None, [_tab(file, line, column) for line, column in tabs]
        line, column, problem, remedy = in_words(err, text)
        wrong = Problem(file=file, line=line, column=column, problem=problem, remedy=remedy)
        return None, [*builder.problems, wrong]
    if builder.refused:
        return None, builder.problems
    return YamlText(file=file, text=text, plain=plain), builder.problems


def _tab(file: Path, line: int, column: int) -> Problem:
    return Problem(
        file=file,
        line=line,
        column=column,
        problem="The line is indented with a tab.",
        remedy="Indent with spaces.",
    )


class _Builder:
    """Makes plain values from the parser's events, and notes what a key may not hold."""

    def __init__(self, file: Path) -> None:
        self.problems: list[Problem] = []
        self.refused = False
        self._file = file
        self._depth = 0

    def document(self, events: Iterator[Any]) -> Any:
        """The value of the one document; None for an empty file."""
        value, documents = None, 0
        for event in events:
            if isinstance(event, yaml.DocumentStartEvent):
                documents += 1
                if documents == 2:
                    self._refuse(
                        event, "A second document starts here ('---').", "Keep one in each file."
                    )
            elif not isinstance(
                event, yaml.StreamStartEvent | yaml.StreamEndEvent | yaml.DocumentEndEvent
            ):
                new = self._value(event, events)
                value = new if documents == 1 else value
        return value

    def _value(self, event: Any, events: Iterator[Any]) -> Any:
        if isinstance(event, yaml.AliasEvent):
            self._refuse(
                event, f"The file uses an alias (*{event.anchor}).", "Write the value out in full."
            )
            return None
        if event.anchor is not None:
            self._refuse(
                event, f"The file uses an anchor (&{event.anchor}).", "Write values out in full."
            )
        if event.tag is not None:
            self._refuse(event, f"The file uses a tag ({event.tag}).", "Remove the tag.")
        if isinstance(event, yaml.ScalarEvent):
            return _scalar(event)
        self._depth += 1
        if self._depth > DEEPEST:
            raise RecursionError("nesting depth")
        listed = isinstance(event, yaml.SequenceStartEvent)
        found = self._list(events) if listed else self._mapping(events)
        self._depth -= 1
        return found

    def _list(self, events: Iterator[Any]) -> list[Any]:
        found: list[Any] = []
        for event in events:
            if isinstance(event, yaml.SequenceEndEvent):
                break
            found.append(self._value(event, events))
        return found

    def _mapping(self, events: Iterator[Any]) -> dict[str, Any]:
        found: dict[str, Any] = {}
        for event in events:
            if isinstance(event, yaml.MappingEndEvent):
                break
            key = self._value(event, events)
            value = self._value(next(events), events)
            if not isinstance(event, yaml.ScalarEvent):
                self._note(event, "A name is missing before the colon.", "Write 'name: value'.")
            elif (name := event.value) in found:
                self._note(event, f"'{name}' is given twice.", "Keep one of them.")
            else:
                found[name if key is None else key] = value
        return found

    def _note(self, event: Any, problem: str, remedy: str) -> None:
        self.problems.append(_at(self._file, event.start_mark, problem, remedy))

    def _refuse(self, event: Any, problem: str, remedy: str) -> None:
        self.refused = True
        self._note(event, problem, remedy)


def _scalar(event: yaml.ScalarEvent) -> str | None:
    text: str = event.value
    if text in _NOTHING and event.implicit[0]:
        return None
    return text


def _start(file: Path, problem: str, remedy: str) -> Problem:
    return Problem(file=file, line=1, column=1, problem=problem, remedy=remedy)


def _at(file: Path, mark: Any, problem: str, remedy: str) -> Problem:
    return Problem(
        file=file, line=mark.line + 1, column=mark.column + 1, problem=problem, remedy=remedy
    )
