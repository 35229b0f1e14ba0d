"""The keys at hand, read when they are first needed."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.folder import KeyEntry, read_key
from idkey.formats.key_shelf import REMOVED, all_keys, free_name, put_in, set_aside
from idkey.formats.package import read_package
from idkey.model.key import Key


class KeyLibrary(Mapping[str, Key]):
    """Keys by id; the first one is the one to start with.

    It may be asked from several threads: what it knows is only ever replaced whole.

    Args:
        folder: Folder with one folder per key.
        first: Id of the key to start with; another one when there is no such key.
        own: Folder with the keys a person added; a shipped key of the same id comes first.
    """

    def __init__(self, folder: Path, first: str, own: Path | None = None) -> None:
        self._shipped = folder
        self._first = first
        self.own = own
        self._all: tuple[KeyEntry, ...] = ()
        self._entries: dict[str, KeyEntry] = {}
        self._read: dict[str, Key] = {}
        self._broken: frozenset[str] = frozenset()
        self.reload()

    @property
    def titles(self) -> tuple[tuple[str, str], ...]:
        """(id, title) of every key, without reading it."""
        return tuple((own, self._entries[own].title) for own in self)

    @property
    def entries(self) -> tuple[KeyEntry, ...]:
        """Every key folder, by title: also those that cannot be used as they stand."""
        return self._all

    @property
    def folders(self) -> tuple[Path, ...]:
        """Folders with one folder per key; of two keys of one id that in the first is used."""
        return (self._shipped,) if self.own is None else (self._shipped, self.own)

    @property
    def removed(self) -> Path | None:
        """Where keys go that are taken off the shelf; None when none can be added."""
        return None if self.own is None else self.own.parent / REMOVED

    def at_hand(self, key: str) -> bool:
        """Whether a key was read already."""
        return key in self._read

    def entry(self, key: str) -> KeyEntry | None:
        """The folder of a key; None when it is not here."""
        return self._entries.get(key)

    def reload(self) -> None:
        """Look again which keys there are; those that were read stay as they were read."""
        self._all = all_keys(self._shipped, self.own)
        usable = [entry for entry in self._all if not entry.problem]
        usable.sort(key=lambda entry: (entry.id != self._first, entry.title))
        self._entries = {entry.id: entry for entry in usable}
        self._read = {own: key for own, key in self._read.items() if own in self._entries}
        self._broken = frozenset()

    def forget(self, key: str) -> None:
        """Read a key anew when it is next asked for: its folder was written."""
        self._read = {own: read for own, read in self._read.items() if own != key}
        self.reload()

    def take_in(self, file: Path) -> str:
        """Add the key of a package to the person's own keys.

        Args:
            file: The package.

        Returns:
            The key's id. One that is here already with the same content is left as it is.

        Raises:
            KeyProblems: The key in it has mistakes.
            KeyIsHere: Another key of that id is here.
            IdKeyError: The package is refused.
        """
        package = read_package(file)
        return self.add(package.key, package.files, came_as=file.name)

    def add(
        self,
        key: Key,
        files: Mapping[str, bytes] | None = None,
        *,
        came_as: str = "",
        replaces: bool = False,
    ) -> str:
        """Add a key to the person's own keys.

        Args:
            key: The key.
            files: Files it came with.
            came_as: Name of what it came in, for messages.
            replaces: Whether it may take the place of one of the person's own; that one is
                kept among the removed keys.

        Returns:
            The key's id. One that is here already with the same content is left as it is.

        Raises:
            KeyProblems: It has mistakes.
            KeyIsHere: Another key of that id is here, and it may not be replaced.
            IdKeyError: No keys can be added here.
        """
        if self.own is None:
            raise IdKeyError("Keys cannot be added here.")
        entry = self._entries.get(key.id)
        if entry is not None:
            here = self[key.id]
            if here.digest == key.digest:
                return key.id
            if not (replaces and entry.own):
                raise KeyIsHere(came_as, key, here)
        put_in(key, self.own, files=files, removed=self.removed if replaces else None)
        self.forget(key.id)
        return key.id

    def free_id(self, wanted: str) -> str:
        """The id, or the id with the first number that no key here has."""
        return free_name(wanted, [entry.id for entry in self._all])

    def add_under(self, own: str, key: Key, files: Mapping[str, bytes] | None = None) -> str:
        """Add a key under another id, beside the one that has its id; raises as `add`."""
        return self.add(replace(key, id=own, digest=""), files)

    def remove(self, folder: Path) -> Path:
        """Take one of the person's own keys off the shelf; where its folder is now.

        Raises:
            IdKeyError: It came with the program, or the folder cannot be moved.
        """
        if self.own is None or self.removed is None or folder.parent != self.own:
            raise IdKeyError("That key came with the program.", "It stays where it is.")
        try:
            return set_aside(folder, self.removed)
        except OSError as err:
            reason = err.strerror or "unknown reason"
            raise IdKeyError(f"The key could not be removed: {reason}.") from err
        finally:
            self.forget(folder.name)

    def __getitem__(self, key: str) -> Key:
        if key not in self._read:
            try:
                read = read_key(self._entries[key].folder)
            except IdKeyError:
                self._broken |= {key}
                raise
            self._read = {**self._read, key: read}
        return self._read[key]

    def __contains__(self, key: object) -> bool:
        """Whether the key is here and can be read."""
        if not isinstance(key, str):
            return False
        try:
            self[key]
        except (KeyError, IdKeyError):
            return False
        return True

    def __iter__(self) -> Iterator[str]:
        return iter([own for own in self._entries if own not in self._broken])

    def __len__(self) -> int:
        return len(list(iter(self)))


class KeyIsHere(IdKeyError):  # noqa: N818 - named for what is the case
    """Another key of the same id is here, on which cases may rest."""

    def __init__(self, came_as: str, key: Key, here: Key) -> None:
        super().__init__(
            f"{came_as} holds the key '{key.id}' in version {key.version}; another one "
            f"of that name is here, in version {here.version}.",
            "Cases rest on the one that is here, so it was not replaced.",
        )
