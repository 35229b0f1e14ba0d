"""Diagnoses and descriptions of taxa as one text or one page, to be handed on."""

from collections.abc import Iterator, Sequence
from html import escape

from idkey.engine.matrix import Matrix
from idkey.model.key import Key
from idkey.report.descriptions import (
    Description,
    description,
    description_text,
    diagnosis_sentence,
    part_title,
)
from idkey.report.language import ENGLISH, Language
from idkey.report.names import rich, rich_text, scientific_names

_STYLE = """
:root { color-scheme: light dark; }
body { font: 1rem/1.45 "Idkey Sans", sans-serif; max-width: 46rem; margin: 2rem auto;
  padding: 0 1rem; }
.sources { font-size: .8rem; opacity: .75; }
@media print { body { margin: 0; } section { break-inside: avoid-page; } }
"""


def taxa_text(
    matrix: Matrix,
    taxa: Sequence[str],
    language: Language = ENGLISH,
    *,
    margin: int = 1,
    described: bool = True,
) -> str:
    """Diagnoses, with descriptions or without, as plain text.

    Args:
        matrix: The compiled key.
        taxa: Taxon ids, in the order wanted.
        language: Language to speak.
        margin: Characters wanted against each rival.
        described: Whether a description follows each diagnosis.
    """
    blocks = []
    for taxon in taxa:
        block = diagnosis_sentence(matrix, taxon, language, margin=margin)
        if described:
            block = f"{block}\n\n{description_text(matrix.key, taxon, language)}"
        blocks.append(block.rstrip())
    return "\n\n".join(blocks) + "\n"


def taxon_html(
    matrix: Matrix,
    taxon: str,
    language: Language = ENGLISH,
    *,
    margin: int = 1,
    described: bool = True,
) -> str:
    """One taxon as a piece of a page; every text in it is escaped."""
    key = matrix.key
    found = description(key, taxon, language)
    name = rich(key, found.name)
    told = diagnosis_sentence(matrix, taxon, language, margin=margin)
    parts = [f"<h2>{name}</h2>", f"<p>{rich(key, told)}</p>"]
    if described:
        parts += _described(key, found, language)
    return f"<section>{''.join(parts)}</section>"


def _described(key: Key, found: Description, language: Language) -> Iterator[str]:
    names = scientific_names(key)
    yield f"<p>{rich_text(names, ' '.join(found.head))}</p>"
    for part in found.parts:
        said = "; ".join(
            rich_text(names, one.text)
            + (
                f' <span class="sources">[{escape(", ".join(one.sources))}]</span>'
                if one.sources
                else ""
            )
            for one in part.statements
        )
        yield f"<p><b>{escape(part_title(part, language))}.</b> {said}.</p>"
    if found.unscored:
        text = language.say("Nothing scored: {names}.", names="; ".join(found.unscored))
        yield f'<p class="sources">{escape(text)}</p>'


def taxa_page(
    matrix: Matrix,
    taxa: Sequence[str],
    language: Language = ENGLISH,
    *,
    margin: int = 1,
    described: bool = True,
) -> str:
    """Several taxa as an HTML page that needs nothing else."""
    key = matrix.key
    title = escape(f"{key.title}, {language.say('version {n}', n=key.version)}")
    body = "\n".join(
        taxon_html(matrix, taxon, language, margin=margin, described=described) for taxon in taxa
    )
    return f"""<!DOCTYPE html>
<html lang="{escape(language.code)}">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>{title}</title><style>{_STYLE}</style></head>
<body><h1>{title}</h1>
<main>
{body}
</main></body></html>
"""
