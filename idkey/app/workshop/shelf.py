"""Which keys can be edited, and where: own ones in place, shipped ones as a copy."""

import os
import shutil
import tempfile
from dataclasses import dataclass, replace
from pathlib import Path

from idkey import places
from idkey.app.workshop.forms_entries import is_id
from idkey.errors import IdKeyError
from idkey.figures.own import IMAGES
from idkey.formats.document import LONGEST_ID
from idkey.formats.folder import KeyEntry, write_key
from idkey.formats.key_shelf import OWN, all_keys, free_name
from idkey.formats.texts import FILES
from idkey.formats.yaml_text import read_yaml
from idkey.model.key import Key


@dataclass(frozen=True, slots=True, kw_only=True)
class Shelf:
    """Where keys are.

    Attributes:
        shipped: Folder of the keys that came with the program.
        own: Folder of the person's own keys; made when needed.
        images: Folder of the drawings, some of which belong to one shipped key.
    """

    shipped: Path
    own: Path
    images: Path

    @classmethod
    def usual(cls, data: Path) -> "Shelf":
        """The shipped keys, and those in the data folder."""
        return cls(shipped=places.keys_folder(), own=data / OWN, images=places.images_folder())

    def keys(self) -> tuple[KeyEntry, ...]:
        """Own keys first, then those that came with the program."""
        return tuple(sorted(all_keys(self.shipped, self.own), key=lambda entry: not entry.own))

    def came_with_program(self, folder: Path) -> bool:
        """Whether a key folder lies among the shipped ones."""
        return self.shipped.resolve() in folder.resolve().parents

    def free_id(self, key_id: str) -> str:
        """An id for a copy of a key that no key here has."""
        return free_name(f"my-{key_id}"[: LONGEST_ID - 4], [entry.id for entry in self.keys()])

    def complaint(self, key_id: str) -> IdKeyError | None:
        """Why a new key cannot be called that; None when it can."""
        if not is_id(key_id):
            return IdKeyError(
                f"'{key_id[:40]}' is no id for a key.",
                "Use letters, digits, '-', '_' and '.', without spaces.",
            )
        taken = {entry.id.casefold() for entry in self.keys()}
        if key_id.casefold() in taken or (self.own / key_id).exists():
            return IdKeyError(f"There is a key called '{key_id}' already.", "Choose another id.")
        return None

    def copy(self, folder: Path, key_id: str) -> Path:
        """Copy a key to the own ones as it stands, with comments and drawings.

        Args:
            folder: The key.
            key_id: The id of the copy.

        Returns:
            The new folder, named after the id.

        Raises:
            IdKeyError: The id cannot be had, or the folder cannot be read or written.
        """
        if (wrong := self.complaint(key_id)) is not None:
            raise wrong
        try:
            self.own.mkdir(mode=0o700, parents=True, exist_ok=True)
            with tempfile.TemporaryDirectory(dir=self.own, prefix=".new-") as near:
                new = Path(near) / key_id
                _copy_files(folder, new)
                self._copy_drawings(folder, new)
                _name(new / "key.yaml", key_id)
                new.replace(self.own / key_id)
        except OSError as err:
            reason = err.strerror or "unknown reason"
            raise IdKeyError(
                f"The key could not be copied to {self.own}: {reason}.",
                "Make room or ask for the right to write there.",
            ) from err
        return self.own / key_id

    def room_for(self, key: Key, key_id: str, *, like: Path) -> Path:
        """A copy of the folder `like`, or of `key` where that was taken away; raises as `copy`."""
        if (like / "key.yaml").is_file():
            return self.copy(like, key_id)
        if (wrong := self.complaint(key_id)) is not None:
            raise wrong
        write_key(replace(key, id=key_id, digest=""), self.own / key_id)
        return self.own / key_id

    def _copy_drawings(self, folder: Path, new: Path) -> None:
        beside = folder / IMAGES
        theirs = beside if beside.is_dir() else self.images / "figures" / folder.name
        if theirs.is_dir():
            shutil.copytree(theirs, new / IMAGES)


def writable(folder: Path) -> bool:
    """Whether a key folder and the files in it can be changed."""
    taxa = folder / "taxa"
    files = [folder / f"{name}.yaml" for name in FILES]
    places_ = [folder, *(one for one in (taxa, *files) if one.exists())]
    return all(os.access(one, os.W_OK) for one in places_)


def _copy_files(folder: Path, new: Path) -> None:
    (new / "taxa").mkdir(parents=True)
    for name in FILES:
        if (folder / f"{name}.yaml").is_file():
            shutil.copyfile(folder / f"{name}.yaml", new / f"{name}.yaml")
    for file in sorted((folder / "taxa").glob("*.yaml")):
        shutil.copyfile(file, new / "taxa" / file.name)


def _name(file: Path, key_id: str) -> None:
    """Write another id into key.yaml, and leave every other line as it is."""
    yaml, problems = read_yaml(file)
    if yaml is None:
        raise IdKeyError(str(problems[0]), "Mend the file, then copy the key.")
    lines = yaml.text.splitlines(keepends=True)
    place = yaml.place(("id",))[0] - 1
    lines[place] = f"id: {key_id}\n"
    file.write_text("".join(lines), "utf-8", newline="\n")
