"""Keys learnt from tables of specimens, to try the engine on animals it has never seen."""

import csv
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

import numpy as np

from idkey.engine.assess import assess
from idkey.engine.compile import compile_key
from idkey.engine.matrix import Matrix
from idkey.model.case import Aim, Case, Finding, Specimen
from idkey.model.character import Character, Kind, Look, Sex, State
from idkey.model.key import Key
from idkey.model.score import Score, Shows, Spans
from idkey.model.taxon import Taxon

Row = dict[str, str]
DATA = Path(__file__).parents[1] / "data"


@dataclass(frozen=True)
class Table:
    """A table of specimens.

    Attributes:
        name: What it is called in reports.
        rows: One mapping per specimen; empty or "NA" is unknown.
        label: Column with the taxon.
        states: Categorical columns.
        numbers: Numeric columns.
        sex: Column with the sex; empty when there is none.
        group: Dependence group per column; missing ones stand alone.
        error: Chance of a slip that the key assumes.
    """

    name: str
    rows: tuple[Row, ...]
    label: str
    states: tuple[str, ...] = ()
    numbers: tuple[str, ...] = ()
    sex: str = ""
    group: tuple[tuple[str, str], ...] = ()
    error: float = 0.02


def read(name: str) -> list[Row]:
    """The rows of a data file."""
    with (DATA / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def known(value: str) -> bool:
    """Whether a cell says anything."""
    return value not in ("", "NA", "nan")


def learn(table: Table, rows: Sequence[Row]) -> Key:
    """A key whose scores are what `rows` show: shares with one half added, means and sds."""
    groups = dict(table.group)
    characters = [_states(table, c, groups.get(c, "")) for c in table.states]
    characters += [
        Character(
            id=c,
            name=c,
            question="",
            kind=Kind.MEASUREMENT,
            looks=(Look.ABOVE,),
            unit="u",
            error=table.error,
            uncertainty=1e-3,
            group=groups.get(c, ""),
        )
        for c in table.numbers
    ]
    taxa = sorted({row[table.label] for row in table.rows})
    scores: list[Score] = []
    for taxon in taxa:
        own = [row for row in rows if row[table.label] == taxon]
        scores += [s for c in table.states if (s := _shares(table, taxon, c, own))]
        for column in table.numbers:
            scores += _spans(table, taxon, column, own)
    return Key(
        id=table.name,
        title=table.name,
        version="1.0.0",
        characters=tuple(characters),
        taxa=tuple(Taxon(id=t, name=f"{t} {t}") for t in taxa),
        scores=tuple(scores),
    )


def _states(table: Table, column: str, group: str) -> Character:
    values = sorted({row[column] for row in table.rows if known(row[column])})
    return Character(
        id=column,
        name=column,
        question="",
        kind=Kind.CATEGORICAL,
        looks=(Look.TUB,),
        states=tuple(State(id=v, label=v) for v in values),
        error=table.error,
        group=group,
    )


def _shares(table: Table, taxon: str, column: str, rows: Sequence[Row]) -> Score | None:
    values = sorted({row[column] for row in table.rows if known(row[column])})
    seen = [row[column] for row in rows if known(row[column])]
    if not seen:
        return None
    shares = {v: (seen.count(v) + 0.5) / (len(seen) + 0.5 * len(values)) for v in values}
    return Score(taxon=taxon, character=column, value=Shows(shares))


def _spans(table: Table, taxon: str, column: str, rows: Sequence[Row]) -> list[Score]:
    """One score per sex where the table has sexes and enough of each, else one for both."""
    found = []
    for sex in (Sex.FEMALE, Sex.MALE, None) if table.sex else (None,):
        own = [r for r in rows if sex is None or r[table.sex] == sex.value]
        values = np.array([float(r[column]) for r in own if known(r[column])])
        if len(values) >= 5:
            spans = Spans(mean=float(values.mean()), sd=float(values.std(ddof=1)), n=len(values))
            found.append(Score(taxon=taxon, character=column, value=spans, sex=sex))
    return found


@lru_cache(maxsize=8)
def _matrix(key: Key, sex: Sex | None) -> Matrix:
    return compile_key(key, Specimen(sex=sex))


def answer(table: Table, key: Key, row: Row) -> tuple[str, float, bool, bool]:
    """The engine on one specimen: best taxon, its share, whether established, whether outside.

    The share is among the taxa, because these tables hold no strangers.
    """
    sex = Sex(row[table.sex]) if table.sex and row[table.sex] in set(Sex) else None
    findings = [Finding(character=c, states=(row[c],)) for c in table.states if known(row[c])]
    findings += [Finding(character=c, value=float(row[c])) for c in table.numbers if known(row[c])]
    specimen = Specimen(sex=sex)
    case = Case(id="1", key=key.id, specimen=specimen, findings=tuple(findings), aim=Aim.TAXON)
    found = assess(_matrix(key, sex), case)
    best = max(found.lineup, key=lambda c: c.support)
    share = best.support / max(1 - found.background, 1e-12)
    level = found.verdict.level.value
    return best.taxon, share, level == "established", level == "outside"
