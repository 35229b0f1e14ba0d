"""The places of the program side by side: bench, records, drill, workshop, library."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QStackedWidget, QWidget

from idkey import places
from idkey.app.bench.finding_pictures import FindingPictures
from idkey.app.bench.session import Session
from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.drill.state import DrillState
from idkey.app.drill.view import DrillView
from idkey.app.library.state import LibraryState
from idkey.app.parts.desk import Desk
from idkey.app.records.view import RecordsView
from idkey.app.window.about import AboutDialog
from idkey.app.window.help_view import HelpView
from idkey.app.window.library_room import LibraryRoom, made_library
from idkey.app.window.photo_room import PhotoRoom
from idkey.app.window.records_room import RecordsRoom
from idkey.app.window.reminder import Reminder
from idkey.app.workshop.shelf import Shelf
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.view import WorkshopView
from idkey.photo.shelf import PictureShelf


def made_drill(state: BenchState, data: Path) -> DrillState:
    """The state of the drill over the same record book and keys; it belongs to `state`."""
    return DrillState(
        state.keeper.store,
        state.keys,
        images=places.images_folder(),
        attestations=data / "attestations",
        parent=state,
    )


def made_workshop(state: BenchState, data: Path) -> WorkshopState:
    """The state of the workshop over the same record book; it belongs to `state`."""
    return WorkshopState(data / "drafts", state, shelf=Shelf.usual(data), store=state.keeper.store)


class Rooms(QStackedWidget):
    """The bench, and the other places; those are built when somebody first goes there.

    Args:
        bench: The bench.
        state: The state of the bench.
        desk: Look, drawings, language.
        data: Folder of the user's own data.
        drill: The state of the drill, which outlives the window; None makes one when needed.
        workshop, library: The states of those places, which outlive the window as well.

    Signals:
        left(): The person came back to the bench.
        case_asked(case_id: str): The person wants this case on the bench.
        moved(): What can be taken back may be another thing now.
    """

    left = Signal()
    case_asked = Signal(str)
    moved = Signal()

    def __init__(
        self,
        bench: BenchView,
        state: BenchState,
        desk: Desk,
        *,
        data: Path,
        drill: DrillState | None = None,
        workshop: WorkshopState | None = None,
        library: LibraryState | None = None,
    ) -> None:
        super().__init__()
        self.bench = bench
        self._state = state
        self._desk = desk
        self._drill = drill or made_drill(state, data)
        self._workshop = workshop or made_workshop(state, data)
        self._records = RecordsRoom(state, desk, data, self, to_bench=self._lay_on_bench)
        self.drill: DrillView | None = None
        self.workshop: WorkshopView | None = None
        self.library = self._room_of(library or made_library(state))
        self._case = state.session.case.id
        self.addWidget(bench)
        state.changed.connect(self._on_state_changed)
        self._workshop.changed.connect(self._on_workshop_changed)
        self._workshop.cleared.connect(self._on_workshop_changed)
        self._workshop.saved.connect(self._on_key_saved)
        Reminder(self._drill, bench.middle.start, self)
        bench.middle.start.drill_asked.connect(self.enter_drill)
        shelf = PictureShelf(data / places.PICTURES)
        self.pictures = FindingPictures(bench, state, shelf=shelf, desk=desk)
        self.photo = PhotoRoom(bench, state, shelf=shelf, desk=desk)

    def slots(self) -> dict[str, Callable[[], object]]:
        """What the commands of the places do, by command."""
        return {
            "bench": self.enter_bench,
            "records": self.enter_records,
            "drill": self.enter_drill,
            "workshop": self.enter_workshop,
            "library": self.enter_library,
            "undo": lambda: self._in_front.undo(),
            "redo": lambda: self._in_front.redo(),
            "photo": self.photo.measure_question,
            "plates": self.open_plates,
            "manual": self.open_manual,
            "about": self.open_about,
        }

    def close_work(self) -> None:
        """Let go of work under way."""
        self.bench.close_work()
        self.pictures.close_work()
        self._records.close_work()
        if self.workshop is not None:
            self.workshop.close_work()
        self.library.close_work()

    @property
    def steps(self) -> tuple[bool, bool]:
        """Whether the place in front has a step to take back, and one to do again."""
        if self._in_front is self._workshop:
            editing = self._workshop.editing
            return bool(editing and editing.past), bool(editing and editing.future)
        session = self._state.session
        return session.undoable, session.redoable

    @property
    def place(self) -> str:
        """The place in front, as the command that leads there."""
        views = {
            "records": self.records,
            "drill": self.drill,
            "workshop": self.workshop,
            "library": self.library.view,
        }
        here = self.currentWidget()
        return next((name for name, view in views.items() if view is here), "bench")

    @property
    def _in_front(self) -> BenchState | WorkshopState:
        here = self.workshop is not None and self.currentWidget() is self.workshop
        return self._workshop if here else self._state

    @Slot()
    def enter_bench(self) -> None:
        """Back to the animal."""
        self._show(self.bench)
        self.left.emit()

    @property
    def records(self) -> RecordsView | None:
        """The records; None until somebody went there."""
        return self._records.view

    @Slot()
    def enter_records(self) -> None:
        """Look up cases; from there a case can be laid on the bench."""
        records = self._records.entered()
        if self.indexOf(records) < 0:
            self.addWidget(records)
        self._show(records)
        records.focus_first()

    @Slot()
    def enter_drill(self) -> None:
        """Practise."""
        if self.drill is None:
            self.drill = DrillView(self._drill, self._desk)
            self.drill.left.connect(self.enter_bench)
            self.addWidget(self.drill)
        self._show(self.drill)
        self.drill.open()

    @Slot()
    def enter_workshop(self) -> None:
        """Edit keys."""
        if self.workshop is None:
            self.workshop = WorkshopView(self._workshop, self._desk, held=self._holds)
            self.workshop.left.connect(self.enter_bench)
            self.workshop.new_asked.connect(self.enter_library)
            self.addWidget(self.workshop)
        self._show(self.workshop)
        self.workshop.come()

    def edit_key(self, folder: Path, page: str = "") -> None:
        """Take the key of a folder to the workshop, and go to a page of it."""
        self.enter_workshop()
        assert self.workshop is not None
        self.workshop.open(folder)
        if page:
            self.workshop.go_to(page)

    @Slot()
    def enter_library(self) -> None:
        """Look at the keys that are here, take keys in, hand them on."""
        view = self.library.entered(self._desk)
        if self.indexOf(view) < 0:
            self.addWidget(view)
        self._show(view)
        view.open()

    def _room_of(self, library: LibraryState) -> LibraryRoom:
        return LibraryRoom(
            library,
            self._state,
            self,
            start=self.bench.middle.start,
            to_bench=self.enter_bench,
            to_workshop=self.edit_key,
            tells_workshop=self._workshop.look_again,
        )

    def take_in(self, file: Path) -> None:
        """Show a key that came in, before it is added."""
        self.enter_library()
        self.library.entered(self._desk).take_in(file)

    def open_plates(self) -> None:
        """Show the parts of the animal, over the bench they lead to."""
        self.enter_bench()
        self.bench.open_plates()

    def open_about(self) -> None:
        """Say what the program is made of."""
        AboutDialog(self._desk, self).open()

    def open_manual(self) -> None:
        """Open the manual."""
        HelpView(places.docs_folder(), self._desk, self).show()

    @Slot(object)
    def _on_state_changed(self, session: Session) -> None:
        """Another case was laid on the bench: go there."""
        if session.case.id != self._case:
            self._case = session.case.id
            self._show(self.bench)

    @Slot()
    def _on_workshop_changed(self) -> None:
        self.moved.emit()

    def _holds(self, folder: Path) -> bool:
        """Whether a case on the bench goes on with the key of a folder as it was."""
        return any(session.key.id == folder.name for session in self._state.tray())

    @Slot(object)
    def _on_key_saved(self, folder: Path) -> None:
        """New cases use the key as it was saved; those on the bench keep what they hold."""
        self._state.keys.forget(folder.name)

    def _lay_on_bench(self, case_id: str) -> None:
        self.case_asked.emit(case_id)
        self.enter_bench()

    def _show(self, place: QWidget) -> None:
        self.setCurrentWidget(place)
        self.moved.emit()
