"""Pictures of one animal: bent, turned and tinted a little, readable, and without the answer."""

import re

import numpy as np
import pytest
from defusedxml import ElementTree
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey import places
from idkey.drill.plate import plate, tolerance
from idkey.drill.variation import NONE, variation, varied
from idkey.model.character import Character, Kind, Look
from idkey.model.key import Key

TILES = sorted((places.images_folder() / "figures" / "large-dark-scorpions").glob("*/*.svg"))
SEEDS = st.integers(0, 2**32 - 1)


def numbers(svg: str) -> np.ndarray:
    return np.array([float(x) for x in re.findall(r"-?\d+\.\d\d", "".join(_ways(svg)))])


def _ways(svg: str) -> list[str]:
    return re.findall(r' d="([^"]+)"', svg)


def character(kind: Kind, unit: str = "", uncertainty: float | None = None) -> Character:
    return Character(
        id="c", name="c", question="?", kind=kind, looks=(Look.TUB,), unit=unit,
        uncertainty=uncertainty,
    )  # fmt: skip


@pytest.mark.parametrize("file", TILES[::9], ids=lambda file: file.parent.name)
def test_every_drawing_varied_is_a_drawing_that_says_nothing_of_the_state(file):
    text = file.read_text("utf-8")
    changed = varied(text, variation(np.random.default_rng(3)), letters=False)
    titles = [node.text for node in ElementTree.fromstring(changed).iter() if "title" in node.tag]

    assert titles == ["A specimen"]
    assert "<text" not in changed
    assert len(_ways(changed)) == len(_ways(text))
    assert changed != varied(text, NONE)


@given(SEEDS)
def test_proportions_change_by_less_than_a_tenth(seed: int):
    how = variation(np.random.default_rng(seed))
    ring = "M100 80L200 80L200 130L100 130Z"
    box = f'<svg width="300" height="200" viewBox="0 0 300 200"><path d="{ring}"/></svg>'
    x1, y1, x2, y2, x3, y3, _, _ = numbers(varied(box, how))[:8]
    wide, high = np.hypot(x2 - x1, y2 - y1), np.hypot(x3 - x2, y3 - y2)

    assert abs(wide / high / 2 - 1) < 0.1


def test_everything_drawn_lies_in_the_view_box():
    for seed in range(12):
        changed = varied(TILES[5].read_text("utf-8"), variation(np.random.default_rng(seed)))
        box = re.search(r'viewBox="([-\d. ]+)"', changed)
        assert box
        left, top, wide, high = map(float, box[1].split())
        points = numbers(changed).reshape(-1, 2)

        assert (points >= (left, top)).all()
        assert (points <= (left + wide, top + high)).all()


def test_pictures_of_two_animals_differ_in_every_point():
    text = TILES[2].read_text("utf-8")
    one, other = (varied(text, variation(np.random.default_rng(n))) for n in (1, 2))

    assert (numbers(one) != numbers(other)).mean() > 0.95


@settings(max_examples=30)
@given(st.integers(0, 80), SEEDS)
def test_a_plate_to_count_has_as_many_pegs_as_the_animal(number: int, seed: int):
    svg = plate(character(Kind.COUNT), float(number), seed, variation(np.random.default_rng(seed)))
    pegs = sum(way.count("L") == 4 for way in _ways(svg))

    assert pegs == number


@settings(max_examples=30)
@given(st.floats(2, 300), SEEDS)
def test_a_length_can_be_read_off_its_ruler(value: float, seed: int):
    svg = plate(character(Kind.MEASUREMENT, "mm"), value, seed, NONE)
    body = max(_ways(svg), key=lambda way: way.count("L"))
    xs = numbers(f' d="{body}"')[::2]
    ticks = {
        float(text): float(x)
        for x, text in re.findall(r'<text x="([-\d.]+)"[^>]*>([\d.]+)</text>', svg)
    }
    low, high = min(ticks), max(ticks)
    per = (ticks[high] - ticks[low]) / (high - low)

    assert (xs.max() - xs.min()) / per == pytest.approx(value, rel=0.01)


@settings(max_examples=30)
@given(st.floats(0.3, 12), SEEDS)
def test_a_proportion_is_that_of_the_body(value: float, seed: int):
    svg = plate(character(Kind.RATIO), value, seed, NONE)
    points = numbers(f' d="{max(_ways(svg), key=lambda way: way.count("L"))}"').reshape(-1, 2)
    wide, high = points.max(axis=0) - points.min(axis=0)

    assert wide / high == pytest.approx(value, rel=0.02)


@settings(max_examples=30)
@given(st.floats(5, 100), SEEDS)
def test_a_share_is_that_of_the_two_bars(value: float, seed: int):
    svg = plate(character(Kind.RATIO, "%"), value, seed, NONE)
    bars = [numbers(f' d="{way}"')[::2] for way in _ways(svg) if way.count("L") > 50]
    part, whole = (xs.max() - xs.min() for xs in bars)

    assert 100 * part / whole == pytest.approx(value, rel=0.01)


def test_readings_may_be_off_by_twice_their_uncertainty_and_counts_by_less_than_one(key: Key):
    assert tolerance(key.character["total_length"], 120) == 4.0
    assert tolerance(key.character["chela_i_trichobothria"], 2) < 1
    assert tolerance(character(Kind.COUNT), 30) == 0.5
    assert tolerance(character(Kind.MEASUREMENT, "mm"), 100) == pytest.approx(3.0)
