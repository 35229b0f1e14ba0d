"""Marks survive the way to text and back, and can be seen on the picture."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image, ImageChops

from idkey.engine.measure import Lie
from idkey.engine.strokes import Edge
from idkey.engine.tilt import Tilt
from idkey.photo.drawn import drawn, extent
from idkey.photo.faults import PictureError
from idkey.photo.marks import Marks, Neutral, Spot, marks_of, text_of

PIXEL = st.floats(0, 8000).map(lambda x: round(x, 2))
STROKE = st.lists(st.tuples(PIXEL, PIXEL), min_size=1, max_size=5).map(tuple)
BOX = st.none() | st.tuples(PIXEL, PIXEL, PIXEL, PIXEL)
MARKS = st.builds(
    Marks,
    picture=st.text("0123456789abcdef", min_size=64, max_size=64),
    character=st.text(max_size=20),
    lines=st.lists(STROKE, max_size=3).map(tuple),
    others=st.lists(STROKE, max_size=3).map(tuple),
    ruler=st.floats(0, 500),
    ruler_error=st.floats(0, 5),
    tilt=st.sampled_from(Tilt),
    lie=st.sampled_from(Lie),
    edge=st.sampled_from(Edge),
    spots=st.lists(st.builds(Spot, PIXEL, PIXEL, st.booleans()), max_size=5).map(tuple),
    patch=BOX,
    neutral=BOX,
    reference=st.sampled_from(Neutral),
    moulted=st.booleans(),
)
WHITE = Image.new("RGB", (800, 600), "white")


@given(MARKS)
def test_marks_come_back_from_text_as_they_went(marks: Marks):
    assert marks_of(text_of(marks)) == marks


def test_the_text_is_plain_json_without_what_was_not_drawn():
    text = text_of(Marks(picture="p", character="c", lines=(((1.239, 2.0), (3.0, 4.0)),)))

    assert json.loads(text) == {
        "format": 1,
        "picture": "p",
        "character": "c",
        "lines": [[[1.24, 2.0], [3.0, 4.0]]],
    }


@pytest.mark.parametrize(
    "text",
    ["", "{", "[]", "null", '{"format":1}', '{"format":9,"picture":"p","character":"c"}'],
)
def test_a_text_that_is_no_marks_is_refused_in_words(text: str):
    with pytest.raises(PictureError, match="marks on a picture cannot be read") as refused:
        marks_of(text)

    assert refused.value.remedy


def test_a_fresh_value_is_empty_and_a_drawn_one_is_not():
    assert Marks(picture="p", character="c").empty
    assert not Marks(picture="p", character="c", spots=(Spot(1, 1),)).empty


@pytest.mark.parametrize(
    "marks",
    [
        Marks(picture="p", character="c", lines=(((100, 100), (300, 250), (500, 100)),)),
        Marks(picture="p", character="c", others=(((100, 100), (500, 100)),)),
        Marks(picture="p", character="c", patch=(100, 100, 300, 200)),
        Marks(picture="p", character="c", neutral=(100, 100, 300, 200)),
        Marks(picture="p", character="c", spots=(Spot(100, 100), Spot(400, 300, doubtful=True))),
    ],
    ids=["line", "ruler", "patch", "neutral", "spots"],
)
def test_everything_drawn_shows_on_the_picture_near_where_it_was_drawn(marks: Marks):
    painted = drawn(WHITE, marks)

    changed = ImageChops.difference(painted, WHITE).getbbox()
    assert changed is not None
    assert changed[0] >= 60
    assert changed[1] >= 60
    assert changed[2] <= 560
    assert changed[3] <= 360
    assert WHITE.getcolors() == [(800 * 600, (255, 255, 255))]


def test_a_large_picture_is_made_smaller_and_the_marks_move_with_it():
    large = Image.new("RGB", (4000, 3000), "white")
    marks = Marks(picture="p", character="c", lines=(((2000, 1500), (3000, 1500)),))

    painted = drawn(large, marks, longest=800)

    changed = ImageChops.difference(painted, Image.new("RGB", (800, 600), "white")).getbbox()
    assert painted.size == (800, 600)
    assert changed is not None
    assert 390 <= changed[0] <= 401
    assert 599 <= changed[2] <= 610


def test_a_cut_shows_the_part_around_the_marks():
    marks = Marks(picture="p", character="c", lines=(((300, 300), (400, 300)),))

    assert drawn(WHITE, marks, cut=True).size == (181, 81)
    assert drawn(WHITE, Marks(picture="p", character="c"), cut=True).size == (800, 600)


def test_a_caption_stands_in_the_lower_left_corner():
    painted = drawn(WHITE, Marks(picture="p", character="c"), caption="12.4 ± 0.2 mm")

    changed = ImageChops.difference(painted, WHITE).getbbox()
    assert changed is not None
    assert changed[0] == 0
    assert changed[3] == 600
    assert changed[1] > 500


def test_the_extent_is_the_box_around_everything():
    marks = Marks(
        picture="p",
        character="c",
        lines=(((10, 50), (30, 60)),),
        spots=(Spot(5, 70),),
        patch=(20, 20, 100, 10),
    )

    assert extent(marks) == (5, 20, 115, 50)
    assert extent(Marks(picture="p", character="c")) is None
