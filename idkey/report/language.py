"""The languages sentences are written in: English in the code, others from one catalogue each."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from functools import lru_cache
from importlib.resources import files
from math import floor

import yaml

from idkey.model.case import Case

NAMING = 0.99
"""Share that must not be shown before it is reached; see `Language.share`."""

NEARLY = 0.985
"""Shares from here to `NAMING` would round to it."""

NAMES = {"en": "English", "de": "Deutsch"}
"""What each language calls itself, the one of the code first."""

CODES = tuple(NAMES)
"""Languages there are."""


def phrase(english: str) -> str:
    """The same text; marks a sentence that is said later, so that it is found for translation."""
    return english


_MONTHS = (
    phrase("January"),
    phrase("February"),
    phrase("March"),
    phrase("April"),
    phrase("May"),
    phrase("June"),
    phrase("July"),
    phrase("August"),
    phrase("September"),
    phrase("October"),
    phrase("November"),
    phrase("December"),
)


@dataclass(frozen=True, slots=True)
class Language:
    """A language to speak.

    Attributes:
        code: ISO 639-1 code.
        decimal: Decimal sign.
        phrases: English sentence, with its ``{placeholders}``, to this language; a sentence
            that is missing is said in English.
    """

    code: str
    decimal: str = "."
    phrases: Mapping[str, str] = field(default_factory=dict)

    def __hash__(self) -> int:
        return hash(self.code)

    def say(self, english: str, **parts: object) -> str:
        """The sentence in this language, its placeholders filled."""
        return self.phrases.get(english, english).format(**parts)

    def count(self, number: int, one: str, many: str, **parts: object) -> str:
        """`one` for the number 1, else `many`; both may use ``{n}``."""
        return self.say(one if number == 1 else many, n=number, **parts)

    def join(self, items: Sequence[str], last: str = "and") -> str:
        """The items with commas, and `last` (``"and"`` or ``"or"``) before the last one."""
        if len(items) < 2:
            return "".join(items)
        return f"{', '.join(items[:-1])} {self.say(last)} {items[-1]}"

    def quote(self, text: str) -> str:
        """The text in the quotation marks of this language."""
        return f"„{text}“" if self.code == "de" else f"“{text}”"

    def number(self, value: float) -> str:
        """A number with at most six digits that count."""
        return f"{value:.6g}".replace(".", self.decimal)

    def share(self, value: float) -> str:
        """A share in whole per cent, without claiming 0, 99 or 100 where it is less or more.

        99 % is what a name needs, so a share short of it is cut and not rounded.
        """
        if 0 < value < 0.005:
            return "<1 %"
        if NEARLY <= value < NAMING:
            return f"{self.number(floor(value * 1000) / 10)} %"
        if 0.995 <= value < 1:
            return ">99 %"
        return f"{value * 100:.0f} %"

    def day(self, iso: str) -> str:
        """A date in words from ISO 8601; what is no such date comes back as it is."""
        try:
            day = datetime.fromisoformat(iso)
        except ValueError:
            return iso
        month = self.say(_MONTHS[day.month - 1])
        return f"{day.day}{'.' if self.code == 'de' else ''} {month} {day.year}"


ENGLISH = Language("en")


def language_of(case: Case, otherwise: str) -> str:
    """Code of the language a case was signed in; `otherwise` when there is none we speak."""
    return case.language if case.language in CODES else otherwise


@lru_cache
def in_language(code: str) -> Language:
    """The language with that code.

    Args:
        code: One of `CODES`, or a locale such as ``"de_AT"``.

    Raises:
        ValueError: There is no catalogue for it.
    """
    short = code.replace("-", "_").partition("_")[0].lower()
    if short == "en":
        return ENGLISH
    if short not in CODES:
        raise ValueError(f"no sentences in {code!r}; there are {', '.join(CODES)}")
    text = (files("idkey.report") / "phrases" / f"{short}.yaml").read_text(encoding="utf-8")
    return Language(short, ",", yaml.safe_load(text))
