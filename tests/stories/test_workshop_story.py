"""Power cut in the workshop: kill -9 in the middle of editing, and go on where it was."""

from collections.abc import Callable

import pytest

from tests.stories.conftest import CTRL, KEY, Keeper, killed

CHILD = """
import json, sys
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from idkey import places
from idkey.app.window.main import Start

app = QApplication(["idkey"])
start = Start(app)

def work():
    program = start.program
    workshop = program.workshop
    own = workshop.copy(places.keys_folder() / "kitchen-leaves", "my-leaves")
    start.frame.activateWindow()
    program.window.commands.run("workshop")
    program.window.rooms.workshop.open(own)
    grid = program.window.rooms.workshop.stack.currentWidget().grid
    cell = grid.cell
    QTest.keyClick(grid, Qt.Key.Key_Delete)
    for sign in "zzz":
        QTest.keyClick(QApplication.focusWidget(), sign)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)

    def told():
        words = workshop.editing.past[-1].words
        sys.stdout.write(json.dumps({"cell": cell, "words": words}) + "\\n")
        sys.stdout.flush()

    workshop.drafts.settled.connect(told)

start.opened.connect(work)
app.exec()
"""


@pytest.mark.slow
def test_a_killed_workshop_resumes_with_its_unsaved_work(opens: Callable[[], Keeper]):
    told = killed(CHILD)

    keeper = opens()
    keeper.presses(KEY.Key_4, CTRL)
    workshop = keeper.program.workshop

    assert workshop.editing.folder.name == "my-leaves"
    assert tuple(told["cell"]) not in workshop.editing.key.cells
    assert tuple(told["cell"]) in workshop.editing.saved.cells
    assert workshop.editing.past[-1].words == told["words"]
    view = keeper.program.window.rooms.workshop
    assert "not saved yet" in view.head.version.text()
    keeper.presses(KEY.Key_Z, CTRL)
    assert not workshop.editing.dirty
