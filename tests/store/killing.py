"""Kills writing programs at any moment and holds the book against what they acknowledged."""

import json
import random
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from idkey.store.book import Store

ROOT = Path(__file__).parents[2]


@dataclass(frozen=True, slots=True)
class Toll:
    """What a series of kills did.

    Attributes:
        writes: Writes that were acknowledged.
        kills: How often a writer was killed.
        lost: Acknowledged writes that are not in the book.
        faults: Faults of the chain.
    """

    writes: int
    kills: int
    lost: tuple[str, ...]
    faults: int


def writer(place: Path | str, seed: int, count: int) -> subprocess.Popen[str]:
    """Start a program that makes `count` random writes."""
    command = [sys.executable, "-m", "tests.store.writer", str(place), str(seed), str(count)]
    return subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=ROOT)


def acknowledged(process: subprocess.Popen[str]) -> Iterator[list[str]]:
    """What the writer acknowledged; half a line at the end, cut by a kill, counts for nothing."""
    with process:
        for line in process.stdout or ():
            if line.endswith("\n"):
                yield json.loads(line)


def killed(place: Path | str, writes: int, kills_wanted: int, seed: int = 1) -> Toll:
    """Kill writers with SIGKILL after a random number of writes each, until there are `writes`.

    Args:
        place: The book.
        writes: Acknowledged writes wanted, at least.
        kills_wanted: About how many kills that should take.
        seed: Start of the random numbers.
    """
    chance = random.Random(seed)  # noqa: S311 - a test, not a secret
    acks: list[list[str]] = []
    kills = 0
    while len(acks) < writes:
        process = writer(place, seed + kills, 10 * writes)
        alive = chance.randint(1, 2 * writes // kills_wanted)
        for number, ack in enumerate(acknowledged(process), start=1):
            acks.append(ack)
            if number == alive:
                process.kill()  # what it still acknowledges meanwhile is read to the end
        kills += 1
    lost, faults = missing(place, acks)
    return Toll(writes=len(acks), kills=kills, lost=lost, faults=faults)


def missing(place: Path | str, acks: list[list[str]]) -> tuple[tuple[str, ...], int]:
    """Acknowledged writes that the book does not hold, and the faults of its chain."""
    with Store.open(place) as store:
        digests = {
            (row.case_id, r.number): r.digest
            for row in store.recent(1000)
            for r in store.revisions(row.case_id)
        }
        sold = {
            (row.case_id, sale.number)
            for row in store.recent(1000)
            for sale in store.sales(row.case_id)
        }
        drafts = {ack[1]: ack[2] for ack in acks if ack[0] == "draft"}
        lost = [
            repr(ack)
            for ack in acks
            if (ack[0] == "save" and digests.get((ack[1], int(ack[2]))) != ack[3])
            or (ack[0] == "sale" and (ack[1], ack[2]) not in sold)
        ]
        # A write that was made but not yet acknowledged may have put a later text.
        lost += [name for name, text in drafts.items() if store.draft(name) < text]
        return tuple(lost), len(store.verify())
