"""Counts per label and supplier over time."""

from dataclasses import replace

import pytest

from idkey.engine.sample import SAMPLE_ID
from idkey.store.book import Store
from idkey.store.people import suppliers_of
from idkey.store.record import VerdictSummary
from idkey.store.tallies import Period, Subject, Tally, tallies
from tests.store.cases import EXAMPLE, example

RIGHT = VerdictSummary(kind="holds", level="established", taxa=("a",))
NEWCOMBE = "Newcombe 1998, Statist. Med. 17: 857-872, table I, method 3"


@pytest.fixture
def book(store: Store) -> Store:
    """Seven cases of two suppliers over three months."""
    plan = [
        ("2025-09-01", "Mossy Corner", "holds"),
        ("2025-09-30", "mossy corner", "contradicted"),
        ("2025-10-01", "Mossy Corner", "contradicted"),
        ("2025-10-02", "Mossy Corner", "open"),
        ("2025-10-02", "Mossy Corner", ""),
        ("2025-11-01", "Lantern Street Vivarium", "too_broad"),
        ("2026-01-01", "Lantern Street Vivarium", "holds"),
    ]
    for number, (day, supplier, kind) in enumerate(plan):
        claim = replace(EXAMPLE.claim, date=day, supplier=supplier)
        summary = VerdictSummary(kind=kind, level="open") if kind else None
        store.save(example(number, claim=claim), summary)
    return store


def test_cases_are_counted_per_supplier_and_month(book: Store):
    found = tallies(book, Subject.SUPPLIER, period=Period.MONTH)

    assert [(t.subject, t.period, dict(t.kinds)) for t in found] == [
        ("Lantern Street Vivarium", "2025-11", {"too_broad": 1}),
        ("Lantern Street Vivarium", "2026-01", {"holds": 1}),
        ("Mossy Corner", "2025-09", {"holds": 1, "contradicted": 1}),
        ("Mossy Corner", "2025-10", {"contradicted": 1, "open": 1, "": 1}),
    ]


@pytest.mark.parametrize(
    ("period", "names"),
    [
        (Period.ALL, [""]),
        (Period.YEAR, ["2025", "2026"]),
        (Period.DAY, sorted({"2025-09-01", "2025-09-30", "2025-10-01", "2025-10-02"})),
    ],
)
def test_a_stretch_of_time_may_be_all_a_year_or_a_day(
    book: Store, period: Period, names: list[str]
):
    found = tallies(book, Subject.LABEL, period=period)

    assert [t.period for t in found][: len(names)] == names
    assert {t.subject for t in found} == {"asian_forest_scorpion"}


def test_days_limit_what_is_counted_both_included(book: Store):
    (found,) = tallies(book, Subject.LABEL, since="2025-09-30", until="2025-10-01")

    assert found.kinds == {"contradicted": 2}


def test_the_rate_leaves_out_what_is_not_decided():
    tally = Tally(
        subject="x",
        period="",
        kinds={"contradicted": 81, "holds": 180, "too_broad": 2, "open": 40, "": 9},
    )

    assert tally.decided == 263
    assert (tally.wrong.low, tally.wrong.high) == pytest.approx((0.2553, 0.3662), abs=5e-5), (
        NEWCOMBE
    )


def test_an_empty_book_has_no_tallies(store: Store):
    assert tallies(store, Subject.SUPPLIER) == ()


def test_the_sample_case_counts_nowhere(store: Store):
    store.save(replace(EXAMPLE, id=SAMPLE_ID), RIGHT)
    store.save(example(1), RIGHT)

    assert [t.kinds for t in tallies(store, Subject.LABEL)] == [{"holds": 1}]
    assert [t.kinds for t in tallies(store, Subject.SUPPLIER)] == [{"holds": 1}]
    assert store.outcomes("asian_forest_scorpion") == {"a": 1}


def test_the_supplier_of_the_sample_case_is_none_of_the_shop(store: Store):
    store.save(replace(EXAMPLE, id=SAMPLE_ID), RIGHT)

    assert suppliers_of(store) == ()
