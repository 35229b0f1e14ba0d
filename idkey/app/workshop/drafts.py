"""Keeps unsaved work: every change at once, the newest one wins."""

import contextlib
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.workshop.editing import Editing
from idkey.errors import IdKeyError
from idkey.formats.key_draft import (
    DraftWriter,
    KeyDraft,
    draft_file,
    draft_folders,
    read_draft,
)
from idkey.places import keep_private

HERE = "on-the-table.txt"
"""File that names the folder of the key that is on the table."""


class Drafts(QObject):
    """Unsaved work by key folder, in files of their own.

    Args:
        folder: Where they are; made when needed.
        parent: Owner.

    Signals:
        failed(error: object): Work could not be kept; it is still on the table.
        settled(): Everything asked for so far is on the disk.
    """

    failed = Signal(object)
    settled = Signal()

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._folder = folder
        self._writer = DraftWriter()
        self._jobs = Jobs(threads=1, parent=self)
        self._waiting: Callable[[], None] | None = None
        self._under_way = False

    @property
    def busy(self) -> bool:
        """Whether something is not on the disk yet."""
        return self._under_way

    def keep(self, editing: Editing) -> None:
        """Keep what is edited, if it differs from what its folder says."""
        file = draft_file(self._folder, editing.folder)
        if not editing.dirty:
            self._write(lambda: file.unlink(missing_ok=True))
            return
        draft = KeyDraft(
            folder=editing.folder,
            saved=editing.saved,
            key=editing.key,
            past=tuple((step.key, step.words) for step in editing.past),
        )
        self._write(lambda: self._writer.write(draft, file))

    def drop(self, folder: Path) -> None:
        """Forget the unsaved work of a key."""
        file = draft_file(self._folder, folder)
        self._write(lambda: file.unlink(missing_ok=True))

    def of(self, folder: Path) -> KeyDraft | None:  # may run on a pool thread
        """The unsaved work of a key, as far as it is on the disk; None when there is none.

        Raises:
            IdKeyError: It cannot be read; it is put aside, so that nothing is written over it.
        """
        file = draft_file(self._folder, folder)
        try:
            return read_draft(file)
        except IdKeyError:
            with contextlib.suppress(OSError):
                file.replace(file.with_suffix(".damaged"))
            raise

    def folders(self) -> tuple[Path, ...]:
        """The key folders that have unsaved work, the one worked on last first."""
        self.flush()
        return draft_folders(self._folder)

    @property
    def here(self) -> Path | None:
        """The folder of the key that was on the table last; None when there was none."""
        try:
            said = (self._folder / HERE).read_text("utf-8").strip()
        except (OSError, ValueError):
            return None
        return Path(said) if said and "\0" not in said else None

    def put_here(self, folder: Path | None) -> None:
        """Remember which key is on the table."""
        with contextlib.suppress(OSError, UnicodeError):  # a convenience, nothing is lost
            said = "" if folder is None else str(folder)
            keep_private(self._folder / HERE, said.encode())

    def flush(self) -> None:
        """Wait until everything asked for so far is on the disk."""
        self._jobs.wait(10_000)
        if self._waiting is not None:
            work, self._waiting = self._waiting, None
            work()

    def close(self) -> None:
        """Finish what was asked for."""
        self.flush()
        self._jobs.close()

    def _write(self, work: Callable[[], None]) -> None:
        self._waiting = work
        if not self._under_way:
            self._start()

    def _start(self) -> None:
        work, self._waiting = self._waiting, None
        if work is None:
            return

        def run(_: Tick) -> None:  # on a pool thread
            work()

        self._under_way = True
        job = Job(run)
        job.failed.connect(self._on_failed)
        job.ended.connect(self._on_ended)
        self._jobs.start(job)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.failed.emit(error)

    @Slot()
    def _on_ended(self) -> None:
        self._under_way = False
        if self._waiting is not None:
            self._start()
        else:
            self.settled.emit()
