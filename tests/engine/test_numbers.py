"""Ranges, densities and the fit of findings."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate, stats

from idkey.engine.compile import compile_key
from idkey.engine.fit import fit_p
from idkey.engine.normal import below
from idkey.engine.spans import bell, expected_width, heights, limits, printed, shares_below
from idkey.engine.weighing import weigh
from idkey.model.case import Case, Finding
from idkey.model.character import Kind
from idkey.model.score import Spans
from tests.engine.small_keys import key_of, number_character, states_character

TIPPETT = "Tippett 1925, Biometrika 17: 364-387, table X; recomputed here by integration"


@pytest.mark.parametrize("n", [3, 5, 10, 20, 30, 50, 100])
def test_expected_ranges_of_tippett_1925_table_10(n: int):
    def outside(x: float) -> float:
        return 1 - stats.norm.cdf(x) ** n - stats.norm.sf(x) ** n

    exact = integrate.quad(outside, -9, 9)[0]

    assert expected_width(n) == pytest.approx(exact, abs=0.006), TIPPETT


def test_the_normal_is_that_of_scipy():
    z = np.linspace(-8, 8, 400)

    assert np.abs(below(z) - stats.norm.cdf(z)).max() < 2e-7


@settings(max_examples=30)  # each integrates over 2001 points
@given(st.floats(10, 50), st.floats(0, 20), st.floats(0.2, 5))
def test_a_density_integrates_to_one_and_its_shares_agree(low: float, width: float, noise: float):
    one = bell(Spans(low=low, high=low + width), noise=noise, count=False, edge=(0, 100))
    grid = np.linspace(one.low - 9 * one.sd, one.high + 9 * one.sd, 2001)
    ends = (np.array([one.low]), np.array([one.high]), np.array([one.sd]))

    total = integrate.trapezoid([heights(*ends, x)[0] for x in grid], grid)

    assert total == pytest.approx(1.0, abs=1e-3)
    assert shares_below(*ends, grid[[0, -1]])[0] == pytest.approx([0, 1], abs=1e-4)


def test_a_printed_range_is_no_limit_but_bounds_what_conflicts():
    five = Spans(low=46, high=52)
    fifty = Spans(low=46, high=52, n=50)

    assert limits(five, noise=0.5)[1] > limits(fifty, noise=0.5)[1] > 52
    assert printed(five, 52)
    assert not printed(five, 52.01)


def test_open_bounds_stay_open():
    assert limits(Spans(low=4), noise=0.2)[1] == math.inf
    assert limits(Spans(high=120), noise=1.0)[0] == -math.inf
    assert 120 < limits(Spans(high=120), noise=1.0)[1] < 150


def test_a_fixed_count_conflicts_one_off():
    low, high = limits(Spans(low=2, high=2), noise=0.2, count=True)

    assert 1 < low < 2 < high < 3.1


def binary_matrix(shares: list[float]):
    """Two taxa and one character per share; the first shows "+" with that share."""
    from idkey.model.score import Shows

    names = [f"c{n}" for n in range(len(shares))]
    table = {
        "one": {c: Shows({"+": p, "-": 1 - p}) for c, p in zip(names, shares, strict=True)},
        "two": dict.fromkeys(names, "-"),
    }
    return compile_key(key_of([states_character(c, ("+", "-")) for c in names], table))


@pytest.mark.parametrize("signs", ["+++++", "-++++", "+--+-", "-----"])
def test_the_fit_is_the_exact_tail_with_half_of_the_ties(signs: str):
    shares = [0.95, 0.8, 0.7, 0.9, 0.6]
    matrix = binary_matrix(shares)
    findings = tuple(Finding(character=f"c{n}", states=(s,)) for n, s in enumerate(signs))
    seen = math.prod(p if s == "+" else 1 - p for p, s in zip(shares, signs, strict=True))
    lower = ties = 0.0
    for code in range(2 ** len(shares)):
        chance = math.prod(p if code >> n & 1 else 1 - p for n, p in enumerate(shares))
        if math.isclose(chance, seen, rel_tol=0.02):
            ties += chance
        elif chance < seen:
            lower += chance

    found = fit_p(matrix, weigh(matrix, Case(id="1", key="k", findings=findings)), 0)

    assert found == pytest.approx(lower + ties / 2, abs=0.02)


def test_a_number_far_out_does_not_fit_and_one_in_the_middle_does():
    characters = [number_character("m", kind=Kind.MEASUREMENT, uncertainty=0.1)]
    key = key_of(
        characters,
        {"one": {"m": Spans(mean=50, sd=2, n=30)}, "two": {"m": Spans(mean=90, sd=2, n=30)}},
    )
    matrix = compile_key(key)

    def fit(value: float) -> float:
        case = Case(id="1", key="k", findings=(Finding(character="m", value=value),))
        return fit_p(matrix, weigh(matrix, case), 0) or 0.0

    assert fit(50.2) > 0.8
    assert fit(54.0) == pytest.approx(2 * stats.norm.sf(2 / math.sqrt(1 + 1 / 30)), abs=0.015)
    assert fit(62.0) < 0.001
