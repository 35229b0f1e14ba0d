"""Parts of the photo tool by themselves: what arrives, what is worked out, what is shown."""

from pathlib import Path

import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QRectF, QSize, QUrl
from PySide6.QtGui import QImage, QPainter

from idkey.app.parts.arrivals import arrivals
from idkey.app.photo.levels import SMALLEST, levels_of
from idkey.app.photo.session import Loaded, entry_of, looked_at, opened
from idkey.app.photo.sight import Sight
from idkey.app.photo.words import budget_words, edge_meaning, fault_words, number_words, warn_words
from idkey.engine.measure import Cause, Measured
from idkey.engine.strokes import Edge
from idkey.photo.colour_sample import Warn
from idkey.photo.faults import Gone
from idkey.photo.marks import Marks
from idkey.photo.quality import Fault
from idkey.photo.shelf import Condition, PictureShelf
from tests.photo.characters import LENGTH, SLIMNESS, SURFACE, TEETH, TELSON
from tests.photo.pictures import card, saved

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture
def loaded(tmp_path: Path) -> Loaded:
    shelf = PictureShelf(tmp_path / "pictures")
    return opened(shelf, shelf.add_bytes(saved(card(400, 300), "PNG")).id)


def test_files_that_are_dragged_come_before_the_picture_of_them():
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile("/pictures/animal.jpg"), QUrl("https://example.org/a.jpg")])
    mime.setData("image/png", b"small")

    came = arrivals(mime)

    assert came.files == (Path("/pictures/animal.jpg"),)
    assert came.any


def test_bytes_of_a_picture_are_taken_as_they_came():
    mime = QMimeData()
    mime.setData("image/jpeg", b"as it came")

    assert arrivals(mime).content == b"as it came"


def test_a_text_is_no_picture():
    mime = QMimeData()
    mime.setText("a note")

    assert not arrivals(mime).any


def test_a_large_picture_is_halved_until_it_is_small():
    levels = levels_of(Image.new("RGB", (3000, 2000), "#884422"))

    sizes = [(image.width(), image.height()) for image in levels.images]
    assert sizes[:3] == [(3000, 2000), (1500, 1000), (750, 500)]
    assert max(sizes[-1]) <= SMALLEST
    assert levels.size == (3000.0, 2000.0)


@pytest.mark.parametrize("zoom", [1, 3, 40])
def test_what_is_drawn_is_what_the_view_says(zoom: float):
    """The red corner of the card lies where the view puts it, at every zoom."""
    levels = levels_of(card(1600, 1200))
    sight = Sight.whole((1600, 1200), (400, 300)).zoomed(zoom, (10, 10))
    window = QImage(400, 300, QImage.Format.Format_RGB32)
    window.fill("#000000")
    painter = QPainter(window)
    levels.draw(painter, sight, QRectF(0, 0, 400, 300))
    painter.end()

    for place in ((5, 5), (200, 150), (395, 295)):
        x, y = sight.in_picture(place)
        shown = window.pixelColor(*place)
        assert (shown.red() > 150 and shown.green() < 90) == (x < 400 and y < 300)


def test_a_part_is_cut_at_the_size_that_is_asked_for():
    cut = levels_of(card(400, 300)).cut((0, 0, 100, 75), QSize(200, 200), 1.0)

    assert (cut.width(), cut.height()) == (200, 150)
    assert cut.toImage().pixelColor(100, 75).red() > 150


def test_a_picture_that_is_gone_cannot_be_opened_and_is_listed_as_missing(tmp_path: Path):
    shelf = PictureShelf(tmp_path / "pictures")

    assert entry_of(shelf, "0" * 64).condition is Condition.MISSING
    with pytest.raises(Gone):
        opened(shelf, "0" * 64)


def test_without_a_patch_nothing_is_said(loaded: Loaded):
    assert looked_at(loaded, Marks(picture="p", character="c"), TELSON).fitness is None


def test_a_patch_alone_says_whether_a_surface_shows(loaded: Loaded):
    marks = Marks(picture="p", character="c", patch=(20, 20, 200, 200))

    looked = looked_at(loaded, marks, SURFACE)

    assert looked.fitness is not None
    assert looked.sample is None
    assert looked.problem is None


def test_a_patch_and_a_neutral_thing_say_a_colour(loaded: Loaded):
    marks = Marks(picture="p", character="c", patch=(5, 5, 80, 60), neutral=(200, 100, 100, 100))

    looked = looked_at(loaded, marks, TELSON)

    assert looked.sample is not None
    assert len(looked.suggestions) == 3


@pytest.mark.parametrize(
    "marks",
    [
        Marks(picture="p", character="c", patch=(900, 900, 20, 20)),
        Marks(picture="p", character="c", patch=(5, 5, 80, 60), neutral=(900, 900, 20, 20)),
    ],
    ids=["patch outside", "neutral outside"],
)
def test_a_box_outside_the_picture_is_a_problem_in_words(loaded: Loaded, marks: Marks):
    looked = looked_at(loaded, marks, TELSON)

    assert looked.problem is not None
    assert "outside the picture" in looked.problem.problem


BUDGET = ((Cause.CLICKS, 0.3), (Cause.TILT, 0.4), (Cause.SCALE, 0.001))


def test_causes_are_said_largest_first_and_tiny_ones_not_at_all():
    found = Measured(value=30, low=29, high=31, budget=BUDGET)

    assert budget_words(found) == "tilt and height 64 %, clicks 36 %"


@pytest.mark.parametrize(
    ("found", "character", "decimal", "said"),
    [
        (Measured(value=30.12, low=29, high=31, budget=BUDGET), LENGTH, ".",
         ("30.12 ± 0.51 mm", "95 % interval: 29.00 to 31.00")),
        (Measured(value=3.1234, low=3.1, high=3.15), SLIMNESS, ",",
         ("3,123 ± 0,013", "95 % interval: 3,100 to 3,150")),
        (Measured(value=18, low=18, high=18), TEETH, ".", ("18 teeth per comb", "")),
        (Measured(value=17.5, low=17, high=18, budget=((Cause.CLICKS, 0.5),)), TEETH, ".",
         ("17.5 ± 0.5 teeth per comb", "From 17 to 18, as the doubtful ones are counted")),
    ],
    ids=["length", "ratio with a comma", "count", "doubtful count"],
)  # fmt: skip
def test_numbers_are_said_with_their_unit_and_uncertainty(found, character, decimal, said):
    assert number_words(found, character, decimal) == said


@pytest.mark.parametrize("warn", Warn)
def test_every_warning_says_what_is_wrong(warn: Warn):
    assert warn_words(warn).endswith(".")


@pytest.mark.parametrize("fault", Fault)
def test_every_fault_has_words(fault: Fault):
    assert fault_words(fault)


def test_a_click_error_is_said_in_pixels():
    assert "± 5 pixels" in edge_meaning(Edge.SOFT)
