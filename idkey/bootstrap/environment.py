"""An environment of its own, made, extended or mended as needed, and the step into it."""

import importlib.util
import json
import os
import subprocess
import sys
from collections import deque
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from hashlib import sha256
from pathlib import Path

from idkey.bootstrap import libraries as system
from idkey.bootstrap import requirement
from idkey.bootstrap.libraries import Library, SetUpError

STAMP = "idkey-stamp.json"
AGAIN = "IDKEY_SET_UP_ONCE"
"""Environment variable that says: this start follows a set-up; do not set up a second time."""

SHELVED = "IDKEY_LIBRARIES_FETCHED"
"""Environment variable that says: system libraries were just fetched; do not fetch again."""

PIP = ("-m", "pip", "--disable-pip-version-check", "--no-input")


def set_up(
    module: str, argv: list[str], *, extra: str = "", libraries: tuple[Library, ...] = ()
) -> None:
    """Return when everything is there; else make it so and start `module` again inside.

    Args:
        module: What to start again, as after ``python3 -m``.
        argv: Its arguments.
        extra: Extra of `pyproject.toml` that is needed too.
        libraries: System libraries that are needed; checked before anything is downloaded.

    Raises:
        SetUpError: A person has to do something first; the text says what.
    """
    again = os.environ.pop(AGAIN, "")
    lines = requirement.from_checkout(extra)
    missing = requirement.missing(lines)
    if missing and again:
        raise SetUpError(
            f"The environment {sys.prefix} still lacks: {', '.join(missing)}.\n"
            f"Delete that folder and start again."
        )
    if missing:
        ready = next((f for f in _folders() if is_ready(f, lines)), None)
        if ready and Path(sys.prefix) != ready:
            _start(python_of(ready), module, argv)
    _see_to(libraries, module, argv)
    if missing:
        folder = next(f for f in _folders() if _writable(f))
        with _alone():
            if Path(sys.prefix) == folder or not is_ready(folder, lines):
                make(folder, lines)
        _start(python_of(folder), module, argv, {AGAIN: "1"})


def mend(module: str, argv: list[str]) -> None:
    """Install again what lost files, and start again; return when that cannot help."""
    names = requirement.damaged()
    if not names or AGAIN in os.environ or not (Path(sys.prefix) / STAMP).is_file():
        return
    say(f"mending {', '.join(names)}")
    _pip(Path(sys.prefix), ["--force-reinstall", "--no-deps", *names])
    _start(sys.executable, module, argv, {AGAIN: "1"})


def make(folder: Path, lines: tuple[str, ...]) -> None:
    """Make, extend or repair the environment in `folder` so that it meets `lines`.

    Raises:
        SetUpError: It cannot be made; the text says what to do.
    """
    python = python_of(folder)
    (folder / STAMP).unlink(missing_ok=True)
    usable = _answer(python, "import pip, sys; print(sys.implementation.cache_tag)")
    old = usable == sys.implementation.cache_tag
    if old:
        say(f"completing the environment in {folder}")
    else:
        say(f"first start: making an environment in {folder} (once; some 150 to 250 MB to fetch)")
        _fresh(folder)
    _pip(folder, list(lines))
    if old:
        probe = "from idkey.bootstrap.requirement import damaged; print(*damaged())"
        if names := _answer(python, probe).split():
            say(f"mending {', '.join(names)}")
            _pip(folder, ["--force-reinstall", "--no-deps", *names])
    stamp = {"python": sys.implementation.cache_tag, "requirements": sorted(lines)}
    (folder / STAMP).write_text(json.dumps(stamp, indent=1), "utf-8")
    say("ready")


def is_ready(folder: Path, lines: tuple[str, ...]) -> bool:
    """Whether the stamp says that `folder` was made by this Python and meets `lines`."""
    try:
        stamp = json.loads((folder / STAMP).read_text("utf-8"))
        same = stamp["python"] == sys.implementation.cache_tag
        return same and set(lines) <= set(stamp["requirements"]) and python_of(folder).exists()
    except (OSError, ValueError, KeyError, TypeError):
        return False


def python_of(folder: Path) -> Path:
    """The interpreter of an environment."""
    return folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def say(line: str) -> None:
    """One line of progress on the error stream, which a program without a console lacks."""
    if sys.stderr:
        sys.stderr.write(f"idkey: {line}\n")
        sys.stderr.flush()


