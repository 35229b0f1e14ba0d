"""Keys by name or folder."""

from functools import lru_cache
from pathlib import Path

import click

from idkey.cli.findings import unknown
from idkey.errors import IdKeyError
from idkey.formats.folder import KeyEntry, read_key
from idkey.formats.key_shelf import OWN, all_keys
from idkey.model.key import Key
from idkey.places import data_folder, keys_folder


def shipped() -> tuple[Path, ...]:
    """Folders of the keys that come with the program."""
    return tuple(sorted(file.parent for file in keys_folder().glob("*/key.yaml")))


def listed() -> tuple[KeyEntry, ...]:
    """Every key here by title: those that come with the program, and those the person added."""
    return all_keys(keys_folder(), data_folder() / OWN)


def all_opened() -> list[Key]:
    """Every key here that can be used; what is wrong with another is told on the error stream."""
    found = []
    for entry in listed():
        try:
            if not entry.problem:
                found.append(_read(entry.folder))
        except IdKeyError as err:
            click.echo(f"{err.problem} {err.remedy}", err=True)
    return found


def folder_of(name: str) -> Path:
    """The folder of the key here with that name, or the folder with that path.

    Raises:
        IdKeyError: There is none.
    """
    known = {entry.id: entry.folder for entry in listed() if not entry.problem}
    if name in known:
        return known[name]
    if Path(name).is_dir():
        return Path(name)
    if "/" in name or "\\" in name:
        raise IdKeyError(f"{name} is no folder.", "Give the folder that holds key.yaml.")
    raise unknown("key", name, known)


def opened(name: str) -> Key:
    """The key of that name or folder.

    Raises:
        IdKeyError: There is none, or it has mistakes.
    """
    return _read(folder_of(name))


@lru_cache(maxsize=8)
def _read(folder: Path) -> Key:
    return read_key(folder)
