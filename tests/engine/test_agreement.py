"""Agreement between two people, held against printed tables and a second implementation."""

from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from sklearn.metrics import cohen_kappa_score

from idkey.engine.agreement import (
    Match,
    by_character,
    kappa_between,
    kappa_of,
    matches,
)
from idkey.model.case import Case, Finding

COHEN_1968 = "Cohen 1968, Psychol. Bull. 70: 213-220, table 1 (200 cases, three classes)"
TABLE = [[88, 14, 18], [10, 40, 10], [2, 6, 12]]

tables = st.integers(2, 4).flatmap(
    lambda size: st.lists(
        st.lists(st.integers(0, 30), min_size=size, max_size=size), min_size=size, max_size=size
    )
)


def test_kappa_and_interval_of_cohen_1968_table_1():
    found = kappa_of(TABLE)

    assert found is not None, COHEN_1968
    assert found.pairs == 200
    assert found.observed == pytest.approx(0.70, abs=0.005), COHEN_1968
    assert found.expected == pytest.approx(0.41, abs=0.005), COHEN_1968
    assert found.kappa == pytest.approx(0.491525, abs=1e-6), COHEN_1968
    assert found.error == pytest.approx(0.0510, abs=5e-5), "recomputed with statsmodels"
    assert (found.low, found.high) == pytest.approx((0.3916, 0.5915), abs=5e-5)


@given(tables)
def test_kappa_is_what_scikit_learn_computes(table: list[list[int]]):
    found = kappa_of(table)
    assume(found is not None)
    pairs = [(i, j) for i, row in enumerate(table) for j, n in enumerate(row) for _ in range(n)]

    assert found is not None
    assert found.kappa == pytest.approx(cohen_kappa_score(*zip(*pairs, strict=True)), abs=1e-9)


@given(tables)
def test_kappa_lies_in_its_interval_and_does_not_mind_who_is_first(table: list[list[int]]):
    found = kappa_of(table)
    turned = kappa_of([list(column) for column in zip(*table, strict=True)])
    assume(found is not None)

    assert found is not None
    assert turned is not None
    assert -1 <= found.low <= found.kappa + 1e-12
    assert found.kappa - 1e-12 <= found.high <= 1
    assert (turned.kappa, turned.error) == pytest.approx((found.kappa, found.error))


@given(st.lists(st.sampled_from("abc"), min_size=2))
def test_full_agreement_on_two_or_more_classes_is_one(classes: list[str]):
    assume(len(set(classes)) > 1)
    found = kappa_between([(name, name) for name in classes])

    assert found is not None
    assert (found.kappa, found.error) == pytest.approx((1.0, 0.0), abs=1e-6)


@pytest.mark.parametrize("pairs", [[], [("a", "a")], [("a", "a"), ("a", "a")]])
def test_kappa_means_nothing_without_two_classes(pairs: list[tuple[str, str]]):
    assert kappa_between(pairs) is None


@pytest.mark.parametrize("table", [[[1, 2]], [[1, 2], [3]], [[1, -1], [0, 2]]])
def test_a_table_that_is_no_table_is_refused(table: list[list[int]]):
    with pytest.raises(ValueError, match="square and holds counts"):
        kappa_of(table)


def seen(*states: str, negated: bool = False) -> Finding:
    return Finding(character="c", states=states, negated=negated)


def number(value: float, uncertainty: float | None = None) -> Finding:
    return Finding(character="c", value=value, uncertainty=uncertainty)


UNSEEN = Finding(character="c", unseen=True)


@pytest.mark.parametrize(
    ("one", "other", "match"),
    [
        pytest.param(seen("a"), seen("a"), Match.SAME, id="same state"),
        pytest.param(seen("a", "b"), seen("b", "a"), Match.SAME, id="same states, other order"),
        pytest.param(seen("a"), seen("b"), Match.DIFFERENT, id="other state"),
        pytest.param(seen("a", "b"), seen("b"), Match.PARTLY, id="a state in common"),
        pytest.param(seen("a", negated=True), seen("a", negated=True), Match.SAME, id="both not"),
        pytest.param(seen("a", negated=True), seen("b", negated=True), Match.PARTLY, id="nots"),
        pytest.param(seen("a", negated=True), seen("a"), Match.DIFFERENT, id="not a against a"),
        pytest.param(seen("b"), seen("a", negated=True), Match.PARTLY, id="b, not a"),
        pytest.param(seen("a"), UNSEEN, Match.ONE_SIDED, id="one could not see"),
        pytest.param(number(5.0), number(5.0), Match.SAME, id="same number"),
        pytest.param(number(5.0), number(5.1), Match.DIFFERENT, id="unknown uncertainty"),
        pytest.param(number(5, 0.3), number(6, 0.4), Match.SAME, id="1.0 = 2 x hypot(0.3, 0.4)"),
        pytest.param(number(5, 0.3), number(6.1, 0.4), Match.DIFFERENT, id="1.1 > 1.0"),
        pytest.param(number(5), seen("a"), Match.DIFFERENT, id="a number against a state"),
    ],
)
def test_two_findings_on_one_character(one: Finding, other: Finding, match: Match):
    first = Case(id="1", key="k").observe(one)
    second = Case(id="2", key="k").observe(other)

    assert [m.match for m in matches(first, second)] == [match]
    assert [m.match for m in matches(second, first)] == [match]


def test_the_uncertainty_of_the_character_stands_in_for_one_not_told():
    first = Case(id="1", key="k").observe(number(5.0))
    second = Case(id="2", key="k").observe(number(5.4))

    assert matches(first, second, {"c": 0.15})[0].match is Match.SAME
    assert matches(first, second, {"c": 0.10})[0].match is Match.DIFFERENT


def test_a_character_only_one_looked_at_is_one_sided():
    first = Case(id="1", key="k").observe(seen("a"))
    second = Case(id="2", key="k").observe(replace(seen("a"), character="d"))

    assert [(m.character, m.match) for m in matches(first, second)] == [
        ("c", Match.ONE_SIDED),
        ("d", Match.ONE_SIDED),
    ]


def test_agreement_over_animals_counts_what_both_saw():
    empty = Case(id="x", key="k")
    pairs = [
        (empty.observe(seen("a")), empty.observe(seen("a"))),
        (empty.observe(seen("b")), empty.observe(seen("b"))),
        (empty.observe(seen("b")), empty.observe(seen("a"))),
        (empty.observe(seen("b")), empty.observe(UNSEEN)),
    ]
    (found,) = by_character(pairs)

    assert (found.character, found.both, found.same) == ("c", 3, 2)
    assert found.kappa == kappa_between([("a", "a"), ("b", "b"), ("b", "a")])


def test_numbers_have_a_share_of_agreement_but_no_kappa():
    empty = Case(id="x", key="k")
    (found,) = by_character([(empty.observe(number(5)), empty.observe(number(5)))])

    assert (found.both, found.same, found.kappa) == (1, 1, None)
