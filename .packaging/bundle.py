"""Builds a folder that runs without Python: `python3 .packaging/bundle.py [FOLDER]`.

Makes an environment of its own below FOLDER (default: build/bundle), installs the program and
PyInstaller there, bundles, and starts the result once to see that it judges the sample case.
"""

import os
import shutil
import subprocess
import sys
import tempfile
import venv
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent
PYINSTALLER = "pyinstaller>=6.10,<7"


def main() -> int:
    """Build, try, and say where the bundle lies.

    Returns:
        Exit code: 0 done, 1 the bundle does not do its work.
    """
    work = Path(sys.argv[1] if len(sys.argv) > 1 else ROOT / "build" / "bundle").resolve()
    python = _environment(work / "environment")
    _run(python, "-m", "pip", "install", "--quiet", str(ROOT), PYINSTALLER)
    _run(
        python, "-m", "PyInstaller", "--noconfirm", "--log-level", "WARN",
        "--distpath", str(work / "dist"), "--workpath", str(work / "build"),
        str(HERE / "idkey.spec"),
    )  # fmt: skip
    bundle = work / "dist" / "idkey"
    program = bundle / ("idkey.exe" if os.name == "nt" else "idkey")
    _strip(bundle)
    size = sum(file.stat().st_size for file in _files(bundle))
    sys.stdout.write(f"{bundle}: {size / 1e6:.0f} MB\n")
    return _try(program)


def _environment(folder: Path) -> Path:
    if not folder.is_dir():
        venv.EnvBuilder(with_pip=True).create(folder)
    return folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def _run(*command: Path | str) -> None:
    subprocess.run(command, check=True, cwd=tempfile.gettempdir())  # noqa: S603 - our own words


def _strip(bundle: Path) -> None:
    """Leave out what only a debugger reads, where the machine has the tool for it.

    Libraries in folders named ``.libs`` were rewritten after they were linked, and do not stand it.
    """
    tool = shutil.which("strip")
    shared = (file for file in _files(bundle) if ".so" in file.name)
    wanted = [file for file in shared if not _rewritten(file)]
    if tool and wanted:
        _run(tool, "--strip-debug", *wanted)


def _rewritten(file: Path) -> bool:
    return any(folder.endswith(".libs") for folder in file.parts)


def _files(folder: Path) -> list[Path]:
    return [file for file in folder.rglob("*") if file.is_file() and not file.is_symlink()]


def _try(program: Path) -> int:
    """Whether the bundle judges the sample case, in an environment that has no Python."""
    with tempfile.TemporaryDirectory() as data:
        ended = subprocess.run(  # noqa: S603 - what was just built
            [program, "--sample"],
            env={"PATH": "", "HOME": data, "IDKEY_DATA": data, "LC_ALL": "C.UTF-8"},
            capture_output=True,
            text=True,
            encoding="utf-8",
            check=False,
        )
        written = len(list(Path(data).rglob("*.pdf")))
    if ended.returncode or "CONTRADICTED" not in ended.stdout or written != 1:
        sys.stdout.write(f"{ended.stdout}\n{ended.stderr}\n")
        return 1
    sys.stdout.write("the bundle judges the sample case and writes its rationale\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
