"""Sales attached to a case."""

from dataclasses import replace

import pytest

from idkey.store.book import Store
from idkey.store.faults import Missing
from idkey.store.record import Papers, Query, Sale
from tests.store.cases import EXAMPLE, example

SALE = Sale(
    number="2025-0042",
    date="2025-11-08",
    price="45.00 EUR",
    buyer="B-1733",
    papers=Papers(source="C", document="DE-0815/25", origin="own breeding"),
)


def test_a_sale_is_kept_with_all_its_fields(store: Store):
    store.save(EXAMPLE, None)
    store.attach_sale(EXAMPLE.id, SALE, by="MT")

    assert store.sales(EXAMPLE.id) == (SALE,)
    assert store.verify() == ()


def test_the_same_number_again_corrects_the_sale(store: Store):
    store.save(EXAMPLE, None)
    store.attach_sale(EXAMPLE.id, SALE)
    store.attach_sale(EXAMPLE.id, replace(SALE, price="40.00 EUR"))
    store.attach_sale(EXAMPLE.id, replace(SALE, number="2025-0099"))

    assert [(s.number, s.price) for s in store.sales(EXAMPLE.id)] == [
        ("2025-0042", "40.00 EUR"),
        ("2025-0099", "45.00 EUR"),
    ]
    assert store.verify() == ()


def test_the_same_sale_again_adds_nothing_to_the_book(store: Store):
    store.save(EXAMPLE, None)
    store.attach_sale(EXAMPLE.id, SALE)
    store.attach_sale(EXAMPLE.id, SALE)
    following = store.save(example(2), None)

    assert following.entry == 3


def test_one_sale_may_take_several_animals(store: Store):
    for number in (1, 2):
        store.save(example(number), None)
        store.attach_sale(example(number).id, SALE)

    assert {row.case_id for row in store.search(Query(text="2025-0042"))} == {
        "case-000001",
        "case-000002",
    }


def test_a_sale_brings_the_case_to_the_top_and_a_later_revision_keeps_it_findable(store: Store):
    store.save(example(1), None)
    store.save(example(2), None)
    store.attach_sale("case-000001", SALE)
    store.save(example(1, note="second look"), None)

    assert store.recent()[0].case_id == "case-000001"
    assert [row.revision for row in store.search(Query(text="0042"))] == [2]


def test_a_sale_of_an_unknown_case_is_refused(store: Store):
    with pytest.raises(Missing, match="no case nowhere"):
        store.attach_sale("nowhere", SALE)


def test_a_sale_without_a_number_cannot_be_made():
    with pytest.raises(ValueError, match="needs a number"):
        Sale(number=" ")
