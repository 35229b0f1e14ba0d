"""Beside the picture: which line comes next, how the picture was taken, and the number."""

from collections.abc import Callable
from dataclasses import replace
from enum import StrEnum
from typing import TypeVar

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QLineEdit, QVBoxLayout, QWidget

from idkey.app.parts.answer import read_number
from idkey.app.parts.captions import caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.segments import Segments
from idkey.app.parts.worded import worded
from idkey.app.parts.words import upper_first
from idkey.app.photo.session import PhotoSession
from idkey.app.photo.sketch import Pen, Sketch
from idkey.app.photo.words import (
    edge_meaning,
    edge_words,
    lie_meaning,
    lie_words,
    tilt_meaning,
    tilt_words,
)
from idkey.engine.measure import Lie
from idkey.engine.strokes import Edge, length_px
from idkey.engine.tilt import Stroke, Tilt
from idkey.model.character import Character, Kind
from idkey.photo.reading import line_names

ENOUGH = 3
"""Repeats of each line that are asked for."""

E = TypeVar("E", bound=StrEnum)


class LinesPanel(QWidget):
    """For lengths and ratios.

    Args:
        character: What is measured.
        desk: Look, drawings, language.

    Signals:
        sketched(sketch: object): The person changed something.
    """

    sketched = Signal(object)

    def __init__(self, character: Character, desk: Desk) -> None:
        super().__init__()
        self._character = character
        self._desk = desk
        self._sketch: Sketch | None = None
        self._measures = character.kind is Kind.MEASUREMENT
        self._next = caption(rank="strong")
        self.pens = Segments(self.tr("Which line"), (Pen.LINE, Pen.OTHER), self._pen_words)
        self._lengths = caption(rank="small")
        self.bent = QCheckBox(self.tr("Lines with joints (C)"))
        self.bent.setToolTip(
            self.tr("Click joint by joint; Enter or a double click ends the line.")
        )
        self.ruler = QLineEdit()
        self.ruler_error = QLineEdit()
        self.tilt, self._tilt_line = self._asked(self.tr("Leans away"), Tilt, tilt_words)
        self.lie, self._lie_line = self._asked(self.tr("They lie"), Lie, lie_words)
        self.edge, self._edge_line = self._asked(self.tr("End points are"), Edge, edge_words)
        self._lay_out()
        self._connect()

    def show_session(self, session: PhotoSession) -> None:
        """Show what is drawn."""
        self._sketch = session.sketch
        marks = session.sketch.marks
        self.setEnabled(session.loaded is not None)
        self.pens.set_value(session.sketch.pen)
        self._next.setText(self._next_words(session.sketch))
        self._lengths.setText(
            "\n".join(
                self._length_words(name, strokes)
                for name, strokes in (
                    (self.line_name(Pen.LINE), marks.lines),
                    (self.line_name(Pen.OTHER), marks.others),
                )
            )
        )
        self.bent.setChecked(session.sketch.bent)
        self._show_number(self.ruler, marks.ruler)
        self._show_number(self.ruler_error, marks.ruler_error)
        for part, value in ((self.tilt, marks.tilt), (self.lie, marks.lie)):
            part.set_value(value)  # type: ignore[arg-type]
        self.edge.set_value(marks.edge)
        self._tilt_line.setText(tilt_meaning(marks.tilt))
        self._lie_line.setText(lie_meaning(marks.lie, self._character))
        self._edge_line.setText(edge_meaning(marks.edge))

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self._next)
        column.addWidget(self.pens)
        column.addWidget(self._lengths)
        column.addWidget(self.bent)
        column.addSpacing(6)
        column.addWidget(self._ruler_row())
        for name, part, line in (
            (self.tr("The part leans away from the camera"), self.tilt, self._tilt_line),
            (
                self.tr("Part and ruler lie") if self._measures else self.tr("The two lines lie"),
                self.lie,
                self._lie_line,
            ),
            (self.tr("The end points are"), self.edge, self._edge_line),
        ):
            column.addSpacing(6)
            column.addWidget(caption(name, "overline"))
            column.addWidget(part)
            column.addWidget(line)

    def _ruler_row(self) -> QWidget:
        px, unit = self._desk.theme.px, self._character.unit
        self.ruler.setMaximumWidth(px(90))
        self.ruler_error.setMaximumWidth(px(70))
        self.ruler.setAccessibleName(
            self.tr("Length of the ruler line in {unit}").format(unit=unit)
        )
        self.ruler_error.setAccessibleName(self.tr("Standard uncertainty of that length"))
        self.ruler.setPlaceholderText("10")
        self.ruler_error.setPlaceholderText("0")
        row = QHBoxLayout()
        row.setSpacing(6)
        said = (caption("±", wraps=False), caption(unit, wraps=False))
        for part in (self.ruler, said[0], self.ruler_error, said[1]):
            row.addWidget(part)
        row.addStretch(1)
        asked = QWidget()
        whole = QVBoxLayout(asked)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(caption(self.tr("Length of the ruler line"), "overline"))
        whole.addLayout(row)
        asked.setVisible(self._measures)
        return asked

    def _asked(
        self, name: str, values: type[E], words: Callable[[E], str]
    ) -> tuple[Segments[E], QLabel]:
        return Segments(name, values, words), caption(rank="small")

    def _connect(self) -> None:
        self.pens.chosen.connect(self._on_pen_chosen)
        self.bent.toggled.connect(self._on_bent_toggled)
        self.ruler.textEdited.connect(self._on_ruler_edited)
        self.ruler_error.textEdited.connect(self._on_ruler_edited)
        self.tilt.chosen.connect(self._on_tilt_chosen)
        self.lie.chosen.connect(self._on_lie_chosen)
        self.edge.chosen.connect(self._on_edge_chosen)

    def _pen_words(self, pen: Pen) -> str:
        return upper_first(self.line_name(pen))

    def _next_words(self, sketch: Sketch) -> str:
        name = self.line_name(sketch.pen)
        if sketch.bent and sketch.open:
            return self.tr("Next joint of “{name}”; Enter ends it.").format(name=name)
        if sketch.open:
            return self.tr("Other end of “{name}”.").format(name=name)
        few = min(len(sketch.marks.lines), len(sketch.marks.others)) < ENOUGH
        if few:
            return self.tr("Click both ends of “{name}”.").format(name=name)
        return self.tr("Enough repeats; more make it a little surer.")

    def line_name(self, pen: Pen) -> str:
        """What a line is called."""
        return worded(line_names(self._character)[0 if pen is Pen.LINE else 1])

    def _length_words(self, name: str, strokes: tuple[Stroke, ...]) -> str:
        lengths = "  ".join(f"{length_px(stroke):.0f}" for stroke in strokes) or "–"
        return self.tr("{name}: {lengths} px ({n} of {enough})").format(
            name=name, lengths=lengths, n=len(strokes), enough=max(ENOUGH, len(strokes))
        )

    def _show_number(self, field: QLineEdit, value: float) -> None:
        if read_number(field.text() or "0") != value:
            field.setText(f"{value:g}".replace(".", self._desk.language.decimal) if value else "")

    def _mark(self, **changed: object) -> None:
        if self._sketch is not None:
            marks = replace(self._sketch.marks, **changed)  # type: ignore[arg-type]
            self.sketched.emit(replace(self._sketch, marks=marks))

    @Slot(object)
    def _on_pen_chosen(self, pen: Pen) -> None:
        if self._sketch is not None:
            self.sketched.emit(self._sketch.with_pen(pen))

    @Slot(bool)
    def _on_bent_toggled(self, bent: bool) -> None:
        if self._sketch is not None and bent != self._sketch.bent:
            self.sketched.emit(self._sketch.with_bends(bent))

    @Slot()
    def _on_ruler_edited(self) -> None:
        length, error = (
            read_number(field.text() or "0") or 0.0 for field in (self.ruler, self.ruler_error)
        )
        self._mark(ruler=length, ruler_error=error)

    @Slot(object)
    def _on_tilt_chosen(self, tilt: Tilt) -> None:
        self._mark(tilt=tilt)

    @Slot(object)
    def _on_lie_chosen(self, lie: Lie) -> None:
        self._mark(lie=lie)

    @Slot(object)
    def _on_edge_chosen(self, edge: Edge) -> None:
        self._mark(edge=edge)
