"""Pieces of a page of text, as HTML; what goes in is HTML already unless it says plain."""

from collections.abc import Iterable
from html import escape


def head(plain: str) -> str:
    """A heading."""
    return rich_head(escape(plain))


def rich_head(html: str) -> str:
    """A heading with markup in it."""
    return f'<p class="head">{html}</p>'


def bullets(lines: Iterable[str]) -> str:
    """A list; empty when there are no lines."""
    items = "".join(f"<li>{line}</li>" for line in lines)
    return f"<ul>{items}</ul>" if items else ""


def toned(tone: str, html: str) -> str:
    """A span in the colour of ``"hazard"``, ``"permit"``, ``"doubt"`` or ``"soft"``."""
    return f'<span class="{tone}">{html}</span>'


def paragraph(html: str, tone: str = "") -> str:
    """A paragraph."""
    return f'<p class="{tone}">{html}</p>' if tone else f"<p>{html}</p>"


def link(kind: str, name: str, html: str) -> str:
    """A link that a sheet reports as (kind, name)."""
    return f'<a href="{kind}:{escape(name)}">{html}</a>'
