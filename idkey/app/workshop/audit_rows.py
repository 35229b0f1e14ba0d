"""Mistakes and weaknesses of a key as rows: one list, searchable, with place and mend."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QCoreApplication

from idkey.app.parts.worded import worded
from idkey.app.workshop.editing import Editing
from idkey.engine.audit import Remark, Weakness
from idkey.formats.problem import Problem, Severity
from idkey.model.key import Key
from idkey.report.language import Language
from idkey.report.remarks import remark_words, weakness_title

translate = QCoreApplication.translate


MOST = 1000
"""Rows of each sort; nobody reads more, and the rest come up as these are mended."""


class Weight(StrEnum):
    """How much a row weighs."""

    ERROR = "error"
    WARNING = "warning"
    REMARK = "remark"


Sort = Weight | Weakness
"""What rows are filtered by: a mistake by its weight, a weakness by its kind."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AuditRow:
    """One mistake or weakness.

    Attributes:
        weight: How much it weighs.
        sort: What it is filtered by.
        what: What is wrong, as a sentence.
        place: Where.
        mend: What to do about it, as a sentence.
        about: What to show when somebody goes there: a `Problem` or a `Remark`.
    """

    weight: Weight
    sort: Sort
    what: str
    place: str
    mend: str
    about: Problem | Remark

    def has(self, words: str) -> bool:
        """Whether each word stands somewhere in it."""
        text = f"{self.what} {self.place} {self.mend}".casefold()
        return all(word in text for word in words.casefold().split())


def audit_rows(editing: Editing, language: Language) -> Iterator[AuditRow]:
    """What was found about a key, errors first, then warnings, then weaknesses.

    Of each sort the first `MOST`: a key out of a spreadsheet may lack a hundred thousand sources.
    A row is worded when it is asked for.
    """
    left = dict.fromkeys((*Weight, *Weakness), MOST)

    def wanted(sort: Sort) -> bool:
        left[sort] -= 1
        return left[sort] >= 0

    mistakes = sorted(editing.problems, key=lambda one: one.severity is not Severity.ERROR)
    for mistake in mistakes:
        if wanted(_weight(mistake)):
            yield _mistake(mistake, editing.folder)
    for remark in editing.remarks:
        if wanted(remark.weakness):
            yield _weakness(editing.key, remark, language)


def counted(editing: Editing) -> dict[Sort, int]:
    """How many of each sort were found, in the order of the rows."""
    found: dict[Sort, int] = {}
    mistakes = sorted((_weight(one) for one in editing.problems), key=list(Weight).index)
    sorts: tuple[Sort, ...] = (*mistakes, *(remark.weakness for remark in editing.remarks))
    for sort in sorts:
        found[sort] = found.get(sort, 0) + 1
    return found


def sort_title(sort: Sort, language: Language) -> str:
    """What rows of a sort are called together."""
    if isinstance(sort, Weakness):
        return weakness_title(sort, language)
    return {
        Weight.ERROR: translate("audit", "Errors"),
        Weight.WARNING: translate("audit", "Warnings"),
        Weight.REMARK: translate("audit", "Weaknesses"),
    }[sort]


def _weight(problem: Problem) -> Weight:
    return Weight.ERROR if problem.severity is Severity.ERROR else Weight.WARNING


def _mistake(problem: Problem, folder: Path) -> AuditRow:
    weight = _weight(problem)
    return AuditRow(
        weight=weight,
        sort=weight,
        what=worded(problem.problem),
        place=_place(problem, folder),
        mend=worded(problem.remedy),
        about=problem,
    )


def _place(problem: Problem, folder: Path) -> str:
    file = problem.file
    if file.is_relative_to(folder):
        file = file.relative_to(folder)
    text = translate("audit", "{file}, line {n}")
    return text.format(file=file.as_posix(), n=problem.line)


def _weakness(key: Key, remark: Remark, language: Language) -> AuditRow:
    words = remark_words(key, remark, language)
    return AuditRow(
        weight=Weight.REMARK,
        sort=remark.weakness,
        what=words.what,
        place=weakness_title(remark.weakness, language),
        mend=words.mend,
        about=remark,
    )
