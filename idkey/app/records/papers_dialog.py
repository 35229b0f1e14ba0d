"""The permit fields of an animal: what is noted, what is missing, and whom to ask."""

from dataclasses import fields, replace
from html import escape

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from idkey.app.parts.captions import button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.columns import filled
from idkey.app.parts.dialog_foot import dialog_foot
from idkey.app.parts.fitting import fit
from idkey.app.parts.prose import bullets, paragraph, toned
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.sheet import prose_page
from idkey.app.parts.theme import Theme
from idkey.app.records.work import Detail
from idkey.model.taxon import Permit
from idkey.report.language import Language
from idkey.report.permit_words import (
    CODES,
    check_locally,
    code_words,
    codes_dated,
    field_words,
    gap_words,
)
from idkey.report.terms import permit_words
from idkey.store.intake import Intake
from idkey.store.permits import gaps
from idkey.store.record import Papers

NAMES = tuple(one.name for one in fields(Papers))
"""The permit fields, in the order of the form."""


class PapersDialog(QDialog):
    """Asks for the permit fields of an animal, and says as one types what is still missing.

    Args:
        found: The case.
        theme: The look.
        language: Language of the fields and codes.
        parent: Owner.

    Signals:
        told(intake: object): Note this intake, with the permit fields in it.
    """

    told = Signal(object)

    def __init__(self, found: Detail, theme: Theme, *, language: Language, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Permit fields"))
        fit(self, (theme.px(860), theme.px(640)), parent)
        self._permit: Permit = found.permit
        self._language = language
        self._intake = found.intake or _new_intake(found)
        papers = found.papers or Papers()
        self.number = QLineEdit(self._intake.number)
        self.fields = {name: self._field(name, getattr(papers, name), theme) for name in NAMES}
        self.missing = prose_page(self.tr("What is missing"), theme)
        self.save = button(self.tr("Note them"), "main")
        self._lay_out(found)
        self.number.textChanged.connect(self._judge)
        for field in self.fields.values():
            changed = field.currentIndexChanged if isinstance(field, Choice) else field.textChanged
            changed.connect(self._judge)
        self.save.clicked.connect(self._on_save_clicked)
        self._judge()

    @property
    def papers(self) -> Papers:
        """The fields as they stand."""
        return Papers(**{name: _text(field) for name, field in self.fields.items()})

    def _field(self, name: str, value: str, theme: Theme) -> QLineEdit | Choice:
        words = field_words(name, self._language)
        if name not in CODES:
            field = QLineEdit(value)
            field.setAccessibleName(words)
            return field
        choice = Choice(words, theme)
        letters = [code.code for code in CODES[name]]
        odd = [value] if value and value.strip().upper() not in letters else []
        offered = [(code_words(name, one, self._language), one) for one in (*letters, *odd)]
        choice.offer([(self.tr("not told"), ""), *offered])
        choice.choose(value if odd else value.strip().upper())
        choice.setMinimumContentsLength(18)
        choice.setSizeAdjustPolicy(Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        return choice

    def _form(self) -> QWidget:
        """The fields, two in a row; codes take a whole one."""
        grid = QGridLayout()
        grid.setVerticalSpacing(4)
        grid.setHorizontalSpacing(12)
        self.number.setAccessibleName(self.tr("Number in the stock book, or of the shipment"))
        row = column = 0
        for field in (self.number, *self.fields.values()):
            wide = isinstance(field, Choice)
            if wide and column:
                row, column = row + 2, 0
            grid.addWidget(caption(field.accessibleName()), row, column, 1, 2 if wide else 1)
            grid.addWidget(field, row + 1, column, 1, 2 if wide else 1)
            column += 2 if wide else 1
            if column > 1:
                row, column = row + 2, 0
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        form = QVBoxLayout()
        form.addLayout(grid)
        form.addStretch(1)
        return scrolled(filled(form))

    def _lay_out(self, found: Detail) -> None:
        side = QVBoxLayout()
        side.addWidget(caption(self.tr("Missing or odd"), "strong"))
        side.addWidget(self.missing, 1)
        middle = QHBoxLayout()
        middle.setSpacing(16)
        middle.addWidget(self._form(), 3)
        middle.addLayout(side, 2)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(20, 16, 20, 16)
        whole.setSpacing(10)
        whole.addWidget(caption(self.tr("Permit fields"), "lead"))
        whole.addWidget(self._said(found))
        whole.addLayout(middle, 1)
        whole.addLayout(dialog_foot(self, button(self.tr("Cancel")), self.save))
        self.fields["name"].setFocus(Qt.FocusReason.OtherFocusReason)

    def _said(self, found: Detail) -> QWidget:
        if not found.permit.listed:
            text = self.tr("By this key no listed taxon is possible any more. Papers may be noted.")
            return caption(text, "soft")
        text = self.tr("May stand on a list: {taxa} ({lists}).").format(
            taxa=found.listed, lists=permit_words(found.permit, self._language)
        )
        return caption(text, tone="permit")

    @Slot()
    def _judge(self) -> None:
        lines = [gap_words(gap, self._language) for gap in gaps(self.papers, self._permit)]
        if not self.number.text().strip():
            lines.insert(0, self.tr("The number in the stock book is missing; write one to save."))
        nothing = self.tr("Nothing. That does not say that the papers are enough.")
        html = bullets(map(escape, lines)) or paragraph(escape(nothing))
        html += paragraph(toned("permit", escape(check_locally(self._language))))
        html += paragraph(escape(codes_dated(self._language)), "soft")
        self.missing.setHtml(f"<body>{html}</body>")
        self.save.setEnabled(bool(self.number.text().strip()))

    @Slot()
    def _on_save_clicked(self) -> None:
        intake = replace(self._intake, number=self.number.text().strip(), papers=self.papers)
        self.told.emit(intake)
        self.accept()


def _new_intake(found: Detail) -> Intake:
    """An intake for an animal that has none yet, with what its label tells."""
    claim = found.stored.case.claim
    return Intake(
        number=found.stored.case.id[:8],
        date=claim.date,
        supplier=claim.supplier,
        label=claim.text,
        price=claim.price,
    )


def _text(field: QLineEdit | Choice) -> str:
    if isinstance(field, Choice):
        return str(field.chosen)
    return field.text().strip()
