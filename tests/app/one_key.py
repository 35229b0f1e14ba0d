"""A library of one key that was made in a test."""

from collections.abc import Iterator
from pathlib import Path

from idkey.app.parts.key_library import KeyLibrary
from idkey.model.key import Key


class OneKey(KeyLibrary):
    """A library of one key that was made here."""

    def __init__(self, key: Key) -> None:
        super().__init__(Path("no shipped keys"), key.id)
        self._key = key

    @property
    def titles(self) -> tuple[tuple[str, str], ...]:
        return ((self._key.id, self._key.title),)

    def at_hand(self, key: str) -> bool:
        return key == self._key.id

    def __getitem__(self, key: str) -> Key:
        return {self._key.id: self._key}[key]

    def __iter__(self) -> Iterator[str]:
        return iter((self._key.id,))

    def __len__(self) -> int:
        return 1
