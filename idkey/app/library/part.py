"""The pages of the library, and the ways to begin a key."""

from enum import StrEnum


class Part(StrEnum):
    """A page of the library."""

    KEYS = "keys"
    VERSIONS = "versions"
    JOIN = "join"


class New(StrEnum):
    """What a new key begins as."""

    SHEET = "sheet"
    EMPTY = "empty"
    LEAVES = "leaves"
