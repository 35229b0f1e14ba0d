"""What is done with recorded cases, one thing at a time, off the UI thread."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QGuiApplication

from idkey.app.parts.jobs import Job, Jobs
from idkey.app.parts.keeper import kept_setting
from idkey.app.records.label_choice import LabelChoice
from idkey.app.records.work import Shelf
from idkey.places import data_folder
from idkey.report.language import Language
from idkey.report.shop_label import ShopLabel
from idkey.store.erasing import Erased, erase_buyer
from idkey.store.intake import Intake, put_intake
from idkey.store.record import Sale

LABEL_SETTING = "records/label"
"""Setting that says what shop labels were printed on last."""


class RecordsDeeds(QObject):
    """Writes, attaches and erases; what is asked for while it is busy is not done.

    Args:
        shelf: Cases and keys.
        language: Language of what is written.
        jobs: Where the work is done.
        parent: Owner.

    Attributes:
        folder: Where rationales go.
        owner: Who publishes an archive.

    Signals:
        started(): Something is under way.
        done(said: str): It is done; what to tell the person.
        begun(first: str, second: str): A blind determination was begun, as the case `second`.
        failed(error: object): It was not done.
        ended(): Nothing is under way any more.
    """

    started = Signal()
    done = Signal(str)
    begun = Signal(str, str)
    failed = Signal(object)
    ended = Signal()

    def __init__(self, shelf: Shelf, language: Language, jobs: Jobs, parent: QObject) -> None:
        super().__init__(parent)
        self.folder = data_folder() / "rationales"
        self.owner = self.tr("not stated")
        self.busy = False
        self._begun, self._copied = ("", ""), ""
        self._shelf, self._language, self._jobs = shelf, language, jobs

    def write_again(self, case_id: str) -> None:
        """Write the rationale of a case again, and note it in the record."""
        folder, code = self.folder, self._language.code
        said = self.tr("Written and noted in the record: {pdf} and {data}, in {folder}.")

        def work() -> str:  # on a pool thread
            filed = self._shelf.write_again(case_id, folder, code)
            return said.format(pdf=filed.pdf.name, data=filed.data.name, folder=folder)

        self._start(work)

    def copy_text(self, case_id: str) -> None:
        """Put the verdict as plain text on the clipboard."""
        said = self.tr("The text is on the clipboard; paste it where you need it.")

        def work() -> str:  # on a pool thread
            self._copied = self._shelf.text(case_id, self._language)
            return said

        self._start(work)

    def labels(self, case_ids: tuple[str, ...]) -> tuple[ShopLabel, ...]:  # on a pool thread
        """The corrected shop labels of cases, in the language of the records."""
        return self._shelf.labels(case_ids, self._language.code)

    def write_labels(self, labels: tuple[ShopLabel, ...], choice: LabelChoice, file: Path) -> None:
        """Write shop labels on the chosen stock."""
        said = self.tr("Shop label written: {file}").format(file=file)

        def work() -> str:  # on a pool thread
            self._shelf.write_labels(labels, choice, file)
            return said

        self._start(work)

    def kept(self, name: str) -> dict[str, Any]:
        """What was remembered under `name`; empty when there is nothing that can be read."""
        return kept_setting(self._shelf.store, name)

    def keep(self, name: str, text: str) -> None:
        """Remember something for the next time."""
        store = self._shelf.store
        self._jobs.start(Job(lambda _: store.put_setting(name, text)))

    def note_intake(self, case_id: str, intake: Intake) -> None:
        """Note how the animal came in, with its permit fields."""
        said = self.tr("The permit fields are noted.")

        def work() -> str:  # on a pool thread
            put_intake(self._shelf.store, case_id, intake)
            return said

        self._start(work)

    def begin_opinion(self, case_id: str, initials: str) -> None:
        """Begin a blind determination of the same animal; `begun` follows."""
        said = self.tr("A blind case for {who} is begun.").format(who=initials)

        def work() -> str:  # on a pool thread
            self._begun = (case_id, self._shelf.begin_opinion(case_id, initials))
            return said

        self._start(work)

    def export(self, case_ids: tuple[str, ...], file: Path) -> None:
        """Write cases as a Darwin Core Archive."""
        owner = self.owner
        one = self.tr("One case is written to {file}; its buyer is not in it.")
        many = self.tr("{n} cases are written to {file}; buyers are not in it.")

        def work() -> str:  # on a pool thread
            number = self._shelf.export(case_ids, file, owner)
            return (one if number == 1 else many).format(n=number, file=file)

        self._start(work)

    def attach(self, case_id: str, sale: Sale) -> None:
        """Note that the animal of a case went out with a sale."""
        said = self.tr("Sale {number} is attached.").format(number=sale.number)

        def work() -> str:  # on a pool thread
            self._shelf.store.attach_sale(case_id, sale)
            return said

        self._start(work)

    def erase(self, buyer: str) -> None:
        """Erase a buyer's reference everywhere."""
        self._start(lambda: self._erased(erase_buyer(self._shelf.store, buyer)))

    def _erased(self, told: Erased) -> str:  # on a pool thread
        if not told.sales and not told.drafts and not told.backups:
            lines = [self.tr("No sale names that buyer; check how the reference was written.")]
        else:
            text = self.tr("Erased. Sales that named the buyer: {sales}; backups: {backups}.")
            lines = [text.format(sales=told.sales, backups=told.backups)]
        if told.kept_in:
            text = self.tr("Remarks or papers of these cases still name the buyer: {cases}.")
            lines.append(text.format(cases=", ".join(one[:8] for one in told.kept_in)))
        if told.unreadable:
            text = self.tr("Delete these copies, which could not be cleaned: {files}.")
            lines.append(text.format(files=", ".join(map(str, told.unreadable))))
        return " ".join(lines)

    def _start(self, work: Callable[[], str]) -> None:
        if self.busy:
            return
        self.busy = True
        self.started.emit()
        job = Job(lambda _: work())
        job.succeeded.connect(self._on_succeeded)
        job.failed.connect(self._on_failed)
        job.ended.connect(self._on_ended)
        self._jobs.start(job)

    @Slot(object)
    def _on_succeeded(self, said: str) -> None:
        copied, self._copied = self._copied, ""
        if copied:
            QGuiApplication.clipboard().setText(copied)
        self.done.emit(said)
        begun, self._begun = self._begun, ("", "")
        if all(begun):
            self.begun.emit(*begun)

    @Slot(object)
    def _on_failed(self, error: object) -> None:
        self.failed.emit(error)

    @Slot()
    def _on_ended(self) -> None:
        self.busy = False
        self.ended.emit()
