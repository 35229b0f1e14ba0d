"""The workshop: a key on the table, its pages, and what is wrong with it."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from idkey.app.parts.desk import Desk
from idkey.app.parts.messages import Message, message_for
from idkey.app.parts.notice import Notice
from idkey.app.parts.words import reading_words
from idkey.app.workshop.audit_strip import AuditStrip
from idkey.app.workshop.doors import Doors
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.head import Head
from idkey.app.workshop.opening import large
from idkey.app.workshop.page_list import PageList, PageRow
from idkey.app.workshop.pages import mistakes_by_page, workshop_pages
from idkey.app.workshop.start import StartPage
from idkey.app.workshop.state import WorkshopState
from idkey.formats.problem import Problem


class WorkshopView(QWidget):
    """Everything about editing a key. Call `come` when it comes onto the screen.

    Args:
        state: The state of the workshop; it outlives the view when the look changes.
        desk: Look, drawings, language.
        held: Whether an open case goes on with the key of that folder as it was.

    Signals:
        left(): The person wants to go back to where they came from.
        new_asked(): The person wants a new key, which the library makes.
    """

    left = Signal()
    new_asked = Signal()

    def __init__(
        self,
        state: WorkshopState,
        desk: Desk,
        *,
        held: Callable[[Path], bool] = lambda _: False,
    ) -> None:
        super().__init__()
        self.setProperty("pane", "ground")
        self._state = state
        self._desk = desk
        self._held = held
        self._pages = {page.id: page for page in workshop_pages()}
        self._made: dict[str, QWidget] = {}
        self._counted: tuple[Problem, ...] = ()
        self.start = StartPage(desk)
        self.head = Head(desk.theme)
        self.list = PageList(desk.theme)
        self.stack = QStackedWidget()
        self.strip = AuditStrip(state, desk)
        self.table = QWidget()
        self._empty = QWidget()
        self.notice = Notice()
        self._doors = Doors(state, desk.theme, self)
        self._whole = QStackedWidget()
        self._lay_out()
        self._connect()
        self.show_editing(state.editing)

    def come(self) -> None:
        """Come to the workshop: go on where one was, and put the focus there."""
        try:
            self._state.resume()
        except Exception as err:  # noqa: BLE001 - becomes a message
            self._on_failed(err)
        self.show_editing(self._state.editing)
        self.focus_first()

    def open(self, folder: Path) -> None:
        """Take the key of a folder onto the table; what is wrong with it is said."""
        try:
            if large(folder):
                self.notice.say(Message(reading_words(), ""))
                self._state.open_soon(folder)
                return
            self._state.open(folder)
        except Exception as err:  # noqa: BLE001 - becomes a message
            self._on_failed(err)
        self.focus_first()

    def focus_first(self) -> None:
        """Put the focus where the next thing is done."""
        if self._state.editing is None:
            self.start.focus_first()
            return
        page = self.stack.currentWidget()
        focus = getattr(page, "focus_first", None)
        if focus is not None:
            focus()
        else:
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def close_work(self) -> None:
        """Let go of work under way in the pages; the state keeps what was done."""
        self._flush()
        for page in self._made.values():
            close = getattr(page, "close_work", None)
            if close is not None:
                close()

    def _flush(self) -> None:
        """Make what is just being typed a step."""
        for page in self._made.values():
            flush = getattr(page, "flush", None)
            if flush is not None:
                flush()

    def go_to(self, page: str) -> QWidget | None:
        """Go to a page by its stable name; None when there is no such page."""
        if page not in self._pages:
            return None
        self.list.go_to(page)
        return self._made.get(page)

    def _tell_held(self) -> None:
        problem = self.tr("Saved. Cases that are open keep the key as it was.")
        remedy = self.tr("Put them away and open them again to judge them with the new one.")
        self.notice.say(Message(problem, remedy))

    @Slot(object)
    def show_editing(self, editing: Editing | None) -> None:
        """Show the key on the table, or the way to one."""
        if editing is None:
            self._show_start()
            return
        if self.notice.text == reading_words():
            self.notice.hide()
        self.head.show_editing(editing)
        if editing.problems is not self._counted or not self.list.rows.rows:
            self._counted = editing.problems
            self.list.show_pages(self._rows(editing.problems))
        self._whole.setCurrentWidget(self.table)
        if not self.list.current and self._pages:
            here = self._state.page
            self.list.go_to(here if here in self._pages else next(iter(self._pages)))

    def _rows(self, problems: tuple[Problem, ...]) -> tuple[PageRow, ...]:
        pages = self._pages.values()
        mistakes = mistakes_by_page(pages, problems)
        return tuple(
            PageRow(id=page.id, title=page.title, mistakes=mistakes[page.id], begins=page.begins)
            for page in pages
        )

    def _show_start(self) -> None:
        unsaved = frozenset(self._state.drafts.folders())
        self.start.show_keys(self._state.shelf.keys(), unsaved)
        self._whole.setCurrentWidget(self._empty)

    def _lay_out(self) -> None:
        body = QHBoxLayout()
        body.setSpacing(12)
        body.addWidget(self.list)
        body.addWidget(self.stack, 1)
        column = QVBoxLayout(self.table)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(self.head)
        column.addLayout(body, 1)
        column.addWidget(self.strip)
        row = QHBoxLayout(self._empty)
        row.addStretch(1)
        row.addWidget(self.start, 8)
        row.addStretch(1)
        self._whole.addWidget(self._empty)
        self._whole.addWidget(self.table)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(16, 10, 16, 12)
        whole.setSpacing(10)
        whole.addWidget(self._whole, 1)
        whole.addWidget(self.notice)

    def _connect(self) -> None:
        state, head, start = self._state, self.head, self.start
        head.undo.clicked.connect(state.undo)
        head.redo.clicked.connect(state.redo)
        head.save.clicked.connect(state.save)
        head.close_key.clicked.connect(self._on_close_clicked)
        start.edit_asked.connect(self.open)
        start.folder_asked.connect(self._on_folder_asked)
        start.copy_asked.connect(self._doors.ask_copy)
        self._doors.opened.connect(self.open)
        self._doors.said.connect(self.notice.say)
        start.new_asked.connect(self._on_new_asked)
        self.list.chosen.connect(self._on_page_chosen)
        self.strip.opened.connect(self._on_strip_opened)
        head.impact.clicked.connect(self._on_impact_clicked)
        state.changed.connect(self.show_editing)
        state.failed.connect(self._on_failed)
        state.cleared.connect(self._on_cleared)
        state.saved.connect(self._on_saved)
        state.asked.connect(self._on_place_asked)
        save = QShortcut(QKeySequence("Ctrl+S"), self)
        save.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        save.activated.connect(self._on_save_pressed)

    @Slot()
    def _on_save_pressed(self) -> None:
        """Save with what is just being typed: a shortcut does not leave the field."""
        self._flush()
        self._state.save()

    @Slot()
    def _on_close_clicked(self) -> None:
        self._doors.ask_putting_away(self.head.close_key)

    @Slot()
    def _on_cleared(self) -> None:
        self._show_start()
        self.focus_first()

    @Slot(object)
    def _on_saved(self, folder: Path) -> None:
        self.notice.hide()  # what was wrong with it is no more
        if self._held(folder):
            self._tell_held()

    @Slot(str)
    def _on_page_chosen(self, page: str) -> None:
        if page not in self._made:
            made = self._pages[page].made(self._state, self._desk)
            self._made[page] = made
            self.stack.addWidget(made)
        self.stack.setCurrentWidget(self._made[page])
        self._state.page = page

    @Slot()
    def _on_impact_clicked(self) -> None:
        self.go_to("impact")
        self.focus_first()

    @Slot()
    def _on_strip_opened(self) -> None:
        self.go_to("audit")
        self.focus_first()

    @Slot(object)
    def _on_place_asked(self, place: object) -> None:
        for page in self._pages.values():
            if page.shows(place):
                made = self.go_to(page.id)
                show = getattr(made, "show_place", None)
                if show is not None:
                    show(place)
                return

    @Slot(str)
    def _on_folder_asked(self, folder: str) -> None:
        self.open(Path(folder))

    @Slot()
    def _on_new_asked(self) -> None:
        self.new_asked.emit()

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        self.notice.say(message_for(error))
