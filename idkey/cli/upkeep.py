"""Commands for whoever answers for the stock: rates, a new key version, a shared book."""

from pathlib import Path

import click
from sqlalchemy import make_url

from idkey.cli.console import Console
from idkey.cli.findings import unknown
from idkey.cli.opening import opened
from idkey.cli.recorded import book_option, open_book
from idkey.cli.usage import DONE, OPEN
from idkey.engine.labels import label_entry
from idkey.errors import IdKeyError
from idkey.places import BOOK_NOTE, data_folder, keep_private, record_book
from idkey.report.recorded import judged
from idkey.report.rerun_words import altered_reasons, altered_words
from idkey.store.book import Store
from idkey.store.drill_log import forget_person
from idkey.store.rates_table import rates_table
from idkey.store.record import VerdictSummary
from idkey.store.reruns import alterations, cases_per_key
from idkey.store.tallies import Period, Subject, tallies

_file = click.Path(dir_okay=False, path_type=Path)


@click.command()
@click.argument("out", type=_file, metavar="OUT.csv")
@click.option("--per", "period", default="month", show_default=True,
              type=click.Choice(["year", "month", "day"]))  # fmt: skip
@book_option
def rates(out: Path, period: str, book: str) -> int:
    """Write how often labels and suppliers are wrong as CSV, with 95 % Wilson intervals."""
    with open_book(book) as store:
        text, lines = rates_table(store, _names(store), Period(period))
    out.write_text(text, "utf-8-sig", newline="")
    click.echo(f"wrote {out}: {lines} lines")
    return DONE


def _names(store: Store) -> dict[str, str]:
    ids = {one.subject for one in tallies(store, Subject.LABEL)}
    found = {}
    for name in cases_per_key(store):
        try:
            key = opened(name)
        except IdKeyError:  # the labels of a key that is gone go by their id
            continue
        entries = ((label_id, label_entry(key, label_id)) for label_id in ids)
        found.update({label_id: entry.text for label_id, entry in entries if entry})
    return found


@click.command("run-again")
@click.argument("key_name", metavar="KEY")
@book_option
def run_again(key_name: str, book: str) -> int:
    """Judge all cases of a key again; list what comes out otherwise, and why.

    Nothing is changed: a case is issued anew in the window, one by one.
    """
    key = opened(key_name)
    console, changed = Console(), 0
    with open_book(book) as store:
        counted = cases_per_key(store)
        if key.id not in counted:
            raise unknown("key with cases", key.id, counted)
        found = alterations(store, key.id, lambda case: VerdictSummary.of(judged(store, key, case)))
        for one in found:
            changed += 1
            again = judged(store, key, one.stored.case)
            console.tell(f"{one.stored.case.id}  {one.stored.case.claim.text or 'no label'}")
            for line in altered_words(one.before, one.after):
                console.tell(line, indent="    ")
            for line in altered_reasons(key, one.before, again):
                console.tell(line, indent="      ", bullet="- ")
    click.echo(f"{changed} of {counted[key.id]} cases come out otherwise; nothing was changed")
    return DONE


@click.command("use")
@click.argument("place", required=False, metavar="[FILE or postgresql://ADDRESS]")
@click.option("--own", is_flag=True, help="Use the book of your own data folder again.")
def use(place: str | None, own: bool) -> int:
    """Let window and commands use another record book; without arguments, say which it is.

    Several counters share one book by using the same PostgreSQL address. No password should
    stand in it: the settings of the server's client keep one better.
    """
    note = data_folder() / BOOK_NOTE
    if own:
        note.unlink(missing_ok=True)
    elif place:
        named = place if "://" in place else str(Path(place).absolute())
        Store.open(named).close()
        keep_private(note, named.encode())
    click.echo(f"record book: {_shown(record_book())}")
    return DONE


def _shown(place: str) -> str:
    """The address without the password that may stand in it."""
    return make_url(place).render_as_string() if "://" in place else place


@click.command("copy-to")
@click.argument("place", metavar="FILE or postgresql://ADDRESS")
@book_option
def copy_to(place: str, book: str) -> int:
    """Copy every record into a new, empty book, such as from a file to a server."""
    with open_book(book) as store:
        number = store.copy_to(place)
    click.echo(f"copied {number} entries")
    return DONE


@click.command("erase-answers")
@click.argument("person")
@click.option("--yes", is_flag=True, help="Do not ask first.")
@book_option
def erase_answers(person: str, yes: bool, book: str) -> int:
    """Forget what somebody answered in the drill; backups keep it until they are gone.

    Exit code 1: nobody of that name answered anything.
    """
    with open_book(book) as store:
        if not yes:
            click.confirm(f"Forget every answer of {person!r}, for good?", abort=True)
        gone = forget_person(store, person)
    click.echo(f"answers: {gone}")
    return DONE if gone else OPEN


UPKEEP = (rates, run_again, use, copy_to, erase_answers)
"""What the group of records commands gains."""
