"""People and suppliers."""

from dataclasses import replace

import pytest

from idkey.store.book import Store
from idkey.store.people import (
    Person,
    Supplier,
    people_of,
    put_person,
    put_supplier,
    suppliers_of,
)
from tests.store.cases import EXAMPLE, example


def test_people_are_kept_by_initials_and_can_be_changed(store: Store):
    put_person(store, Person(initials="RB", note="trained 2024"))
    put_person(store, Person(initials=" AK "))
    put_person(store, Person(initials="RB", name="Robin", active=False))

    assert people_of(store) == (
        Person(initials="AK"),
        Person(initials="RB", name="Robin", active=False),
    )


def test_suppliers_come_from_labels_and_from_notes_one_spelling_each(store: Store):
    for number, supplier in enumerate(
        ["Lantern Street Vivarium", "LANTERN STREET vivarium", "Söhne & Co", ""]
    ):
        store.save(replace(example(number), claim=replace(EXAMPLE.claim, supplier=supplier)), None)
    put_supplier(store, Supplier(name="Sohne & Co.", note="mixed lots"))
    put_supplier(store, Supplier(name="Mossy Corner"))
    put_supplier(store, Supplier(name="MOSSY corner", note="closed"))

    assert suppliers_of(store) == (
        Supplier(name="LANTERN STREET vivarium"),
        Supplier(name="MOSSY corner", note="closed"),
        Supplier(name="Sohne & Co.", note="mixed lots"),
    )


def test_nobody_and_no_name_cannot_be_kept():
    with pytest.raises(ValueError, match="initials"):
        Person(initials=" ")
    with pytest.raises(ValueError, match="letter or digit"):
        Supplier(name=" - ")
