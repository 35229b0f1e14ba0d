"""Two people's edits of one key, joined over the key they both began with."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot

from idkey.app.library.editions import Edition
from idkey.app.parts.jobs import Jobs, Tick
from idkey.app.records.latest import Latest
from idkey.formats.compare import changes, next_version
from idkey.formats.folder import check_values
from idkey.formats.merge import Clash, Side, merge
from idkey.formats.pieces import Part, Place
from idkey.formats.problem import Problem, Severity
from idkey.model.key import Key


@dataclass(frozen=True, slots=True, kw_only=True)
class Joining:
    """A join under way.

    Attributes:
        base: The key both began with.
        mine: My key.
        theirs: Their key.
        clashes: Every piece that both changed differently, decided or not.
        choices: Side per clash that the person has decided.
        key: The joined key.
        problems: What is wrong with it, such as a reference to what the other one removed.
        checking: Whether key and problems are of a moment ago.
    """

    base: Key
    mine: Key
    theirs: Key
    clashes: tuple[Clash, ...] = ()
    choices: Mapping[Place, Side] = field(default_factory=dict)
    key: Key | None = None
    problems: tuple[Problem, ...] = ()
    checking: bool = True

    def taken(self, clash: Clash) -> Side:
        """Whose piece the joined key has."""
        return self.choices.get(clash.place, clash.taken)

    @property
    def open(self) -> int:
        """Clashes that nobody has decided."""
        return sum(clash.place not in self.choices for clash in self.clashes)

    @property
    def errors(self) -> tuple[Problem, ...]:
        """Why the joined key cannot be used."""
        return tuple(p for p in self.problems if p.severity is Severity.ERROR)


_VERSION = Place(Part.KEY, "", "version")
"""Both raise it; the joined key gets one that fits what changed."""


class JoinState(QObject):
    """Holds the join; everything is worked out off the UI thread.

    Args:
        parent: Owner.

    Attributes:
        joining: The join; None while there is none.
        chosen: The versions it is of: base, mine, theirs; empty for none.

    Signals:
        changed(): The join is another one now.
        failed(error: object): A version cannot be read.
    """

    changed = Signal()
    failed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.joining: Joining | None = None
        self.chosen: tuple[Edition, ...] = ()
        self._jobs = Jobs(threads=1, parent=self)
        self._working = Latest(self._jobs, self)
        self._working.answered.connect(self._on_worked)
        self._working.failed.connect(self.failed)

    @property
    def busy(self) -> bool:
        """Whether something is being worked out."""
        return self._working.busy

    def close(self) -> bool:
        """Let go of work under way."""
        return self._jobs.close()

    def join(self, base: Edition, mine: Edition, theirs: Edition) -> None:
        """Join two versions over the one both began with."""
        self.joining = None
        self.chosen = (base, mine, theirs)

        def work(tick: Tick) -> Joining:  # on a pool thread
            keys = []
            for number, edition in enumerate((base, mine, theirs)):
                tick(number, 4)
                keys.append(edition.read())
            first = Joining(base=keys[0], mine=keys[1], theirs=keys[2])
            return joined(first)

        self._working.ask(work)
        self.changed.emit()

    def leave(self) -> None:
        """Join nothing."""
        self._working.drop()
        self.joining = None
        self.chosen = ()
        self.changed.emit()

    def decide(self, choices: Mapping[Place, Side]) -> None:
        """Take a side in some clashes."""
        if self.joining is None:
            return
        merged = {**self.joining.choices, **choices}
        self.joining = replace(self.joining, choices=merged, checking=True)
        asked = self.joining

        def work(tick: Tick) -> Joining:  # on a pool thread
            tick(0, 1)
            return joined(asked)

        self._working.ask(work)
        self.changed.emit()

    @Slot(object)
    def _on_worked(self, joining: Joining) -> None:
        self.joining = joining
        self.changed.emit()


def joined(joining: Joining) -> Joining:
    """The join with its key, in a version that says how much it changed, and its problems."""
    base, mine, theirs = joining.base, joining.mine, joining.theirs
    clashes = joining.clashes
    if not clashes:
        _, found = merge(base, mine, theirs)
        clashes = tuple(clash for clash in found if clash.place != _VERSION)
    key, _ = merge(base, mine, theirs, joining.choices)
    told = changes(base, key)
    newest = max(mine.version, theirs.version, next_version(base.version, told), key=_numbers)
    key = replace(key, version=newest)
    problems = check_values(key, Path(key.id))
    return replace(joining, clashes=clashes, key=key, problems=problems, checking=False)


def _numbers(version: str) -> tuple[int, ...]:
    return tuple(int(part) if part.isdecimal() else 0 for part in version.split(".")[:3])
