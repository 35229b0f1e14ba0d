"""Cases are found by the words a person remembers."""

from collections.abc import Iterator
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.model.case import Claim, Finding
from idkey.store.book import Store
from idkey.store.record import Query, VerdictSummary
from idkey.store.words import plain_words
from tests.store.cases import example
from tests.store.conftest import BACKENDS, a_place

ASIAN = example(
    1,
    claim=Claim(
        text="Asian Forest Scorpion",
        label="asian_forest_scorpion",
        supplier="Lantern Street Vivarium",
        date="2025-11-03",
    ),
    note="calm, from a mixed lot",
)
BLACK = example(
    2,
    claim=Claim(
        text="Schwarzer Skorpion (Größe L)",
        label="black_scorpion",
        supplier="Müller & Söhne",
        date="2025-10-01",
    ),
    findings=(Finding(character="telson", states=("thick",), note="seen at 12.5x"),),
)
PLAIN = example(3, claim=Claim(text="漢字 scorpion"), created="2025-09-15T10:00:00Z")
DECIDED = VerdictSummary(
    kind="contradicted",
    level="established",
    name="Heterometrus silenus",
    taxa=("heterometrus_silenus",),
)
PAIR = VerdictSummary(
    kind="open",
    level="group",
    name="Parabuthus sp.",
    taxa=("parabuthus_a", "parabuthus_b"),
)


@pytest.fixture(scope="module", params=BACKENDS)
def shelf(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Store]:
    """Three cases that no test changes."""
    with Store.open(a_place(request, tmp_path_factory.mktemp("shelf"))) as store:
        store.save(ASIAN, DECIDED, by="RB")
        store.save(BLACK, PAIR, by="MT")
        store.save(PLAIN, None)
        yield store


@pytest.mark.parametrize(
    ("query", "numbers"),
    [
        pytest.param(Query(), [3, 2, 1], id="nothing asked: all, newest first"),
        pytest.param(Query(text="scorp"), [3, 2, 1], id="the beginning of a word"),
        pytest.param(Query(text="corpion"), [], id="not its end"),
        pytest.param(Query(text="FOREST asia"), [1], id="several words in any order and case"),
        pytest.param(Query(text="forest black"), [], id="all words must match"),
        pytest.param(Query(text="grosse muller"), [2], id="without accents"),
        pytest.param(Query(text="GRÖẞE"), [2], id="with accents in capitals"),
        pytest.param(Query(text="漢字"), [3], id="other scripts"),
        pytest.param(Query(text="mixed lot"), [1], id="remark of the case"),
        pytest.param(Query(text="12.5x"), [2], id="remark of a finding, with a sign in it"),
        pytest.param(Query(text="case-000002"), [2], id="id of the case"),
        pytest.param(Query(text="\"') OR * : NOT"), [], id="signs and search words mean nothing"),
        pytest.param(Query(text="  -- "), [3, 2, 1], id="signs alone ask nothing"),
        pytest.param(Query(label="black"), [2], id="label by its entry"),
        pytest.param(Query(label="lantern"), [], id="a supplier is no label"),
        pytest.param(Query(supplier="lantern"), [1], id="supplier"),
        pytest.param(Query(name="silenus"), [1], id="name"),
        pytest.param(Query(label_id="black_scorpion"), [2], id="label entry"),
        pytest.param(Query(taxon="parabuthus_b"), [2], id="one taxon of a group"),
        pytest.param(Query(verdict="contradicted"), [1], id="verdict"),
        pytest.param(Query(since="2025-10-01"), [2, 1], id="since that day"),
        pytest.param(Query(until="2025-10-01"), [3, 2], id="until that day"),
        pytest.param(Query(since="2025-09-16", until="2025-10-31"), [2], id="between days"),
        pytest.param(Query(text="scorpion", verdict="open"), [2], id="words and verdict"),
        pytest.param(Query(limit=1), [3], id="no more than asked"),
    ],
)
def test_search_finds(shelf: Store, query: Query, numbers: list[int]):
    found = [int(row.case_id.removeprefix("case-")) for row in shelf.search(query)]

    assert found == numbers


def test_the_words_of_an_older_revision_no_longer_find_the_case(store: Store):
    store.save(ASIAN, DECIDED)
    store.save(replace(ASIAN, note="nervous"), DECIDED)

    assert store.search(Query(text="calm")) == ()
    assert [row.case_id for row in store.search(Query(text="nervous"))] == [ASIAN.id]


@given(st.text())
def test_plain_words_are_stable_and_hold_only_letters_and_digits(text: str):
    words = plain_words(text)

    assert plain_words(" ".join(words)) == words
    assert all(word.isalnum() for word in words)


@pytest.mark.parametrize("written", ["2025-03-09", "9.3.2025", " 09/03/2025 "])
def test_the_day_of_arrival_counts_however_it_is_written(store: Store, written: str):
    store.save(replace(ASIAN, claim=replace(ASIAN.claim, date=written)), None)

    assert [row.day for row in store.search(Query())] == ["2025-03-09"]
