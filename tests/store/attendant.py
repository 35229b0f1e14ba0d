"""Runs a server until whoever started it goes away, however it went, and clears up after it.

Run as ``python attendant.py FOLDER COMMAND...``; ends when its standard input does, or when the
server does. The server runs as the owner of the folder.
"""

import select
import shutil
import signal
import subprocess
import sys
from pathlib import Path
from typing import Any

END_SECONDS = 30.0


def main() -> None:
    """Start the command, wait, stop it, remove the folder."""
    folder, command = Path(sys.argv[1]), sys.argv[2:]
    owner = folder.stat()
    user: dict[str, Any] = {}
    if owner.st_uid != 0:
        user = {"user": owner.st_uid, "group": owner.st_gid, "extra_groups": []}
    with (folder / "log").open("w") as log:
        server = subprocess.Popen(
            command, stdin=subprocess.DEVNULL, stdout=log, stderr=log, cwd=folder, **user
        )
        while server.poll() is None and not select.select([sys.stdin], [], [], 0.2)[0]:
            pass
        if server.poll() is not None:
            return  # whoever started it reads the log
        server.send_signal(signal.SIGQUIT)  # at once; nothing here is worth keeping
        server.wait(timeout=END_SECONDS)
    shutil.rmtree(folder, ignore_errors=True)


if __name__ == "__main__":
    main()
