"""A printed key as PDF."""

from datetime import UTC, datetime
from pathlib import Path

from idkey import __version__
from idkey.engine.result import Stake
from idkey.errors import IdKeyError
from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.report.names import scientific_names
from idkey.report.paper.about import About
from idkey.report.paper.marks import stake_mark
from idkey.report.paper.prose import Piece, Type, broken, paragraph, pieces, set_block
from idkey.report.paper.sheet import SOFT, Sheet
from idkey.report.printed_key import (
    Layout,
    PrintedLead,
    end_words,
    mark_words,
    number_words,
    printed_key,
)

NUMBER_MM = 13.0
STEP_MM = 4.0
MARK_MM = 3.4
LINE = Type(size=9)
SMALL = Type(size=7.4, colour=SOFT)


def write_printed_key(
    path: Path, key: Key, layout: Layout = Layout.BRACKETED, language: Language = ENGLISH
) -> None:
    """Write the couplets of a key as PDF.

    Raises:
        IdKeyError: The key has no couplets, or the file cannot be written there.
    """
    if not key.couplets:
        raise IdKeyError(
            f"The key {key.title} has no couplets to print.",
            "Write couplets in the workshop, or build them from the scores.",
        )
    try:
        path.write_bytes(printed_bytes(key, layout, language))
    except OSError as err:
        raise IdKeyError(
            f"{path} cannot be written: {err.strerror or err}.", "Choose another folder."
        ) from err


def printed_bytes(
    key: Key, layout: Layout = Layout.BRACKETED, language: Language = ENGLISH
) -> bytes:
    """The same as bytes."""
    title = f"{key.title}, {language.say('version {n}', n=key.version)}"
    sheet = Sheet(
        footer=f"{title} · {key.digest[:16]}",
        page_words=language.say("Page {page} of {pages}", page="{page}", pages="{pages}"),
    )
    sheet.describe(
        About(
            title=title,
            subject=key.scope[:300],
            author="; ".join(key.authors) or "–",
            creator=f"idkey {__version__}",
            keywords=f"key {key.id}, sha256 {key.digest}",
            language=language.code,
            made=datetime(1970, 1, 1, tzinfo=UTC),
        )
    )
    sheet.set_xy(sheet.margins.left, sheet.margins.top)
    paragraph(sheet, ((key.title, "B"),), Type(size=17, leading=1.2), tag="/H1")
    names = scientific_names(key)
    for text in (key.scope, *key.cautions):
        sheet.set_y(sheet.get_y() + 1)
        paragraph(sheet, pieces(names, text), SMALL)
    sheet.set_y(sheet.get_y() + 3)
    for lead in printed_key(key, layout):
        _lead(sheet, lead, layout, language, names)
    return sheet.finished()


def _lead(
    sheet: Sheet,
    lead: PrintedLead,
    layout: Layout,
    language: Language,
    names: tuple[str, ...],
) -> None:
    x = sheet.margins.left + min(lead.depth, 14) * STEP_MM
    left = x + (NUMBER_MM if layout is Layout.BRACKETED else 9.0)
    width = sheet.w - sheet.margins.right - left
    marks = mark_words(lead, language)
    note = broken(sheet, pieces(names, lead.note), width, SMALL) if lead.note else None
    main = broken(sheet, _content(lead, language, names), width, LINE)
    below = " ".join(part for part in (f"{marks}." if marks else "", lead.remark) if part)
    remark = broken(sheet, pieces(names, below), width - MARK_MM - 1, SMALL) if below else None
    blocks = [block for block in (note, main, remark) if block is not None]
    sheet.room(sum(block.height for block in blocks) + 2)
    y = sheet.get_y()
    if lead.first and layout is Layout.BRACKETED:
        sheet.rule(y)
        y += 1.2
    if note is not None:
        y = set_block(sheet, note, left, y)
    number = broken(sheet, ((number_words(lead, layout), "B"),), left - x, LINE)
    set_block(sheet, number, x, y)
    y = set_block(sheet, main, left, y)
    if remark is not None:
        _mark(sheet, lead, left, y)
        y += remark.height
        indent = MARK_MM + 1 if lead.dangerous or lead.listed else 0
        set_block(sheet, remark, left + indent, y - remark.height)
    sheet.set_y(y + 0.8)


def _mark(sheet: Sheet, lead: PrintedLead, x: float, y: float) -> None:
    """Draw the mark of an end beside its remark."""
    if lead.dangerous:
        stake_mark(sheet, Stake.HAZARD, x, y, MARK_MM)
    elif lead.listed:
        stake_mark(sheet, Stake.PERMIT, x, y, MARK_MM)


def _content(lead: PrintedLead, language: Language, names: tuple[str, ...]) -> tuple[Piece, ...]:
    statement = pieces(names, lead.statement)
    end = end_words(lead, language)
    if not end:
        return (*statement, (":", ""))
    return (*statement, (" … ", ""), *pieces(names, end, bold=True))
