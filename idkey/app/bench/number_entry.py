"""A number with its unit, its uncertainty and where the candidates lie."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from idkey.app.bench.number_box import NumberBox
from idkey.app.bench.range_strip import ROWS, Band, RangeStrip
from idkey.app.parts.answer import Answer, read_number
from idkey.app.parts.captions import button, caption
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.theme import Theme
from idkey.model.character import Character, Kind

FAR = 2.0
"""How many times beyond the outermost candidate a number must lie to be pointed at."""


class NumberEntry(QWidget):
    """The number field of the question card.

    Args:
        theme: The look.

    Signals:
        edited(): The person typed.
        measure_asked(): The person wants to measure on a photograph.
    """

    edited = Signal()
    measure_asked = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.number = NumberBox()
        self.number.setMaximumWidth(theme.px(140))
        self.spread = NumberBox()
        self.spread.setMaximumWidth(theme.px(90))
        self._fields = (self.number, self.spread)
        self._unit = caption(rank="lead", wraps=False)
        self._unit_again = caption(rank="soft", wraps=False)
        self._plus = caption("±", "soft", wraps=False)
        self._wrong = caption(tone="doubt")
        self._wrong.hide()
        self._measure = button(self.tr("Measure on a photo"))
        self.strip = RangeStrip(theme)
        self._every = button(role="link")
        self._every.hide()
        row = FlowRow(gap=8)
        parts = (self.number, self._unit, self._plus, self.spread, self._unit_again)
        for part in (*parts, self._measure):
            row.add(part)
        self._picture = QLabel()
        self._picture.setProperty("pane", "plate")
        self._picture.hide()
        column = QVBoxLayout()
        column.setSpacing(8)
        column.addWidget(row)
        column.addWidget(self._wrong)
        column.addWidget(self.strip)
        column.addWidget(self._every, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(16)
        whole.addWidget(self._picture, 0, Qt.AlignmentFlag.AlignTop)
        whole.addLayout(column, 1)
        self.number.textEdited.connect(self._on_text_edited)
        self.spread.textEdited.connect(self._on_text_edited)
        self._every.clicked.connect(self._on_every_clicked)
        self._measure.clicked.connect(self._on_measure_clicked)
        self._measure.hide()

    @property
    def complaint(self) -> str:
        """What is wrong with what is typed; empty when nothing is."""
        return self._wrong.text()

    def offer_measuring(self, offered: bool) -> None:
        """Whether a photograph can be measured here."""
        self._measure.setVisible(offered)

    def show_measure(self, picture: QPixmap | None) -> None:
        """Show how the number is taken; None where there is no drawing of it."""
        self._picture.setVisible(picture is not None)
        if picture is not None:
            self._picture.setPixmap(picture)

    def show_character(self, character: Character, shown: tuple[Band, ...]) -> None:
        """Ask for another number."""
        count = character.kind is Kind.COUNT
        self._unit.setText(self.tr("counted") if count else character.unit)
        self._unit_again.setText(character.unit)
        for part in (self._plus, self.spread, self._unit_again):
            part.setVisible(not count)
        self.number.setAccessibleName(character.question)
        self.number.setAccessibleDescription(character.unit)
        self.spread.setAccessibleName(self.tr("Standard uncertainty"))
        usual = character.uncertainty
        self.spread.setPlaceholderText(f"{usual:g}" if usual is not None else "")
        self.spread.setToolTip(
            self.tr("Standard uncertainty; empty takes the usual one of this character")
        )
        self.show_bands(shown, character.unit)

    def show_bands(self, shown: tuple[Band, ...], unit: str) -> None:
        """Show where other candidates lie."""
        self.strip.show_bands(shown, unit)
        self._every.setVisible(len(shown) > ROWS)
        all_words = self.tr("Show all %n candidates", "", len(shown))
        self._every.setText(self.tr("Show fewer") if self.strip.whole else all_words)

    def show_answer(self, answer: Answer) -> None:
        """Show what stands on the card, without telling anybody."""
        for field, text in zip(self._fields, (answer.number, answer.spread), strict=True):
            if field.text() != text:
                field.setText(text)
        self._judge()

    def _judge(self) -> None:
        value = read_number(self.number.text())
        self.strip.show_value(value)
        self._wrong.setText(self._what_is_wrong(value))
        self._wrong.setVisible(bool(self.complaint))

    def _what_is_wrong(self, value: float | None) -> str:
        """What cannot be read, or what is far from all there is: the usual slip is the unit."""
        unread = (f.text().strip() and read_number(f.text()) is None for f in self._fields)
        if any(unread):
            return self.tr("Write a number of 0 or more, such as 12.5.")
        reach = self.strip.reach
        if value is None or reach is None or reach[0] / FAR <= value <= reach[1] * FAR:
            return ""
        known = f"{reach[0]:g} – {reach[1]:g} {self.strip.unit}".strip()
        return self.tr("Far from what is known of the candidates: {known}").format(known=known)

    @Slot()
    def _on_text_edited(self) -> None:
        self._judge()
        self.edited.emit()

    @Slot()
    def _on_every_clicked(self) -> None:
        self.strip.whole = not self.strip.whole
        self.show_bands(self.strip.every, self.strip.unit)

    @Slot()
    def _on_measure_clicked(self) -> None:
        self.measure_asked.emit()

    def focus(self) -> None:
        """Put the cursor into the number."""
        self.number.setFocus(Qt.FocusReason.OtherFocusReason)
        self.number.selectAll()
