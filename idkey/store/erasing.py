"""Forgets a buyer everywhere, and leaves the chain valid."""

import json
import sqlite3
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, delete, select, text, update

from idkey.store.backups import backup_folder
from idkey.store.book import Store
from idkey.store.database import Database
from idkey.store.files import existing
from idkey.store.schema import chain, drafts, sales


@dataclass(frozen=True, slots=True, kw_only=True)
class Erased:
    """What became of a buyer's reference.

    Attributes:
        sales: Sales that named the buyer and no longer do.
        drafts: Unsaved texts that held the reference and were thrown away.
        backups: Backups it was erased from.
        kept_in: Ids of cases whose remarks or papers hold the reference. They are part of the
            chain, which would break; the buyer must be told, or the book be kept under lock.
        unreadable: Copies it could not be erased from; delete them.
    """

    sales: int
    drafts: int
    backups: int
    kept_in: tuple[str, ...]
    unreadable: tuple[Path, ...]


def erase_buyer(store: Store, buyer: str) -> Erased:
    """Erase a buyer's reference from all sales, drafts and backups.

    The chain holds only a digest of the reference with a random salt; the salt goes too, so the
    digest tells nothing any more and stays valid.

    Args:
        store: The book.
        buyer: The reference, exactly as noted.

    Raises:
        ValueError: `buyer` is empty.
    """
    if not buyer.strip():
        raise ValueError("an empty reference names nobody")
    with store.database.writes() as connection:
        named = update(sales).where(sales.c.buyer == buyer).values(buyer="", salt="")
        gone = connection.execute(named).rowcount
        typed = drafts.c.value.contains(buyer, autoescape=True)
        thrown = connection.execute(delete(drafts).where(typed)).rowcount
        kept_in = _mentions(connection, buyer)
    log = _sweep(store.database)
    cleaned, unreadable = _clean_copies(store.database.file, buyer)
    return Erased(
        sales=gone,
        drafts=thrown,
        backups=cleaned,
        kept_in=kept_in,
        unreadable=(*log, *unreadable),
    )


def _mentions(connection: Connection, buyer: str) -> tuple[str, ...]:
    written = json.dumps(buyer, ensure_ascii=False)[1:-1]
    wanted = select(chain.c.case_id).where(chain.c.content.contains(written, autoescape=True))
    return tuple(connection.execute(wanted.distinct().order_by(chain.c.case_id)).scalars())


def _sweep(database: Database) -> tuple[Path, ...]:
    """Let the bytes go too; returns the log of the book while another program holds on to it."""
    if database.file is not None:
        with closing(existing(database.file, database.wait_seconds)) as connection:
            (busy, *_) = connection.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
        return (database.file.with_name(database.file.name + "-wal"),) if busy else ()
    engine = database.engine.execution_options(isolation_level="AUTOCOMMIT")
    with engine.connect() as server:
        for table in ("sales", "drafts"):
            server.execute(text(f"VACUUM (FULL) {table}"))
    return ()


def _clean_copies(book: Path | None, buyer: str) -> tuple[int, tuple[Path, ...]]:
    cleaned, unreadable = 0, []
    folder = None if book is None else backup_folder(book)
    files = sorted(folder.iterdir()) if folder is not None and folder.is_dir() else []
    for file in files:
        if file.name.endswith(("-wal", "-shm")):
            continue
        try:
            cleaned += _clean(file, buyer)
        except sqlite3.Error:
            unreadable.append(file)
    return cleaned, tuple(unreadable)


def _clean(file: Path, buyer: str) -> bool:
    with closing(existing(file)) as copy:
        copy.execute("PRAGMA secure_delete = ON")
        with copy:
            named = copy.execute("UPDATE sales SET buyer = '', salt = '' WHERE buyer = ?", (buyer,))
            typed = copy.execute("DELETE FROM drafts WHERE instr(value, ?) > 0", (buyer,))
        copy.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        return bool(named.rowcount or typed.rowcount)
