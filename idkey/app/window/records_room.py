"""The records as one of the places: made when needed, and joined to the bench."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Slot

from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.records.till_watch import SETTING as WATCHED
from idkey.app.records.view import RecordsView


class RecordsRoom(QObject):
    """Makes the view of the records when somebody first goes there, or a till is watched.

    Args:
        state: The state of the bench.
        desk: Look, drawings, language.
        data: Folder of the user's own data.
        parent: Owner.
        to_bench: Lays a case on the bench and goes there.
    """

    def __init__(
        self,
        state: BenchState,
        desk: Desk,
        data: Path,
        parent: QObject,
        *,
        to_bench: Callable[[str], None],
    ) -> None:
        super().__init__(parent)
        self._state, self._desk, self._data = state, desk, data
        self._to_bench = to_bench
        self.view: RecordsView | None = None
        QTimer.singleShot(0, self, self._go_on_watching)

    def entered(self) -> RecordsView:
        """The view, with everything asked for in the book, and the case of the bench chosen."""
        view = self._made()
        self._state.keeper.flush()
        view.cases.prefer(self._state.session.case.id)
        view.refresh()
        return view

    def close_work(self) -> None:
        """Let go of work under way."""
        if self.view is not None:
            self.view.close_work()

    def _made(self) -> RecordsView:
        if self.view is None:
            store, keys = self._state.keeper.store, self._state.keys
            self.view = RecordsView(store, keys, self._desk.theme, language=self._desk.language)
            self.view.deeds.folder = self._data / "rationales"
            self.view.opened.connect(self._on_opened)
            self.view.blind.connect(self._on_blind)
        return self.view

    @Slot()
    def _go_on_watching(self) -> None:
        """Go on with the folder of the till that was watched last time."""
        if self._state.keeper.setting(WATCHED).get("folder"):
            self._made()

    @Slot(str)
    def _on_opened(self, case_id: str) -> None:
        self._to_bench(case_id)

    @Slot(str, str)
    def _on_blind(self, first: str, second: str) -> None:
        """Lay a second opinion on the bench, and put the first out of sight."""
        if first in self._state.session.open:
            self._state.open_case(first)
            self._state.leave_case()
        self._to_bench(second)
