"""The claim, drawn as the shop tag it came on."""

from dataclasses import replace

from PySide6.QtCore import QEvent, QObject, QPointF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QGridLayout, QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from idkey.app.offers import Offers
from idkey.app.theme import Theme
from idkey.model.case import Claim

FIELDS = ("supplier", "date", "sex", "size")
"""Small fields of the tag, under the names of `Claim`."""


class ClaimView(QWidget):
    """The label, verbatim, with supplier, date, claimed sex and size.

    Args:
        theme: The look.

    Signals:
        typed(text: str): The label changed under the fingers.
        claimed(claim: object): The label, or another field, was confirmed.
    """

    typed = Signal(str)
    claimed = Signal(object)

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._claim = Claim()
        self.setAccessibleName(self.tr("The label"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Minimum)
        self.label = QLineEdit()
        self.label.setProperty("role", "tag")
        self.label.setAccessibleName(self.tr("What the label says"))
        self.label.setPlaceholderText(self.tr("What does the label say?"))
        self._offers: Offers | None = None
        self._small = {name: QLineEdit() for name in FIELDS}
        self._lay_out()
        self._name_fields()
        self.label.textEdited.connect(self._on_label_text_edited)
        self.label.returnPressed.connect(self._on_label_return_pressed)
        self.label.editingFinished.connect(self._on_label_editing_finished)
        self.label.installEventFilter(self)

    def show_claim(self, claim: Claim, draft: str = "") -> None:
        """Show a claim.

        Args:
            claim: The claim.
            draft: Text that was typed and not confirmed; empty when there is none.
        """
        if claim != self._claim or draft:
            self._claim = claim
            if not (self.label.hasFocus() and self.label.text() and not claim.text):
                _put(self.label, draft or claim.text)
            for name, field in self._small.items():
                _put(field, getattr(claim, name))
                field.setToolTip(f"{field.accessibleName()}: {field.text()}".removesuffix(": "))

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

    def focus_label(self) -> None:
        """Put the cursor into the label."""
        self.label.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.label.selectAll()

    @Slot()
    def confirm(self) -> None:
        """Take the label as it stands."""
        small = {name: field.text().strip() for name, field in self._small.items()}
        claim = replace(self._claim, text=self.label.text().strip(), **small)
        if claim != self._claim:
            self._claim = claim
            self.claimed.emit(claim)

    def sizeHint(self) -> QSize:
        """A tag that leaves room for the verdict."""
        return QSize(self._theme.px(336), super().sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the tag: cut corners, a hole, a thread."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self.isRightToLeft():
            painter.translate(self.width(), 0)
            painter.scale(-1, 1)
        px, colour = self._theme.px, self._theme.colour
        hole = QPointF(px(22), self.height() / 2)
        painter.setPen(QPen(colour("paper_soft"), 1))
        painter.setBrush(colour("paper"))
        painter.drawPath(_tag(self.width(), self.height(), px(26)))
        painter.setBrush(colour("ground"))
        painter.drawEllipse(hole, px(5), px(5))
        thread = QPainterPath(QPointF(0, hole.y() - px(26)))
        thread.cubicTo(px(4), hole.y() - px(8), px(10), hole.y() - px(12), hole.x(), hole.y())
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(colour("paper_soft"), 1.5))
        painter.drawPath(thread)
        painter.end()

    def _lay_out(self) -> None:
        px = self._theme.px
        column = QVBoxLayout(self)
        column.setContentsMargins(px(40), px(12), px(16), px(12))
        column.setSpacing(px(4))
        column.addWidget(self.label)
        grid = QGridLayout()
        grid.setSpacing(px(2))
        places = ((0, 0, 1, 2), (0, 2, 1, 1), (1, 0, 1, 1), (1, 1, 1, 2))
        for field, place in zip(self._small.values(), places, strict=True):
            field.setProperty("role", "tagsmall")
            grid.addWidget(field, *place)
        column.addLayout(grid)
        column.addStretch(1)

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

    @Slot(str)
    def _on_label_text_edited(self, text: str) -> None:
        self.typed.emit(text)
        if self._offers is not None:
            self._offers.hang(self.label)

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


def _tag(width: float, height: float, cut: float) -> QPainterPath:
    """The outline of a tag: the end with the hole has its corners cut."""
    right, bottom, round_ = width - 1.0, height - 1.0, 8.0
    path = QPainterPath(QPointF(cut, 1))
    path.lineTo(right - round_, 1)
    path.quadTo(right, 1, right, 1 + round_)
    path.lineTo(right, bottom - round_)
    path.quadTo(right, bottom, right - round_, bottom)
    path.lineTo(cut, bottom)
    path.quadTo(cut - 4, bottom, cut - 7, bottom - 4)
    path.lineTo(6, height * 0.66)
    path.quadTo(3, height * 0.62, 3, height * 0.58)
    path.lineTo(3, height * 0.42)
    path.quadTo(3, height * 0.38, 6, height * 0.34)
    path.lineTo(cut - 7, 5)
    path.quadTo(cut - 4, 1, cut, 1)
    path.closeSubpath()
    return path


def _put(field: QLineEdit, text: str) -> None:
    """Set the text without moving a cursor that is in use."""
    if field.text() != text:
        field.setText(text)
        field.setCursorPosition(0)
