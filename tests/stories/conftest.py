"""The whole program: real records, real keys, the real window, driven from outside."""

import json
import os
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QWidget

from idkey import places
from idkey.app.window.main import Start
from idkey.app.window.program import Program

PICTURES = Path(__file__).parents[2] / ".pictures"
"""Where the test run leaves a picture of every screen, for people to look at."""

KEY = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


class Keeper:
    """A person at the keyboard.

    Attributes:
        start: The program as it was started.
        program: Its parts.
    """

    def __init__(self, qtbot, start: Start) -> None:
        self.qtbot = qtbot
        self.start = start
        with qtbot.waitSignal(start.opened, timeout=60_000):
            pass
        assert start.program is not None
        self.program: Program = start.program
        self.suffix = ""
        start.frame.activateWindow()

    @property
    def session(self):
        return self.program.state.session

    @property
    def bench(self):
        return self.program.window.bench

    def types(self, text: str) -> None:
        self.qtbot.keyClicks(self._focus(), text)

    def presses(self, key: Qt.Key, modifier=Qt.KeyboardModifier.NoModifier) -> None:
        self.qtbot.keyClick(self._focus(), key, modifier)

    def keeps(self, name: str, widget: QWidget | None = None) -> QImage:
        """Keep a picture of the screen, or of a dialog, and give it back."""
        PICTURES.mkdir(exist_ok=True)
        for _ in range(2):  # painting asks for portraits, and portraits for painting
            QApplication.processEvents()
            (widget or self.start.frame).grab()
            self.settles()
        picture = (widget or self.start.frame).grab().toImage()
        assert picture.save(str(PICTURES / f"{name}{self.suffix}.png"))
        return picture

    def settles(self) -> None:
        """Wait until drawing, reasoning and saving are done."""
        while self.program.pictures.busy:
            with self.qtbot.waitSignal(self.program.pictures.arrived, timeout=60_000):
                pass
        self.qtbot.waitUntil(lambda: not self.bench.middle.busy, timeout=60_000)
        if self.program.keeper.busy:
            with self.qtbot.waitSignal(self.program.keeper.settled, timeout=10_000):
                pass
        if QApplication.activeModalWidget() is None:  # off screen, a popup's end takes it away
            self.start.frame.activateWindow()

    def _focus(self) -> QWidget:
        widget = QApplication.focusWidget()
        assert widget is not None, "nothing has the focus"
        return widget


def killed(script: str) -> dict[str, Any]:
    """What a program in another process told, in one line, before it was killed at its work."""
    root = str(places.PACKAGE.parent)
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": root}
    child = subprocess.Popen(
        [sys.executable, "-c", script], env=environment, stdout=subprocess.PIPE, text=True
    )
    assert child.stdout is not None
    told: dict[str, Any] = json.loads(child.stdout.readline())
    child.send_signal(signal.SIGKILL)
    child.wait()
    child.stdout.close()
    assert child.returncode == -signal.SIGKILL
    return told


@pytest.fixture
def opens(qapp: QApplication, qtbot) -> Iterator[Callable[[], Keeper]]:
    """Opens the program as often as a story needs, each time with the same data."""
    started: list[Start] = []

    def opened() -> Keeper:
        start = Start(qapp)
        started.append(start)
        qtbot.addWidget(start.frame)
        return Keeper(qtbot, start)

    yield opened
    for start in started:
        start.close()


@pytest.fixture
def keeper(opens: Callable[[], Keeper]) -> Keeper:
    return opens()
