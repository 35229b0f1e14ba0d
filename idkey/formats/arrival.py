"""What comes in, whatever its name says: recognised by its content, read, checked."""

import io
import re
import zipfile
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.formats.archive import LARGEST_ARCHIVE, LARGEST_TOTAL
from idkey.formats.folder import check_key
from idkey.formats.imported import Imported
from idkey.formats.json_key import parse_json
from idkey.formats.nexus_reading import parse_nexus
from idkey.formats.package import MANIFEST, read_package
from idkey.formats.pictures import KINDS, LARGEST_PICTURE, check_picture
from idkey.formats.problem import KeyProblems
from idkey.formats.sdd_reading import parse_sdd
from idkey.formats.sheet import Sheet, parse_sheets
from idkey.formats.table_reading import table_of, whole_key
from idkey.formats.texts import FILES
from idkey.model.key import Key

MOST_PICTURES = 5_000
"""Pictures of a key folder that are taken along."""

MOST_TAXA = 30_000
"""Rows of somebody's spreadsheet, each of which would be a taxon."""

_HEAD = 4096
_KINDS = "Take a package (.idkey), a key folder, JSON, SDD, NEXUS, CSV, XLSX or ODS."
_NO_KEYS = {
    b"%PDF": "a PDF",
    b"\x89PNG": "a picture",
    b"\xff\xd8\xff": "a picture",
    b"GIF8": "a picture",
    b"RIFF": "a picture",
    b"\xd0\xcf\x11\xe0": "a spreadsheet of the old binary kind",
    b"SQLite format 3": "a record book",
    b"\x1f\x8b": "a compressed file",
    b"7z\xbc\xaf": "a compressed file",
}


class Form(StrEnum):
    """What a key came as."""

    FOLDER = "folder"
    PACKAGE = "package"
    JSON = "JSON"
    SDD = "SDD"
    NEXUS = "NEXUS"
    SHEET = "spreadsheet"


@dataclass(frozen=True, slots=True, kw_only=True)
class Arrival:
    """A key that came in; nothing is written anywhere yet.

    Attributes:
        file: What was read.
        form: What it came as.
        key: The key.
        notes: What was left out, changed or guessed, as sentences.
        files: Bytes per file name of the key's folder, where it came with one.
    """

    file: Path
    form: Form
    key: Key
    notes: tuple[str, ...] = ()
    files: Mapping[str, bytes] = field(default_factory=dict, repr=False)


@dataclass(frozen=True, slots=True)
class Grid:
    """Somebody's spreadsheet: it says no whole key, so its columns have to be explained.

    Attributes:
        file: What was read.
        sheets: Its sheets; at least one.
    """

    file: Path
    sheets: tuple[Sheet, ...]


def read_arrival(place: Path) -> Arrival | Grid:
    """The key in a file or folder, or the spreadsheet that may become one.

    Raises:
        KeyProblems: The key in it has mistakes.
        IdKeyError: It is refused, or holds no key.
    """
    if place.is_dir():
        return _folder(place)
    if place.name == "key.yaml":
        return _folder(place.parent)
    if place.exists() and not place.is_file():
        raise IdKeyError(f"{place.name} is no plain file.", _KINDS)
    try:
        with place.open("rb") as stream:
            raw = stream.read(LARGEST_ARCHIVE + 1)
    except OSError as err:
        reason = err.strerror or "unknown reason"
        raise IdKeyError(f"{place.name} cannot be read: {reason}.", "Check the file.") from err
    if len(raw) > LARGEST_ARCHIVE:
        raise IdKeyError(f"{place.name} is larger than any key needs.", _KINDS)
    if raw[:2] == b"PK":
        return _zipped(raw, place)
    return arrival_of(raw, place)


def arrival_of(raw: bytes, file: Path) -> Arrival | Grid:
    """The same of text, such as what was copied; raises as `read_arrival`."""
    head = raw[:_HEAD]
    for sign, what in _NO_KEYS.items():
        if head.startswith(sign):
            raise IdKeyError(f"{file.name} is {what}, and holds no key.", _KINDS)
    text = _text(head, file)
    if text.startswith("<"):
        return _read(Form.SDD, parse_sdd(raw, file), file)
    if text[:6].upper() == "#NEXUS":
        return _read(Form.NEXUS, parse_nexus(raw, file.name), file)
    if text[:1] in ("{", "["):
        return _read(Form.JSON, Imported(parse_json(raw, file)), file)
    if re.match(r"(#.*\n|\s)*(format|id|title):", text):
        raise IdKeyError(f"{file.name} is one file of a key folder.", "Take the whole folder.")
    return _sheets(parse_sheets(raw, file.name, ".csv"), file)


