"""Under the tiles: how sure, how it was looked at, and the other answers there are."""

from dataclasses import replace

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.answer import Answer
from idkey.app.parts.captions import KeyButton
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.segments import Segments
from idkey.app.parts.words import upper_first
from idkey.model.case import Certainty
from idkey.model.character import Character
from idkey.report.words import certainty_words, look_words


class AnswerBar(QWidget):
    """Certainty, means and note of an answer; "several", "none", "cannot see"; "note it".

    Args:
        desk: Look, drawings, language.

    Signals:
        changed(answer: object): Another answer stands on the card.
        confirmed(): Note it.
        denied(): None of these.
        unseen(): Cannot see it.
    """

    changed = Signal(object)
    confirmed = Signal()
    denied = Signal()
    unseen = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._answer = Answer()
        theme = desk.theme
        self._certainty = Segments(self.tr("How sure"), Certainty, self._sureness)
        self._looks = Choice(self.tr("How it was looked at"), theme)
        self._note_it = KeyButton(self.tr("Note it"), "Enter", theme, "main")
        self._several = KeyButton(self.tr("Several apply"), "S", theme, "quiet")
        self._several.setCheckable(True)
        self._several.setToolTip(self.tr("Mark more than one: it is one of these."))
        self._none = KeyButton(self.tr("None of these"), "N", theme, "quiet")
        self._unseen = KeyButton(self.tr("Cannot see it"), "X", theme, "quiet")
        self._remark = KeyButton(self.tr("Remark"), "R", theme, "quiet")
        self._remark.setCheckable(True)
        self.note = QLineEdit()
        self.note.setPlaceholderText(self.tr("A remark for the record"))
        self.note.setAccessibleName(self.tr("Remark"))
        self._lay_out()
        self._connect()

    def show_character(self, character: Character) -> None:
        """Offer what this character allows."""
        language = self._desk.language
        self._looks.offer((upper_first(look_words(k, language)), k) for k in character.looks)
        self._several.setVisible(len(character.states) > 2)
        self._none.setVisible(bool(character.states))

    def show_answer(self, answer: Answer, *, ready: bool) -> None:
        """Show an answer without telling anybody; `ready` when it says something."""
        self._answer = answer
        self._several.setChecked(answer.several)
        self._certainty.set_value(answer.certainty)
        self._looks.choose(answer.look)
        self._note_it.setEnabled(ready)
        marked = bool(answer.marked)
        self._none.setText(self.tr("Not what I marked") if marked else self.tr("None of these"))
        if self.note.text() != answer.note:
            self.note.setText(answer.note)
        if answer.note or not self.note.hasFocus():
            self._remark.setChecked(bool(answer.note))
        self.note.setVisible(self._remark.isChecked())

    def toggle_several(self) -> None:
        """Allow more than one mark, or one alone."""
        if self._several.isVisible():
            self._several.click()

    def deny(self) -> None:
        """None of these."""
        if self._none.isVisible():
            self._none.click()

    def write_note(self) -> None:
        """Go to the remark."""
        self._remark.setChecked(True)
        self.note.show()
        self.note.setFocus()

    def _sureness(self, certainty: Certainty) -> str:
        return upper_first(certainty_words(certainty, self._desk.language))

    def _lay_out(self) -> None:
        sure = FlowRow(gap=8, last_ends=True)
        for part in (self._certainty, self._looks, self._note_it):
            sure.add(part)
        other = FlowRow(gap=8)
        for part in (self._several, self._none, self._unseen, self._remark):
            other.add(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(sure)
        column.addWidget(other)
        column.addWidget(self.note)
        self.note.hide()

    def _connect(self) -> None:
        self._certainty.chosen.connect(self._on_certainty_chosen)
        self._looks.activated.connect(self._on_looks_activated)
        self._several.clicked.connect(self._on_several_clicked)
        self._remark.clicked.connect(self._on_remark_clicked)
        self.note.textEdited.connect(self._on_note_text_edited)
        self._note_it.clicked.connect(self._on_note_it_clicked)
        self._none.clicked.connect(self._on_none_clicked)
        self._unseen.clicked.connect(self._on_unseen_clicked)

    @Slot(object)
    def _on_certainty_chosen(self, value: Certainty) -> None:
        self.changed.emit(replace(self._answer, certainty=value))

    @Slot(int)
    def _on_looks_activated(self, row: int) -> None:
        self.changed.emit(replace(self._answer, look=self._looks.value(row)))

    @Slot()
    def _on_several_clicked(self) -> None:
        self.changed.emit(self._answer.severally(self._several.isChecked()))

    @Slot()
    def _on_remark_clicked(self) -> None:
        if self._remark.isChecked():
            self.write_note()
        else:
            self.note.hide()

    @Slot(str)
    def _on_note_text_edited(self, text: str) -> None:
        self.changed.emit(replace(self._answer, note=text))

    @Slot()
    def _on_note_it_clicked(self) -> None:
        self.confirmed.emit()

    @Slot()
    def _on_none_clicked(self) -> None:
        self.denied.emit()

    @Slot()
    def _on_unseen_clicked(self) -> None:
        self.unseen.emit()
