"""A PostgreSQL server of our own for the tests, from the system's packages.

It runs as an ordinary user, listens on a socket in a folder of its own and nowhere else, and
goes away with the tests, however they end.
"""

import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

ATTENDANT = Path(__file__).with_name("attendant.py")
READY_SECONDS = 30.0
_INSTALLED = Path("/usr/lib/postgresql")


class NoServer(Exception):  # noqa: N818 - a reason to skip
    """Why no server can be started here."""


def programs() -> Path:
    """The folder with ``initdb`` and ``postgres``; as root on Debian, installed when missing.

    Raises:
        NoServer: It is not installed and cannot be.
    """
    found = _programs()
    if found is None and os.name == "posix" and os.geteuid() == 0 and shutil.which("apt-get"):
        _install()
        found = _programs()
    if found is None:
        raise NoServer("PostgreSQL is not installed; on Debian: apt-get install postgresql")
    return found


def _programs() -> Path | None:
    folders = sorted(_INSTALLED.glob("*/bin"), key=lambda path: path.parent.name, reverse=True)
    if path := shutil.which("initdb"):
        folders.append(Path(path).resolve().parent)
    return next((path for path in folders if (path / "initdb").exists()), None)


def _install() -> None:
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    command = ["apt-get", "install", "-y", "-q", "--no-install-recommends", "postgresql"]
    for step in (["apt-get", "update", "-q"], command):
        try:
            subprocess.run(step, env=quiet, check=True, capture_output=True, timeout=300)
        except (subprocess.SubprocessError, OSError) as err:
            raise NoServer(f"PostgreSQL could not be installed: {' '.join(step)}") from err


@contextmanager
def server() -> Iterator[str]:
    """Start a server with an empty cluster; yields the folder of its socket.

    Raises:
        NoServer: None can be started here.
    """
    if os.name != "posix":
        raise NoServer("the tests start PostgreSQL on a Unix socket only")
    binaries = programs()
    folder = Path(tempfile.mkdtemp(prefix="idkey-pg-"))
    try:
        user = _ordinary_user(folder)
        cluster = folder / "cluster"
        initdb = [binaries / "initdb", "-D", cluster, "-U", "idkey", "-A", "trust"]
        made = subprocess.run(
            [*initdb, "-E", "UTF8", "--locale=C", "--no-sync"],
            capture_output=True,
            text=True,
            cwd=folder,
            check=False,
            **user,
        )
        if made.returncode:
            raise NoServer(f"initdb failed: {made.stderr.strip()}")
        with _running(binaries / "postgres", cluster):
            yield str(folder)
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _ordinary_user(folder: Path) -> dict[str, Any]:
    """Whom to run the server as: PostgreSQL refuses to run as root."""
    if os.geteuid() != 0:
        return {}
    import pwd  # does not exist on Windows

    for name in ("postgres", "nobody"):
        try:
            entry = pwd.getpwnam(name)
        except KeyError:
            continue
        os.chown(folder, entry.pw_uid, entry.pw_gid)
        return {"user": entry.pw_uid, "group": entry.pw_gid, "extra_groups": []}
    raise NoServer("there is no ordinary user to run PostgreSQL as")


@contextmanager
def _running(postgres: Path, cluster: Path) -> Iterator[None]:
    folder = cluster.parent
    settings = {"listen_addresses": "", "unix_socket_directories": folder, "fsync": "off"}
    options = [part for name, value in settings.items() for part in ("-c", f"{name}={value}")]
    command = [sys.executable, ATTENDANT, folder, postgres, "-D", cluster, *options]
    with subprocess.Popen(command, stdin=subprocess.PIPE, start_new_session=True) as attendant:
        _wait_until_ready(attendant, cluster)
        yield


def _wait_until_ready(attendant: subprocess.Popen[bytes], cluster: Path) -> None:
    pid_file = cluster / "postmaster.pid"
    end = time.monotonic() + READY_SECONDS
    while time.monotonic() < end:
        if pid_file.exists() and pid_file.read_text().rstrip().endswith("ready"):
            return
        if attendant.poll() is not None:
            break
        time.sleep(0.05)
    raise NoServer(f"PostgreSQL did not start: {(cluster.parent / 'log').read_text()}")
