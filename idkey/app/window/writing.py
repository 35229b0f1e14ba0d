"""From the case on the bench to its rationale: who signs, for which sale, and the file."""

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, Qt, Slot
from PySide6.QtWidgets import QWidget

from idkey import places
from idkey.app.bench.rationale_dialog import RationaleDialog
from idkey.app.bench.state import BenchState
from idkey.app.parts.desk import Desk
from idkey.app.parts.filing import Filed, Order, file_rationale
from idkey.app.parts.jobs import Job, Jobs, Tick
from idkey.app.parts.messages import message_for
from idkey.store.intake import papers_of


class Writing(QObject):
    """Has the rationale of the case on the bench written.

    Args:
        state: The state of the bench.
        desk: Look, drawings, language.
        folder: Folder where rationales go; the pictures lie beside it.
        over: The widget the dialog lies over, and the owner.
    """

    def __init__(self, state: BenchState, desk: Desk, *, folder: Path, over: QWidget) -> None:
        super().__init__(over)
        self._state, self._desk, self._folder, self._over = state, desk, folder, over
        self._jobs = Jobs(threads=1, parent=self)
        self._dialog: RationaleDialog | None = None

    def wait(self) -> None:
        """Let what was signed be written."""
        self._jobs.wait(10_000)

    @Slot()
    def open(self) -> None:
        """Ask for sale and signature."""
        session = self._state.session
        papers = papers_of(self._state.keeper.store, session.case.id)
        dialog = RationaleDialog(
            session,
            self._desk,
            folder=self._folder,
            parent=self._over,
            papers=papers,
            draft=self._state.drafted("sale"),
        )
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.drafted.connect(self._on_dialog_drafted)
        dialog.signed.connect(self._on_dialog_signed)
        dialog.destroyed.connect(self._on_dialog_destroyed)
        self._dialog = dialog
        dialog.open()
        dialog.number.setFocus()

    @Slot(str)
    def _on_dialog_drafted(self, text: str) -> None:
        self._state.draft("sale", text)

    @Slot(object)
    def _on_dialog_signed(self, order: Order) -> None:
        signed = order.assessment.case
        self._state.sign(signed.by, signed.language)
        store = self._state.keeper.store
        order = replace(order, pictures=self._folder.parent / places.PICTURES)

        def work(tick: Tick) -> object:  # on a pool thread
            tick(0, 1)
            return file_rationale(store, order)

        self._state.keeper.flush()
        job = Job(work)
        job.succeeded.connect(self._on_filed)
        job.failed.connect(self._on_filing_failed)
        self._jobs.start(job)

    @Slot(object)
    def _on_filed(self, filed: Filed) -> None:
        self._state.draft("sale", "")
        if self._dialog is not None:
            self._dialog.show_filed(filed)

    @Slot(object)
    def _on_filing_failed(self, error: Exception) -> None:
        if self._dialog is not None:
            self._dialog.show_message(message_for(error))

    @Slot()
    def _on_dialog_destroyed(self) -> None:
        self._dialog = None
