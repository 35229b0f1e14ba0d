"""One program per person and machine: a second start rings the first one's bell and leaves.

A lock file says who is at home; what is to be opened is left as a note in a folder that the one
at home watches. No socket is opened.
"""

import platform
import uuid
from pathlib import Path

from PySide6.QtCore import QFileSystemWatcher, QLockFile, QObject, Signal, Slot

from idkey.places import keep_private

ENDING = ".note"


class Doorbell(QObject):
    """The bell of one data folder on this machine.

    Args:
        folder: The data folder.
        parent: Owner.

    Signals:
        rung(file: str): Somebody started the program again; `file` is what to open, or empty.
    """

    rung = Signal(str)

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        # A data folder may lie on a shared disk: each machine has a bell of its own.
        self._notes = folder / "bell" / (platform.node() or "here")
        self._lock: QLockFile | None = None
        self._watcher: QFileSystemWatcher | None = None

    def answer(self) -> bool:
        """Be the one at home; False when somebody is already.

        Where no lock can be made the program opens all the same.
        """
        try:
            self._notes.mkdir(mode=0o700, parents=True, exist_ok=True)
        except OSError:
            return True
        lock = QLockFile(str(self._notes / "home.lock"))
        lock.setStaleLockTime(0)  # a program may stand for days; a dead one is noticed by its id
        if not lock.tryLock(0) and lock.error() is QLockFile.LockError.LockFailedError:
            return False
        self._lock = lock
        for note in self._notes.glob(f"*{ENDING}"):
            note.unlink(missing_ok=True)
        self._watcher = QFileSystemWatcher([str(self._notes)], self)
        self._watcher.directoryChanged.connect(self._on_watcher_directory_changed)
        return True

    def ring(self, file: str = "") -> None:
        """Leave a note for the one at home.

        Raises:
            OSError: It cannot be written.
        """
        keep_private(self._notes / f"{uuid.uuid4().hex}{ENDING}", file.encode())

    def leave(self) -> None:
        """Nobody is at home any more."""
        if self._watcher is not None:
            self._watcher.deleteLater()
            self._watcher = None
        if self._lock is not None:
            self._lock.unlock()
            self._lock = None

    @Slot()
    def _on_watcher_directory_changed(self) -> None:
        for note in sorted(self._notes.glob(f"*{ENDING}")):
            try:
                file = note.read_text("utf-8")
            except (OSError, ValueError):
                continue
            note.unlink(missing_ok=True)
            self.rung.emit(file)
