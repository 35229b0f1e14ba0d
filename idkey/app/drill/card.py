"""A card of the drill's start: one exercise, and how much of it is due."""

from PySide6.QtCore import QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from idkey.app.drill.words import count_words, exercise_about, exercise_title
from idkey.app.parts.captions import KeyButton, caption
from idkey.app.parts.desk import Desk
from idkey.app.parts.theme import Theme
from idkey.drill.schedule import Agenda
from idkey.store.drill_log import Exercise


class Tally(QWidget):
    """A number in a ring: how much is due, and how much is new as a lighter part.

    Args:
        theme: The look.
    """

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._due = self._fresh = 0
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def show_numbers(self, due: int, fresh: int) -> None:
        """Show other numbers."""
        self._due, self._fresh = due, fresh
        self.setAccessibleName(count_words(due, fresh))
        self.update()

    def sizeHint(self) -> QSize:
        """A square."""
        return QSize(self._theme.px(72), self._theme.px(72))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the ring and the number."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour, px = self._theme.colour, self._theme.px
        ring = QRectF(self.rect()).adjusted(px(6), px(6), -px(6), -px(6))
        total = self._due + self._fresh
        painter.setPen(QPen(colour("line"), px(7)))
        painter.drawEllipse(ring)
        start = 90 * 16
        for number, name in ((self._due, "accent"), (self._fresh, "outline")):
            if total and number:
                turn = -round(360 * 16 * number / total)
                pen = QPen(colour(name), px(7))
                pen.setCapStyle(Qt.PenCapStyle.FlatCap)
                painter.setPen(pen)
                painter.drawArc(ring, start, turn)
                start += turn
        painter.setPen(colour("ink") if total else colour("soft"))
        painter.setFont(self._theme.font(20, bold=True))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, str(total) if total else "–")
        painter.end()


class ExerciseCard(QFrame):
    """One exercise: what it is, how much is due, and a button.

    Args:
        exercise: The exercise.
        key: Its key.
        desk: Look, drawings, language.

    Signals:
        wanted(exercise: object): The person wants to practise it.
    """

    wanted = Signal(object)

    def __init__(self, exercise: Exercise, key: str, desk: Desk) -> None:
        super().__init__()
        self.setProperty("pane", "card")
        self.exercise = exercise
        self.tally = Tally(desk.theme)
        self.counts = caption(rank="strong")
        self.begin = KeyButton(self.tr("Begin"), key, desk.theme)
        self.begin.setAccessibleName(exercise_title(exercise))
        title = caption(exercise_title(exercise), "lead")
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(title)
        words.addWidget(self.counts)
        head = QHBoxLayout()
        head.setSpacing(14)
        head.addWidget(self.tally, 0, Qt.AlignmentFlag.AlignTop)
        head.addLayout(words, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 16, 18, 16)
        column.setSpacing(10)
        column.addLayout(head)
        column.addWidget(caption(exercise_about(exercise), "soft"))
        column.addStretch(1)
        column.addWidget(self.begin)
        self.begin.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.begin.clicked.connect(self._on_begin_clicked)

    def show_agenda(self, agenda: Agenda, *, offered: bool) -> None:
        """Show what is to be done; `offered` is whether the key has anything of this kind."""
        due, fresh = len(agenda.due), len(agenda.fresh)
        self.tally.show_numbers(due, fresh)
        later = len(agenda.soon) + len(agenda.ahead)
        none = self.tr("Nothing of this kind in this key")
        self.counts.setText(count_words(due, fresh) if offered else none)
        self.begin.setText(self.tr("Begin") if due + fresh else self.tr("Practise beyond"))
        self.begin.setEnabled(bool(due + fresh + later))

    @Slot()
    def _on_begin_clicked(self) -> None:
        self.wanted.emit(self.exercise)
