"""The library: the keys that are here, what comes in, what goes out, and what differs."""

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication, QKeySequence, QShortcut
from PySide6.QtWidgets import QFileDialog, QVBoxLayout, QWidget

from idkey.app.library.account import Account
from idkey.app.library.arrival_page import ArrivalPage
from idkey.app.library.editions import editions
from idkey.app.library.giving import ask_place
from idkey.app.library.head import Head
from idkey.app.library.intake import Intake, file_filter, intake
from idkey.app.library.join_page import JoinPage
from idkey.app.library.key_page import Deed
from idkey.app.library.new_dialog import NewDialog
from idkey.app.library.part import New, Part
from idkey.app.library.sheet_page import SheetPage
from idkey.app.library.shelf_page import ShelfPage
from idkey.app.library.stack import Stack
from idkey.app.library.state import LEAVES, LibraryState
from idkey.app.library.versions_page import VersionsPage
from idkey.app.library.welcome import Welcome
from idkey.app.parts.desk import Desk
from idkey.app.parts.messages import Message, message_for
from idkey.app.parts.notice import Notice
from idkey.formats.arrival import Grid
from idkey.formats.giving import Way
from idkey.formats.new_key import empty_key, id_for
from idkey.model.key import Key


class LibraryView(QWidget):
    """Everything about the keys that are here. Call `open` when it comes onto the screen.

    Args:
        state: The state of the library.
        desk: Look, drawings, language.

    Signals:
        case_asked(key_id: str): The person wants to start a case with a key.
        edit_asked(folder: object): The person wants the key of a folder in the workshop.
        print_asked(folder: object): The person wants its couplets printed, which is done there.
    """

    case_asked = Signal(str)
    edit_asked = Signal(object)
    print_asked = Signal(object)

    def __init__(self, state: LibraryState, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self.setAcceptDrops(True)
        self._state = state
        self._desk = desk
        self._new = New.EMPTY
        self.head = Head(desk)
        self.shelf = ShelfPage(desk)
        self.arrival = ArrivalPage(desk)
        self.sheet = SheetPage(desk, state.sheet)
        self.versions = VersionsPage(desk)
        self.join = JoinPage(desk, state.join)
        self.stack = Stack()
        self.notice = Notice()
        self._pages: dict[Part, QWidget] = {
            Part.KEYS: self.shelf,
            Part.VERSIONS: self.versions,
            Part.JOIN: self.join,
        }
        self._lay_out()
        self._connect()
        self._bind()
        self._on_state_changed()
        self.show_part(state.part)
        if state.waiting is not None:
            self._on_came(state.waiting)

    def open(self) -> None:
        """Come to the library: look again which keys are here."""
        self._state.refresh()
        self.focus_first()

    def focus_first(self) -> None:
        """Put the focus where the next thing is done."""
        page = self.stack.currentWidget()
        if isinstance(page, ShelfPage | ArrivalPage | SheetPage | VersionsPage | JoinPage):
            page.focus_first()

    def take_in(self, place: Path) -> None:
        """Read what came in; it is shown before anything is added."""
        self.notice.hide()
        self.head.say(self.tr("{file} is being read …").format(file=place.name))
        self._state.take_in(place)

    def close_work(self) -> None:
        """Let go of work under way; the state keeps what was done."""
        self.versions.close_work()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take files, folders and texts that are dragged in."""
        if intake(event.mimeData()).any:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Read what was dropped."""
        self._arrive(intake(event.mimeData()))
        event.acceptProposedAction()

    def _lay_out(self) -> None:
        px = self._desk.theme.px
        for page in (self.shelf, self.arrival, self.sheet, self.versions, self.join):
            self.stack.addWidget(page)
        inner = QVBoxLayout()
        inner.setContentsMargins(px(20), px(16), px(20), px(12))
        inner.setSpacing(px(12))
        inner.addWidget(self.head)
        inner.addWidget(self.stack, 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(0)
        whole.addLayout(inner, 1)
        whole.addWidget(self.notice)

    def _connect(self) -> None:
        state = self._state
        state.changed.connect(self._on_state_changed)
        state.came.connect(self._on_came)
        state.told.connect(self._on_told)
        state.failed.connect(self._on_failed)
        state.edit_asked.connect(self.edit_asked)
        state.keys_changed.connect(self.shelf.list.look_at)
        self.head.part_chosen.connect(self.show_part)
        self.head.file_asked.connect(self._on_file_asked)
        self.head.folder_asked.connect(self._on_folder_asked)
        self.head.paste_asked.connect(self._on_paste_asked)
        self.head.new_asked.connect(self._on_new_asked)
        self.shelf.wanted.connect(self._on_wanted)
        self.shelf.given.connect(self._on_given)
        self.arrival.left.connect(self._on_left)
        self.arrival.taken.connect(self._on_taken)
        self.sheet.left.connect(self._on_left)
        self.sheet.made.connect(self._on_made)
        self.join.made.connect(self._on_joined)

    def _bind(self) -> None:
        slots = {
            "Ctrl+O": self._on_file_asked,
            "Ctrl+V": self._on_paste_asked,
            "Esc": self._on_left,
        }
        for key, slot in slots.items():
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    def _arrive(self, came: Intake) -> None:
        if came.places:
            self.take_in(came.places[0])
            if len(came.places) > 1:
                problem = self.tr("Several files were dragged here; the first one is shown.")
                self.notice.say(Message(problem, self.tr("Take the others one after another.")))
        elif came.text.strip():
            self.head.say(self.tr("What was pasted is being read …"))
            self._state.take_in_text(came.text, self.tr("pasted text"))
        else:
            problem = self.tr("There is nothing here that could be a key.")
            self.notice.say(Message(problem, self.tr("Copy a file, a folder or a table first.")))

    @Slot(object)
    def show_part(self, part: Part) -> None:
        """Go to a page of the library."""
        self._state.part = part
        self.head.set_part(part)
        if part is not Part.KEYS:
            found = editions(self._state.keys)
            self.versions.offer(found) if part is Part.VERSIONS else self.join.offer(found)
        self.stack.setCurrentWidget(self._pages[part])

    @Slot()
    def _on_state_changed(self) -> None:
        self.shelf.show_accounts(self._state.accounts)

    @Slot(object)
    def _on_came(self, found: Welcome | Grid) -> None:
        self.head.say("")
        if isinstance(found, Grid):
            assert self._state.sheet.session is not None
            self.sheet.show_file(self._state.sheet.session)
            self.stack.setCurrentWidget(self.sheet)
        else:
            free = self._state.keys.free_id(found.arrival.key.id)
            self.arrival.show_welcome(found, free)
            self.stack.setCurrentWidget(self.arrival)
        self.focus_first()

    @Slot(str)
    def _on_told(self, words: str) -> None:
        self.head.say("")
        self.notice.say(Message(words, ""))

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.head.say("")
        self.notice.say(message_for(error))

    @Slot()
    def _on_left(self) -> None:
        """Back to the page from which one came; what is still being read is dropped."""
        self._state.drop()
        self.head.say("")
        self.show_part(self.head.part)
        self.focus_first()

    @Slot(str, bool)
    def _on_taken(self, own: str, replaces: bool) -> None:
        welcome = self.arrival.welcome
        if welcome is not None:
            self._state.add(welcome, own=own, replaces=replaces)
            self._go_to_keys()

    def _go_to_keys(self) -> None:
        self._state.waiting = None
        self.show_part(Part.KEYS)
        self.focus_first()

    @Slot(object)
    def _on_made(self, key: Key) -> None:
        self._state.make(replace(key, id=self._state.keys.free_id(key.id)))
        self._go_to_keys()

    @Slot(object)
    def _on_joined(self, key: Key) -> None:
        self._state.look_at(key, Path(self.tr("the joined key")))

    @Slot(object, object)
    def _on_wanted(self, account: Account, deed: Deed) -> None:
        if deed is Deed.CASE:
            self.case_asked.emit(account.entry.id)
        elif deed is Deed.EDIT:
            self.edit_asked.emit(account.entry.folder)
        elif deed is Deed.PRINT:
            self.print_asked.emit(account.entry.folder)
        elif deed is Deed.REMOVE:
            self._state.remove(account)

    @Slot(object, object)
    def _on_given(self, account: Account, way: Way) -> None:
        place = ask_place(self, account, way)
        if place is not None:
            self.head.say(self.tr("{file} is being written …").format(file=place.name))
            self._state.hand_out(account, way, place)

    @Slot()
    def _on_file_asked(self) -> None:
        title = self.tr("Which file holds the key?")
        file, _ = QFileDialog.getOpenFileName(self, title, "", file_filter())
        if file:
            self.take_in(Path(file))

    @Slot()
    def _on_folder_asked(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, self.tr("Which folder is the key?"))
        if folder:
            self.take_in(Path(folder))

    @Slot()
    def _on_paste_asked(self) -> None:
        self._arrive(intake(QGuiApplication.clipboard().mimeData()))

    @Slot(object)
    def _on_new_asked(self, new: New) -> None:
        if new is New.SHEET:
            self._on_file_asked()
            return
        self._new = new
        dialog = NewDialog(self._desk.theme, self)
        dialog.told.connect(self._on_title_told)
        dialog.open()

    @Slot(str)
    def _on_title_told(self, title: str) -> None:
        free = self._state.keys.free_id(id_for(title))
        if self._new is New.EMPTY:
            self._state.make(replace(empty_key(title), id=free))
        else:
            self._state.make_like(LEAVES, free, title)
