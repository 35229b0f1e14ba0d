"""The one thing in the workshop that changes: the key being edited."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.workshop.checking import Checker, Found
from idkey.app.workshop.drafts import Drafts
from idkey.app.workshop.editing import Editing, same_content
from idkey.app.workshop.opening import TakenUp, large, taken_up
from idkey.app.workshop.saving import ready, written
from idkey.app.workshop.shelf import Shelf
from idkey.formats.folder import read_key
from idkey.model.key import Key
from idkey.store.book import Store


class WorkshopState(QObject):
    """Holds the key being edited; every change is one step that can be taken back.

    Pages call `change` with a whole new key; they redraw from `editing` when told. What is not
    saved yet is kept as a draft at once, also with mistakes in it.

    Args:
        drafts: Folder where unsaved work is kept.
        parent: Owner.
        shelf: Where keys are; None looks for own ones beside the drafts.
        store: The record book, for what its cases and its drill log say about the key; None
            where there is none.

    Attributes:
        shelf: Where keys are.
        drafts: Unsaved work by key folder.
        page: The page gone to last, so that a window that is made anew goes there.
        errands: Where pages have longer work done; it never holds up the checking.

    Signals:
        changed(editing: Editing): After each step, and when mistakes have been found.
        cleared(): The key was put away.
        asked(place: object): Somebody wants to see a place of the key: the `loc` and file of
            a `Problem`, or a `Remark`.
        failed(error: object): Something could not be read or written.
        refused(error: object): The key was not saved, though another way of saving may do.
        saved(folder: object): A key was written to its folder.
    """

    changed = Signal(object)
    cleared = Signal()
    asked = Signal(object)
    failed = Signal(object)
    refused = Signal(object)
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
        self.drafts = Drafts(drafts, self)
        self._checker = Checker(self)
        self._jobs = Jobs(threads=1, parent=self)
        self._saving: Key | None = None
        self.editing: Editing | None = None
        self.page = ""
        self._checker.found.connect(self._on_found)
        self._checker.failed.connect(self._on_failed)
        self.drafts.failed.connect(self._on_failed)

    @property
    def busy(self) -> bool:
        """Whether mistakes are still looked for, or something is being written."""
        return self._checker.busy or self.drafts.busy or self._saving is not None

    def close(self) -> None:
        """Let go of work under way; what was asked to be kept is kept."""
        self.errands.close()
        self._checker.close()
        self._jobs.wait(10_000)
        self._jobs.close()
        self.drafts.close()

    def open(self, folder: Path) -> None:
        """Take the key of a folder onto the table, with the unsaved work there is on it.

        Raises:
            KeyProblems: A part of it cannot be understood, and there is no unsaved work on it.
        """
        self.drafts.flush()
        self._take(taken_up(folder, self.drafts))

    def open_soon(self, folder: Path) -> None:
        """As `open`, while the window goes on; what is wrong is told by `failed`."""
        self.drafts.flush()

        def work(tick: Tick) -> TakenUp:  # on a pool thread
            tick(0, 1)
            return taken_up(folder, self.drafts)

        job = Job(work)
        job.succeeded.connect(self._take)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    @Slot(object)
    def _take(self, taken: TakenUp) -> None:
        here = self.editing
        late = here is not None and here.folder == taken.editing.folder and here.dirty
        if late and taken.damaged is None:
            return  # it was asked for twice, and edited since it came the first time
        self._show(taken.editing)
        if taken.damaged is not None:
            self.failed.emit(taken.damaged)

    def resume(self) -> None:
        """Take up the key that was on the table last, if nothing is there yet.

        It counts as on the table again once it was checked or changed: one that brings the program
        down is not taken up by itself a second time.
        """
        folder = self.drafts.here
        there = folder is not None and (folder.is_dir() or folder in self.drafts.folders())
        if self.editing is None and folder is not None and there:
            self.drafts.put_here(None)
            self.open_soon(folder) if large(folder) else self.open(folder)

    @Slot()
    def put_away(self) -> None:
        """Take the key off the table; what is not saved yet is kept."""
        self.editing = None
        self.drafts.put_here(None)
        self.cleared.emit()

    @Slot(str)
    def look_again(self, key_id: str) -> None:
        """Go with what became of the folder of a key, unless there is unsaved work on it."""
        editing = self.editing
        if editing is None or editing.dirty:
            return
        if not editing.folder.is_dir():
            self.throw_away()
        elif editing.folder.name == key_id:
            self.open_soon(editing.folder)

    def throw_away(self) -> None:
        """Take the key off the table, and forget what is not saved."""
        if self.editing is not None:
            self.drafts.drop(self.editing.folder)
            self.put_away()

    def copy(self, folder: Path, key_id: str) -> Path:
        """Make an own copy of a key folder; where it is.

        Raises:
            IdKeyError: The id cannot be had, or the folder cannot be read or written.
        """
        new = self.shelf.copy(folder, key_id)
        self.saved.emit(new)
        return new

    def change(self, key: Key, words: str) -> None:
        """Make a step.

        Args:
            key: The key after it.
            words: What it did, for the undo button, such as "Claw granulation of two taxa".
        """
        if self.editing is not None and not same_content(key, self.editing.key):
            self._show(self.editing.changed(key, words))
            self._remember(self.editing)

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
        """Write the key to its folder, unless that was changed by somebody else meanwhile."""
        if self.editing is not None and self.editing.dirty:
            self._save(self.editing, over=False)

    def overwrite(self) -> None:
        """Write the key to its folder, whatever that says now."""
        if self.editing is not None:
            self._save(self.editing, over=True)

    def save_as(self, key_id: str) -> None:
        """Write the key as it is now to an own copy of its folder, and go on with that.

        Raises:
            IdKeyError: The id cannot be had, or the folder cannot be read or written.
        """
        editing = self.editing
        if editing is None:
            return
        folder = self.shelf.room_for(editing.key, key_id, like=editing.folder)
        copied = read_key(folder)
        self.drafts.drop(editing.folder)
        self.drafts.put_here(folder)
        key = replace(editing.key, id=key_id, digest="")
        self._show(Editing(folder=folder, saved=copied, key=key, checking=True))
        self._save(self.editing or editing, over=True)

    def take_in(self, merged: Key, theirs: Key, words: str) -> None:
        """Go on with a key that holds what was changed on the disk as well.

        Args:
            merged: Both people's changes.
            theirs: What the folder says now.
            words: What was done, for the undo button.
        """
        if self.editing is not None:
            self._show(replace(self.editing.changed(merged, words), saved=theirs))

    def show_place(self, place: object) -> None:
        """Ask the page that can show it to go to a place of the key."""
        self.asked.emit(place)

    def _remember(self, editing: Editing) -> None:
        if self.drafts.here != editing.folder:
            self.drafts.put_here(editing.folder)

    def _step(self, move: Callable[[Editing], Editing]) -> None:
        if self.editing is not None and (moved := move(self.editing)) is not self.editing:
            self._show(moved)

    def _show(self, editing: Editing) -> None:
        self.editing = editing
        self.changed.emit(editing)
        self.drafts.keep(editing)
        if editing.checking:
            self._checker.look(editing.key, editing.folder)

    def _save(self, editing: Editing, *, over: bool) -> None:
        if self._saving is not None:
            return
        wrong = ready(editing, self.shelf)
        if wrong is not None:
            self.refused.emit(wrong)
            return
        self._saving = editing.key

        def work(tick: Tick) -> tuple[Editing, Key]:  # on a pool thread
            tick(0, 1)
            return editing, written(editing, over=over)

        job = Job(work)
        job.succeeded.connect(self._on_written)
        job.failed.connect(self._on_not_written)
        self._jobs.start(job)

    @Slot(object)
    def _on_written(self, done: tuple[Editing, Key]) -> None:
        then, key = done
        self._saving = None
        now = self.editing
        if now is not None and now.folder == then.folder:
            same = now.key is then.key
            key_now = key if same else now.key
            self._show(replace(now, saved=key, key=key_now, checking=True))
        else:
            self.drafts.drop(then.folder)
        self.saved.emit(then.folder)

    @Slot(object)
    def _on_not_written(self, error: BaseException) -> None:
        self._saving = None
        self.refused.emit(error)

    @Slot(object)
    def _on_found(self, found: Found) -> None:
        editing = self.editing
        if editing is None or editing.key is not found.key:
            return  # a newer key is being looked at
        self._remember(editing)
        self.editing = replace(
            editing, problems=found.problems, remarks=found.remarks, checking=False
        )
        self.changed.emit(self.editing)

    @Slot(object)
    def _on_failed(self, error: BaseException) -> None:
        if self.editing is not None and self.editing.checking and not self._checker.busy:
            self.editing = replace(self.editing, checking=False)
        self.failed.emit(error)
