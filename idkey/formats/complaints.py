"""What a document's validation complains about, in words and at the right place."""

import re
from collections.abc import Callable, Iterator, Mapping
from typing import Any

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from idkey.formats.character_document import LeadDoc, RequirementDoc, StateDoc
from idkey.formats.document import RangeDoc
from idkey.formats.key_document import RatesDoc
from idkey.formats.problem import Problem, hint
from idkey.formats.taxon_document import HazardDoc, PermitDoc, ScoreDoc
from idkey.formats.yaml_text import Loc, YamlText
from idkey.model.score import Often

_NESTED: Mapping[str, type[BaseModel]] = {
    "hazard": HazardDoc,
    "leads": LeadDoc,
    "permit": PermitDoc,
    "rates": RatesDoc,
    "requires": RequirementDoc,
    "scores": ScoreDoc,
    "sees": RangeDoc,
    "states": StateDoc,
}

_PATTERNS: Mapping[str, tuple[str, str]] = {
    "colours": ("is not a colour", 'Write it as "#rrggbb", in quotes.'),
    "figure": ("is not a path below images/", "Write folder/file without '..' or a leading '/'."),
    "version": ("is not a semantic version", "Write three numbers, such as 1.0.0."),
}
_NO_ID = ("is not an id", "Use letters, digits, '_', '-' and '.', and no blanks.")

Said = tuple[str, str]


def complaints(
    yaml: YamlText, loc: Loc, error: ValidationError, document: type[BaseModel], plain: Any
) -> Iterator[Problem]:
    """The mistakes that `error` holds, each at its place in the file.

    Args:
        yaml: The file.
        loc: Where in the file the validated value stands.
        error: What validation raised.
        document: The document class the value was validated against.
        plain: The validated value.
    """
    seen: set[Loc] = set()
    for detail in error.errors(include_url=False):
        inner = _in_file(detail["loc"], plain)
        if inner in seen or _follows(detail):
            continue
        seen.add(inner)
        problem, remedy = _words(detail, (*loc, *inner), document)
        if detail["type"] == "extra_forbidden" or detail["loc"][-1:] == ("[key]",):
            yield yaml.problem_at_key((*loc, *inner), problem, remedy)
        else:
            yield yaml.problem((*loc, *inner), problem, remedy)


def _follows(detail: ErrorDetails) -> bool:
    """Whether a list is short only because its faulty entries were not counted."""
    return detail["type"] == "too_short" and len(detail["input"]) >= detail["ctx"]["min_length"]


def _in_file(loc: tuple[int | str, ...], plain: Any) -> Loc:
    """`loc` without the names of alternatives, which stand in no file."""
    found: list[str | int] = []
    for number, step in enumerate(loc):
        inside = isinstance(plain, Mapping) and step in plain
        if inside or (isinstance(plain, list) and isinstance(step, int) and step < len(plain)):
            found.append(step)
            plain = plain[step]
        elif number == len(loc) - 1 and isinstance(plain, Mapping) and step != "[key]":
            found.append(step)
    return tuple(found)


def _words(detail: ErrorDetails, loc: Loc, document: type[BaseModel]) -> Said:
    field = _field(loc)
    kind = detail["type"]
    given = detail["input"]
    if len(loc) > 1 and loc[-2] == "shows" and isinstance(loc[-1], str):
        return f"{_quoted(given)} does not say how often '{loc[-1]}' occurs.", _HOW_OFTEN
    if kind in ("missing", "too_long") and field == "size_mm":
        return "'size_mm' needs two numbers.", "Write [smallest, largest]; null is unknown."
    if kind == "missing":
        return f"'{field}' is missing.", "Add it."
    if kind == "extra_forbidden":
        return f"Unknown field '{field}'.", hint(str(field), _fields(loc, document), "Remove it.")
    if kind == "string_pattern_mismatch":
        problem, remedy = _PATTERNS.get(field, _NO_ID)
        return f"{_quoted(given)} {problem}.", remedy
    if kind == "model_type" and "sees" in loc[-2:-1]:
        return f"'{field}' needs states or a range.", "Write [states], or {low: ..., high: ...}."
    say = _SAY.get(kind)
    if say is None:
        return f"'{field}' has a value that does not fit: {detail['msg']}.", "Correct it."
    return say(field, given, detail.get("ctx", {}))


