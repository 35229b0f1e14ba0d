"""What is done with tables of sales and with documents that come back, off the UI thread."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from idkey.app.records.csv_file import write_csv
from idkey.app.records.work import Shelf
from idkey.errors import IdKeyError
from idkey.report.checking import Checked, checked
from idkey.report.language import Language
from idkey.store.record import Query
from idkey.store.till_list import (
    TakenIn,
    columns_in,
    first_line,
    remember,
    remembered,
    sale_table,
    take_in,
)

LARGEST = 50_000_000
"""Bytes in a table that is still read."""

_MOST = 100_000


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """A table of a till that was read.

    Attributes:
        content: The file.
        sample: What its first line says, per column.
        mapping: Column per field, as it was said for such a table last time.
    """

    content: bytes
    sample: Mapping[str, str]
    mapping: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Sales:
    """Sales of a record book, on their way in and out."""

    shelf: Shelf

    def read(self, file: Path) -> Table:
        """Read a table.

        Raises:
            IdKeyError: It cannot be read, or is none.
        """
        try:
            if file.stat().st_size > LARGEST:
                raise IdKeyError(f"{file.name} is far too large.", "Export fewer sales at once.")
            content = file.read_bytes()
        except OSError as err:
            raise IdKeyError(
                f"{file} cannot be read: {err.strerror or err}.", "Choose another file."
            ) from err
        mapping = remembered(self.shelf.store, columns_in(content))
        return Table(content=content, sample=first_line(content), mapping=mapping)

    def take_in(self, table: Table, mapping: Mapping[str, str]) -> TakenIn:
        """Attach its sales, and remember which column holds what."""
        remember(self.shelf.store, columns_in(table.content), mapping)
        return take_in(self.shelf.store, table.content, mapping)

    def write(self, file: Path, *, buyers: bool) -> Path:
        """Write the sales of all cases as CSV.

        Raises:
            IdKeyError: It cannot be written there.
        """
        store = self.shelf.store
        ids = [row.case_id for row in store.search(Query(limit=_MOST))]
        return write_csv(file, sale_table(store, ids, buyers=buyers))

    def checked(self, file: Path, language: Language) -> Checked:
        """Hold a rationale against the record and the key in hand.

        Raises:
            IdKeyError: It cannot be read, or holds no rationale.
        """
        return checked(file, self.shelf.store, self.shelf.key_of, language)
