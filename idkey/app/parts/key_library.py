"""The keys at hand, read when they are first needed."""

from collections.abc import Iterator, Mapping
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.folder import KeyEntry, list_keys, read_key
from idkey.formats.package import install_package, read_package
from idkey.model.key import Key


class KeyLibrary(Mapping[str, Key]):
    """Keys by id; the first one is the one to start with.

    Args:
        folder: Folder with one folder per key.
        first: Id of the key to start with; another one when there is no such key.
        own: Folder with the keys a person added; a shipped key of the same id comes first.
    """

    def __init__(self, folder: Path, first: str, own: Path | None = None) -> None:
        added = list_keys(own) if own is not None else ()
        entries = [entry for entry in (*added, *list_keys(folder)) if not entry.problem]
        self._own = own
        entries.sort(key=lambda entry: (entry.id != first, entry.title))
        self._entries: dict[str, KeyEntry] = {entry.id: entry for entry in entries}
        self._read: dict[str, Key] = {}

    @property
    def titles(self) -> tuple[tuple[str, str], ...]:
        """(id, title) of every key, without reading it."""
        return tuple((entry.id, entry.title) for entry in self._entries.values())

    def take_in(self, file: Path) -> str:
        """Add the key of a package to the person's own keys.

        Args:
            file: The package.

        Returns:
            The key's id. One that is here already with the same content is left as it is.

        Raises:
            KeyProblems: The key in it has mistakes.
            IdKeyError: The package is refused, or another key of that id is here.
        """
        key = read_package(file).key
        if key.id in self._entries:
            here = self[key.id]
            if here.digest != key.digest:
                raise IdKeyError(
                    f"{file.name} holds the key '{key.id}' in version {key.version}; another one "
                    f"of that name is here, in version {here.version}.",
                    "Cases rest on the one that is here, so it was not replaced.",
                )
            return key.id
        if self._own is None:
            raise IdKeyError("Keys cannot be added here.")
        folder = install_package(file, self._own)
        self._entries[key.id] = next(e for e in list_keys(self._own) if e.folder == folder)
        return key.id

    def __getitem__(self, key: str) -> Key:
        if key not in self._read:
            self._read[key] = read_key(self._entries[key].folder)
        return self._read[key]

    def __iter__(self) -> Iterator[str]:
        return iter(self._entries)

    def __len__(self) -> int:
        return len(self._entries)
