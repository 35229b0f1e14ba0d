"""Whoever changes the book behind its back is found out."""

import pytest
from sqlalchemy import text

from idkey.store.book import Store
from idkey.store.chain import TICK_EVERY, append
from tests.store.cases import example


@pytest.fixture
def book(store: Store) -> Store:
    """Four entries: two cases with two revisions each."""
    for note in ("", "second"):
        for number in (1, 2):
            store.save(example(number, note=note), None)
    return store


@pytest.mark.parametrize(
    ("deed", "places"),
    [
        pytest.param(
            "UPDATE chain SET content = replace(content, 'Asian', 'Giant') WHERE entry = 2",
            [(2, "case-000002", 1, "What it says was changed after it was saved.")],
            id="a word of a revision changed",
        ),
        pytest.param(
            "UPDATE chain SET at = '2020-01-01T00:00:00Z' WHERE entry = 3",
            [(3, "case-000001", 2, "Its seal does not fit: number, time, person or")],
            id="a revision dated back",
        ),
        pytest.param(
            "DELETE FROM chain WHERE entry = 2",
            [
                (2, "", 0, "Entries 2 to 2 are missing."),
                (3, "case-000001", 2, "It does not follow from the entry before it."),
                (4, "case-000002", 2, "It is number 2 of its case where 1 was expected."),
            ],
            id="a revision taken out",
        ),
        pytest.param(
            "DELETE FROM chain WHERE entry = 4",
            [(3, "", 0, "The end of the book is not what was saved.")],
            id="the last revision taken out",
        ),
        pytest.param(
            "DELETE FROM chain_end",
            [(4, "", 0, "The end of the book is not what was saved.")],
            id="the end forgotten",
        ),
    ],
)
def test_verify_names_the_place_of(book: Store, deed: str, places: list[tuple[int, str, int, str]]):
    with book.database.writes() as connection:
        connection.execute(text(deed))
    found = book.verify()

    assert len(found) == len(places)
    for fault, (entry, case_id, number, problem) in zip(found, places, strict=True):
        assert (fault.entry, fault.case_id, fault.number) == (entry, case_id, number)
        assert fault.problem.startswith(problem)


def test_an_untouched_book_has_no_faults(book: Store):
    assert book.verify() == ()


def test_an_empty_book_has_no_faults(store: Store):
    assert store.verify() == ()


def test_verify_tells_how_far_it_is(store: Store):
    with store.database.writes() as connection:
        for number in range(TICK_EVERY + 1):
            append(connection, "case", f"c{number}", content="{}", at="", by="")
    seen: list[tuple[int, int]] = []
    store.verify(lambda done, total: seen.append((done, total)))

    assert seen == [(TICK_EVERY, TICK_EVERY + 1)]
