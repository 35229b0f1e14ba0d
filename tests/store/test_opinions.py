"""Second opinions are blind, are bound to their case, and do not count twice."""

from dataclasses import replace

import pytest

from idkey.engine.agreement import Match
from idkey.model.case import Case, Finding, Specimen
from idkey.model.character import Sex
from idkey.store.book import Store
from idkey.store.faults import Missing, StoreError
from idkey.store.opinions import agreement, blind_case, comparisons, first_of, put_opinion
from idkey.store.record import VerdictSummary
from idkey.store.tallies import Subject, tallies
from tests.store.cases import EXAMPLE, example

RIGHT = VerdictSummary(kind="holds", level="established", name="A a", taxa=("a",))
WRONG = VerdictSummary(kind="contradicted", level="established", name="B b", taxa=("b",))


def judged(store: Store, number: int, *, state: str, summary: VerdictSummary | None) -> str:
    """Save a case with one finding and a verdict; returns its id."""
    case = example(number, findings=(Finding(character="c", states=(state,)),))
    store.save(case, summary)
    return case.id


def test_a_blind_case_shows_the_label_and_nothing_that_was_found():
    first = replace(EXAMPLE, specimen=Specimen(sex=Sex.MALE), note="looks like A", use_prior=True)
    blind = blind_case(first, "new", by="MT", created="2025-11-05T10:00:00Z")

    assert blind == Case(
        id="new",
        key=first.key,
        key_version=first.key_version,
        claim=first.claim,
        by="MT",
        created="2025-11-05T10:00:00Z",
    )


def test_a_second_opinion_is_compared_character_by_character(store: Store):
    one = judged(store, 1, state="x", summary=RIGHT)
    two = judged(store, 2, state="y", summary=WRONG)
    put_opinion(store, one, two, by="MT")
    (found,) = comparisons(store, one)

    assert (found.first, found.second) == (one, two)
    assert (found.same_taxa, found.same_kind) == (False, False)
    assert [(c.character, c.match) for c in found.characters] == [("c", Match.DIFFERENT)]
    assert (first_of(store, two), first_of(store, one)) == (one, "")
    assert store.verify() == ()


def test_an_opinion_without_a_verdict_yet_says_neither_same_nor_other(store: Store):
    one = judged(store, 1, state="x", summary=RIGHT)
    two = judged(store, 2, state="x", summary=None)
    put_opinion(store, one, two)
    (found,) = comparisons(store, one)

    assert (found.same_taxa, found.same_kind) == (None, None)
    assert found.characters[0].match is Match.SAME


def test_binding_twice_adds_nothing(store: Store):
    one = judged(store, 1, state="x", summary=RIGHT)
    two = judged(store, 2, state="x", summary=RIGHT)
    put_opinion(store, one, two)
    put_opinion(store, one, two)

    assert len(comparisons(store, one)) == 1


def test_an_opinion_on_itself_on_an_opinion_or_on_two_cases_is_refused(store: Store):
    ids = [judged(store, number, state="x", summary=RIGHT) for number in range(4)]
    put_opinion(store, ids[0], ids[1])

    for first, second in [(ids[2], ids[2]), (ids[1], ids[2]), (ids[3], ids[1])]:
        with pytest.raises(StoreError, match="cannot be a second opinion"):
            put_opinion(store, first, second)
    with pytest.raises(Missing):
        put_opinion(store, ids[0], "nowhere")


def test_an_animal_judged_twice_counts_once(store: Store):
    one = judged(store, 1, state="x", summary=RIGHT)
    two = judged(store, 2, state="x", summary=WRONG)
    put_opinion(store, one, two)

    assert store.outcomes("asian_forest_scorpion") == {"a": 1}
    assert [t.kinds for t in tallies(store, Subject.LABEL)] == [{"holds": 1}]


def test_agreement_over_all_animals_with_kappa(store: Store):
    outcomes = [("x", "x"), ("y", "y"), ("x", "y"), ("y", "y")]
    summaries = {"x": RIGHT, "y": WRONG}
    for number, (left, right) in enumerate(outcomes):
        one = judged(store, 2 * number, state=left, summary=summaries[left])
        two = judged(store, 2 * number + 1, state=right, summary=summaries[right])
        put_opinion(store, one, two)
    found = agreement(store)

    assert (found.animals, found.decided, found.same_taxa) == (4, 4, 3)
    assert found.taxa is not None
    assert found.taxa.kappa == pytest.approx(0.5)  # (0.75 - 0.5) / (1 - 0.5)
    assert found.kinds == found.taxa
    assert [(c.character, c.both, c.same, c.kappa) for c in found.characters] == [
        ("c", 4, 3, found.taxa)
    ]
    assert agreement(store, since="2025-12-01").animals == 0
    assert agreement(store, until="2025-11-03").animals == 4
