"""Watches a folder where a till leaves its sales, and puts the rationales beside them."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import select

from idkey.errors import IdKeyError
from idkey.store.book import Store
from idkey.store.codec import sha256
from idkey.store.files import unwritable
from idkey.store.rationales import Rationale, put_rationale, rationales_of
from idkey.store.record import Query, Sale, StoredCase
from idkey.store.schema import chain_end
from idkey.store.words import plain_words

MARK = " rationale "
"""Stands in the name of every file put there; such files are never taken for a sale."""

_MOST_CASES = 200  # of one sale

Writer = Callable[[StoredCase, Sale], bytes]
"""Makes the document for a case and its sale, such as a PDF."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Attached:
    """What became of one sale found in the folder.

    Attributes:
        case_id: The case.
        sale: Number of its sale.
        file: The rationale that was written; None when that failed.
        problem: Why it failed, with what to do; empty otherwise.
    """

    case_id: str
    sale: str
    file: Path | None
    problem: str = ""


class SaleFolder:
    """A folder with one file or folder per sale, named by the sale's number.

    A sale gets one rationale per case, once: issuing another after the case has changed is a
    deliberate step, not something a watch does.

    Args:
        store: The book.
        folder: Where the till leaves its sales.
        writer: Makes the document.
        ending: Ending of the document's file name.
    """

    def __init__(self, store: Store, folder: Path, writer: Writer, ending: str = ".pdf") -> None:
        self._store = store
        self._folder = folder
        self._writer = writer
        self._ending = ending
        self._seen: tuple[int, frozenset[str]] | None = None

    def poll(self) -> tuple[Attached, ...]:
        """Write the rationales that are missing; quick when nothing has changed.

        What failed is tried again with the next change of the folder or the book.

        Raises:
            IdKeyError: The folder cannot be read.
        """
        try:
            entries = [e for e in self._folder.iterdir() if MARK not in e.name]
        except OSError as err:
            raise IdKeyError(
                f"The folder {self._folder} cannot be read: {err.strerror}.",
                "Choose another folder to watch, or make it readable for you.",
            ) from err
        now = (self._last_entry(), frozenset(entry.name for entry in entries))
        if now == self._seen:
            return ()
        done = tuple(
            self._attach(stored, sale, entry)
            for entry in sorted(entries)
            for stored, sale in self._waiting(entry)
        )
        self._seen = (self._last_entry(), now[1])
        return done

    def _waiting(self, entry: Path) -> Iterator[tuple[StoredCase, Sale]]:
        words = plain_words(entry.name if entry.is_dir() else entry.stem)
        if not words:
            return
        for row in self._store.search(Query(text=" ".join(words), limit=_MOST_CASES)):
            has = {rationale.sale for rationale in rationales_of(self._store, row.case_id)}
            for sale in self._store.sales(row.case_id):
                if plain_words(sale.number) == words and sale.number not in has:
                    yield self._store.case(row.case_id), sale

    def _attach(self, stored: StoredCase, sale: Sale, entry: Path) -> Attached:
        case_id = stored.case.id
        short = "".join(sign for sign in case_id if sign.isalnum())[:8]
        beside = entry if entry.is_dir() else entry.parent
        stem = entry.name if entry.is_dir() else entry.stem
        file = beside / f"{stem}{MARK}{short}{self._ending}"
        try:
            document = self._writer(stored, sale)
            _write(file, document)
            note = Rationale(
                digest=sha256(document),
                case_id=case_id,
                revision=stored.revision.number,
                sale=sale.number,
                file=file.name,
            )
            put_rationale(self._store, note)
        except IdKeyError as err:
            return Attached(case_id=case_id, sale=sale.number, file=None, problem=str(err))
        return Attached(case_id=case_id, sale=sale.number, file=file)

    def _last_entry(self) -> int:
        with self._store.database.reads() as connection:
            return connection.execute(select(chain_end.c.entry)).scalar() or 0


def _write(file: Path, document: bytes) -> None:
    partial = file.with_name(file.name + ".partial")
    try:
        partial.write_bytes(document)
        partial.replace(file)
    except OSError as err:
        raise unwritable(file, err) from err
    finally:
        partial.unlink(missing_ok=True)
