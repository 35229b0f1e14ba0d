"""Drawings on the screen: where they are taken from, at what size, to what scale."""

import os
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QImage, QPixmap
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from idkey import places
from idkey.app.bench.popover import LargePictures
from idkey.app.parts.desk import Desk
from idkey.app.parts.pictures import Pictures
from idkey.app.parts.rendering import rendered
from idkey.app.parts.state_tile import StateTile
from idkey.app.parts.theme import Theme
from idkey.figures.portrait import portrait
from idkey.model.case import Case, Finding
from idkey.model.key import Key
from idkey.report.language import ENGLISH

ROOM = QSize(104, 52)


@pytest.fixture
def library(tmp_path: Path, key: Key) -> Path:
    """A library in which the key has a picture of its own for one state."""
    home = tmp_path / "keys" / key.id
    (home / "images" / "telson_colour").mkdir(parents=True)
    (home / "key.yaml").touch()
    Image.new("RGB", (400, 200), "#ff0000").save(home / "images" / "telson_colour" / "dark.png")
    return tmp_path / "keys"


@pytest.fixture
def own(theme: Theme, library: Path) -> Iterator[Pictures]:
    assert theme, "pixmaps need the application"
    made = Pictures(places.images_folder(), libraries=(library,))
    yield made
    made.close()


def _tile(pictures: Pictures, key: Key, state: str, room: QSize = ROOM) -> QImage:
    character = key.character["telson_colour"]
    made = pictures.tile(key, character, character.state(state), size=room, ratio=1.0)
    assert made is not None
    return made.toImage()


def test_a_picture_beside_the_key_comes_before_the_shipped_drawing(own: Pictures, key: Key):
    photo = _tile(own, key, "dark")
    assert photo.size() == QSize(104, 52)
    assert photo.pixelColor(50, 25).name() == "#ff0000"

    drawn = _tile(own, key, "yellow")

    assert drawn.pixelColor(1, 25).alpha() == 0, "the shipped drawing has a clear ground"


def test_a_picture_that_was_put_in_place_of_another_is_shown(
    own: Pictures, library: Path, key: Key
):
    _tile(own, key, "dark")
    file = library / key.id / "images" / "telson_colour" / "dark.png"
    Image.new("RGB", (400, 200), "#0000ff").save(file)
    os.utime(file, ns=(1, 1))

    assert _tile(own, key, "dark").pixelColor(50, 25).name() == "#0000ff"


def test_no_other_key_is_shown_that_picture(own: Pictures, pictures: Pictures, key: Key):
    assert _tile(pictures, key, "dark") != _tile(own, key, "dark")


def test_a_photograph_taken_upright_stands_upright(own: Pictures, library: Path, key: Key):
    file = library / key.id / "images" / "telson_colour" / "reddish.jpg"
    whole = Image.new("RGB", (300, 200), "#00ff00")
    turn = whole.getexif()
    turn[0x0112] = 6  # a quarter turn clockwise
    whole.save(file, exif=turn)

    made = _tile(own, key, "reddish", QSize(120, 120))

    assert (made.width(), made.height()) == (80, 120)


def _drawn(qtbot: QtBot, pictures: Pictures, key: Key, taxon: str) -> QPixmap:
    found: list[QPixmap] = []

    def ready() -> bool:
        made = pictures.portrait(key, taxon, size=QSize(400, 200), ratio=1.0)
        found.extend([made] if made else [])
        return bool(found)

    qtbot.waitUntil(ready, timeout=20_000)
    return found[0]


@pytest.mark.slow
def test_no_animal_of_a_line_up_is_cut_and_the_largest_fills_it(
    qtbot: QtBot, pictures: Pictures, key: Key
):
    longest = sorted(key.taxa, key=lambda taxon: -(taxon.size_mm[1] or 0))[:6]
    widest = 0
    for taxon in longest:
        image = _drawn(qtbot, pictures, key, taxon.id).toImage()
        wide, high = image.width(), image.height()
        edge = [(x, y) for x in range(wide) for y in (0, high - 1)]
        edge += [(x, y) for x in (0, wide - 1) for y in range(high)]
        assert all(image.pixelColor(x, y).alpha() < 30 for x, y in edge), taxon.name
        widest = max(widest, _width(image))

    assert widest > 0.9 * 400


