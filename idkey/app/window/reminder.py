"""On the start page: how many drills are due for whoever practised here last."""

from PySide6.QtCore import QObject, QTimer, Slot

from idkey.app.bench.start_view import StartView
from idkey.app.drill.now import Drill
from idkey.app.drill.state import DrillState

AFTER_MS = 1500
"""How long after the window stands the drill is looked up, in milliseconds: not in the way."""


class Reminder(QObject):
    """Tells the start page what the drill says is due; nobody who never practised is asked to.

    Args:
        drill: The state of the drill.
        start: The start page.
        parent: Owner.
    """

    def __init__(self, drill: DrillState, start: StartView, parent: QObject) -> None:
        super().__init__(parent)
        self._drill, self._start = drill, start
        drill.changed.connect(self._on_drill_changed)
        self._on_drill_changed(drill.drill)
        QTimer.singleShot(AFTER_MS, self, self.look)

    @Slot()
    def look(self) -> None:
        """Have the drill look up what is due, unless it knows."""
        if self._drill.drill.plan is None and self._drill.practised:
            self._drill.open()

    @Slot(object)
    def _on_drill_changed(self, drill: Drill) -> None:
        if drill.plan is not None and not drill.busy:
            self._start.show_due(drill.person, len(drill.plan.agenda.due))
