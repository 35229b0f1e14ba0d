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
from idkey.report.paper.closing import drawing_source
from idkey.report.paper.marks import stake_mark
from idkey.report.paper.prose import Block, Piece, Type, broken, paragraph, pieces, set_block
from idkey.report.paper.sheet import SOFT, Sheet
from idkey.report.printed_figures import Drawings, LeadFigure, lead_figures, picture_credits
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


FIGURE_MM = (19.0, 15.0)
"""Width and height of a drawing beside a lead."""

GAP_MM = 1.5


def write_printed_key(
    path: Path,
    key: Key,
    layout: Layout = Layout.BRACKETED,
    language: Language = ENGLISH,
    *,
    drawings: Drawings | None = None,
) -> None:
    """Write the couplets of a key as PDF.

    Args:
        path: The file.
        key: The key.
        layout: How couplets stand on paper.
        language: Language of the fixed words.
        drawings: Where the drawings are; None leaves them out.

    Raises:
        IdKeyError: The key has no couplets, or the file cannot be written there.
    """
    if not key.couplets:
        raise IdKeyError(
            f"The key {key.title} has no couplets to print.",
            "Write couplets in the workshop, or build them from the scores.",
        )
    try:
        path.write_bytes(printed_bytes(key, layout, language, drawings=drawings))
    except OSError as err:
        raise IdKeyError(
            f"{path} cannot be written: {err.strerror or err}.", "Choose another folder."
        ) from err


def printed_bytes(
    key: Key,
    layout: Layout = Layout.BRACKETED,
    language: Language = ENGLISH,
    *,
    drawings: Drawings | None = None,
) -> bytes:
    """The same as bytes."""
    title = f"{key.title}, {language.say('version {n}', n=key.version)}"
    state = key.digest[:16] or language.say("draft, not saved")
    sheet = Sheet(
        footer=f"{title} · {state}",
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
    press = _Press(sheet, key, layout, language, drawings=drawings)
    for lead in printed_key(key, layout):
        press.set_lead(lead)
    press.set_credits()
    return sheet.finished()


class _Press:
    """Sets the leads of a key one below the other.

    Args:
        sheet: The paper.
        key: The key.
        layout: How couplets stand on it.
        language: Language of the fixed words.
        drawings: Where the drawings are; None leaves them out.
    """

    def __init__(
        self,
        sheet: Sheet,
        key: Key,
        layout: Layout,
        language: Language,
        *,
        drawings: Drawings | None,
    ) -> None:
        self._sheet = sheet
        self._key = key
        self._bracketed = layout is Layout.BRACKETED
        self._layout = layout
        self._language = language
        self._drawings = drawings
        self._drawn: list[LeadFigure] = []
        self._names = scientific_names(key)

    def set_lead(self, lead: PrintedLead) -> None:
        """Set note, number, statement, end and remark, and the drawings at the right edge."""
        sheet = self._sheet
        x = sheet.margins.left + min(lead.depth, 14) * STEP_MM
        left = x + (NUMBER_MM if self._bracketed else 9.0)
        figures = lead_figures(self._key, lead, self._drawings)
        self._drawn += figures
        room = len(figures) * (FIGURE_MM[0] + GAP_MM)
        note, main, remark = self._blocks(lead, sheet.w - sheet.margins.right - left, room)
        text = main.height + (remark.height if remark else 0.0)
        height = max(text, FIGURE_MM[1] if figures else 0.0)
        sheet.room(height + (note.height if note else 0.0) + 2)
        y = sheet.get_y()
        if lead.first and self._bracketed:
            sheet.rule(y)
            y += 1.2
        if note is not None:
            y = set_block(sheet, note, left, y)
        number = broken(sheet, ((number_words(lead, self._layout), "B"),), left - x, LINE)
        set_block(sheet, number, x, y)
        below = set_block(sheet, main, left, y)
        if remark is not None:
            self._set_remark(lead, remark, left, below)
        self._set_figures(figures, sheet.w - sheet.margins.right - room + GAP_MM, y)
        sheet.set_y(y + height + 0.8)

    def set_credits(self) -> None:
        """Set who made the pictures set so far that are not the program's own."""
        found = picture_credits(self._drawn)
        if found:
            self._sheet.set_y(self._sheet.get_y() + 3)
            words = f"{self._language.say('Pictures')}: {'; '.join(found)}."
            paragraph(self._sheet, ((words, ""),), SMALL)

    def _blocks(
        self, lead: PrintedLead, width: float, room: float
    ) -> tuple[Block | None, Block, Block | None]:
        sheet, names = self._sheet, self._names
        marks = mark_words(lead, self._language)
        marks = f"{marks[:1].upper()}{marks[1:]}." if marks else ""
        below = " ".join(part for part in (marks, lead.remark) if part)
        narrow = width - room
        return (
            broken(sheet, pieces(names, lead.note), width, SMALL) if lead.note else None,
            broken(sheet, _content(lead, self._language, names), narrow, LINE),
            broken(sheet, pieces(names, below), narrow - MARK_MM - 1, SMALL) if below else None,
        )

    def _set_remark(self, lead: PrintedLead, remark: Block, left: float, y: float) -> None:
        """Set a remark behind the mark of what the lead ends in."""
        if lead.dangerous:
            stake_mark(self._sheet, Stake.HAZARD, left, y, MARK_MM)
        elif lead.listed:
            stake_mark(self._sheet, Stake.PERMIT, left, y, MARK_MM)
        indent = MARK_MM + 1 if lead.dangerous or lead.listed else 0
        set_block(self._sheet, remark, left + indent, y)

    def _set_figures(self, figures: tuple[LeadFigure, ...], x: float, y: float) -> None:
        wide, high = FIGURE_MM
        for figure in figures:
            source = drawing_source(figure.file)
            self._sheet.image(
                source, x=x, y=y, w=wide, h=high, keep_aspect_ratio=True, alt_text=figure.words
            )
            x += wide + GAP_MM


def _content(lead: PrintedLead, language: Language, names: tuple[str, ...]) -> tuple[Piece, ...]:
    statement = pieces(names, lead.statement)
    end = end_words(lead, language)
    if not end:
        return (*statement, (":", ""))
    return (*statement, (" … ", ""), *pieces(names, end, bold=True))
