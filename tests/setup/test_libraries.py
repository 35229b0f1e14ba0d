"""System libraries that are lacking are named with the command that brings them."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from idkey.bootstrap.libraries import QT, WINDOW, Library, commands, lacking, request, search_path

ROOT = Path(__file__).parents[2]
NOWHERE = Library("libnowhere-idkey.so.7", "libnowhere7", "nowhere")
linux = pytest.mark.skipif(not sys.platform.startswith("linux"), reason="libraries of Linux")

AT_A_TERMINAL = """
from pathlib import Path
from idkey.bootstrap.libraries import Library, SetUpError, provide
try:
    provide((Library("libnowhere-idkey.so.7", "libnowhere7", "nowhere"),), Path("never"), print)
except SetUpError as err:
    print(err)
"""


@linux
def test_a_library_that_does_not_exist_is_lacking_and_libc_is_not():
    assert lacking((NOWHERE, Library("libc.so.6", "libc6", "glibc"))) == (NOWHERE,)


def test_the_machine_that_runs_these_tests_has_what_qt_needs():
    assert lacking(QT) == ()


def test_a_window_needs_all_that_qt_needs_and_more():
    assert set(QT) < set(WINDOW)


def test_without_apt_and_dnf_both_lines_are_given(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setenv("PATH", "")

    assert commands((NOWHERE,)) == (
        "  sudo apt-get install -y --no-install-recommends libnowhere7\n"
        "  sudo dnf install -y nowhere"
    )


def test_the_request_names_the_library_and_the_packages():
    text = str(request((NOWHERE,)))

    assert "libnowhere-idkey.so.7" in text
    assert "libnowhere7" in text or "nowhere" in text


@linux
def test_a_person_at_a_terminal_is_asked_and_nothing_is_installed():
    import pty

    ours, theirs = pty.openpty()
    with subprocess.Popen(
        [sys.executable, "-c", AT_A_TERMINAL], cwd=ROOT, stdin=theirs, stdout=theirs, stderr=theirs
    ) as asked:
        os.close(theirs)
        said = b""
        while asked.poll() is None or b"run" not in said:
            try:
                said += os.read(ours, 4096)
            except OSError:  # Linux says so at the end of a terminal
                break
    os.close(ours)

    assert b"Please run:" in said
    assert b"nowhere" in said
    assert not (ROOT / "never").exists()


def test_folders_of_the_shelf_are_those_with_libraries(tmp_path: Path):
    for name in ("usr/lib/x86_64-linux-gnu/libfirst.so.1", "lib/libsecond.so.2.3", "usr/doc/a.txt"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).touch()

    assert search_path(tmp_path) == (
        str(tmp_path / "lib"),
        str(tmp_path / "usr/lib/x86_64-linux-gnu"),
    )
