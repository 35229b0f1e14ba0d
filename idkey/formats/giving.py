"""Every form in which a key goes out, and what each of them has to leave out."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.arrival import key_files
from idkey.formats.json_key import write_json
from idkey.formats.key_shelf import put_in
from idkey.formats.nexus import write_nexus
from idkey.formats.package import ENDING, pictures_of, write_package
from idkey.formats.replacing import replacing
from idkey.formats.sdd import write_sdd
from idkey.formats.table import write_csv, write_ods, write_xlsx
from idkey.model.key import Key


@dataclass(frozen=True, slots=True, kw_only=True)
class Source:
    """A key that is handed out.

    Attributes:
        key: The key.
        folder: Where it lies, so that its comments go along; None for one in memory.
        images: Folder with the drawings that its states name; None for none.
    """

    key: Key
    folder: Path | None = None
    images: Path | None = None


Write = Callable[[Source, Path], tuple[str, ...]]

_COMMENT = re.compile(rb"^\s*#|^[^\"'#]*\s#\s", re.MULTILINE)


@dataclass(frozen=True, slots=True)
class Way:
    """A form in which a key goes out.

    Attributes:
        id: Stable name.
        ending: Ending of its files; empty for a folder.
        write: Writes it to a place that is replaced whole or not at all, and returns what had to
            be left out, as sentences.
    """

    id: str
    ending: str
    write: Write


def _package(source: Source, file: Path) -> tuple[str, ...]:
    return write_package(source.key, file, folder=source.folder, images=source.images)


def _json(key: Key, file: Path) -> tuple[str, ...]:
    with replacing(file) as new:
        new.write_text(write_json(key), encoding="utf-8", newline="\n")
    return ()


def _folder(source: Source, place: Path) -> tuple[str, ...]:
    if place.exists():
        raise IdKeyError(f"{place.name} is there already.", "Choose the name of a new folder.")
    if place.name != source.key.id:
        raise IdKeyError(
            f"A key folder is named after its key: {source.key.id}.",
            f"Write it to a folder named {source.key.id}.",
        )
    files = key_files(source.folder) if source.folder is not None else {}
    for name, file in pictures_of(source.key, source.images, source.folder).items():
        files[name] = file.read_bytes()
    put_in(source.key, place.parent, files=files)
    return ()


def _plain(write: Callable[[Key, Path], tuple[str, ...]]) -> Write:
    """A way that holds neither the pictures of a key nor the comments of its files."""

    def told(source: Source, file: Path) -> tuple[str, ...]:
        return (*write(source.key, file), *_lost(source))

    return told


def _lost(source: Source) -> Iterator[str]:
    if pictures := pictures_of(source.key, source.images, source.folder):
        number = len(pictures)
        yield f"The key's {'picture is' if number == 1 else f'{number} pictures are'} not in it."
    if source.folder is not None and any(map(_commented, key_files(source.folder).values())):
        yield "Comments in the key's files are not in it."


def _commented(raw: bytes) -> bool:
    return _COMMENT.search(raw) is not None


WAYS = (
    Way("package", ENDING, _package),
    Way("xlsx", ".xlsx", _plain(write_xlsx)),
    Way("ods", ".ods", _plain(write_ods)),
    Way("csv", ".csv", _plain(write_csv)),
    Way("json", ".json", _plain(_json)),
    Way("sdd", ".xml", _plain(write_sdd)),
    Way("nexus", ".nex", _plain(write_nexus)),
    Way("folder", "", _folder),
)
"""All forms, the one that keeps everything first."""
