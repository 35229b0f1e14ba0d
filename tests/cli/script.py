"""A conversation with the answers written beforehand."""

from collections.abc import Iterable

from idkey.cli.console import Console


class Script:
    """Answers in order, then the end of input; keeps what was said."""

    def __init__(self, *answers: str) -> None:
        self._answers = iter(answers)
        self.said: list[str] = []
        self.console = Console(self._typed, self.said.append)

    @property
    def left(self) -> Iterable[str]:
        """Answers that nobody asked for."""
        return tuple(self._answers)

    @property
    def text(self) -> str:
        """All that was said, blanks and breaks made even."""
        return " ".join(" ".join(self.said).split())

    def _typed(self, prompt: str) -> str:
        self.said.append(prompt)
        try:
            return next(self._answers)
        except StopIteration:
            raise EOFError from None
