"""A conversation at a terminal: ask, tell, choose."""

import textwrap
from collections.abc import Callable, Sequence
from dataclasses import dataclass

import click

from idkey.errors import Stopped

WIDTH = 92
"""Columns that text is wrapped to."""


def _typed(prompt: str) -> str:
    return input(prompt)


@dataclass(frozen=True, slots=True)
class Console:
    """Where questions go and answers come from.

    Attributes:
        typed: Shows a prompt and returns the line typed; EOFError when there is no more.
        shown: Shows a text.
    """

    typed: Callable[[str], str] = _typed
    shown: Callable[[str], None] = click.echo

    def ask(self, prompt: str) -> str:
        """The answer to a prompt, without blanks around it; raises Stopped at the end of input."""
        try:
            return self.typed(f"{prompt} ").strip()
        except (EOFError, KeyboardInterrupt):
            self.shown("")
            raise Stopped from None

    def tell(self, text: str, indent: str = "", bullet: str = "") -> None:
        """Show a text, wrapped line by line; a bullet stands before the first."""
        for line in text.splitlines() or [""]:
            first, further = indent + bullet, indent + " " * len(bullet)
            self.shown(textwrap.fill(line, WIDTH, initial_indent=first, subsequent_indent=further))

    def choose(self, title: str, options: Sequence[str], default: int | None = 0) -> int:
        """The number, from 0, of the option chosen; an empty answer takes the default."""
        self.tell(title)
        for number, option in enumerate(options, start=1):
            self.tell(option, indent="  ", bullet=f"{number}  ")
        usual = "" if default is None else f" [{default + 1}]"
        while True:
            answer = self.ask(f"1-{len(options)}{usual}:")
            if not answer and default is not None:
                return default
            if answer.isdecimal() and 1 <= int(answer) <= len(options):
                return int(answer) - 1
            self.tell(f"Please give a number from 1 to {len(options)}.")
