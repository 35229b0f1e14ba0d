"""What a cell of the matrix looks like: a few words, and where they come from as a shape."""

from dataclasses import dataclass
from enum import StrEnum

from PySide6.QtCore import QCoreApplication

from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows
from idkey.model.source import Basis
from idkey.report.finding_words import held_words, score_words, value_words
from idkey.report.language import Language
from idkey.report.terms import sex_words, stage_words

translate = QCoreApplication.translate


class Ground(StrEnum):
    """What a cell rests on, by its weakest score; each has a shape of its own."""

    PRINT = "print"
    MEMORY = "memory"
    PRACTICE = "practice"
    NOTHING = "nothing"


_GROUNDS = {
    Basis.SOURCE: Ground.PRINT,
    Basis.INFERRED: Ground.PRINT,
    Basis.PARTLY_MEMORY: Ground.MEMORY,
    Basis.MEMORY: Ground.MEMORY,
    Basis.COMMON_PRACTICE: Ground.PRACTICE,
}
_RANK = (Ground.PRINT, Ground.PRACTICE, Ground.MEMORY)


@dataclass(frozen=True, slots=True, kw_only=True)
class Face:
    """A cell as it is shown.

    Attributes:
        lines: Its text, a line for each sex and stage it tells apart; empty when unknown.
        ground: What it rests on.
        several: Whether one animal may show one state and the next another.
        lacking: Whether the part is lacking, so that nothing can be seen.
        wrong: Whether there is a mistake in it.
    """

    lines: tuple[str, ...] = ()
    ground: Ground = Ground.NOTHING
    several: bool = False
    lacking: bool = False
    wrong: bool = False

    @property
    def text(self) -> str:
        """All of it in one line."""
        return "; ".join(self.lines)


def face(key: Key, scores: tuple[Score, ...], language: Language, *, wrong: bool) -> Face:
    """How the scores of one cell are shown.

    Args:
        key: The key.
        scores: The scores.
        language: Language of the fixed words.
        wrong: Whether there is a mistake in the cell.
    """
    if not scores:
        return Face(wrong=wrong)
    grounds = [_GROUNDS[score.basis] for score in scores]
    return Face(
        lines=tuple(_line(key, score, language) for score in scores),
        ground=max(grounds, key=_RANK.index),
        several=any(isinstance(s.value, Shows) and len(s.value.states) > 1 for s in scores),
        lacking=all(isinstance(s.value, Inapplicable) for s in scores),
        wrong=wrong,
    )


def _line(key: Key, score: Score, language: Language) -> str:
    words = [stage_words(score.stage, language)] if score.stage else []
    words += [sex_words(score.sex, language)] if score.sex else []
    value = score.value
    if isinstance(value, Inapplicable):
        said = translate("workshop", "not applicable")
    else:
        said = value_words(key, score, language)
    return f"{', '.join(words)}: {said}" if words else said


def cell_story(key: Key, scores: tuple[Score, ...], language: Language) -> str:
    """Everything a cell says, with its sources and notes, a line for each score."""
    if not scores:
        return translate("workshop", "Nothing is known here yet.")
    lines = []
    for score in scores:
        held = held_words if not score.sources else score_words
        note = f" – {score.note}" if score.note else ""
        lines.append(f"{held(key, score, language)}{note}")
    return "\n".join(lines)
