"""The top of a rationale: name, verdict, the label, cautions."""

from idkey.engine.result import Stake
from idkey.report.language import Language
from idkey.report.notes import Notice
from idkey.report.paper.marks import shop_tag, square_code, stake_mark, verdict_mark
from idkey.report.paper.prose import Type, broken, pieces, set_block
from idkey.report.paper.sheet import (
    HAZARD,
    HAZARD_WASH,
    PERMIT,
    PERMIT_WASH,
    SOFT,
    Sheet,
)
from idkey.report.reasons import Rationale
from idkey.report.terms import level_words, sex_words, stage_words

CODE_MM = 25.0
TAG_MM = 84.0


def front(sheet: Sheet, found: Rationale, language: Language, code: str) -> None:
    """Everything above the first section.

    Args:
        sheet: An empty first page.
        found: The rationale.
        language: Its language.
        code: Text of the square code.
    """
    left, top = sheet.margins.left, sheet.margins.top
    square_code(sheet, code, sheet.w - sheet.margins.right - CODE_MM, top - 1, CODE_MM)
    width = sheet.width - CODE_MM - 5
    day = language.day(found.at)
    over = language.say("Identification rationale").upper() + (f"   {day}" if day else "")
    y = _put(sheet, over, Type(size=7.5, colour=SOFT, bold=True), (left, top, width))
    y = _name(sheet, found, language, (left, y + 1.2, width))
    verdict_mark(sheet, found.kind, left, y + 1.6, 5.4)
    kind = Type(size=13, bold=True)
    y = _put(sheet, found.title, kind, (left + 7.4, y + 1.2, width), heading=True)
    lead = broken(sheet, pieces(found.italic, found.sentence), width, Type(size=10, leading=1.36))
    y = set_block(sheet, lead, left, y + 1.0)
    sheet.set_y(max(y, top + CODE_MM) + 2.6)
    _label(sheet, found, language)
    for notice in found.notices:
        _notice(sheet, found, notice)
    if found.thumbs:  # the rest of it stands with the evidence
        _thumb(sheet, found)


def _thumb(sheet: Sheet, found: Rationale) -> None:
    """That the verdict, or a caution, hangs on a rule of thumb."""
    block = broken(sheet, pieces(found.italic, found.thumbs[0]), sheet.width, Type(size=9))
    sheet.room(block.height + 1.6)
    sheet.set_y(set_block(sheet, block, sheet.margins.left, sheet.get_y()) + 1.6)


def _put(
    sheet: Sheet,
    text: str,
    kind: Type,
    at: tuple[float, float, float],
    *,
    heading: bool = False,
) -> float:
    """Set a text at (x, y, width); returns the y below it."""
    block = broken(sheet, ((text, ""),), at[2], kind)
    return set_block(sheet, block, at[0], at[1], "/H1" if heading else "/P")


def _name(
    sheet: Sheet, found: Rationale, language: Language, at: tuple[float, float, float]
) -> float:
    heading = found.heading[:1].upper() + found.heading[1:]  # it begins the page
    size = 21 if len(heading) < 34 else 15
    kind = Type(size=size, leading=1.18)
    block = broken(sheet, pieces(found.italic, heading), at[2], kind)
    y = set_block(sheet, block, at[0], at[1], "/H1")
    level = language.say("Name: {level}", level=level_words(found.level, language))
    below = "  ·  ".join(part for part in (found.authority, found.vernacular, level) if part)
    return _put(sheet, below, Type(size=9, colour=SOFT), (at[0], y, at[2]))


def _label(sheet: Sheet, found: Rationale, language: Language) -> None:
    """The claim as a shop tag, and beside it what is known of the animal and the record."""
    x, y = sheet.margins.left, sheet.get_y()
    claim = found.case.claim
    text = claim.text.strip() or language.say("No label")
    head = broken(
        sheet,
        ((language.say("The label, word for word").upper(), ""),),
        TAG_MM - 12,
        Type(size=6.5, colour=SOFT, bold=True),
    )
    said = broken(sheet, ((text, "B"),), TAG_MM - 12, Type(size=12, leading=1.25))
    facts = _facts(found, language)
    rows = Type(size=8, leading=1.42)
    height = max(head.height + said.height + 5, 20.0, len(facts) * rows.line_mm)
    if height > 90:
        said, height = broken(sheet, ((text, "B"),), TAG_MM - 12, Type(size=7)), 90.0
    shop_tag(sheet, x, y, TAG_MM, height)
    below = set_block(sheet, head, x + 8, y + 2)
    set_block(sheet, said, x + 8, below + 0.8)
    _set_facts(sheet, facts, rows, y)
    sheet.set_y(y + height + 3)


def _set_facts(sheet: Sheet, facts: list[tuple[str, str]], kind: Type, y: float) -> None:
    x = sheet.margins.left + TAG_MM + 6
    width = sheet.w - sheet.margins.right - x
    for name, value in facts:
        _put(sheet, name, Type(size=8, leading=1.42, colour=SOFT), (x, y, 30))
        block = broken(sheet, ((value, ""),), width - 30, kind)
        set_block(sheet, block, x + 30, y)
        y += max(1, len(block.lines)) * kind.line_mm


def _facts(found: Rationale, language: Language) -> list[tuple[str, str]]:
    say, claim, animal = language.say, found.case.claim, found.case.specimen
    sale, record = found.sale, found.revision
    facts = [
        (say("Supplier"), claim.supplier),
        (say("Arrived"), language.day(claim.date)),
        (say("Label says"), ", ".join(x for x in (claim.sex, claim.size, claim.origin) if x)),
        (
            say("The animal"),
            ", ".join(
                words
                for words in (
                    sex_words(animal.sex, language) if animal.sex else "",
                    stage_words(animal.stage, language) if animal.stage else "",
                )
                if words
            ),
        ),
        (say("Danger"), found.hazard),
        (say("Papers"), found.permit),
        (say("Determined by"), found.by),
        (say("Sale"), ", ".join((sale.number, language.day(sale.date))) if sale else ""),
        (say("Record"), say("revision {n}", n=record.number) if record else ""),
        (say("Case"), found.case.id),
    ]
    return [(name, value.strip(", ")) for name, value in facts if value.strip(", ")]


def _notice(sheet: Sheet, found: Rationale, notice: Notice) -> None:
    hazard = notice.stake is Stake.HAZARD
    sentence = f"{notice.sentence} {found.cited(notice.sources)}".rstrip()
    colour, wash = (HAZARD, HAZARD_WASH) if hazard else (PERMIT, PERMIT_WASH)
    kind = Type(size=9, colour=colour, bold=True)
    block = broken(sheet, pieces(found.italic, sentence), sheet.width - 16, kind)
    height = max(block.height, 6.0) + 3.2
    sheet.room(height + 1.6)
    x, y = sheet.margins.left, sheet.get_y()
    with sheet.tagged("/Artifact"):
        sheet.set_fill_color(*wash)
        sheet.set_draw_color(*colour)
        sheet.set_line_width(0.3)
        sheet.rect(x, y, sheet.width, height, style="DF")
    stake_mark(sheet, notice.stake, x + 3, y + (height - 6) / 2, 6)
    set_block(sheet, block, x + 12.5, y + (height - block.height) / 2)
    sheet.set_y(y + height + 1.6)
