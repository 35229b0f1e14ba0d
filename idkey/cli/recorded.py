"""Where the record book is, and its cases by the beginning of their id."""

from pathlib import Path

import click

from idkey.cli.opening import opened
from idkey.errors import IdKeyError
from idkey.places import record_book
from idkey.report import recorded as judging
from idkey.report.recorded import Recorded
from idkey.store.book import Store
from idkey.store.faults import Missing
from idkey.store.record import Query

book_option = click.option(
    "--book",
    default="",
    metavar="FILE",
    help="The record book, as a file or postgresql:// address; by default your own.",
)


def book_file(place: str) -> Path:
    """The file of the record book; `place` empty takes the person's own.

    Raises:
        IdKeyError: The book lies on a server.
    """
    found = place or record_book()
    if "://" in found:
        raise IdKeyError(
            "This record book lies on a server.",
            "Back it up and restore it with the tools of the server.",
        )
    return Path(found)


def open_book(place: str) -> Store:
    """The record book, which must be there already.

    Raises:
        IdKeyError: There is none, or it cannot be read.
    """
    found = place or record_book()
    if "://" not in found and not Path(found).is_file():
        raise IdKeyError(
            f"There is no record book {found}.",
            "Name the file with --book, or save a case in the window first.",
        )
    return Store.open(found)


def full_id(store: Store, given: str) -> str:
    """The id of the one case whose id begins with `given`.

    Raises:
        Missing: No case does, or several do.
    """
    found = [
        row.case_id
        for row in store.search(Query(text=given, limit=50))
        if row.case_id.startswith(given)
    ]
    if given in found or not found:
        return given
    if len(found) > 1:
        raise Missing(
            f"{len(found)} cases begin with {given}.", "Give more signs of the case's id."
        )
    return found[0]


def recorded(store: Store, given: str) -> Recorded:
    """A saved case by its id or the beginning of it, judged with the key in hand.

    Raises:
        IdKeyError: There is no such case, or its key is not at hand.
    """
    return judging.recorded(store, opened, full_id(store, given))
