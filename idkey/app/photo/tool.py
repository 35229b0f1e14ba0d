"""The photo tool: measure, count, compare colours and surfaces on a picture.

To call it from a window::

    tool = photo_tool.open_for(window, key, character, shelf, desk=desk, ids=ids, earlier=finding)
    tool.measured.connect(state.observe)
"""

from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from idkey.app.parts.arrivals import FILTER, Arrivals, arrivals
from idkey.app.parts.desk import Desk
from idkey.app.parts.messages import message_for
from idkey.app.photo.layout import PhotoLayout
from idkey.app.photo.number_panel import LinesPanel
from idkey.app.photo.session import PhotoSession
from idkey.app.photo.sight import Sight
from idkey.app.photo.sketch import Pen
from idkey.app.photo.state import PhotoState
from idkey.model.case import Finding
from idkey.model.character import Character, Look
from idkey.model.key import Key
from idkey.photo.shelf import PictureShelf


class PhotoTool(PhotoLayout):
    """Everything one does with a picture for one character.

    Args:
        key: The key.
        character: What is measured, counted or looked at.
        desk: Look, drawings, language.
        shelf: Where pictures are kept.
        ids: Ids of the pictures of the case.

    Signals:
        measured(finding: object): The person takes a number, or says which state it is.
    """

    measured = Signal(object)

    def __init__(
        self,
        key: Key,
        character: Character,
        desk: Desk,
        *,
        shelf: PictureShelf,
        ids: tuple[str, ...] = (),
    ) -> None:
        super().__init__(key, character, desk, shelf=shelf)
        self.state = PhotoState(shelf, character, ids=ids, parent=self)
        self._connect()
        self._bind()
        self._on_state_changed(self.state.session)

    def resume(self, earlier: Finding | None = None) -> None:
        """Show the picture and the marks of an earlier finding, else the newest picture."""
        if earlier is not None and earlier.look is not None:
            self.looks.choose(earlier.look)
        self.state.resume(earlier)
        self.canvas.setFocus(Qt.FocusReason.OtherFocusReason)

    def close_work(self) -> None:
        """Let go of work under way."""
        self.state.close()
        self.other.close_work()

    def _connect(self) -> None:
        self.state.changed.connect(self._on_state_changed)
        self.canvas.sketched.connect(self.state.sketch)
        self.canvas.looked.connect(self._on_canvas_looked)
        self.panel.sketched.connect(self.state.sketch)
        self.thumbs.opened.connect(self.state.show_picture)
        self.bar.stepped.connect(self._on_bar_stepped)
        self.other.looked.connect(self._on_other_looked)
        self.notice.put_away.connect(self.state.clear_problem)
        self.result.taken.connect(self._on_result_taken)
        self.strip.named.connect(self._on_strip_named)
        self.add.clicked.connect(self._on_add_clicked)
        self.paste.clicked.connect(self._on_paste_clicked)
        self.compare.toggled.connect(self._on_compare_toggled)

    def _bind(self) -> None:
        keys = {
            "Ctrl+V": self._on_paste_clicked,
            "Ctrl+O": self._on_add_clicked,
            "Ctrl+Z": self.state.undo,
            "Ctrl+Shift+Z": self.state.redo,
            "Ctrl+Return": self._on_take_wanted,
        }
        if isinstance(self.panel, LinesPanel):
            keys |= {"C": self.panel.bent.toggle, "1": self._on_first, "2": self._on_second}
        for key, slot in keys.items():
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(slot)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take pictures that are dragged in."""
        if arrivals(event.mimeData()).any:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Add what was dropped."""
        self._arrive(arrivals(event.mimeData()))
        event.acceptProposedAction()

    def _arrive(self, came: Arrivals) -> None:
        if came.files:
            self.state.add_files(came.files)
        elif came.content:
            self.state.add_bytes(came.content, self.tr("The pasted picture"))

    @Slot(object)
    def _on_state_changed(self, session: PhotoSession) -> None:
        levels = session.loaded.levels if session.loaded else None
        self.canvas.say_empty(
            self.tr("Reading …") if session.busy else self.empty_words(session.condition)
        )
        self.canvas.show_picture(levels)
        self.canvas.show_sketch(session.sketch, session.names)
        self.bar.show_sight(self.canvas.hand.sight if self.canvas.hand else None)
        self.panel.show_session(session)
        self.result.show_session(session)
        self.strip.show_session(session)
        self.thumbs.show_session(session)
        if self.compare.isChecked():
            self.other.offer(session)
        if session.problem is None:
            self.notice.hide()
        else:
            self.notice.say(message_for(session.problem))

    @Slot(object)
    def _on_canvas_looked(self, sight: Sight) -> None:
        self.bar.show_sight(sight)
        if self.compare.isChecked():
            self.other.follow(sight)

    @Slot(object)
    def _on_other_looked(self, sight: Sight) -> None:
        if self.canvas.hand is not None:
            self.canvas.look(self.canvas.hand.sight.like(sight))
            self.bar.show_sight(self.canvas.hand.sight)

    @Slot(int)
    def _on_bar_stepped(self, step: int) -> None:
        (self.state.undo if step < 0 else self.state.redo)()

    @Slot()
    def _on_first(self) -> None:
        self.state.sketch(self.state.session.sketch.with_pen(Pen.LINE))

    @Slot()
    def _on_second(self) -> None:
        self.state.sketch(self.state.session.sketch.with_pen(Pen.OTHER))

    @Slot()
    def _on_take_wanted(self) -> None:
        if self._character.kind.numeric:
            self._on_result_taken()
        else:
            self._on_strip_named(self.strip.marked)

    @Slot()
    def _on_result_taken(self) -> None:
        self._tell(self.state.finding(self._look))

    @Slot(object)
    def _on_strip_named(self, states: tuple[str, ...]) -> None:
        if states:
            self._tell(self.state.finding(self._look, states))

    @property
    def _look(self) -> Look:
        look: Look = self.looks.chosen
        return look

    def _tell(self, finding: Finding | None) -> None:
        if finding is not None:
            self.state.forget_draft()
            self.measured.emit(finding)

    @Slot()
    def _on_add_clicked(self) -> None:
        chosen, _ = QFileDialog.getOpenFileNames(
            self, self.tr("Add pictures"), "", f"{self.tr('Pictures')} ({FILTER})"
        )
        self.state.add_files(tuple(Path(name) for name in chosen))

    @Slot()
    def _on_paste_clicked(self) -> None:
        self._arrive(arrivals(QGuiApplication.clipboard().mimeData()))

    @Slot(bool)
    def _on_compare_toggled(self, compares: bool) -> None:
        self.other.setVisible(compares)
        if compares:
            self.other.offer(self.state.session)


