"""What the rates page counts: wrong labels, and how far second opinions agree."""

from collections.abc import Iterable, Mapping
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
class Course:
    """How one label or supplier went over the months.

    Attributes:
        subject: Whether it is a label or a supplier; None for all cases.
        name: What it is called; empty for all cases.
        months: Contradicted and decided cases per month, oldest first.
    """

    subject: Subject | None
    name: str
    months: tuple[Count, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """Contradicted and decided cases per label and supplier, and over time; agreement per key.

    The first course is that of all cases; then come the labels and suppliers shown.
    """

    labels: tuple[Count, ...]
    suppliers: tuple[Count, ...]
    courses: tuple[Course, ...]
    opinions: tuple[tuple[Key, Agreement], ...] = ()


def rates(store: Store, keys: Mapping[str, Key]) -> Rates:
    """Count the verdicts of the book; labels are named as the keys have them."""
    found = [t for t in tallies(store, Subject.LABEL) if t.subject and t.decided]
    spelled = label_names(keys, [one.subject for one in found])
    labels = _most([(spelled[t.subject], _wrong(t), t.decided) for t in found])
    decided = [t for t in tallies(store, Subject.SUPPLIER) if t.decided]
    suppliers = _most([(t.subject, _wrong(t), t.decided) for t in decided])
    monthly = {s: tallies(store, s, period=Period.MONTH) for s in Subject}
    courses = [Course(subject=None, name="", months=_months(monthly[Subject.LABEL]))]
    for subject, rows, names in (
        (Subject.LABEL, labels, spelled),
        (Subject.SUPPLIER, suppliers, {}),
    ):
        for name, _, _ in rows:
            own = [t for t in monthly[subject] if names.get(t.subject, t.subject) == name]
            courses.append(Course(subject=subject, name=name, months=_months(own)))
    return Rates(
        labels=labels,
        suppliers=suppliers,
        courses=tuple(courses),
        opinions=_opinions(store, keys),
    )


def _months(found: Iterable[Tally]) -> tuple[Count, ...]:
    months: dict[str, list[int]] = {}
    for one in found:
        if one.decided:
            counted = months.setdefault(one.period, [0, 0])
            counted[0] += _wrong(one)
            counted[1] += one.decided
    return tuple((month, w, n) for month, (w, n) in sorted(months.items()))[-MONTHS:]


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
