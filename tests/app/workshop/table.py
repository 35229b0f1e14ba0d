"""A key on the table of the workshop, for the tests of its pages."""

import shutil
from pathlib import Path

from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.state import WorkshopState
from idkey.store.book import Store


class Table:
    """A workshop with a copy of a shipped key on it, and a way to wait for its checking."""

    def __init__(self, qtbot: QtBot, tmp_path: Path, key: str, store: Store | None = None) -> None:
        self._qtbot = qtbot
        folder = tmp_path / key
        shutil.copytree(places.keys_folder() / key, folder)
        self.state = WorkshopState(tmp_path / "drafts", store=store)
        self.state.open(folder)
        self.checked()

    @property
    def editing(self) -> Editing:
        """The key on the table."""
        assert self.state.editing is not None
        return self.state.editing

    def checked(self) -> None:
        """Wait until the mistakes of the key are known."""
        self._qtbot.waitUntil(lambda: not self.editing.checking, timeout=20_000)
