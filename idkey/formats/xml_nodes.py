"""XML as a tree of local names with line numbers; no document types, so no entities at all."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from xml.parsers import expat
from xml.sax.saxutils import escape, quoteattr

from idkey.errors import IdKeyError

LARGEST_XML = 64 * 2**20
MOST_NODES = 3_000_000
DEEPEST = 100

_ILLEGAL = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_MEND = "Export the file again."


@dataclass(slots=True)
class Node:
    """An element.

    Attributes:
        tag: Its local name.
        attributes: Values by local name; in writing, names may carry a prefix.
        children: Its elements, in order.
        text: All text directly inside it.
        line: Line where it starts, counted from 1; 0 for one that was made here.
        space: Its namespace; a prefix in writing.
    """

    tag: str
    attributes: dict[str, str] = field(default_factory=dict)
    children: list["Node"] = field(default_factory=list)
    text: str = ""
    line: int = 0
    space: str = ""

    def add(self, tag: str, text: str = "", **attributes: str) -> "Node":
        """Append a new child and return it."""
        child = Node(tag, dict(attributes), text=text)
        self.children.append(child)
        return child

    def first(self, *path: str) -> "Node | None":
        """The first element that lies below along these names; None when there is none."""
        node: Node | None = self
        for tag in path:
            node = None if node is None else next((c for c in node.children if c.tag == tag), None)
        return node

    def all(self, *path: str) -> Iterator["Node"]:
        """Every element that lies below along these names."""
        if not path:
            yield self
            return
        for child in self.children:
            if child.tag == path[0]:
                yield from child.all(*path[1:])

    def below(self) -> Iterator["Node"]:
        """This element and every one below it, in document order."""
        stack = [self]
        while stack:
            node = stack.pop()
            yield node
            stack.extend(reversed(node.children))

    def ref(self, *path: str) -> str:
        """The ``ref`` of the first element along these names; empty without one."""
        found = self.first(*path)
        return "" if found is None else found.attributes.get("ref", "")

    def words(self) -> str:
        """Its text and that of all below, white space collapsed."""
        return " ".join(" ".join(node.text for node in self.below()).split())


class _Reader:
    """Builds the tree from the parser's calls, and stops at what no key needs."""

    def __init__(self, name: str) -> None:
        self.root: Node | None = None
        self._name = name
        self._open: list[Node] = []
        self._texts: list[list[str]] = []
        self._count = 0
        self.parser = expat.ParserCreate(namespace_separator=" ")
        self.parser.buffer_text = True
        self.parser.StartElementHandler = self._start
        self.parser.EndElementHandler = self._end
        self.parser.CharacterDataHandler = self._characters
        self.parser.StartDoctypeDeclHandler = self._doctype

    def _start(self, tag: str, attributes: Mapping[str, str]) -> None:
        space, _, local = tag.rpartition(" ")
        own = {name.rpartition(" ")[2]: value for name, value in attributes.items()}
        node = Node(local, own, line=self.parser.CurrentLineNumber, space=space)
        self._count += 1
        if self._count > MOST_NODES or len(self._open) >= DEEPEST:
            raise IdKeyError(f"{self._name} is deeper or larger than any key.", _MEND)
        if self._open:
            self._open[-1].children.append(node)
        else:
            self.root = node
        self._open.append(node)
        self._texts.append([])

    def _end(self, _: str) -> None:
        self._open.pop().text = "".join(self._texts.pop())

    def _characters(self, text: str) -> None:
        if self._texts:
            self._texts[-1].append(text)

    def _doctype(self, *_: object) -> None:
        raise IdKeyError(
            f"{self._name} declares a document type, which no key needs.",
            "Remove the DOCTYPE; do not use the file if you do not know where it comes from.",
        )


def parse_xml(raw: bytes, name: str) -> Node:
    """The root element of `raw`, which was read from a file called `name`.

    Raises:
        IdKeyError: It is no XML, declares a document type, or is larger than any key.
    """
    if len(raw) > LARGEST_XML:
        raise IdKeyError(f"{name} is larger than {LARGEST_XML // 2**20} MB.", "Split it.")
    reader = _Reader(name)
    try:
        reader.parser.Parse(raw, True)
    except expat.ExpatError as err:
        problem = f"{name}:{err.lineno}:{err.offset + 1}: This is no XML: "
        raise IdKeyError(f"{problem}{expat.ErrorString(err.code)}.", _MEND) from err
    except (LookupError, ValueError) as err:
        raise IdKeyError(f"{name} has an encoding that is not known.", "Save as UTF-8.") from err
    if reader.root is None:
        raise IdKeyError(f"{name} is empty.", _MEND)
    return reader.root


def xml_text(root: Node, namespaces: Mapping[str, str]) -> str:
    """The element as an XML document.

    Args:
        root: The element.
        namespaces: Namespace per prefix; the empty prefix is the default.
    """
    declared = {f"xmlns:{p}" if p else "xmlns": uri for p, uri in namespaces.items()}
    root.attributes = {**declared, **root.attributes}
    lines = ['<?xml version="1.0" encoding="UTF-8"?>']
    _render(root, "", lines)
    return "\n".join(lines) + "\n"


def _render(node: Node, indent: str, lines: list[str]) -> None:
    tag = f"{node.space}:{node.tag}" if node.space else node.tag
    attributes = "".join(f" {n}={quoteattr(legal(v))}" for n, v in node.attributes.items())
    if node.children:
        lines.append(f"{indent}<{tag}{attributes}>")
        for child in node.children:
            _render(child, f"{indent}  ", lines)
        lines.append(f"{indent}</{tag}>")
    elif node.text:
        lines.append(f"{indent}<{tag}{attributes}>{escape(legal(node.text))}</{tag}>")
    else:
        lines.append(f"{indent}<{tag}{attributes}/>")


def legal(text: str) -> str:
    """The text without signs that XML 1.0 cannot hold at all."""
    return _ILLEGAL.sub(" ", text)
