"""What the YAML parser complains about, in the words of someone who writes keys."""

import re

import yaml

_TAB = re.compile(r"^[ ]*\t", re.MULTILINE)
_LONGEST_LIST = 20
_INVISIBLE = re.compile("[^\t\n\r\x20-\x7e\x85\xa0-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")

_WORDS: tuple[tuple[str, str, str], ...] = (
    (
        "mapping values are not allowed",
        "A colon followed by a space stands inside a text.",
        "Put the whole text in double quotes.",
    ),
    (
        "end of stream",
        "A quote or bracket that was opened is never closed.",
        "Close it.",
    ),
    (
        "',' or ']'",
        "A list in square brackets is not closed, or a comma is missing.",
        "Separate the entries with commas and close the bracket.",
    ),
    (
        "',' or '}'",
        "A mapping in curly brackets is not closed, or a comma is missing.",
        "Separate the entries with commas and close the bracket.",
    ),
    (
        "expected node content",
        "A bracket that was opened is never closed, or a value is missing in it.",
        "Close the bracket, or write the value.",
    ),
    (
        "cannot start any token",
        "A text starts with a sign that has a meaning of its own here.",
        "Put the whole text in double quotes.",
    ),
    (
        "could not find expected ':'",
        "A colon is missing after a name, or a text runs over to a line that is not indented.",
        "Write 'name: value', and indent the lines of a long text.",
    ),
    (
        "expected key",
        "The indentation does not fit the lines above, or a colon is missing.",
        "Indent entries of one list alike and write 'name: value'.",
    ),
    (
        "block end",
        "The indentation does not fit the lines above, or something follows a closing quote.",
        "Indent entries of one list alike, and quote the whole text.",
    ),
    (
        "block sequence entries are not allowed",
        "A dash stands where no list can start.",
        "Start the list on a line of its own.",
    ),
    (
        "escape",
        "A backslash inside double quotes is not followed by a known sign.",
        "Double the backslash.",
    ),
    (
        "nesting depth",
        "The values are nested deeper than any key needs.",
        "Remove the surplus brackets or indentation.",
    ),
    (
        "control characters are not allowed",
        "The file holds an invisible control character.",
        "Delete it.",
    ),
)


def tab_lines(text: str) -> list[tuple[int, int]]:
    """Line and column, from 1, of the tabs that indent lines; at most twenty."""
    places = []
    for match in _TAB.finditer(text):
        places.append((text.count("\n", 0, match.start()) + 1, len(match[0])))
        if len(places) == _LONGEST_LIST:
            break
    return places


def in_words(error: Exception, text: str) -> tuple[int, int, str, str]:
    """Line, column, problem and remedy for an error of the YAML parser.

    Args:
        error: What the parser raised.
        text: The text it was given.
    """
    said = str(error) if isinstance(error, yaml.YAMLError) else "nesting depth"
    line, column = _place(error, text)
    for part, problem, remedy in _WORDS:
        if part in said:
            return line, column, problem, remedy
    reason = getattr(error, "problem", None) or "it follows no rule of YAML"
    return line, column, f"The text is not YAML: {reason}.", "Compare it with the lines around it."


def _place(error: Exception, text: str) -> tuple[int, int]:
    if invisible := _INVISIBLE.search(text):
        before = text[: invisible.start()]
        return before.count("\n") + 1, len(before) - before.rfind("\n")
    mark = getattr(error, "problem_mark", None)
    if "flow" in str(getattr(error, "context", "")):
        mark = getattr(error, "context_mark", None) or mark  # the bracket that was opened
    return (1, 1) if mark is None else (mark.line + 1, mark.column + 1)
