"""Kills writing programs many times over and counts what is lost.

Run with ``python -m tests.bench.store_kills [--writes N] [--kills N] [--postgresql]``.
"""

import argparse
import contextlib
import tempfile
import time
from pathlib import Path

from tests.store.killing import killed
from tests.store.server import server


def main() -> None:
    """Kill, count, print."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--writes", type=int, default=2000)
    parser.add_argument("--kills", type=int, default=40)
    parser.add_argument("--postgresql", action="store_true")
    options = parser.parse_args()
    with contextlib.ExitStack() as stack:
        folder = stack.enter_context(tempfile.TemporaryDirectory())
        place: Path | str = Path(folder) / "idkey.sqlite3"
        if options.postgresql:
            place = f"postgresql://idkey@/postgres?host={stack.enter_context(server())}"
        start = time.perf_counter()
        toll = killed(place, options.writes, options.kills)
        print(
            f"{toll.writes} writes acknowledged, {toll.kills} kills, {len(toll.lost)} lost, "
            f"{toll.faults} faults of the chain, {time.perf_counter() - start:.0f} s"
        )


if __name__ == "__main__":
    main()
