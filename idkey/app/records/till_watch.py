"""Watches the folder of a till while the window is open, whatever is on the screen."""

import json
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs
from idkey.app.parts.keeper import kept_setting
from idkey.app.records.work import Shelf
from idkey.places import PICTURES, data_folder
from idkey.report.language import Language
from idkey.report.recorded import sale_writer
from idkey.store.record import Sale, StoredCase
from idkey.store.watching import Attached, SaleFolder

SETTING = "records/watch"
"""Setting that says which folder is watched."""

EVERY_MS = 5000
"""Time between two looks."""

KEPT = 200
"""Rationales that are remembered to be shown."""


class TillWatch(QObject):
    """Puts the rationale of each sale beside the till's file or folder of its number.

    Args:
        shelf: Cases and keys.
        language: Language of the rationales.
        parent: Owner.

    Attributes:
        folder: The watched folder; None while none is.
        log: What was attached or could not be, newest first.

    Signals:
        changed(): Folder or log is another one.
        failed(error: object): The folder cannot be read; it is looked at again later.
    """

    changed = Signal()
    failed = Signal(object)

    def __init__(self, shelf: Shelf, language: Language, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.folder: Path | None = None
        self.log: tuple[Attached, ...] = ()
        self._shelf, self._language = shelf, language
        self._jobs = Jobs(threads=1, parent=self)
        self._till: SaleFolder | None = None
        self._looking = False
        self._timer = QTimer(self)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self.look)

    @property
    def busy(self) -> bool:
        """Whether the folder is being looked at."""
        return self._looking

    def resume(self) -> None:
        """Go on with the folder that was watched last time."""
        folder = kept_setting(self._shelf.store, SETTING).get("folder", "")
        if folder:
            self._begin(Path(str(folder)))

    def start(self, folder: Path) -> None:
        """Watch a folder from now on, also after the next start of the program."""
        self._keep(str(folder))
        self._begin(folder)

    def stop(self) -> None:
        """Watch none any more."""
        self._keep("")
        self._timer.stop()
        self.folder = self._till = None
        self.changed.emit()

    def close(self) -> bool:
        """Let go; False when a look did not end in time."""
        self._timer.stop()
        return self._jobs.close()

    @Slot()
    def look(self) -> None:
        """Look into the folder now."""
        till = self._till
        if till is None or self._looking:
            return
        self._looking = True
        job = Job(lambda _: till.poll())
        job.succeeded.connect(self._on_looked)
        job.failed.connect(self._on_failed)
        job.ended.connect(self._on_ended)
        self._jobs.start(job)

    def _begin(self, folder: Path) -> None:
        shelf, code = self._shelf, self._language.code
        pictures = data_folder() / PICTURES

        def write(stored: StoredCase, sale: Sale) -> bytes:  # on a pool thread
            make = sale_writer(shelf.store, shelf.key_of, language=code, pictures=pictures)
            return make(stored, sale)

        self.folder, self._till = folder, SaleFolder(shelf.store, folder, write)
        self._timer.start()
        self.changed.emit()
        self.look()

    def _keep(self, folder: str) -> None:
        store, text = self._shelf.store, json.dumps({"folder": folder})
        self._jobs.start(Job(lambda _: store.put_setting(SETTING, text)))

    @Slot(object)
    def _on_looked(self, found: tuple[Attached, ...]) -> None:
        if found:
            self.log = (*reversed(found), *self.log)[:KEPT]
            self.changed.emit()

    @Slot(object)
    def _on_failed(self, error: object) -> None:
        self.failed.emit(error)

    @Slot()
    def _on_ended(self) -> None:
        self._looking = False
