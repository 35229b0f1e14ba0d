"""The engine beside general classifiers on open data, on the same folds.

Run: ``python -m tests.bench.datasets --out docs/datasets.md``.
"""

import argparse
from dataclasses import replace
from itertools import combinations
from pathlib import Path

import numpy as np
from sklearn.base import ClassifierMixin
from sklearn.datasets import load_iris
from sklearn.discriminant_analysis import LinearDiscriminantAnalysis
from sklearn.model_selection import StratifiedKFold
from sklearn.naive_bayes import GaussianNB
from sklearn.tree import DecisionTreeClassifier

from tests.bench.learned import Row, Table, answer, known, learn, read

RIVALS: dict[str, ClassifierMixin] = {
    "naive Bayes": GaussianNB(),
    "tree": DecisionTreeClassifier(random_state=0),
    "LDA": LinearDiscriminantAnalysis(),
}
SIZES = ("bill_length_mm", "bill_depth_mm", "flipper_length_mm", "body_mass_g")


def penguins(*, ratio: bool) -> Table:
    """Palmer penguins; `ratio` adds bill length : depth and takes mass as size."""
    rows = [row for row in read("penguins.csv") if known(row["bill_length_mm"])]
    for row in rows:
        shape = float(row["bill_length_mm"]) / float(row["bill_depth_mm"])
        row["bill_ratio"] = f"{shape:.4f}"
    numbers = (*SIZES, "bill_ratio") if ratio else SIZES
    name = "penguins with ratio" if ratio else "penguins"
    return Table(
        name=name, rows=tuple(rows), label="species", states=("island",), numbers=numbers, sex="sex"
    )


def iris() -> Table:
    """Fisher's irises."""
    data = load_iris()
    names = tuple(n.replace(" (cm)", "").replace(" ", "_") for n in data.feature_names)
    rows = [
        dict(zip(names, map(str, values), strict=True)) | {"species": str(data.target_names[t])}
        for values, t in zip(data.data, data.target, strict=True)
    ]
    return Table(name="iris", rows=tuple(rows), label="species", numbers=names)


def zoo() -> Table:
    """The zoo, by class."""
    rows = read("zoo.csv")
    states = tuple(c for c in rows[0] if c not in ("name", "type"))
    return Table(name="zoo", rows=tuple(rows), label="type", states=states)


def scat(*, grouped: bool) -> Table:
    """Carnivore droppings; `grouped` puts characters that hang together into groups."""
    rows = tuple(read("scat.csv"))
    table = Table(
        name="scat, grouped" if grouped else "scat, as if independent",
        rows=rows,
        label="Species",
        states=("Location", "ropey", "segmented", "flat", "scrape"),
        numbers=(
            "Age",
            "Number",
            "Length",
            "Diameter",
            "Taper",
            "TI",
            "Mass",
            "d13C",
            "d15N",
            "CN",
        ),
    )
    return replace(table, group=hanging_together(table)) if grouped else table


def hanging_together(table: Table, least: float = 0.3) -> tuple[tuple[str, str], ...]:
    """Dependence groups: numeric columns linked by within-class correlations of `least` or more.

    Single linkage over absolute correlations of residuals from the class means.
    """
    columns = (*table.numbers, *(c for c in table.states if _binary(table, c)))
    residual = {c: _residuals(table, c) for c in columns}
    group = {c: c for c in columns}
    for one, other in combinations(columns, 2):
        both = ~np.isnan(residual[one]) & ~np.isnan(residual[other])
        linked = abs(np.corrcoef(residual[one][both], residual[other][both])[0, 1]) >= least
        if linked:
            old, new = group[other], group[one]
            group = {c: new if g == old else g for c, g in group.items()}
    return tuple((c, f"with {g}") for c, g in group.items() if list(group.values()).count(g) > 1)


def _binary(table: Table, column: str) -> bool:
    return {row[column] for row in table.rows} <= {"0", "1"}


