"""Lengths, ratios and counts from lines on a picture, held against print and Monte Carlo."""

import math
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import stats
from uncertainties import ufloat, umath

from idkey.engine.measure import Cause, Known, Lie, Setting, count, length, quotient, ratio
from idkey.engine.ratios import quantiles, student95
from idkey.engine.strokes import Edge, Line, clicks, drawn, length_px
from idkey.engine.tilt import Tilt, Views, stretch, summed, views

PLAIN = Setting(width=1600, height=1200)


def straight(start: complex, end: complex, repeats: int = 1) -> Line:
    return Line((((start.real, start.imag), (end.real, end.imag)),) * repeats)


def part(measured, cause: Cause) -> float:
    return dict(measured.budget).get(cause, 0.0)


@pytest.mark.parametrize(
    ("freedom", "half_width"),
    [(3, 3.18), (5, 2.57), (8, 2.31), (10, 2.23), (20, 2.09), (50, 2.01), (1e9, 1.960)],
    ids=lambda n: f"JCGM 100 2008 table G.2 (from memory) {n:g}",
)
def test_student_t_is_that_of_gum_table_g2(freedom: float, half_width: float):
    assert student95(freedom) == pytest.approx(half_width, abs=0.0055)


@given(st.floats(3, 500))
def test_student_t_agrees_with_scipy_to_two_in_a_thousand(freedom: float):
    assert student95(freedom) == pytest.approx(float(stats.t.ppf(0.975, freedom)), rel=2e-3)


def test_a_ratio_of_12_4_to_8_each_with_0_1_has_the_recomputed_uncertainty():
    """Recomputed with numpy: sd 0.023057 by propagation, 0.023084 by 2 million draws."""
    found = quotient((12.4, 0.1), (8.0, 0.1))

    assert found.value == pytest.approx(1.55)
    assert found.combined == pytest.approx(0.023057, abs=1e-6)
    assert found.uncertainty == pytest.approx(0.023084, abs=4e-5)


def test_a_ratio_of_correlated_numbers_has_the_recomputed_uncertainty():
    """Recomputed with numpy: 12.4/8.0, sd 0.1 each, correlation 0.5 gives 0.017013."""
    assert quotient((12.4, 0.1), (8.0, 0.1), correlation=0.5).combined == pytest.approx(
        0.017013, abs=1e-6
    )


def test_a_ratio_over_an_uncertain_number_has_the_interval_of_fieller_1954():
    """1.24/0.80, sd 0.1 each: recomputed Fieller limits 1.1725 and 2.1255, sd 0.2306."""
    found = quotient((1.24, 0.1), (0.8, 0.1))

    assert (found.low, found.high) == pytest.approx((1.1725, 2.1255), abs=5e-5)
    assert found.combined == pytest.approx(0.2306, abs=5e-5)
    assert found.uncertainty > found.combined


def test_the_interval_of_a_ratio_is_that_of_a_million_draws():
    chance = np.random.default_rng(4)
    drawn_ratios = chance.normal(1.24, 0.1, 1_000_000) / chance.normal(0.8, 0.1, 1_000_000)

    found = quotient((1.24, 0.1), (0.8, 0.1))

    low, high = np.quantile(drawn_ratios, [0.025, 0.975])
    assert (found.low, found.high) == pytest.approx((low, high), abs=4e-3)


@settings(max_examples=50)
@given(st.floats(5, 50), st.floats(5, 50), st.floats(0.01, 0.25), st.floats(0.01, 0.25))
def test_the_limits_of_fieller_solve_his_equation(a: float, b: float, ua: float, ub: float):
    low, middle, high = quantiles((a, ua * a), (b, ub * b), np.zeros(1))

    z = stats.norm.ppf(0.975)
    for limit in (low, high):
        spread = math.hypot(ua * a, limit * ub * b)
        assert abs(a - limit * b) == pytest.approx(z * spread, rel=1e-4)
    assert low < middle < high
    assert middle == pytest.approx(a / b, rel=1e-6)


def test_a_number_that_may_be_zero_is_no_divisor():
    with pytest.raises(ValueError, match="zero"):
        quotient((1.0, 0.1), (0.3, 0.1))


points = st.tuples(st.floats(200, 1400), st.floats(200, 1000))


@settings(max_examples=50)
@given(
    st.lists(points, min_size=2, max_size=4),
    st.integers(1, 4),
    st.sampled_from(list(Tilt)),
    st.sampled_from(list(Lie)),
    st.floats(0.01, 0.5),
)
def test_the_parts_are_combined_as_the_uncertainties_package_does(
    stroke, repeats, tilt, lie, ruler_error
):
    if length_px(stroke) < 150:
        return
    wobble = (0.0, 1.0, -2.0, 3.0)[:repeats]
    line = Line(tuple(((stroke[0][0] + w, stroke[0][1]), *stroke[1:]) for w in wobble))
    ruler = straight(300 + 1000j, 900 + 1000j, 2)
    setting = replace(PLAIN, tilt=tilt, lie=lie)

    found = length(line, ruler, Known(length=10, uncertainty=ruler_error), setting)

    shaky = clicks((line, ruler), setting.edge.click_px)
    one, two = drawn(line, shaky.px), drawn(ruler, shaky.px)
    upper = ufloat(one.length, math.hypot(one.click, one.bend))
    lower = ufloat(two.length, two.click)
    lean = umath.exp(ufloat(0, part(found, Cause.TILT) / found.value))
    theirs = upper / lower * ufloat(10, ruler_error) * lean
    assert found.combined / found.value == pytest.approx(theirs.std_dev / theirs.n, rel=1e-9)


