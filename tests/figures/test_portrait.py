"""Portraits say what the key says: proportions, colours, size, and what is not known."""

import re
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from idkey.engine.colour import ciede2000, lab_of_hex
from idkey.figures.catalogue import CATALOGUE
from idkey.figures.ink import UNKNOWN
from idkey.figures.portrait import (
    PLANS,
    Heading,
    View,
    lineup_scale_mm,
    portrait,
    portrait_of_findings,
)
from idkey.figures.traits import traits_of_taxon
from idkey.formats.folder import read_key
from idkey.model.case import Case, Finding, Specimen
from idkey.model.character import Sex, Stage
from idkey.model.key import Key
from idkey.model.score import Spans
from idkey.places import keys_folder
from tests.figures.outline_reader import length_and_width, outline
from tests.figures.raster import lab, pixels

SCORPIONS = read_key(keys_folder() / "large-dark-scorpions")
READ = [read_key(keys_folder() / name) for name in CATALOGUE]
ALL = [key for key in READ if key.body_plan]
RATIOS = [
    (score.taxon, sex, (score.value.low + score.value.high) / 2)
    for score in SCORPIONS.scores
    for sex, character in ((Sex.MALE, "chela_lw_male"), (Sex.FEMALE, "chela_lw_female"))
    if score.character == character
    and isinstance(score.value, Spans)
    and score.value.low is not None
    and score.value.high is not None
]
CLOSE = 0.03
"""How far the drawn ratio may be from the scored one."""


@pytest.fixture(autouse=True)
def _application(qapp: object) -> None:
    """Text in drawings needs fonts."""


def _case(*findings: Finding, **specimen: object) -> Case:
    return Case(
        id="1",
        key=SCORPIONS.id,
        findings=findings,
        specimen=replace(Specimen(), **specimen),  # type: ignore[arg-type]
    )


def test_the_scorpion_key_has_ratios_to_draw():
    assert len(RATIOS) >= 10


@pytest.mark.parametrize(("taxon", "sex", "ratio"), RATIOS, ids=str)
def test_the_claw_is_as_long_for_its_width_as_the_key_says(taxon: str, sex: Sex, ratio: float):
    drawn = portrait(SCORPIONS, taxon, sex=sex)

    for side in ("left", "right"):
        length, width = length_and_width(outline(drawn, f"chela_{side}_hand"))
        assert length / width == pytest.approx(ratio, rel=CLOSE)


@settings(max_examples=12)
@given(st.floats(1.5, 6.0), st.sampled_from(SCORPIONS.character["manus_shape"].state_ids))
def test_a_claw_of_any_shape_keeps_the_ratio_of_its_specimen(ratio: float, shape: str):
    drawn = portrait(SCORPIONS, {"chela_lw_female": ratio, "manus_shape": shape})

    length, width = length_and_width(outline(drawn, "chela_right_hand"))
    assert length / width == pytest.approx(ratio, rel=CLOSE)


def test_males_and_females_are_drawn_apart_where_the_key_tells_them_apart():
    male = portrait(SCORPIONS, "heterometrus_longimanus", sex=Sex.MALE)
    female = portrait(SCORPIONS, "heterometrus_longimanus", sex=Sex.FEMALE)

    assert (
        length_and_width(outline(male, "chela_left_hand"))[0]
        > 1.2 * (length_and_width(outline(female, "chela_left_hand"))[0])
    )
    assert portrait(SCORPIONS, "heterometrus_longimanus") == female


@pytest.mark.slow
@pytest.mark.parametrize("key", ALL, ids=lambda key: key.id)
def test_every_taxon_has_a_portrait_that_fills_its_paper(key: Key):
    for taxon in key.taxa:
        shown = pixels(portrait(key, taxon.id), size=(400, 250))

        inked = np.argwhere(np.abs(shown - 1).max(axis=2) > 0.2)
        high, wide = inked.max(axis=0) - inked.min(axis=0)
        assert wide > 0.9 * 400 or high > 0.85 * 250, taxon.id
        assert inked.min() > 0, taxon.id


def test_what_nobody_found_is_hatched_and_dashed():
    drawn = portrait_of_findings(SCORPIONS, _case())

    assert f'fill="{UNKNOWN.fill}"' in drawn
    assert "stroke-dasharray" in drawn
    known = {"#17161a", "#7e2f1f", "#d0ae5c"}
    assert not known & set(re.findall(r'fill="(#\w+)"', drawn))


def test_a_finding_is_painted_and_the_rest_stays_open():
    drawn = portrait_of_findings(
        SCORPIONS, _case(Finding(character="telson_colour", states=("yellow",)))
    )

    yellow = SCORPIONS.character["telson_colour"].state("yellow").colours[0].lower()
    assert drawn.count(f'fill="{yellow}"') == 1
    assert f'fill="{UNKNOWN.fill}"' in drawn