def _residuals(table: Table, column: str) -> np.ndarray:
    values = np.array([float(r[column]) if known(r[column]) else np.nan for r in table.rows])
    labels = np.array([r[table.label] for r in table.rows])
    for label in set(labels):
        values[labels == label] -= np.nanmean(values[labels == label])
    return values


def numeric(table: Table, rows: tuple[Row, ...]) -> np.ndarray:
    """The table as numbers for scikit-learn: one-hot states, column means for unknown cells."""
    columns = []
    for column in table.states:
        for value in sorted({r[column] for r in table.rows})[1:]:
            columns.append([float(r[column] == value) for r in rows])
    for column in (*table.numbers, *((table.sex,) if table.sex else ())):
        if column == table.sex:
            columns.append([float(r[column] == "male") for r in rows])
            continue
        values = np.array([float(r[column]) if known(r[column]) else np.nan for r in rows])
        columns.append(np.where(np.isnan(values), np.nanmean(values), values).tolist())
    return np.array(columns).T


def compare(table: Table, repeats: int = 4, folds: int = 5) -> dict[str, float]:
    """Accuracy on held-out specimens, and how honest the engine's shares are."""
    labels = np.array([r[table.label] for r in table.rows])
    whole = numeric(table, table.rows)
    right: list[bool] = []
    shares: list[float] = []
    named: list[bool] = []
    rivals: dict[str, list[bool]] = {name: [] for name in RIVALS}
    for seed in range(repeats):
        split = StratifiedKFold(folds, shuffle=True, random_state=seed)
        for train, test in split.split(whole, labels):
            key = learn(table, [table.rows[n] for n in train])
            for n in test:
                best, share, established, _ = answer(table, key, table.rows[n])
                right.append(best == labels[n])
                shares.append(share)
                named.append(established)
            for name, model in RIVALS.items():
                fitted = model.fit(whole[train], labels[train])
                rivals[name] += list(fitted.predict(whole[test]) == labels[test])
    return _figures(np.array(right), np.array(shares), np.array(named)) | {
        name: float(np.mean(hits)) for name, hits in rivals.items()
    }


def _figures(right: np.ndarray, shares: np.ndarray, named: np.ndarray) -> dict[str, float]:
    sure = shares >= 0.95
    place = np.minimum((shares * 10).astype(int), 9)
    error = sum(
        abs(shares[place == b].mean() - right[place == b].mean()) * (place == b).mean()
        for b in set(place)
    )
    wrong = float((~right & named).sum() / named.sum()) if named.any() else float("nan")
    return {
        "idkey": float(right.mean()),
        "share at 0.95 or more": float(sure.mean()),
        "wrong among those": float((~right)[sure].mean()) if sure.any() else float("nan"),
        "calibration error": float(error),
        "established": float(named.mean()),
        "wrong among established": wrong,
    }


TABLES = (
    lambda: penguins(ratio=False),
    lambda: penguins(ratio=True),
    iris,
    zoo,
    lambda: scat(grouped=False),
    lambda: scat(grouped=True),
)


def report() -> str:
    """All tables as Markdown."""
    lines = [
        "# Open data the engine has never seen",
        "",
        "Made by `python -m tests.bench.datasets --out docs/datasets.md`: keys learnt from "
        "four fifths of the specimens, tried on the rest, 4 times 5 folds. Sources: "
        "tests/data/README.md.",
        "",
    ]
    names: list[str] = []
    for make in TABLES:
        table = make()
        found = compare(table)
        if not names:
            names = list(found)
            lines += ["| data | " + " | ".join(names) + " |", "|---" * (len(names) + 1) + "|"]
        lines.append(f"| {table.name} | " + " | ".join(f"{found[n]:.3f}" for n in names) + " |")
        print(lines[-1], flush=True)
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--out", type=Path)
    given = parser.parse_args()
    text = report()
    if given.out:
        given.out.write_text(text, encoding="utf-8")
