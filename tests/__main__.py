"""Sets up on a bare machine, then runs the whole suite; arguments go to pytest."""

import os
import sys

if sys.version_info < (3, 11):  # noqa: UP036 - said before a newer import fails
    sys.exit(f"idkey needs Python 3.11 or newer; this is {sys.version.split()[0]}.")

from idkey.bootstrap import environment, libraries, requirement

USAGE = """Usage: python3 -m tests [--setup-only | --which-python] [PYTEST ARGUMENTS]

Makes the environment where it is missing, then runs the tests: without arguments all of them,
by two processes at a time.

  --setup-only    make the environment and stop
  --which-python  the same, and print which Python runs there
  --help          print this; for pytest's own help: python3 -m tests --pytest-help
"""

ALL = ["-n", "2", "--dist", "loadfile", "--max-worker-restart", "0"]
"""Whole suite: a file stays in one process, so that what its tests share is made once. A process
that ended is not replaced: the one that takes its place may wait for ever."""


def main() -> int:
    """Run the suite.

    Returns:
        pytest's exit code; 4 when the machine lacks something.
    """
    argv = sys.argv[1:]
    if "--help" in argv or "-h" in argv:
        sys.stdout.write(USAGE)
        return 0
    try:
        environment.set_up("tests", argv, extra="tests", libraries=libraries.QT)
    except libraries.SetUpError as err:
        sys.stderr.write(f"{err}\n")
        return 4
    if "--which-python" in argv:
        sys.stdout.write(f"{sys.executable}\n")
    if {"--setup-only", "--which-python"} & set(argv):
        return 0
    return _run(["--help" if word == "--pytest-help" else word for word in argv])


def _run(argv: list[str]) -> int:
    import pytest

    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    os.chdir(requirement.ROOT)
    return int(pytest.main(argv or ALL))


if __name__ == "__main__":
    sys.exit(main())
