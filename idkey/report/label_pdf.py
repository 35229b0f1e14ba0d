"""Corrected shop labels as PDF, on sheets or on a roll."""

from collections.abc import Sequence
from datetime import UTC, datetime
from pathlib import Path

from idkey import __version__
from idkey.engine.result import Stake
from idkey.errors import IdKeyError
from idkey.report.label_stock import Stock
from idkey.report.language import in_language
from idkey.report.paper.about import About
from idkey.report.paper.marks import square_code, stake_mark
from idkey.report.paper.prose import Block, Type, broken, pieces, set_block
from idkey.report.paper.sheet import HAIR, HAZARD, INK, PERMIT, SOFT, Margins, Sheet
from idkey.report.shop_label import LabelMark, ShopLabel

INSET = 2.0


def write_labels(
    path: Path, labels: Sequence[ShopLabel], stock: Stock, *, used: int = 0, cut: bool = False
) -> None:
    """Write labels as PDF.

    Args:
        path: The file to write.
        labels: In order.
        stock: What they are printed on.
        used: How many labels of the first page are gone already.
        cut: Whether thin lines show where to cut (for plain paper).

    Raises:
        IdKeyError: There is nothing to print, or it cannot be written there.
    """
    if not labels:
        raise IdKeyError("There is no label to print.", "Choose at least one case.")
    content = label_bytes(labels, stock, used=used, cut=cut)
    try:
        path.write_bytes(content)
    except OSError as err:
        raise IdKeyError(
            f"{path} cannot be written: {err.strerror or err}.",
            "Choose another folder, or close the program that has the file open.",
        ) from err


def label_bytes(
    labels: Sequence[ShopLabel], stock: Stock, *, used: int = 0, cut: bool = False
) -> bytes:
    """The same as bytes."""
    sheet = Sheet(size=stock.page, margins=Margins(left=0, right=0, top=0, bottom=0))
    language = in_language(labels[0].language)
    title = language.say("Shop labels")
    sheet.describe(
        About(
            title=title,
            subject="; ".join(label.name for label in labels)[:300],
            author="–",
            creator=f"idkey {__version__}",
            keywords=", ".join(label.case_id for label in labels)[:300],
            language=language.code,
            made=datetime(1970, 1, 1, tzinfo=UTC),
        )
    )
    for number, label in enumerate(labels, start=used % len(stock.places)):
        place = number % len(stock.places)
        if place == 0 and number:
            sheet.add_page()
        _label(sheet, label, stock.places[place], stock.label, cut)
    return sheet.finished()


def _label(
    sheet: Sheet,
    label: ShopLabel,
    at: tuple[float, float],
    size: tuple[float, float],
    cut: bool,
) -> None:
    if cut:
        with sheet.tagged("/Artifact"):
            sheet.set_draw_color(*HAIR)
            sheet.set_line_width(0.1)
            sheet.rect(*at, *size)
    left, top = at[0] + INSET, at[1] + INSET
    width, height = size[0] - 2 * INSET, size[1] - 2 * INSET
    code = min(height * 0.5, 16.0) if label.case_id else 0.0
    if code:
        x = at[0] + size[0] - code - INSET / 2
        square_code(sheet, f"case {label.case_id}", x, at[1] + INSET / 2, code)
    foot = _foot(sheet, label, width)
    marks = _marks(sheet, label, width, height * 0.45)
    set_block(sheet, foot, left, at[1] + size[1] - INSET - foot.height)
    y = at[1] + size[1] - INSET - foot.height - 0.8 - sum(h for _, _, h in marks)
    _set_marks(sheet, marks, left, y)
    _text(sheet, label, (left, top), (width - code - 1, y - top - 0.4))


def _foot(sheet: Sheet, label: ShopLabel, width: float) -> Block:
    language = in_language(label.language)
    words = language.say("{key}; a name is an opinion on evidence", key=label.key)
    small = f"{label.case_id[:8]} · {words}" if label.case_id else words
    return broken(sheet, ((small, ""),), width, Type(size=4.6, colour=SOFT, leading=1.15))


def _marks(
    sheet: Sheet, label: ShopLabel, width: float, room: float
) -> list[tuple[LabelMark, Block, float]]:
    """Warnings with their blocks and heights, in the largest type that leaves room."""
    for size in (9.0, 8.0, 7.0, 6.2, 5.6):
        found = []
        for mark in label.marks:
            colour = HAZARD if mark.stake is Stake.HAZARD else PERMIT
            kind = Type(size=size, colour=colour, leading=1.16, bold=True)
            block = broken(sheet, pieces((), mark.words), width - size * 0.62, kind)
            found.append((mark, block, max(block.height, size * 0.45) + 0.5))
        if sum(height for _, _, height in found) <= room:
            break
    return found


def _set_marks(
    sheet: Sheet, marks: Sequence[tuple[LabelMark, Block, float]], x: float, y: float
) -> None:
    for mark, block, height in marks:
        side = block.type.size * 0.45
        stake_mark(sheet, mark.stake, x, y, side)
        set_block(sheet, block, x + block.type.size * 0.62, y)
        y += height


def _text(
    sheet: Sheet, label: ShopLabel, at: tuple[float, float], room: tuple[float, float]
) -> None:
    """Name, everyday name, sex and price, in the largest type that fits."""
    price = label.price.replace(" ", "\u00a0")
    below = " · ".join(part for part in (label.below, label.facts, price) if part)
    for size in (20.0, 17.0, 15.0, 13.0, 11.5, 10.0, 9.0, 8.0, 7.0, 6.0):
        name = broken(
            sheet,
            pieces(label.italic, label.name, bold=True),
            room[0],
            Type(size=size, colour=INK, leading=1.1),
        )
        rest = broken(sheet, ((below, ""),), room[0], Type(size=max(5.6, size * 0.5), leading=1.15))
        if name.height + rest.height <= room[1]:
            break
    y = set_block(sheet, name, at[0], at[1], "/H1")
    if below:
        set_block(sheet, rest, at[0], y + 0.2)
