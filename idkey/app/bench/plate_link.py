"""The head of the question card: the question, its term, and the way to the part it is about."""

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from idkey.app.bench.plate_groups import part_title
from idkey.app.parts.desk import Desk
from idkey.errors import IdKeyError
from idkey.model.character import Character
from idkey.model.key import Key


class PlateLink(QPushButton):
    """Names the part a character is seen on; away where no plate shows it.

    Args:
        desk: Look, drawings, language.

    Signals:
        asked(part: str): The person wants to see where that part is.
    """

    asked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._part = ""
        self.setProperty("role", "link")
        self.setToolTip(self.tr("Parts of the animal and what is seen on them (Ctrl+B)"))
        self.clicked.connect(self._on_clicked)
        self.hide()

    def show_character(self, key: Key, character: Character) -> None:
        """Show the part of a character."""
        try:
            plates = self._desk.pictures.plates(key)
        except IdKeyError:  # told where the plates themselves are asked for
            plates = ()
        shown = any(plate.part(character.part) for plate in plates)
        self._part = character.part if shown else ""
        name = part_title(plates, character.part, self._desk.language)
        self.setText(self.tr("On the animal: {part}").format(part=name))
        self.setVisible(shown)

    @Slot()
    def _on_clicked(self) -> None:
        self.asked.emit(self._part)


def headline(question: QWidget, term: QWidget, where: PlateLink) -> QHBoxLayout:
    """The question with its links beside it, one below the other."""
    top = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignRight
    links = QVBoxLayout()
    links.setSpacing(0)
    links.addWidget(term, 0, top)
    links.addWidget(where, 0, top)
    links.addStretch(1)
    row = QHBoxLayout()
    row.setSpacing(12)
    row.addWidget(question, 1)
    row.addLayout(links)
    return row