def _text(head: bytes, file: Path) -> str:
    """The start of a text, without what stands before its first sign."""
    if head[:2] in (b"\xff\xfe", b"\xfe\xff"):
        return head.decode("utf-16", "replace").lstrip("\ufeff \t\r\n")
    if b"\x00" in head:
        raise IdKeyError(f"{file.name} is no text, and no file this program reads.", _KINDS)
    text = head.decode("utf-8-sig", "replace").lstrip()
    if not text:
        raise IdKeyError(f"{file.name} is empty.", "Choose another file.")
    return text


def _read(form: Form, found: Imported, file: Path) -> Arrival:
    return Arrival(file=file, form=form, key=found.key, notes=found.notes)


def _sheets(sheets: tuple[Sheet, ...], file: Path) -> Arrival | Grid:
    if whole_key(sheets):
        return _read(Form.SHEET, table_of(sheets, file), file)
    for sheet in sheets:
        if len(sheet.rows) > MOST_TAXA:
            raise IdKeyError(
                f"The sheet '{sheet.name[:40]}' in {file.name} has more rows than a key can have "
                "taxa.",
                "Split it, or remove rows and columns that are not needed.",
            )
    return Grid(file, sheets)


def _zipped(raw: bytes, file: Path) -> Arrival | Grid:
    try:
        names = set(zipfile.ZipFile(io.BytesIO(raw)).namelist())
    except (zipfile.BadZipFile, ValueError, OSError, NotImplementedError) as err:
        raise IdKeyError(f"{file.name} is damaged.", "Ask for the file again.") from err
    if MANIFEST in names or "key.yaml" in names:
        package = read_package(file)
        return Arrival(file=file, form=Form.PACKAGE, key=package.key, files=package.files)
    if "xl/workbook.xml" in names or "[Content_Types].xml" in names:
        return _sheets(parse_sheets(raw, file.name, ".xlsx"), file)
    if "content.xml" in names:
        return _sheets(parse_sheets(raw, file.name, ".ods"), file)
    raise IdKeyError(f"{file.name} is a zip file, but no key package and no spreadsheet.", _KINDS)


def _folder(place: Path) -> Arrival:
    """The key of a folder, or of the one folder in it that holds a key."""
    if not (place / "key.yaml").is_file():
        inside = [file.parent for file in sorted(place.glob("*/key.yaml"))[:2]]
        if len(inside) != 1:
            several = "several keys" if inside else "no key.yaml"
            raise IdKeyError(f"The folder {place.name} holds {several}.", "Take one key folder.")
        place = inside[0]
    key, problems = check_key(place)
    if key is None:
        raise KeyProblems(place.name, problems)
    notes: list[str] = []
    files = key_files(place) | _pictures(place, notes.append)
    told = tuple(str(problem) for problem in problems)
    return Arrival(file=place, form=Form.FOLDER, key=key, notes=(*told, *notes), files=files)


def key_files(place: Path) -> dict[str, bytes]:
    """The bytes of a key's own files by their name inside its folder."""
    names = [f"{name}.yaml" for name in FILES]
    names += [f"taxa/{file.name}" for file in sorted((place / "taxa").glob("*.yaml"))]
    return {name: (place / name).read_bytes() for name in names if (place / name).is_file()}


def _pictures(place: Path, tell: Callable[[str], None]) -> dict[str, bytes]:
    """Pictures below images/ that may be shown; the others stay behind."""
    found: dict[str, bytes] = {}
    total = 0
    images = place / "images"
    files = [file for file in sorted(images.rglob("*")) if file.is_file() and not file.is_symlink()]
    for number, file in enumerate(files):
        name = file.relative_to(place).as_posix()
        total += file.stat().st_size
        if number >= MOST_PICTURES or total > LARGEST_TOTAL:
            tell(f"From {name} on, pictures were left behind: there are more than a key needs.")
            break
        try:
            found[name] = _picture(file, name)
        except IdKeyError as err:
            tell(f"{name} was left behind: {err.problem}")
    return found


def _picture(file: Path, name: str) -> bytes:
    if not file.name.lower().endswith(KINDS):
        raise IdKeyError("It is no kind of picture that a key may hold.")
    with file.open("rb") as stream:
        raw = stream.read(LARGEST_PICTURE + 1)
    check_picture(name, raw)
    return raw
