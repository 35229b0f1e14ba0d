"""What turns one plain value into another, small where they differ little."""

from typing import Any

Delta = dict[str, Any]
"""``{}`` changes nothing; see `delta` for what else it holds."""


def delta(old: Any, new: Any) -> Delta:
    """What `applied` has to do to `old` so that it becomes `new`.

    Args:
        old: Texts, numbers, truth values, None, lists, and dicts with text as names.
        new: The same; 1, 1.0 and true count as one value.

    Returns:
        ``whole`` holds a new value; ``into`` holds deltas by name, ``gone`` the names to leave
        out, ``more`` the values to add at the end; ``at``, ``less`` and ``items`` exchange a
        stretch of a list, and ``one`` changes a single entry of it.
    """
    if old == new:
        return {}
    if isinstance(old, dict) and isinstance(new, dict):
        return _of_dicts(old, new)
    if isinstance(old, list) and isinstance(new, list):
        return _of_lists(old, new)
    return {"whole": new}


def applied(change: Delta, value: Any) -> Any:
    """The value after a change.

    Raises:
        LookupError, TypeError, AttributeError: The change does not fit the value.
    """
    if not change:
        return value
    if "whole" in change:
        return change["whole"]
    if "at" in change:
        return _in_list(change, value)
    gone = frozenset(change["gone"])
    into = change["into"]
    kept = {name: inner for name, inner in value.items() if name not in gone}
    kept = {name: applied(into.get(name, {}), inner) for name, inner in kept.items()}
    return kept | change["more"]


def _of_dicts(old: dict[str, Any], new: dict[str, Any]) -> Delta:
    more = {name: inner for name, inner in new.items() if name not in old}
    gone = [name for name in old if name not in new]
    if [name for name in old if name in new] + list(more) != list(new):
        return {"whole": new}  # another order
    into = {name: delta(inner, new[name]) for name, inner in old.items() if name in new}
    return {"into": {n: change for n, change in into.items() if change}, "gone": gone, "more": more}


def _of_lists(old: list[Any], new: list[Any]) -> Delta:
    start, shorter = 0, min(len(old), len(new))
    while start < shorter and old[start] == new[start]:
        start += 1
    end = 0
    while end < shorter - start and old[-1 - end] == new[-1 - end]:
        end += 1
    items = new[start : len(new) - end]
    less = len(old) - end - start
    if less == len(items) == 1:
        return {"at": start, "one": delta(old[start], items[0])}
    return {"at": start, "less": less, "items": items}


def _in_list(change: Delta, value: list[Any]) -> list[Any]:
    at = change["at"]
    if "one" in change:
        return [*value[:at], applied(change["one"], value[at]), *value[at + 1 :]]
    return [*value[:at], *change["items"], *value[at + change["less"] :]]
