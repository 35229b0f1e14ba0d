"""A shop's years in one sitting: does the program grow, or slow down?

Run with ``python -m tests.bench.soak [--cases 2000] [--out docs/soak.md]``.
Drives the real window's state: a new case, its label, findings as an animal of the key would
give them (one of twelve withdrawn and one undone), and puts the case away. The animals are
drawn from the key with a fixed seed; everything in the book is invented.
"""

import argparse
import gc
import os
import statistics
import sys
import tempfile
import time
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from PySide6.QtCore import QEvent, QEventLoop
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.window.main import Start
from idkey.app.window.program import Program
from idkey.engine.sample import SAMPLE_KEY
from idkey.engine.simulate import animal, looked_at
from idkey.model.case import Claim
from idkey.store.book import Store
from idkey.store.reruns import stored_cases

FINDINGS = 12
STRETCHES = 8
HEAD = """\
# Soak

{cases} cases of {findings} findings each, one after another in one process, through the state
and the window that people use (`python -m tests.bench.soak --out docs/soak.md`). Each case is
labelled, found out, once undone, and put away. A step is from the finding to the redrawn window.
The book is the default one, on disk.

| cases so far | step, median ms | 95 of 100 below | against row 1 | memory, MB | growth, MB |
|---:|---:|---:|---:|---:|---:|
"""


@dataclass(frozen=True, slots=True)
class Row:
    """A stretch of cases: step times in milliseconds, memory in megabytes at its end."""

    cases: int
    median_ms: float
    high_ms: float
    memory_mb: float


def resident_mb() -> float:
    """Memory of this process that is in use, in megabytes (Linux)."""
    pages = int(Path("/proc/self/statm").read_text("ascii").split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def begun(app: QApplication) -> Start:
    """The program, opened."""
    start = Start(app)
    loop = QEventLoop()
    start.opened.connect(loop.quit)
    loop.exec()
    return start


def one_case(program: Program, chance: np.random.Generator) -> Iterator[float]:
    """Work through one case; yields the milliseconds of each step."""
    state = program.state
    key = state.session.key
    taxon = key.taxa[int(chance.integers(len(key.taxa)))]
    label = key.labels[int(chance.integers(len(key.labels)))]
    drawn = animal(key, taxon.id, chance)
    state.new_case()
    state.claim(Claim(text=label.text, supplier="Lantern Street Vivarium (invented)"))
    state.describe(drawn.specimen)
    names = [name for name in drawn.shown if name in key.character][: FINDINGS + 1]
    for number, name in enumerate(names[:FINDINGS]):
        finding = looked_at(key, drawn, name, chance, error=0.05, blind=0.1)
        began = time.perf_counter()
        state.observe(finding)
        _as_the_loop_does()
        yield (time.perf_counter() - began) * 1e3
        if number == 5:
            state.undo()
            state.redo()
    program.keeper.flush()
    _as_the_loop_does()
    state.leave_case()


def _as_the_loop_does() -> None:
    # Outside a running loop Qt keeps what is to be deleted; there it goes after each turn.
    QApplication.processEvents()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def soaked(program: Program, cases: int) -> Iterator[Row]:
    """One row a stretch."""
    chance = np.random.default_rng(2026)
    for stretch in range(1, STRETCHES + 1):
        steps: list[float] = []
        for _ in range(cases // STRETCHES):
            steps += one_case(program, chance)
        gc.collect()
        high = statistics.quantiles(steps, n=20)[-1]
        yield Row(stretch * (cases // STRETCHES), statistics.median(steps), high, resident_mb())


def table(rows: list[Row]) -> str:
    """The rows in Markdown."""
    first = rows[0]
    return "".join(
        f"| {row.cases} | {row.median_ms:.1f} | {row.high_ms:.1f} "
        f"| {row.median_ms / first.median_ms:.2f} | {row.memory_mb:.0f} "
        f"| {row.memory_mb - first.memory_mb:+.0f} |\n"
        for row in rows
    )


def book_line(file: Path) -> str:
    """What the book says of itself afterwards."""
    with Store.open(file) as store:
        broken = store.verify()
        count = sum(1 for _ in stored_cases(store))
    said = "no break" if not broken else f"{len(broken)} breaks"
    return (
        f"\nAfterwards the book holds {count} cases in {file.stat().st_size / 1e6:.0f} MB; "
        f"the chain of revisions was read through: {said}.\n"
    )


def main() -> int:
    """Run, print, and write where asked.

    Returns:
        Exit code.
    """
    parser = argparse.ArgumentParser()
    parser.add_argument("--cases", type=int, default=2000)
    parser.add_argument("--out", type=Path)
    asked = parser.parse_args()
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    with tempfile.TemporaryDirectory() as data:
        os.environ[places.DATA_VARIABLE] = data
        app = QApplication(["soak"])
        start = begun(app)
        assert start.program is not None
        assert start.program.state.session.key.id == SAMPLE_KEY
        rows = list(soaked(start.program, asked.cases))
        start.frame.close()
        start.close()
        text = HEAD.format(cases=asked.cases, findings=FINDINGS) + table(rows)
        text += book_line(Path(data) / "records.sqlite")
    print(text)
    if asked.out is not None:
        asked.out.write_text(text, encoding="utf-8", newline="\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