@given(st.floats(0.02, 0.7), st.floats(0, 6.28), st.floats(0.7, 4), st.data())
def test_following_lines_through_a_view_gives_back_their_true_lengths(lean, turn, far, data):
    """The plane is put before a pinhole camera here, point by point, and taken back by tilt.py."""
    across = st.floats(-300, 300)
    ends = [complex(data.draw(across), data.draw(across)) for _ in range(4)]
    true = [abs(ends[1] - ends[0]), abs(ends[3] - ends[2])]
    if min(true) < 20:
        return
    distance = far * 1600
    seen = [pinhole(p, lean, turn, distance) for p in ends]
    lines = [((seen[0], seen[1]),), ((seen[2], seen[3]),)]
    normal = (math.sin(lean) * math.cos(turn), math.sin(lean) * math.sin(turn), math.cos(lean))
    view = Views(np.array([normal]), np.array([distance]), (800.0, 600.0))

    one, two = (stretch(line, view)[0] + math.log(length_px(line[0])) for line in lines)

    assert math.exp(one - two) == pytest.approx(true[0] / true[1], rel=1e-6)


def pinhole(point: complex, lean: float, turn: float, distance: float) -> tuple[float, float]:
    along = point * complex(math.cos(turn), -math.sin(turn))
    depth = distance - along.real * math.sin(lean)
    seen = complex(along.real * math.cos(lean), along.imag) * distance / depth
    seen *= complex(math.cos(turn), math.sin(turn))
    return seen.real + 800, seen.imag + 600


def test_parallel_lines_shorten_alike_so_that_tilt_hardly_matters():
    whole, half = straight(600 + 600j, 1000 + 600j), straight(700 + 605j, 900 + 605j)

    found = ratio(whole, half, replace(PLAIN, tilt=Tilt.CLEAR))

    assert part(found, Cause.TILT) / found.value < 0.004


def test_crossed_lines_can_change_their_ratio_up_to_the_foreshortening_bound():
    along, across = straight(600 + 600j, 1000 + 600j), straight(800 + 500j, 800 + 700j)

    stretches = stretch(along.strokes, views(Tilt.CLEAR, 1600, 1200)) - stretch(
        across.strokes, views(Tilt.CLEAR, 1600, 1200)
    )

    bound, perspective = Tilt.CLEAR.shortest, 0.04
    assert math.exp(stretches.max()) == pytest.approx(1 / bound, rel=perspective)
    assert math.exp(stretches.min()) == pytest.approx(bound, rel=perspective)


@pytest.mark.parametrize(
    ("tilt", "most"), [(Tilt.FLAT, 0.01), (Tilt.SLIGHT, 0.05), (Tilt.CLEAR, 0.15)]
)
def test_the_more_a_part_leans_the_less_is_known_of_its_ratio(tilt: Tilt, most: float):
    along, across = straight(600 + 600j, 1000 + 600j), straight(800 + 500j, 800 + 700j)

    found = ratio(along, across, replace(PLAIN, tilt=tilt))

    assert most / 3 < part(found, Cause.TILT) / found.value < most


def test_a_ruler_that_lies_apart_and_higher_makes_a_length_less_sure():
    line, ruler = straight(500 + 600j, 900 + 600j), straight(500 + 900j, 900 + 900j)
    known = Known(length=20)

    together = length(line, ruler, known, PLAIN)
    apart = length(line, ruler, known, replace(PLAIN, lie=Lie.APART))

    assert apart.uncertainty > 1.8 * together.uncertainty
    assert apart.value == pytest.approx(20, rel=0.01)


def test_a_ruler_that_is_not_exact_passes_that_on():
    line, ruler = straight(500 + 600j, 900 + 600j), straight(500 + 900j, 900 + 900j)

    found = length(line, ruler, Known(length=20, uncertainty=0.4), PLAIN)

    assert part(found, Cause.SCALE) == pytest.approx(0.4, rel=0.01)


def test_repeats_lower_the_click_error_by_their_square_root():
    def wobbling(repeats: int) -> Line:
        chance = np.random.default_rng(8)
        ends = [chance.normal((500, 600, 900, 600), 2.0).tolist() for _ in range(repeats)]
        return Line(tuple(((x, y), (u, v)) for x, y, u, v in ends))

    once, often = drawn(wobbling(1), 2.0), drawn(wobbling(9), 2.0)

    assert once.click == pytest.approx(2 * math.sqrt(2))
    assert often.click == pytest.approx(once.click / 3, rel=0.01)


