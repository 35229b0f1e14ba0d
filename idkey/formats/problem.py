"""Mistakes in key files: where, what is wrong, how to mend it."""

import difflib
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

from idkey.errors import IdKeyError

_SHOWN = 20
_LISTED = 8


class Severity(StrEnum):
    """How much a mistake weighs."""

    ERROR = "error"
    WARNING = "warning"


@dataclass(frozen=True, slots=True, kw_only=True)
class Problem:
    """One mistake at a known place.

    Attributes:
        file: The file, as a path below the folder the caller gave.
        line: Line, counted from 1 as editors do.
        column: Column in characters, counted from 1.
        problem: What is wrong, as a sentence.
        remedy: What to do about it, as a sentence.
        severity: An error keeps the key from being used; a warning does not.
        loc: The way to it inside the file: names of fields and indices of lists.
    """

    file: Path
    line: int
    column: int
    problem: str
    remedy: str
    severity: Severity = Severity.ERROR
    loc: tuple[str | int, ...] = ()

    @property
    def place(self) -> str:
        """``file:line:column``."""
        return f"{self.file}:{self.line}:{self.column}"

    def __str__(self) -> str:
        return f"{self.place}: {self.problem} {self.remedy}".rstrip()


class KeyProblems(IdKeyError):  # noqa: N818 - it holds many errors and is named for them
    """A key cannot be used as it stands.

    Attributes:
        problems: Every mistake found, warnings included, in the order of files and lines.
    """

    def __init__(self, name: str, problems: Sequence[Problem]) -> None:
        errors = [p for p in problems if p.severity is Severity.ERROR]
        lines = [str(p) for p in errors[:_SHOWN]]
        if len(errors) > _SHOWN:
            lines.append(f"… and {len(errors) - _SHOWN} more.")
        count = "a mistake" if len(errors) == 1 else f"{len(errors)} mistakes"
        super().__init__(
            "\n".join([f"The key {name} has {count}:", *lines]),
            "Mend the lines named above and open the key again.",
        )
        self.problems = tuple(problems)


def hint(word: str, known: Collection[str], otherwise: str = "") -> str:
    """A remedy for a word that is not known: the near one, or those there are.

    Args:
        word: What was written.
        known: What may be written.
        otherwise: The remedy when nothing is near and the list would be long.
    """
    near = difflib.get_close_matches(word, known, n=1, cutoff=0.6)
    if near:
        return f"Did you mean '{near[0]}'?"
    if known and (len(known) <= _LISTED or not otherwise):
        return f"Known: {', '.join(known)}."
    return otherwise or "There is nothing to choose from yet."
