"""The record book: cases with all their revisions, sales, drafts and settings."""

import platform
from collections.abc import Callable, Mapping
from datetime import UTC, datetime
from pathlib import Path
from types import TracebackType
from typing import Any, Self

from sqlalchemy import select

from idkey.model.case import Case
from idkey.store import shelf
from idkey.store.backups import Backup, back_up, due
from idkey.store.chain import Tick, append, faults, locked_end, newest
from idkey.store.codec import storable
from idkey.store.conflicts import conflict, moved
from idkey.store.content import opened, sealed
from idkey.store.database import WAIT_SECONDS, Database
from idkey.store.faults import Missing, StoreError
from idkey.store.moving import copy_records
from idkey.store.notes import note, noted
from idkey.store.opening import prepare
from idkey.store.record import (
    CaseRow,
    ChainFault,
    Query,
    Revision,
    Sale,
    StoredCase,
    VerdictSummary,
    revision_of,
)
from idkey.store.schema import chain, drafts, settings
from idkey.store.selling import cases_of_sale, faults_of_buyers, put_sale, sales_of

Clock = Callable[[], datetime]


def utc_now() -> datetime:
    """The time by the machine's clock."""
    return datetime.now(UTC)


class Store:
    """An open record book. Every method that changes something returns once it is durable.

    Use `Store.open`. A store may be used from several threads; each call is a unit of its own.

    Raises (every method):
        Busy: Another writer did not finish in time.
        DiskFull: No room is left. Unwritable: it cannot be reached. Damaged: it is broken.
    """

    def __init__(self, database: Database, clock: Clock, station: str) -> None:
        self.database = database
        self._clock = clock
        self._station = station
        self._saved: dict[str, int] = {}

    @classmethod
    def open(
        cls,
        place: Path | str,
        *,
        clock: Clock = utc_now,
        station: str = "",
        wait_seconds: float = WAIT_SECONDS,
    ) -> Self:
        """Open the record book at `place`, making it when there is none.

        Args:
            place: Path of a file, or an address such as ``postgresql://host/name``.
            clock: Tells the time, aware of its zone; it is noted, but orders nothing.
            station: Place of work that drafts and settings belong to; by default all users of
                a file share them, and each machine that uses a server has its own.
            wait_seconds: Longest wait for another writer.

        Raises:
            Damaged: The file is broken, cut short, or not a record book.
            TooNew: A newer program wrote it.
            StoreError: It cannot be reached or made.
        """
        database = Database(place, wait_seconds=wait_seconds)
        try:
            prepare(database)
        except BaseException:
            database.close()
            raise
        if not station and not database.sqlite:
            station = platform.node()
        return cls(database, clock, station)

    def close(self) -> None:
        """Let go of the book; nothing waits to be saved."""
        self.database.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def save(
        self,
        case: Case,
        summary: VerdictSummary | None,
        by: str = "",
        *,
        parent: int | None = None,
    ) -> Revision:
        """Add the case as it stands as a new revision.

        Args:
            case: The case.
            summary: What was concluded; None before a verdict.
            by: Who saves it; empty takes the person the case names.
            parent: Number of the revision the case was opened with, 0 for a new case; None
                adds to whatever is there.

        Returns:
            The new revision, or the newest one when it says the same already.

        Raises:
            Conflict: The newest revision says otherwise than `parent`: somebody else saved it.
        """
        content = sealed(case, summary)
        with self.database.writes() as connection:
            locked_end(connection)
            entry: Mapping[Any, Any] | None = newest(connection, case.id, "case")
            if entry is None or entry["content"] != content:
                if parent is not None and moved(connection, case.id, parent, entry):
                    raise conflict(connection, case.id, parent, entry)
                who = storable(by or case.by)
                entry = append(connection, "case", case.id, content=content, at=self.now(), by=who)
                shelf.put_case(connection, case, summary, entry)
            revision = revision_of(entry)
        self._saved[case.id] = revision.number
        return revision

    def last_saved(self, case_id: str) -> int:
        """The revision of a case that this very store saved last; 0 for none."""
        return self._saved.get(case_id, 0)

    def case(self, case_id: str, number: int | None = None) -> StoredCase:
        """The case as its newest revision, or revision `number`, has it.

        Raises:
            Missing: There is no such case or revision.
            UnreadableRecord: A newer program saved it.
        """
        wanted = select(chain).where(chain.c.case_id == case_id, chain.c.kind == "case")
        if number is not None:
            wanted = wanted.where(chain.c.number == number)
        with self.database.reads() as connection:
            wanted = wanted.order_by(chain.c.number.desc()).limit(1)
            entry = connection.execute(wanted).mappings().first()
        if entry is None:
            raise Missing(
                f"The record book has no case {case_id}"
                + (f" with revision {number}." if number is not None else "."),
                "Look it up in the records; it may be in another book.",
            )
        case, summary = opened(entry["content"])
        return StoredCase(case=case, summary=summary, revision=revision_of(entry))

    def revisions(self, case_id: str) -> tuple[Revision, ...]:
        """Every revision of a case, oldest first; none for an unknown case."""
        wanted = select(chain).where(chain.c.case_id == case_id, chain.c.kind == "case")
        with self.database.reads() as connection:
            found = connection.execute(wanted.order_by(chain.c.number)).mappings()
            return tuple(revision_of(entry) for entry in found)

    def recent(self, limit: int = 50) -> tuple[CaseRow, ...]:
        """The cases worked on last, newest first."""
        return self.search(Query(limit=limit))

    def search(self, query: Query) -> tuple[CaseRow, ...]:
        """The cases that answer `query`, last touched first."""
        with self.database.reads() as connection:
            return shelf.rows(connection, query)

    def outcomes(self, label_id: str, *, excluding: str = "", key: str = "") -> Mapping[str, int]:
        """What animals under a label turned out to be.

        Args:
            label_id: The label entry.
            excluding: A case to leave out, so that it is no evidence for itself.
            key: Only cases made with that key; empty takes all.

        Returns:
            Number of established cases per taxon id, most first.
        """
        with self.database.reads() as connection:
            return shelf.outcomes(connection, label_id, excluding, key)

    def attach_sale(self, case_id: str, sale: Sale, by: str = "") -> None:
        """Note that the animal went out with `sale`; the same number again corrects it.

        Raises:
            Missing: There is no such case.
        """
        with self.database.writes() as connection:
            put_sale(connection, case_id, sale, at=self.now(), by=storable(by))

    def sales(self, case_id: str) -> tuple[Sale, ...]:
        """The sales of a case, by number; none for an unknown case."""
        with self.database.reads() as connection:
            return sales_of(connection, case_id)

    def cases_of_sale(self, number: str) -> tuple[str, ...]:
        """Ids of the cases that went out with that sale."""
        with self.database.reads() as connection:
            return cases_of_sale(connection, number)

    def draft(self, name: str) -> str:
        """Text that was being typed under `name`; empty when there is none."""
        with self.database.reads() as connection:
            return noted(connection, drafts, (self._station, name)) or ""

    def put_draft(self, name: str, text: str) -> None:
        """Keep text that is not saved yet; empty text removes it."""
        with self.database.writes() as connection:
            note(connection, drafts, (self._station, name), text or None)

    def setting(self, name: str, default: str = "") -> str:
        """The preference or window state kept under `name`."""
        with self.database.reads() as connection:
            found = noted(connection, settings, (self._station, name))
        return default if found is None else found

    def put_setting(self, name: str, value: str) -> None:
        """Keep a preference or a window state."""
        with self.database.writes() as connection:
            note(connection, settings, (self._station, name), value)

    def back_up(self, *, only_if_due: bool = False) -> Backup | None:
        """Copy the book beside itself and drop surplus copies; may take a second or more.

        Args:
            only_if_due: Do nothing and return None when there is one of the last 20 hours.

        Raises:
            Damaged: The book is broken; no backup was made or dropped.
            StoreError: It lies on a server, or the copy cannot be written.
        """
        file = self.database.file
        if file is None:
            raise StoreError(
                f"The record book {self.database.place} lies on a server.",
                "Back it up there, or copy it into a file.",
            )
        moment = self._clock()
        return back_up(file, moment) if not only_if_due or due(file, moment) else None

    def copy_to(self, place: Path | str, tick: Tick | None = None) -> int:
        """Copy every record into a new book at `place`, such as from a file to a server.

        Returns:
            Number of entries copied.

        Raises:
            StoreError: There are records already, or it cannot be written.
        """
        with Store.open(place) as target:
            return copy_records(self.database, target.database, tick)

    def verify(self, tick: Tick | None = None) -> tuple[ChainFault, ...]:
        """Every place where the book is not what was once saved; none when it is whole.

        Args:
            tick: Told (done, total) as the check goes on.
        """
        with self.database.reads() as connection:
            return (*faults(connection, tick), *faults_of_buyers(connection))

    def now(self) -> str:
        """The clock's time as ISO 8601 in UTC, to the millisecond."""
        moment = self._clock()
        if moment.tzinfo is None:
            raise ValueError("the clock must know its time zone")
        text = moment.astimezone(UTC).isoformat(timespec="milliseconds")
        return text.replace("+00:00", "Z")
