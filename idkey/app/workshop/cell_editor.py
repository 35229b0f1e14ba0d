"""One cell of the matrix, whole: what is shown, by whom, and who says so."""

from dataclasses import replace
from enum import StrEnum

from PySide6.QtCore import QEvent, Qt, Signal, Slot
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout

from idkey.app.parts.captions import KeyButton, button, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.segments import Segments
from idkey.app.workshop.cell_grounds import CellGrounds
from idkey.app.workshop.cell_values import NumberFields, StateTicks
from idkey.app.workshop.matrix_edit import Cell, sorted_cell
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Inapplicable, Score, Shows, Spans, Value
from idkey.report.terms import sex_words, stage_words

WIDTH = 316
"""Width in pixels at 100 %."""


class Known(StrEnum):
    """What is known of a cell."""

    YES = "yes"
    LACKING = "lacking"
    NO = "no"


_PLACES = tuple((sex, stage) for sex in (None, *Sex) for stage in (None, *Stage))


class CellEditor(QFrame):
    """Edits the scores of one cell; every change is told at once.

    Args:
        desk: Look, drawings, language.

    Signals:
        edited(scores: tuple[Score, ...]): The cell says this now.
        left(): The person wants to go back to the grid.
        find_asked(): The person wants to find something in the grid.
    """

    edited = Signal(object)
    left = Signal()
    find_asked = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self.setAccessibleName(self.tr("The cell"))
        self._desk, self._theme = desk, desk.theme
        self._key: Key | None = None
        self.cell: Cell = ("", "")
        self._scores: tuple[Score, ...] = ()
        self._at = 0
        self._half: dict[Cell, tuple[str, ...]] = {}
        self.taxon, self.character = caption(), caption(rank="strong")
        font = desk.theme.font(14, italic=True)
        self.taxon.setFont(font)
        self.variants = FlowRow(gap=4)
        self.back = KeyButton(self.tr("Back"), "Esc", desk.theme, "quiet")
        self.back.setAutoDefault(True)
        self._another = button(self.tr("Another sex or stage"), "link")
        self._less = button(self.tr("Remove this one"), "link")
        self.known = Segments(self.tr("What is known"), Known, self._known_title)
        self.value: StateTicks | NumberFields | None = None
        self._values = QVBoxLayout()
        self.hint = caption(rank="small")
        self.grounds = CellGrounds(desk)
        self._lay_out()
        self.known.chosen.connect(self._on_known_chosen)
        self.grounds.changed.connect(self._on_grounds_changed)
        self._another.clicked.connect(self._on_another_clicked)
        self.back.clicked.connect(self._on_back_clicked)
        self._less.clicked.connect(self._on_less_clicked)

    def show_cell(self, key: Key, cell: Cell) -> None:
        """Show a cell; the variant one was at stays chosen while the cell is the same."""
        before = self._key, self.cell
        same = cell == self.cell
        if isinstance(self.value, NumberFields) and self.value.half:
            self._half[self.cell] = self.value.half
        self._key, self.cell = key, cell
        self._scores = key.cells.get(cell, ())
        self._at = min(self._at, max(len(self._scores) - 1, 0)) if same else 0
        self.taxon.setText(key.taxon[cell[0]].name)
        character = key.character[cell[1]]
        self.character.setText(character.name)
        told = before[0] is not None and before[0].character.get(before[1][1]) == character
        if self.value is None or not told:
            self._make_value(key, cell[1])
        self._show()
        half = self._half.pop(cell, ())
        if half and isinstance(self.value, NumberFields) and self.value.isVisibleTo(self):
            self.value.restore(half)

    def focus_first(self) -> None:
        """Put the focus on what the cell shows."""
        if self.value is not None and self.value.isVisible():
            self.value.focus_first()
        else:
            self.known.setFocus(Qt.FocusReason.OtherFocusReason)

    def flush(self) -> None:
        """Tell what is typed and was not left yet."""
        if self._key is None or not self.isVisible():
            return
        if isinstance(self.value, NumberFields) and self.value.isVisible():
            self.value.flush()
        self.grounds.flush()

    def event(self, event: QEvent) -> bool:
        """Take the key for finding before the window does."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.ShortcutOverride:
            if event.matches(QKeySequence.StandardKey.Find):
                event.accept()
            return event.isAccepted()
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape leads back to the grid, and so does finding."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        elif event.matches(QKeySequence.StandardKey.Find):
            self.find_asked.emit()
        else:
            super().keyPressEvent(event)

    @property
    def _score(self) -> Score | None:
        return self._scores[self._at] if self._scores else None

    def _make_value(self, key: Key, character_id: str) -> None:
        if self.value is not None:
            self._values.removeWidget(self.value)
            self.value.hide()
            self.value.deleteLater()
        character = key.character[character_id]
        if character.kind.numeric:
            self.value = NumberFields(character, self._theme)
        else:
            self.value = StateTicks(character, self._theme)
            self.value.show_pictures(key, character, self._desk)
        self.value.changed.connect(self._on_value_changed)
        self.value.emptied.connect(self._on_value_emptied)
        self._values.addWidget(self.value)

    def _show(self) -> None:
        score = self._score
        value = None if score is None else score.value
        lacking = isinstance(value, Inapplicable)
        unknown = score is None
        self.known.set_value(Known.LACKING if lacking else Known.NO if unknown else Known.YES)
        if isinstance(self.value, StateTicks):
            self.value.show_value(value if isinstance(value, Shows) else None)
        elif self.value is not None:
            self.value.show_value(value if isinstance(value, Spans) else None)
        if self.value is not None:
            self.value.setVisible(not lacking)
        self.hint.setText("")
        self.hint.hide()
        assert self._key is not None
        self.grounds.setVisible(score is not None)
        if score is not None:
            self.grounds.show_score(self._key, score)
        self._show_variants()

    def _show_variants(self) -> None:
        self.variants.clear()
        for number, score in enumerate(self._scores):
            one = button(self._holds(score.sex, score.stage), "segment")
            one.setCheckable(True)
            one.setChecked(number == self._at)
            one.setObjectName(str(number))
            one.clicked.connect(self._on_variant_clicked)
            self.variants.add(one)
        several = len(self._scores) > 1
        self.variants.setVisible(several)
        self._less.setVisible(several)
        self._another.setVisible(bool(self._scores) and len(self._scores) < len(_PLACES))

    def _holds(self, sex: Sex | None, stage: Stage | None) -> str:
        words = [stage_words(stage, self._desk.language)] if stage else []
        words += [sex_words(sex, self._desk.language)] if sex else []
        return ", ".join(words) or self.tr("all animals")

    def _known_title(self, known: Known) -> str:
        return {
            Known.YES: self.tr("Known"),
            Known.LACKING: self.tr("Not applicable"),
            Known.NO: self.tr("Unknown"),
        }[known]

    def _lay_out(self) -> None:
        theme = self._theme
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.px(12), theme.px(10), theme.px(12), theme.px(10))
        column.setSpacing(theme.px(8))
        top = QHBoxLayout()
        top.addWidget(self.taxon, 1)
        top.addWidget(self.back, 0, Qt.AlignmentFlag.AlignTop)
        column.addLayout(top)
        for part in (self.character, self.variants, self.known):
            column.addWidget(part)
        column.addLayout(self._values)
        column.addWidget(self.hint)
        column.addWidget(self.grounds)
        links = FlowRow(gap=8)
        for link in (self._another, self._less):
            link.setAutoDefault(True)
            links.add(link)
        column.addWidget(links)
        column.addStretch(1)

    def _put(self, score: Score) -> None:
        """Put a score in the place of the chosen one, or as the first."""
        others = [one for n, one in enumerate(self._scores) if n != self._at or not self._scores]
        if any((one.sex, one.stage) == (score.sex, score.stage) for one in others):
            text = self.tr("There is one for {whom} already.")
            self._say(text.format(whom=self._holds(score.sex, score.stage)))
            return
        scores = sorted_cell((*others, score))
        self._at = scores.index(score)
        self.edited.emit(scores)

    def _put_value(self, value: Value) -> None:
        score = self._score
        if score is None:
            taxon, character = self.cell
            self._put(Score(taxon=taxon, character=character, value=value))
        elif score.value != value:
            self._put(replace(score, value=value))

    def _say(self, text: str) -> None:
        self.hint.setText(text)
        self.hint.show()

    @Slot(object)
    def _on_value_changed(self, value: Value) -> None:
        self._put_value(value)

    @Slot()
    def _on_value_emptied(self) -> None:
        if self._scores:
            self._say(self.tr("Nothing is chosen: what was there stays. Choose, or say unknown."))

    @Slot(object)
    def _on_known_chosen(self, known: Known) -> None:
        if known is Known.LACKING:
            self._put_value(Inapplicable())
        elif known is Known.NO and self._scores:
            left = tuple(one for n, one in enumerate(self._scores) if n != self._at)
            self._at = 0
            self.edited.emit(left)
        elif self.value is not None:
            self.value.show()
            self.value.focus_first()

    @Slot(object)
    def _on_grounds_changed(self, score: Score) -> None:
        self._put(score)

    @Slot()
    def _on_back_clicked(self) -> None:
        self.left.emit()

    @Slot()
    def _on_another_clicked(self) -> None:
        score = self._score
        taken = {(one.sex, one.stage) for one in self._scores}
        free = next((place for place in _PLACES if place not in taken), None)
        if score is not None and free is not None:
            new = replace(score, sex=free[0], stage=free[1])
            scores = sorted_cell((*self._scores, new))
            self._at = scores.index(new)
            self.edited.emit(scores)

    @Slot()
    def _on_less_clicked(self) -> None:
        self._on_known_chosen(Known.NO)

    @Slot()
    def _on_variant_clicked(self) -> None:
        chosen = self.sender()
        if isinstance(chosen, QPushButton):
            self._at = int(chosen.objectName())
            self._show()
