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


def keep_private(file: Path, content: bytes, *, durable: bool = False) -> None:
    """Write a file of the user's data, whole or not at all, for the eyes of its owner alone.

    Args:
        file: Where to; its folder is made when needed, and is the owner's alone too.
        content: What goes into it.
        durable: Whether to wait until it is on the disk, so that no power cut takes it away.

    Raises:
        OSError: It cannot be written; what was there before still is.
    """
    file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    partial = file.with_name(f"{file.name}.{os.getpid()}.partial")
    try:
        number = os.open(partial, os.O_CREAT | os.O_TRUNC | os.O_WRONLY, 0o600)
        with os.fdopen(number, "wb") as stream:
            stream.write(content)
            if durable:
                stream.flush()
                os.fsync(stream.fileno())
        partial.replace(file)
    finally:
        partial.unlink(missing_ok=True)


BOOK = "records.sqlite"
"""File of the record book in the data folder."""

PICTURES = "pictures"
"""Folder of the kept pictures in the data folder."""

BOOK_VARIABLE = "IDKEY_BOOK"
"""Environment variable that names another record book, as a file or postgresql:// address."""

BOOK_NOTE = "book.txt"
"""File in the data folder that may name another record book, where no variable does."""


def record_book(folder: Path | None = None) -> str:
    """Path or address of the record book, whether it is there or not.

    Several counters share one by naming the same server, each in its variable or note.

    Args:
        folder: The user's data; None takes the usual folder.

    Raises:
        OSError: The data folder cannot be made, or the note cannot be read.
    """
    folder = folder or data_folder()
    note = folder / BOOK_NOTE
    named = os.environ.get(BOOK_VARIABLE) or (note.read_text("utf-8") if note.is_file() else "")
    return named.strip() or str(folder / BOOK)


def _shipped(name: str) -> Path:
    """The folder inside an installed package, else at the top of the repository."""
    inside = PACKAGE / "_data" / name
    return inside if inside.is_dir() else PACKAGE.parent / name
