"""The one thing in the workshop that changes: the key being edited."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.shelf import Shelf
from idkey.engine.audit import Remark, audit
from idkey.formats.folder import check_values, read_key, write_key
from idkey.formats.problem import Problem, Severity
from idkey.model.key import Key
from idkey.store.book import Store

Found = tuple[Key, tuple[Problem, ...], tuple[Remark, ...]]


class WorkshopState(QObject):
    """Holds the key being edited; every change is one step that can be taken back.

    Pages call `change` with a whole new key; they redraw from `editing` when told.

    Args:
        drafts: Folder where unsaved work is kept.
        parent: Owner.
        shelf: Where keys are; None looks for own ones beside the drafts.
        store: The record book, for what its cases and its drill log say about the key; None
            where there is none.

    Attributes:
        shelf: Where keys are.
        errands: Where pages have longer work done; it never holds up the checking.

    Signals:
        changed(editing: Editing): After each step, and when mistakes have been found.
        asked(place: object): Somebody wants to see a place of the key: the `loc` and file of
            a `Problem`, or a `Remark`.
        failed(error: object): Something could not be read or written.
        saved(folder: object): The key was written to its folder.
    """

    changed = Signal(object)
    asked = Signal(object)
    failed = Signal(object)
    saved = Signal(object)

    def __init__(
        self,
        drafts: Path,
        parent: QObject | None = None,
        *,
        shelf: Shelf | None = None,
        store: Store | None = None,
    ) -> None:
        super().__init__(parent)
        self.shelf = shelf or Shelf.usual(drafts.parent)
        self.store = store
        self.errands = Jobs(threads=1, parent=self)
        self._drafts = drafts
        self._jobs = Jobs(threads=1, parent=self)
        self.editing: Editing | None = None

    def close(self) -> None:
        """Let go of work under way; what was asked to be kept is kept."""
        self.errands.close()
        self._jobs.wait()
        self._jobs.close()

    def open(self, folder: Path) -> None:
        """Take the key of a folder onto the table.

        Raises:
            KeyProblems: It has mistakes.
        """
        key = read_key(folder)
        self._show(Editing(folder=folder, saved=key, key=key, checking=True))

    def put_away(self) -> None:
        """Take the key off the table; what is not saved yet is kept."""
        self.editing = None

    def change(self, key: Key, words: str) -> None:
        """Make a step.

        Args:
            key: The key after it.
            words: What it did, for the undo button, such as "Claw granulation of two taxa".
        """
        if self.editing is not None and key != self.editing.key:
            self._show(self.editing.changed(key, words))

    @Slot()
    def undo(self) -> None:
        """Take back the last step."""
        self._step(Editing.undone)

    @Slot()
    def redo(self) -> None:
        """Do the step again that was taken back last."""
        self._step(Editing.redone)

    @Slot()
    def save(self) -> None:
        """Write the key to its folder."""
        editing = self.editing
        if editing is None or not editing.dirty:
            return
        try:
            write_key(editing.key, editing.folder)
            key = read_key(editing.folder)
        except Exception as err:  # noqa: BLE001 - becomes a message
            self.failed.emit(err)
            return
        self._show(replace(editing, saved=key, key=key))
        self.saved.emit(editing.folder)

    def show_place(self, place: object) -> None:
        """Ask the page that can show it to go to a place of the key."""
        self.asked.emit(place)

    def _step(self, move: Callable[[Editing], Editing]) -> None:
        if self.editing is not None and (moved := move(self.editing)) is not self.editing:
            self._show(moved)

    def _show(self, editing: Editing) -> None:
        self.editing = editing
        self.changed.emit(editing)
        if editing.checking:
            self._check(editing.key, editing.folder)

    def _check(self, key: Key, folder: Path) -> None:
        def work(tick: Tick) -> Found:  # on a pool thread
            tick(0, 2)
            problems = check_values(key, folder)
            tick(1, 2)
            wrong = any(problem.severity is Severity.ERROR for problem in problems)
            return key, problems, () if wrong else audit(key)

        job = Job(work)
        job.succeeded.connect(self._on_checked)
        job.failed.connect(self.failed)
        self._jobs.start(job)

    @Slot(object)
    def _on_checked(self, found: Found) -> None:
        key, problems, remarks = found
        editing = self.editing
        if editing is None or editing.key is not key:
            return  # a newer key is being looked at
        self.editing = replace(editing, problems=problems, remarks=remarks, checking=False)
        self.changed.emit(self.editing)
