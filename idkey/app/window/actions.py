"""Commands as actions of a window: bound to keys, gathered into a menu, listed for the palette."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from idkey.app.window.commands import COMMANDS, Group, group_title
from idkey.app.window.palette import Entry

Slots = Mapping[str, Callable[[], object]]


class Actions(QObject):
    """One action per command, on a window.

    Args:
        window: The window whose keys they take.
        slots: What each command does; all of `COMMANDS` are there.

    Signals:
        failed(error: object): A command raised.
    """

    failed = Signal(object)

    def __init__(self, window: QWidget, slots: Slots) -> None:
        super().__init__(window)
        self._window = window
        self._slots = dict(slots)
        self._actions: dict[str, QAction] = {}
        for command in COMMANDS:
            action = QAction(command.title, window)
            action.setObjectName(command.id)
            if command.key:
                action.setShortcut(QKeySequence(command.key))
            action.triggered.connect(self._on_action_triggered)
            window.addAction(action)
            self._actions[command.id] = action

    def __getitem__(self, command: str) -> QAction:
        return self._actions[command]

    def run(self, command: str) -> None:
        """Do what a command does, if it may be done now."""
        if self._actions[command].isEnabled():
            self._actions[command].trigger()

    def menu(self) -> QMenu:
        """All commands by group; the caller owns it."""
        menu = QMenu(self._window)
        for group in Group:
            part = menu.addMenu(group_title(group))
            for command in COMMANDS:
                if command.group is group:
                    part.addAction(self._actions[command.id])
        return menu

    def entries(self) -> tuple[Entry, ...]:
        """The commands that may be done now, for the palette."""
        return tuple(
            Entry(
                kind="command",
                name=command.id,
                text=command.title,
                hint=group_title(command.group),
                key=command.key,
                words=command.id.replace("_", " "),
            )
            for command in COMMANDS
            if self._actions[command.id].isEnabled() and command.id != "palette"
        )

    @Slot()
    def _on_action_triggered(self) -> None:
        try:
            self._slots[self.sender().objectName()]()
        except Exception as err:  # noqa: BLE001 - whatever a command raises becomes a message
            self.failed.emit(err)
