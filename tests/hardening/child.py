"""Starts parts of the program in a process of their own, as it runs at a counter."""

import os
import subprocess
import sys
from functools import cache
from pathlib import Path

ROOT = Path(__file__).parents[2]

NO_CONNECTION = """
import sys

def refuse(event, arguments):
    if event in {"socket.connect", "socket.getaddrinfo", "socket.bind", "socket.sendto"}:
        raise SystemExit(f"the network was asked for: {event} {arguments}")

sys.addaudithook(refuse)
"""
"""Beginning of a script in which any use of the network ends the program."""


@cache
def cut_off() -> tuple[str, ...]:
    """Words before a command that run it without any network; none where that needs rights."""
    for words in (("unshare", "-n"), ("unshare", "-rn")):
        try:
            ended = subprocess.run([*words, "true"], capture_output=True, check=False)
        except OSError:
            return ()
        if ended.returncode == 0:
            return words
    return ()


def ran(
    script: str, *arguments: str, data: Path, before: tuple[str, ...] = ()
) -> subprocess.CompletedProcess[str]:
    """What a script in a fresh Python did.

    Args:
        script: The script.
        arguments: What it finds in ``sys.argv[1:]``.
        data: Data folder of the program.
        before: Words before the command.
    """
    return subprocess.run(
        [*before, sys.executable, "-X", "utf8", "-c", script, *arguments],
        cwd=ROOT,
        env={
            **os.environ,
            "IDKEY_DATA": str(data),
            "QT_QPA_PLATFORM": "offscreen",
            "PYTHONPATH": str(ROOT),
        },
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=120,
        check=False,
    )
