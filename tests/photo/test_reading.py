"""Marks become numbers, and numbers findings that say how exact they are."""

from dataclasses import replace

import pytest

from idkey.engine.measure import Measured
from idkey.engine.strokes import Edge
from idkey.model.character import Look
from idkey.photo.faults import PictureError
from idkey.photo.intake import Picture
from idkey.photo.marks import Marks, Spot, marks_of
from idkey.photo.reading import finding, line_names, measured, photo_look, rounded, seen
from tests.photo.characters import EYES, LENGTH, SLIMNESS, TEETH, TELSON

PICTURE = Picture(id="f" * 64, width=1600, height=1200, media_type="image/jpeg", original="0" * 64)
LONG = ((400.0, 600.0), (1000.0, 600.0))
SHORT = ((700.0, 500.0), (700.0, 700.0))


def marks(character: str = "x", **drawn: object) -> Marks:
    return Marks(picture=PICTURE.id, character=character, **drawn)


def test_a_length_is_read_by_the_ruler():
    found = measured(marks(lines=(LONG,), others=(SHORT,), ruler=10.0), LENGTH, PICTURE)

    assert found is not None
    assert found.value == pytest.approx(30, rel=0.01)


def test_a_ratio_needs_no_scale():
    found = measured(marks(lines=(LONG,), others=(SHORT,)), SLIMNESS, PICTURE)

    assert found is not None
    assert found.value == pytest.approx(3, rel=0.01)


def test_a_share_is_in_per_cent():
    found = measured(marks(lines=(SHORT,), others=(LONG,)), EYES, PICTURE)

    assert found is not None
    assert found.value == pytest.approx(100 / 3, rel=0.01)


def test_marks_are_counted_and_doubtful_ones_count_half():
    spots = (Spot(1, 1), Spot(2, 1), Spot(3, 1, doubtful=True))

    found = measured(marks(spots=spots), TEETH, PICTURE)

    assert found is not None
    assert (found.value, found.low, found.high) == (2.5, 2, 3)


@pytest.mark.parametrize(
    ("drawn", "character"),
    [
        (marks(), LENGTH),
        (marks(lines=(LONG,)), LENGTH),
        (marks(lines=(LONG,), others=(SHORT,)), LENGTH),
        (marks(lines=(LONG,), others=(SHORT[:1],)), SLIMNESS),
        (marks(lines=((LONG[0], LONG[0]),), others=(SHORT,)), SLIMNESS),
        (marks(), TEETH),
        (marks(lines=(LONG,), others=(SHORT,)), TELSON),
    ],
    ids=["nothing", "no ruler", "no length told", "half a line", "a point", "no spots", "colour"],
)
def test_there_is_no_number_while_something_is_missing(drawn: Marks, character):
    assert measured(drawn, character, PICTURE) is None


def test_a_line_too_short_to_click_is_refused_in_words():
    tiny = ((400.0, 600.0), (412.0, 600.0))

    with pytest.raises(PictureError, match="12 pixels is too short") as refused:
        measured(marks(lines=(LONG,), others=(tiny,), edge=Edge.SOFT), SLIMNESS, PICTURE)

    assert "nearer" in refused.value.remedy


def test_repeats_that_are_different_lines_are_refused_in_words():
    drawn = marks(lines=(LONG, SHORT), others=(SHORT,))

    with pytest.raises(PictureError, match="“length” are 200 to 600 pixels long"):
        measured(drawn, SLIMNESS, PICTURE)


def test_a_finding_carries_the_number_its_uncertainty_the_look_the_picture_and_the_marks():
    drawn = marks("claw_slimness", lines=(LONG,), others=(SHORT,))
    found = measured(drawn, SLIMNESS, PICTURE)
    assert found is not None

    made = finding(drawn, found, look=Look.ABOVE)

    assert made.character == "claw_slimness"
    assert made.value == pytest.approx(found.value, rel=1e-5)
    assert made.uncertainty == pytest.approx(found.uncertainty, rel=1e-2)
    assert made.look is Look.ABOVE
    assert made.pictures == (PICTURE.id,)
    assert marks_of(made.marks) == drawn


def test_an_exact_count_leaves_the_uncertainty_to_the_character():
    drawn = marks("teeth", spots=(Spot(1, 1), Spot(2, 2)))
    found = measured(drawn, TEETH, PICTURE)
    assert found is not None

    assert finding(drawn, found, look=Look.MOULT).uncertainty is None


def test_states_are_what_the_person_says_never_what_the_picture_suggests():
    made = seen(marks("telson", patch=(1, 1, 9, 9)), ("reddish",), look=Look.ABOVE, note="dull")

    assert made.states == ("reddish",)
    assert made.value is None
    assert made.pictures == (PICTURE.id,)
    assert made.note == "dull"


@pytest.mark.parametrize(
    ("character", "names"),
    [
        (LENGTH, ("line", "ruler")),
        (SLIMNESS, ("length", "width")),
        (EYES, ("part", "whole")),
        (replace(SLIMNESS, unit=""), ("first line", "second line")),
    ],
    ids=["length", "a / b", "per cent", "no unit"],
)
def test_the_lines_have_names(character, names):
    assert line_names(character) == names


@pytest.mark.parametrize(
    ("character", "look"),
    [(LENGTH, Look.ABOVE), (EYES, Look.BELOW), (TEETH, Look.MOULT)],
    ids=["above", "below", "neither"],
)
def test_a_picture_stands_for_a_way_of_looking(character, look):
    assert photo_look(character) is look


@pytest.mark.parametrize(
    ("value", "half", "text"),
    [
        (30.123, 0.4321, ("30.12", "0.43")),
        (30.123, 0.0432, ("30.123", "0.043")),
        (1234.5, 98.7, ("1234", "99")),
        (1234.5, 987.0, ("1234", "987")),
        (2.0, 0.0, ("2", "0")),
    ],
)
def test_a_number_is_written_with_two_figures_of_its_uncertainty_gum_7_2_6(value, half, text):
    z = 1.959963984540054

    assert rounded(Measured(value=value, low=value - z * half, high=value + z * half)) == text
