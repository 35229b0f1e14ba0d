"""The server of the tests goes away with them, however they end."""

import os
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.store.server import NoServer, programs

ROOT = Path(__file__).parents[2]
SCRIPT = """
import sys
from tests.store.server import server
with server() as folder:
    print(folder, flush=True)
    sys.stdin.read()
"""


@pytest.mark.slow
@pytest.mark.skipif(os.name != "posix", reason="the server needs a Unix socket")
def test_a_killed_test_run_leaves_neither_server_nor_folder():
    try:
        programs()
    except NoServer as reason:
        pytest.skip(str(reason))
    command = [sys.executable, "-c", SCRIPT]
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, cwd=ROOT
    ) as run:
        assert run.stdout is not None
        folder = Path(run.stdout.readline().strip())
        pid = int((folder / "cluster" / "postmaster.pid").read_text().split()[0])
        run.kill()
    end = time.monotonic() + 20
    while folder.exists() and time.monotonic() < end:
        time.sleep(0.05)

    assert not folder.exists()
    with pytest.raises(ProcessLookupError):
        os.kill(pid, 0)
