"""Truthfulness bench: how often the engine is right, wrong and silent.

Run: ``python -m tests.bench.truth [--keys 20] [--animals 300] [--out docs/truth.md]``
"""

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np

from idkey.engine.assess import assess
from idkey.engine.matrix import Matrix
from idkey.engine.questions import questions
from idkey.engine.result import Assessment, Level, Stake, VerdictKind
from idkey.engine.simulate import Animal, looked_at
from idkey.model.case import Aim, Case, Claim
from idkey.model.key import Key

MOST = 16
"""Answers after which a keeper gives up."""

Chooser = Callable[[Matrix, Assessment, np.random.Generator], str | None]


@dataclass
class Tally:
    """What came of many animals under one way of asking."""

    rows: list[dict[str, float]] = field(default_factory=list)

    def share(self, name: str, given: str = "") -> tuple[float, int, int]:
        """Share of `name` among the rows where `given` holds; count and base."""
        base = [r for r in self.rows if not given or r[given]]
        hits = sum(1 for r in base if r[name])
        return (hits / len(base) if base else float("nan")), hits, len(base)

    def mean(self, name: str) -> float:
        """Mean of `name`, missing values left out."""
        values = [r[name] for r in self.rows if r[name] == r[name]]
        return float(np.mean(values)) if values else float("nan")


def adaptive(matrix: Matrix, seen: Assessment, _chance: np.random.Generator) -> str | None:
    """The best question for the aim of the case."""
    best = questions(matrix, seen)[0]
    return best.character if best.blocked is None else None


def printed_order(matrix: Matrix, seen: Assessment, _chance: np.random.Generator) -> str | None:
    """The characters as they stand in the key."""
    free = {q.character for q in questions(matrix, seen) if q.blocked is None}
    return next((c.id for c in matrix.key.characters if c.id in free), None)


def random_order(matrix: Matrix, seen: Assessment, chance: np.random.Generator) -> str | None:
    """Any open question."""
    free = [q.character for q in questions(matrix, seen) if q.blocked is None]
    return free[int(chance.integers(len(free)))] if free else None


@dataclass(frozen=True)
class Setting:
    """How animals are looked at."""

    error: Callable[[str], float]
    blind: float = 0.0
    aim: Aim = Aim.TAXON
    most: int = MOST
    stop_early: bool = True


def run(
    matrix: Matrix,
    drawn: Animal,
    choose: Chooser,
    setting: Setting,
    *,
    chance: np.random.Generator,
    claim: Claim | None = None,
    truth: Key | None = None,
) -> dict[str, float]:
    """One animal asked to the end; what the engine said, and whether that was right."""
    key = matrix.key
    case = Case(
        id="bench", key=key.id, specimen=matrix.specimen, aim=setting.aim, claim=claim or Claim()
    )
    seen = assess(matrix, case)
    row = {"to95": float("nan"), "decided_at": float("nan"), "effort": 0.0}
    row |= {"hazard_lost": 0.0, "unwarned": 0.0}
    asked = 0
    for _ in range(setting.most):
        name = choose(matrix, seen, chance)
        if name is None:
            break
        finding = looked_at(
            truth or key, drawn, name, chance, error=setting.error(name), blind=setting.blind
        )
        case = case.observe(finding)
        seen = assess(matrix, case)
        asked += 1
        _note(row, seen, drawn, matrix, asked)
        if setting.stop_early and _done(seen, setting.aim):
            break
    return row | _outcome(seen, drawn, asked)


def _note(
    row: dict[str, float], seen: Assessment, drawn: Animal, matrix: Matrix, asked: int
) -> None:
    top = max(c.support for c in seen.lineup)
    if top >= 0.95 and row["to95"] != row["to95"]:
        row["to95"] = asked
    if seen.verdict.kind not in (VerdictKind.OPEN, VerdictKind.LABEL_UNKNOWN) and (
        row["decided_at"] != row["decided_at"]
    ):
        row["decided_at"] = asked
    taxon = matrix.key.taxon.get(drawn.taxon)
    if taxon and taxon.dangerous:
        warned = [c for c in seen.cautions if c.stake is Stake.HAZARD]
        kept = any(drawn.taxon in c.taxa for c in warned)
        row["hazard_lost"] = max(row["hazard_lost"], float(not kept))
        row["unwarned"] = max(row["unwarned"], float(not warned))


def _done(seen: Assessment, aim: Aim) -> bool:
    if aim is Aim.LABEL:
        return seen.verdict.kind not in (VerdictKind.OPEN, VerdictKind.LABEL_UNKNOWN)
    return seen.verdict.level in (Level.ESTABLISHED, Level.GROUP)


def _outcome(seen: Assessment, drawn: Animal, asked: int) -> dict[str, float]:
    said = seen.verdict
    best = max(seen.lineup, key=lambda c: c.support)
    right = drawn.taxon in said.taxa
    named = said.level is Level.ESTABLISHED
    group = said.level is Level.GROUP
    return {
        "asked": asked,
        "best_right": float(best.taxon == drawn.taxon),
        "top": best.support,
        "established": float(named),
        "wrong_named": float(named and not right),
        "group": float(group),
        "wrong_group": float(group and not right),
        "outside": float(said.level is Level.OUTSIDE),
        "fit_low": float(said.fit is not None and said.fit < 0.05),
        "kind": list(VerdictKind).index(said.kind),
    }


def calibration(tally: Tally, bins: int = 10) -> tuple[float, float]:
    """Expected calibration error (Guo et al. 2017) and Brier score of the leader's support."""
    top = np.array([r["top"] for r in tally.rows])
    right = np.array([r["best_right"] for r in tally.rows])
    place = np.minimum((top * bins).astype(int), bins - 1)
    ece = sum(
        abs(top[place == b].mean() - right[place == b].mean()) * (place == b).mean()
        for b in range(bins)
        if (place == b).any()
    )
    return float(ece), float(((top - right) ** 2).mean())
