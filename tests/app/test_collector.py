"""Garbage goes between two events of the UI thread, and nowhere else."""

import gc
import os
import subprocess
import sys
import threading
import weakref
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.parts import collector
from idkey.app.parts.collector import Collector, collect_if_due

STANDS_STILL = """
import gc, os
from PySide6.QtCore import QCoreApplication, QObject, QTimer, Signal
from idkey.app.parts.collector import Collector

class Left(QObject):
    gone = Signal()
    def __init__(self):
        super().__init__()
        self.itself = self
        self.gone.connect(self.hear)
    def hear(self):
        pass

class Timer(QTimer):
    pass

app = QCoreApplication([])
{collector}
for turn in range(1500):
    gc.set_threshold(100_000, 1000, 1000)
    left = [Left() for _ in range(300)]
    timer = Timer()
    connection = timer.timeout.connect(timer.stop)
    all_of_it, one = timer.timeout.disconnect, QObject.disconnect
    del left
    gc.set_threshold(max(1, gc.get_count()[0] + turn % 15 - 5), 1000, 1000)
    if turn % 4 < 2: all_of_it()
    else: one(connection)
    gc.set_threshold(100_000, 1000, 1000)
    gc.collect()
print("went on", flush=True)
os._exit(0)
"""
"""Qt holds one of its 131 locks while it disconnects, and asks the class for an override: this
makes Python objects. Garbage with a widget of the same lock must not be freed just then."""


@pytest.fixture
def enabled() -> Iterator[None]:
    """Python's own collector at work, as before a program starts."""
    gc.enable()
    yield
    gc.disable()


class Cycle(QObject):
    """Garbage once nobody else refers to it; tells on which thread it went."""

    def __init__(self, went: list[int]) -> None:
        super().__init__()
        self._itself = self
        weakref.finalize(self, lambda: went.append(threading.get_ident()))


@pytest.mark.usefixtures("enabled")
def test_python_collects_by_itself_only_outside_of_the_program(qtbot: QtBot):
    taken = Collector()
    within = gc.isenabled()
    second = Collector()
    second.leave()
    still = gc.isenabled()
    taken.leave()

    assert (within, still, gc.isenabled()) == (False, False, True)


def test_garbage_made_on_another_thread_goes_on_the_ui_thread(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
):
    monkeypatch.setattr(collector, "EVERY_MS", 10)
    went: list[int] = []
    taken = Collector()
    Cycle(went)

    def work() -> None:
        kept = [[n] for n in range(5000)]
        del kept

    maker = threading.Thread(target=work)
    maker.start()
    maker.join()
    assert went == []
    kept = [[n] for n in range(5000)]  # enough to make it due
    qtbot.waitUntil(lambda: bool(went))
    taken.leave()

    assert kept
    assert went == [threading.get_ident()]


def test_nothing_is_collected_before_it_is_due():
    gc.collect()

    assert collect_if_due() == 0


@pytest.mark.slow
def test_the_program_does_not_stand_still_over_garbage_while_qt_disconnects():
    script = STANDS_STILL.format(collector="collector = Collector()")
    ended = subprocess.run(
        [sys.executable, "-c", script],
        env={**os.environ, "PYTHONPATH": str(places.PACKAGE.parent)},
        check=True,
        capture_output=True,
        text=True,
        timeout=60,
    )

    assert ended.stdout == "went on\n"
