"""A checkout sets itself up, goes on, grows and heals; tried on a small one of its own."""

import json
import os
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from idkey.bootstrap import environment

ROOT = Path(__file__).parents[2]

START = """
import sys
from idkey.bootstrap import environment
from idkey.bootstrap.libraries import SetUpError
try:
    environment.set_up("start", sys.argv[1:])
except SetUpError as err:
    sys.exit(f"asked: {err}")
try:
    import small
    print(sys.prefix, small.VERSION, sys.argv[1:])
except ImportError:
    environment.mend("start", sys.argv[1:])
    raise
"""


def wheel(folder: Path, name: str, version: str) -> None:
    """Write a wheel with one module that knows its version."""
    stem = f"{name}-{version}"
    with zipfile.ZipFile(folder / f"{stem}-py3-none-any.whl", "w") as packed:
        packed.writestr(f"{name}.py", f"VERSION = {version!r}\n")
        packed.writestr(
            f"{stem}.dist-info/METADATA",
            f"Metadata-Version: 2.1\nName: {name}\nVersion: {version}\n",
        )
        packed.writestr(
            f"{stem}.dist-info/WHEEL",
            "Wheel-Version: 1.0\nRoot-Is-Purelib: true\nTag: py3-none-any\n",
        )
        listed = [f"{name}.py", *(f"{stem}.dist-info/{n}" for n in ("METADATA", "WHEEL", "RECORD"))]
        packed.writestr(f"{stem}.dist-info/RECORD", "".join(f"{one},,\n" for one in listed))


class Checkout:
    """A checkout with the real set-up and one small requirement; no network."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder / "checkout"
        self.home = folder / "home"
        self.wheels = folder / "wheels"
        for one in (self.folder / "idkey", self.home, self.wheels):
            one.mkdir(parents=True)
        shutil.copy(ROOT / "idkey" / "__init__.py", self.folder / "idkey")
        shutil.copytree(ROOT / "idkey" / "bootstrap", self.folder / "idkey" / "bootstrap")
        (self.folder / "start.py").write_text(START, "utf-8")
        for version in ("1.0", "2.0"):
            wheel(self.wheels, "small", version)
        self.needs("small==1.0")

    def needs(self, *lines: str) -> None:
        """Write the requirements."""
        text = f"[project]\ndependencies = {json.dumps(lines)}\n"
        (self.folder / "pyproject.toml").write_text(text, "utf-8")

    def start(self, *argv: str, script: str = "") -> subprocess.CompletedProcess[str]:
        """Start it as a person would, with the Python these tests run under."""
        kept = {name: os.environ[name] for name in ("PATH", "SYSTEMROOT") if name in os.environ}
        home = {"HOME": str(self.home), "LOCALAPPDATA": str(self.home)}
        pip = {
            "PIP_NO_INDEX": "1",
            "PIP_FIND_LINKS": str(self.wheels),
            "PIP_CONFIG_FILE": os.devnull,
        }
        return subprocess.run(
            [sys.executable, *(["-c", script] if script else ["-m", "start"]), *argv],
            cwd=self.folder,
            env={**kept, **home, **pip},
            capture_output=True,
            text=True,
            check=False,
        )


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Checkout:
    """A checkout after its first start."""
    checkout = Checkout(tmp_path_factory.mktemp("made"))
    first = checkout.start("--open", "a b")
    assert first.returncode == 0, first.stderr
    assert f"making an environment in {checkout.folder / '.venv'}" in first.stderr
    assert first.stdout.split(maxsplit=2) == [
        str(checkout.folder / ".venv"),
        "1.0",
        "['--open', 'a b']\n",
    ]
    return checkout


@pytest.mark.slow
class TestACheckout:
    """Each test leaves it in working order."""

    def test_starts_a_second_time_without_a_word(self, made: Checkout):
        second = made.start()

        assert second.stderr == ""
        assert str(made.folder / ".venv") in second.stdout

    def test_grows_when_the_requirements_change(self, made: Checkout):
        made.needs("small>=2")

        grown = made.start()

        assert "completing the environment" in grown.stderr
        assert " 2.0 " in grown.stdout
        assert made.start().stderr == ""

    def test_mends_a_file_that_went_missing(self, made: Checkout):
        (lost,) = (made.folder / ".venv").rglob("small.py")
        lost.unlink()
        shutil.rmtree(lost.parent / "__pycache__", ignore_errors=True)

        mended = made.start()

        assert "mending small" in mended.stderr
        assert mended.returncode == 0

    def test_completes_an_environment_whose_making_was_cut_short(self, made: Checkout):
        (made.folder / ".venv" / environment.STAMP).unlink()
        (lost,) = (made.folder / ".venv").rglob("small.py")
        lost.unlink()

        completed = made.start()

        assert "mending small" in completed.stderr
        assert completed.returncode == 0

    def test_remakes_an_environment_without_a_working_python(self, made: Checkout):
        environment.python_of(made.folder / ".venv").unlink()

        remade = made.start()

        assert "making an environment" in remade.stderr
        assert remade.returncode == 0

    def test_says_so_when_pip_cannot_bring_a_requirement(self, made: Checkout):
        made.needs("small>=3")

        failed = made.start()
        made.needs("small>=2")

        assert "asked: pip could not install" in failed.stderr
        assert "small>=3" in failed.stderr
        assert "network" in failed.stderr
        assert made.start().returncode == 0


def test_without_ensurepip_the_package_to_install_is_named(tmp_path: Path):
    checkout = Checkout(tmp_path)
    hidden = f"import sys; sys.modules['ensurepip'] = None\n{START}"

    asked = checkout.start(script=hidden)

    assert asked.returncode == 1
    assert asked.stderr.endswith(
        "asked: This Python cannot make environments: it lacks ensurepip.\n"
        "On Debian and Ubuntu please run:\n  sudo apt-get install python3-venv\n"
    )


def test_nothing_is_made_when_the_running_python_has_everything(tmp_path: Path):
    checkout = Checkout(tmp_path)
    checkout.needs("pytest>=8")

    started = checkout.start()

    assert "No module named 'small'" in started.stderr
    assert not (checkout.folder / ".venv").exists()


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="root may write everywhere")
@pytest.mark.slow
def test_a_checkout_that_may_not_be_written_uses_the_users_cache(tmp_path: Path):
    checkout = Checkout(tmp_path)
    checkout.folder.chmod(0o500)

    started = checkout.start()
    checkout.folder.chmod(0o700)

    assert str(checkout.home / ".cache" / "idkey") in started.stdout


def test_a_stamp_of_another_python_is_not_trusted(tmp_path: Path):
    environment.python_of(tmp_path).parent.mkdir()
    environment.python_of(tmp_path).touch()
    stamp = {"python": sys.implementation.cache_tag, "requirements": ["a", "b"]}

    (tmp_path / environment.STAMP).write_text(json.dumps(stamp), "utf-8")
    assert environment.is_ready(tmp_path, ("a",))
    assert not environment.is_ready(tmp_path, ("a", "c"))

    (tmp_path / environment.STAMP).write_text(
        json.dumps({**stamp, "python": "cpython-39"}), "utf-8"
    )
    assert not environment.is_ready(tmp_path, ("a",))

    (tmp_path / environment.STAMP).write_text("{", "utf-8")
    assert not environment.is_ready(tmp_path, ("a",))
