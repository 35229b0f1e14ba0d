"""Sentences of the layers below, said in another language.

Readers of files, the record book and the photo tool say in English what is wrong and what to do.
A catalogue knows these sentences, with a brace for what varies; one it does not know stays as
it is. `tests/report/test_told.py` reads those layers and names a sentence that is not in it.
"""

import re
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from typing import Any

import yaml

from idkey.report.language import Language

_BRACE = re.compile(r"\{(\w+)\}")
_QUOTED = re.compile(r"'\{(\w+)\}'")
_DEEP = 4
"""How often a piece of a sentence is looked up again."""


@dataclass(frozen=True, slots=True)
class _Sentence:
    """A sentence with what varies in it.

    Attributes:
        fixed: Its longest fixed words: what lacks them is another sentence.
        pattern: What it matches.
        said: The same in the other language.
        quoted: What stands in quotes: words of a file, which stay as they are.
    """

    fixed: str
    pattern: re.Pattern[str]
    said: str
    quoted: frozenset[str]


@dataclass(frozen=True, slots=True)
class _Catalogue:
    """All sentences: those in which nothing varies, and the others, the most telling first."""

    plain: dict[str, str]
    varied: tuple[_Sentence, ...]


@lru_cache(maxsize=4096)
def told(text: str, language: Language) -> str:
    """What a lower layer said, in that language; line by line where it is not known whole.

    Args:
        text: A problem, a remedy or a remark.
        language: The language; English leaves the text alone.
    """
    if language.code == "en" or not text:
        return text
    return _said(text, _catalogue(language.code), _DEEP)


def _said(text: str, catalogue: _Catalogue, deep: int) -> str:
    plain = catalogue.plain.get(text)
    if plain is not None:
        return plain
    for one in catalogue.varied:
        found = one.pattern.fullmatch(text) if one.fixed in text else None
        if found is not None:
            parts = found.groupdict()
            if deep:
                parts |= {
                    name: _said(part, catalogue, deep - 1)
                    for name, part in parts.items()
                    if name not in one.quoted
                }
            return "".join(
                parts[piece] if number % 2 else piece
                for number, piece in enumerate(_BRACE.split(one.said))
            )
    if "\n" in text:
        return "\n".join(_said(line, catalogue, deep) for line in text.split("\n"))
    return text


_Loader: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)  # ten times as quick, where it is


@lru_cache
def _catalogue(code: str) -> _Catalogue:
    text = (files("idkey.report") / "phrases" / f"told_{code}.yaml").read_text(encoding="utf-8")
    all_of_them: dict[str, str] = yaml.load(text, _Loader)  # noqa: S506 - both loaders are safe
    plain = {one: said for one, said in all_of_them.items() if not _BRACE.search(one)}
    varied = sorted(all_of_them.keys() - plain.keys(), key=_telling, reverse=True)
    return _Catalogue(plain, tuple(_sentence(one, all_of_them[one]) for one in varied))


def _telling(template: str) -> tuple[int, str]:
    return len(_BRACE.sub("", template)), template


def _sentence(template: str, said: str) -> _Sentence:
    pieces = _BRACE.split(template)
    pattern = "".join(
        f"(?P<{piece}>.*?)" if number % 2 else re.escape(piece)
        for number, piece in enumerate(pieces)
    )
    quoted = frozenset(_QUOTED.findall(template))
    return _Sentence(max(pieces[::2], key=len), re.compile(pattern, re.DOTALL), said, quoted)
