"""A key that came in, held against the one of its name that is here."""

from dataclasses import dataclass

from idkey.app.library.account import Counts, counted
from idkey.app.parts.jobs import Tick
from idkey.app.parts.key_library import KeyLibrary
from idkey.app.parts.worded import window_language
from idkey.errors import IdKeyError
from idkey.formats.arrival import Arrival, Form, Grid
from idkey.formats.compare import Change
from idkey.formats.folder import KeyEntry
from idkey.formats.table_reading import matrix_of, table_of
from idkey.model.case import Case
from idkey.model.key import Key
from idkey.report.key_changes import worded_changes
from idkey.report.recorded import judged
from idkey.store.book import Store
from idkey.store.record import VerdictSummary
from idkey.store.reruns import Alteration, alterations


@dataclass(frozen=True, slots=True, kw_only=True)
class Welcome:
    """What can be said of an arrival before it is taken in.

    Attributes:
        arrival: The key, and how it came.
        counts: The key in numbers.
        here: The key of the same id that is here; None when there is none.
        here_key: That key; None when there is none or it is broken.
        changes: What differs from it.
        altered: Recorded cases whose name, verdict or cautions change when it is replaced.
    """

    arrival: Arrival
    counts: Counts
    here: KeyEntry | None = None
    here_key: Key | None = None
    changes: tuple[Change, ...] = ()
    altered: tuple[Alteration, ...] = ()

    @property
    def same(self) -> bool:
        """Whether the very same key is here already."""
        return self.here_key is not None and self.here_key.digest == self.arrival.key.digest

    @property
    def replaceable(self) -> bool:
        """Whether it may take the place of the one that is here."""
        return self.here is not None and self.here.own and not self.same


def welcomed(arrival: Arrival, keys: KeyLibrary, store: Store, tick: Tick) -> Welcome:
    """Look at an arrival, and at what it would change here."""
    key = arrival.key
    here = next((entry for entry in keys.entries if entry.id == key.id), None)
    old = _key(keys, key.id) if here is not None else None
    found = worded_changes(old, key, window_language()) if old is not None else ()
    altered: tuple[Alteration, ...] = ()
    if here is not None and here.own and found:

        def judge(case: Case) -> VerdictSummary:
            return VerdictSummary.of(judged(store, key, case))

        altered = tuple(alterations(store, key.id, judge, tick))
    return Welcome(
        arrival=arrival,
        counts=counted(key),
        here=here,
        here_key=old,
        changes=found,
        altered=altered,
    )


def matrix_arrival(grid: Grid, keys: KeyLibrary) -> Arrival | None:
    """The key of which the sheets are the matrix, with what they say; None when there is none.

    Raises:
        KeyProblems: It is a key's matrix, but cells cannot be understood.
    """
    for own in keys:
        key = _key(keys, own)
        if key is not None and matrix_of(grid.sheets, key):
            found = table_of(grid.sheets, grid.file, key)
            note = f"It is a matrix of the key '{own}'; all else was taken from that key."
            notes = (note, *found.notes)
            return Arrival(file=grid.file, form=Form.SHEET, key=found.key, notes=notes)
    return None


def _key(keys: KeyLibrary, own: str) -> Key | None:
    try:
        return keys[own]
    except (KeyError, IdKeyError):
        return None
