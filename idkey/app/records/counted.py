"""What the rates page counts: wrong labels, and how far second opinions agree."""

from collections.abc import Mapping
from dataclasses import dataclass

from idkey.app.records.work import uncertainties
from idkey.engine.labels import label_entry
from idkey.model.key import Key
from idkey.store.book import Store
from idkey.store.opinions import Agreement, agreement
from idkey.store.reruns import cases_per_key
from idkey.store.tallies import Period, Subject, Tally, tallies

MOST = 12
"""Labels and suppliers shown, those with most decided cases first."""

MONTHS = 12
"""Months shown, the latest ones."""

Count = tuple[str, int, int]
"""What is counted, contradicted cases, decided cases."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """Contradicted and decided cases per label, supplier and month; agreement per key."""

    labels: tuple[Count, ...]
    suppliers: tuple[Count, ...]
    months: tuple[Count, ...]
    opinions: tuple[tuple[Key, Agreement], ...] = ()


def rates(store: Store, keys: Mapping[str, Key]) -> Rates:
    """Count the verdicts of the book; labels are named as the keys have them."""
    found = [t for t in tallies(store, Subject.LABEL) if t.subject and t.decided]
    spelled = label_names(keys, [one.subject for one in found])
    months: dict[str, list[int]] = {}
    for one in tallies(store, Subject.LABEL, period=Period.MONTH):
        if one.decided:
            counted = months.setdefault(one.period, [0, 0])
            counted[0] += _wrong(one)
            counted[1] += one.decided
    suppliers = [t for t in tallies(store, Subject.SUPPLIER) if t.decided]
    return Rates(
        labels=_most([(spelled[t.subject], _wrong(t), t.decided) for t in found]),
        suppliers=_most([(t.subject, _wrong(t), t.decided) for t in suppliers]),
        months=tuple((month, w, n) for month, (w, n) in sorted(months.items()))[-MONTHS:],
        opinions=_opinions(store, keys),
    )


def label_names(keys: Mapping[str, Key], label_ids: list[str]) -> dict[str, str]:
    """What label entries are called; those of no key at hand go by their id."""
    names = {}
    for label_id in label_ids:
        entries = (label_entry(key, label_id) for key in keys.values())
        entry = next((entry for entry in entries if entry is not None), None)
        names[label_id] = entry.text if entry else label_id
    return names


def _opinions(store: Store, keys: Mapping[str, Key]) -> tuple[tuple[Key, Agreement], ...]:
    found = []
    for key_id in cases_per_key(store):
        key = keys.get(key_id)
        if key is not None:
            told = agreement(store, key=key_id, uncertainty=uncertainties(key))
            if told.animals:
                found.append((key, told))
    return tuple(found)


def _wrong(one: Tally) -> int:
    return one.kinds.get("contradicted", 0)


def _most(rows: list[Count]) -> tuple[Count, ...]:
    return tuple(sorted(rows, key=lambda row: (-row[2], row[0]))[:MOST])
