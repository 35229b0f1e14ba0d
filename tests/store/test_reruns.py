"""Saved cases are judged again, and what changes is listed, not saved."""

from dataclasses import replace

import pytest

from idkey.model.case import Case
from idkey.store.book import Store
from idkey.store.record import VerdictSummary
from idkey.store.reruns import alterations, cases_per_key, says_otherwise, stored_cases
from tests.store.cases import example

BEFORE = VerdictSummary(
    kind="holds",
    level="established",
    name="Pandinus imperator",
    taxa=("pandinus_imperator",),
    cautions=("permit",),
    key_version="1.0.0",
)


def test_every_case_comes_once_in_its_newest_revision(store: Store):
    for number in range(55):
        store.save(example(number), None)
    store.save(example(7, note="newest"), BEFORE)
    store.save(example(9, key="another"), None)
    found = list(stored_cases(store, "demo"))

    assert [stored.case.id for stored in found] == [
        f"case-{number:06d}" for number in range(55) if number != 9
    ]
    assert (found[7].case.note, found[7].summary) == ("newest", BEFORE)
    assert found[7].revision == store.case("case-000007").revision
    assert len(list(stored_cases(store))) == 55


def test_only_cases_whose_verdict_changes_are_listed_and_nothing_is_saved(store: Store):
    for number in range(4):
        store.save(example(number), BEFORE if number else None)
    seen: list[tuple[int, int]] = []

    def judge(case: Case) -> VerdictSummary:
        newer = replace(BEFORE, key_version="2.0.0")
        return replace(newer, name="Pandinus sp.") if case.id.endswith("2") else newer

    found = list(
        alterations(store, "demo", judge, tick=lambda done, total: seen.append((done, total)))
    )

    assert [(a.stored.case.id, a.before, a.after.name) for a in found] == [
        ("case-000002", BEFORE, "Pandinus sp.")
    ]
    assert seen == [(1, 4), (2, 4), (3, 4), (4, 4)]
    assert len(store.revisions("case-000002")) == 1


@pytest.mark.parametrize(
    ("change", "otherwise"),
    [
        ({}, False),
        ({"key_version": "2.0.0", "key_digest": "x"}, False),
        ({"name": ""}, True),
        ({"taxa": ("pandinus_sp",)}, True),
        ({"kind": "too_broad"}, True),
        ({"level": "open"}, True),
        ({"cautions": ("hazard",)}, True),
    ],
)
def test_a_verdict_says_otherwise_by_name_verdict_or_caution(
    change: dict[str, object], otherwise: bool
):
    assert says_otherwise(BEFORE, replace(BEFORE, **change)) == otherwise


def test_cases_are_counted_per_key(store: Store):
    for number in range(3):
        store.save(example(number, key="demo" if number else "other"), None)

    assert cases_per_key(store) == {"demo": 2, "other": 1}
