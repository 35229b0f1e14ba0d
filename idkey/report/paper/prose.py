"""Text of several styles, broken into lines and set on a sheet."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from idkey.report.names import runs
from idkey.report.paper.sheet import INK, MM_PER_PT, Colour, Sheet, Style, Tag

Piece = tuple[str, Style]
"""Text and its style."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Type:
    """How text is set.

    Attributes:
        size: In pt.
        colour: Ink.
        leading: Distance of lines, in multiples of the size.
        bold: Whether all of it is bold.
    """

    size: float = 9
    colour: Colour = INK
    leading: float = 1.32
    bold: bool = False

    @property
    def line_mm(self) -> float:
        """Distance of two lines in mm."""
        return self.size * self.leading * MM_PER_PT


@dataclass(frozen=True, slots=True)
class Block:
    """Text broken to a width: lines of pieces."""

    lines: tuple[tuple[Piece, ...], ...]
    type: Type

    @property
    def height(self) -> float:
        """In mm."""
        return len(self.lines) * self.type.line_mm


def pieces(names: Iterable[str], text: str, *, bold: bool = False) -> tuple[Piece, ...]:
    """The text as pieces, scientific `names` in italics."""
    styles: tuple[Style, Style] = ("B", "BI") if bold else ("", "I")
    return tuple((part, styles[italic]) for part, italic in runs(names, text))


def broken(sheet: Sheet, content: Sequence[Piece], width: float, kind: Type) -> Block:
    """The pieces broken into lines of at most `width` mm; an end of line in them stays one."""
    lines: list[tuple[Piece, ...]] = []
    line: list[Piece] = []
    used = 0.0
    for word in _words(sheet, content, kind, width):
        if word[0][0] == "\n":
            lines.append(tuple(line))
            line, used = [], 0.0
            continue
        wide = sum(_width(sheet, text, style, kind) for text, style in word)
        blank = word[-1][0]
        over = _width(sheet, blank, word[-1][1], kind) - _width(
            sheet, blank.rstrip(" "), word[-1][1], kind
        )
        if line and used + wide - over > width:
            lines.append(tuple(line))
            line, used = [], 0.0
        line.extend(word)
        used += wide
    if line or not lines:
        lines.append(tuple(line))
    return Block(tuple(_joined(one) for one in lines), kind)


def _words(
    sheet: Sheet, content: Sequence[Piece], kind: Type, width: float
) -> Iterable[tuple[Piece, ...]]:
    """Words with the blanks after them, in one or more styles; a word over `width` is cut."""
    word: list[Piece] = []
    used = 0.0
    for text, style in content:
        for part in re.findall(r"\n|[^ \n]+ *| +", sheet.printable(text)):
            wide = _width(sheet, part.rstrip(" "), style, kind)
            ended = bool(word) and (word[-1][0][-1] == " " or used + wide > width)
            if part == "\n" or ended:
                if word:
                    yield tuple(word)
                word, used = [], 0.0
            if part == "\n":
                yield (("\n", style),)
                continue
            *full, rest = _cut(sheet, part, style, kind, width)
            for piece in full:
                yield (piece,)
            word.append(rest)
            used += _width(sheet, rest[0], style, kind)
    if word:
        yield tuple(word)


def _cut(sheet: Sheet, word: str, style: Style, kind: Type, width: float) -> Iterable[Piece]:
    """The word in parts of at most `width`."""
    while len(word) > 1 and _width(sheet, word.rstrip(), style, kind) > width:
        size = len(word) - 1
        while size > 1 and _width(sheet, word[:size], style, kind) > width:
            size -= 1
        yield word[:size], style
        word = word[size:]
    yield word, style


def _width(sheet: Sheet, text: str, style: Style, kind: Type) -> float:
    return sheet.measure(text, kind.size, _styled(style, kind))


def _styled(style: Style, kind: Type) -> Style:
    if not kind.bold or "B" in style:
        return style
    return "BI" if style == "I" else "B"


def _joined(line: Sequence[Piece]) -> tuple[Piece, ...]:
    """Neighbours of one style as one piece, without blanks at the end of the line."""
    found: list[Piece] = []
    for text, style in line:
        if found and found[-1][1] == style:
            found[-1] = (found[-1][0] + text, style)
        else:
            found.append((text, style))
    if found:
        found[-1] = (found[-1][0].rstrip(), found[-1][1])
    return tuple(piece for piece in found if piece[0])


def set_block(sheet: Sheet, block: Block, x: float, y: float, tag: Tag = "/P") -> float:
    """Set a block with its top left corner at (x, y); returns the y below it."""
    with sheet.tagged(tag):
        for line in block.lines:
            _set_line(sheet, line, x, y + block.type.size * 1.02 * MM_PER_PT, block.type)
            y += block.type.line_mm
    return y


def _set_line(sheet: Sheet, line: Sequence[Piece], x: float, baseline: float, kind: Type) -> None:
    for text, style in line:
        sheet.font(kind.size, _styled(style, kind), kind.colour)
        sheet.text(x, baseline, text)
        x += _width(sheet, text, style, kind)


def paragraph(sheet: Sheet, content: Sequence[Piece], kind: Type, *, tag: Tag = "/P") -> None:
    """A paragraph across the page at the current y, over as many pages as it takes."""
    block = broken(sheet, content, sheet.width, kind)
    lines = list(block.lines)
    while lines:
        sheet.room(min(2, len(lines)) * kind.line_mm)
        fits = max(1, int((sheet.floor - sheet.get_y()) / kind.line_mm + 1e-6))
        part = Block(tuple(lines[:fits]), kind)
        sheet.set_y(set_block(sheet, part, sheet.margins.left, sheet.get_y(), tag))
        lines = lines[fits:]
        if lines:
            sheet.room(sheet.h)
