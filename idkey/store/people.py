"""People by initials or alias, and suppliers under one spelling each."""

from dataclasses import dataclass
from functools import cache

from sqlalchemy import delete, insert, select

from idkey.engine.sample import SAMPLE_ID
from idkey.store.book import Store
from idkey.store.codec import storable
from idkey.store.schema import cases, people, suppliers
from idkey.store.words import plain_words


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Someone who determines or saves.

    Attributes:
        initials: Initials or alias, as revisions name them.
        name: What to show instead, if the person wants that; a full name is not needed.
        note: Free text, such as training.
        active: Whether to offer the person in lists.
    """

    initials: str
    name: str = ""
    note: str = ""
    active: bool = True

    def __post_init__(self) -> None:
        if not self.initials.strip():
            raise ValueError("a person needs initials or an alias")


@dataclass(frozen=True, slots=True, kw_only=True)
class Supplier:
    """Someone animals come from.

    Attributes:
        name: The spelling to show.
        note: Free text.
    """

    name: str
    note: str = ""

    def __post_init__(self) -> None:
        if not plain_words(self.name):
            raise ValueError("a supplier needs a name with a letter or digit in it")


def people_of(store: Store) -> tuple[Person, ...]:
    """The people of the book, by initials."""
    with store.database.reads() as connection:
        found = connection.execute(select(people).order_by(people.c.initials)).mappings()
        return tuple(Person(**{**row, "active": bool(row["active"])}) for row in found)


def put_person(store: Store, person: Person) -> None:
    """Add a person, or change the one with the same initials."""
    initials = storable(person.initials.strip())
    row = {"name": storable(person.name), "note": storable(person.note)}
    with store.database.writes() as connection:
        connection.execute(delete(people).where(people.c.initials == initials))
        connection.execute(
            insert(people).values(initials=initials, active=int(person.active), **row)
        )


def suppliers_of(store: Store) -> tuple[Supplier, ...]:
    """The suppliers that were noted or that a label names, by name.

    Spellings that differ by case, accents and signs alone are one supplier: under the spelling
    that was noted, or the first by alphabet.
    """
    with store.database.reads() as connection:
        noted = connection.execute(select(suppliers)).mappings().all()
        named = select(cases.c.supplier).where(cases.c.id != SAMPLE_ID)
        seen = connection.execute(named.distinct()).scalars()
        found: dict[str, Supplier] = {}
        for name in sorted(filter(plain_words, seen)):
            found.setdefault(supplier_words(name), Supplier(name=name))
    for row in noted:
        found[row["words"]] = Supplier(name=row["name"], note=row["note"])
    return tuple(sorted(found.values(), key=lambda supplier: plain_words(supplier.name)))


def put_supplier(store: Store, supplier: Supplier) -> None:
    """Note a supplier, or change the one whose name differs by case, accents or signs alone."""
    words = supplier_words(supplier.name)
    row = {"name": storable(supplier.name.strip()), "note": storable(supplier.note)}
    with store.database.writes() as connection:
        connection.execute(delete(suppliers).where(suppliers.c.words == words))
        connection.execute(insert(suppliers).values(words=words, **row))


@cache
def supplier_words(name: str) -> str:
    """The name without case, accents and signs; equal for spellings of one supplier."""
    return " ".join(plain_words(name))
