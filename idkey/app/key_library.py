"""The keys at hand, read when they are first needed."""

from collections.abc import Iterator, Mapping
from pathlib import Path

from idkey.formats.folder import KeyEntry, list_keys, read_key
from idkey.model.key import Key


class KeyLibrary(Mapping[str, Key]):
    """Keys by id; the first one is the one to start with.

    Args:
        folder: Folder with one folder per key.
        first: Id of the key to start with; another one when there is no such key.
    """

    def __init__(self, folder: Path, first: str) -> None:
        entries = [entry for entry in list_keys(folder) if not entry.problem]
        entries.sort(key=lambda entry: (entry.id != first, entry.title))
        self._entries: dict[str, KeyEntry] = {entry.id: entry for entry in entries}
        self._read: dict[str, Key] = {}

    @property
    def titles(self) -> tuple[tuple[str, str], ...]:
        """(id, title) of every key, without reading it."""
        return tuple((entry.id, entry.title) for entry in self._entries.values())

    def __getitem__(self, key: str) -> Key:
        if key not in self._read:
            self._read[key] = read_key(self._entries[key].folder)
        return self._read[key]

    def __iter__(self) -> Iterator[str]:
        return iter(self._entries)

    def __len__(self) -> int:
        return len(self._entries)
