"""Zoom and pan keep what they promise, for any picture and window."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.app.photo.sight import LARGEST, Sight

SIDE = st.floats(50, 6000)
SIGHTS = st.builds(
    lambda picture, window: Sight.whole(picture, window),
    st.tuples(SIDE, SIDE),
    st.tuples(st.floats(80, 2000), st.floats(80, 2000)),
)
SHARE = st.floats(0, 1)


def place(sight: Sight, x: float, y: float) -> tuple[float, float]:
    return x * sight.window[0], y * sight.window[1]


@given(SIGHTS, SHARE, SHARE)
def test_a_place_of_the_window_comes_back_from_the_picture(sight: Sight, x: float, y: float):
    there = place(sight, x, y)

    assert sight.on_screen(sight.in_picture(there)) == pytest.approx(there, abs=1e-6)


@given(SIGHTS)
def test_a_whole_picture_touches_the_window_and_stays_inside(sight: Sight):
    left, top = sight.on_screen((0, 0))
    right, bottom = sight.on_screen(sight.picture)

    assert min(left, top) == pytest.approx(0, abs=1e-6)
    assert right <= sight.window[0] + 1e-6
    assert bottom <= sight.window[1] + 1e-6


@given(SIGHTS, st.lists(st.floats(0.3, 4), max_size=6), SHARE, SHARE)
def test_zooming_stays_between_whole_and_largest(sight: Sight, factors, x, y):
    for factor in factors:
        sight = sight.zoomed(factor, place(sight, x, y))

    assert sight.fit * (1 - 1e-9) <= sight.scale <= max(LARGEST, sight.fit) * (1 + 1e-9)


@given(st.floats(1.2, 6), st.floats(0.3, 0.7), st.floats(0.3, 0.7))
def test_zooming_in_keeps_the_point_under_the_mouse(factor: float, x: float, y: float):
    sight = Sight.whole((4000, 3000), (800, 600))
    about = place(sight, x, y)

    near = sight.zoomed(factor, about)

    assert near.in_picture(about) == pytest.approx(sight.in_picture(about), abs=1e-6)


@given(SIGHTS, st.floats(-3000, 3000), st.floats(-3000, 3000))
def test_panning_never_loses_the_picture(sight: Sight, across: float, down: float):
    near = sight.zoomed(3, place(sight, 0.5, 0.5)).panned(across, down)

    left, top = near.on_screen((0, 0))
    right, bottom = near.on_screen(near.picture)
    assert left < near.window[0]
    assert right > 0
    assert top < near.window[1]
    assert bottom > 0


@given(SIGHTS, SHARE, SHARE)
def test_a_point_that_is_asked_for_comes_into_the_window(sight: Sight, x: float, y: float):
    near = sight.zoomed(5, place(sight, 0, 0))
    point = (x * sight.picture[0], y * sight.picture[1])

    shown = near.showing(point)

    across, down = shown.on_screen(point)
    assert -1e-6 <= across <= near.window[0] + 1e-6
    assert -1e-6 <= down <= near.window[1] + 1e-6


def test_another_picture_is_seen_at_the_same_place_and_as_large():
    one = Sight.whole((4000, 3000), (800, 600)).zoomed(4, (500, 200))

    other = Sight.whole((2000, 1500), (400, 300)).like(one)

    assert other.zoom == pytest.approx(one.zoom)
    assert other.centre[0] / 2000 == pytest.approx(one.centre[0] / 4000)
    assert other.centre[1] / 1500 == pytest.approx(one.centre[1] / 3000)


def test_a_whole_picture_stays_whole_in_a_larger_window_and_a_near_one_stays_near():
    whole = Sight.whole((4000, 3000), (800, 600))
    near = whole.zoomed(4, (400, 300))

    assert whole.resized((1000, 900)) == Sight.whole((4000, 3000), (1000, 900))
    assert math.isclose(near.resized((1000, 900)).scale, near.scale)
