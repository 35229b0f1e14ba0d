"""What is typed into a field, read as a value, and a value as the text of its field."""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from math import isfinite
from typing import Any, ParamSpec, TypeVar
from weakref import WeakMethod

from PySide6.QtCore import QCoreApplication

from idkey.app.workshop.couplet_signs import packed, unpacked
from idkey.app.workshop.forms_entries import is_id
from idkey.formats.plain import number
from idkey.model.key import Key

translate = QCoreApplication.translate


P = ParamSpec("P")
T = TypeVar("T")


def weakly(method: Callable[P, T], otherwise: T) -> Callable[P, T]:
    """A method that a part may hold without holding its owner.

    A widget held by its own parts is let go of by the garbage collector only, and that may
    bring down the program.

    Args:
        method: A bound method.
        otherwise: What is returned once the owner is gone.
    """
    held = WeakMethod(method)

    def called(*args: P.args, **kwargs: P.kwargs) -> T:
        found = held()
        return otherwise if found is None else found(*args, **kwargs)

    return called


class UnreadError(Exception):
    """What was typed cannot be read; its text says why and what to do."""


@dataclass(frozen=True, slots=True)
class Reading:
    """How a field is read and written.

    Attributes:
        value: The value of a text; raises UnreadError.
        text: The text of a value; reading it gives the value again.
        long: Whether the text may have several lines.
    """

    value: Callable[[str], Any]
    text: Callable[[Any], str]
    long: bool = False


WORDS = Reading(str, str)
"""A text on one line."""

PROSE = Reading(str, str, long=True)
"""A text of any length."""


def _lines(text: str) -> tuple[str, ...]:
    return tuple(found for line in text.split("\n") if (found := unpacked(line)))


def _lines_text(words: Iterable[str]) -> str:
    return "\n".join(packed(one) for one in words)


LINES = Reading(_lines, _lines_text, long=True)
"""Several texts, one a line."""


def _number(text: str) -> float:
    try:
        value = float(text.strip().replace(",", "."))
    except ValueError:
        problem = translate("forms", "“{text}” is no number. Write digits, such as 12.5.")
        raise UnreadError(problem.format(text=text.strip())) from None
    if not isfinite(value):
        raise UnreadError(translate("forms", "Write digits, or leave it empty."))
    return value


def number_text(value: float | None) -> str:
    """A number as it is typed; empty for None."""
    return "" if value is None else repr(number(value))


def number_reading(
    fits: Callable[[float], bool], words: str, *, empty: float | None = None
) -> Reading:
    """A number, or nothing.

    Args:
        fits: Whether it may have that value.
        words: What it must be, as a sentence.
        empty: What an empty text stands for.
    """

    def value(text: str) -> float | None:
        if not text.strip():
            return empty
        found = _number(text)
        if not fits(found):
            raise UnreadError(words)
        return found

    return Reading(value, number_text)


def _bound(text: str) -> tuple[float | None]:
    return (_number(text) if text.strip() else None,)


BOUND = Reading(_bound, lambda bound: number_text(bound[0]))
"""An end of a range, as a tuple of one; None in it is an open end."""

_BETWEEN = re.compile(r"\s*(?:\.\.|–|—|(?<=\d)\s*-|\bto\b|\bbis\b)\s*")


def _size(text: str) -> tuple[float | None, float | None]:
    if not text.strip():
        return None, None
    parts = _BETWEEN.split(text.strip().removesuffix("mm").strip())
    if len(parts) > 2:
        raise UnreadError(translate("forms", "Write it as 120 – 220."))
    ends = [_number(part) if part.strip() else None for part in parts]
    low, high = ends[0], ends[-1]
    if low is not None and high is not None and low > high:
        raise UnreadError(translate("forms", "The smaller number comes first."))
    return low, high


def _size_text(size: tuple[float | None, float | None]) -> str:
    if size == (None, None):
        return ""
    return f"{number_text(size[0])} – {number_text(size[1])}"


SIZE = Reading(_size, _size_text)
"""Smallest and largest, either may be missing."""


def _colours(text: str) -> tuple[str, ...]:
    found = tuple(filter(None, re.split(r"[\s,;]+", text)))
    for one in found:
        if not re.fullmatch(r"#[0-9A-Fa-f]{6}", one):
            problem = translate("forms", "“{text}” is no colour. Write it as #rrggbb.")
            raise UnreadError(problem.format(text=one))
    return found


COLOURS = Reading(_colours, " ".join)
"""Colours as #rrggbb."""


def id_reading(own: Callable[[], str], taken: Callable[[], Iterable[str]]) -> Reading:
    """An id that nobody else has.

    Args:
        own: Not used while it stays what it is.
        taken: Ids in use.
    """

    def value(text: str) -> str:
        name = text.strip()
        if not is_id(name):
            problem = translate(
                "forms", "“{text}” is no id. Use letters, digits, '_', '-' and '.', and no blanks."
            )
            raise UnreadError(problem.format(text=name))
        if name != own() and name in taken():
            problem = translate("forms", "“{text}” is taken. Choose another id.")
            raise UnreadError(problem.format(text=name))
        return name

    return Reading(value, str)


def _glossary(text: str) -> Mapping[str, str]:
    found = {}
    for line in text.split("\n"):
        if not line.strip():
            continue
        term, colon, explained = line.partition(": ")
        name = unpacked(term.removesuffix(":") if not colon else term)
        if not colon and not line.rstrip().endswith(":"):
            problem = translate("forms", "“{text}” explains nothing. Write term: explanation.")
            raise UnreadError(problem.format(text=line.strip()))
        if name in found:
            problem = translate("forms", "“{text}” is explained twice. Keep one.")
            raise UnreadError(problem.format(text=name))
        found[name] = unpacked(explained)
    return found


_COLON = "\\c"


def _glossary_text(glossary: Mapping[str, str]) -> str:
    lines = []
    for term, explained in glossary.items():
        lines.append(f"{packed(term).replace(':', _COLON)}: {packed(explained)}")
    return "\n".join(lines)


GLOSSARY = Reading(_glossary, _glossary_text, long=True)
"""Terms and what they mean, as ``term: explanation``, one a line."""


def shares_reading(key: Callable[[], Key]) -> Reading:
    """Shares by taxon, as ``Pandinus imperator 0.6``, one a line.

    Args:
        key: The key as it is now.
    """

    def value(text: str) -> Mapping[str, float]:
        names = {taxon.name: taxon.id for taxon in key().taxa}
        found: dict[str, float] = {}
        for line in filter(str.strip, text.split("\n")):
            name, _, share = line.strip().rpartition(" ")
            taxon = name.strip() if name.strip() in key().taxon else names.get(name.strip(), "")
            if not taxon:
                problem = translate("forms", "“{text}” names no taxon of this key.")
                raise UnreadError(problem.format(text=line.strip()))
            found[taxon] = _number(share.removesuffix("%")) / (100 if share[-1:] == "%" else 1)
            if not 0 < found[taxon] <= 1:
                raise UnreadError(translate("forms", "A share lies above 0 and is at most 1."))
        return found

    def text(shares: Mapping[str, float]) -> str:
        named = key().taxon
        count = [one.name for one in key().taxa]

        def words(taxon: str) -> str:
            name = named[taxon].name if taxon in named else ""
            return name if count.count(name) == 1 else taxon

        return "\n".join(f"{words(taxon)} {number_text(s)}" for taxon, s in shares.items())

    return Reading(value, text, long=True)
