"""Writes docs/command-line.md out of the help of the commands.

`python -m tests.docs.command_page docs/command-line.md`
"""

import sys
from collections.abc import Iterator
from pathlib import Path

import click

from idkey.cli.commands import program
from idkey.cli.usage import EXIT_CODES

HEAD = """\
# Command line

`idkey-cli` once installed; in a checkout `python3 -m idkey.cli`. This page is the commands' own
help, put together by a program (`python -m tests.docs.command_page docs/command-line.md`).

```text
{exit_codes}
```
"""


def page() -> str:
    """The page as Markdown."""
    return "\n".join([HEAD.format(exit_codes=EXIT_CODES), *_sections(program, "idkey-cli")])


def _sections(group: click.Group, path: str) -> Iterator[str]:
    for name, command in sorted(group.commands.items()):
        whole = f"{path} {name}"
        context = click.Context(command, info_name=whole, max_content_width=90)
        context.terminal_width = 90
        lines = (line.rstrip() for line in command.get_help(context).splitlines())
        yield f"## {whole}\n\n```text\n{chr(10).join(lines)}\n```\n"
        if isinstance(command, click.Group):
            yield from _sections(command, whole)


if __name__ == "__main__":
    Path(sys.argv[1]).write_text(page(), encoding="utf-8", newline="\n")
