"""System libraries that Qt needs: which are lacking, and how they come."""

import ctypes
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

Say = Callable[[str], None]


class SetUpError(Exception):
    """The machine lacks something that a person has to bring; the text says what to do."""


@dataclass(frozen=True, slots=True)
class Library:
    """A system library.

    Attributes:
        soname: Name the loader knows it by.
        debian: Package on Debian and Ubuntu.
        fedora: Package on Fedora.
    """

    soname: str
    debian: str
    fedora: str


QT = (
    Library("libglib-2.0.so.0", "libglib2.0-0", "glib2"),
    Library("libGL.so.1", "libgl1", "libglvnd-glx"),
    Library("libEGL.so.1", "libegl1", "libglvnd-egl"),
    Library("libX11.so.6", "libx11-6", "libX11"),
    Library("libdbus-1.so.3", "libdbus-1-3", "dbus-libs"),
    Library("libfontconfig.so.1", "libfontconfig1", "fontconfig"),
    Library("libfreetype.so.6", "libfreetype6", "freetype"),
    Library("libxkbcommon.so.0", "libxkbcommon0", "libxkbcommon"),
)
"""What Qt needs at all, also off screen."""

WINDOW = (
    *QT,
    Library("libxcb-cursor.so.0", "libxcb-cursor0", "xcb-util-cursor"),
    Library("libxcb-icccm.so.4", "libxcb-icccm4", "xcb-util-wm"),
    Library("libxcb-image.so.0", "libxcb-image0", "xcb-util-image"),
    Library("libxcb-keysyms.so.1", "libxcb-keysyms1", "xcb-util-keysyms"),
    Library("libxcb-render-util.so.0", "libxcb-render-util0", "xcb-util-renderutil"),
    Library("libxcb-shape.so.0", "libxcb-shape0", "libxcb"),
    Library("libxkbcommon-x11.so.0", "libxkbcommon-x11-0", "libxkbcommon-x11"),
)
"""What a window on X11 needs."""

APT = ("apt-get", "install", "-y", "--no-install-recommends")


def lacking(libraries: tuple[Library, ...]) -> tuple[Library, ...]:
    """Those the loader cannot find; none on Windows and macOS, where Qt brings its own."""
    if not sys.platform.startswith("linux"):
        return ()
    return tuple(library for library in libraries if not _loads(library.soname))


def commands(libraries: tuple[Library, ...]) -> str:
    """One line for each package system at hand (both when neither is) that brings them."""
    apt = "sudo " + " ".join([*APT, *(library.debian for library in libraries)])
    dnf = "sudo dnf install -y " + " ".join(library.fedora for library in libraries)
    lines = [line for line, tool in ((apt, "apt-get"), (dnf, "dnf")) if shutil.which(tool)]
    return "\n".join(f"  {line}" for line in lines or [apt, dnf])


def provide(libraries: tuple[Library, ...], shelf: Path, say: Say) -> bool:
    """Bring lacking libraries when nobody is there to do it; a person at a terminal is asked.

    With root's rights the packages are installed. Without, they are fetched and unpacked on
    `shelf`, where only this program looks.

    Returns:
        Whether the shelf was filled, so that the program has to start again to find them.

    Raises:
        SetUpError: A person has to do it; the text has the exact command.
    """
    if (sys.stdin.isatty() and sys.stdout.isatty()) or not shutil.which("apt-get"):
        raise request(libraries)
    names = [library.debian for library in libraries]
    root = os.geteuid() == 0
    say(f"bringing {len(names)} system libraries {'by apt' if root else f'to {shelf}'}")
    done = _installed(names) if root else _shelved(names, shelf)
    if not done:
        raise request(libraries)
    return not root


def request(libraries: tuple[Library, ...]) -> SetUpError:
    """The error that asks a person to bring them, with the exact command."""
    names = ", ".join(library.soname for library in libraries)
    return SetUpError(
        f"Qt, which draws the windows, needs system libraries that this machine lacks: {names}.\n"
        f"Please run:\n{commands(libraries)}"
    )


def search_path(shelf: Path) -> tuple[str, ...]:
    """Folders of the shelf that hold libraries; empty when nothing was unpacked."""
    return tuple(sorted({str(file.parent) for file in shelf.rglob("lib*.so.*")}))


def _loads(soname: str) -> bool:
    try:
        ctypes.CDLL(soname)
    except OSError:
        return False
    return True


def _installed(names: list[str]) -> bool:
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    return _ran([*APT, *names], env=quiet) or (
        _ran(["apt-get", "update"], env=quiet) and _ran([*APT, *names], env=quiet)
    )


def _shelved(names: list[str], shelf: Path) -> bool:
    plan = subprocess.run(  # noqa: S603 - fixed names
        [*APT, "--simulate", *names], capture_output=True, text=True, check=False
    )
    wanted = [line.split()[1] for line in plan.stdout.splitlines() if line.startswith("Inst ")]
    if plan.returncode or not wanted:
        return False
    shelf.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        if not _ran(["apt-get", "download", *wanted], cwd=folder):
            return False
        packages = sorted(Path(folder).glob("*.deb"))
        return all(_ran(["dpkg-deb", "-x", str(file), str(shelf)]) for file in packages)


def _ran(command: list[str], *, cwd: str | None = None, env: dict[str, str] | None = None) -> bool:
    """Whether the command ended well; its output is shown only when it did not."""
    ended = subprocess.run(  # noqa: S603 - fixed names
        command, cwd=cwd, env=env, capture_output=True, text=True, check=False
    )
    if ended.returncode:
        sys.stderr.write(f"{' '.join(command)}\n{ended.stderr[-1500:]}\n")
    return ended.returncode == 0
