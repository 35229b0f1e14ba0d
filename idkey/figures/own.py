"""Pictures that lie beside a key: taken for that key only, and only when they merely show."""

from collections.abc import Iterable
from pathlib import Path

from idkey.errors import IdKeyError
from idkey.figures.tiles import KINDS, MEASURE, figure_path
from idkey.formats.pictures import LARGEST_PICTURE, check_picture
from idkey.model.key import Key

IMAGES = "images"
"""Name of the folder with the pictures of a key, inside the folder of the key."""


def own_images(libraries: Iterable[Path], key: Key) -> Path | None:
    """The folder with the key's own pictures; None when it has none.

    Args:
        libraries: Folders that hold one folder per key; the first that holds the key counts.
        key: The key.
    """
    for library in libraries:
        home = library / key.id
        if (home / "key.yaml").is_file():
            folder = home / IMAGES
            return folder if folder.is_dir() and _below(library, folder) else None
    return None


def own_figure(folder: Path, key: Key, character: str, state: str | None = None) -> Path | None:
    """A key's own figure of a state, or of how the number of a character is taken.

    Args:
        folder: Folder with the key's own pictures.
        key: The key.
        character: Character id.
        state: State id; None asks how to measure or count.

    Returns:
        The file, or None when there is none. What leads out of `folder`, is no picture, or
        would do more than show itself is not taken.
    """
    described = key.character.get(character)
    named = ""
    if described is not None and state in described.state_ids:
        named = described.state(str(state)).figure
    stem = folder / character / (state or MEASURE)
    files = [folder / named] if named else []
    files += [stem.with_name(stem.name + kind) for kind in KINDS]
    return next((file for file in files if _shows(folder, file)), None)


def shown_figure(
    images: Path,
    libraries: Iterable[Path],
    key: Key,
    *,
    character: str,
    state: str | None = None,
) -> Path | None:
    """The figure that is shown: the key's own, else the one in the image folder."""
    beside = own_images(libraries, key)
    own = own_figure(beside, key, character, state) if beside else None
    return own or figure_path(images, key, character, state)


def supplied(images: Path, key: Key, character: str, state: str, *, figure: Path | None) -> bool:
    """Whether a figure came with the key and is not the drawing of the program."""
    drawn = images / "figures" / key.id / character / f"{state}.svg"
    return figure is not None and figure != drawn


def supplied_terms(images: Path, key: Key, character: str, state: str, *, figure: Path) -> str:
    """Who made a figure that came with the key, and how it may be used; empty for others."""
    if not supplied(images, key, character, state, figure=figure):
        return ""
    known = key.character[character].state(state)
    return ", ".join(filter(None, (known.figure_credit, known.figure_licence)))


def _shows(folder: Path, file: Path) -> bool:
    try:
        if not (file.is_file() and _below(folder, file)):
            return False
        if file.stat().st_size > LARGEST_PICTURE:
            return False
        check_picture(file.name, file.read_bytes())
    except (OSError, ValueError, IdKeyError):  # ValueError: a name no file system takes
        return False
    return True


def _below(folder: Path, file: Path) -> bool:
    return file.resolve().is_relative_to(folder.resolve())
