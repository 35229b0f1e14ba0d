"""Which column of a till's table holds what; asked once for each kind of table."""

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication, Qt, Signal, Slot
from PySide6.QtWidgets import QDialog, QGridLayout, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.columns import filled
from idkey.app.parts.dialog_foot import dialog_foot
from idkey.app.parts.fitting import fit
from idkey.app.parts.scrolling import scrolled
from idkey.app.parts.theme import Theme
from idkey.report.language import Language
from idkey.report.permit_words import field_words
from idkey.store.till_list import FIELDS

translate = QCoreApplication.translate

_PAPERS = "papers_"

ORDER = tuple(sorted(FIELDS, key=lambda field: (field.startswith(_PAPERS), field == "case")))
"""The fields as they are asked for: the sale, the case it may name, the papers."""


def sale_field_words(field: str, language: Language) -> str:
    """What a field of a sale is called."""
    if field.startswith(_PAPERS):
        return field_words(field.removeprefix(_PAPERS), language)
    return {
        "case": translate("till", "Case"),
        "number": translate("till", "Number of the sale"),
        "date": translate("till", "Date"),
        "price": translate("till", "Price"),
        "buyer": translate("till", "Reference to the buyer"),
        "note": translate("till", "Remark"),
    }[field]


class ColumnsDialog(QDialog):
    """Asks for the column of each field, with the first line of the table to go by.

    Args:
        sample: What the first line says, per column.
        mapping: Column per field to start with.
        theme: The look.
        language: Language of the fields.
        parent: Owner.

    Signals:
        told(mapping: object): Take the table in like this.
    """

    told = Signal(object)

    def __init__(
        self,
        sample: Mapping[str, str],
        mapping: Mapping[str, str],
        *,
        theme: Theme,
        language: Language,
        parent: QWidget,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Columns of the table"))
        fit(self, (theme.px(640), theme.px(620)), parent)
        self._sample = sample
        self.fields = {field: Choice(sale_field_words(field, language), theme) for field in ORDER}
        self.shown = {field: caption(rank="soft") for field in ORDER}
        self.go = button(self.tr("Take in"), "main")
        self.go.clicked.connect(self._on_go_clicked)
        for field, choice in self.fields.items():
            none = self.tr("not in the table")
            choice.offer([(none, ""), *((column, column) for column in sample)])
            choice.choose(mapping.get(field, ""))
            choice.currentIndexChanged.connect(self._judge)
        self._lay_out()
        self._judge()

    @property
    def mapping(self) -> dict[str, str]:
        """The column of each field that has one."""
        chosen = {field: str(one.chosen) for field, one in self.fields.items()}
        return {field: column for field, column in chosen.items() if column}

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(6)
        for row, (field, choice) in enumerate(self.fields.items()):
            grid.addWidget(caption(choice.accessibleName()), row, 0)
            grid.addWidget(choice, row, 1)
            grid.addWidget(self.shown[field], row, 2)
        for number, stretch in enumerate((3, 3, 4)):
            grid.setColumnStretch(number, stretch)
        form = QVBoxLayout()
        form.addLayout(grid)
        form.addStretch(1)
        said = self.tr(
            "Say once which column holds what; it is remembered for tables with these columns. "
            "The number of the sale is needed. On the right stands the first line."
        )
        whole = QVBoxLayout(self)
        whole.setContentsMargins(20, 16, 20, 16)
        whole.setSpacing(10)
        whole.addWidget(caption(self.tr("Columns of the table"), "lead"))
        whole.addWidget(caption(said, "soft"))
        whole.addWidget(scrolled(filled(form)), 1)
        whole.addLayout(dialog_foot(self, button(self.tr("Cancel")), self.go))

    @Slot()
    def _judge(self) -> None:
        mapping = self.mapping
        for field, label in self.shown.items():
            label.setText(self._sample.get(mapping.get(field, ""), "") or "")
        self.go.setEnabled("number" in mapping)

    @Slot()
    def _on_go_clicked(self) -> None:
        self.told.emit(self.mapping)
        self.accept()
