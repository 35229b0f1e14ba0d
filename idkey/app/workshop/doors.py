"""The dialogs on a key's way onto the table and off it: own copies, trouble with saving."""

from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QMenu, QWidget

from idkey.app.parts.messages import Message, message_for
from idkey.app.parts.theme import Theme
from idkey.app.workshop.copy_dialog import CopyDialog
from idkey.app.workshop.saving import ChangedMeanwhile
from idkey.app.workshop.state import WorkshopState
from idkey.app.workshop.trouble_dialog import TroubleDialog, WayOut
from idkey.errors import IdKeyError
from idkey.formats.folder import KeyEntry
from idkey.formats.problem import KeyProblems, Severity
from idkey.model.key import Key


class Doors(QObject):
    """Asks what has to be asked before a key is opened, saved or put away.

    Args:
        state: The state of the workshop.
        theme: The look.
        window: Over which dialogs stand.

    Signals:
        said(message: Message): Something to tell.
        opened(folder: Path): The person wants the key of this folder on the table.
    """

    said = Signal(object)
    opened = Signal(object)

    def __init__(self, state: WorkshopState, theme: Theme, window: QWidget) -> None:
        super().__init__(window)
        self._state = state
        self._theme = theme
        self._window = window
        self._source: Path | None = None
        self._trouble: IdKeyError | None = None
        self._merged: Key | None = None
        state.refused.connect(self.show_trouble)

    @Slot(object)
    def ask_copy(self, key: KeyEntry) -> None:
        """Ask for the id of an own copy of a key, and work on that."""
        self._source = key.folder
        self._ask_id(key.title, key.id)

    def ask_saving_as(self) -> None:
        """Ask for the id under which the key on the table is saved."""
        editing = self._state.editing
        if editing is not None:
            self._source = None
            self._ask_id(editing.key.title, editing.key.id)

    def ask_putting_away(self, at: QWidget) -> None:
        """Put the key away; where it is not saved, ask whether the changes are kept."""
        editing = self._state.editing
        if editing is None or not editing.dirty:
            self._state.put_away()
            return
        menu = QMenu(self._window)
        keep = menu.addAction(self.tr("Keep the changes for later"))
        throw = menu.addAction(self.tr("Throw the changes away"))
        keep.triggered.connect(self._state.put_away)
        throw.triggered.connect(self._on_throw_triggered)
        menu.aboutToHide.connect(menu.deleteLater)
        menu.popup(at.mapToGlobal(at.rect().bottomLeft()))

    @Slot(object)
    def show_trouble(self, error: BaseException) -> None:
        """Say why the key was not saved, and what can be done."""
        if isinstance(error, KeyProblems):
            self._tell_mistakes(error)
        elif isinstance(error, IdKeyError):
            self._trouble = error
            dialog = TroubleDialog(error, self._theme, self._window)
            dialog.chosen.connect(self._on_way_chosen)
            self._merged = dialog.merged
            dialog.open()
        else:
            self.said.emit(message_for(error))

    def _tell_mistakes(self, error: KeyProblems) -> None:
        errors = [p for p in error.problems if p.severity is Severity.ERROR]
        text = self.tr("The key has a mistake, so it cannot be used yet and was not saved.")
        if len(errors) != 1:
            text = self.tr("The key has {n} mistakes, so it cannot be used yet and was not saved.")
        remedy = self.tr("Your work is kept, and comes back when you open the key again.")
        self.said.emit(Message(text.format(n=len(errors)), remedy))
        if errors:
            self._state.show_place(errors[0])

    def _ask_id(self, title: str, key_id: str) -> None:
        shelf = self._state.shelf
        wish = shelf.free_id(key_id.removeprefix("my-"))
        dialog = CopyDialog(title, wish, shelf=shelf, theme=self._theme, parent=self._window)
        dialog.told.connect(self._on_id_told)
        dialog.open()

    @Slot(str)
    def _on_id_told(self, key_id: str) -> None:
        try:
            if self._source is None:
                self._state.save_as(key_id)
            else:
                self.opened.emit(self._state.copy(self._source, key_id))
        except Exception as err:  # noqa: BLE001 - becomes a message
            self.said.emit(message_for(err))

    @Slot(object)
    def _on_way_chosen(self, way: WayOut) -> None:
        trouble = self._trouble
        if way is WayOut.COPY:
            self.ask_saving_as()
        elif way is WayOut.OVER:
            self._state.overwrite()
        elif isinstance(trouble, ChangedMeanwhile) and trouble.theirs and self._merged:
            words = self.tr("Took in what changed on the disk")
            self._state.take_in(self._merged, trouble.theirs, words)

    @Slot()
    def _on_throw_triggered(self) -> None:
        self._state.throw_away()
