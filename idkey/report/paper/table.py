"""Tables whose rows stay whole and whose head comes again on each page."""

from collections.abc import Sequence
from dataclasses import dataclass

from idkey.report.paper.prose import Block, Piece, Type, broken, set_block
from idkey.report.paper.sheet import HAIR, SOFT, Sheet

PAD = 0.75
DENSE_PAD = 0.45
GAP = 3.0
HEAD = Type(size=7, colour=SOFT, bold=True)
"""How the head of a table is set."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """A column: its head, and its share of the width."""

    head: str
    share: float


Row = tuple[Sequence[Piece], ...]
"""One sequence of pieces per column."""


def table(sheet: Sheet, columns: Sequence[Column], rows: Sequence[Row]) -> None:
    """A table across the page at the current y.

    Args:
        sheet: Where.
        columns: Their shares sum to one.
        rows: In order.
    """
    sheet.room(beginning(sheet, columns, rows))
    _head(sheet, columns)
    for row in rows:
        blocks = _blocks(sheet, columns, row)
        height = _height(sheet, blocks)
        if sheet.room(height):
            _head(sheet, columns)
        _row(sheet, columns, blocks, height)


def beginning(sheet: Sheet, columns: Sequence[Column], rows: Sequence[Row]) -> float:
    """Height of the head with the first row, in mm: what may not be torn apart."""
    first = _height(sheet, _blocks(sheet, columns, rows[0])) if rows else 0.0
    return HEAD.line_mm + 1.4 + first


def _blocks(sheet: Sheet, columns: Sequence[Column], row: Row) -> list[Block]:
    kind = Type(size=7.2, leading=1.26) if sheet.dense else Type(size=8)
    return [
        broken(sheet, cell, width, kind)
        for cell, (_, width) in zip(row, _places(sheet, columns), strict=True)
    ]


def _height(sheet: Sheet, blocks: Sequence[Block]) -> float:
    return max(block.height for block in blocks) + 2 * (DENSE_PAD if sheet.dense else PAD)


def _places(sheet: Sheet, columns: Sequence[Column]) -> list[tuple[float, float]]:
    """(x, width) per column."""
    found, x = [], sheet.margins.left
    for column in columns:
        wide = sheet.width * column.share
        found.append((x, wide - GAP))
        x += wide
    return found


def _head(sheet: Sheet, columns: Sequence[Column]) -> None:
    y = sheet.get_y()
    for column, (x, width) in zip(columns, _places(sheet, columns), strict=True):
        block = broken(sheet, ((column.head, "B"),), width, HEAD)
        set_block(sheet, block, x, y + 0.6)
    sheet.set_y(y + HEAD.line_mm + 1.4)
    sheet.rule(sheet.get_y(), SOFT, weight=0.25)


def _row(sheet: Sheet, columns: Sequence[Column], blocks: Sequence[Block], height: float) -> None:
    y, pad = sheet.get_y(), DENSE_PAD if sheet.dense else PAD
    for block, (x, _) in zip(blocks, _places(sheet, columns), strict=True):
        set_block(sheet, block, x, y + pad)
    sheet.set_y(y + height)
    sheet.rule(y + height, HAIR, weight=0.15)
