"""Commands about the record book: look up, check, copy, hand on."""

from datetime import UTC, date, datetime
from pathlib import Path

import click

from idkey.cli.console import Console
from idkey.cli.findings import unknown
from idkey.cli.opening import opened
from idkey.cli.recorded import book_file, book_option, full_id, open_book, recorded
from idkey.cli.sales import SALES
from idkey.cli.upkeep import UPKEEP
from idkey.cli.usage import DONE, OPEN
from idkey.engine.result import VerdictKind
from idkey.errors import IdKeyError
from idkey.report.checking import checked
from idkey.report.darwincore import Dataset, write_archive
from idkey.report.label_pdf import write_labels
from idkey.report.label_stock import STOCKS
from idkey.report.recorded import archived
from idkey.report.shop_label import shop_label
from idkey.report.verify import verify_words
from idkey.store.backups import back_up, backups, restore
from idkey.store.files import check_file, check_whole, copy_book
from idkey.store.record import CaseRow, Query

_file = click.Path(dir_okay=False, path_type=Path)


@click.group()
def records() -> None:
    """Look up, check and copy the record book."""


@records.command()
@click.argument("text")
@click.option("--label", default="", help="Words of the label.")
@click.option("--name", default="", help="Words of the name it was given.")
@click.option("--supplier", default="", help="Words of the supplier's name.")
@click.option("--since", default="", metavar="DAY", help="First day, YYYY-MM-DD.")
@click.option("--until", default="", metavar="DAY", help="Last day, YYYY-MM-DD.")
@click.option("--verdict", default="", help="Such as holds, contradicted, open.")
@click.option("--limit", default=50, show_default=True, type=click.IntRange(1, 10_000))
@book_option
def search(book: str, **asked: str) -> int:
    """List cases with these words in label, name, supplier, remarks, sale number or id.

    Words match from their start. Give "" for every case.
    """
    for day in ("since", "until"):
        _check_day(asked[day])
    kinds = [kind.value for kind in VerdictKind]
    if asked["verdict"] and asked["verdict"] not in kinds:
        raise unknown("verdict", asked["verdict"], kinds)
    with open_book(book) as store:
        found = store.search(Query(**asked))  # type: ignore[arg-type]
    for row in found:
        click.echo(_line(row))
    if not found:
        click.echo("No case has that. Try fewer words, or only the beginnings of words.")
    return DONE


def _check_day(text: str) -> None:
    try:
        _ = date.fromisoformat(text) if text else None
    except ValueError as err:
        raise IdKeyError(f"{text!r} is no day.", "Write it as YYYY-MM-DD.") from err


def _line(row: CaseRow) -> str:
    parts = (row.case_id, row.day, row.kind or "no verdict", row.label or "no label", row.name)
    supplier = f"from {row.supplier}" if row.supplier else ""
    return "  ".join(part for part in (*parts, supplier) if part)


@records.command()
@book_option
def verify(book: str) -> int:
    """Check that every entry says what was once saved, and follows from the one before.

    Exit code 1: it does not.
    """
    with open_book(book) as store:
        faults = store.verify()
    for fault in faults:
        case = f", case {fault.case_id}" if fault.case_id else ""
        click.echo(f"entry {fault.entry}{case}: {fault.problem}")
    if faults:
        click.echo(
            "The book is not what was saved. Keep this file, and compare it with a backup "
            "before you rely on these cases."
        )
        return OPEN
    click.echo("Every entry is what was saved, and follows from the one before.")
    return DONE


@records.command()
@click.argument("file", type=_file, required=False)
@book_option
def backup(book: str, file: Path | None) -> int:
    """Copy the book to FILE, also while it is in use; without FILE, beside the book."""
    source = book_file(book)
    if not source.is_file():
        raise IdKeyError(f"There is no record book {source}.", "Name the file with --book.")
    if file is None:
        click.echo(f"wrote {back_up(source).file}")
        return DONE
    if file.exists():
        raise IdKeyError(f"{file} is there already.", "Choose another name; nothing was changed.")
    check_whole(source)
    copy_book(source, file)
    check_whole(file)
    click.echo(f"wrote {file}")
    return DONE


@records.command("restore")
@click.argument("file", type=_file, required=False)
@book_option
def restore_(book: str, file: Path | None) -> int:
    """Make FILE the book, or without FILE the newest whole backup; close the window before.

    The book that was there is kept.
    """
    target = book_file(book)
    if file is not None:
        if not file.is_file():
            known = "".join(f"\n  {one.file}" for one in backups(target))
            raise IdKeyError(
                f"There is no backup {file}.",
                f"Backups beside the book:{known}" if known else "Give the path of a backup.",
            )
        check_file(file)
    done = restore(target, file)
    click.echo(f"{target} is now what {done.backup} holds.")
    if done.replaced is not None:
        click.echo(f"The book before it is kept as {done.replaced}.")
    return DONE


@records.command("export-dwc")
@click.argument("out", type=_file, metavar="OUT.zip")
@click.argument("cases", nargs=-1, required=True, metavar="CASE...")
@click.option("--owner", default="not stated", show_default=True, help="Who publishes it.")
@click.option("--title", default="Animals from trade, re-identified", show_default=True)
@book_option
def export_dwc(book: str, out: Path, cases: tuple[str, ...], owner: str, title: str) -> int:
    """Write cases as a Darwin Core Archive; buyers never enter it."""
    with open_book(book) as store:
        ids = dict.fromkeys(full_id(store, case) for case in cases)
        found = archived(store, opened, ids)
    day = datetime.now(UTC).date().isoformat()
    write_archive(out, found, Dataset(title=title, owner=owner, published=day))
    click.echo(f"wrote {out}: {len(found)} {'case' if len(found) == 1 else 'cases'}")
    return DONE


@click.command("verify")
@click.argument("file", type=_file, metavar="FILE.pdf|json")
@book_option
def verify_file(book: str, file: Path) -> int:
    """Say whether a rationale is whole, matches the record, and would come out the same now.

    Exit code 1: something speaks against the document.
    """
    if book or book_file("").is_file():
        with open_book(book) as store:
            found = checked(file, store, opened)
    else:
        found = checked(file, None, opened)
    console = Console()
    console.tell(verify_words(found.result))
    for remark in found.remarks:
        console.tell(remark)
    return DONE if found.good else OPEN


@click.command()
@click.argument("case")
@click.argument("out", type=_file, metavar="OUT.pdf")
@click.option(
    "--stock", default="roll 62x29", show_default=True, type=click.Choice(list(STOCKS)),
    help="What it is printed on; sizes in mm, or labels across and down.",
)  # fmt: skip
@click.option("--price", default="", help="Price to print, with its currency.")
@book_option
def label(book: str, case: str, out: Path, stock: str, price: str) -> int:
    """Write the corrected shop label of a recorded case as PDF."""
    with open_book(book) as store:
        found = recorded(store, case).rationale()
    write_labels(out, [shop_label(found, price=price)], STOCKS[stock])
    click.echo(f"wrote {out}: {found.heading}")
    return DONE


for _command in (*SALES, *UPKEEP):
    records.add_command(_command)

COMMANDS = (records, verify_file, label)
"""What the command line gains."""
