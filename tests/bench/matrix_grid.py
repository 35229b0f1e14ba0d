"""Bench of the matrix grid: painting, scrolling, typing, pasting at 1,000 taxa x 100 characters.

Run: ``python -m tests.bench.matrix_grid [--out docs/matrix-grid.md]``. Figures are ratios of one
run against painting plain words in as many boxes; milliseconds are processor time here.
"""

import argparse
import os
import statistics
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import numpy as np
from PySide6.QtCore import QRect
from PySide6.QtGui import QFont, QPainter, QPixmap
from PySide6.QtWidgets import QApplication

from idkey import places
from idkey.app.parts.desk import Desk
from idkey.app.parts.pictures import Pictures
from idkey.app.parts.theme import Theme, add_fonts
from idkey.app.workshop.editing import Editing
from idkey.app.workshop.matrix_edit import Block, copied, pasted, typed, with_cells
from idkey.app.workshop.matrix_page import MatrixPage
from idkey.app.workshop.matrix_search import Sought, next_match, sought_cells
from idkey.app.workshop.state import WorkshopState
from idkey.formats.plain import canonical
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key
from idkey.model.score import Score, Shows, Spans, Value
from idkey.model.taxon import Taxon
from idkey.report.language import ENGLISH

SIZES = ((26, 40), (1_000, 100))
FRAME = (1210, 800)
STEPS = 40


def made_up(taxa: int, characters: int) -> Key:
    """A made-up key: three quarters of the cells scored, one in ten with two states."""
    chance = np.random.default_rng(1)
    table = tuple(_character(number) for number in range(characters))
    names = tuple(Taxon(id=f"taxon_{n:04}", name=f"Genus{n // 8} species{n}") for n in range(taxa))
    scores = tuple(
        Score(taxon=taxon.id, character=character.id, value=_value(character, chance))
        for taxon in names
        for character in table
        if chance.random() < 0.75
    )
    return canonical(
        Key(id="grid", title="Grid", version="1.0.0", taxa=names, characters=table, scores=scores)
    )


def _character(number: int) -> Character:
    looks, part = (Look.TUB,), f"part {number // 5}"
    name, own = f"Character number {number}", f"character_{number:03}"
    if number % 4 == 0:
        return Character(
            id=own, name=name, question="?", kind=Kind.COUNT, unit="rows", looks=looks, part=part
        )
    states = tuple(State(id=f"s{n}", label=f"state number {n} of it") for n in range(4))
    return Character(
        id=own,
        name=name,
        question="?",
        kind=Kind.CATEGORICAL,
        states=states,
        looks=looks,
        part=part,
    )


def _value(character: Character, chance: np.random.Generator) -> Value:
    if character.kind.numeric:
        low = float(chance.integers(5, 50))
        return Spans(low=low, high=low + 5)
    first, second = chance.choice(4, 2, replace=False)
    both = chance.random() < 0.1
    return Shows(dict.fromkeys([f"s{first}", f"s{second}"] if both else [f"s{first}"]))


def milliseconds(work: Callable[[], object], times: int = 7) -> tuple[float, float]:
    """Median and largest time of `work`."""
    found = []
    for _ in range(times):
        start = time.process_time()
        work()
        found.append((time.process_time() - start) * 1000)
    return statistics.median(found), max(found)


def plain_words(page: MatrixPage) -> Callable[[], object]:
    """Paint words in as many boxes as the grid shows: what nothing can beat."""
    grid = page.grid
    size = grid.viewport().size()
    sheet = QPixmap(size)
    wide, high = grid.columnWidth(0), grid.rowHeight(0)

    def paint() -> None:
        painter = QPainter(sheet)
        painter.setFont(page.font())
        for top in range(0, size.height(), high):
            for left in range(0, size.width(), wide):
                painter.drawText(QRect(left, top, wide, high), 0, "state number 2")
        painter.end()

    return paint


