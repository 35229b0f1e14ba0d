"""Copies of a record book's file that rotate, and the way back from one."""

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from idkey.store.faults import Busy, Damaged, Missing, StoreError
from idkey.store.files import check_whole, copy_book, in_use, unwritable

NEWEST, DAYS, WEEKS, MONTHS = 3, 7, 5, 12
"""How many are kept: the newest ones, then the newest of each day, week and month."""

_NAME = re.compile(r"(?P<stem>.+)\.(?P<number>\d{6,})\.(?P<at>\d{8}T\d{6}Z)\.backup")
_STAMP = "%Y%m%dT%H%M%SZ"


@dataclass(frozen=True, slots=True, kw_only=True)
class Backup:
    """One copy of the book.

    Attributes:
        file: Where it is.
        number: Goes up by one with each backup; orders them, whatever the clock said.
        moment: When it was made, by the clock of the machine.
        size_bytes: Size of the file.
    """

    file: Path
    number: int
    moment: datetime
    size_bytes: int

    @property
    def at(self) -> str:
        """When it was made, to be read by a person."""
        return f"{self.moment:%Y-%m-%d %H:%M} UTC"


@dataclass(frozen=True, slots=True, kw_only=True)
class Restored:
    """What a restore did.

    Attributes:
        backup: The backup that is the book now.
        replaced: Where the book before it is kept; None when there was none.
    """

    backup: Path
    replaced: Path | None


def backup_folder(book: Path) -> Path:
    """Where the backups of a book lie: beside it."""
    return book.with_name(f"{book.stem}-backups")


def backups(book: Path) -> tuple[Backup, ...]:
    """The backups of a book, newest first."""
    folder = backup_folder(book)
    files = folder.iterdir() if folder.is_dir() else ()
    found = (_backup(file, book.stem) for file in files)
    return tuple(sorted((b for b in found if b), key=lambda b: b.number, reverse=True))


def newest_whole(book: Path) -> Backup | None:
    """The newest backup that can be read; None when there is none."""
    return next((backup for backup in backups(book) if _whole(backup.file)), None)


def due(book: Path, moment: datetime, every: timedelta = timedelta(hours=20)) -> bool:
    """Whether no backup was made within `every` of `moment`, nor one dated later than it."""
    newest = next(iter(backups(book)), None)
    return newest is None or not timedelta() <= moment - newest.moment < every


def back_up(book: Path, moment: datetime | None = None) -> Backup:
    """Copy the book, also while it is in use, check the copy, and drop surplus backups.

    Args:
        book: The file.
        moment: When; None takes the machine's clock.

    Raises:
        Damaged: The book is broken: no backup is made, and none is dropped.
        StoreError: The copy cannot be written.
    """
    moment = (moment or datetime.now(UTC)).astimezone(UTC).replace(microsecond=0)
    number = max((backup.number for backup in backups(book)), default=0) + 1
    target = backup_folder(book) / f"{book.stem}.{number:06d}.{moment:{_STAMP}}.backup"
    copy_book(book, target)
    try:
        check_whole(target)
    except Damaged:
        target.unlink()
        raise
    made, *_ = backups(book)
    for old in surplus(backups(book)):
        old.file.unlink()
    return made


def surplus(made: Iterable[Backup]) -> tuple[Backup, ...]:
    """Backups that may go. Never the `NEWEST` ones, nor the newest of a day, week or month kept."""
    ordered = sorted(made, key=lambda backup: backup.number, reverse=True)
    kept = {backup.number for backup in ordered[:NEWEST]}
    periods: tuple[tuple[Callable[[datetime], object], int], ...] = (
        (lambda moment: moment.date(), DAYS),
        (lambda moment: moment.isocalendar()[:2], WEEKS),
        (lambda moment: (moment.year, moment.month), MONTHS),
    )
    for period, count in periods:
        newest_of: dict[object, int] = {}
        for backup in ordered:
            newest_of.setdefault(period(backup.moment), backup.number)
        kept.update(list(newest_of.values())[:count])
    return tuple(backup for backup in ordered if backup.number not in kept)


def restore(book: Path, backup: Path | None = None) -> Restored:
    """Make a backup the book; the book before it is kept beside the backups.

    Args:
        book: The file of the book, which nobody has open.
        backup: The backup; None takes the newest one that is whole.

    Raises:
        Missing: There is no whole backup.
        Damaged: `backup` is broken; the book is left as it is.
        Busy: The book is open in a program.
        StoreError: A file cannot be written or moved.
    """
    if backup is None:
        newest = newest_whole(book)
        if newest is None:
            raise Missing(
                f"There is no whole backup of {book} in {backup_folder(book)}.",
                "Look for a copy elsewhere; the book was left as it is.",
            )
        backup = newest.file
    check_whole(backup)
    if book.exists() and in_use(book):
        raise Busy(
            f"The record book {book} is open in a program.",
            "Close idkey everywhere, then restore again.",
        )
    fresh = book.with_name(book.name + ".restoring")
    copy_book(backup, fresh)
    try:
        replaced = _set_aside(book)
        fresh.replace(book)
    except OSError as err:
        raise unwritable(book, err) from err
    return Restored(backup=backup, replaced=replaced)


def _set_aside(book: Path) -> Path | None:
    if not book.exists():
        return None
    number = 1
    while (aside := backup_folder(book) / f"{book.stem}.replaced-{number}").exists():
        number += 1
    aside.parent.mkdir(mode=0o700, exist_ok=True)
    for ending in ("-wal", "-shm", ""):
        part = book.with_name(book.name + ending)
        if part.exists():
            part.replace(aside.with_name(aside.name + ending))
    return aside


def _backup(file: Path, stem: str) -> Backup | None:
    found = _NAME.fullmatch(file.name)
    if found is None or found["stem"] != stem:
        return None
    try:
        moment = datetime.strptime(found["at"], _STAMP).replace(tzinfo=UTC)
    except ValueError:
        return None
    size = file.stat().st_size
    return Backup(file=file, number=int(found["number"]), moment=moment, size_bytes=size)


def _whole(file: Path) -> bool:
    try:
        check_whole(file)
    except StoreError:
        return False
    return True
