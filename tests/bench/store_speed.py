"""How long a full record book takes to search, open and check.

Run with ``python -m tests.bench.store_speed [--cases N] [--place FILE] [--postgresql]``; prints a
table in Markdown. Everything in the book is invented.
"""

import argparse
import random
import statistics
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path

from idkey.model.case import Case, Claim, Finding
from idkey.store.book import Store
from idkey.store.chain import append
from idkey.store.content import sealed
from idkey.store.record import Query, VerdictSummary
from idkey.store.shelf import put_case
from idkey.store.tallies import Period, Subject, tallies
from tests.store.server import server

ROUNDS = 21
_BATCH = 2000
_ADJECTIVES = ("asian", "giant", "black", "forest", "emperor", "desert", "red", "golden", "rock")
_NOUNS = ("scorpion", "gecko", "mantis", "tarantula", "skink", "frog")
_SUPPLIERS = tuple(
    f"{first} {second}"
    for first in ("Mossy", "Lantern", "Quiet", "Amber")
    for second in ("Corner", "Street Vivarium", "Pond", "Yard", "Bank")
)
_KINDS = ["holds", "too_broad", "contradicted", "open", "outside", "label_unknown"]
_WORDS = ("calm", "nervous", "moulted", "dark", "pale", "missing", "leg", "claws", "thin", "wet")


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the table: median and worst of `ROUNDS`, in milliseconds."""

    what: str
    median_ms: float
    worst_ms: float
    found: int


def invented(number: int, chance: random.Random) -> tuple[Case, VerdictSummary]:
    """A case with eight findings, its remark and a verdict."""
    label = f"{chance.choice(_ADJECTIVES)} {chance.choice(_ADJECTIVES)} {chance.choice(_NOUNS)}"
    kind = chance.choice(_KINDS)
    taxon = f"genus{chance.randrange(8)}_species{chance.randrange(40)}"
    day = f"20{chance.randrange(15, 26)}-{chance.randrange(1, 13):02}-{chance.randrange(1, 29):02}"
    findings = tuple(
        Finding(character=f"character_{n}", states=(f"state_{chance.randrange(4)}",), note=note)
        for n, note in enumerate([*chance.sample(_WORDS, 3), *[""] * 5])
    )
    case = Case(
        id=f"{number:08x}-{chance.getrandbits(48):012x}",
        key="bench",
        key_version="1.0.0",
        claim=Claim(
            text=label.title(),
            label=label.replace(" ", "_"),
            supplier=chance.choice(_SUPPLIERS),
            date=day,
        ),
        findings=findings,
        note=" ".join(chance.sample(_WORDS, 4)) + f" tub {number}",
        by=chance.choice(["RB", "MT", "AK"]),
    )
    level = "established" if kind in ("holds", "contradicted") else "open"
    name = taxon.replace("_", " ").title()
    return case, VerdictSummary(kind=kind, level=level, name=name, taxa=(taxon,))


def filled(store: Store, cases: int) -> float:
    """Fill the book with `cases` cases of two revisions; seconds it took."""
    chance, start = random.Random(7), time.perf_counter()  # noqa: S311 - a bench, not a secret
    for first in range(0, cases, _BATCH):
        with store.database.writes() as connection:
            for number in range(first, min(first + _BATCH, cases)):
                case, summary = invented(number, chance)
                for content in (sealed(case, None), sealed(case, summary)):
                    entry = append(
                        connection, "case", case.id, content=content, at=store.now(), by=case.by
                    )
                put_case(connection, case, summary, entry)
    return time.perf_counter() - start


def measured(what: str, call: Callable[[], object]) -> Row:
    """Median and worst time of `call`, after one call that is not counted."""
    found = call()
    times = []
    for _ in range(ROUNDS):
        start = time.perf_counter()
        call()
        times.append((time.perf_counter() - start) * 1000)
    number = len(found) if isinstance(found, tuple | dict) else 1
    return Row(what, statistics.median(times), max(times), number)


QUERIES = {
    "newest 50": Query(),
    "label, two words": Query(label="asian forest"),
    "a word in one case of six": Query(text="scorpion"),
    "two words": Query(text="calm moulted"),
    "beginning of a word": Query(text="sc"),
    "one letter": Query(text="s"),
    "one tub": Query(text="tub 4711"),
    "no hit": Query(text="zebra"),
    "name": Query(name="genus3 species12"),
    "supplier": Query(supplier="lantern street"),
    "supplier and a verdict": Query(supplier="amber pond", verdict="outside"),
    "verdict": Query(verdict="contradicted"),
    "two days": Query(since="2019-03-01", until="2019-03-02"),
    "a year": Query(since="2015-01-01", until="2015-12-31"),
    "taxon": Query(taxon="genus3_species12"),
    "label entry": Query(label_id="asian_forest_scorpion"),
    "all at once": Query(
        text="calm", supplier="mossy", verdict="holds", since="2020-01-01", taxon="genus1_species1"
    ),
}


def searches(store: Store) -> list[Row]:
    """Every search a person can make."""
    return [
        measured(f"search: {what}", partial(store.search, query)) for what, query in QUERIES.items()
    ]


def steps(store: Store, place: Path | str) -> list[Row]:
    """What else happens while a person waits."""
    opened = store.case(store.recent(1)[0].case_id)
    case_id, number = opened.case.id, iter(range(10_000))

    def change() -> object:
        return store.save(replace(opened.case, note=f"change {next(number)}"), opened.summary)

    per_month = partial(tallies, store, Subject.SUPPLIER, period=Period.MONTH)
    return [
        measured("open a case", partial(store.case, case_id)),
        measured("its revisions", partial(store.revisions, case_id)),
        measured("outcomes of a label", partial(store.outcomes, "asian_forest_scorpion")),
        measured("counts per supplier and month", per_month),
        measured("save a change", change),
        measured("a keystroke of a draft", partial(store.put_draft, "note", "x" * 200)),
        measured("open the book", lambda: Store.open(place).close()),
    ]


def once(what: str, call: Callable[[], object]) -> None:
    """Print the time of one call, in seconds."""
    start = time.perf_counter()
    call()
    print(f"| {what} | {time.perf_counter() - start:.1f} s | once | |")


def printed(store: Store, place: Path | str) -> None:
    """Measure and print the table."""
    print("\n| what | median | worst | found |\n| --- | ---: | ---: | ---: |")
    for row in [*searches(store), *steps(store, place)]:
        print(f"| {row.what} | {row.median_ms:.1f} ms | {row.worst_ms:.1f} ms | {row.found} |")
    once("check the chain", store.verify)
    if store.database.sqlite:
        once("back the book up", store.back_up)


def main() -> None:
    """Fill a book, measure, print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--cases", type=int, default=100_000)
    parser.add_argument("--place", default="", help="a file to fill, or that was filled before")
    parser.add_argument("--postgresql", action="store_true", help="and the same on a server")
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        place = Path(options.place or Path(folder) / "bench.sqlite3")
        with Store.open(place) as store:
            if not store.recent(1):
                print(f"filled in {filled(store, options.cases):.0f} s")
            print(f"{place.stat().st_size / 1e6:.0f} MB in the file")
            if not options.postgresql:
                printed(store, place)
                return
            with server() as socket:
                address = f"postgresql://idkey@/postgres?host={socket}"
                once("copy to the server", lambda: store.copy_to(address))
                with Store.open(address) as there:
                    printed(there, address)


if __name__ == "__main__":
    main()
