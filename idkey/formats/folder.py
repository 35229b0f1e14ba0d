"""A key as a folder of plain text: read, checked, written."""

import gc
import hashlib
import json
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from idkey.errors import IdKeyError
from idkey.formats import assemble
from idkey.formats.couplet_check import checked_couplets
from idkey.formats.crosscheck import crosschecked
from idkey.formats.draft import Draft, drafted
from idkey.formats.known import Known
from idkey.formats.memory import KeyMemory
from idkey.formats.plain import canonical, documents
from idkey.formats.problem import KeyProblems, Problem, Severity
from idkey.formats.score_check import checked_scores
from idkey.formats.texts import FILES, parsed_texts, read_texts
from idkey.formats.write import Plan, folder_documents, planned, texts_of, write_files
from idkey.formats.yaml_text import read_yaml
from idkey.model.key import Key


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyEntry:
    """A key folder as a list shows it, before the key is read.

    Attributes:
        folder: Where it is.
        id: Name of the folder.
        title: Its title; the id when key.yaml cannot be read.
        version: Its version; empty when key.yaml cannot be read.
        problem: Why it cannot be listed properly; empty otherwise.
        own: Whether the person added it.
    """

    folder: Path
    id: str
    title: str
    version: str = ""
    problem: str = ""
    own: bool = False


def read_key(folder: Path, cache: Path | None = None) -> Key:
    """The key in `folder`, in canonical order and with its digest.

    Args:
        folder: The key.
        cache: Folder that remembers keys as they were read, by the content of their files;
            it makes large keys open ten times as fast. None reads the files each time.

    Raises:
        KeyProblems: Something in it is wrong; it holds every mistake of every file.
    """
    memory = None if cache is None else KeyMemory(cache, folder)
    with _without_pauses():
        known = None if memory is None else memory.key()
    if known is not None:
        return known
    key, problems = check_key(folder)
    if key is None:
        raise KeyProblems(folder.name, problems)
    if memory is not None:
        memory.keep(key)
    return key


def check_key(folder: Path) -> tuple[Key | None, tuple[Problem, ...]]:
    """The key in `folder`, None when it has errors, and every mistake of every file.

    Returns:
        The key, and its mistakes in the order of files, lines and columns; warnings too.
    """
    with _without_pauses():
        return checked(drafted(folder, read_texts(folder)))


def mendable_key(folder: Path) -> Key | None:
    """The key in `folder` where every part can be understood, though they may not fit together.

    Returns:
        The key without digest, in the order of its files, for somebody who wants to mend it;
        None when a part cannot be understood, so that something would get lost.
    """
    with _without_pauses():
        draft = drafted(folder, read_texts(folder))
        if any(p.severity is Severity.ERROR for p in draft.problems) or draft.key is None:
            return None
        try:
            return _assembled(draft)
        except ValueError:
            return None


@contextmanager
def _without_pauses() -> Iterator[None]:
    """Keep the garbage collector from going through every score again and again.

    A key of 100,000 scores is read in half the time; nothing made here holds itself.
    """
    enabled = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if enabled:
            gc.enable()


def checked(draft: Draft) -> tuple[Key | None, tuple[Problem, ...]]:
    """The key of a draft, None when it has errors, and all its mistakes in order."""
    known = Known(draft)
    found = [*draft.problems, *crosschecked(draft, known), *checked_scores(draft, known)]
    found += checked_couplets(draft, known)
    problems = tuple(sorted(found, key=_order))
    if any(p.severity is Severity.ERROR for p in problems) or draft.key is None:
        return None, problems
    key = canonical(_assembled(draft))
    return replace(key, digest=digest(key)), problems


def check_values(key: Key, folder: Path) -> tuple[Problem, ...]:
    """Every mistake of a key in memory, at the places its files in `folder` would have."""
    return checked(drafted(folder, texts_of(folder_documents(key), folder)))[1]