def test_repeats_that_scatter_more_than_was_stated_speak_for_themselves():
    lines = (Line(tuple(((500.0, 600.0), (900.0 + d, 600.0)) for d in (-30, 0, 25, 40))),)

    found = clicks(lines, Edge.SHARP.click_px)

    assert found.restless
    assert found.px == pytest.approx(np.std([-30, 0, 25, 40], ddof=1) / math.sqrt(2))
    assert found.freedom == 3


def test_repeats_that_agree_with_what_was_stated_are_pooled_with_it():
    """GUM 4.2.4 and G.4.2: 12.5 degrees of freedom stand behind a click error known to 20 %."""
    lines = (Line(tuple(((500.0, 600.0), (900.0 + d, 600.0)) for d in (-2, 0, 2))),)

    found = clicks(lines, Edge.ORDINARY.click_px)

    assert not found.restless
    assert found.freedom == pytest.approx(14.5)
    assert found.px == pytest.approx(math.sqrt((12.5 * 4 + 2 * 2) / 14.5))


@given(st.integers(5, 30), st.floats(0.5, 3.1))
def test_an_arc_followed_by_a_polyline_is_covered(steps: int, angle: float):
    if angle / steps > 0.5:
        return
    arc = tuple(
        (800 + 300 * math.cos(a), 600 + 300 * math.sin(a)) for a in np.linspace(0, angle, steps + 1)
    )

    found = drawn(Line((arc,)), 0.0)

    assert abs(found.length - 300 * angle) <= 2 * found.bend + 1e-6


def test_a_jointed_line_is_covered_too():
    joints = ((0.0, 0.0), (300.0, 0.0), (300.0, 300.0))

    found = drawn(Line((joints,)), 0.0)

    assert abs(found.length - 600) <= 2 * found.bend


def test_shaky_ends_do_not_lengthen_short_lines_on_average():
    chance = np.random.default_rng(3)
    ends = chance.normal((0, 0, 30, 0), 2.0, (6_000, 4))
    line = Line(tuple(((x, y), (u, v)) for x, y, u, v in ends.tolist()))

    found = drawn(line, 2.0)

    plain = float(np.mean(np.hypot(ends[:, 2] - ends[:, 0], ends[:, 3] - ends[:, 1])))
    assert plain - 30 == pytest.approx(4 / 30, abs=0.1)
    assert found.length == pytest.approx(30, abs=0.1)


@pytest.mark.parametrize(
    "measure",
    [
        lambda line, other: ratio(line, other, PLAIN),
        lambda line, other: length(line, other, Known(length=1), PLAIN),
        lambda line, other: length(other, line, Known(length=1), PLAIN),
    ],
    ids=["lower line of a ratio", "ruler", "line"],
)
def test_a_line_of_a_few_pixels_is_not_measured(measure: Callable[[Line, Line], object]):
    short, long = straight(500 + 500j, 506 + 500j), straight(500 + 900j, 900 + 900j)

    with pytest.raises(ValueError, match="too short"):
        measure(long, short)


def test_a_line_without_length_is_no_line():
    with pytest.raises(ValueError, match="two points"):
        straight(5 + 5j, 5 + 5j)
    with pytest.raises(ValueError, match="two points"):
        Line(())


@pytest.mark.parametrize(("long", "error"), [(0, 0), (-1, 0), (1, -0.1)])
def test_a_ruler_has_a_length(long: float, error: float):
    with pytest.raises(ValueError, match="positive"):
        Known(length=long, uncertainty=error)


def test_a_count_of_sure_marks_is_exact():
    found = count(18)

    assert (found.value, found.low, found.high, found.uncertainty) == (18, 18, 18, 0)


def test_doubtful_marks_count_half_with_the_spread_of_coins():
    found = count(17, 4)

    assert (found.value, found.low, found.high) == (19, 17, 21)
    assert found.combined == pytest.approx(1.0)


def test_a_count_is_not_negative():
    with pytest.raises(ValueError, match="negative"):
        count(-1)


def test_per_cent_is_the_ratio_times_a_hundred():
    part_, whole = straight(600 + 600j, 700 + 600j), straight(600 + 600j, 900 + 600j)

    share = ratio(part_, whole, PLAIN, factor=100)
    plain = ratio(part_, whole, PLAIN)

    assert share.value == pytest.approx(100 * plain.value)
    assert share.uncertainty == pytest.approx(100 * plain.uncertainty)


@given(st.floats(0.01, 1), st.floats(-1, 1))
def test_sums_of_independent_quantities_keep_mean_and_spread(width: float, other: float):
    one, two = np.linspace(0, width, 300), np.linspace(other - 0.1, other + 0.1, 100)

    total = summed(one, two)

    assert total.mean() == pytest.approx(one.mean() + two.mean(), abs=1e-6)
    assert total.std() == pytest.approx(math.hypot(one.std(), two.std()), rel=0.02)
