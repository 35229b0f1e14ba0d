"""Markdown pieces for pages about a key: escaped text, names in italics, tables."""

import re
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache

from idkey.model.key import Key
from idkey.report.names import character_name, name_of, runs, scientific_names

_MARKS = re.compile(r"([\\|*_<>\[\]`])")


def escaped(text: str) -> str:
    """The text on one line, its signs without a meaning in Markdown."""
    return _MARKS.sub(r"\\\1", " ".join(text.split()))


def in_italics(key: Key, text: str) -> str:
    """The text, escaped, with the scientific names of the key in italics."""
    pieces = runs(_upright_dropped(key), " ".join(text.split()))
    return "".join(f"*{p}*" if italic else _MARKS.sub(r"\\\1", p) for p, italic in pieces)


@lru_cache(maxsize=8)
def _upright_dropped(key: Key) -> tuple[str, ...]:
    """Names of the key without what stands upright in parentheses behind them."""
    return tuple(dict.fromkeys(name.partition(" (")[0] for name in scientific_names(key)))


def taxon_names(key: Key, taxa: Iterable[str]) -> str:
    """Accepted names of taxon ids in italics, with commas."""
    return ", ".join(in_italics(key, name_of(key, taxon)) for taxon in taxa)


def character_names(key: Key, characters: Iterable[str]) -> str:
    """Names of character ids, with semicolons."""
    return "; ".join(escaped(character_name(key, one)) for one in characters)


def amount(number: int, one: str, many: str) -> str:
    """The number with its noun, such as ``"1 pair"`` or ``"no pairs"``."""
    return f"{number or 'no'} {one if number == 1 else many}"


def table(heads: Sequence[str], rows: Iterable[Sequence[object]]) -> Iterator[str]:
    """The lines of a table and a blank one; "None." where there are no rows.

    Args:
        heads: Titles of the columns.
        rows: One cell per column; what is empty becomes a dash.
    """
    held = [f"| {' | '.join(str(cell) or '–' for cell in row)} |" for row in rows]
    if held:
        yield f"| {' | '.join(heads)} |"
        yield f"|{' --- |' * len(heads)}"
        yield from held
    else:
        yield "None."
    yield ""
