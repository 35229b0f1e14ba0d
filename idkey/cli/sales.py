"""Commands about sales: take in what a till writes, write them out, watch a folder, forget."""

import time
from pathlib import Path

import click

from idkey.cli.console import Console
from idkey.cli.opening import opened
from idkey.cli.recorded import book_option, full_id, open_book
from idkey.cli.usage import DONE, OPEN
from idkey.errors import IdKeyError
from idkey.places import PICTURES, data_folder
from idkey.report.language import CODES
from idkey.report.recorded import sale_writer
from idkey.store.book import Store
from idkey.store.erasing import erase_buyer
from idkey.store.record import Query
from idkey.store.till_list import (
    FIELDS,
    TakenIn,
    columns_in,
    remember,
    remembered,
    sale_table,
    take_in,
)
from idkey.store.watching import Attached, SaleFolder

_file = click.Path(dir_okay=False, path_type=Path)
_MOST = 100_000


@click.command("sales-in")
@click.argument("file", type=click.Path(exists=True, dir_okay=False, path_type=Path),
                metavar="FILE.csv")  # fmt: skip
@click.option(
    "--column", "columns", multiple=True, metavar="FIELD=COLUMN",
    help=f"Which column holds what; remembered for tables with these columns. "
         f"Fields: {', '.join(FIELDS)}.",
)  # fmt: skip
@click.option("--by", default="", help="Who takes it in, as initials or alias.")
@book_option
def sales_in(file: Path, columns: tuple[str, ...], by: str, book: str) -> int:
    """Attach the sales a till wrote as CSV to their cases.

    A line belongs to the case it names, else to the cases that have a sale of that number.
    Exit code 1: some lines found no case or could not be read.
    """
    content = file.read_bytes()
    with open_book(book) as store:
        mapping = _mapping(store, content, columns)
        done = take_in(store, content, mapping, by)
    return _told(done)


def _mapping(store: Store, content: bytes, said: tuple[str, ...]) -> dict[str, str]:
    """The columns as remembered, then as said; said ones are remembered."""
    names = columns_in(content)
    mapping = dict(remembered(store, names))
    for text in said:
        field, _, column = text.partition("=")
        if field not in FIELDS or column not in names:
            raise IdKeyError(
                f"{text!r} names no field or no column.",
                f"Write FIELD=COLUMN. Fields: {', '.join(FIELDS)}. Columns: {', '.join(names)}.",
            )
        mapping[field] = column
    if "number" not in mapping:
        raise IdKeyError(
            "No column is known to hold the number of the sale.",
            f"Say it once with --column number=COLUMN. Columns: {', '.join(names)}.",
        )
    if said:
        remember(store, names, mapping)
    return mapping


def _told(done: TakenIn) -> int:
    click.echo(f"{len(done.attached)} cases have a new or corrected sale.")
    for line in done.unmatched:
        click.echo(f"line {line.line}: sale {line.sale.number} belongs to no case of this book")
    for problem in done.problems:
        click.echo(problem)
    return OPEN if done.unmatched or done.problems else DONE


@click.command("sales-out")
@click.argument("out", type=_file, metavar="OUT.csv")
@click.argument("cases", nargs=-1, metavar="[CASE]...")
@click.option("--buyers", is_flag=True, help="Also write the references to buyers.")
@book_option
def sales_out(out: Path, cases: tuple[str, ...], buyers: bool, book: str) -> int:
    """Write sales with verdict and permit fields as CSV; all cases when none is named."""
    with open_book(book) as store:
        ids = [full_id(store, case) for case in cases]
        ids = ids or [row.case_id for row in store.search(Query(limit=_MOST))]
        text = sale_table(store, ids, buyers=buyers)
    out.write_text(text, "utf-8-sig", newline="")
    click.echo(f"wrote {out}: {len(ids)} {'case' if len(ids) == 1 else 'cases'}")
    return DONE


@click.command()
@click.argument("folder", type=click.Path(exists=True, file_okay=False, path_type=Path))
@click.option("--every", default=5.0, show_default=True, type=click.FloatRange(0.5, 3600),
              metavar="SECONDS")  # fmt: skip
@click.option("--once", is_flag=True, help="Look once and leave.")
@click.option("--language", default=CODES[0], show_default=True, type=click.Choice(CODES))
@book_option
def watch(folder: Path, every: float, once: bool, language: str, book: str) -> int:
    """Put the rationale of each sale beside the till's file or folder of its number.

    Runs until it is stopped with Ctrl+C. A sale gets its rationale once per case.
    """
    with open_book(book) as store:
        pictures = data_folder() / PICTURES
        writer = sale_writer(store, opened, language=language, pictures=pictures)
        till = SaleFolder(store, folder, writer)
        if not once:
            click.echo(f"watching {folder}; Ctrl+C ends it")
        while True:
            for one in till.poll():
                Console().tell(_attached(one))
            if once:
                return DONE
            try:
                time.sleep(every)
            except KeyboardInterrupt:
                return DONE


def _attached(one: Attached) -> str:
    if one.file is None:
        return f"sale {one.sale}, case {one.case_id[:8]}: {one.problem}"
    return f"sale {one.sale}, case {one.case_id[:8]}: wrote {one.file}"


@click.command("erase-buyer")
@click.argument("reference")
@click.option("--yes", is_flag=True, help="Do not ask first.")
@book_option
def erase(reference: str, yes: bool, book: str) -> int:
    """Forget a buyer's reference in sales, drafts and backups; the records stay verifiable.

    Exit code 1: something still names the buyer.
    """
    with open_book(book) as store:
        if not yes:
            click.confirm(f"Forget {reference!r} everywhere, for good?", abort=True)
        done = erase_buyer(store, reference)
    click.echo(f"sales: {done.sales}, drafts: {done.drafts}, backups: {done.backups}")
    for case_id in done.kept_in:
        click.echo(f"case {case_id} still names the buyer in a remark or in papers")
    for file in done.unreadable:
        click.echo(f"{file} could not be cleaned: delete it")
    return OPEN if done.kept_in or done.unreadable else DONE


SALES = (sales_in, sales_out, watch, erase)
"""What the group of records commands gains."""
