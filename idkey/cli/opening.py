"""Keys by name or folder."""

from functools import lru_cache
from pathlib import Path

from idkey.cli.findings import unknown
from idkey.errors import IdKeyError
from idkey.formats.folder import read_key
from idkey.model.key import Key
from idkey.places import keys_folder


def shipped() -> tuple[Path, ...]:
    """Folders of the keys that come with the program."""
    return tuple(sorted(file.parent for file in keys_folder().glob("*/key.yaml")))


def folder_of(name: str) -> Path:
    """The folder of a shipped key's name, or the folder with that path.

    Raises:
        IdKeyError: There is none.
    """
    known = {folder.name: folder for folder in shipped()}
    if name in known:
        return known[name]
    if Path(name).is_dir():
        return Path(name)
    if "/" in name or "\\" in name:
        raise IdKeyError(f"{name} is no folder.", "Give the folder that holds key.yaml.")
    raise unknown("key", name, known)


@lru_cache(maxsize=8)
def opened(name: str) -> Key:
    """The key of that name or folder.

    Raises:
        IdKeyError: There is none, or it has mistakes.
    """
    return read_key(folder_of(name))
