"""A mistake of the program costs a step, not a case; a crash at every start locks nobody out."""

import json
import logging
import os
import re
import stat
from pathlib import Path

import pytest

from idkey.app.parts.errors_log import FILE, LARGEST_BYTES, OLDER, ErrorsLog
from idkey.app.window.crash_guard import PATIENCE, CrashGuard
from tests.hardening.child import ran

GOING_ON = """
import json, sys
from PySide6.QtCore import QObject, QTimer, Slot
from PySide6.QtWidgets import QApplication
from idkey.app.window.frame import Frame
from idkey.app.window.main import run
from idkey.app.window.program import Program
from idkey.model.case import Claim

class Fault(QObject):
    @Slot()
    def fail(self):
        raise RuntimeError("planted, with nothing private in it")

class Person(QObject):
    def __init__(self):
        super().__init__()
        self.look = QTimer(self)
        self.look.timeout.connect(self.work)
        self.look.start(50)

    @Slot()
    def work(self):
        frames = [one for one in app.topLevelWidgets() if isinstance(one, Frame)]
        program = frames[0].findChild(Program) if frames else None
        if program is None or program.window is None:
            return
        self.look.stop()
        self.frame, self.program = frames[0], program
        program.state.claim(Claim(text="Emperor scorpion"))
        QTimer.singleShot(0, fault.fail)
        QTimer.singleShot(100, self.end)

    @Slot()
    def end(self):
        state, notice = self.program.state, self.program.window.notice.text
        state.ask("telson_colour")
        session = state.session
        told = {"notice": notice, "asked": session.asked, "label": session.case.claim.text}
        print(json.dumps(told), flush=True)
        self.frame.close()

app = QApplication(["idkey"])
fault, person = Fault(), Person()
sys.exit(run([]))
"""

STARTING = """
import json, os, signal, sys
from PySide6.QtWidgets import QApplication
from idkey.app.window.main import Start
from idkey.model.case import Claim

def work():
    program = start.program
    session, notice = program.state.session, program.window.notice.text
    if not notice:  # the case brings the program down, now and whenever it is opened again
        program.state.claim(Claim(text="Emperor scorpion"))
        program.keeper.flush()
        os.kill(os.getpid(), signal.SIGKILL)
    print(json.dumps({
        "cases": [one.label for one in program.keeper.store.recent(9)],
        "label": session.case.claim.text,
        "open": len(session.open),
        "notice": notice,
        "faults": len(program.keeper.store.verify()),
    }), flush=True)
    start.frame.close()

app = QApplication(["idkey"])
start = Start(app)
start.opened.connect(work)
app.exec()
start.close()
"""

TO_THE_WORKSHOP = """
import json, os, signal, sys
from dataclasses import replace
from PySide6.QtWidgets import QApplication
from idkey import places
from idkey.app.window.main import Start

def work():
    workshop, rooms = start.program.workshop, start.program.window.rooms
    if sys.argv[1] == "crash":  # as soon as it is shown, the key brings the program down
        workshop.changed.connect(lambda _: os.kill(os.getpid(), signal.SIGKILL))
    start.program.window.commands.run("workshop")
    if sys.argv[1] == "edit":
        workshop.open(workshop.copy(places.keys_folder() / "kitchen-leaves", "my-leaves"))
        key = workshop.editing.key
        workshop.change(replace(key, title="Half-way"), "Title")
    on_table = workshop.editing is not None
    workshop.drafts.flush()
    print(json.dumps([on_table, [one.name for one in workshop.drafts.folders()]]), flush=True)
    start.frame.close()

app = QApplication(["idkey"])
start = Start(app)
start.opened.connect(work)
app.exec()
start.close()
"""


@pytest.mark.slow
def test_after_an_unexpected_error_the_program_goes_on_and_tells_its_code(tmp_path: Path):
    ended = ran(GOING_ON, data=tmp_path)

    assert ended.returncode == 0, ended.stderr
    told = json.loads(ended.stdout.splitlines()[-1])
    code = re.search(r"report code ([0-9A-F]{6})\.", told["notice"])
    assert code, told
    log = (tmp_path / "log" / FILE).read_text("utf-8")
    assert code[1] in log
    assert "RuntimeError: planted" in log
    assert (told["label"], told["asked"]) == ("Emperor scorpion", "telson_colour")


@pytest.mark.slow
@pytest.mark.skipif(os.name == "nt", reason="signals of Unix")
def test_a_case_that_brings_down_every_start_is_not_opened_by_itself(tmp_path: Path):
    killed = [ran(STARTING, data=tmp_path).returncode for _ in range(PATIENCE)]
    careful = ran(STARTING, data=tmp_path)

    told = json.loads(careful.stdout)
    assert killed == [-9] * PATIENCE
    assert careful.returncode == 0
    assert told["cases"] == ["Emperor scorpion"]
    assert (told["label"], told["open"]) == ("", 1)
    assert "opened without the cases that were on the bench" in told["notice"]
    assert told["faults"] == 0
    assert CrashGuard(tmp_path).failed == 0


@pytest.mark.slow
@pytest.mark.skipif(os.name == "nt", reason="signals of Unix")
def test_unsaved_work_on_a_key_that_brings_the_program_down_is_not_taken_up_again(tmp_path: Path):
    left = ran(TO_THE_WORKSHOP, "edit", data=tmp_path)
    crashed = ran(TO_THE_WORKSHOP, "crash", data=tmp_path)
    careful = ran(TO_THE_WORKSHOP, "come", data=tmp_path)

    assert json.loads(left.stdout) == [True, ["my-leaves"]], left.stderr
    assert crashed.returncode == -9
    assert json.loads(careful.stdout) == [False, ["my-leaves"]], careful.stderr


def test_a_start_that_came_to_something_is_forgotten(tmp_path: Path):
    guard = CrashGuard(tmp_path)
    guard.begin()
    guard.done()

    assert CrashGuard(tmp_path).failed == 0


def test_starts_that_came_to_nothing_add_up_until_one_is_careful(tmp_path: Path):
    seen = []
    for _ in range(PATIENCE + 1):
        guard = CrashGuard(tmp_path)
        seen.append(guard.careful)
        guard.begin()

    assert seen == [False] * PATIENCE + [True]


@pytest.mark.parametrize("text", ["", "{", "[]", '{"under_way": "many"}', '{"under_way": -4}'])
def test_a_count_that_cannot_be_read_is_none(text: str, tmp_path: Path):
    (tmp_path / "starts.json").write_text(text, "utf-8")

    assert CrashGuard(tmp_path).failed == 0


@pytest.mark.usefixtures("qapp")
def test_the_log_turns_over_and_is_for_its_owner_alone(tmp_path: Path):
    log = ErrorsLog(tmp_path / "log")
    log.watch()

    for _ in range(40):
        logging.getLogger("idkey.test").error("x" * 100_000)
    log.leave()

    files = sorted((tmp_path / "log").glob(f"{FILE}*"))
    assert len(files) == OLDER + 1
    assert max(file.stat().st_size for file in files) <= LARGEST_BYTES
    assert os.name == "nt" or {stat.S_IMODE(f.stat().st_mode) for f in files} == {0o600}
