"""Where the shipped keys, images and manual are, and where the user's own data goes."""

import os
from pathlib import Path

import platformdirs

PACKAGE = Path(__file__).resolve().parent

FONT_FAMILY = "Idkey Sans"
"""Family name of `font_files`; no other program installs it, so it is never mistaken."""

DATA_VARIABLE = "IDKEY_DATA"
"""Environment variable that puts the user's data somewhere else."""


def keys_folder() -> Path:
    """Folder with one folder per shipped key."""
    return _shipped("keys")


def images_folder() -> Path:
    """Folder with the drawings and the font."""
    return _shipped("images")


def docs_folder() -> Path:
    """Folder with the manual."""
    return _shipped("docs")


def font_files() -> tuple[Path, ...]:
    """The shipped font: Bold, BoldItalic, Italic, Regular, as TrueType."""
    return tuple(sorted((images_folder() / "fonts").glob("*.ttf")))


def data_folder() -> Path:
    """Folder for the user's data; it exists and only its owner may enter it.

    Raises:
        OSError: It cannot be made.
    """
    asked = os.environ.get(DATA_VARIABLE)
    folder = Path(asked) if asked else platformdirs.user_data_path("idkey", appauthor=False)
    if not folder.is_dir():
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    return folder


def _shipped(name: str) -> Path:
    """The folder inside an installed package, else at the top of the repository."""
    inside = PACKAGE / "_data" / name
    return inside if inside.is_dir() else PACKAGE.parent / name
