"""What there is to say about a key before somebody works with it; reading and counting it."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

import numpy as np

from idkey.app.parts.jobs import Tick
from idkey.engine.checks import run_checks
from idkey.engine.compile import compile_key
from idkey.engine.coverage import Coverage, coverage
from idkey.engine.matrix import Matrix
from idkey.engine.separation import by_print
from idkey.errors import IdKeyError
from idkey.formats.folder import KeyEntry, check_key
from idkey.formats.imported import UNKNOWN_HAZARD
from idkey.formats.problem import Problem
from idkey.model.key import Key

Signature = tuple[tuple[str, int, int], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Counts:
    """A sound key in numbers.

    Attributes:
        coverage: How much of the matrix is filled, and from what.
        inseparable: Pairs of taxa, by name, that no character sets apart.
        checks: Published statements that can be computed.
        passed: Those of them the matrix agrees with.
        untold: Taxa of which nobody has said how dangerous they are.
        law: Oldest day the permit data are of, as the key writes it; empty when unknown.
    """

    coverage: Coverage
    inseparable: tuple[tuple[str, str], ...]
    checks: int
    passed: int
    untold: int
    law: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Account:
    """A key of the library as far as it has been looked at.

    Attributes:
        entry: Its folder.
        key: The key; None while it is not read, and when it is broken.
        counts: What was counted; None without a key.
        problems: Its mistakes, warnings too.
        trouble: Why it cannot be used, in a sentence; empty otherwise.
        written: Day its files were last written, ISO 8601; empty for a shipped key, whose files
            are as old as the installation.
    """

    entry: KeyEntry
    key: Key | None = None
    counts: Counts | None = None
    problems: tuple[Problem, ...] = ()
    trouble: str = ""
    written: str = ""

    @property
    def read(self) -> bool:
        """Whether it has been looked at."""
        return self.key is not None or self.broken

    @property
    def broken(self) -> bool:
        """Whether it cannot be used as it stands."""
        return bool(self.trouble) or bool(self.entry.problem)


def counted(key: Key) -> Counts:
    """The key in numbers."""
    results = run_checks(key)
    named = {taxon.id: taxon.name for taxon in key.taxa}
    alike = _alike(compile_key(key))
    days = [taxon.permit.as_of for taxon in key.taxa if taxon.permit.as_of]
    return Counts(
        coverage=coverage(key),
        inseparable=tuple((named[one], named[other]) for one, other in alike),
        checks=len(results),
        passed=sum(result.passed for result in results),
        untold=sum(taxon.hazard == UNKNOWN_HAZARD for taxon in key.taxa),
        law=min(days, default=""),
    )


def _alike(matrix: Matrix) -> Iterator[tuple[str, str]]:
    """Pairs that no character sets apart; the audit, which tells more, takes longer."""
    for row, taxon in enumerate(matrix.taxa):
        apart = by_print(matrix, row)[row + 1 :].any(axis=1)
        yield from ((taxon, matrix.taxa[row + 1 + int(n)]) for n in np.flatnonzero(~apart))


def signature(folder: Path) -> Signature:
    """What changes when a file of a key folder does."""
    files = [*folder.glob("*.yaml"), *folder.glob("taxa/*.yaml")]
    stats = ((file, file.stat()) for file in sorted(files) if file.is_file())
    return tuple((file.name, stat.st_mtime_ns, stat.st_size) for file, stat in stats)


class Accounts:
    """Reads keys and counts them; a key whose files are the same is not read again.

    It is asked from one thread at a time.
    """

    def __init__(self) -> None:
        self._known: dict[Path, tuple[Signature, Account]] = {}

    def known(self, entries: Iterable[KeyEntry]) -> tuple[Account, ...]:
        """The accounts as far as they are known, without reading anything."""
        found = []
        for entry in entries:
            known = self._known.get(entry.folder)
            same = known is not None and known[1].entry == entry
            found.append(known[1] if known is not None and same else Account(entry=entry))
        return tuple(found)

    def read(self, entries: tuple[KeyEntry, ...], tick: Tick) -> None:
        """Look at each key whose files are not those that were looked at last."""
        for number, entry in enumerate(entries):
            tick(number, len(entries))
            now = signature(entry.folder)
            known = self._known.get(entry.folder)
            if known is None or known[0] != now or known[1].entry != entry:
                self._known[entry.folder] = (now, account(entry, now))
        tick(len(entries), len(entries))


def account(entry: KeyEntry, files: Signature = ()) -> Account:
    """Everything about one key folder; a broken one is told, not raised."""
    newest = max((changed for _, changed, _ in files), default=0)
    written = datetime.fromtimestamp(newest / 1e9, UTC).date().isoformat() if newest else ""
    written = written if entry.own else ""
    key, problems = check_key(entry.folder)
    if key is None:
        trouble = f"The key has mistakes ({sum(p.severity == 'error' for p in problems)})."
        return Account(entry=entry, problems=problems, trouble=trouble, written=written)
    try:
        counts = counted(key)
    except IdKeyError as err:
        return Account(entry=entry, problems=problems, trouble=err.problem, written=written)
    return Account(entry=entry, key=key, counts=counts, problems=problems, written=written)
