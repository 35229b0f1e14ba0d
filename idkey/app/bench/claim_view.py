"""The claim, drawn as the shop tag it came on."""

import json
from dataclasses import replace

from PySide6.QtCore import QEvent, QObject, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QGridLayout, QLineEdit

from idkey.app.bench.offers import Offers
from idkey.app.parts.answer import read_texts
from idkey.app.parts.tag import Tag
from idkey.app.parts.theme import Theme
from idkey.app.parts.tips import tip
from idkey.model.case import Claim

FIELDS = ("supplier", "date", "sex", "size")
"""Small fields of the tag, under the names of `Claim`."""


class ClaimView(Tag):
    """The label, verbatim, with supplier, date, claimed sex and size.

    Args:
        theme: The look.

    Signals:
        typed(text: str): The label changed under the fingers.
        drafted(text: str): A small field changed under the fingers; all of them, as text.
        claimed(claim: object): The label, or another field, was confirmed.
        filled(): Enter was pressed in a small field: the tag is written.
    """

    typed = Signal(str)
    drafted = Signal(str)
    claimed = Signal(object)
    filled = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme)
        self._claim = Claim()
        self._offers: Offers | None = None
        self._small = {name: QLineEdit() for name in FIELDS}
        self._lay_out()
        self._name_fields()
        self.label.textEdited.connect(self._on_label_text_edited)
        self.label.returnPressed.connect(self._on_label_return_pressed)
        self.label.editingFinished.connect(self._on_label_editing_finished)
        self.label.installEventFilter(self)
        for field in (self.label, *self._small.values()):
            field.editingFinished.connect(self._on_editing_finished)

    def show_claim(self, claim: Claim, draft: str = "", small: str = "") -> None:
        """Show a claim.

        Args:
            claim: The claim.
            draft: Text that was typed and not confirmed; empty when there is none.
            small: The same of the small fields, as `drafted` told it.
        """
        if claim != self._claim or draft or small:
            self._claim = claim
            if not (self.label.hasFocus() and self.label.text() and not claim.text):
                _put(self.label, draft or claim.text)
            self.label.setToolTip(tip(claim.text))
            typed = read_texts(small)
            for name, field in self._small.items():
                _put(field, typed.get(name, getattr(claim, name)))
                field.setToolTip(
                    tip(f"{field.accessibleName()}: {field.text()}".removesuffix(": "))
                )

    def use_offers(self, offers: Offers) -> None:
        """Let `offers` hang from the label."""
        self._offers = offers
        offers.chosen.connect(self._on_offers_chosen)

    def offer(self, texts: tuple[str, ...]) -> None:
        """Offer spellings of label entries that are near what is typed."""
        if self._offers is not None:
            self._offers.show_texts(texts)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Steer the offers from the label with the arrow keys; Esc puts them away."""
        offers = self._offers
        if offers is None or offers.isHidden() or not isinstance(event, QKeyEvent):
            return super().eventFilter(watched, event)
        if event.type() is not QEvent.Type.KeyPress:
            return super().eventFilter(watched, event)
        steps: dict[int, int] = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}
        if event.key() in steps:
            offers.step(steps[event.key()])
            return True
        if event.key() == Qt.Key.Key_Escape:
            offers.hide()
            return True
        return super().eventFilter(watched, event)

    @Slot()
    def confirm(self) -> None:
        """Take the label as it stands."""
        small = {name: field.text().strip() for name, field in self._small.items()}
        claim = replace(self._claim, text=self.label.text().strip(), **small)
        if claim != self._claim:
            self._claim = claim
            self.claimed.emit(claim)

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setSpacing(self._theme.px(2))
        places = ((0, 0, 1, 2), (0, 2, 1, 1), (1, 0, 1, 1), (1, 1, 1, 2))
        for field, place in zip(self._small.values(), places, strict=True):
            field.setProperty("role", "tagsmall")
            grid.addWidget(field, *place)
        self.column.addLayout(grid)
        self.column.addStretch(1)

    def _name_fields(self) -> None:
        names = {
            "supplier": self.tr("Supplier"),
            "date": self.tr("Arrived on"),
            "sex": self.tr("Claimed sex"),
            "size": self.tr("Claimed size"),
        }
        for name, field in self._small.items():
            field.setPlaceholderText(names[name])
            field.setAccessibleName(names[name])
            field.setToolTip(names[name])
            field.editingFinished.connect(self.confirm)
            field.returnPressed.connect(self._on_small_return_pressed)
            field.textEdited.connect(self._on_small_text_edited)

    @Slot(str)
    def _on_label_text_edited(self, text: str) -> None:
        self.typed.emit(text)
        if self._offers is not None:
            self._offers.hang(self.label)

    @Slot()
    def _on_editing_finished(self) -> None:
        """A text longer than its field is read from its beginning."""
        field = self.sender()
        if isinstance(field, QLineEdit):
            field.setCursorPosition(0)
        self.label.setToolTip(tip(self.label.text()))

    @Slot()
    def _on_small_text_edited(self) -> None:
        self.drafted.emit(json.dumps({name: f.text() for name, f in self._small.items()}))

    @Slot()
    def _on_small_return_pressed(self) -> None:
        self.confirm()
        if self._claim.text:
            self.filled.emit()

    @Slot()
    def _on_label_return_pressed(self) -> None:
        if self._offers is not None and self._offers.current:
            self.label.setText(self._offers.current)
        self.confirm()

    @Slot()
    def _on_label_editing_finished(self) -> None:
        if self._offers is not None:
            self._offers.hide()
        self.confirm()

    @Slot(str)
    def _on_offers_chosen(self, text: str) -> None:
        self.label.setText(text)
        self.confirm()


def _put(field: QLineEdit, text: str) -> None:
    """Set the text without moving a cursor that is in use."""
    if field.text() != text:
        field.setText(text)
        field.setCursorPosition(0)
