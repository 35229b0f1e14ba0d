"""The window: a rail of cases, the bench, the palette, and what concerns all of it."""

from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QInputDialog, QVBoxLayout, QWidget

from idkey.app.bench.session import Mode, Session
from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.drill.state import DrillState
from idkey.app.library.state import LibraryState
from idkey.app.parts.desk import Desk
from idkey.app.parts.messages import message_for
from idkey.app.parts.notice import Notice
from idkey.app.window.actions import Actions, Slots
from idkey.app.window.clashes import Clashes
from idkey.app.window.look import look_slots
from idkey.app.window.palette import Entry, Palette
from idkey.app.window.rail import Rail, tray_rows
from idkey.app.window.rooms import Rooms
from idkey.app.window.writing import Writing
from idkey.app.workshop.state import WorkshopState
from idkey.engine.sample import SAMPLE_KEY, sample_case

MOST_ANIMALS = 200
"""Most animals that one use of "more animals with this label" adds."""


class Window(QWidget):
    """Everything on the screen once records and keys are open.

    Args:
        state: The state of the bench.
        desk: Look, drawings, language.
        rationales: Folder where rationales go.
        drill, workshop, library: States of those places; None makes one when needed.

    Signals:
        language_wanted(code: str): The person wants another language.
        ended(): The person wants to leave.
    """

    language_wanted = Signal(str)
    ended = Signal()

    def __init__(
        self,
        state: BenchState,
        desk: Desk,
        *,
        rationales: Path,
        drill: DrillState | None = None,
        workshop: WorkshopState | None = None,
        library: LibraryState | None = None,
    ) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self._state = state
        self._desk = desk
        self.writing = Writing(state, desk, folder=rationales, over=self)
        self.rail = Rail(desk)
        self.bench = BenchView(state, desk)
        data = rationales.parent
        self.rooms = Rooms(
            self.bench, state, desk, data=data, drill=drill, workshop=workshop, library=library
        )
        self.notice = Notice()
        self.palette_view = Palette(desk.theme, self)
        self.commands = Actions(self, self._slots())
        self._lay_out()
        self._connect()
        self.show_session(state.session)

    def close_work(self) -> None:
        """Let go of work under way."""
        self.rooms.close_work()
        self.writing.wait()

    @Slot(object)
    def show_session(self, session: Session) -> None:
        """Show the tray, and what may be done now."""
        self.rail.show_tray(tray_rows(self._state.tray(), session.case.id))
        several, named = len(session.open) > 1, bool(session.case.claim.text)
        self._allow_steps()
        self._allow(
            next_case=several,
            previous_case=several,
            rationale=not session.thinking,
            couplets=bool(session.key.couplets),
            plates=bool(session.key.body_plan),
            mixups=named,
            copy_claim=named,
        )

    @Slot()
    def _allow_steps(self) -> None:
        self.rail.show_place(self.rooms.place)
        undo, redo = self.rooms.steps
        self._allow(undo=undo, redo=redo)

    def _allow(self, **commands: bool) -> None:
        for command, there in commands.items():
            self.commands[command].setEnabled(there)

    def focus_first(self) -> None:
        """Put the focus where a person starts."""
        if self._state.session.blank:
            self.bench.claim.focus_label()
        else:
            self.bench.middle.focus_answer()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the palette in the middle."""
        super().resizeEvent(event)
        if self.palette_view.isVisible():
            self.palette_view.place()

    def _slots(self) -> Slots:
        state, bench = self._state, self.bench
        return (
            self.rooms.slots()
            | look_slots(self._desk.theme)
            | {
                "new_case": self._new_case,
                "sample": self._sample,
                "next_case": state.next_case,
                "previous_case": lambda: state.next_case(-1),
                "copy_claim": self._ask_how_many,
                "leave_case": state.leave_case,
                "rationale": self.writing.open,
                "quit": self.ended.emit,
                "label": bench.claim.focus_label,
                "unlabelled": bench.look_at_animal,
                "reasons": bench.middle.open_reasons,
                "mixups": bench.middle.open_note,
                "next_area": lambda: bench.next_area(1),
                "previous_area": lambda: bench.next_area(-1),
                "couplets": self._change_mode,
                "compare": bench.lineup.compare,
                "search": bench.middle.open_questions,
                "palette": self._open_palette,
                "menu": self._open_menu,
                "english": lambda: self.language_wanted.emit("en"),
                "german": lambda: self.language_wanted.emit("de"),
                "full_screen": self._full_screen,
            }
        )

    def _lay_out(self) -> None:
        side = QVBoxLayout()
        side.setSpacing(0)
        side.addWidget(self.rooms, 1)
        side.addWidget(self.notice)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.rail)
        row.addLayout(side, 1)

    def _connect(self) -> None:
        self.rail.case_asked.connect(self._open_case)
        self.rail.wanted.connect(self.commands.run)
        self.rail.menu_asked.connect(self._open_menu)
        self.commands.failed.connect(self._on_failed)
        self.palette_view.chosen.connect(self._on_palette_chosen)
        self.palette_view.left.connect(self.bench.middle.focus_answer)
        self.bench.middle.start.sample_asked.connect(self._sample)
        self.bench.middle.start.case_asked.connect(self._open_case)
        self._state.keeper.failed.connect(self._on_failed)
        self._state.thinker.failed.connect(self._on_failed)
        self._state.fetcher.failed.connect(self._on_failed)
        self.rooms.pictures.failed.connect(self._on_failed)
        self._clashes = Clashes(self._state, self.notice, self)
        self.rooms.left.connect(self.focus_first)
        self.rooms.moved.connect(self._allow_steps)
        self.rooms.case_asked.connect(self._open_case)
        self._state.changed.connect(self.show_session)

    @Slot()
    def _new_case(self) -> None:
        self._state.new_case()
        self.bench.claim.focus_label()

    @Slot()
    def _sample(self) -> None:
        key = self._state.keys[SAMPLE_KEY]
        case = sample_case(key)
        if self._state.keeper.knows(case.id):
            self._state.open_case(case.id)
        else:
            self._state.put_on_bench(case)
        self.bench.middle.focus_answer()

    @Slot(str)
    def _open_case(self, case_id: str) -> None:
        try:
            self._state.open_case(case_id)
        except Exception as err:  # noqa: BLE001 - becomes a message
            self._on_failed(err)
        self.focus_first()

    @Slot()
    def _ask_how_many(self) -> None:
        dialog = QInputDialog(self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(self.tr("More animals with this label"))
        dialog.setLabelText(self.tr("How many more animals came with this label?"))
        dialog.setInputMode(QInputDialog.InputMode.IntInput)
        dialog.setIntRange(1, MOST_ANIMALS)
        dialog.intValueSelected.connect(self._state.copy_claim)
        dialog.open()

    @Slot()
    def _open_menu(self) -> None:
        menu = self.commands.menu()
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.popup(self.rail.menu.mapToGlobal(self.rail.menu.rect().topRight()))

    @Slot()
    def _open_palette(self) -> None:
        self.palette_view.open((*self.commands.entries(), *self._entries()))

    def _entries(self) -> tuple[Entry, ...]:
        session, found = self._state.session, []
        question, species, case = self.tr("question"), self.tr("taxon"), self.tr("case")
        for character in session.key.characters:
            words = f"{character.question} {' '.join(character.words)}"
            found.append(Entry("character", character.id, character.name, question, "", words))
        for taxon in session.key.taxa:
            words = " ".join((*taxon.synonyms, *taxon.vernacular))
            found.append(Entry("taxon", taxon.id, taxon.name, species, "", words))
        for row in self._state.keeper.store.recent(50):
            text = row.label or row.case_id[:8]
            words = f"{row.name} {row.supplier} {row.day}"
            found.append(Entry("case", row.case_id, text, f"{case} {row.day}", "", words))
        return tuple(found)

    @Slot(str, str)
    def _on_palette_chosen(self, kind: str, name: str) -> None:
        middle = self.bench.middle
        if kind == "command":
            middle.focus_answer()
            self.commands.run(name)
        elif kind == "character":
            middle.ask(name)
        elif kind == "taxon":
            middle.open_taxon(name)
        else:
            self._open_case(name)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.notice.say(message_for(error))

    def _change_mode(self) -> None:
        free = self._state.session.mode is Mode.FREE
        self._state.go_by(Mode.COUPLETS if free else Mode.FREE)
        self.bench.middle.focus_answer()

    def _full_screen(self) -> None:
        frame = self.window()
        frame.showNormal() if frame.isFullScreen() else frame.showFullScreen()
