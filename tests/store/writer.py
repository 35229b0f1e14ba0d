"""A program that writes to a book and says after each write that it was told it is safe.

Run as ``python -m tests.store.writer PLACE SEED COUNT``; one JSON line per acknowledged write.
"""

import json
import random
import sys
from dataclasses import replace

from idkey.model.case import Finding
from idkey.store.book import Store
from idkey.store.record import Sale, VerdictSummary
from tests.store.cases import example

CASES = 8
"""Cases written to in turn, so that writers meet on them."""


def written(store: Store, chance: random.Random, seed: int, number: int) -> list[object]:
    """One random write and what was acknowledged of it."""
    case_id = f"case-{chance.randrange(CASES):06d}"
    text = f"{seed} {number:06d}"
    kind = chance.choice(["save", "save", "save", "sale", "draft"])
    if kind == "draft":
        store.put_draft(f"note {seed}", text)
        return ["draft", f"note {seed}", text]
    if kind == "sale" and any(row.case_id == case_id for row in store.recent(CASES)):
        store.attach_sale(case_id, Sale(number=text, buyer="B-1"))
        return ["sale", case_id, text]
    case = replace(example(0), id=case_id, note=text)
    case = case.observe(Finding(character="c", states=(f"s{chance.randrange(4)}",), note="x" * 300))
    summary = VerdictSummary(kind="open", level="open", taxa=(f"t{chance.randrange(4)}",))
    revision = store.save(case, summary, by=f"W{seed}")
    return ["save", case_id, revision.number, revision.digest, text]


def main() -> None:
    """Write, and acknowledge each write on a line of its own."""
    place, seed, count = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
    chance = random.Random(seed)  # noqa: S311 - a test, not a secret
    with Store.open(place, wait_seconds=20.0) as store:
        for number in range(count):
            print(json.dumps(written(store, chance, seed, number)), flush=True)


if __name__ == "__main__":
    main()
