"""Starts the window: the frame first, records and keys behind it."""

import logging
from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.crash_guard import STANDS_MS, CrashGuard
from idkey.app.errors_log import ErrorsLog
from idkey.app.frame import Frame
from idkey.app.jobs import Job, Jobs, Tick
from idkey.app.messages import Message, careful_start, message_for
from idkey.app.theme import Scheme, Theme, add_fonts
from idkey.app.translation import Translation, system_language
from idkey.app.window_memory import WindowMemory, remembered

if TYPE_CHECKING:
    from idkey.app.program import Folders, Opened, Program


def run(argv: Sequence[str]) -> int:
    """Open the window and stay until it is closed.

    Args:
        argv: Arguments without the name of the program.

    Returns:
        Exit code.
    """
    logging.basicConfig(level=logging.WARNING)
    app = QApplication.instance() or QApplication(["idkey", *argv])
    assert isinstance(app, QApplication)
    log = ErrorsLog(places.data_folder() / "log")
    log.watch()
    start = Start(app)
    log.happened.connect(start.say)
    try:
        return app.exec()
    finally:
        start.close()
        log.leave()


class Start(QObject):
    """From nothing to the running program.

    Args:
        app: The application.

    Signals:
        opened(): The program is there.
    """

    opened = Signal()

    def __init__(self, app: QApplication) -> None:
        super().__init__()
        app.setApplicationName("idkey")
        app.setStyle("Fusion")
        folder = places.data_folder()
        memory = remembered(folder)
        self._translation = Translation(app)
        self._translation.speak(memory.language or system_language())
        if add_fonts(places.font_files()):
            app.setFont(QFont(places.FONT_FAMILY))
        self.theme = _theme(app, memory)
        self.frame = Frame(self.theme, memory, folder)
        self.program: Program | None = None
        self._jobs = Jobs(threads=1, parent=self)
        self._guard = CrashGuard(folder)
        self._guard.begin()
        self.frame.show()
        QTimer.singleShot(0, self, self._open)

    def close(self) -> None:
        """Finish what was asked for, and let go of everything."""
        self._jobs.wait(10_000)
        if self.program is not None:
            self.program.close()
            self.program = None
            self._guard.done()

    @Slot(object)
    def say(self, message: Message) -> None:
        """Tell the person something that concerns the whole program."""
        if self.program is not None:
            self.program.window.notice.say(message)
        else:
            self.frame.say(f"{message.problem} {message.remedy}")

    @Slot()
    def _open(self) -> None:
        job = Job(_opened)
        job.succeeded.connect(self._on_opened)
        job.failed.connect(self._on_failed)
        self._jobs.start(job)

    @Slot(object)
    def _on_opened(self, parts: "Opened") -> None:
        from idkey.app.program import Program

        self.program = Program(
            self.frame,
            self.theme,
            self._translation,
            folders=_folders(),
            parts=parts,
            resume=not self._guard.careful,
        )
        if self._guard.careful:
            self.say(careful_start())
        QTimer.singleShot(STANDS_MS, self, self._guard.done)
        self.opened.emit()

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.say(message_for(error))


def _opened(tick: Tick) -> "Opened":  # on a pool thread
    # Engine, records and keys take half a second to import: the frame stands before that.
    from idkey.app.program import opened

    tick(0, 1)
    return opened(_folders())


def _folders() -> "Folders":
    from idkey.app.program import Folders

    return Folders(
        data=places.data_folder(), keys=places.keys_folder(), images=places.images_folder()
    )


def _theme(app: QApplication, memory: WindowMemory) -> Theme:
    theme = Theme(app)
    known = {scheme.value for scheme in Scheme}
    scheme = Scheme(memory.scheme) if memory.scheme in known else Scheme.SYSTEM
    theme.choose(scheme, memory.scale)
    return theme