def measured(
    taxa: int, characters: int, desk: Desk, folder: Path
) -> dict[str, tuple[float, float]]:
    """Median and largest milliseconds per task."""
    key = made_up(taxa, characters)
    state = WorkshopState(folder / "drafts")
    state.editing = Editing(folder=folder, saved=key, key=key)
    start = time.process_time()
    page = MatrixPage(state, desk)
    page.resize(*FRAME)
    page.show()
    page.grab()
    opening = (time.process_time() - start) * 1000
    bar, view = page.grid.verticalScrollBar(), page.grid.viewport()
    step, places_ = max(bar.maximum() // STEPS, 1), iter(range(10**6))

    def scroll() -> None:
        bar.setValue((next(places_) % STEPS) * step)
        view.repaint()

    def wheel() -> None:
        bar.setValue((bar.value() + page.grid.rowHeight(0)) % max(bar.maximum(), 1))
        QApplication.processEvents()

    cell = page.model.cell(0, 1)
    shown = iter(range(10**6))

    def edit() -> None:
        new = with_cells(key, typed(key, cell, f"s{next(shown) % 4}").cells)
        page.model.show_key(new, page.model.taxa, page.model.characters)
        view.repaint()

    block = Block(
        taxa=tuple(t.id for t in key.taxa), characters=tuple(c.id for c in key.characters[:10])
    )
    text = copied(key, block)
    found = {
        "plain words in as many boxes": milliseconds(plain_words(page), 20),
        "open and paint": (opening, opening),
        "a wheel step": milliseconds(wheel, STEPS),
        "a jump to rows never seen": milliseconds(scroll, STEPS),
        "one cell changed and painted": milliseconds(edit),
        "ten columns copied": milliseconds(lambda: copied(key, block)),
        "ten columns pasted": milliseconds(
            lambda: with_cells(key, pasted(key, text, block, block).cells), 3
        ),
        "empty cells found": milliseconds(lambda: sought_cells(key, Sought.EMPTY, frozenset()), 3),
        "a word that is nowhere": milliseconds(lambda: next_match(page.model, "zzz", cell), 3),
    }
    page.tools.words.set_value(False)
    page.grid.show_words(False)
    page.grab()
    found["a jump in the overview"] = milliseconds(scroll, STEPS)
    found["a wheel step in the overview"] = milliseconds(wheel, STEPS)
    page.close()
    page.deleteLater()
    state.close()
    return found


def table(results: list[dict[str, tuple[float, float]]]) -> str:
    """The figures as a page."""
    head = " | ".join(f"{taxa} x {characters}" for taxa, characters in SIZES)
    lines = [
        "# The matrix grid",
        "",
        "Made by `python -m tests.bench.matrix_grid --out docs/matrix-grid.md`.",
        "",
        "Milliseconds of processor time, median and largest; in brackets the median over that",
        f"of painting plain words in as many boxes. The window is {FRAME[0]} x {FRAME[1]}.",
        "",
        f"| | {head} |",
        "|---" * (len(SIZES) + 1) + "|",
    ]
    for task in results[0]:
        cells = []
        for found in results:
            plain = found["plain words in as many boxes"][0]
            median, worst = found[task]
            cells.append(f"{median:.3g} / {worst:.3g} ({median / plain:.3g})")
        lines.append(f"| {task} | {' | '.join(cells)} |")
    return "\n".join(lines) + "\n"


def main() -> None:
    """Print the table, or write it."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--out", type=Path)
    out = parser.parse_args().out
    app = QApplication([])
    app.setStyle("Fusion")
    add_fonts(places.font_files())
    app.setFont(QFont(places.FONT_FAMILY))
    pictures = Pictures(places.images_folder())
    desk = Desk(Theme(app), pictures, ENGLISH)
    with tempfile.TemporaryDirectory() as folder:
        results = [measured(*size, desk, Path(folder)) for size in SIZES]
    pictures.close()
    text = table(results)
    print(text) if out is None else out.write_text(text, "utf-8")


if __name__ == "__main__":
    main()