class PhotoDialog(QDialog):
    """A window around the photo tool; it closes once a finding was taken.

    Args:
        tool: The tool.
        parent: The window it belongs to.
    """

    def __init__(self, tool: PhotoTool, parent: QWidget) -> None:
        super().__init__(parent)
        self.tool = tool
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(tool)
        tool.measured.connect(self.accept)
        tool.back.clicked.connect(self.reject)
        for one in self.findChildren(QPushButton):
            one.setAutoDefault(False)  # else Enter in the picture would press a button

    def done(self, result: int) -> None:
        """Let go of work under way, and close."""
        self.tool.close_work()
        super().done(result)


def open_for(
    parent: QWidget,
    key: Key,
    character: Character,
    pictures: PictureShelf,
    *,
    desk: Desk,
    ids: tuple[str, ...] = (),
    earlier: Finding | None = None,
) -> PhotoTool:
    """Open the photo tool in a window of its own over `parent`.

    Args:
        parent: A widget of the window it belongs to.
        key: The key.
        character: What is measured, counted or looked at.
        pictures: Where pictures are kept.
        desk: Look, drawings, language.
        ids: Ids of the pictures of the case; the last one is shown.
        earlier: A finding on this character that was made here before; its marks are shown.

    Returns:
        The tool; connect to its `measured`. The window closes and deletes itself.
    """
    tool = PhotoTool(key, character, desk, shelf=pictures, ids=ids)
    window = parent.window()
    dialog = PhotoDialog(tool, window)
    dialog.setWindowTitle(character.name)
    dialog.resize(window.size())
    dialog.open()
    tool.resume(earlier)
    return tool
