"""A key under the pen: what is on disk, what it says now, and the way back."""

from dataclasses import dataclass, replace
from pathlib import Path

from idkey.engine.audit import Remark
from idkey.formats.problem import Problem, Severity
from idkey.model.key import Key

MOST_STEPS = 500
"""Steps that can be taken back."""


def same_content(one: Key, other: Key) -> bool:
    """Whether two keys say the same in the same order, whether they are saved or not."""
    return one is other or replace(one, digest=other.digest) == other


@dataclass(frozen=True, slots=True)
class Step:
    """One change: the key before or after it, and what it did, in words."""

    key: Key
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Editing:
    """A key being edited. Keys are values, so each step back is just the key it had.

    Attributes:
        folder: Where it is read from and saved to.
        saved: The key as the folder says it.
        key: The key as edited.
        past: Steps that can be taken back, the latest last; each holds the key before it.
        future: Steps that were taken back, the next one last; each holds the key after it.
        problems: Mistakes of `key`, at the places its files would have.
        remarks: What is weak about `key`; empty while it has errors.
        checking: Whether problems and remarks of `key` are still being found; those shown
            are of a key a moment ago.
    """

    folder: Path
    saved: Key
    key: Key
    past: tuple[Step, ...] = ()
    future: tuple[Step, ...] = ()
    problems: tuple[Problem, ...] = ()
    remarks: tuple[Remark, ...] = ()
    checking: bool = False

    @property
    def dirty(self) -> bool:
        """Whether the key differs from what the folder says."""
        return not same_content(self.key, self.saved)

    @property
    def sound(self) -> bool:
        """Whether the key can be saved: it has no errors, and they have been looked for."""
        errors = any(problem.severity is Severity.ERROR for problem in self.problems)
        return not self.checking and not errors

    def changed(self, key: Key, words: str) -> "Editing":
        """With `key` in place of the one there is; the way forward is gone."""
        key = replace(key, digest="") if key.digest else key  # that of the saved key is over
        if key.scores is self.key.scores and "cells" in vars(self.key):
            vars(key)["cells"] = self.key.cells  # of 100,000 scores it takes a while
        past = (*self.past, Step(self.key, words))[-MOST_STEPS:]
        return replace(self, key=key, past=past, future=(), checking=True)

    def undone(self) -> "Editing":
        """One step back; the same when there is none."""
        if not self.past:
            return self
        *past, step = self.past
        future = (*self.future, Step(self.key, step.words))
        return replace(self, key=step.key, past=tuple(past), future=future, checking=True)

    def redone(self) -> "Editing":
        """The step forward that was taken back; the same when there is none."""
        if not self.future:
            return self
        *future, step = self.future
        past = (*self.past, Step(self.key, step.words))
        return replace(self, key=step.key, past=past, future=tuple(future), checking=True)
