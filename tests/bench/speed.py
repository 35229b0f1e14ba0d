"""Speed bench: one finding to new conflicts, support, order and ranked questions.

Run: ``python -m tests.bench.speed [--out docs/speed.md]``. Figures are ratios of one run against
plain numpy work over the same bytes; seconds are this machine's.
"""

import argparse
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
from sklearn.tree import DecisionTreeClassifier

from idkey.engine.assess import assess
from idkey.engine.entropy import huffman_length
from idkey.engine.evidence import conflicting, evidence
from idkey.engine.gaps import Layout
from idkey.engine.grower import grow
from idkey.engine.matrix import Cells, Matrix, assembled
from idkey.engine.questions import gains, questions
from idkey.engine.splits import Splits
from idkey.engine.tree import Tree, cost
from idkey.engine.weighing import weigh
from idkey.model.case import Aim, Care, Case, Finding, Specimen
from idkey.model.character import Character, Kind, Look, State
from idkey.model.couplet import Sees
from idkey.model.key import Key
from idkey.model.taxon import Taxon

SIZES = ((50, 30), (1_000, 100), (10_000, 500))
STATES = 4


def synthetic(taxa: int, characters: int, seed: int = 1) -> Matrix:
    """A made-up matrix: 4 states, 10 % polymorphic, 10 % unscored, error 10 %."""
    chance = np.random.default_rng(seed)
    key = Key(
        id="speed",
        title="",
        version="1",
        taxa=tuple(Taxon(id=f"t{n}", name=f"G{n // 8} s{n}") for n in range(taxa)),
        characters=tuple(_character(n) for n in range(characters)),
    )
    first = chance.integers(0, STATES, (taxa, characters))
    second = chance.integers(0, STATES, (taxa, characters))
    share = np.where(chance.random((taxa, characters)) < 0.1, 0.6, 1.0).astype(np.float32)
    pure = np.zeros((taxa, characters, STATES), np.float32)
    rows, columns = np.ogrid[:taxa, :characters]
    np.add.at(pure, (rows, columns, first), share)
    np.add.at(pure, (rows, columns, second), 1 - share)
    known = chance.random((taxa, characters)) >= 0.1
    seen = (0.9 - 0.1 / 3) * pure + 0.1 / 3
    seen = np.where(known[:, :, None], seen, 0).reshape(taxa, -1).astype(np.float32)
    can = (pure > 0) | ~known[:, :, None]
    cells = Cells(
        layout=Layout(
            np.arange(characters, dtype=np.intp) * STATES, np.full(characters, STATES, np.intp)
        ),
        shown=seen,
        known=known,
        whole=known,
        absent=np.zeros_like(known),
        possible=np.ascontiguousarray(can.reshape(taxa, -1).T),
        numbers={},
    )
    kin = np.arange(taxa, dtype=np.intp) // 8
    return assembled(key, Specimen(), Care.ORDINARY, cells, kin=kin)


def _character(number: int) -> Character:
    states = tuple(State(id=f"s{s}", label="") for s in range(STATES))
    return Character(
        id=f"c{number}",
        name="",
        question="",
        kind=Kind.CATEGORICAL,
        looks=(Look.TUB,),
        states=states,
    )


def best_of(
    work: Callable[[], object], seconds: float = 1.0, most: int = 200
) -> tuple[float, float]:
    """Least and largest time of one call, in ms, over about that many seconds."""
    work()
    times: list[float] = []
    end = time.perf_counter() + seconds
    while time.perf_counter() < end and len(times) < most:
        start = time.perf_counter()
        work()
        times.append((time.perf_counter() - start) * 1e3)
    return min(times), float(np.percentile(times, 95))


def steps(matrix: Matrix) -> dict[str, tuple[float, float]]:
    """Times of the parts of a step, in ms, and of plain work over the same bytes."""
    chance = np.random.default_rng(2)
    names = [c.id for c in matrix.key.characters]
    findings = tuple(
        Finding(character=n, states=(f"s{chance.integers(STATES)}",)) for n in names[:8]
    )
    case = Case(id="1", key="speed", findings=findings, aim=Aim.TAXON, tolerance=8)
    now = weigh(matrix, case)
    shares = now.support.astype(np.float32)
    _ = matrix.entropy

    def step() -> None:
        found = weigh(matrix, case)
        worth = gains(matrix, found.support)
        np.argsort(-worth)

    one = case.findings[:1]
    return {
        "plain float32 product": best_of(lambda: shares @ matrix.seen),
        "ranked questions": best_of(lambda: np.argsort(-gains(matrix, now.support))),
        "and over the flags of one state": best_of(lambda: matrix.possible[0] & matrix.possible[5]),
        "conflicts of one finding": best_of(lambda: conflicting(matrix, 1, matrix.possible[5])),
        "conflicts and likelihood of it": best_of(
            lambda: evidence(matrix, Case(id="1", key="speed", findings=one))
        ),
        "whole step on arrays": best_of(step),
        "plain loop over characters": best_of(lambda: _loop(matrix, shares), most=5),
    }


