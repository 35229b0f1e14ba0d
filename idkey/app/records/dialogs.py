"""Small dialogs of the records: attach a sale, erase a buyer, ask for a second opinion."""

from PySide6.QtCore import QDate, Qt, Signal, Slot
from PySide6.QtWidgets import QDialog, QFormLayout, QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.captions import button, caption
from idkey.app.parts.dialog_foot import dialog_foot
from idkey.app.parts.theme import Theme
from idkey.store.record import Sale


class _Asking(QDialog):
    """A title, a word of explanation, fields, and two buttons."""

    def __init__(self, title: str, said: str, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        self.setMinimumWidth(theme.px(440))
        self._last: QLineEdit | None = None
        self.form = QFormLayout()
        self.form.setSpacing(6)
        self.form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        self.go = button(title, "main")
        self.go.setEnabled(False)
        self.go.clicked.connect(self._on_go_clicked)
        self.leave = button(self.tr("Cancel"))
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(12)
        column.addWidget(caption(title, "lead"))
        column.addWidget(caption(said, "soft"))
        column.addLayout(self.form)
        column.addStretch(1)
        column.addLayout(dialog_foot(self, self.leave, self.go))

    def field(self, name: str, text: str = "") -> QLineEdit:
        """A new field under the ones there are."""
        field = QLineEdit(text)
        field.setAccessibleName(name)
        self.form.addRow(name, field)
        if self._last is not None:
            self.setTabOrder(self._last, field)
        else:  # what is last in the order cannot go before, so the button comes round it
            self.setTabOrder(self.leave, field)
            self.setTabOrder(field, self.leave)
        self._last = field
        return field

    def _done(self) -> None:
        """Tell what was asked for."""

    @Slot()
    def _on_go_clicked(self) -> None:
        self._done()
        self.accept()


class SaleDialog(_Asking):
    """Asks for a sale.

    Args:
        price: Price to start with.
        theme: The look.
        parent: Owner.

    Signals:
        told(sale: object): Attach it.
    """

    told = Signal(object)

    def __init__(self, price: str, theme: Theme, parent: QWidget) -> None:
        said = self.tr("The same number again corrects the sale that was noted before.")
        super().__init__(self.tr("Attach a sale"), said, theme, parent)
        today = QDate.currentDate().toString(Qt.DateFormat.ISODate)
        self.number = self.field(self.tr("Number of the sale in the till"))
        self.date = self.field(self.tr("Date, such as 2026-03-12"), today)
        self.price = self.field(self.tr("Price, with its currency"), price)
        self.buyer = self.field(self.tr("Reference to the buyer (optional, can be erased)"))
        self.note = self.field(self.tr("Remark (cannot be erased: name nobody here)"))
        self.number.textChanged.connect(self._on_number_changed)
        self.number.setFocus(Qt.FocusReason.OtherFocusReason)

    def _done(self) -> None:
        self.told.emit(
            Sale(
                number=self.number.text().strip(),
                date=self.date.text().strip(),
                price=self.price.text().strip(),
                buyer=self.buyer.text().strip(),
                note=self.note.text().strip(),
            )
        )

    @Slot(str)
    def _on_number_changed(self, text: str) -> None:
        self.go.setEnabled(bool(text.strip()))


class EraseDialog(_Asking):
    """Asks whose reference is to be erased.

    Args:
        buyer: Reference to start with.
        theme: The look.
        parent: Owner.

    Signals:
        told(buyer: str): Erase it everywhere.
    """

    told = Signal(str)

    def __init__(self, buyer: str, theme: Theme, parent: QWidget) -> None:
        said = self.tr(
            "Takes the reference out of every sale, draft and backup of this book, for good. "
            "The records stay verifiable. Write it exactly as it was noted."
        )
        super().__init__(self.tr("Erase a buyer"), said, theme, parent)
        self.buyer = self.field(self.tr("Reference to the buyer"))
        self.buyer.textChanged.connect(self._on_buyer_changed)
        self.buyer.setText(buyer)
        self.buyer.setFocus(Qt.FocusReason.OtherFocusReason)

    def _done(self) -> None:
        self.told.emit(self.buyer.text())

    @Slot(str)
    def _on_buyer_changed(self, text: str) -> None:
        self.go.setEnabled(bool(text.strip()))


class OpinionDialog(_Asking):
    """Asks who determines the animal a second time, blind.

    Args:
        first: Who determined it first, as initials or alias.
        theme: The look.
        parent: Owner.

    Signals:
        told(initials: str): Begin it for this person.
    """

    told = Signal(str)

    def __init__(self, first: str, theme: Theme, parent: QWidget) -> None:
        said = self.tr(
            "Somebody else looks at the same animal afresh. They see what the label says and "
            "nothing that was found before; the first case is put away from the bench. When they "
            "have come to a verdict, this record shows how far the two agree."
        )
        super().__init__(self.tr("Begin a second opinion"), said, theme, parent)
        self._first = first.strip().casefold()
        self.initials = self.field(self.tr("Initials of the second keeper"))
        self.same = caption(tone="doubt")
        self.same.setMinimumHeight(theme.px(44))
        self.form.addRow(self.same)
        self.initials.textChanged.connect(self._on_initials_changed)
        self.initials.setFocus(Qt.FocusReason.OtherFocusReason)

    def _done(self) -> None:
        self.told.emit(self.initials.text().strip())

    @Slot(str)
    def _on_initials_changed(self, text: str) -> None:
        self.go.setEnabled(bool(text.strip()))
        same = bool(text.strip()) and text.strip().casefold() == self._first
        said = self.tr("The first determination is signed the same: it would not be a second one.")
        self.same.setText(said if same else "")
