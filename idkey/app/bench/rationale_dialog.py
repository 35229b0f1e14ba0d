"""Signing: the sale it goes with, who determined, what will be written."""

import json
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QDate, Qt, QUrl, Signal, Slot
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QFormLayout,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from idkey.app.bench.rationale_html import preview_html
from idkey.app.bench.session import Session
from idkey.app.parts.answer import read_texts
from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.filing import Filed, Order, previewed
from idkey.app.parts.fitting import fit
from idkey.app.parts.messages import Message
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.sheet import prose_page
from idkey.report.language import NAMES, language_of
from idkey.store.record import Papers, Sale


class RationaleDialog(QDialog):
    """Asks for the sale and the signature, shows what will be written, has it written.

    Args:
        session: The session; its verdict is the one that is written.
        desk: Look, drawings, language.
        folder: Where the files go unless the person says otherwise.
        papers: Permit fields of the record, to be shown.
        draft: What was typed and not signed last time, as `drafted` told it.
        parent: The window.

    Signals:
        drafted(text: str): A field changed under the fingers; all of them, as text.
        signed(order: object): Write it.
    """

    drafted = Signal(str)
    signed = Signal(object)

    def __init__(
        self,
        session: Session,
        desk: Desk,
        *,
        folder: Path,
        parent: QWidget,
        papers: Papers | None = None,
        draft: str = "",
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._papers = papers
        self._desk = desk
        self.setWindowTitle(self.tr("Rationale"))
        fit(self, (desk.theme.px(900), desk.theme.px(660)), parent)
        self.number = QLineEdit()
        self.date = QLineEdit(QDate.currentDate().toString(Qt.DateFormat.ISODate))
        self.price = QLineEdit(session.case.claim.price)
        self.buyer = QLineEdit()
        self.initials = QLineEdit(session.case.by)
        self.folder = QLineEdit(str(folder))
        self.language = self._languages()
        self.preview = prose_page(self.tr("What will be written"), desk.theme)
        self.said = caption()
        self.write = KeyButton(self.tr("Write PDF and JSON"), "Enter", desk.theme, "main")
        self.write.setDefault(True)
        self.show_pdf = button(self.tr("Open the PDF"))
        self.show_pdf.hide()
        self._filed: Filed | None = None
        self._lay_out()
        self._take_up(draft)
        self._judge()
        self.write.clicked.connect(self._on_write_clicked)
        self.show_pdf.clicked.connect(self._on_show_pdf_clicked)
        self._preview()

    def _languages(self) -> Choice:
        """The languages of the document: that of the case, else that of the window, is chosen."""
        made = Choice(self.tr("Language of the document"), self._desk.theme)
        made.offer((name, code) for code, name in NAMES.items())
        made.choose(language_of(self._session.case, self._desk.language.code))
        made.currentIndexChanged.connect(self._preview)
        return made

    @Slot()
    def _preview(self) -> None:
        self.preview.setHtml(f"<body>{preview_html(previewed(self._order()))}</body>")

    def _typed(self) -> dict[str, QLineEdit]:
        """Fields whose text is kept while nothing is signed, by name."""
        return {
            "number": self.number,
            "date": self.date,
            "price": self.price,
            "buyer": self.buyer,
            "initials": self.initials,
        }

    def _take_up(self, draft: str) -> None:
        typed = read_texts(draft)
        for name, field in self._typed().items():
            if name in typed:
                field.setText(typed[name])
                field.setModified(True)
            field.textEdited.connect(self._on_text_edited)

    @Slot()
    def _on_text_edited(self) -> None:
        # The rest is offered anew: the date, say, is that of the day the dialog opens.
        touched = {name: f.text() for name, f in self._typed().items() if f.isModified()}
        self.drafted.emit(json.dumps(touched))
        self._judge()

    def show_filed(self, filed: Filed) -> None:
        """Say where the files are."""
        self._filed = filed
        text = self.tr("Written and attached to the case: {pdf} and {data}.")
        self.said.setText(text.format(pdf=filed.pdf.name, data=filed.data.name))
        self.show_pdf.show()
        self.write.setEnabled(True)
        self.write.setText(self.tr("Write it again"))

    def show_message(self, message: Message) -> None:
        """Say what went wrong and what to do."""
        self.said.setText(f"{message.problem} {message.remedy}".strip())
        self.write.setEnabled(True)

    def _lay_out(self) -> None:
        fields = QWidget()
        form = QFormLayout(fields)
        form.setContentsMargins(0, 0, 0, 0)
        form.setSpacing(8)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        for name, field in self._fields().items():
            field.setAccessibleName(name)
            form.addRow(name, field)
        browse = button(self.tr("Another folder …"), "quiet")
        browse.clicked.connect(self._on_browse_clicked)
        form.addRow(browse)
        form.addRow(self.language.accessibleName(), self.language)
        side = QVBoxLayout()
        side.setSpacing(12)
        side.addWidget(caption(self.tr("Rationale"), "title"))
        side.addWidget(scrolled(fields, as_wide=True), 1)
        side.addWidget(self.said)
        side.addWidget(self.show_pdf)
        side.addWidget(self.write)
        frame = QFrame()
        frame.setProperty("pane", "card")
        page = QVBoxLayout(frame)
        page.setContentsMargins(16, 12, 8, 12)
        page.addWidget(self.preview)
        row = QHBoxLayout(self)
        row.setContentsMargins(20, 16, 16, 16)
        row.setSpacing(20)
        row.addLayout(side, 2)
        row.addWidget(frame, 3)

    def _fields(self) -> dict[str, QLineEdit]:
        self.number.setPlaceholderText(self.tr("as the till prints it; empty without a sale"))
        self.buyer.setPlaceholderText(self.tr("optional; stays out of the document"))
        return {
            self.tr("Sale number"): self.number,
            self.tr("Date of the sale"): self.date,
            self.tr("Price"): self.price,
            self.tr("Reference to the buyer"): self.buyer,
            self.tr("Determined by (initials)"): self.initials,
            self.tr("Folder"): self.folder,
        }

    def _order(self) -> Order:
        number = self.number.text().strip()
        sale = None
        if number:
            sale = Sale(
                number=number,
                date=self.date.text().strip(),
                price=self.price.text().strip(),
                buyer=self.buyer.text().strip(),
            )
        assessment = self._session.reasoned.assessment
        language = self.language.chosen
        case = replace(assessment.case, by=self.initials.text().strip(), language=language)
        return Order(
            key=self._session.key,
            assessment=replace(assessment, case=case),
            sale=sale,
            folder=Path(self.folder.text().strip()).expanduser(),
            language=language,
            papers=self._papers,
        )

    @Slot()
    def _judge(self) -> None:
        signed = bool(self.initials.text().strip())
        self.write.setEnabled(signed)
        self.said.setText("" if signed else self.tr("Sign with your initials to write it."))

    @Slot()
    def _on_write_clicked(self) -> None:
        self.write.setEnabled(False)
        self.said.setText(self.tr("Writing …"))
        self.signed.emit(self._order())

    @Slot()
    def _on_show_pdf_clicked(self) -> None:
        if self._filed is not None:
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._filed.pdf)))

    @Slot()
    def _on_browse_clicked(self) -> None:
        chosen = QFileDialog.getExistingDirectory(self, self.tr("Folder"), self.folder.text())
        if chosen:
            self.folder.setText(chosen)
