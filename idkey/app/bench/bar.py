"""Above the question: what the person needs to know, and how to go through the key."""

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QWidget

from idkey.app.bench.animal_button import AnimalButton
from idkey.app.bench.session import Mode, Session
from idkey.app.parts.choice import Choice
from idkey.app.parts.desk import Desk
from idkey.app.parts.flow import FlowRow
from idkey.app.parts.segments import Segments
from idkey.app.parts.words import aim_words
from idkey.model.case import Aim


class BenchBar(FlowRow):
    """Aim, animal and mode.

    Args:
        desk: Look, drawings, language.

    Signals:
        aim_chosen(aim: object): The person needs to know something else.
        mode_chosen(mode: object): Free choice or couplets.
    """

    aim_chosen = Signal(object)
    mode_chosen = Signal(object)

    def __init__(self, desk: Desk) -> None:
        super().__init__(gap=8)
        self._aim = Choice(self.tr("What you need to know"), desk.theme)
        self._aim.offer((aim_words(aim), aim) for aim in Aim)
        self.animal = AnimalButton(desk)
        self._mode = Segments(self.tr("How to go through the key"), Mode, self._mode_words)
        parts: tuple[QWidget, ...] = (self._aim, self.animal, self._mode)
        for part in parts:
            self.add(part)
        self._aim.activated.connect(self._on_aim_activated)
        self._mode.chosen.connect(self._on_mode_chosen)

    def show_session(self, session: Session) -> None:
        """Show what a session says."""
        self._aim.choose(session.case.aim)
        self.animal.show_case(session.case)
        self._mode.set_value(session.mode)
        self._mode.setVisible(bool(session.key.couplets))

    def pick_aim(self, aim: Aim) -> None:
        """Choose an aim as the person would."""
        self._aim.choose(aim)
        self._on_aim_activated(self._aim.currentIndex())

    def _mode_words(self, mode: Mode) -> str:
        return self.tr("Free choice") if mode is Mode.FREE else self.tr("Couplets")

    @Slot(int)
    def _on_aim_activated(self, row: int) -> None:
        self.aim_chosen.emit(self._aim.value(row))

    @Slot(object)
    def _on_mode_chosen(self, mode: Mode) -> None:
        self.mode_chosen.emit(mode)
