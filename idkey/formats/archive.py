"""Zip files from strangers: bounded in number, size and growth, with names of a known shape."""

import re
import stat
import zipfile
import zlib
from collections.abc import Iterator
from pathlib import Path

from idkey.errors import IdKeyError

LARGEST_ARCHIVE = 64 * 2**20
LARGEST_TOTAL = 96 * 2**20
MOST_ENTRIES = 30_000
MOST_GROWTH = 200
"""How many times its packed size an entry of more than a megabyte may unpack to."""

_FREE = 2**20
_BLOCK = 2**16
_REMEDY = "Ask for the file again from where it came from; do not use this one."


def unpacked(file: Path, names: re.Pattern[str], largest: int) -> Iterator[tuple[str, bytes]]:
    """The entries of a zip file, one after another, in memory.

    Args:
        file: The zip file.
        names: What the name of an entry must look like as a whole.
        largest: Most bytes of one entry.

    Raises:
        IdKeyError: It is no zip file, or breaks one of the bounds.
    """
    try:
        if file.stat().st_size > LARGEST_ARCHIVE:
            raise IdKeyError(f"{file.name} is larger than any key needs.", _REMEDY)
        with zipfile.ZipFile(file) as archive:
            entries = [entry for entry in archive.infolist() if not entry.is_dir()]
            _check_entries(file.name, entries, names)
            total = 0
            for entry in entries:
                raw = _content(file.name, archive, entry, largest)
                total += len(raw)
                if total > LARGEST_TOTAL:
                    raise IdKeyError(f"{file.name} unpacks to more than any key needs.", _REMEDY)
                yield entry.filename, raw
    except OSError as err:
        reason = err.strerror or "it is damaged"
        raise IdKeyError(f"{file.name} cannot be read: {reason}.", "Check the file.") from err
    except (
        zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, ValueError, RuntimeError,
    ) as err:  # fmt: skip
        raise IdKeyError(f"{file.name} is damaged, or no package at all.", _REMEDY) from err


def entry_of(name: str) -> zipfile.ZipInfo:
    """What a zip file says about a plain file in it: the same on every day and machine."""
    entry = zipfile.ZipInfo(name, date_time=(1980, 1, 1, 0, 0, 0))
    entry.external_attr = 0o100644 << 16
    entry.create_system = 3
    return entry


def _check_entries(archive: str, entries: list[zipfile.ZipInfo], names: re.Pattern[str]) -> None:
    if len(entries) > MOST_ENTRIES:
        raise IdKeyError(f"{archive} holds more than {MOST_ENTRIES} files.", _REMEDY)
    before: set[str] = set()
    for entry in entries:
        name = entry.filename
        mode = entry.external_attr >> 16
        if stat.S_IFMT(mode) not in (0, stat.S_IFREG):
            raise IdKeyError(f"{archive} holds '{name}', which is not a plain file.", _REMEDY)
        if not names.fullmatch(name):
            raise IdKeyError(f"{archive} holds '{name[:80]}', which is no file of a key.", _REMEDY)
        if name.casefold() in before:
            raise IdKeyError(f"{archive} holds '{name}' twice.", _REMEDY)
        before.add(name.casefold())
        if entry.flag_bits & 1:
            raise IdKeyError(f"{archive} is locked with a password.", "Ask for it without one.")


def _content(name: str, archive: zipfile.ZipFile, entry: zipfile.ZipInfo, largest: int) -> bytes:
    """The bytes of an entry, which may lie about its size."""
    parts: list[bytes] = []
    size = 0
    allowed = min(largest, max(_FREE, entry.compress_size * MOST_GROWTH))
    with archive.open(entry) as stream:
        while block := stream.read(_BLOCK):
            size += len(block)
            if size > allowed:
                raise IdKeyError(
                    f"'{entry.filename}' in {name} unpacks to more than any key needs.", _REMEDY
                )
            parts.append(block)
    return b"".join(parts)
