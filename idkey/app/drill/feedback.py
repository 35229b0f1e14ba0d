"""What was missed, where to look, and the figures side by side."""

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from idkey.app.drill.plate import Plate
from idkey.app.parts.captions import KeyButton, caption, headed, restyle
from idkey.app.parts.desk import Desk
from idkey.app.parts.words import upper_first
from idkey.model.character import Character
from idkey.report.words import look_words


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """One figure of a comparison.

    Attributes:
        source: SVG; empty when there is none.
        caption: The line below it.
        words: What it shows, in words, where there is no drawing.
        tone: ``"accent"`` for what is right, ``"doubt"`` for what was wrong.
    """

    source: bytes | None
    caption: str
    words: str = ""
    tone: str = ""


class SideBySide(QWidget):
    """Figures beside each other, each with a line of words.

    Args:
        desk: Look, drawings, language.
    """

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.plates: tuple[Plate, ...] = ()
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(12)

    def show_figures(self, figures: Sequence[Figure]) -> None:
        """Show other figures; none hides it."""
        while len(self.plates) < len(figures):
            plate = Plate(self._desk.theme, (150, 120))
            self._row.addWidget(plate, 1)
            self.plates = (*self.plates, plate)
        for plate, figure in zip(self.plates, figures, strict=False):
            plate.show_drawing(
                figure.source, figure.words, caption=figure.caption, tone=figure.tone
            )
            plate.show()
        for plate in self.plates[len(figures) :]:
            plate.hide()
        self.setVisible(bool(figures))


class Feedback(QWidget):
    """How an answer turned out, in words, and the way on.

    Args:
        desk: Look, drawings, language.

    Signals:
        done(): The person has read it.
    """

    done = Signal()

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self.headline = caption(rank="lead")
        self.text = caption()
        self.text.setTextFormat(Qt.TextFormat.RichText)
        self.onward = KeyButton(self.tr("Next"), "Enter", desk.theme, "main")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 4, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.headline)
        column.addWidget(self.text)
        column.addWidget(self.onward, 0, Qt.AlignmentFlag.AlignLeft)
        self.onward.setAutoDefault(True)  # Enter presses it, outside a dialog too
        self.onward.clicked.connect(self._on_onward_clicked)
        self.hide()

    def say(self, headline: str, lines: Sequence[str], *, right: bool) -> None:
        """Show it and take the focus, so that Enter goes on.

        Args:
            headline: How it turned out.
            lines: Rich text, a line each.
            right: Whether it was right; decides the colour, the words say it too.
        """
        self.headline.setText(headline)
        restyle(self.headline, "tone", "accent" if right else "doubt")
        self.text.setText("<br>".join(lines))
        self.text.setVisible(bool(lines))
        self.show()
        self.onward.setFocus(Qt.FocusReason.OtherFocusReason)
        QTimer.singleShot(0, self, self._come_into_view)  # once it has been laid out

    def where_to_look(self, character: Character) -> list[str]:
        """Where a character is seen and what goes wrong with it, as rich text."""
        easiest = look_words(character.looks[0], self._desk.language)
        where = f"{upper_first(easiest)}. {character.how}".strip()
        lines = [headed(self.tr("Where to look"), where)]
        if character.pitfalls:
            lines.append(headed(self.tr("What goes wrong"), character.pitfalls))
        return lines

    @Slot()
    def _come_into_view(self) -> None:
        above = self.parentWidget()
        while above is not None and not isinstance(above, QScrollArea):
            above = above.parentWidget()
        if above is not None and self.isVisible():
            above.ensureWidgetVisible(self.onward)
            above.ensureWidgetVisible(self.headline)

    @Slot()
    def _on_onward_clicked(self) -> None:
        self.done.emit()
