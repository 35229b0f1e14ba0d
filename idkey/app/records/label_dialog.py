"""Which stock the corrected shop labels are printed on, with a drawing of what comes out."""

from dataclasses import replace

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from idkey.app.parts.captions import button, caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.dialog_foot import dialog_foot
from idkey.app.parts.fitting import fit
from idkey.app.parts.theme import Theme
from idkey.app.records.label_choice import LabelChoice
from idkey.app.records.label_preview import LabelPreview
from idkey.report.label_stock import STOCKS, Stock
from idkey.report.shop_label import ShopLabel


class LabelDialog(QDialog):
    """Asks for stock and price; shows the label and the page.

    Args:
        labels: The labels, at least one.
        choice: What to start with.
        theme: The look.
        parent: Owner.

    Signals:
        told(labels: object, choice: object): Write these labels on that.
    """

    told = Signal(object, object)

    def __init__(
        self, labels: tuple[ShopLabel, ...], choice: LabelChoice, *, theme: Theme, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Shop label"))
        fit(self, (theme.px(820), theme.px(520)), parent)
        self._labels = labels
        self.stock = Choice(self.tr("Printed on"), theme)
        self.stock.offer([(self._words(one), name) for name, one in STOCKS.items()])
        self.stock.choose(choice.stock)
        self.price = QLineEdit(labels[0].price)
        self.price.setAccessibleName(self.tr("Price, with its currency"))
        self.used = QSpinBox()
        self.used.setAccessibleName(self.tr("Labels of the sheet that are gone already"))
        self.cut = QCheckBox(self.tr("Lines to cut along, for plain paper"))
        self.cut.setChecked(choice.cut)
        self.preview = LabelPreview(theme)
        self.write = button(self.tr("Write as PDF …"), "main")
        self._used_words = caption(self.used.accessibleName())
        self._lay_out()
        self.stock.currentIndexChanged.connect(self._on_changed)
        self.price.textChanged.connect(self._on_changed)
        self.used.valueChanged.connect(self._on_changed)
        self.cut.toggled.connect(self._on_changed)
        self.write.clicked.connect(self._on_write_clicked)
        self._on_changed()

    @property
    def choice(self) -> LabelChoice:
        """What is chosen."""
        name = str(self.stock.chosen)
        return LabelChoice(stock=name, used=self.used.value(), cut=self.cut.isChecked())

    @property
    def labels(self) -> tuple[ShopLabel, ...]:
        """The labels; a price is for one animal."""
        if len(self._labels) > 1:
            return self._labels
        return (replace(self._labels[0], price=self.price.text().strip()),)

    def _words(self, stock: Stock) -> str:
        size = f"{stock.label[0]:g} × {stock.label[1]:g} mm"
        if len(stock.places) == 1:
            return self.tr("Roll, {size}").format(size=size)
        said = self.tr("A4 sheet, {across} × {down} labels, {size}")
        return said.format(across=stock.across, down=stock.down, size=size)

    def _lay_out(self) -> None:
        form = QVBoxLayout()
        form.setSpacing(4)
        parts: list[QWidget] = [caption(self.stock.accessibleName()), self.stock]
        if len(self._labels) == 1:
            parts += [caption(self.price.accessibleName()), self.price]
        else:
            many = self.tr("{n} labels, one for each selected case.")
            parts.append(caption(many.format(n=len(self._labels)), "soft"))
        for part in (*parts, self._used_words, self.used, self.cut):
            form.addWidget(part)
        form.addStretch(1)
        row = QHBoxLayout()
        row.setSpacing(20)
        row.addLayout(form, 2)
        row.addWidget(self.preview, 5)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 16)
        column.setSpacing(12)
        column.addWidget(caption(self.tr("Shop label"), "lead"))
        said = self.tr("It says no more than the verdict does. The drawing is close to the print.")
        column.addWidget(caption(said, "soft"))
        column.addLayout(row, 1)
        column.addLayout(dialog_foot(self, button(self.tr("Cancel")), self.write))

    @Slot()
    def _on_changed(self) -> None:
        choice = self.choice
        stock = STOCKS[choice.stock]
        places = len(stock.places)
        self.used.setMaximum(places - 1)
        for part in (self.used, self._used_words):
            part.setVisible(places > 1)
        self.preview.show_labels(self.labels, stock, used=self.used.value(), cut=choice.cut)

    @Slot()
    def _on_write_clicked(self) -> None:
        self.told.emit(self.labels, self.choice)
        self.accept()
