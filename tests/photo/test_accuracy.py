"""Stated intervals hold the truth as often as they say, on rendered photographs.

The full runs are a bench (docs/photo-accuracy.md); this is a small, seeded version of them.
"""

from collections import defaultdict

import numpy as np
import pytest

from idkey.engine.measure import Lie
from idkey.engine.tilt import Tilt
from tests.photo.scenes import REPEATS, RULER_MM, Run, runs, shot

PICTURES = 16


@pytest.fixture(scope="module")
def measured() -> dict[Tilt, list[Run]]:
    """Four numbers from each of some photographs per tilt."""
    chance = np.random.default_rng(20251104)
    return {
        tilt: [run for _ in range(PICTURES) for run in runs(chance, shot(chance, tilt))]
        for tilt in Tilt
    }


@pytest.mark.slow
def test_the_stated_95_per_cent_hold_the_truth(measured):
    """192 numbers: 95 % give or take three standard deviations is 90 to 99.7 %."""
    every = [run for rows in measured.values() for run in rows]

    held = np.mean([run.covered for run in every])
    assert len(every) == 3 * 4 * PICTURES
    assert 0.90 <= held <= 0.997


@pytest.mark.slow
def test_numbers_are_not_off_to_one_side(measured):
    by_kind = defaultdict(list)
    for rows in measured.values():
        for run in rows:
            by_kind[run.kind].append(run.off)

    for kind, off in by_kind.items():
        assert abs(np.mean(off)) < 3 / np.sqrt(len(off)), kind


@pytest.mark.slow
def test_uncertainties_are_no_larger_than_they_need_be(measured):
    """Errors spread over about one stated standard uncertainty, neither much less nor more."""
    for tilt, rows in measured.items():
        assert 0.6 < np.std([run.off for run in rows]) < 1.3, tilt


@pytest.mark.slow
def test_the_more_a_part_leans_the_wider_the_interval(measured):
    means = [
        np.mean([run.found.uncertainty / run.found.value for run in measured[tilt]])
        for tilt in (Tilt.FLAT, Tilt.SLIGHT, Tilt.CLEAR)
    ]

    assert means == sorted(means)
    assert means[2] > 2 * means[0]


@pytest.mark.slow
def test_a_ruler_that_lies_apart_is_covered_when_it_is_said_and_not_when_it_is_not():
    chance = np.random.default_rng(5)
    said, unsaid = [], []
    for _ in range(16):
        taken = shot(chance, Tilt.CLEAR, lie=Lie.APART)
        said += runs(chance, taken)
        hidden = type(taken)(taken.plate, taken.incoming, Tilt.FLAT, Lie.TOGETHER, taken.seen)
        unsaid += runs(chance, hidden)[:1]

    assert np.mean([run.covered for run in said]) >= 0.8
    assert np.mean([run.covered for run in unsaid]) <= 0.6


def test_a_scene_is_what_it_says():
    """The eye finds the ruler of 30 mm as long in pixels as the camera makes it."""
    taken = shot(np.random.default_rng(2), Tilt.FLAT)

    (x, y), (u, v) = (taken.seen[end] for end in taken.plate.ends)
    true = abs(taken.plate.ends[1] - taken.plate.ends[0])
    assert np.hypot(u - x, v - y) == pytest.approx(true, rel=0.15)
    assert taken.incoming.image.size == (960, 720)
    assert (REPEATS, RULER_MM) == (3, 30.0)
