"""Pictures that lie beside a key: found for that key, and only when they merely show."""

import io
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image

from idkey.figures.own import own_figure, own_images
from idkey.model.character import Character, Kind, Look, State
from idkey.model.key import Key

PLAIN = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 3"><path d="M0 0h4v3z"/></svg>'
SVG = '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink">{}</svg>'
ACTIVE = {
    "script": SVG.format("<script>alert(1)</script>"),
    "event": SVG.format('<path onload="x()" d="M0 0"/>'),
    "remote": SVG.format('<use xlink:href="file:///etc/passwd"/>'),
    "embedded": SVG.format('<image href="photo.png"/>'),
    "entities": '<!DOCTYPE svg [<!ENTITY a "b">]>' + PLAIN,
    "no picture": "hello",
}


def _key(figure: str = "", key_id: str = "mine") -> Key:
    hue = Character(
        id="hue",
        name="Hue",
        question="What hue?",
        kind=Kind.CATEGORICAL,
        looks=(Look.TUB,),
        states=(State(id="red", label="Red", figure=figure), State(id="blue", label="Blue")),
    )
    long = Character(
        id="long", name="Long", question="?", kind=Kind.MEASUREMENT, unit="mm", looks=(Look.TUB,)
    )
    return Key(id=key_id, title="Demo", version="1.0.0", characters=(hue, long))


def _put(folder: Path, place: str, content: str | bytes = PLAIN) -> Path:
    file = folder / place
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_bytes(content if isinstance(content, bytes) else content.encode())
    return file


def _photo(kind: str = "PNG") -> bytes:
    raw = io.BytesIO()
    Image.new("RGB", (8, 6), "#884422").save(raw, kind)
    return raw.getvalue()


def test_the_first_library_that_holds_the_key_counts(tmp_path: Path):
    shipped, added = tmp_path / "keys", tmp_path / "data" / "keys"
    _put(added, "mine/key.yaml", "")
    _put(added, "mine/images/hue/red.svg")
    assert own_images((shipped, added), _key()) == added / "mine" / "images"

    _put(shipped, "mine/key.yaml", "")

    assert own_images((shipped, added), _key()) is None, "the shipped key has no pictures"
    assert own_images((shipped, added), _key(key_id="other")) is None


def test_a_picture_is_named_by_its_state_or_named_after_it(tmp_path: Path):
    photo = _put(tmp_path, "close/up.png", _photo())
    drawn = _put(tmp_path, "hue/red.svg")
    bar = _put(tmp_path, "long/measure.svg")

    assert own_figure(tmp_path, _key("close/up.png"), "hue", "red") == photo
    assert own_figure(tmp_path, _key(), "hue", "red") == drawn
    assert own_figure(tmp_path, _key(), "hue", "blue") is None
    assert own_figure(tmp_path, _key(), "long") == bar


@pytest.mark.parametrize("content", ACTIVE.values(), ids=ACTIVE)
def test_a_drawing_that_would_do_more_than_show_is_passed_over(tmp_path: Path, content: str):
    _put(tmp_path, "hue/red.svg", content)

    assert own_figure(tmp_path, _key(), "hue", "red") is None


def test_a_file_that_is_not_what_its_name_says_gives_way_to_the_next_kind(tmp_path: Path):
    _put(tmp_path, "hue/red.png", b"GIF89a nothing")
    photo = _put(tmp_path, "hue/red.jpg", _photo("JPEG"))

    assert own_figure(tmp_path, _key(), "hue", "red") == photo


@pytest.mark.parametrize("figure", ["../secret.svg", "deep/../../secret.svg", "x\0.svg"])
def test_no_picture_leads_out_of_the_folder_of_its_key(tmp_path: Path, figure: str):
    _put(tmp_path, "secret.svg")
    images = tmp_path / "images"
    _put(images, "deep/other.svg")

    assert own_figure(images, _key(figure), "hue", "red") is None


def test_no_link_leads_out_of_it_either(tmp_path: Path):
    secret = _put(tmp_path, "secret.svg")
    home = tmp_path / "keys" / "mine"
    _put(home, "key.yaml", "")
    (home / "images" / "hue").mkdir(parents=True)
    (home / "images" / "hue" / "red.svg").symlink_to(secret)
    assert own_figure(home / "images", _key(), "hue", "red") is None

    other = tmp_path / "elsewhere"
    _put(other, "hue/red.svg")
    away = tmp_path / "keys" / "away"
    _put(away, "key.yaml", "")
    (away / "images").symlink_to(other)

    assert own_images((tmp_path / "keys",), replace(_key(), id="away")) is None
