"""What is asked before something is done with a case: sale, buyer, papers, initials, stock."""

import json
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QFileDialog, QWidget

from idkey.app.parts.jobs import Jobs
from idkey.app.parts.theme import Theme
from idkey.app.records.deeds import LABEL_SETTING, RecordsDeeds
from idkey.app.records.dialogs import EraseDialog, OpinionDialog, SaleDialog
from idkey.app.records.label_choice import LabelChoice
from idkey.app.records.label_dialog import LabelDialog
from idkey.app.records.latest import Latest
from idkey.app.records.papers_dialog import PapersDialog
from idkey.app.records.work import Detail
from idkey.report.language import Language
from idkey.report.shop_label import ShopLabel


class CaseAsks(QObject):
    """Opens the dialogs over the records, and has done what they tell.

    Args:
        deeds: What is done.
        theme: The look.
        language: Language of labels and codes.
        jobs: Where labels are made ready.
        parent: The page the dialogs stand over.

    Signals:
        said(text: str): Why nothing was asked.
        failed(error: object): A label cannot be made.
    """

    said = Signal(str)
    failed = Signal(object)

    def __init__(
        self, deeds: RecordsDeeds, theme: Theme, *, language: Language, jobs: Jobs, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._deeds, self._theme, self._language = deeds, theme, language
        self._over = parent
        self._labelling = Latest(jobs, self)
        self._labelling.answered.connect(self._on_labelled)
        self._labelling.failed.connect(self.failed)

    @property
    def busy(self) -> bool:
        """Whether a label is being made ready."""
        return self._labelling.busy

    def sale(self, found: Detail) -> None:
        """Ask for a sale of the animal."""
        case, deeds = found.stored.case, self._deeds
        dialog = SaleDialog(case.claim.price, self._theme, self._over)
        dialog.told.connect(lambda sale: deeds.attach(case.id, sale))
        dialog.open()

    def buyer(self, found: Detail | None) -> None:
        """Ask whose reference is to be erased."""
        buyers = [sale.buyer for sale in (found.sales if found else ()) if sale.buyer]
        dialog = EraseDialog(buyers[-1] if buyers else "", self._theme, self._over)
        dialog.told.connect(self._deeds.erase)
        dialog.open()

    def papers(self, found: Detail) -> None:
        """Ask for the permit fields."""
        case_id, deeds = found.stored.case.id, self._deeds
        dialog = PapersDialog(found, self._theme, language=self._language, parent=self._over)
        dialog.told.connect(lambda intake: deeds.note_intake(case_id, intake))
        dialog.open()

    def opinion(self, found: Detail) -> None:
        """Ask who gives the second opinion."""
        case, deeds = found.stored.case, self._deeds
        if found.first:
            text = self.tr("This is a second opinion itself; ask for another on the first case.")
            self.said.emit(text)
            return
        dialog = OpinionDialog(case.by, self._theme, self._over)
        dialog.told.connect(lambda initials: deeds.begin_opinion(case.id, initials))
        dialog.open()

    def label(self, cases: tuple[str, ...]) -> None:
        """Ask what the labels of these cases are printed on."""
        deeds = self._deeds
        self._labelling.ask(lambda _: deeds.labels(cases))

    def archive(self, cases: tuple[str, ...]) -> None:
        """Ask where to write these cases as a Darwin Core Archive."""
        if file := self._file("cases-darwin-core.zip", "Darwin Core Archive (*.zip)"):
            self._deeds.export(cases, file)

    def _file(self, name: str, kind: str) -> Path | None:
        title = self.tr("Where to write")
        start = str(self._deeds.folder.parent / name)
        chosen, _ = QFileDialog.getSaveFileName(self._over, title, start, kind)
        return Path(chosen) if chosen else None

    @Slot(object)
    def _on_labelled(self, labels: tuple[ShopLabel, ...]) -> None:
        kept = LabelChoice.kept(self._deeds.kept(LABEL_SETTING))
        dialog = LabelDialog(labels, kept, theme=self._theme, parent=self._over)
        dialog.told.connect(self._on_label_told)
        dialog.open()

    @Slot(object, object)
    def _on_label_told(self, labels: tuple[ShopLabel, ...], choice: LabelChoice) -> None:
        if file := self._file(f"label-{labels[0].case_id[:8]}.pdf", "PDF (*.pdf)"):
            self._deeds.keep(LABEL_SETTING, json.dumps(choice.to_keep()))
            self._deeds.write_labels(labels, choice, file)
