"""The one thing in the library that changes: which keys are here, and what came in."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.library.account import Account, Accounts
from idkey.app.library.join_state import JoinState
from idkey.app.library.part import Part
from idkey.app.library.sheet_state import SheetState
from idkey.app.library.welcome import Welcome, matrix_arrival, welcomed
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.worded import worded
from idkey.app.records.latest import Latest
from idkey.errors import IdKeyError
from idkey.formats.arrival import Arrival, Form, Grid, arrival_of, key_files, read_arrival
from idkey.formats.giving import Source, Way
from idkey.formats.key_shelf import put_in
from idkey.formats.new_key import FIRST_VERSION
from idkey.formats.package import pictures_of
from idkey.model.key import Key
from idkey.store.book import Store
from idkey.store.reruns import cases_per_key

LEAVES = "kitchen-leaves"
"""The small key that a new one may begin as."""


class LibraryState(QObject):
    """Knows the keys that are here; takes keys in, hands them out, takes them off the shelf.

    Args:
        keys: The keys at hand.
        store: The record book.
        images: Folder of the drawings.
        parent: Owner.

    Attributes:
        part: The page that is in front.
        waiting: What came in and is neither taken nor left yet.
        sheet: The spreadsheet that becomes a key.
        join: The join under way.

    Signals:
        changed(): The accounts are others now.
        came(found: object): A `Welcome`, or a `Grid` whose columns have to be explained.
        told(words: str): Something is done.
        failed(error: object): Something could not be done.
        keys_changed(key_id: str): A key came, went, or says something else now.
        edit_asked(folder: object): The person wants that key in the workshop.
        busy_changed(): Work began, or ended.
    """

    changed = Signal()
    came = Signal(object)
    told = Signal(str)
    failed = Signal(object)
    keys_changed = Signal(str)
    edit_asked = Signal(object)
    busy_changed = Signal()

    def __init__(
        self, keys: KeyLibrary, store: Store, images: Path, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.keys = keys
        self.store = store
        self._images = images
        self._jobs = Jobs(threads=2, parent=self)
        self._accounts = Accounts()
        self._reading = Latest(self._jobs, self)
        self._coming = Latest(self._jobs, self)
        self._deeds = 0
        self.part = Part.KEYS
        self.waiting: Welcome | Grid | None = None
        self.sheet = SheetState(self)
        self.join = JoinState(self)
        self._reading.answered.connect(self._on_read)
        self._reading.failed.connect(self.failed)
        self._coming.answered.connect(self._on_came)
        self._coming.failed.connect(self._on_coming_failed)

    @property
    def accounts(self) -> tuple[Account, ...]:
        """The keys that are here, as far as they have been looked at."""
        return self._accounts.known(self.keys.entries)

    @property
    def busy(self) -> bool:
        """Whether something is under way."""
        return self._reading.busy or self._coming.busy or self._deeds > 0

    @property
    def coming(self) -> bool:
        """Whether something that came in is being read."""
        return self._coming.busy

    def close(self) -> bool:
        """Let go of work under way."""
        return all([self._jobs.close(), self.sheet.close(), self.join.close()])

    @Slot()
    def refresh(self) -> None:
        """Look again which keys are here, and read those that are new or changed."""
        self.keys.reload()
        entries, accounts = self.keys.entries, self._accounts

        def work(tick: Tick) -> None:  # on a pool thread
            accounts.read(entries, tick)

        self.changed.emit()
        self._reading.ask(work)
        self.busy_changed.emit()

    def take_in(self, place: Path) -> None:
        """Read what came in; `came` follows. Nothing is added yet."""
        self._come(lambda: read_arrival(place))

    def take_in_text(self, text: str, name: str) -> None:
        """Read a text that was copied; `came` follows."""
        self._come(lambda: arrival_of(text.encode(), Path(name)))

    @Slot()
    def drop(self) -> None:
        """Want nothing any more of what came in, or is still being read."""
        self.waiting = None
        self._coming.drop()
        self.busy_changed.emit()

    def look_at(self, key: Key, came_as: Path) -> None:
        """Offer a key that was made here, as if it had come in; `came` follows."""
        from_here = Arrival(file=came_as, form=Form.FOLDER, key=key)
        self._come(lambda: from_here)

    def add(self, welcome: Welcome, *, own: str = "", replaces: bool = False) -> None:
        """Add what came in to the person's own keys.

        Args:
            welcome: What came in.
            own: Another id for it, so that both are kept; empty keeps its own.
            replaces: Whether it takes the place of the one that is here.
        """
        keys, arrival = self.keys, welcome.arrival
        key, files = arrival.key, arrival.files

        def work() -> str:  # on a pool thread
            if own:
                return keys.add_under(own, key, files)
            return keys.add(key, files, came_as=arrival.file.name, replaces=replaces)

        self._do(work, self._on_added)

    def make(self, key: Key) -> None:
        """Put a new key among the person's own, and open it in the workshop."""
        keys = self.keys

        def work() -> Path:  # on a pool thread
            if keys.own is None:
                raise IdKeyError("Keys cannot be added here.")
            folder = put_in(key, keys.own)
            keys.forget(key.id)
            return folder

        self._do(work, self._on_made)

    def make_like(self, example: str, own: str, title: str) -> None:
        """Put a copy of a key among the person's own under a title, and open it."""
        keys, images = self.keys, self._images

        def work() -> Path:  # on a pool thread
            entry = keys.entry(example)
            if entry is None or keys.own is None:
                raise IdKeyError("Keys cannot be added here.")
            key = replace(keys[example], id=own, title=title, version=FIRST_VERSION, digest="")
            files = key_files(entry.folder)
            pictures = pictures_of(keys[example], images, entry.folder)
            files |= {name: file.read_bytes() for name, file in pictures.items()}
            folder = put_in(key, keys.own, files=files)
            keys.forget(own)
            return folder

        self._do(work, self._on_made)

    def remove(self, account: Account) -> None:
        """Take an own key off the shelf, unless cases rest on it."""
        keys, store, entry = self.keys, self.store, account.entry
        refused = self.tr("Cases rest on the key {key}: {n}. It stays, so that they can be read.")
        said = self.tr("{key} is off the shelf; its folder is kept: {place}")

        def work() -> str:  # on a pool thread
            shadowed = keys.entry(entry.id) not in (None, entry)
            cases = 0 if shadowed else cases_per_key(store).get(entry.id, 0)
            if cases:
                raise IdKeyError(refused.format(key=entry.id, n=cases))
            return said.format(key=entry.id, place=keys.remove(entry.folder))

        self._do(work, self._on_removed)

    def hand_out(self, account: Account, way: Way, file: Path) -> None:
        """Write a key; `told` says where it is and what had to be left out."""
        key, folder, images = account.key, account.entry.folder, self._images
        said = self.tr("Written: {file}.")
        whole = self.tr("Nothing had to be left out.")
        part = self.tr("What it cannot hold:")
        if key is None:
            return

        def work() -> str:  # on a pool thread
            left = way.write(Source(key=key, folder=folder, images=images), file)
            lines = [
                said.format(file=file),
                part if left else whole,
                *(f"• {worded(one)}" for one in left),
            ]
            return "\n".join(lines)

        self._do(work, self._on_written)

    def _come(self, read: Callable[[], object]) -> None:
        keys, store = self.keys, self.store

        def work(tick: Tick) -> object:  # on a pool thread
            found = read()
            if isinstance(found, Grid):
                arrival = matrix_arrival(found, keys)
                return found if arrival is None else welcomed(arrival, keys, store, tick)
            assert isinstance(found, Arrival)
            return welcomed(found, keys, store, tick)

        self._coming.ask(work)
        self.busy_changed.emit()

    def _do(self, do: Callable[[], Any], then: Callable[[Any], object]) -> None:
        def work(tick: Tick) -> object:  # on a pool thread
            tick(0, 1)
            return do()

        job = Job(work)
        job.succeeded.connect(then)
        job.failed.connect(self.failed)
        job.ended.connect(self._on_deed_ended)
        self._deeds += 1
        self._jobs.start(job)
        self.busy_changed.emit()

    @Slot()
    def _on_deed_ended(self) -> None:
        self._deeds -= 1
        self.busy_changed.emit()

    @Slot(object)
    def _on_read(self, _: object) -> None:
        self.changed.emit()
        self.busy_changed.emit()

    @Slot(object)
    def _on_came(self, found: Welcome | Grid) -> None:
        self.waiting = found
        if isinstance(found, Grid):
            self.sheet.show(found)
        self.came.emit(found)
        self.busy_changed.emit()

    @Slot(object)
    def _on_coming_failed(self, error: object) -> None:
        self.failed.emit(error)
        self.busy_changed.emit()

    @Slot(object)
    def _on_added(self, key: str) -> None:
        self.refresh()
        self.keys_changed.emit(key)
        self.told.emit(self.tr("{key} is among your keys now.").format(key=key))

    @Slot(object)
    def _on_made(self, folder: Path) -> None:
        self.refresh()
        self.keys_changed.emit(folder.name)
        self.edit_asked.emit(folder)

    @Slot(object)
    def _on_written(self, said: str) -> None:
        self.told.emit(said)

    @Slot(object)
    def _on_removed(self, said: str) -> None:
        self.refresh()
        self.keys_changed.emit("")
        self.told.emit(said)
