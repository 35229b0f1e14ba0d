"""Unexpected errors: kept whole in a log beside the records, told in one line on the screen."""

import faulthandler
import logging
import os
import sys
import threading
from io import TextIOWrapper
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType
from typing import TextIO

from PySide6.QtCore import QObject, Signal

from idkey import __version__
from idkey.app.parts.messages import Message, message_for

FILE = "idkey.log"
LARGEST_BYTES = 512_000
OLDER = 3
"""How many older logs are kept."""

CRASH_FILE = "crash.log"
"""Where the interpreter writes its stacks when the process is brought down from below."""


class ErrorsLog(QObject):
    """Catches what nothing else caught; the program goes on.

    Args:
        folder: Folder of the log; made when it is missing, for its owner alone.
        parent: Owner.

    Signals:
        happened(message: Message): On the thread of the window, after an error was logged.
    """

    happened = Signal(object)

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._handler = _file_handler(folder)
        self._crashes = _crash_file(folder)
        self._before = (sys.excepthook, threading.excepthook)
        self._telling = False

    def watch(self) -> None:
        """Begin to catch."""
        logging.getLogger().addHandler(self._handler)
        if self._crashes is not None:
            faulthandler.enable(self._crashes)
        sys.excepthook = self._on_error
        threading.excepthook = self._on_thread_error

    def leave(self) -> None:
        """Put everything back as it was."""
        sys.excepthook, threading.excepthook = self._before
        if self._crashes is not None:
            faulthandler.disable()
            self._crashes.close()
        logging.getLogger().removeHandler(self._handler)
        self._handler.close()

    def _on_error(
        self, kind: type[BaseException], error: BaseException, trace: TracebackType | None
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        message: Message = message_for(error.with_traceback(trace))
        if self._telling:  # whoever shows messages failed at it
            return
        self._telling = True
        try:
            self.happened.emit(message)
        finally:
            self._telling = False

    def _on_thread_error(self, what: threading.ExceptHookArgs) -> None:
        if what.exc_value is not None:
            self._on_error(what.exc_type, what.exc_value, what.exc_traceback)


def _file_handler(folder: Path) -> logging.Handler:
    """A rotating log for its owner alone; one that keeps nothing when none can be written."""
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        handler: logging.Handler = _OwnersLog(
            folder / FILE, maxBytes=LARGEST_BYTES, backupCount=OLDER, encoding="utf-8", delay=True
        )
    except OSError:
        return logging.NullHandler()
    handler.setLevel(logging.WARNING)
    handler.setFormatter(
        logging.Formatter(f"%(asctime)s idkey {__version__} %(name)s %(levelname)s %(message)s")
    )
    return handler


class _OwnersLog(RotatingFileHandler):
    """A log that only its owner may read."""

    def _open(self) -> TextIOWrapper:
        file = os.open(self.baseFilename, os.O_CREAT | os.O_APPEND | os.O_WRONLY, 0o600)
        return os.fdopen(file, "a", encoding="utf-8")


def _crash_file(folder: Path) -> TextIO | None:
    file = folder / CRASH_FILE
    try:
        full = file.is_file() and file.stat().st_size > LARGEST_BYTES
        afresh = os.O_TRUNC if full else os.O_APPEND
        number = os.open(file, os.O_CREAT | os.O_WRONLY | afresh, 0o600)
    except OSError:
        return None
    return os.fdopen(number, "a", encoding="utf-8")
