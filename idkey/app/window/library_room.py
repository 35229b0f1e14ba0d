"""The library as one of the places: made when needed, and joined to bench and workshop."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Slot

from idkey import places
from idkey.app.bench.start_view import StartView
from idkey.app.bench.state import BenchState
from idkey.app.library.state import LibraryState
from idkey.app.library.view import LibraryView
from idkey.app.parts.desk import Desk


def made_library(state: BenchState) -> LibraryState:
    """The state of the library over the same record book and keys; it belongs to `state`."""
    return LibraryState(state.keys, state.keeper.store, places.images_folder(), state)


class LibraryRoom(QObject):
    """Makes the view of the library when somebody first goes there.

    Args:
        state: The state of the library, which outlives the window.
        bench: The state of the bench.
        parent: Owner.
        start: The page of the bench that offers the keys.
        to_bench: Goes to the bench.
        to_workshop: Goes to the workshop with the key of a folder, and to a page of it.
        tells_workshop: Tells the workshop which key changed, or none for one that went.
    """

    def __init__(
        self,
        state: LibraryState,
        bench: BenchState,
        parent: QObject,
        *,
        start: StartView,
        to_bench: Callable[[], None],
        to_workshop: Callable[[Path, str], None],
        tells_workshop: Callable[[str], None],
    ) -> None:
        super().__init__(parent)
        self._state, self._bench = state, bench
        self._to_bench, self._to_workshop = to_bench, to_workshop
        self._tells_workshop = tells_workshop
        self.view: LibraryView | None = None
        self._start = start
        state.keys_changed.connect(self._on_keys_changed)

    def entered(self, desk: Desk) -> LibraryView:
        """The view."""
        if self.view is None:
            self.view = LibraryView(self._state, desk)
            self.view.case_asked.connect(self._on_case_asked)
            self.view.edit_asked.connect(self._on_edit_asked)
            self.view.print_asked.connect(self._on_print_asked)
        return self.view

    def close_work(self) -> None:
        """Let go of work under way."""
        if self.view is not None:
            self.view.close_work()

    @Slot(str)
    def _on_keys_changed(self, key: str) -> None:
        self._tells_workshop(key)
        self._start.show_keys(self._bench.keys.titles, self._bench.session.key)

    @Slot(str)
    def _on_case_asked(self, key: str) -> None:
        self._bench.new_case(key)
        self._to_bench()

    @Slot(object)
    def _on_edit_asked(self, folder: Path) -> None:
        self._to_workshop(folder, "")

    @Slot(object)
    def _on_print_asked(self, folder: Path) -> None:
        self._to_workshop(folder, "print")
