"""A printed key as a page for the screen: as it will stand on paper, in the colours here."""

from collections.abc import Callable
from html import escape

from PySide6.QtCore import Qt

from idkey.model.key import Key
from idkey.report.language import Language
from idkey.report.names import rich
from idkey.report.printed_key import (
    Layout,
    PrintedLead,
    end_words,
    mark_words,
    number_words,
    printed_key,
)

Figures = Callable[[PrintedLead], str]
"""HTML of the drawings of a lead; empty for none."""

_FLAG = Qt.TextInteractionFlag
READING = (
    _FLAG.TextSelectableByMouse | _FLAG.TextSelectableByKeyboard | _FLAG.LinksAccessibleByMouse
)
"""How such a page is read: Tab leaves it, instead of going through a hundred links."""

STEP = 18
"""Indent of a step, in pixels at 100 %."""

DEEPEST = 14


def preview_html(
    key: Key,
    layout: Layout,
    language: Language,
    *,
    px: Callable[[float], int],
    figures: Figures = lambda _: "",
) -> str:
    """The couplets of a key as a table that a text browser shows; every text is escaped."""
    rows = "".join(
        _row(key, lead, layout, language, px=px, figures=figures)
        for lead in printed_key(key, layout)
    )
    return f'<table width="100%" cellspacing="0" cellpadding="0">{rows}</table>'


def _row(
    key: Key,
    lead: PrintedLead,
    layout: Layout,
    language: Language,
    *,
    px: Callable[[float], int],
    figures: Figures,
) -> str:
    bracketed = layout is Layout.BRACKETED
    gap = px(10) if bracketed and lead.first else px(3)
    shift = px(STEP) * min(lead.depth, DEEPEST)
    note = f'<span class="soft">{rich(key, lead.note)}</span><br>' if lead.note else ""
    remark = f'<br><span class="soft">{rich(key, lead.remark)}</span>' if lead.remark else ""
    anchor = f'<a name="c{escape(lead.couplet)}"></a>' if lead.first else ""
    number = f"{anchor}<b>{escape(number_words(lead, layout))}</b>"
    said = f"{note}{rich(key, lead.statement)}{_end(key, lead, language)}{remark}{figures(lead)}"
    if bracketed:
        cells = (
            f'<td width="{px(58)}" style="padding-top: {gap}px">{number}</td>'
            f'<td style="padding-top: {gap}px">{said}</td>'
        )
        return f"<tr>{cells}</tr>"
    return (
        f'<tr><td style="padding-top: {gap}px; padding-left: {shift}px">'
        f"{number}&ensp;{said}</td></tr>"
    )


def _end(key: Key, lead: PrintedLead, language: Language) -> str:
    if lead.to:
        return f' … <b><a href="couplet:{escape(lead.to)}">{escape(lead.to)}</a></b>'
    if not lead.ends:
        return ":"
    marks = mark_words(lead, language)
    kind = "hazard" if lead.dangerous else "permit"
    words = f' <span class="{kind}">({escape(marks)})</span>' if marks else ""
    sign = '<span class="hazard">⚠</span> ' if lead.dangerous else ""
    return f" … {sign}<b>{rich(key, end_words(lead, language))}</b>{words}"