def _loop(matrix: Matrix, shares: np.ndarray) -> list[float]:
    """The questions the slow way: one character after the other."""
    found = []
    for number in range(len(matrix.key.characters)):
        part = matrix.seen[:, matrix.columns(number)]
        mixture = shares @ part
        inner = -(part * np.log2(np.maximum(part, 1e-30))).sum(axis=1)
        found.append(float(-(mixture * np.log2(np.maximum(mixture, 1e-30))).sum() - shares @ inner))
    return found


def full_step(matrix: Matrix) -> tuple[float, float]:
    """A step as the window asks for it: every candidate and every question as values."""
    findings = tuple(Finding(character=f"c{n}", states=("s1",)) for n in range(8))
    case = Case(id="1", key="speed", findings=findings, aim=Aim.TAXON, tolerance=8)
    return best_of(lambda: questions(matrix, assess(matrix, case)), most=8)


def clean_splits(
    taxa: int, characters: int, leads: int, seed: int = 3
) -> tuple[Splits, np.ndarray]:
    """Divisions of a made-up matrix without gaps, and its state numbers."""
    chance = np.random.default_rng(seed)
    codes = chance.integers(0, leads, (taxa, characters))
    share = (codes[:, :, None] == np.arange(leads)).reshape(taxa, -1).astype(np.float32)
    sees = tuple(
        Sees(character=f"c{n}", states=(str(s),)) for n in range(characters) for s in range(leads)
    )
    ways = Splits(
        share=share,
        known=np.ones((taxa, characters), bool),
        lacking=np.zeros((taxa, characters), bool),
        starts=np.arange(characters, dtype=np.intp) * leads,
        effort=np.ones(characters),
        sees=sees,
        character=np.arange(characters, dtype=np.intp),
    )
    return ways, codes


def built(taxa: int, characters: int, leads: int) -> dict[str, float]:
    """A key built and a scikit-learn tree fitted on the same matrix."""
    ways, codes = clean_splits(taxa, characters, leads)
    weights = np.full(taxa, 1 / taxa)
    start = time.perf_counter()
    tree: Tree = grow(ways, weights)[0]
    spent = time.perf_counter() - start
    start = time.perf_counter()
    other = float("nan")
    if taxa <= 1_000:
        fitted = DecisionTreeClassifier(criterion="entropy", random_state=0)
        fitted.fit(ways.share, np.arange(taxa))
        other = time.perf_counter() - start
    return {
        "seconds": spent,
        "scikit-learn seconds": other,
        "mean": cost(tree, ways, weights).questions,
        "bound": huffman_length(weights, leads),
        "states": float(codes.max() + 1),
    }


def report() -> str:
    """The whole bench as Markdown."""
    lines = ["# Speed", "", "Made by `python -m tests.bench.speed --out docs/speed.md`.", ""]
    lines += ["## One finding to new answers", "", "Milliseconds: least, and 95th percentile.", ""]
    names: list[str] = []
    rows: list[tuple[str, list[str]]] = []
    for taxa, characters in SIZES:
        matrix = synthetic(taxa, characters)
        found = steps(matrix)
        found["as values for the window"] = full_step(matrix)
        names = list(found)
        cells = [f"{least:.3g} / {late:.3g}" for least, late in found.values()]
        plain = found["plain float32 product"][0]
        ratio = found["ranked questions"][0] / plain
        faster = found["plain loop over characters"][0] / found["ranked questions"][0]
        flags = found["conflicts of one finding"][0] / found["and over the flags of one state"][0]
        size = (matrix.seen.nbytes + matrix.entropy.nbytes) / matrix.seen.nbytes
        rows.append(
            (
                f"{taxa} x {characters}",
                [*cells, f"{ratio:.2f}", f"{flags:.1f}", f"{faster:.1f}", f"{size:.2f}"],
            )
        )
        print(rows[-1], flush=True)
    heads = [
        *names,
        "questions / plain product",
        "conflicts / and",
        "loop / questions",
        "memory / score array",
    ]
    lines += ["| | " + " | ".join(r[0] for r in rows) + " |", "|---" * (len(rows) + 1) + "|"]
    lines += [
        f"| {head} | " + " | ".join(r[1][n] for r in rows) + " |" for n, head in enumerate(heads)
    ]
    lines += ["", "## Building couplets", ""]
    lines += [
        "| taxa x characters | leads | seconds | scikit-learn | mean length | Huffman | ratio |"
    ]
    lines += ["|---|---|---|---|---|---|---|"]
    for taxa, characters, leads in (
        (50, 30, 2),
        (1000, 100, 2),
        (1000, 100, 4),
        (10_000, 500, 2),
        (10_000, 500, 4),
    ):
        b = built(taxa, characters, leads)
        lines.append(
            f"| {taxa} x {characters} | {leads} | {b['seconds']:.2f} | "
            f"{b['scikit-learn seconds']:.2f} | {b['mean']:.3f} | {b['bound']:.3f} | "
            f"{b['mean'] / b['bound']:.3f} |"
        )
        print(lines[-1], flush=True)
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--out", type=Path)
    given = parser.parse_args()
    text = report()
    if given.out:
        given.out.write_text(text, encoding="utf-8")
