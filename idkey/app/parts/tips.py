"""Tool tips that show what a key or a person wrote, and obey none of it."""

from html import escape

_WRAPS = 60
"""Longest text, in signs, that stays on one line."""


def tip(text: str) -> str:
    """A plain text as a tool tip: Qt would obey markup in it, and would not break it into lines."""
    if len(text) <= _WRAPS and not {"<", "&"} & set(text):
        return text
    return f"<p>{'<br>'.join(map(escape, text.splitlines()))}</p>" if text else ""


def plain_button(text: str) -> str:
    """A plain text for a button, on which Qt would take ``&`` for the mark of a shortcut."""
    return text.replace("&", "&&")
