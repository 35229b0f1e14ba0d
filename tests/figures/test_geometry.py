"""Plane geometry and the marks that are spread over outlines."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.figures.fields import hairs, hatching, rim, scatter, within, wobble
from idkey.figures.geometry import (
    MIRROR,
    Place,
    area,
    bounds,
    depths,
    ellipse,
    inside,
    laid,
    mirrored,
    moved,
    scaled,
    smooth,
    straight,
    turned,
)

COORDINATE = st.floats(-100, 100)
POINT = st.builds(complex, COORDINATE, COORDINATE)
SQUARE = (0j, 10 + 0j, 10 + 10j, 10j)


@given(POINT, POINT, POINT)
def test_places_chain_in_the_order_they_are_told(point: complex, by: complex, about: complex):
    first, then = turned(37, about), moved(by).after(scaled(-2, 3))

    assert then.after(first)(point) == pytest.approx(then(first(point)), abs=1e-6)


@given(POINT)
def test_a_mirror_twice_changes_nothing_and_keeps_heights(point: complex):
    assert MIRROR(MIRROR(point)) == pytest.approx(point)
    assert MIRROR(point).imag == pytest.approx(point.imag)


def test_a_thing_laid_along_a_way_starts_and_ends_there():
    place = laid(2 + 1j, 2 + 5j)
    other = laid(2 + 1j, 2 + 5j, mirrored=True)

    assert (place(0j), place(1 + 0j)) == (2 + 1j, 2 + 5j)
    assert (other(0j), other(1 + 0j)) == (2 + 1j, 2 + 5j)
    assert place(1j).real == -other(1j).real + 4


def test_a_turn_is_clockwise_on_the_page():
    assert turned(90)(1 + 0j) == pytest.approx(1j)


@pytest.mark.parametrize("closed", [True, False])
def test_a_smooth_curve_goes_through_its_points(closed: bool):
    points = (0j, 10 + 2j, 14 + 9j, 3 + 12j)

    curve = smooth(points, closed=closed).flat(8)

    for point in points:
        assert min(abs(point - at) for at in curve) < 1e-9


def test_a_sharp_point_keeps_straight_edges():
    assert bounds(straight(SQUARE).flat(5)) == pytest.approx((0j, 10 + 10j))
    assert abs(area(straight(SQUARE).flat(5))) == pytest.approx(100)


def test_the_area_of_an_ellipse_is_that_of_print():
    assert area(ellipse(3 + 4j, 5, 2).flat(60)) == pytest.approx(math.pi * 10, rel=1e-3)


@given(POINT)
def test_a_point_is_inside_a_square_by_its_coordinates(point: complex):
    is_in = 0 < point.real < 10 and 0 < point.imag < 10
    on_edge = min(abs(point.real), abs(point.real - 10), abs(point.imag), abs(point.imag - 10))

    if on_edge > 1e-9:
        assert inside(SQUARE, (point,)) == [is_in]


def test_depth_is_the_way_to_the_nearest_edge():
    assert depths(SQUARE, (5 + 5j, 1 + 5j, -3 - 4j)) == pytest.approx([5, 1, 5])


def test_a_half_is_mirrored_without_doubling_the_axis():
    assert mirrored((0j, 2 + 1j, 3j)) == (0j, 2 + 1j, 3j, -2 + 1j)


def test_half_the_way_along_an_edge_is_its_middle():
    at, way = straight((0j, 10 + 0j), closed=False).at(0.5)

    assert (at, way) == (pytest.approx(5 + 0j), pytest.approx(1 + 0j))


@given(st.integers(0, 10_000), st.integers(0, 9))
def test_a_wobble_stays_between_its_bounds_and_never_changes(index: int, salt: int):
    assert -1 <= wobble(index, salt) <= 1
    assert wobble(index, salt) == wobble(index, salt)


def test_hatching_stays_inside_and_fills():
    ring = ellipse(50 + 50j, 40, 25).flat(12)

    lines = hatching(ring, 5, cut=1)

    ends = [point for line in lines for point in line.flat(4)]
    assert len(lines) > 10
    assert all(inside(ring, ends))


def test_granules_keep_from_the_border_and_from_each_other():
    ring = ellipse(50 + 50j, 40, 25).flat(12)

    spots = scatter(ring, 6, margin=4, jitter=0.2)

    assert min(depths(ring, spots)) >= 4
    nearest = min(abs(a - b) for i, a in enumerate(spots) for b in spots[i + 1 :])
    assert nearest > 6 * 0.35
    assert spots == within(ring, spots, 4)


def test_a_rim_lies_on_the_side_it_faces():
    outline = ellipse(50 + 50j, 40, 40)

    strips = rim(outline, toward=1j, near=1, far=6)

    points = [point for strip in strips for point in strip.flat(4)]
    assert points
    assert sum(p.imag for p in points) / len(points) > 70
    assert all(inside(outline.flat(40), [50 + 50j + (p - 50 - 50j) * 0.98 for p in points]))


def test_hairs_stand_on_the_outside():
    outline = ellipse(50 + 50j, 30, 30)

    for hair in hairs(outline, 20, length=8):
        root, *_, tip = hair.flat(6)
        assert abs(root - 50 - 50j) == pytest.approx(30, abs=0.5)
        assert abs(tip - 50 - 50j) > 33


def test_the_place_that_does_nothing_does_nothing():
    assert Place()(3 + 4j) == 3 + 4j
