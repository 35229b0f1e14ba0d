"""Beside the picture: the patch, its colour beside the states, and what it cannot show."""

from dataclasses import replace

from PySide6.QtCore import QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from idkey.app.parts.captions import caption
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.segments import Segments
from idkey.app.parts.theme import Theme
from idkey.app.photo.session import Looked, PhotoSession, coloured
from idkey.app.photo.sketch import Pen, Sketch
from idkey.app.photo.words import fault_words, neutral_words, warn_words
from idkey.model.character import Character
from idkey.photo.colour_sample import Sample, Suggestion, decided
from idkey.photo.marks import Neutral

_START = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_END = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter

WIDEST = 40.0
"""Difference at which a bar is full."""


class LookPanel(QWidget):
    """For colours and surfaces.

    Args:
        character: What is looked at.
        desk: Look, drawings, language.

    Signals:
        sketched(sketch: object): The person changed something.
    """

    sketched = Signal(object)

    def __init__(self, character: Character, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._sketch: Sketch | None = None
        self._colours = coloured(character)
        self._next = caption(rank="strong")
        self.pens = Segments(self.tr("What to mark"), (Pen.PATCH, Pen.NEUTRAL), self._pen_words)
        self.reference = Choice(self.tr("The neutral thing is"), desk.theme)
        self.reference.offer((neutral_words(neutral), neutral) for neutral in Neutral)
        self.moulted = QCheckBox(self.tr("Moulted within the last days"))
        self.distances = Distances(desk.theme)
        self.said = caption()
        self.warned = caption(tone="doubt")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        asked = (self.pens, self.reference, self.moulted, self.distances)
        for part in (self._next, *asked, self.said, self.warned):
            column.addWidget(part)
        for part in asked:
            part.setVisible(self._colours)
        self.pens.chosen.connect(self._on_pen_chosen)
        self.reference.activated.connect(self._on_reference_activated)
        self.moulted.toggled.connect(self._on_moulted_toggled)

    def show_session(self, session: PhotoSession) -> None:
        """Show what the patch says."""
        self._sketch = session.sketch
        marks = session.sketch.marks
        self.setEnabled(session.loaded is not None)
        self.pens.set_value(session.sketch.pen)
        self.reference.choose(marks.reference)
        self.moulted.setChecked(marks.moulted)
        self._next.setText(self._next_words(session))
        looked = session.looked or Looked(marks)
        self.distances.show_colours(looked.sample, looked.suggestions)
        self.said.setText(self._said(looked))
        self.said.setVisible(bool(self.said.text()))
        warnings = self._warnings(looked)
        self.warned.setText("\n".join(f"• {one}" for one in warnings))
        self.warned.setVisible(bool(warnings))

    def _pen_words(self, pen: Pen) -> str:
        return self.tr("Patch") if pen is Pen.PATCH else self.tr("Neutral thing")

    def _next_words(self, session: PhotoSession) -> str:
        marks = session.sketch.marks
        if marks.patch is None:
            if self._colours:
                return self.tr("Drag a box over an even patch of the part.")
            return self.tr("Drag a box over the part the drawings show.")
        if self._colours and marks.neutral is None:
            return self.tr("Now drag a box over something grey or white in the same light.")
        return self.tr("Say below which state it is; the picture does not decide.")

    def _said(self, looked: Looked) -> str:
        if looked.sample is not None:
            return self._colour_words(looked)
        if looked.fitness is None or self._colours:
            return ""
        if looked.fitness.shows_surface:
            return self.tr("Sharp and lit well enough to show granules and hairs.")
        return self.tr("This patch cannot show a fine surface:")

    def _colour_words(self, looked: Looked) -> str:
        if not looked.suggestions:
            return ""
        nearest = looked.suggestions[0]
        number = self._desk.language.number(round(nearest.distance, 1))
        if decided(looked.suggestions):
            return self.tr("Nearest: “{state}”, {distance} away.").format(
                state=nearest.state.label, distance=number
            )
        return self.tr("No state is clearly nearest; the colour alone does not decide.")

    def _warnings(self, looked: Looked) -> list[str]:
        if looked.sample is not None:
            return [warn_words(warn) for warn in looked.sample.warnings]
        if looked.fitness is None or self._colours:
            return []
        return [fault_words(fault) for fault in looked.fitness.faults]

    @Slot(object)
    def _on_pen_chosen(self, pen: Pen) -> None:
        if self._sketch is not None:
            self.sketched.emit(self._sketch.with_pen(pen))

    @Slot(int)
    def _on_reference_activated(self, row: int) -> None:
        if self._sketch is not None:
            marks = replace(self._sketch.marks, reference=self.reference.value(row))
            self.sketched.emit(replace(self._sketch, marks=marks))

    @Slot(bool)
    def _on_moulted_toggled(self, moulted: bool) -> None:
        if self._sketch is not None and moulted != self._sketch.marks.moulted:
            marks = replace(self._sketch.marks, moulted=moulted)
            self.sketched.emit(replace(self._sketch, marks=marks))


class Distances(QWidget):
    """The colour of the patch, and how far each state is from it.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._sample: Sample | None = None
        self._found: tuple[Suggestion, ...] = ()
        self.hide()

    def show_colours(self, sample: Sample | None, found: tuple[Suggestion, ...]) -> None:
        """Show a colour and the states by distance; None shows nothing."""
        self._sample, self._found = sample, found
        self.setVisible(sample is not None)
        said = "; ".join(f"{one.state.label} {one.distance:.1f}" for one in found)
        self.setAccessibleName(self.tr("Difference of the states: {said}").format(said=said))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """A row for each state and one for the patch."""
        return QSize(self._theme.px(240), self._theme.px(30) * (len(self._found) + 1))

    def minimumSizeHint(self) -> QSize:
        """The same height, narrower."""
        return QSize(self._theme.px(160), self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw a swatch, a name, a bar and a number in each row."""
        if self._sample is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._row(painter, 0, (self._sample.hex, self.tr("The patch in neutral light")))
        for number, one in enumerate(self._found, start=1):
            self._row(painter, number, (one.colour, one.state.label))
            self._far(painter, number, one.distance)
        painter.end()

    def _row(self, painter: QPainter, number: int, shown: tuple[str, str]) -> None:
        px, theme = self._theme.px, self._theme
        top, room = number * px(30), self.width() - px(42) - (px(44) if number else 0)
        painter.setPen(QPen(theme.colour("outline"), 1))
        painter.setBrush(QColor(shown[0]))
        painter.drawRoundedRect(QRectF(0.5, top + 3.5, px(34), px(23)), 4, 4)
        painter.setPen(theme.colour("ink"))
        painter.setFont(theme.font(12.5, bold=number == 0))
        text = painter.fontMetrics().elidedText(shown[1], Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRectF(px(42), top, room, px(24)), int(_START), text)

    def _far(self, painter: QPainter, number: int, distance: float) -> None:
        px, theme = self._theme.px, self._theme
        top = number * px(30)
        text = QRectF(self.width() - px(44), top, px(44), px(28))
        painter.drawText(text, int(_END), f"{distance:.1f}")
        bar = QRectF(px(42), top + px(24), self.width() - px(42) - px(48), px(3))
        painter.fillRect(bar, theme.colour("line"))
        bar.setWidth(bar.width() * min(distance / WIDEST, 1.0))
        painter.fillRect(bar, theme.colour("soft"))
