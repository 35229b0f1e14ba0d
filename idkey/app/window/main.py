"""Starts the window: the frame first, records and keys behind it."""

import logging
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.parts.collector import Collector
from idkey.app.parts.messages import Message, careful_start, message_for
from idkey.app.parts.theme import Scheme, Theme, add_fonts
from idkey.app.window.crash_guard import STANDS_MS, CrashGuard
from idkey.app.window.frame import Frame
from idkey.app.window.memory import WindowMemory, remembered
from idkey.app.window.translation import Translation, system_language

if TYPE_CHECKING:
    from idkey.app.parts.jobs import Jobs, Tick
    from idkey.app.window.errands import Errands
    from idkey.app.window.program import Opened, Program


UNSEEN_MS = 500
"""How long opening waits for the frame to be seen, in milliseconds; it may be hidden."""


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
    files = [Path(word).absolute() for word in argv if not word.startswith("-")]
    package = files[0] if files else None
    # What the tag does not need is imported when it is needed: it is to stand at once.
    from idkey.app.window.doorbell import Doorbell

    bell = Doorbell(places.data_folder())
    if not bell.answer():
        bell.ring(str(package or ""))
        return 0
    start = Start(app, package)
    # The tag stands before anything more is imported; nothing has been opened yet.
    from idkey.app.parts.errors_log import ErrorsLog

    log = ErrorsLog(places.data_folder() / "log")
    log.watch()
    log.happened.connect(start.say)
    bell.rung.connect(start.come_forward)
    try:
        return app.exec()
    finally:
        bell.leave()
        start.close()
        log.leave()


class Start(QObject):
    """From nothing to the running program.

    Args:
        app: The application.
        package: Key package to open; None for none.

    Signals:
        opened(): The program is there.
    """

    opened = Signal()

    def __init__(self, app: QApplication, package: Path | None = None) -> None:
        super().__init__()
        self._collector = Collector(self)
        self._package = package
        app.setApplicationName("idkey")
        if app.style().objectName() != "fusion":
            app.setStyle("Fusion")
        folder = places.data_folder()
        memory = remembered(folder)
        self._translation = Translation(app)
        self._translation.speak(memory.language or system_language())
        self._fonts = places.font_files()
        if add_fonts(file for file in self._fonts if "Italic" not in file.stem):
            app.setFont(QFont(places.FONT_FAMILY))
        self.theme = _theme(app, memory)
        self.frame = Frame(self.theme, memory, folder)
        self.program: Program | None = None
        self._waking: Jobs | None = None
        self._errands: Errands | None = None
        self._guard = CrashGuard(folder)
        self._guard.begin()
        self.frame.seen.connect(self._on_frame_seen)
        self.frame.show()
        QTimer.singleShot(UNSEEN_MS, self, self._open)

    def close(self) -> None:
        """Finish what was asked for, and let go of everything."""
        if self._waking is not None:
            self._waking.wait(10_000)
        if self._errands is not None:
            self._errands.wait()
        if self.program is not None:
            self.program.close()
            self.program = None
            self._guard.done()
        self._collector.leave()

    @Slot(object)
    def say(self, message: Message) -> None:
        """Tell the person something that concerns the whole program."""
        if self.program is not None:
            self.program.window.notice.say(message)
        else:
            self.frame.say(f"{message.problem} {message.remedy}")

    @Slot()
    def stand(self) -> None:
        """Count the start as done, and copy the record book where that is due."""
        self._guard.done()
        if self.program is None or self._errands is None:
            return
        store = self.program.keeper.store
        if store.database.file is not None:  # whoever runs a server sees to its copies
            self._errands.back_up(store)

    @Slot(str)
    def come_forward(self, file: str) -> None:
        """Show the window to somebody who started the program again, maybe with a package."""
        if self.frame.isMinimized():
            self.frame.showNormal()
        self.frame.raise_()
        self.frame.activateWindow()
        if file and self.program is not None:
            self.take_in(Path(file))

    @Slot()
    def _on_frame_seen(self) -> None:
        QTimer.singleShot(0, self, self._open)

    @Slot()
    def _open(self) -> None:
        if self._waking is not None:
            return
        from idkey.app.parts.jobs import Job, Jobs

        add_fonts(file for file in self._fonts if "Italic" in file.stem)
        self._waking = Jobs(threads=1, parent=self)
        job = Job(_imported)
        job.succeeded.connect(self._on_imported)
        job.failed.connect(self._on_failed)
        self._waking.start(job)

    @Slot()
    def _on_imported(self) -> None:
        from idkey.app.window.errands import Errands

        self._errands = Errands(self)
        self._errands.opened.connect(self._on_opened)
        self._errands.taken_in.connect(self._on_taken_in)
        self._errands.refused.connect(self._on_refused)
        self._errands.failed.connect(self._on_failed)
        self._errands.open()

    @Slot(object)
    def _on_opened(self, parts: "Opened") -> None:
        from idkey.app.window.errands import folders
        from idkey.app.window.program import Program

        self.program = Program(
            self.frame,
            self.theme,
            self._translation,
            folders=folders(),
            parts=parts,
            resume=not self._guard.careful,
        )
        if self._guard.careful:
            self.say(careful_start())
        QTimer.singleShot(STANDS_MS, self, self.stand)
        self.opened.emit()
        if self._package is not None:
            self.take_in(self._package)

    def take_in(self, package: Path) -> None:
        """Add the key of a package, and begin a case with it."""
        assert self.program is not None
        assert self._errands is not None
        self._errands.take_in(self.program.state.keys, package)

    @Slot(str)
    def _on_taken_in(self, key: str) -> None:
        if self.program is not None:
            self.program.state.new_case(key)
            self.frame.activateWindow()

    @Slot(object)
    def _on_refused(self, package: Path) -> None:
        """Another key of that id is here: show what differs before anything is replaced."""
        if self.program is not None:
            self.program.window.rooms.take_in(package)
            self.frame.activateWindow()

    @Slot(object)
    def _on_failed(self, error: Exception) -> None:
        self.say(message_for(error))


def _imported(tick: "Tick") -> None:  # on a pool thread
    # Engine, records and keys take half a second to import: the frame stands before that.
    import idkey.app.window.errands

    assert idkey.app.window.errands
    tick(1, 1)


def _theme(app: QApplication, memory: WindowMemory) -> Theme:
    theme = Theme(app)
    known = {scheme.value for scheme in Scheme}
    scheme = Scheme(memory.scheme) if memory.scheme in known else Scheme.SYSTEM
    theme.choose(scheme, memory.scale)
    return theme