def write_key(key: Key, folder: Path) -> None:
    """Write `key` to `folder` in the canonical layout: one score a line, in a stable order.

    In files that are there already, every line that still holds stays as it was written, with
    comments and blank lines; files whose content is the same are not touched; files in taxa/
    of taxa that are gone are removed.

    Raises:
        KeyProblems: The key has errors, so that it could not be read again; nothing is written.
        IdKeyError: The folder cannot be written; the old files still stand.
    """
    files = folder_documents(key)
    again, problems = checked(drafted(folder, texts_of(files, folder)))
    if again is None:
        raise KeyProblems(key.id, problems)
    old = _said(folder)
    plan = planned(files, folder, old or {})
    if plan.patched and not _says(plan, folder, again):
        plan = planned(files, folder, {})
    write_files(plan, folder, trusted=old is not None)


def _said(folder: Path) -> dict[str, dict[str, Any]] | None:
    """What the files of a folder say, also where they do not fit together; None for nothing."""
    key = mendable_key(folder)
    try:
        return None if key is None else folder_documents(key)
    except IdKeyError:
        return None


def _says(plan: Plan, folder: Path, key: Key) -> bool:
    """Whether the folder will say `key` once the plan is carried out."""
    contents = {name: (folder / name).read_bytes() for name in plan.kept}
    contents |= {name: text.encode() for name, text in plan.texts.items()}
    found, _ = checked(drafted(folder, parsed_texts(folder, contents)))
    return found is not None and found.digest == key.digest


def _order(problem: Problem) -> tuple[int, str, int, int]:
    file = problem.file
    rank = FILES.index(file.stem) if file.stem in FILES else len(FILES)
    inside = file.parent.name == "taxa"
    return len(FILES) if inside else rank, file.name, problem.line, problem.column


def _assembled(draft: Draft) -> Key:
    if draft.key is None:
        raise ValueError("a draft without key.yaml is no key")
    return replace(
        assemble.key_head(draft.key.doc),
        taxa=tuple(assemble.taxon(e.doc) for e in draft.taxa),
        characters=tuple(assemble.character(e.doc) for e in draft.characters),
        scores=tuple(
            assemble.score(taxon, e.id, e.doc) for taxon, own in draft.scores.items() for e in own
        ),
        labels=tuple(assemble.label(e.doc) for e in draft.labels),
        couplets=tuple(assemble.couplet(e.doc) for e in draft.couplets),
        sources=tuple(assemble.source(e.id, e.doc) for e in draft.sources),
        checks=tuple(assemble.check(e.doc) for e in draft.checks),
    )


def digest(key: Key) -> str:
    """SHA-256, as 64 hex digits, of the key's content; order of taxa and scores is no content."""
    found = hashlib.sha256()
    for piece in _pieces(documents(key), depth=2):
        found.update(piece.encode())
    return found.hexdigest()


def _pieces(value: Any, depth: int) -> Iterator[str]:
    """The value as JSON, in pieces: made in one go, a large key would hold up every thread."""
    if depth and isinstance(value, dict):
        for number, name in enumerate(sorted(value)):
            yield f"{',' if number else '{'}{_json(name)}:"
            yield from _pieces(value[name], depth - 1)
        yield "}" if value else "{}"
    elif depth and isinstance(value, list):
        for number, one in enumerate(value):
            yield "," if number else "["
            yield from _pieces(one, depth - 1)
        yield "]" if value else "[]"
    else:
        yield _json(value)


def _json(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"))


def list_keys(folder: Path) -> tuple[KeyEntry, ...]:
    """The key folders directly below `folder`, by title; only their key.yaml is read."""
    if not folder.is_dir():
        return ()
    found = (_listed(file.parent) for file in folder.glob("*/key.yaml"))
    return tuple(sorted(found, key=lambda entry: (entry.title.casefold(), entry.id)))


def _listed(folder: Path) -> KeyEntry:
    yaml, problems = read_yaml(folder / "key.yaml")
    said = yaml.plain if yaml is not None and isinstance(yaml.plain, dict) else {}
    title, version = said.get("title"), said.get("version")
    if isinstance(title, str) and isinstance(version, str):
        return KeyEntry(folder=folder, id=folder.name, title=title, version=version)
    problem = str(problems[0]) if problems else f"{folder.name}/key.yaml has no title or version."
    return KeyEntry(folder=folder, id=folder.name, title=folder.name, problem=problem)
