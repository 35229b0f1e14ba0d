"""The program works with the network cut, and never asks for it."""

import socket
from pathlib import Path

import pytest

from tests.hardening.child import NO_CONNECTION, cut_off, ran

CLI = (
    NO_CONNECTION
    + """
from idkey.cli.commands import main
sys.exit(main(sys.argv[1:]))
"""
)

SAMPLE = (
    NO_CONNECTION
    + """
from idkey.cli.without_window import run
sys.exit(run(walk=False))
"""
)

WINDOW = (
    NO_CONNECTION
    + """
from PySide6.QtWidgets import QApplication
from idkey.app.window.main import Start

app = QApplication(["idkey"])
start = Start(app)
start.opened.connect(lambda: start.program.window.commands.run("sample"))
start.opened.connect(app.quit)
app.exec()
print(start.program.window.bench.verdict.sentence)
start.close()
print(sorted(name for name in sys.modules if name == "PySide6.QtNetwork"))
"""
)

PLACES = (
    NO_CONNECTION
    + """
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from idkey import places
from idkey.app.window.main import Start
from idkey.app.workshop.pages import workshop_pages
from idkey.app.workshop.printing import Form, printed
from idkey.formats.folder import read_key
from idkey.formats.package import write_package
from idkey.report.language import ENGLISH
from idkey.report.printed_figures import Drawings
from idkey.report.printed_key import Layout

LEAVES = places.keys_folder() / "kitchen-leaves"

def work():
    program = start.program
    rooms = program.window.rooms
    for place in ("records", "drill", "library", "workshop"):
        program.window.commands.run(place)
        print(place, type(rooms.currentWidget()).__name__)
    workshop = program.workshop
    rooms.edit_key(workshop.copy(LEAVES, "my-leaves"))
    for page in workshop_pages():
        assert rooms.workshop.go_to(page.id) is not None
    program.window.commands.run("manual")
    folder = places.data_folder()
    key = read_key(LEAVES)
    write_package(key, folder / "leaves.idkey", folder=LEAVES, images=places.images_folder())
    drawings = Drawings(images=places.images_folder())
    for form, ending in ((Form.PDF, "pdf"), (Form.HTML, "html")):
        file = folder / f"leaves.{ending}"
        layout = Layout.BRACKETED
        printed(key, form, file, layout=layout, language=ENGLISH, drawings=drawings)
    QTimer.singleShot(2_000, start.frame.close)

app = QApplication(["idkey"])
start = Start(app)
start.opened.connect(work)
app.exec()
start.close()
"""
)


def test_the_guard_of_these_tests_notices_a_connection(tmp_path: Path):
    tried = ran(
        NO_CONNECTION + "import socket; socket.create_connection(('127.0.0.1', 9))", data=tmp_path
    )

    assert tried.returncode == 1
    assert "the network was asked for: socket." in tried.stderr


def test_the_cut_leaves_no_network(tmp_path: Path):
    if not cut_off():
        pytest.skip("this machine does not let us cut the network of a process")
    with socket.socket() as here:
        here.bind(("127.0.0.1", 0))
        here.listen()
        port = here.getsockname()[1]

        script = f"import socket; socket.create_connection(('127.0.0.1', {port}), 5)"
        outside = ran(script, data=tmp_path)
        inside = ran(script, data=tmp_path, before=cut_off())

    assert (outside.returncode, inside.returncode) == (0, 1)


@pytest.mark.slow
def test_the_sample_case_is_judged_and_written_without_a_network(tmp_path: Path):
    ended = ran(SAMPLE, data=tmp_path, before=cut_off())

    assert (ended.stderr, ended.returncode) == ("", 0)
    assert "CONTRADICTED" in ended.stdout
    assert len(list(tmp_path.rglob("*.pdf"))) == 1


def test_a_label_is_looked_up_without_a_network(tmp_path: Path):
    ended = ran(CLI, "labels", "emperor scorpion", data=tmp_path, before=cut_off())

    assert (ended.stderr, ended.returncode) == ("", 0)
    assert "Pandinus imperator" in ended.stdout


@pytest.mark.slow
def test_the_window_opens_and_judges_without_a_network(tmp_path: Path):
    ended = ran(WINDOW, data=tmp_path, before=cut_off())

    assert ended.returncode == 0, ended.stderr
    sentence, modules = ended.stdout.strip().splitlines()[-2:]
    assert "Heterometrus" in sentence
    assert modules == "[]"


@pytest.mark.slow
def test_every_place_opens_and_keys_go_out_without_a_network(tmp_path: Path):
    ended = ran(PLACES, data=tmp_path, before=cut_off())

    assert ended.returncode == 0, ended.stderr
    assert "Error" not in ended.stderr
    assert len({line.split()[1] for line in ended.stdout.splitlines()}) == 4
    assert {file.suffix for file in tmp_path.glob("leaves.*")} == {".idkey", ".pdf", ".html"}
