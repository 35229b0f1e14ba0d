"""What the program does beside the window once that stands: opening, copying, taking keys in."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot

from idkey import places
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.key_library import KeyIsHere, KeyLibrary
from idkey.app.window.program import Folders, Opened, opened
from idkey.store.book import Store


class Errands(QObject):
    """Runs one errand after another on a thread.

    Args:
        parent: Owner.

    Signals:
        opened(parts: object): Records and keys are open.
        taken_in(key: str): The key of a package was added; its id.
        refused(package: object): Another key of that id is here, so the package is to be looked at.
        failed(error: object): An errand could not be done.
    """

    opened = Signal(object)
    taken_in = Signal(str)
    refused = Signal(object)
    failed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs = Jobs(threads=1, parent=self)

    def wait(self) -> None:
        """Let what is under way come to its end."""
        self._jobs.wait(10_000)

    def open(self) -> None:
        """Open records and keys; `opened` follows."""
        self._start(lambda: opened(folders()), self._on_opened)

    def back_up(self, store: Store) -> None:
        """Copy the record book where that is due."""
        self._start(lambda: store.back_up(only_if_due=True), None)

    def take_in(self, keys: KeyLibrary, package: Path) -> None:
        """Add the key of a package; `taken_in` follows."""

        def take() -> str | Path:  # on a pool thread
            try:
                return keys.take_in(package)
            except KeyIsHere:
                return package

        self._start(take, self._on_taken_in)

    def _start(self, do: Callable[[], object], then: Callable[[Any], None] | None) -> None:
        def work(tick: Tick) -> object:  # on a pool thread
            tick(0, 1)
            return do()

        job = Job(work)
        if then is not None:
            job.succeeded.connect(then)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    @Slot(object)
    def _on_opened(self, parts: Opened) -> None:
        self.opened.emit(parts)

    @Slot(object)
    def _on_taken_in(self, found: str | Path) -> None:
        if isinstance(found, Path):
            self.refused.emit(found)
        else:
            self.taken_in.emit(found)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.failed.emit(error)


def folders() -> Folders:
    """Where data, keys and drawings are on this machine."""
    return Folders(
        data=places.data_folder(), keys=places.keys_folder(), images=places.images_folder()
    )
