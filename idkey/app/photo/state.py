"""The one thing in the photo tool that changes."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.photo.session import (
    Entry,
    Loaded,
    Looked,
    PhotoSession,
    alternated,
    entry_of,
    first_pen,
    looked_at,
    number_of,
    opened,
)
from idkey.app.photo.sketch import Sketch
from idkey.errors import IdKeyError
from idkey.model.case import Finding
from idkey.model.character import Character, Look
from idkey.photo.faults import PictureError
from idkey.photo.intake import Picture
from idkey.photo.marks import Marks, marks_of, text_of
from idkey.photo.reading import finding, seen
from idkey.photo.shelf import PictureShelf


class PhotoState(QObject):
    """Holds what is shown and drawn; drafts of marks go to the shelf as soon as they are made.

    Args:
        shelf: Where pictures are kept.
        character: What is looked at.
        ids: Pictures of the case, in order.
        parent: Owner.

    Signals:
        changed(session: PhotoSession): After each step that made a difference.
    """

    changed = Signal(object)

    def __init__(
        self,
        shelf: PictureShelf,
        character: Character,
        *,
        ids: tuple[str, ...] = (),
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self.shelf = shelf
        self._jobs = Jobs(threads=1, parent=self)
        self._before: list[Sketch] = []
        self._after: list[Sketch] = []
        self._given: dict[str, Marks] = {}
        blank = Marks(picture="", character=character.id)
        sketch = Sketch(marks=blank, pen=first_pen(character))
        entries = tuple(Entry(picture_id) for picture_id in ids)
        self.session = PhotoSession(character=character, entries=entries, sketch=sketch)

    def close(self) -> None:
        """Let go of work under way."""
        self._jobs.close()

    @property
    def busy(self) -> bool:
        """Whether anything is under way."""
        return self._jobs.busy

    def resume(self, earlier: Finding | None = None) -> None:
        """Show the picture and the marks of an earlier finding, else the newest picture."""
        for picture_id in self.session.ids:
            self._offer(picture_id)
        if earlier is not None and earlier.marks:
            try:
                marks = marks_of(earlier.marks)
                self._given[marks.picture] = marks
                self._offer(marks.picture)
                self.show_picture(marks.picture)
                return
            except PictureError as err:
                self._show(replace(self.session, problem=err))
        if self.session.ids:
            self.show_picture(self.session.ids[-1])

    def show_picture(self, picture_id: str) -> None:
        """Open another picture, with the marks that were drawn on it for this character."""
        if picture_id == self.session.shown:
            return
        self._before, self._after = [], []
        sketch = self._sketch_on(picture_id)
        self._show(
            replace(
                self.session,
                shown=picture_id,
                loaded=None,
                sketch=sketch,
                found=None,
                looked=None,
                problem=None,
                busy=True,
            )
        )
        self._start(lambda: opened(self.shelf, picture_id), self._on_loaded)

    def add_files(self, paths: tuple[Path, ...]) -> None:
        """Take pictures in, and show the last one."""
        for path in paths:
            self._add(lambda path=path: self.shelf.add_file(path))  # type: ignore[misc]

    def add_bytes(self, source: bytes, name: str) -> None:
        """Take a picture in that came as bytes."""
        self._add(lambda: self.shelf.add_bytes(source, name))

    def sketch(self, sketch: Sketch) -> None:
        """Take a changed sketch over; moves of one point count as one step."""
        before = self.session.sketch
        if sketch == before:
            return
        if sketch.marks != before.marks:
            moving = sketch.chosen is not None and sketch.chosen == before.chosen
            same = len(sketch.points()) == len(before.points())
            if not (moving and same and self._before):
                self._before.append(before)
            self._after = []
            sketch = alternated(sketch, before, self.session.character)
        self._take(sketch)

    def undo(self) -> None:
        """Take the last step back."""
        if self.session.sketch.open:
            self._take(self.session.sketch.taken_back())
        elif self._before:
            self._after.append(self.session.sketch)
            self._take(self._before.pop())

    def redo(self) -> None:
        """Do the last step again that was taken back."""
        if self._after:
            self._before.append(self.session.sketch)
            self._take(self._after.pop())

    def clear_problem(self) -> None:
        """The person has read it."""
        self._show(replace(self.session, problem=None))

    def finding(self, look: Look, states: tuple[str, ...] = ()) -> Finding | None:
        """The finding that what is drawn, or what the person says, makes; None for nothing."""
        session = self.session
        if session.loaded is None:
            return None
        if states:
            return seen(session.sketch.marks, states, look=look)
        if session.found is None:
            return None
        return finding(session.sketch.marks, session.found, look=look)

    def forget_draft(self) -> None:
        """The finding holds the marks now: another animal on the picture starts afresh."""
        blank = replace(self.session.sketch.marks, lines=(), others=(), spots=())
        self._keep(replace(blank, patch=None, neutral=None))

    def _add(self, taking: Callable[[], Picture]) -> None:
        self._show(replace(self.session, busy=True, problem=None))
        self._start(taking, self._on_added)

    def _offer(self, picture_id: str) -> None:
        if picture_id not in self.session.ids:
            self._show(self.session.with_entry(Entry(picture_id)))
        self._start(lambda: entry_of(self.shelf, picture_id), self._on_entry)

    def _start(self, work: Callable[[], object], then: Callable[[object], None]) -> None:
        def ticking(tick: Tick) -> object:  # on a pool thread
            tick(0, 1)
            return work()

        job = Job(ticking)
        job.succeeded.connect(then)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    def _sketch_on(self, picture_id: str) -> Sketch:
        character = self.session.character
        marks = self._given.get(picture_id)
        if marks is None or marks.character != character.id:
            marks = Marks(picture=picture_id, character=character.id)
        try:
            draft = self.shelf.draft(picture_id, character.id)
            marks = marks_of(draft) if draft else marks
        except PictureError:
            pass  # a draft of a newer program is left alone
        return Sketch(marks=marks, pen=first_pen(character))

    def _take(self, sketch: Sketch) -> None:
        session = self.session
        kept = self._keep(sketch.marks) if sketch.marks != session.sketch.marks else None
        picture = session.loaded.picture if session.loaded else None
        found, problem = number_of(sketch, session.character, picture)
        looked = session.looked if sketch.marks == session.sketch.marks else None
        self._show(
            replace(session, sketch=sketch, found=found, problem=problem or kept, looked=looked)
        )
        self._look()

    def _keep(self, marks: Marks) -> IdKeyError | None:
        """Keep marks as a draft; why that failed, if it did."""
        if not marks.picture:
            return None
        try:
            text = "" if marks.empty else text_of(marks)
            self.shelf.put_draft(marks.picture, marks.character, text)
        except IdKeyError as err:
            return err
        return None

    def _look(self) -> None:
        """Work out what the patch says, unless that is known."""
        loaded, marks, character = (
            self.session.loaded,
            self.session.sketch.marks,
            self.session.character,
        )
        known = self.session.looked is not None and self.session.looked.marks == marks
        if loaded is None or marks.patch is None or known:
            return

        self._start(lambda: looked_at(loaded, marks, character), self._on_looked)

    @Slot(object)
    def _on_loaded(self, loaded: object) -> None:
        if isinstance(loaded, Loaded) and loaded.picture.id == self.session.shown:
            self._show(replace(self.session, loaded=loaded, busy=False))
            self._take(self.session.sketch)

    @Slot(object)
    def _on_added(self, picture: object) -> None:
        if isinstance(picture, Picture):
            self._offer(picture.id)
            self._show(replace(self.session, busy=False))
            self.show_picture(picture.id)

    @Slot(object)
    def _on_entry(self, entry: object) -> None:
        if isinstance(entry, Entry):
            self._show(self.session.with_entry(entry))

    @Slot(object)
    def _on_looked(self, looked: object) -> None:
        if isinstance(looked, Looked) and looked.marks == self.session.sketch.marks:
            self._show(replace(self.session, looked=looked, problem=looked.problem))

    @Slot(object)
    def _on_failed(self, error: object) -> None:
        problem = error if isinstance(error, BaseException) else None
        self._show(replace(self.session, problem=problem, busy=False))

    def _show(self, session: PhotoSession) -> None:
        if session != self.session:
            self.session = session
            self.changed.emit(session)
