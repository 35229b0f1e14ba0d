"""Text of couplets that cannot be read yet, kept on the disk until it can."""

import contextlib
from pathlib import Path

from idkey.places import data_folder, keep_private

FOLDER = "workshop-texts"


def draft_file(key_folder: Path) -> Path:
    """Where the unread text of a key's couplets is kept."""
    return data_folder() / FOLDER / f"{key_folder.resolve().name}-couplets.txt"


def kept_draft(key_folder: Path) -> str | None:
    """The unread text; None when there is none."""
    try:
        return draft_file(key_folder).read_text("utf-8")
    except (OSError, UnicodeDecodeError):
        return None


def keep_draft(key_folder: Path, text: str) -> None:
    """Keep an unread text; a full disk is no reason to stop somebody who types."""
    with contextlib.suppress(OSError):
        keep_private(draft_file(key_folder), text.encode())


def drop_draft(key_folder: Path) -> None:
    """Let go of it: it has been read, or is not wanted."""
    with contextlib.suppress(OSError):
        draft_file(key_folder).unlink(missing_ok=True)
