"""A second start shows the first window instead of opening another."""

import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from idkey.app.window.doorbell import Doorbell

pytestmark = pytest.mark.usefixtures("qapp")

HOME = """
import sys
from pathlib import Path
from PySide6.QtCore import QCoreApplication
from idkey.app.window.doorbell import Doorbell

app = QCoreApplication([])
bell = Doorbell(Path(sys.argv[1]))
print(bell.answer(), flush=True)
sys.stdin.readline()
"""


@pytest.fixture
def bell(tmp_path: Path) -> Iterator[Doorbell]:
    made = Doorbell(tmp_path)
    assert made.answer()
    yield made
    made.leave()


def at_home(folder: Path) -> subprocess.Popen[str]:
    """Another program that wants to be the one at home."""
    return subprocess.Popen(
        [sys.executable, "-c", HOME, folder],
        cwd=Path(__file__).parents[2],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    )


@pytest.mark.usefixtures("bell")
def test_a_second_program_is_not_the_one_at_home(tmp_path: Path):
    with at_home(tmp_path) as other:
        said, _ = other.communicate("\n")

    assert said == "False\n"


def test_what_to_open_reaches_the_one_at_home(bell: Doorbell, tmp_path: Path, qtbot):
    visitor = Doorbell(tmp_path)

    with qtbot.waitSignal(bell.rung, timeout=5_000) as rung:
        visitor.ring("/keys/größer & besser.idkey")

    assert rung.args == ["/keys/größer & besser.idkey"]
    assert list(tmp_path.rglob("*.note")) == []


def test_somebody_who_was_killed_is_not_at_home(tmp_path: Path):
    with at_home(tmp_path) as other:
        assert other.stdout.readline() == "True\n"
        other.kill()
        other.communicate()
    late = Doorbell(tmp_path)

    answered = late.answer()
    late.leave()

    assert answered


def test_after_leaving_the_next_one_may_come_in(tmp_path: Path):
    first, second = Doorbell(tmp_path), Doorbell(tmp_path)
    first.answer()
    first.leave()

    answered = second.answer()
    second.leave()

    assert answered