@pytest.mark.parametrize(
    "finding",
    [
        Finding(character="telson_colour", states=("yellow", "reddish")),
        Finding(character="telson_colour", states=("dark",), negated=True),
        Finding(character="telson_colour", unseen=True),
    ],
    ids=["one of two", "not that one", "not seen"],
)
def test_an_undecided_finding_is_not_guessed(finding: Finding):
    assert portrait_of_findings(SCORPIONS, _case(finding)) == portrait_of_findings(
        SCORPIONS, _case()
    )


def test_a_finding_that_leaves_one_state_is_painted():
    two_out = Finding(character="telson_colour", states=("dark", "reddish"), negated=True)
    yellow = Finding(character="telson_colour", states=("yellow",))

    assert portrait_of_findings(SCORPIONS, _case(two_out)) == portrait_of_findings(
        SCORPIONS, _case(yellow)
    )


def test_a_young_animal_shows_the_telson_of_the_young():
    shown = {"juvenile_telson_colour": "white_yellow", "telson_colour": "dark"}

    young = portrait(SCORPIONS, shown, stage=Stage.JUVENILE)
    grown = portrait(SCORPIONS, shown)

    pale = SCORPIONS.character["juvenile_telson_colour"].state("white_yellow").colours[0].lower()
    assert f'fill="{pale}"' in young
    assert f'fill="{pale}"' not in grown


def test_the_colours_of_a_portrait_are_those_of_the_key():
    drawn = portrait(SCORPIONS, "opistophthalmus_wahlbergii")
    flat = lab(drawn, size=(400, 250)).reshape(-1, 3)

    body = SCORPIONS.character["body_colour"].state("orange_yellow").colours[0]
    legs = SCORPIONS.character["leg_colour"].state("yellow").colours[0]
    for colour, share in ((body, 0.02), (legs, 0.002)):
        assert (ciede2000(flat, lab_of_hex(colour)) < 2).mean() > share


def test_a_line_up_is_drawn_to_one_scale():
    taxa = ("pandinus_imperator", "scorpio_fuscus")
    scale = lineup_scale_mm(SCORPIONS, taxa)
    assert scale == 170  # 120 to 220 mm

    view = View(scale_mm=scale)
    spans = []
    for taxon in taxa:
        svg = portrait(SCORPIONS, taxon, view=view)
        front = max(p.real for p in outline(svg, "shield"))
        spans.append(front - min(p.real for p in outline(svg, "shield")))
        assert "50 mm</text>" in svg
    true = 170 / 67.5 * _trunk(SCORPIONS, taxa[0]) / _trunk(SCORPIONS, taxa[1])
    assert spans[0] / spans[1] == pytest.approx(true, rel=0.01)


def _trunk(key: Key, taxon: str) -> float:
    """Share of the length that is not tail, by the binding's words for tail builds."""
    build = traits_of_taxon(key, taxon)["metasoma_robustness"].state
    return 1 - {"slender": 0.48, "intermediate": 0.5, "thick": 0.56}[build]


def test_an_animal_of_unknown_size_says_so_in_a_line_up():
    assert "? mm</text>" in portrait(SCORPIONS, "pandinoides_militaris", view=View(scale_mm=200))


def test_a_small_picture_may_leave_the_bar_out():
    for taxon in ("pandinus_imperator", "pandinoides_militaris"):
        view = View(scale_mm=200, bar=False)

        assert "mm</text>" not in portrait(SCORPIONS, taxon, view=view)
        assert "mm</text>" not in portrait(SCORPIONS, taxon, view=View(bar=False))


def test_a_portrait_may_look_up_or_left():
    left = pixels(portrait(SCORPIONS, "scorpio_fuscus"), size=(400, 250))
    up_view = View(heading=Heading.UP, width=250, height=400)
    up = pixels(portrait(SCORPIONS, "scorpio_fuscus", view=up_view), size=(250, 400))

    spread = [np.ptp(np.argwhere(shown.min(axis=2) < 0.5), axis=0) for shown in (left, up)]
    assert spread[0][1] > spread[0][0]
    assert spread[1][0] > spread[1][1]


def test_a_key_without_a_body_plan_has_no_portraits():
    bare = replace(SCORPIONS, body_plan="")

    assert portrait(bare, "scorpio_fuscus") == ""
    assert portrait_of_findings(bare, _case()) == ""
    assert lineup_scale_mm(bare, ("scorpio_fuscus",)) is None


def test_a_taxon_that_the_key_lacks_is_a_mistake_of_the_caller():
    with pytest.raises(KeyError):
        portrait(SCORPIONS, "homarus_gammarus")


def test_a_scale_of_nothing_is_refused():
    with pytest.raises(ValueError, match="above nought"):
        View(scale_mm=0)


@pytest.mark.parametrize("plan", PLANS)
def test_a_plan_draws_the_groups_it_promises(plan: str):
    key = next(key for key in ALL if key.body_plan == plan)

    drawn = portrait(key, key.taxa[0].id)

    assert set(PLANS[plan].parts) <= set(re.findall(r'<g id="(\w+)"', drawn))
