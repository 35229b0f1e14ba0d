"""Reads a large key off the UI thread before something is done with it."""

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.key_library import KeyLibrary

MANY = 60
"""Taxa from which reading a key takes long enough to be felt (1.8 s for 1,000, measured)."""


class Fetcher(QObject):
    """Has a key at hand before something is done with it; only the newest wish is kept.

    Args:
        keys: The keys.
        parent: Owner.

    Signals:
        fetching(busy: bool): A key is being read, or not any more.
        failed(error: object): It cannot be read, or what was to be done with it failed.
    """

    fetching = Signal(bool)
    failed = Signal(object)

    def __init__(self, keys: KeyLibrary, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._keys = keys
        self._jobs = Jobs(threads=1, parent=self)
        self._wish: tuple[str, Callable[[], None]] | None = None

    def close(self) -> None:
        """Let go of work under way."""
        self._jobs.close()

    def have(self, key: str, then: Callable[[], None]) -> None:
        """Do `then` with a key: at once where that key is read already or is quick to read."""
        self._wish = None
        if not self._heavy(key):
            then()
            return
        self._wish = (key, then)
        keys = self._keys

        def work(tick: Tick) -> str:  # on a pool thread
            tick(0, 1)
            return keys[key].id

        job = Job(work)
        job.succeeded.connect(self._on_read)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)
        self.fetching.emit(True)

    def _heavy(self, key: str) -> bool:
        entry = None if self._keys.at_hand(key) else self._keys.entry(key)
        taxa = entry.folder / "taxa" if entry is not None else None
        return taxa is not None and taxa.is_dir() and sum(1 for _ in taxa.iterdir()) >= MANY

    @Slot(object)
    def _on_read(self, key: str) -> None:
        if self._wish is None or self._wish[0] != key:
            return
        _, then = self._wish
        self._wish = None
        self.fetching.emit(False)
        try:
            then()
        except Exception as err:  # noqa: BLE001 - becomes a message
            self.failed.emit(err)

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self._wish = None
        self.fetching.emit(False)
        self.failed.emit(error)