def test_a_picture_of_the_author_carries_its_credit_and_a_drawing_of_ours_none(
    qtbot: QtBot, own: Pictures, theme: Theme, key: Key
):
    character = key.character["telson_colour"]
    terms = {"figure_credit": "A. <Novák>", "figure_licence": "CC-BY-4.0"}
    dark = replace(character.state("dark"), **terms)
    yellow = replace(character.state("yellow"), **terms)

    assert own.credit(key, character, dark) == "Picture: A. <Novák>, CC-BY-4.0"
    assert own.credit(key, character, yellow) == "", "the drawing is ours, whatever the key says"

    tile = StateTile(dark, 1, theme=theme)
    qtbot.addWidget(tile)
    tile.show_credit(own.credit(key, character, dark))
    assert "A. &lt;Novák&gt;, CC-BY-4.0" in tile.toolTip()
    assert "A. <Novák>, CC-BY-4.0" in tile.accessibleDescription()


def test_the_large_view_says_who_made_the_picture(
    qtbot: QtBot, own: Pictures, theme: Theme, key: Key
):
    character = key.character["telson_colour"]
    states = tuple(replace(s, figure_credit="Ana", figure_licence="CC0") for s in character.states)
    host = QWidget()
    qtbot.addWidget(host)
    host.resize(600, 500)
    large = LargePictures(Desk(theme, own, ENGLISH), host)

    large.show_state(key, replace(character, states=states), "dark")
    assert large.accessibleName().endswith("Picture: Ana, CC0")

    qtbot.keyClick(large, Qt.Key.Key_Right)
    assert "Picture" not in large.accessibleName(), "the next drawing is ours"


@pytest.mark.slow
def test_taxa_that_stand_without_the_large_ones_are_shown_larger_and_still_uncut(
    qtbot: QtBot, pictures: Pictures, key: Key
):
    small = ("heterometrus_silenus", "heterometrus_laoticus")
    everybody = [taxon.id for taxon in key.taxa]
    _drawn(qtbot, pictures, key, small[0])
    assert pictures.zoom(key, everybody) == 1.0
    zoom = pictures.zoom(key, small)
    assert zoom is not None
    assert zoom > 1.3

    for taxon in small:
        plain = _drawn(qtbot, pictures, key, taxon).toImage()
        made = pictures.portrait(key, taxon, size=QSize(400, 200), ratio=1.0, zoom=zoom)
        assert made is not None
        large = made.toImage()
        assert _width(large) == pytest.approx(zoom * _width(plain), rel=0.05)
        assert not any(large.pixelColor(x, y).alpha() > 30 for x in (0, 399) for y in range(200))


def test_the_animal_as_found_stands_at_the_scale_of_the_others_or_keeps_them_small(
    qtbot: QtBot, pictures: Pictures, key: Key
):
    small = ("heterometrus_silenus", "heterometrus_laoticus")

    def zoom(length: float) -> float:
        case = Case(id="1", key=key.id, findings=(Finding(character="total_length", value=length),))
        pictures.found(key, case, size=ROOM, ratio=1.0)
        qtbot.waitUntil(lambda: pictures.zoom(key, small, case) is not None, timeout=20_000)
        return pictures.zoom(key, small, case) or 0.0

    assert zoom(70.0) > 1.3
    assert zoom(200.0) == 1.0


def _width(image: QImage) -> int:
    """From the first to the last column with something in it."""
    columns = [
        x
        for x in range(image.width())
        if any(image.pixelColor(x, y).alpha() > 30 for y in range(image.height()))
    ]
    return max(columns) - min(columns)


@pytest.mark.slow
@pytest.mark.skipif(
    not Path("/proc/self/statm").is_file(), reason="memory is read as Linux tells it"
)
def test_a_kept_drawing_costs_its_pixels_and_not_what_it_was_painted_with(theme: Theme, key: Key):
    assert theme, "pixmaps need the application"
    sources = [portrait(key, taxon.id).encode() for taxon in key.taxa[:8]]
    for source in sources:
        rendered(source, ROOM, 1.0)
    before = _resident_bytes()

    kept = [rendered(source, ROOM, 1.0) for source in sources for _ in range(20)]

    pixels = sum(one.width() * one.height() * 4 for one in kept)
    assert _resident_bytes() - before < 5 * pixels  # over 20 times, with what painted them


def _resident_bytes() -> int:
    pages = int(Path("/proc/self/statm").read_text("ascii").split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE")
