"""The keys that came with the program and the person's own, side by side on one shelf."""

import shutil
import tempfile
from collections.abc import Collection, Mapping
from dataclasses import replace
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.folder import KeyEntry, list_keys, write_key
from idkey.model.key import Key

OWN = "keys"
"""Folder in the data folder with the keys a person added."""

REMOVED = "removed"
"""Folder in the data folder with keys that were taken off the shelf; nothing is deleted."""


def all_keys(shipped: Path, own: Path | None = None) -> tuple[KeyEntry, ...]:
    """Every key folder, by title; a key of the person's own is marked so.

    Args:
        shipped: Folder with one folder per key that came with the program.
        own: The same for keys the person added; None for none.

    Returns:
        The keys. One of the person's own that has the name of a shipped key is told as a
        problem, since the shipped one is used.
    """
    entries = list(list_keys(shipped))
    taken = {entry.id for entry in entries}
    for entry in list_keys(own) if own is not None else ():
        problem = entry.problem
        if entry.id in taken:
            problem = f"A key named '{entry.id}' comes with the program, and that one is used."
        entries.append(replace(entry, own=True, problem=problem))
    return tuple(sorted(entries, key=lambda entry: (entry.title.casefold(), entry.id)))


def put_in(
    key: Key, own: Path, *, files: Mapping[str, bytes] | None = None, removed: Path | None = None
) -> Path:
    """Put a key among the person's own, whole or not at all.

    Args:
        key: The key; its id names the folder.
        own: Folder with one folder per key.
        files: Bytes per file name it came with, so that comments and pictures go along.
        removed: Where a key of the same id goes that is there already; None refuses.

    Returns:
        Its folder.

    Raises:
        KeyProblems: The key has mistakes.
        IdKeyError: A key of that id is there, or the disk is full.
    """
    target = own / key.id
    if target.exists() and removed is None:
        raise IdKeyError(
            f"A key named '{key.id}' is here already.", "Replace it, or give the new one a name."
        )
    try:
        own.mkdir(mode=0o700, parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(dir=own, prefix=".new-") as place:
            new = Path(place) / key.id
            for name, raw in (files or {}).items():
                (new / name).parent.mkdir(parents=True, exist_ok=True)
                (new / name).write_bytes(raw)
            write_key(key, new)
            _change_places(new, target, removed)
    except OSError as err:
        reason = err.strerror or "unknown reason"
        raise IdKeyError(f"The key could not be put here: {reason}.", "Make room.") from err
    return target


def _change_places(new: Path, target: Path, removed: Path | None) -> None:
    """Put `new` where `target` is; that goes to `removed`, or back when the move fails."""
    aside = set_aside(target, removed) if target.exists() and removed is not None else None
    try:
        new.replace(target)
    except OSError:
        if aside is not None:
            aside.replace(target)
        raise


def set_aside(folder: Path, removed: Path) -> Path:
    """Take a key off the shelf; its folder is moved, not deleted.

    Args:
        folder: The key.
        removed: Where such keys are kept.

    Returns:
        Where it is now: the id, and a number when that is taken.

    Raises:
        OSError: It cannot be moved.
    """
    removed.mkdir(mode=0o700, parents=True, exist_ok=True)
    target = removed / free_name(folder.name, [one.name for one in removed.iterdir()])
    shutil.move(folder, target)
    return target


def free_name(wanted: str, taken: Collection[str]) -> str:
    """The name, or the name with the first number that is free."""
    known = {name.casefold() for name in taken}
    name, number = wanted, 2
    while name.casefold() in known:
        name, number = f"{wanted}-{number}", number + 1
    return name
