"""Sets up on a bare machine, then opens the window, or does the job in text without a display."""

import sys

if sys.version_info < (3, 11):  # noqa: UP036 - said before a newer import fails
    sys.exit(f"idkey needs Python 3.11 or newer; this is {sys.version.split()[0]}.")

from idkey import __version__
from idkey.bootstrap import environment, libraries, screen

USAGE = """Usage: idkey [--text | --sample] [FILE]     (from a checkout: python3 -m idkey)

Opens the window. FILE is a key package to open.
Without a display it walks a key in text at the terminal; without a terminal too it runs the
sample case to its verdict and writes the rationale, saying where.

  --text      walk in text although there is a display
  --sample    run the sample case
  --version   print the version
  --help      print this

For scripts there is idkey-cli (from a checkout: python3 -m idkey.cli).
"""


def main() -> int:
    """Run the program with the arguments of the command line.

    Returns:
        Exit code: 0 done, 2 wrong use, 4 the machine lacks something.
    """
    argv = sys.argv[1:]
    if "--help" in argv or "-h" in argv:
        sys.stdout.write(USAGE)
        return 0
    if "--version" in argv:
        sys.stdout.write(f"idkey {__version__}\n")
        return 0
    text = "--text" in argv or "--sample" in argv or not screen.has_display()
    try:
        environment.set_up("idkey", argv, libraries=() if text else libraries.WINDOW)
    except libraries.SetUpError as err:
        sys.stderr.write(f"{err}\n")
        return 4
    try:
        return _in_text(argv) if text else _in_a_window(argv)
    except ModuleNotFoundError:
        environment.mend("idkey", argv)
        raise


def _in_a_window(argv: list[str]) -> int:
    from idkey.app.window.main import run

    return run(argv)


def _in_text(argv: list[str]) -> int:
    from idkey.cli.without_window import run

    return run(walk="--sample" not in argv and screen.has_terminal())


if __name__ == "__main__":
    sys.exit(main())
