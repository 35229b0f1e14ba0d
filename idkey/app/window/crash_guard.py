"""Counts starts that came to nothing, so that a case that brings the program down cannot lock it.

A start is noted before anything is opened and struck out once the program has stood for a while
or was closed. Whoever finds several notes in a row starts without opening the last cases again.
"""

import contextlib
import json
from pathlib import Path

from idkey.places import keep_private

FILE = "starts.json"

PATIENCE = 2
"""Starts in a row that may come to nothing before the next one is careful."""

STANDS_MS = 5_000
"""How long the program has to stand, in milliseconds, before its start counts as done."""


class CrashGuard:
    """The count of starts that came to nothing, kept in a folder.

    Args:
        folder: Where the count is kept.

    Attributes:
        failed: Starts in a row before this one that came to nothing.
    """

    def __init__(self, folder: Path) -> None:
        self._file = folder / FILE
        self.failed = self._read()

    @property
    def careful(self) -> bool:
        """Whether this start should open nothing that was open last time."""
        return self.failed >= PATIENCE

    def begin(self) -> None:
        """Note that a start is under way."""
        self._write(self.failed + 1)

    def done(self) -> None:
        """Note that it came to something."""
        self._file.unlink(missing_ok=True)

    def _read(self) -> int:
        try:
            return max(int(json.loads(self._file.read_text("utf-8"))["under_way"]), 0)
        except (OSError, ValueError, KeyError, TypeError):
            return 0

    def _write(self, count: int) -> None:
        with contextlib.suppress(OSError):  # a full disk is no reason not to start
            keep_private(self._file, json.dumps({"under_way": count}).encode())
