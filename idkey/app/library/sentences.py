"""What the formats say about a key, in the language of the window.

The layers below speak English. Their sentences are known here by heart, with a brace for what
varies; one that is not known is shown as it is.
"""

import re
from functools import cache

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication

_BRACE = re.compile(r"\\\{(\w+)\\\}")

_SENTENCES = (
    QT_TRANSLATE_NOOP(
        "library",
        "The file does not say how each character is looked at; all were set to the hand lens, so "
        "that none is proposed for an animal that must not be handled. Set them in the workshop.",
    ),
    QT_TRANSLATE_NOOP(
        "library",
        "The file does not say how dangerous each taxon is; all were set to medically "
        "significant, so that none is taken lightly. Set the danger and the permits in the "
        "workshop.",
    ),
    QT_TRANSLATE_NOOP("library", "Columns left out: {names}."),
    QT_TRANSLATE_NOOP("library", "The file is not UTF-8; it was read as Windows-1252."),
    QT_TRANSLATE_NOOP("library", "The block {name} was left out."),
    QT_TRANSLATE_NOOP("library", "{n} further data sets were left out."),
    QT_TRANSLATE_NOOP("library", "{n} further keys were left out."),
    QT_TRANSLATE_NOOP("library", "Not read: {names}."),
    QT_TRANSLATE_NOOP("library", "Text characters became remarks on their taxa: {names}."),
    QT_TRANSLATE_NOOP(
        "library", "It is a matrix of the key '{key}'; all else was taken from that key."
    ),
    QT_TRANSLATE_NOOP("library", "{file} was left behind: {reason}"),
    QT_TRANSLATE_NOOP(
        "library", "Sources, remarks and the basis of scores have no place in a CSV matrix."
    ),
    QT_TRANSLATE_NOOP("library", "The key's {parts} have no place in a CSV matrix."),
    QT_TRANSLATE_NOOP(
        "library", "Characters are named by their ids; what is said about them is left out."
    ),
    QT_TRANSLATE_NOOP(
        "library",
        "Of taxa only name, authority and family are written; dangers, permits and the rest are "
        "left out.",
    ),
    QT_TRANSLATE_NOOP("library", "The key's {n} pictures are not in it."),
    QT_TRANSLATE_NOOP("library", "The key's picture is not in it."),
    QT_TRANSLATE_NOOP("library", "Comments in the key's files are not in it."),
    QT_TRANSLATE_NOOP("library", "Numbers were written as classes: {names}."),
    QT_TRANSLATE_NOOP(
        "library", "How often a state occurs was left out; every state counts alike."
    ),
    QT_TRANSLATE_NOOP(
        "library", "Scores for one sex or stage were joined with those for the other."
    ),
    QT_TRANSLATE_NOOP("library", "The format has no place for {parts}."),
    QT_TRANSLATE_NOOP(
        "library",
        "Only names of taxa, characters and states were written, not what is said about them: no "
        "authorities, dangers or permits.",
    ),
    QT_TRANSLATE_NOOP(
        "library", "Signs that other readers stumble over were left out of names ({n})."
    ),
    QT_TRANSLATE_NOOP(
        "library",
        "The standard has no place for {parts}; they stand in elements of this program's own, "
        "which other programs skip.",
    ),
    QT_TRANSLATE_NOOP(
        "library",
        "Leads that end in several taxa end in a group of them, as the standard wants.",
    ),
    QT_TRANSLATE_NOOP("library", "By its heading."),
    QT_TRANSLATE_NOOP("library", "It has no heading."),
    QT_TRANSLATE_NOOP("library", "It has no values."),
    QT_TRANSLATE_NOOP("library", "The first column in which every cell differs."),
    QT_TRANSLATE_NOOP("library", "'{heading}' says it already."),
    QT_TRANSLATE_NOOP("library", "Numbers, with a unit in the heading."),
    QT_TRANSLATE_NOOP("library", "Numbers, with a unit in the cells."),
    QT_TRANSLATE_NOOP("library", "Whole numbers without a unit."),
    QT_TRANSLATE_NOOP("library", "Numbers without a unit."),
    QT_TRANSLATE_NOOP("library", "{why} Cells that are none: {n}."),
    QT_TRANSLATE_NOOP("library", "{n} different words."),
    QT_TRANSLATE_NOOP("library", "The spreadsheet took cells for dates."),
    QT_TRANSLATE_NOOP("library", "Nearly every cell differs: a text."),
    QT_TRANSLATE_NOOP("library", "All cells say the same."),
)


def worded(sentence: str) -> str:
    """The sentence in the language of the window; as it is when it is not known."""
    for template, pattern in _patterns():
        found = pattern.fullmatch(sentence)
        if found is not None:
            translated = QCoreApplication.translate("library", template)
            return translated.format(**found.groupdict())
    return sentence


@cache
def _patterns() -> tuple[tuple[str, re.Pattern[str]], ...]:
    """Each template with what it matches; those without anything that varies come first."""
    templates = sorted(map(str, _SENTENCES), key=lambda template: "{" in template)
    return tuple((one, _pattern(one)) for one in templates)


def _pattern(template: str) -> re.Pattern[str]:
    return re.compile(_BRACE.sub(r"(?P<\1>.*)", re.escape(template)))
