"""Marks grow, move and shrink as clicks and keys say."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt

from idkey.app.photo.hand import Hand
from idkey.app.photo.sight import Sight
from idkey.app.photo.sketch import OPEN, Pen, Ref, Sketch
from idkey.photo.marks import Marks, Spot

FRESH = Sketch(marks=Marks(picture="p", character="c"))
POINT = st.tuples(st.floats(0, 1000), st.floats(0, 1000))
PLAIN, SHIFT = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier
CTRL = Qt.KeyboardModifier.ControlModifier


def hand(sketch: Sketch = FRESH) -> Hand:
    sight = Sight.whole((1000, 800), (500, 400))
    return Hand(sketch=sketch, sight=sight, cursor=(500, 400), by_key=True)


def pressed(start: Hand, *keys: Qt.Key, modifiers: Qt.KeyboardModifier = PLAIN) -> Hand:
    for key in keys:
        after = start.after_key(key, modifiers)
        assert after is not None, key
        start = after
    return start


def test_two_clicks_make_a_line():
    done = FRESH.placed((10, 20)).placed((300, 40))

    assert done.marks.lines == (((10, 20), (300, 40)),)
    assert done.open == ()
    assert done.chosen == Ref(Pen.LINE, 0, 1)


def test_a_line_with_joints_goes_on_until_it_is_finished():
    done = FRESH.with_bends(True).placed((0, 0)).placed((10, 0)).placed((10, 10)).finished()

    assert done.marks.lines == (((0, 0), (10, 0), (10, 10)),)


def test_a_line_of_one_point_is_dropped():
    assert FRESH.with_bends(True).placed((0, 0)).finished().marks.lines == ()


def test_the_same_place_twice_is_one_point():
    assert FRESH.placed((10, 20)).placed((10.1, 20)).open == ((10, 20),)


def test_the_other_pen_makes_the_other_line_and_drops_what_was_begun():
    done = FRESH.placed((1, 1)).with_pen(Pen.OTHER).placed((0, 0)).placed((9, 9))

    assert done.marks.lines == ()
    assert done.marks.others == (((0, 0), (9, 9)),)


@pytest.mark.parametrize("pen", [Pen.PATCH, Pen.NEUTRAL])
def test_two_corners_make_a_box_whatever_their_order(pen: Pen):
    done = FRESH.with_pen(pen).placed((90, 80)).placed((10, 20))

    box = done.marks.patch if pen is Pen.PATCH else done.marks.neutral
    assert box == (10, 20, 80, 60)


def test_a_box_without_area_is_dropped():
    assert FRESH.with_pen(Pen.PATCH).placed((10, 20)).placed((90, 21)).marks.patch is None


def test_spots_are_numbered_in_order_and_may_be_doubtful():
    done = FRESH.with_pen(Pen.SPOT).placed((1, 1)).placed((2, 2)).doubted().placed((3, 3))

    assert done.marks.spots == (Spot(1, 1), Spot(2, 2, doubtful=True), Spot(3, 3))
    assert done.doubted().doubted() == done
    assert FRESH.doubted() == FRESH


@given(st.lists(POINT, max_size=8), st.sampled_from(list(Pen)), st.booleans())
def test_taking_back_as_often_as_one_likes_ends_with_nothing(points, pen, bent):
    sketch = FRESH.with_pen(pen).with_bends(bent)
    for point in points:
        sketch = sketch.placed(point)

    for _ in range(2 * len(points) + 2):
        sketch = sketch.taken_back()

    assert sketch.marks.empty
    assert sketch.open == ()


@given(st.lists(POINT, min_size=1, max_size=8), st.sampled_from(list(Pen)), POINT)
def test_any_point_can_be_found_and_moved(points, pen, target):
    sketch = FRESH.with_pen(pen)
    for point in points:
        sketch = sketch.placed(point)

    for ref, _ in sketch.points():
        moved = sketch.moved(ref, target)
        assert moved.place_of(ref) == target or pen.boxes
        assert len(moved.points()) == len(sketch.points())


def test_a_box_does_not_turn_inside_out():
    box = FRESH.with_pen(Pen.PATCH).placed((10, 20)).placed((90, 80))

    assert box.moved(Ref(Pen.PATCH, 0, 1), (0, 50)).marks.patch == (10, 20, 3, 30)
    assert box.moved(Ref(Pen.PATCH, 0, 0), (100, 0)).marks.patch == (87, 0, 3, 80)


def test_the_nearest_point_is_taken_hold_of_only_when_near():
    sketch = FRESH.placed((10, 20)).placed((300, 40))

    assert sketch.nearest((297, 41), within=5) == Ref(Pen.LINE, 0, 1)
    assert sketch.nearest((200, 41), within=5) is None
    assert FRESH.nearest((0, 0), within=5) is None


def test_removing_takes_the_thing_with_the_chosen_point():
    two = FRESH.placed((0, 0)).placed((9, 0)).placed((0, 5)).placed((9, 5))

    done = two.choose(Ref(Pen.LINE, 0, 0)).removed()

    assert done.marks.lines == (((0, 5), (9, 5)),)
    assert two.let_go().removed().marks.lines == (((0, 0), (9, 0)),)


def test_points_are_gone_through_round_and_round():
    sketch = FRESH.placed((0, 0)).placed((9, 0)).let_go()

    first = sketch.next_point()
    assert first.chosen == Ref(Pen.LINE, 0, 0)
    assert first.next_point().next_point().chosen == Ref(Pen.LINE, 0, 0)
    assert sketch.next_point(-1).chosen == Ref(Pen.LINE, 0, 1)
    assert FRESH.next_point() == FRESH


def test_keys_alone_draw_a_line_and_move_its_end_by_single_pixels():
    key = Qt.Key
    drawn = pressed(hand(), key.Key_Space, key.Key_Right, key.Key_Right, key.Key_Return)
    assert drawn.sketch is not None
    (line,) = drawn.sketch.marks.lines
    assert line == ((500, 400), (532, 400))

    nudged = pressed(drawn, key.Key_N, key.Key_N, key.Key_Down)
    assert nudged.sketch is not None
    assert nudged.sketch.marks.lines == (((500, 400), (532, 401)),)
    far = pressed(nudged, key.Key_Left, modifiers=SHIFT)
    assert far.sketch is not None
    assert far.sketch.marks.lines == (((500, 400), (522, 401)),)


def test_space_lets_go_of_a_chosen_point_and_leaves_the_crosshair_there():
    sketch = FRESH.placed((100, 100)).placed((200, 100))

    done = pressed(hand(sketch), Qt.Key.Key_Space)

    assert done.sketch is not None
    assert done.sketch.chosen is None
    assert done.cursor == (200, 100)
    assert len(done.sketch.marks.lines) == 1


def test_enter_ends_a_line_with_joints():
    key = Qt.Key
    start = hand(FRESH.with_bends(True))

    done = pressed(
        start,
        key.Key_Space, key.Key_Right, key.Key_Space, key.Key_Down, key.Key_Space, key.Key_Enter,
    )  # fmt: skip

    assert done.sketch is not None
    assert done.sketch.marks.lines == (((500, 400), (516, 400), (516, 416)),)


def test_escape_drops_the_open_line_then_lets_go_then_means_nothing_here():
    key = Qt.Key
    begun = pressed(hand(), key.Key_Space)
    dropped = pressed(begun, key.Key_Escape)

    assert dropped.sketch is not None
    assert dropped.sketch.open == ()
    chosen = replace(dropped, sketch=FRESH.placed((1, 1)).placed((50, 50)))
    let_go = pressed(chosen, key.Key_Escape)
    assert let_go.sketch is not None
    assert let_go.sketch.chosen is None
    assert let_go.after_key(key.Key_Escape, PLAIN) is None


def test_zoom_keys_and_pan_keys_change_the_view_and_nothing_else():
    key = Qt.Key
    near = pressed(hand(), key.Key_Plus, key.Key_Plus, key.Key_Equal)
    moved = pressed(near, key.Key_Left, modifiers=CTRL)

    assert near.sight.zoom == pytest.approx(1.25**3)
    assert moved.sight.centre[0] < near.sight.centre[0]
    assert moved.sketch == FRESH
    assert pressed(moved, key.Key_0).sight.zoom == pytest.approx(1)
    assert pressed(near, key.Key_Minus).sight.zoom == pytest.approx(1.25**2)


def test_delete_backspace_and_doubt_work_by_key():
    key = Qt.Key
    spots = hand(FRESH.with_pen(Pen.SPOT).placed((1, 1)).placed((2, 2)).let_go())

    assert pressed(spots, key.Key_D).sketch.marks.spots[1].doubtful
    assert len(pressed(spots, key.Key_Backspace).sketch.marks.spots) == 1
    assert pressed(spots, key.Key_N, key.Key_Delete).sketch.marks.spots == (Spot(2, 2),)


def test_a_key_without_meaning_is_passed_on():
    assert hand().after_key(Qt.Key.Key_F7, PLAIN) is None
    assert Hand(sketch=None, sight=hand().sight).after_key(Qt.Key.Key_Space, PLAIN) is None


def test_the_first_key_without_a_crosshair_brings_it():
    start = replace(hand(), cursor=None, by_key=False)

    assert pressed(start, Qt.Key.Key_Space).cursor == (500, 400)
    assert pressed(start, Qt.Key.Key_Space).sketch == FRESH


def test_the_open_line_is_known_by_its_own_number():
    begun = FRESH.placed((5, 6))

    assert begun.points() == ((Ref(Pen.LINE, OPEN, 0), (5, 6)),)
    assert begun.moved(Ref(Pen.LINE, OPEN, 0), (7, 8)).open == ((7, 8),)
