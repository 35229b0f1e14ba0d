"""The number, how exact it is and why, and the button that takes it."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFrame, QVBoxLayout

from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.photo.session import PhotoSession
from idkey.app.photo.words import budget_words, number_words
from idkey.model.character import Character, Kind


class ResultCard(QFrame):
    """Shows what the marks come to.

    Args:
        character: What is measured or counted.
        desk: Look, drawings, language.

    Signals:
        taken(): The person takes the number.
    """

    taken = Signal()

    def __init__(self, character: Character, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self._character = character
        self._desk = desk
        self.number = caption(rank="lead")
        self._interval = caption(rank="soft")
        self._causes = caption(rank="small")
        self._restless = caption(tone="doubt")
        self._usual = caption(self._usual_words(), "small")
        self._usual.setVisible(bool(self._usual.text()))
        self.take = KeyButton(self.tr("Use this number"), "Ctrl+Return", desk.theme, "main")
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 10, 14, 12)
        column.setSpacing(4)
        for part in (self.number, self._interval, self._causes, self._restless, self._usual):
            column.addWidget(part)
        column.addSpacing(4)
        column.addWidget(self.take)
        self.take.clicked.connect(self._on_take_clicked)

    def show_session(self, session: PhotoSession) -> None:
        """Show the number of a session, or what is still missing."""
        found = session.found
        self.take.setEnabled(found is not None)
        number, interval = self._missing(session), ""
        if found is not None:
            decimal = self._desk.language.decimal
            number, interval = number_words(found, self._character, decimal)
        self.number.setText(number)
        shown = {self._interval: interval, self._causes: "", self._restless: ""}
        if found is not None and len(found.budget) > 1:
            causes = budget_words(found)
            shown[self._causes] = self.tr("Uncertain because of: {causes}.").format(causes=causes)
        if found is not None and found.restless:
            shown[self._restless] = self.tr(
                "The repeats differ more than such end points should; check each line."
            )
        for label, text in shown.items():
            label.setText(text)
            label.setVisible(bool(text))

    def _missing(self, session: PhotoSession) -> str:
        if session.loaded is None:
            return self.tr("No picture yet")
        if self._character.kind is Kind.COUNT:
            return self.tr("Nothing counted yet")
        marks = session.sketch.marks
        if self._character.kind is Kind.MEASUREMENT and marks.others and marks.ruler <= 0:
            return self.tr("How long is the ruler line?")
        return self.tr("Both lines are needed")

    def _usual_words(self) -> str:
        usual, kind = self._character.uncertainty, self._character.kind
        if usual is None or kind is Kind.COUNT:
            return ""
        unit = (
            self._character.unit if kind is Kind.MEASUREMENT or self._character.unit == "%" else ""
        )
        number = self._desk.language.number(usual)
        return self.tr(
            "The key never reckons with less than ± {number} here: people differ about end points."
        ).format(number=f"{number} {unit}".strip())

    @Slot()
    def _on_take_clicked(self) -> None:
        self.taken.emit()
