"""A printed key as one HTML page, with links between couplets."""

from html import escape
from itertools import chain

from idkey.model.key import Key
from idkey.report.language import ENGLISH, Language
from idkey.report.names import rich
from idkey.report.printed_figures import (
    Drawings,
    LeadFigure,
    figure_html,
    lead_figures,
    picture_credits,
)
from idkey.report.printed_key import (
    Layout,
    PrintedLead,
    end_words,
    mark_words,
    number_words,
    printed_key,
)

_STYLE = """
:root { color-scheme: light dark; }
body { font: 1rem/1.45 "Idkey Sans", sans-serif; max-width: 46rem; margin: 2rem auto;
  padding: 0 1rem; }
.lead { display: grid; grid-template-columns: 4rem 1fr; gap: .5rem; padding: .2rem 0; }
.first { border-top: 1px solid #9a9da3; margin-top: .6rem; padding-top: .6rem; }
.note, .remark { font-size: .85rem; opacity: .8; }
.figures { display: flex; gap: .5rem; margin-top: .3rem; }
.figures img { width: 7rem; background: #fff; border-radius: .3rem; padding: .2rem; }
.end { font-weight: bold; }
.mark { font-weight: bold; }
@media print { body { margin: 0; } .lead { break-inside: avoid; } }
"""


def printed_html(
    key: Key,
    layout: Layout = Layout.BRACKETED,
    language: Language = ENGLISH,
    *,
    drawings: Drawings | None = None,
) -> str:
    """The key as an HTML page that needs nothing else; every text in it is escaped.

    Args:
        key: The key.
        layout: How couplets stand on the page.
        language: Language of the fixed words.
        drawings: Where the drawings are; None leaves them out.
    """
    title = escape(f"{key.title}, {language.say('version {n}', n=key.version)}")
    printed = printed_key(key, layout)
    drawn = [lead_figures(key, lead, drawings) for lead in printed]
    leads = "\n".join(
        _lead(key, lead, layout, language, drawn=figures)
        for lead, figures in zip(printed, drawn, strict=True)
    )
    made_by = "; ".join(picture_credits(chain.from_iterable(drawn)))
    made_by = f"<p>{escape(language.say('Pictures'))}: {escape(made_by)}.</p>" if made_by else ""
    cautions = "\n".join(f"<p>{rich(key, caution)}</p>" for caution in key.cautions)
    return f"""<!DOCTYPE html>
<html lang="{escape(language.code)}">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>{title}</title><style>{_STYLE}</style></head>
<body><h1>{title}</h1>
<p>{rich(key, key.scope)}</p>
{cautions}
<main>
{leads}
</main>
{made_by}</body></html>
"""


def _lead(
    key: Key,
    lead: PrintedLead,
    layout: Layout,
    language: Language,
    *,
    drawn: tuple[LeadFigure, ...],
) -> str:
    first = lead.first
    number = number_words(lead, layout)
    anchor = f' id="c{escape(lead.couplet)}"' if first else ""
    shift = f' style="margin-left: {min(lead.depth, 12) * 1.2:g}rem"' if lead.depth else ""
    note = f'<div class="note">{rich(key, lead.note)}</div>' if lead.note else ""
    remark = f'<div class="remark">{rich(key, lead.remark)}</div>' if lead.remark else ""
    kind = "lead first" if first else "lead"
    figures = f'<div class="figures">{"".join(map(figure_html, drawn))}</div>' if drawn else ""
    return (
        f'<div class="{kind}"{anchor}{shift}><div>{escape(number)}</div>'
        f"<div>{note}{rich(key, lead.statement)}{_end(key, lead, language)}{remark}"
        f"{figures}</div></div>"
    )


def _end(key: Key, lead: PrintedLead, language: Language) -> str:
    if lead.to:
        return f' … <a class="end" href="#c{escape(lead.to)}">{escape(lead.to)}</a>'
    if not lead.ends:
        return ":"
    marks = mark_words(lead, language)
    sign = "⚠ " if lead.dangerous else ""
    words = f' <span class="mark">{sign}{escape(marks)}</span>' if sign or marks else ""
    return f' … <span class="end">{rich(key, end_words(lead, language))}</span>{words}'
