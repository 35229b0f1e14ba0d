"""A key as one file: a zip with a list of digests, opened without trusting it."""

import hashlib
import json
import re
import zipfile
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path, PurePosixPath

from idkey.errors import IdKeyError
from idkey.formats.archive import entry_of, unpacked
from idkey.formats.draft import drafted
from idkey.formats.emit import text_of
from idkey.formats.folder import checked
from idkey.formats.pictures import KINDS, check_picture
from idkey.formats.problem import KeyProblems
from idkey.formats.replacing import replacing
from idkey.formats.texts import FILES, parsed_texts
from idkey.formats.write import folder_documents
from idkey.formats.yaml_text import LARGEST_FILE
from idkey.model.key import Key

ENDING = ".idkey"
"""Ending of package files."""

MANIFEST = "manifest.json"
FORMAT = 1

_PART = r"[A-Za-z0-9][A-Za-z0-9_.-]{0,99}"
_NAMES = re.compile(
    rf"{re.escape(MANIFEST)}|(?:{'|'.join(FILES)})\.yaml|taxa/{_PART}\.yaml"
    rf"|images/(?:{_PART}/){{0,5}}{_PART}(?:{'|'.join(map(re.escape, KINDS))})"
)
_DAMAGED = "Ask for the package again from where it came from."


@dataclass(frozen=True, slots=True)
class Package:
    """What a package holds, checked.

    Attributes:
        key: The key.
        files: Bytes per name: the key's files and its pictures below ``images/``.
    """

    key: Key
    files: Mapping[str, bytes] = field(repr=False)

    @property
    def pictures(self) -> Mapping[str, bytes]:
        """Bytes per path below images/."""
        return {
            name.removeprefix("images/"): raw
            for name, raw in self.files.items()
            if name.startswith("images/")
        }


def write_package(
    key: Key, file: Path, *, folder: Path | None = None, images: Path | None = None
) -> tuple[str, ...]:
    """Write `key` as one file; the same key gives the same bytes.

    Args:
        key: The key.
        file: Where to; replaced whole or not at all.
        folder: The key's folder, so that its comments and pictures go along; None writes the
            files anew.
        images: Folder with drawings for several keys: those of this key, and those that
            states name, go along; None packs none of them.

    Returns:
        What could not be packed, as sentences.

    Raises:
        IdKeyError: The folder holds another key, a picture is refused, or the disk is full.
    """
    contents = _own_files(key, folder)
    pictures, left = _pictures(key, images, folder)
    contents |= pictures
    digests = {name: hashlib.sha256(raw).hexdigest() for name, raw in sorted(contents.items())}
    about = {"format": FORMAT, "key": key.id, "version": key.version, "files": digests}
    manifest = json.dumps(about, indent=1, ensure_ascii=False).encode()
    with replacing(file) as new, zipfile.ZipFile(new, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, raw in {MANIFEST: manifest, **dict(sorted(contents.items()))}.items():
            archive.writestr(entry_of(name), raw, zipfile.ZIP_DEFLATED)
    return left


def _own_files(key: Key, folder: Path | None) -> dict[str, bytes]:
    documents = folder_documents(key)
    if folder is None:
        return {name: text_of(document).encode() for name, document in documents.items()}
    contents = {n: (folder / n).read_bytes() for n in documents if (folder / n).is_file()}
    found, _ = checked(drafted(folder, parsed_texts(folder, contents)))
    if found is None or (key.digest and found.digest != key.digest):
        raise IdKeyError(
            f"The folder {folder.name} no longer holds the key as it was opened.",
            "Save the key first, then pack it.",
        )
    return contents


def pictures_of(key: Key, images: Path | None, folder: Path | None) -> dict[str, Path]:
    """The files of a key's pictures by their name inside a key folder.

    Args:
        key: The key.
        images: Folder with drawings for several keys; None for none.
        folder: The key's own folder, whose pictures come first; None for none.
    """
    found: dict[str, Path] = {}
    roots = [images / "figures" / key.id] if images is not None else []
    roots += [folder / "images"] if folder is not None else []
    for root in roots:
        for file in sorted(root.rglob("*")):
            if file.suffix.lower() in KINDS and file.is_file() and not file.is_symlink():
                found[f"images/{file.relative_to(root).as_posix()}"] = file
    for figure in {state.figure for c in key.characters for state in c.states if state.figure}:
        name = f"images/{PurePosixPath(figure)}"
        if name not in found and images is not None and (images / figure).is_file():
            found[name] = images / figure
    return found


def _pictures(
    key: Key, images: Path | None, folder: Path | None
) -> tuple[dict[str, bytes], tuple[str, ...]]:
    files = pictures_of(key, images, folder)
    found: dict[str, bytes] = {}
    left: list[str] = []
    wanted = {state.figure for c in key.characters for state in c.states if state.figure}
    for figure in sorted(wanted):
        if f"images/{PurePosixPath(figure)}" not in files:
            left.append(f"The picture {figure} is not in the package, because it was not found.")
    for name, file in sorted(files.items()):
        raw = file.read_bytes()
        check_picture(name.removeprefix("images/"), raw)
        if not _NAMES.fullmatch(name):
            told = name.removeprefix("images/")
            left.append(f"The picture {told} is not in the package: its name has odd signs.")
            continue
        found[name] = raw
    return found, tuple(left)


def read_package(file: Path) -> Package:
    """The content of a package, in memory; nothing is written anywhere.

    Raises:
        KeyProblems: The key in it has mistakes.
        IdKeyError: It is damaged, too large, or holds what no key holds.
    """
    contents = dict(unpacked(file, _NAMES, LARGEST_FILE))
    _check_manifest(file.name, contents)
    for name, raw in contents.items():
        if name.startswith("images/"):
            check_picture(name, raw)
    own = {name: raw for name, raw in contents.items() if name.endswith(".yaml")}
    inside = Path(file.name)
    key, problems = checked(drafted(inside, parsed_texts(inside, own)))
    if key is None:
        raise KeyProblems(f"in {file.name}", problems)
    return Package(key, contents)


def _check_manifest(name: str, contents: dict[str, bytes]) -> None:
    """Take the manifest out of `contents` and hold the rest against it."""
    try:
        about = json.loads(contents.pop(MANIFEST, b"null"))
        digests = dict(about["files"])
        number = about["format"]
    except (ValueError, TypeError, KeyError, RecursionError) as err:
        raise IdKeyError(f"{name} has no list of its files.", _DAMAGED) from err
    if number != FORMAT:
        raise IdKeyError(
            f"{name} is written in package format {str(number)[:20]}; this program knows {FORMAT}.",
            "Install the newer program.",
        )
    for entry in sorted({*digests, *contents}, key=str):
        raw = contents.get(entry)
        if raw is None:
            raise IdKeyError(f"'{str(entry)[:80]}' is missing in {name}.", _DAMAGED)
        if digests.get(entry) != hashlib.sha256(raw).hexdigest():
            raise IdKeyError(f"'{entry}' in {name} is not as it was packed.", _DAMAGED)
