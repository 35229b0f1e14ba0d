"""Every committed drawing: there, complete, inside its paper, and unlike its neighbours."""

import re
from itertools import combinations, groupby
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QByteArray
from PySide6.QtSvg import QSvgRenderer

from idkey.engine.colour import ciede2000, lab_of_hex, lab_of_rgb
from idkey.figures.catalogue import CATALOGUE
from idkey.figures.draw import drawings
from idkey.figures.tiles import figure_path
from idkey.formats.folder import read_key
from idkey.model.character import Character
from idkey.model.key import Key
from idkey.places import images_folder, keys_folder
from tests.figures.raster import Pixels, lab, painted, pixels

IMAGES = images_folder()
FIGURES = sorted((IMAGES / "figures").rglob("*.svg"))
OTHERS = sorted([*(IMAGES / "plates").glob("*.svg"), *(IMAGES / "bodyplans").glob("*.svg")])
KEYS = {name: read_key(keys_folder() / name) for name in CATALOGUE}
CHARACTERS = [(key, character) for key in KEYS.values() for character in key.characters]
COLOURED = [
    (key, character)
    for key, character in CHARACTERS
    if sum(bool(state.colours) for state in character.states) > 1
]

CLEARLY_OTHER = 10.0
"""CIEDE2000 that nobody overlooks; one is about the least that can be seen at all."""
SHARE_OF_TILE = 0.003
"""58 of the 19,200 pixels of a tile: a patch of 7.6 by 7.6 pixels, 2 mm on a screen of 96 dpi,
which spans 14 arc minutes at 50 cm, where a letter is read from 5 (the 6/6 line of a Snellen
chart)."""
COLOUR_LIMIT = 2.0
"""CIEDE2000 between the colour of a state and the colour drawn; rounding to bytes makes 0.5."""

NO_FIGURE = {("kitchen-leaves", "smell"): "a smell has no look"}
"""(key id, character id) of characters that cannot be drawn, with the reason."""


def _name(path: Path) -> str:
    return path.relative_to(IMAGES).with_suffix("").as_posix()


def _label(value: object) -> str:
    return str(getattr(value, "id", value))


FOLDERS = [list(files) for _, files in groupby([*FIGURES, *OTHERS], key=lambda f: f.parent)]
by_folder = pytest.mark.parametrize("files", FOLDERS, ids=lambda files: _name(files[0].parent))


@pytest.fixture(autouse=True)
def _application(qapp: object) -> None:
    """Text in drawings needs fonts."""


@by_folder
def test_a_drawing_shows_something_on_both_grounds(files: list[Path]):
    for file in files:
        for ground in ("#ffffff", "#1e1e1e"):
            shown = pixels(file, ground=ground)

            away = np.abs(shown - shown[0, -1]).max(axis=2) > 0.15
            assert 0.03 < away.mean() < 0.9, f"{_name(file)} on {ground}"


@by_folder
def test_a_drawing_stays_on_its_paper(files: list[Path]):
    for file in files:
        renderer = QSvgRenderer(QByteArray(file.read_bytes()))
        size = renderer.defaultSize()

        whole = painted(renderer, (size.width(), size.height()), ground="#00ff00", border=6)

        spilt = np.abs(whole - (0, 1, 0)).max(axis=2) > 0.02
        spilt[6:-6, 6:-6] = False
        places = f"at {np.argwhere(spilt)[:3].tolist()} (y, x, border of 6)"
        assert not spilt.any(), f"{_name(file)} {places}"


@by_folder
def test_a_drawing_uses_only_what_every_renderer_can_show(files: list[Path]):
    for file in files:
        text = file.read_text("utf-8")

        assert set(re.findall(r"<(\w+)", text)) <= {"svg", "title", "g", "path", "circle", "text"}
        assert not re.search(r"\b(href|style|class|filter|url|on\w+)\s*=", text)
        assert not re.search(r"\b(nan|inf)\b", text)


@pytest.mark.slow
def test_the_committed_drawings_are_what_the_program_draws():
    made = drawings(keys_folder())

    ours = {f.relative_to(IMAGES).as_posix() for f in [*FIGURES, *OTHERS]}
    plates = {f.relative_to(IMAGES).as_posix() for f in (IMAGES / "plates").glob("*.yaml")}
    stale = [name for name, text in made.items() if (IMAGES / name).read_text("utf-8") != text]
    assert set(made) == ours | plates
    assert not stale, "run: python -m idkey.figures.draw images"


@pytest.mark.parametrize(("key", "character"), CHARACTERS, ids=_label)
def test_each_state_and_each_number_has_a_figure_or_a_reason(key: Key, character: Character):
    asked = [s.id for s in character.states] or [None]

    missing = [s for s in asked if figure_path(IMAGES, key, character.id, s) is None]

    assert bool(missing) == ((key.id, character.id) in NO_FIGURE), missing


def test_no_figure_is_for_a_state_that_does_not_exist():
    known = {
        f"figures/{key.id}/{c.id}/{s}.svg"
        for key, c in CHARACTERS
        for s in (c.state_ids or ("measure",))
    }

    assert {f.relative_to(IMAGES).as_posix() for f in FIGURES} <= known


@by_folder
def test_no_two_states_of_a_character_look_the_same(files: list[Path]):
    shown = {file.stem: lab(file) for file in files if file in FIGURES}

    for one, two in combinations(shown, 2):
        other = ciede2000(shown[one], shown[two]) > CLEARLY_OTHER
        assert other.mean() >= SHARE_OF_TILE, f"{one} and {two} differ in {other.mean():.2%}"


@pytest.mark.parametrize(("key", "character"), COLOURED, ids=_label)
def test_a_colour_state_is_drawn_in_its_reference_colour(key: Key, character: Character):
    """… and holds more of it than the tiles of its neighbours do."""
    coloured = [state for state in character.states if state.colours]
    shown = {s.id: pixels(_figure(key, character, s.id), size=(320, 240)) for s in coloured}

    for state in coloured:
        shares = {s: _share(shot, state.colours[0]) for s, shot in shown.items()}
        own = shares.pop(state.id)
        assert own > 0.005, state.id
        assert own > max(shares.values()), state.id


def _share(shot: Pixels, colour: str) -> float:
    """Share of the pixels that show a colour."""
    codes = np.rint(shot.reshape(-1, 3) * 255).astype(int) @ (65536, 256, 1)
    found, counts = np.unique(codes, return_counts=True)
    tints = np.stack((found >> 16, found >> 8 & 255, found & 255), axis=1) / 255
    near = ciede2000(lab_of_rgb(tints), lab_of_hex(colour)) < COLOUR_LIMIT
    return float(counts[near].sum() / counts.sum())


def _figure(key: Key, character: Character, state: str) -> Path:
    file = figure_path(IMAGES, key, character.id, state)
    assert file is not None
    return file
