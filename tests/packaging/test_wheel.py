"""The wheel carries everything, and works where nothing else is."""

import os
import subprocess
import sys
import venv
import zipfile
from pathlib import Path

import pytest

from idkey import __version__

ROOT = Path(__file__).parents[2]

WINDOW = """
import pathlib, sys
from PySide6.QtWidgets import QApplication
import idkey
from idkey.app.window.main import Start

assert "site-packages" in idkey.__file__, idkey.__file__
app = QApplication(["idkey"])
start = Start(app)
start.opened.connect(lambda: start.program.window.commands.run("sample"))
start.opened.connect(app.quit)
app.exec()
print(start.program.window.bench.verdict.sentence)
start.close()
"""


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel of this checkout; needs what builds it, from here or from the network."""
    folder = tmp_path_factory.mktemp("wheel")
    command = [sys.executable, "-m", "pip", "wheel", "--no-deps", "--quiet"]
    ended = subprocess.run(
        [*command, "--wheel-dir", folder, ROOT], capture_output=True, text=True, check=False
    )
    if "No matching distribution found" in ended.stderr:
        pytest.skip("what builds a wheel cannot be fetched here")
    assert ended.returncode == 0, ended.stderr
    return next(folder.glob("*.whl"))


@pytest.mark.slow
def test_the_wheel_holds_keys_images_translations_and_the_manual(wheel: Path):
    with zipfile.ZipFile(wheel) as archive:
        inside = set(archive.namelist())

    carried = {
        f"idkey/_data/{file.relative_to(ROOT).as_posix()}"
        for top in ("keys", "images", "docs")
        for file in (ROOT / top).rglob("*")
        if file.is_file() and "__pycache__" not in file.parts
    }
    own = {
        file.relative_to(ROOT).as_posix()
        for file in (ROOT / "idkey").rglob("*")
        if file.is_file() and "__pycache__" not in file.parts
    }
    assert (carried | own) - inside == set()
    assert wheel.name.startswith(f"idkey-{__version__}-py3-none-any")
    assert not {name for name in inside if name.startswith("tests/")}


@pytest.mark.slow
def test_the_installed_wheel_lists_its_keys_and_judges_in_a_window(wheel: Path, tmp_path: Path):
    python = installed(wheel, tmp_path / "environment")
    environment = {**os.environ, "IDKEY_DATA": str(tmp_path / "data")}
    environment.pop("PYTHONPATH", None)

    listed = subprocess.run(
        [python.parent / "idkey-cli", "list"],
        cwd=tmp_path, env=environment, capture_output=True, text=True, check=False,
    )  # fmt: skip
    opened = subprocess.run(
        [python, "-c", WINDOW],
        cwd=tmp_path, env={**environment, "QT_QPA_PLATFORM": "offscreen"},
        capture_output=True, text=True, check=False,
    )  # fmt: skip

    assert (listed.returncode, listed.stderr) == (0, "")
    assert "large-dark-scorpions" in listed.stdout
    assert opened.returncode == 0, opened.stderr
    assert "Heterometrus" in opened.stdout


def installed(wheel: Path, folder: Path) -> Path:
    """The interpreter of a fresh environment with the wheel in it."""
    venv.EnvBuilder(with_pip=True).create(folder)
    python = folder / "bin" / "python"
    ended = subprocess.run(
        [python, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", wheel],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    if "No matching distribution found" in ended.stderr:
        pytest.skip("the libraries of the program cannot be fetched here")
    assert ended.returncode == 0, ended.stderr
    return python
