"""Which mistakes of a key belong to which entry, and to which of its fields."""

from collections.abc import Iterable, Mapping

from idkey.app.parts.worded import worded
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.forms_entries import EntryKind, entries
from idkey.formats.problem import Problem
from idkey.model.key import Key

Found = Mapping[str, Mapping[str, tuple[str, ...]]]
"""Problems by id of the entry, and by path inside it; an empty path is the entry itself."""


def problems_of(editing: Editing, kind: EntryKind) -> Found:
    """The mistakes in the entries of a kind, in words."""
    found: dict[str, dict[str, tuple[str, ...]]] = {}
    for problem in editing.problems:
        place = place_of(editing.key, problem)
        if place is None or place[0] is not kind:
            continue
        own = found.setdefault(place[1], {})
        own[place[2]] = (*own.get(place[2], ()), words_of(problem))
    return found


def head_problems(editing: Editing) -> Mapping[str, tuple[str, ...]]:
    """The mistakes in the key's own fields, in words, by field."""
    found: dict[str, tuple[str, ...]] = {}
    for problem in editing.problems:
        if problem.file.name == "key.yaml":
            path = path_of(problem.loc)
            found[path] = (*found.get(path, ()), words_of(problem))
    return found


def words_of(problem: Problem) -> str:
    """What is wrong and how to mend it."""
    return f"{worded(problem.problem)} {worded(problem.remedy)}".strip()


def kind_of(problem: Problem) -> EntryKind | None:
    """Which entries the file of a mistake holds; None when it is that of the key itself."""
    if problem.file.parent.name == "taxa":
        return EntryKind.TAXON
    return next((kind for kind in EntryKind if problem.file.name == f"{kind.value}.yaml"), None)


def place_of(key: Key, problem: Problem) -> tuple[EntryKind, str, str] | None:
    """Kind, id of the entry and path inside it; None when it lies in no entry."""
    kind = kind_of(problem)
    if kind is EntryKind.TAXON:
        return kind, problem.file.stem, path_of(problem.loc)
    if kind is None or len(problem.loc) < 2:
        return None
    step = problem.loc[1]
    if isinstance(step, int):
        found = entries(key, kind)
        if step >= len(found):
            return None
        step = found[step].id
    return kind, step, path_of(problem.loc[2:])


def path_of(loc: Iterable[str | int]) -> str:
    """A way into a file as a path such as ``"hazard.level"``."""
    return ".".join(str(step) for step in loc)
