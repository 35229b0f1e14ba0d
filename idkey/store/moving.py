"""Copies a whole record book into another, empty one: to a server, or from it to a file."""

from sqlalchemy import insert, select, text, update

from idkey.store.chain import ORIGIN, Tick
from idkey.store.database import Database
from idkey.store.faults import StoreError
from idkey.store.schema import chain, chain_end, metadata
from idkey.store.shelf import index_words

_ROWS = 500


def copy_records(source: Database, target: Database, tick: Tick | None = None) -> int:
    """Copy every record of `source` into `target`, both open and of the newest form.

    The chain is copied as it is, so every digest, also one printed on a rationale, stays valid.

    Args:
        source: The book to read; it is not changed.
        target: An empty book.
        tick: Told (done, total) in entries.

    Returns:
        Number of entries copied.

    Raises:
        StoreError: `target` holds records already.
    """
    with source.reads() as reading, target.writes() as writing:
        if writing.execute(select(chain_end.c.digest)).scalar() != ORIGIN:
            raise StoreError(
                f"The record book {target.place} holds records already.",
                "Copy into a new, empty book; nothing was changed.",
            )
        end = reading.execute(select(chain_end)).mappings().one()
        for table in metadata.sorted_tables:
            if table is chain_end:
                continue
            done = 0
            found = reading.execution_options(yield_per=_ROWS).execute(select(table))
            for rows in found.mappings().partitions():
                writing.execute(insert(table), [dict(row) for row in rows])
                done += len(rows)
                if tick is not None and table is chain:
                    tick(done, end["entry"])
        writing.execute(update(chain_end).values(entry=end["entry"], digest=end["digest"]))
        index_words(writing)
        if not target.sqlite:
            writing.execute(text("ANALYZE"))  # else searches are planned for an empty book
    return int(end["entry"])
