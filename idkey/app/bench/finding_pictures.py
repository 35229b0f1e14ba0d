"""Pictures of findings: taken in from a file, the clipboard or a drop, and shown large."""

from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFileDialog

from idkey.app.bench.picture_viewer import PictureViewer
from idkey.app.bench.session import Session
from idkey.app.bench.state import BenchState
from idkey.app.bench.view import BenchView
from idkey.app.parts.arrivals import FILTER, Arrivals, arrivals
from idkey.app.parts.desk import Desk
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.errors import IdKeyError
from idkey.photo.shelf import PictureShelf
from idkey.report.words import finding_words


class FindingPictures(QObject):
    """Keeps pictures for the ledger of a bench.

    What is kept is the picture alone, upright: place, time and camera are left out.

    Args:
        bench: The bench.
        state: Its state.
        shelf: Where pictures are kept.
        desk: Look, drawings, language.

    Signals:
        failed(error: object): A picture was not taken in.
    """

    failed = Signal(object)

    def __init__(
        self, bench: BenchView, state: BenchState, *, shelf: PictureShelf, desk: Desk
    ) -> None:
        super().__init__(bench)
        self._bench = bench
        self._state = state
        self._shelf = shelf
        self._desk = desk
        self._jobs = Jobs(threads=1, parent=self)
        self._case = self._character = ""
        self.viewer = PictureViewer(desk, shelf, over=bench)
        ledger = bench.ledger
        ledger.thumbs.shelf = shelf
        ledger.pictures_asked.connect(self._on_pictures_asked)
        ledger.adding_asked.connect(self.choose_files)
        ledger.pasted.connect(self._on_pasted)
        ledger.arrived.connect(self.take)
        self.viewer.adding_asked.connect(self._on_viewer_adding_asked)
        self.viewer.dropped.connect(self._on_viewer_dropped)
        self.viewer.ended.connect(self._on_viewer_ended)
        state.changed.connect(self._on_state_changed)

    @property
    def busy(self) -> bool:
        """Whether a picture is being taken in or read."""
        return self._jobs.busy or self.viewer.busy

    def close_work(self) -> None:
        """Let what is being taken in come to its end, and stop the rest."""
        self._jobs.wait(10_000)
        self.viewer.close_work()
        self._bench.ledger.thumbs.close()

    @Slot(str)
    def choose_files(self, character: str) -> None:
        """Ask for picture files for a finding."""
        chosen, _ = QFileDialog.getOpenFileNames(
            self._bench, self.tr("Add pictures"), "", f"{self.tr('Pictures')} ({FILTER})"
        )
        if chosen:
            self.take(character, Arrivals(tuple(Path(name) for name in chosen)))

    @Slot(str, object)
    def take(self, character: str, what: Arrivals) -> None:
        """Take pictures in for a finding of the case on the bench."""
        case_id, shelf = self._state.session.case.id, self._shelf
        name = self.tr("The pasted picture")

        def work(tick: Tick) -> tuple[str, str, list[str], list[IdKeyError]]:  # on a pool thread
            kept, refused = [], []
            for number, file in enumerate(what.files):
                tick(number, len(what.files))
                try:
                    kept.append(shelf.add_file(file).id)
                except IdKeyError as err:
                    refused.append(err)
            if what.content:
                kept.append(shelf.add_bytes(what.content, name).id)
            return case_id, character, kept, refused

        job = Job(work)
        job.succeeded.connect(self._on_taken)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    @Slot(object)
    def _on_taken(self, taken: tuple[str, str, list[str], list[IdKeyError]]) -> None:
        case_id, character, kept, refused = taken
        if kept:
            self._state.add_pictures(case_id, character, tuple(kept))
        for error in refused:
            self.failed.emit(error)

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.failed.emit(error)

    @Slot(str)
    def _on_pasted(self, character: str) -> None:
        what = arrivals(QGuiApplication.clipboard().mimeData())
        if what.any:
            self.take(character, what)
        else:
            self.failed.emit(
                IdKeyError(
                    self.tr("There is no picture to paste."),
                    self.tr("Copy one in another program, then paste it onto the finding."),
                )
            )

    @Slot(str)
    def _on_pictures_asked(self, character: str) -> None:
        finding = self._state.session.case.finding(character)
        if finding is None or not finding.pictures:
            self.choose_files(character)
            return
        self._case, self._character = self._state.session.case.id, character
        self._show(self._state.session)
        self.viewer.open()

    @Slot(object)
    def _on_state_changed(self, session: Session) -> None:
        if not self.viewer.isHidden():
            self._show(session)

    def _show(self, session: Session) -> None:
        finding = session.case.finding(self._character)
        if finding is None or session.case.id != self._case:
            self.viewer.show_pictures("", ())
        else:
            title = finding_words(session.key, finding, self._desk.language)
            self.viewer.show_pictures(title, finding.pictures)

    @Slot()
    def _on_viewer_adding_asked(self) -> None:
        self.choose_files(self._character)

    @Slot(str)
    def _on_viewer_dropped(self, picture: str) -> None:
        self._state.drop_picture(self._character, picture)

    @Slot()
    def _on_viewer_ended(self) -> None:
        self._bench.ledger.list.setFocus()