def _fields(loc: Loc, document: type[BaseModel]) -> list[str]:
    owners = [step for step in loc[:-1] if step in _NESTED]
    owner = _NESTED[str(owners[-1])] if owners else document
    return list(owner.model_fields)


def _field(loc: Loc) -> str:
    """The name of the innermost field; list indices say nothing to a reader."""
    return next((str(step) for step in reversed(loc) if isinstance(step, str)), "the entry")


def _quoted(given: Any) -> str:
    if given is None:
        return "An empty value"
    if isinstance(given, list):
        return "A list"
    if isinstance(given, dict):
        return "A group of 'name: value' lines"
    text = str(given)
    return f"'{text}'" if len(text) <= 60 else f"'{text[:57]}…'"


def _number(field: str, given: Any, _: Mapping[str, Any]) -> Said:
    if isinstance(given, str) and re.fullmatch(r"-?\d+,\d+", given):
        return f"'{given}' has a decimal comma.", f"Write {given.replace(',', '.')}."
    return f"{_quoted(given)} is not a number, as '{field}' needs.", "Write digits, such as 12.5."


def _whole(field: str, given: Any, _: Mapping[str, Any]) -> Said:
    return f"{_quoted(given)} is not a whole number, as '{field}' needs.", "Write digits only."


def _choice(field: str, given: Any, ctx: Mapping[str, Any]) -> Said:
    if field == "format":
        return (
            f"The key is written in format {_quoted(given)}; this program knows format 1.",
            "Install the newer program, or write format: 1.",
        )
    known = re.findall(r"'([^']*)'", str(ctx.get("expected", "")))
    return f"{_quoted(given)} is no value of '{field}'.", hint(str(given), known)


def _bound(words: str, limit: str) -> Callable[[str, Any, Mapping[str, Any]], Said]:
    def say(field: str, given: Any, ctx: Mapping[str, Any]) -> Said:
        return f"'{field}' is {given}; it must be {words} {ctx[limit]:g}.", "Correct it."

    return say


def _always(problem: str, remedy: str) -> Callable[[str, Any, Mapping[str, Any]], Said]:
    def say(field: str, given: Any, ctx: Mapping[str, Any]) -> Said:
        said = {"field": field, "given": _quoted(given), **ctx}
        return problem.format_map(said), remedy.format_map(said)

    return say


_HOW_OFTEN = f"Write {', '.join(Often)}, a share such as 0.7, or nothing."
_GROUP = _always("'{field}' needs 'name: value' lines.", "Write its fields, one a line.")
_LIST = _always("'{field}' needs a list.", "Write [one, two], or one '- entry' a line.")
_TEXT = _always("{given} stands where '{field}' needs a text.", "Write a text.")

_SAY: Mapping[str, Callable[[str, Any, Mapping[str, Any]], Said]] = {
    "bool_parsing": _always("{given} is neither true nor false.", "Write true or false."),
    "bool_type": _always("{given} is neither true nor false.", "Write true or false."),
    "dict_type": _GROUP,
    "enum": _choice,
    "finite_number": _always(
        "{given} is not a finite number.", "Leave a bound that is not known out."
    ),
    "float_parsing": _number,
    "float_type": _number,
    "greater_than": _bound("more than", "gt"),
    "greater_than_equal": _bound("at least", "ge"),
    "int_from_float": _whole,
    "int_parsing": _whole,
    "int_type": _whole,
    "less_than": _bound("less than", "lt"),
    "less_than_equal": _bound("at most", "le"),
    "list_type": _LIST,
    "literal_error": _choice,
    "model_attributes_type": _GROUP,
    "model_type": _GROUP,
    "string_too_long": _always("'{field}' is longer than {max_length} characters.", "Shorten it."),
    "string_too_short": _always("'{field}' is empty.", "Write something, or remove the line."),
    "string_type": _TEXT,
    "too_long": _always("'{field}' has more than {max_length} entries.", "Remove some."),
    "too_short": _always("'{field}' has too few entries.", "Give at least {min_length}."),
    "tuple_type": _LIST,
}
