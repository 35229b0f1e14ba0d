"""How animals came in."""

from dataclasses import replace

import pytest

from idkey.store.book import Store
from idkey.store.faults import Missing
from idkey.store.intake import Intake, cases_of_intake, intake_of, put_intake
from idkey.store.record import Papers, Query
from tests.store.cases import EXAMPLE, example

INTAKE = Intake(
    number="SB-0117",
    date="2025-11-03",
    supplier="Lantern Street Vivarium",
    label="Asian Forest Scorpion",
    animals=12,
    papers=Papers(source="F", document="GH-221"),
)


def test_an_intake_is_kept_with_all_its_fields(store: Store):
    store.save(EXAMPLE, None)
    put_intake(store, EXAMPLE.id, INTAKE, by="RB")

    assert intake_of(store, EXAMPLE.id) == INTAKE
    assert store.verify() == ()


def test_a_second_intake_corrects_the_first_and_the_same_adds_nothing(store: Store):
    store.save(EXAMPLE, None)
    put_intake(store, EXAMPLE.id, INTAKE)
    put_intake(store, EXAMPLE.id, replace(INTAKE, animals=11))
    put_intake(store, EXAMPLE.id, replace(INTAKE, animals=11))

    assert intake_of(store, EXAMPLE.id) == replace(INTAKE, animals=11)
    assert store.save(example(2), None).entry == 4


def test_the_animals_of_a_shipment_are_found_by_its_number(store: Store):
    for number in (1, 2, 3):
        store.save(example(number), None)
    put_intake(store, "case-000001", INTAKE)
    put_intake(store, "case-000003", INTAKE)

    assert cases_of_intake(store, "SB-0117") == ("case-000003", "case-000001")
    assert len(store.search(Query(text="sb 0117"))) == 2


def test_no_intake_is_none(store: Store):
    store.save(EXAMPLE, None)

    assert intake_of(store, EXAMPLE.id) is None
    with pytest.raises(Missing):
        put_intake(store, "nowhere", INTAKE)


@pytest.mark.parametrize("fault", [{"number": " "}, {"animals": 0}])
def test_an_impossible_intake_cannot_be_made(fault: dict[str, object]):
    with pytest.raises(ValueError, match="an intake"):
        replace(INTAKE, **fault)