def cache_folder() -> Path:
    """The user's cache folder for this program; it may not exist yet."""
    home = Path.home()
    if os.name == "nt":
        root = Path(os.environ.get("LOCALAPPDATA") or home / "AppData/Local")
    elif sys.platform == "darwin":
        root = home / "Library/Caches"
    else:
        root = Path(os.environ.get("XDG_CACHE_HOME") or home / ".cache")
    return root / "idkey"


def _folders() -> tuple[Path, Path]:
    """Where the environment may be: in the checkout, else in the user's cache."""
    checkout = str(requirement.ROOT)
    return (
        requirement.ROOT / ".venv",
        cache_folder() / f"environment-{sha256(checkout.encode()).hexdigest()[:8]}",
    )


def _writable(folder: Path) -> bool:
    if folder.parent == requirement.ROOT:
        return os.access(folder if folder.exists() else folder.parent, os.W_OK)
    folder.parent.mkdir(parents=True, exist_ok=True)
    return True


def _fresh(folder: Path) -> None:
    absent = [name for name in ("venv", "ensurepip") if not importlib.util.find_spec(name)]
    if absent:
        raise SetUpError(
            f"This Python cannot make environments: it lacks {' and '.join(absent)}.\n"
            f"On Debian and Ubuntu please run:\n  sudo apt-get install python3-venv"
        )
    import venv

    try:
        venv.EnvBuilder(with_pip=True, clear=True, symlinks=os.name != "nt").create(folder)
    except (OSError, subprocess.CalledProcessError) as err:
        raise SetUpError(
            f"No environment could be made in {folder}: {err}.\n"
            f"Look whether the disk has room (some 900 MB) and the folder may be written."
        ) from err


def _pip(folder: Path, arguments: list[str]) -> None:
    last: deque[str] = deque(maxlen=12)
    command = [str(python_of(folder)), *PIP, "install", "--progress-bar", "off", *arguments]
    with subprocess.Popen(  # noqa: S603 - the environment's own pip
        command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True
    ) as pip:
        for line in pip.stdout or ():
            last.append(line.rstrip())
            if line.startswith("Collecting "):
                say(f"  fetching {line.split()[1]}")
            elif line.startswith("Installing collected"):
                say(f"  installing {line.count(',') + 1} packages")
    if pip.returncode:
        raise SetUpError(
            "pip could not install what the program needs. Its last words:\n  "
            + "\n  ".join(last)
            + "\nLook whether the network is reachable and the disk has room; then start again."
        )


def _see_to(libraries: tuple[Library, ...], module: str, argv: list[str]) -> None:
    """Start again with the shelf of libraries where that is what it takes."""
    lacking = system.lacking(libraries)
    if not lacking:
        os.environ.pop(SHELVED, None)
        return
    shelf = cache_folder() / "libraries"
    looked = os.environ.get("LD_LIBRARY_PATH", "")
    more = {}
    if set(system.search_path(shelf)) <= set(looked.split(":")):
        if SHELVED in os.environ:
            raise system.request(lacking)
        if not system.provide(lacking, shelf, say):
            return
        more = {SHELVED: "1"}
    path = ":".join([*system.search_path(shelf), *([looked] if looked else [])])
    _start(sys.executable, module, argv, {**more, "LD_LIBRARY_PATH": path})


def _start(
    python: Path | str, module: str, argv: list[str], more: dict[str, str] | None = None
) -> None:
    """Go on as `module` under another interpreter; does not return."""
    command = [str(python), "-m", module, *argv]
    environment = {**os.environ, **(more or {})}
    if os.name == "nt":
        raise SystemExit(subprocess.call(command, env=environment))  # noqa: S603 - ourselves
    os.execve(python, command, environment)  # noqa: S606 - ourselves


def _answer(python: Path, script: str) -> str:
    """What the interpreter prints for a script; empty when it does not run."""
    with suppress(OSError):
        ended = subprocess.run(  # noqa: S603 - our own script
            [python, "-c", script],
            cwd=requirement.ROOT,
            capture_output=True,
            text=True,
            check=False,
        )
        return ended.stdout.strip() if ended.returncode == 0 else ""
    return ""


@contextmanager
def _alone() -> Iterator[None]:
    """Keep a second start waiting while the environment is being made."""
    try:
        import fcntl
    except ImportError:  # Windows: pip itself refuses files in use
        yield
        return
    cache_folder().mkdir(parents=True, exist_ok=True)
    with (cache_folder() / "set-up.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield
