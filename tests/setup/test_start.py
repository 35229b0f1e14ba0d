"""`python3 -m idkey` on machines without packages, without a display, without a terminal."""

import json
import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from idkey import __version__

ROOT = Path(__file__).parents[2]
NO_SITE = "-S"
"""Option of Python that hides every installed package."""


def start(
    *argv: str, data: Path, options: tuple[str, ...] = ()
) -> subprocess.CompletedProcess[str]:
    """Start it without display and terminal."""
    hidden = {"DISPLAY", "WAYLAND_DISPLAY"}
    kept = {name: value for name, value in os.environ.items() if name not in hidden}
    return subprocess.run(
        [sys.executable, *options, "-m", *argv],
        cwd=ROOT,
        env={**kept, "IDKEY_DATA": str(data)},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )


@pytest.mark.parametrize("module", ["idkey", "idkey.cli"])
def test_the_version_needs_no_package(module: str, tmp_path: Path):
    told = start(module, "--version", data=tmp_path, options=(NO_SITE,))

    assert (told.stdout, told.stderr, told.returncode) == (f"idkey {__version__}\n", "", 0)


@pytest.mark.parametrize("module", ["idkey", "idkey.cli", "tests"])
def test_help_needs_no_package(module: str, tmp_path: Path):
    told = start(module, "--help", data=tmp_path, options=(NO_SITE,))

    assert told.stdout.startswith("Usage: ")
    assert (told.stderr, told.returncode) == ("", 0)


@pytest.mark.slow
def test_without_display_and_terminal_the_sample_case_is_judged_and_written_down(tmp_path: Path):
    ended = start("idkey", data=tmp_path)

    assert (ended.stderr, ended.returncode) == ("", 0)
    assert "CONTRADICTED: Heterometrus cf. silenus" in ended.stdout
    assert "Lantern Street Vivarium" in ended.stdout
    written = [
        Path(line.removeprefix("wrote "))
        for line in ended.stdout.splitlines()
        if line.startswith("wrote ")
    ]
    assert [file.suffix for file in written] == [".pdf", ".json"]
    assert written[0].read_bytes().startswith(b"%PDF-")
    assert "Emperor scorpion" in json.dumps(json.loads(written[1].read_text("utf-8")))
    assert all(file.is_relative_to(tmp_path) for file in written)


@pytest.fixture
def terminal() -> Iterator[tuple[int, int]]:
    """Our end and their end of a terminal."""
    pty = pytest.importorskip("pty", reason="terminals of Unix")
    ours, theirs = pty.openpty()
    yield ours, theirs
    os.close(ours)


@pytest.mark.slow
def test_without_display_but_at_a_terminal_a_case_is_walked(
    terminal: tuple[int, int], tmp_path: Path
):
    ours, theirs = terminal
    hidden = {"DISPLAY", "WAYLAND_DISPLAY"}
    kept = {name: value for name, value in os.environ.items() if name not in hidden}
    with subprocess.Popen(
        [sys.executable, "-m", "idkey"],
        cwd=ROOT,
        env={**kept, "IDKEY_DATA": str(tmp_path)},
        stdin=theirs,
        stdout=theirs,
        stderr=theirs,
    ) as walk:
        os.close(theirs)
        os.write(ours, b"Emperor scorpion\n1\n3\n3\n1\nstop\n")
        said = _all_that_is_said(ours)

    assert walk.returncode == 0
    assert "What does the label say?" in said
    assert "properly covers Pandinus imperator" in " ".join(said.split())
    assert len(list((tmp_path / "rationales").glob("*.pdf"))) == 1


def _all_that_is_said(ours: int) -> str:
    said = b""
    while True:
        try:
            part = os.read(ours, 65536)
        except OSError:  # how Linux says that the other end was closed
            return said.decode()
        if not part:
            return said.decode()
        said += part
