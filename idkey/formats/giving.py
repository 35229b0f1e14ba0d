"""Every form in which a key goes out, and what each of them has to leave out."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.folder import write_key
from idkey.formats.json_key import write_json
from idkey.formats.nexus import write_nexus
from idkey.formats.package import ENDING, write_package
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
    write: Callable[[Source, Path], tuple[str, ...]]


def _package(source: Source, file: Path) -> tuple[str, ...]:
    return write_package(source.key, file, folder=source.folder, images=source.images)


def _json(source: Source, file: Path) -> tuple[str, ...]:
    new = file.with_name(f".{file.name}.new")
    try:
        new.write_text(write_json(source.key), encoding="utf-8", newline="\n")
        new.replace(file)
    except OSError as err:
        reason = err.strerror or "unknown reason"
        raise IdKeyError(f"{file.name} could not be written: {reason}.", "Make room.") from err
    finally:
        new.unlink(missing_ok=True)
    return _pictures_left(source.key)


def _folder(source: Source, place: Path) -> tuple[str, ...]:
    if place.exists() and (not place.is_dir() or any(place.iterdir())):
        raise IdKeyError(f"{place.name} is there already.", "Choose the name of a new folder.")
    if place.name != source.key.id:
        raise IdKeyError(
            f"A key folder is named after its key: {source.key.id}.",
            f"Write it to a folder named {source.key.id}.",
        )
    place.mkdir(parents=True, exist_ok=True)
    write_key(source.key, place)
    return _pictures_left(source.key)


def _pictures_left(key: Key) -> tuple[str, ...]:
    named = {state.figure for c in key.characters for state in c.states if state.figure}
    return (f"Pictures that states name are not in it ({len(named)}).",) if named else ()


WAYS = (
    Way("package", ENDING, _package),
    Way("xlsx", ".xlsx", lambda source, file: write_xlsx(source.key, file)),
    Way("ods", ".ods", lambda source, file: write_ods(source.key, file)),
    Way("csv", ".csv", lambda source, file: write_csv(source.key, file)),
    Way("json", ".json", _json),
    Way("sdd", ".xml", lambda source, file: write_sdd(source.key, file)),
    Way("nexus", ".nex", lambda source, file: write_nexus(source.key, file)),
    Way("folder", "", _folder),
)
"""All forms, the one that keeps everything first."""
