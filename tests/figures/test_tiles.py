"""Finding the drawing of a state."""

from dataclasses import replace
from pathlib import Path

from idkey.figures.tiles import figure_path
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key


def _key(figure: str = "") -> Key:
    hue = Character(
        id="hue",
        name="Hue",
        question="What hue?",
        kind=Kind.CATEGORICAL,
        looks=(Look.TUB,),
        states=(State(id="red", label="Red", figure=figure), State(id="blue", label="Blue")),
    )
    return Key(id="demo", title="Demo", version="1.0.0", characters=(hue,))


def _put(folder: Path, place: str) -> Path:
    file = folder / place
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text("<svg/>", "utf-8")
    return file


def test_the_drawing_is_named_after_key_character_and_state(tmp_path: Path):
    drawn = _put(tmp_path, "figures/demo/hue/red.svg")

    assert figure_path(tmp_path, _key(), "hue", "red") == drawn
    assert figure_path(tmp_path, _key(), "hue", "blue") is None


def test_a_photograph_stands_in_where_there_is_no_drawing(tmp_path: Path):
    photo = _put(tmp_path, "figures/demo/hue/red.jpg")

    assert figure_path(tmp_path, _key(), "hue", "red") == photo


def test_the_figure_that_the_state_names_comes_first(tmp_path: Path):
    _put(tmp_path, "figures/demo/hue/red.svg")
    own = _put(tmp_path, "mine/close-up.png")

    assert figure_path(tmp_path, _key("mine/close-up.png"), "hue", "red") == own


def test_a_named_figure_that_is_missing_falls_back_to_the_drawing(tmp_path: Path):
    drawn = _put(tmp_path, "figures/demo/hue/red.svg")

    assert figure_path(tmp_path, _key("mine/lost.png"), "hue", "red") == drawn


def test_no_figure_leads_out_of_the_folder(tmp_path: Path):
    images = tmp_path / "images"
    _put(tmp_path, "secret.svg")
    _put(images, "figures/demo/hue/other.svg")

    assert figure_path(images, _key("../secret.svg"), "hue", "red") is None
    assert figure_path(images, _key(), "hue", "../../../../secret") is None
    assert figure_path(images, replace(_key(), id="../.."), "..", "secret") is None


def test_how_to_measure_is_asked_without_a_state(tmp_path: Path):
    drawn = _put(tmp_path, "figures/demo/width/measure.svg")

    assert figure_path(tmp_path, _key(), "width") == drawn
    assert figure_path(tmp_path, _key(), "length") is None
