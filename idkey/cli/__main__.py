"""`python3 -m idkey.cli` in a checkout: sets itself up, then runs a command."""

import sys

if sys.version_info < (3, 11):  # noqa: UP036 - said before a newer import fails
    sys.exit(f"idkey needs Python 3.11 or newer; this is {sys.version.split()[0]}.")

from idkey import __version__
from idkey.bootstrap import environment
from idkey.bootstrap.libraries import SetUpError
from idkey.cli.usage import EXIT_CODES, FAILED

COMMANDS = (
    "Commands: identify, questions, rationale, walk, labels, list, check, add, export, records, "
    "verify, label."
)

USAGE = f"""Usage: python3 -m idkey.cli COMMAND [ARGUMENTS]

{COMMANDS}
COMMAND --help says more.

{EXIT_CODES}
"""


def main() -> int:
    """Set up where needed, then run the command; the first help needs no set-up."""
    argv = sys.argv[1:]
    if argv in ([], ["--help"], ["--version"]):
        sys.stdout.write(f"idkey {__version__}\n" if argv == ["--version"] else USAGE)
        return 0
    try:
        environment.set_up("idkey.cli", argv)
    except SetUpError as err:
        sys.stderr.write(f"{err}\n")
        return FAILED
    try:
        from idkey.cli.commands import main as run
    except ModuleNotFoundError:
        environment.mend("idkey.cli", argv)
        raise
    return run(argv)


if __name__ == "__main__":
    sys.exit(main())
