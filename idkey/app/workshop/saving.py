"""Writing a key to its folder, without taking anybody by surprise."""

from pathlib import Path

from idkey.app.workshop.editing import Editing, same_content
from idkey.app.workshop.shelf import Shelf, writable
from idkey.errors import IdKeyError
from idkey.formats.folder import check_key, mendable_key, read_key, write_key
from idkey.model.key import Key


class NotWritable(IdKeyError):  # noqa: N818 - named for what is the case
    """The folder may not be written; the key can be saved as a copy."""


class ChangedMeanwhile(IdKeyError):  # noqa: N818 - named for what is the case
    """The folder no longer says what it said when editing began.

    Attributes:
        folder: The folder.
        base: The key when editing began.
        mine: The key as edited.
        theirs: The key as the folder says it now; None when it has mistakes, or is gone.
    """

    def __init__(self, folder: Path, base: Key, *, mine: Key, theirs: Key | None) -> None:
        super().__init__(
            f"The key {folder.name} was changed on the disk while you worked on it.",
            "Nothing was overwritten. Look at what changed there, then choose.",
        )
        self.folder = folder
        self.base, self.mine, self.theirs = base, mine, theirs


def ready(editing: Editing, shelf: Shelf) -> IdKeyError | None:
    """Why the folder of a key may not be written; None when it may."""
    folder = editing.folder
    if shelf.came_with_program(folder):
        return NotWritable(
            f"The key {folder.name} came with the program and stays as it is.",
            "Save it as your own copy.",
        )
    if folder.is_dir() and not writable(folder):
        return NotWritable(
            f"The folder {folder} may not be written.",
            "Save the key as your own copy, or ask for the right to write there.",
        )
    return None


def written(editing: Editing, *, over: bool) -> Key:  # on a pool thread
    """Write the key to its folder; the key as the folder says it now.

    Args:
        editing: The key, and what its folder said when editing began.
        over: Whether the folder is written whatever it says now.

    Raises:
        ChangedMeanwhile: It says something else now, and may not be overwritten.
        KeyProblems: The key has mistakes.
        IdKeyError: The folder cannot be written.
    """
    if not over:
        theirs = check_key(editing.folder)[0]
        if not _as_opened(editing, theirs):
            raise ChangedMeanwhile(editing.folder, editing.saved, mine=editing.key, theirs=theirs)
    write_key(editing.key, editing.folder)
    return read_key(editing.folder)


def _as_opened(editing: Editing, theirs: Key | None) -> bool:
    """Whether the folder says what it said when editing began, be it with the same mistakes."""
    if theirs is not None:
        return theirs.digest == editing.saved.digest
    there = mendable_key(editing.folder)
    return there is not None and same_content(there, editing.saved)
