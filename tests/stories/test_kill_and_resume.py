"""Power cut: kill -9 while something is half done, and go on where it was."""

from collections.abc import Callable

import pytest

from tests.stories.conftest import CTRL, KEY, Keeper, killed

CHILD = """
import json, sys
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from idkey.app.window.main import Start

app = QApplication(["idkey"])
start = Start(app)

def told(state):
    sys.stdout.write(json.dumps(state) + "\\n")
    sys.stdout.flush()

def work():
    focus = QApplication.focusWidget
    QTest.keyClicks(focus(), "Emperor scorpion")
    QTest.keyClick(focus(), Qt.Key.Key_Return)
    QTest.keyClick(focus(), Qt.Key.Key_1)
    QTest.keyClick(focus(), Qt.Key.Key_Return)
    program = start.program
    program.window.bench.middle.ask("total_length")
    QTest.keyClicks(focus(), "112")
    session = program.state.session
    program.window.commands.run("new_case")
    QTest.keyClicks(focus(), "Black sco")
    program.keeper.settled.connect(lambda: told({
        "first": session.case.id,
        "findings": [f.character for f in session.case.findings],
        "second": program.state.session.case.id,
    }))

start.opened.connect(work)
app.exec()
"""


@pytest.mark.slow
def test_a_killed_program_resumes_with_its_cases_and_what_was_half_typed(
    opens: Callable[[], Keeper],
):
    told = killed(CHILD)

    keeper = opens()

    assert keeper.program.keeper.store.verify() == ()
    assert keeper.session.open == (told["first"], told["second"])
    assert keeper.session.case.id == told["second"]
    assert keeper.bench.claim.label.text() == "Black sco"
    keeper.presses(KEY.Key_PageUp, CTRL)
    assert keeper.session.case.claim.text == "Emperor scorpion"
    assert [f.character for f in keeper.session.case.findings] == told["findings"]
    assert told["findings"]
    assert keeper.session.asked == "total_length"
    assert keeper.bench.middle.question.entry.number.text() == "112"
