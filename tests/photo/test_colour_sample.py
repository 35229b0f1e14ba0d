"""A patch beside a grey card suggests the right state in any light, and says what spoils it."""

import io
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image, ImageDraw

from idkey.engine.colour import ciede2000, lab_of_hex, lab_of_rgb, rgb_of_hex
from idkey.photo.colour_sample import (
    TOO_ALIKE,
    Sample,
    Suggestion,
    Warn,
    decided,
    sampled,
    suggestions,
)
from idkey.photo.faults import PictureError
from idkey.photo.intake import read_bytes
from idkey.photo.marks import Neutral
from tests.photo.characters import SLIMNESS, TELSON, with_colours
from tests.photo.light import LIGHTS, grey, photographed, reflectance, white
from tests.photo.pictures import saved

PATCH, NEUTRAL = (8, 8, 80, 80), (104, 8, 80, 80)
COLOURED = with_colours()
CIE = "CIE 15:2004, chromaticities of the illuminants, 2 degree observer (from memory)"


def kept(image: Image.Image) -> Image.Image:
    """The picture as the shelf keeps it: through a JPEG, twice."""
    incoming = read_bytes(saved(image, "JPEG", quality=85))
    return Image.open(io.BytesIO(incoming.content))


def plain(patch: str, neutral: str = "#767676") -> Image.Image:
    image = Image.new("RGB", (192, 96), patch)
    ImageDraw.Draw(image).rectangle((96, 0, 192, 96), fill=neutral)
    return image


@pytest.mark.parametrize(
    ("light", "x", "y"),
    [("A", 0.44757, 0.40745), ("D65", 0.31272, 0.32903), ("F2", 0.37208, 0.37529)],
)
def test_the_lights_have_their_chromaticities_of_cie_15_2004(light: str, x: float, y: float):
    assert white(light) == pytest.approx((x, y), abs=3e-4), CIE


@pytest.mark.parametrize("colour", ["#7a3220", "#d0ae5c", "#12404a", "#17161a", "#ece8dc"])
def test_a_made_up_reflectance_looks_like_its_colour_in_daylight(colour: str):
    picture = photographed(reflectance(colour), grey(0.18), "D65", exposure=1.0)

    seen = lab_of_rgb(np.asarray(picture)[:, :96].mean(axis=(0, 1)) / 255)
    assert float(ciede2000(seen, lab_of_hex(colour))) < 1.0


LIGHTINGS = [
    *((light, Neutral.GREY_CARD, True) for light in LIGHTS),
    ("A", Neutral.WHITE_PAPER, True),
    ("A", Neutral.GREY_CARD, False),
    ("F2", Neutral.GREY_CARD, False),
]


@pytest.mark.parametrize(
    ("light", "reference", "people"),
    LIGHTINGS,
    ids=[f"{a}, {b}, {'an eye' if c else 'a made-up camera'}" for a, b, c in LIGHTINGS],
)
def test_patches_in_the_colours_of_the_keys_suggest_their_state(
    light: str, reference: Neutral, people: bool
):
    """Right where it claims to be clear; never further off than what it calls too alike."""
    share = reference.reflectance or 0.0
    missed, clear, total = [], 0, 0
    for character in COLOURED:
        for state in (s for s in character.states if s.colours):
            shown = reflectance(state.colours[0].lower())
            picture = kept(photographed(shown, grey(share), light, people=people))
            found = suggestions(sampled(picture, PATCH, NEUTRAL, reference=reference), character)
            own = next(one.distance for one in found if one.state == state)
            total, clear = total + 1, clear + decided(found)
            if found[0].state != state and (decided(found) or own - found[0].distance > TOO_ALIKE):
                missed.append((character.id, state.id, found[0].state.id))

    assert missed == []
    assert clear > 0.7 * total


def test_the_colours_are_wrong_without_the_correction():
    """What the grey card is for: under a light bulb a yellow sting reads as something else."""
    picture = photographed(reflectance("#33302f"), grey(0.18), "A")
    raw = np.asarray(picture)[20:80, 20:80].mean(axis=(0, 1)) / 255

    corrected = sampled(picture, PATCH, NEUTRAL)

    goal = lab_of_hex("#33302f")
    assert float(ciede2000(lab_of_rgb(raw), goal)) > 12
    assert float(ciede2000(np.array(corrected.lab), goal)) < 4


def test_in_neutral_light_the_colour_is_the_one_in_the_picture():
    picture = plain("#7a3220", "#767676")

    found = sampled(picture, PATCH, NEUTRAL, reference=Neutral.OTHER)

    assert found.hex == "#7a3220"
    assert found.spread < 0.01


def test_all_coloured_states_are_listed_nearest_first_and_others_are_not():
    found = suggestions(sampled(plain("#86402c"), PATCH, NEUTRAL), TELSON)

    assert [one.state.id for one in found] == ["reddish", "dark", "yellow"]
    assert [one.distance for one in found] == sorted(one.distance for one in found)
    assert decided(found)


def test_between_two_shades_of_one_state_nothing_is_far():
    one, other = (lab_of_hex(colour) for colour in TELSON.state("reddish").colours)
    middle = (one + other) / 2
    sample = Sample(lab=tuple(middle.tolist()), spread=0, exposed=True, warnings=())

    (nearest, *_) = suggestions(sample, TELSON)

    assert nearest.distance < 1.0


def test_a_colour_that_is_like_no_state_is_not_decided():
    found = suggestions(sampled(plain("#2040c0"), PATCH, NEUTRAL), TELSON)

    assert not decided(found)


def test_two_states_at_one_distance_are_not_decided():
    states = TELSON.states
    found = tuple(Suggestion(s, d, "#000000") for s, d in zip(states, (4.0, 5.0), strict=False))

    assert not decided(found)
    assert decided(found[:1])
    assert not decided(())


def test_a_character_without_colours_has_no_suggestions():
    assert suggestions(sampled(plain("#86402c"), PATCH, NEUTRAL), SLIMNESS) == ()


def test_with_an_unknown_neutral_thing_the_lightness_is_left_open():
    dark = plain("#512015", "#4f4f4f")
    exact = sampled(dark, PATCH, NEUTRAL, reference=Neutral.OTHER)

    found = suggestions(exact, TELSON)
    bound = suggestions(replace(exact, exposed=True), TELSON)

    assert Warn.NO_EXPOSURE in exact.warnings
    assert found[0].state.id == "reddish"
    assert found[0].distance < bound[0].distance / 2


@pytest.mark.parametrize(
    ("picture", "reference", "warn"),
    [
        (plain("#fff8f0", "#767676"), Neutral.GREY_CARD, Warn.CLIPPED),
        (plain("#7a3220", "#ffffff"), Neutral.WHITE_PAPER, Warn.REFERENCE_CLIPPED),
        (plain("#200c08", "#303030"), Neutral.GREY_CARD, Warn.DARK),
        (plain("#7a3220", "#c08030"), Neutral.GREY_CARD, Warn.TINTED),
        (plain("#7a3220", "#767676"), Neutral.OTHER, Warn.NO_EXPOSURE),
    ],
    ids=lambda value: value.value if isinstance(value, Warn) else "",
)
def test_what_spoils_a_colour_is_said(picture: Image.Image, reference: Neutral, warn: Warn):
    assert warn in sampled(picture, PATCH, NEUTRAL, reference=reference).warnings


def test_a_good_picture_has_no_warnings():
    assert sampled(plain("#7a3220"), PATCH, NEUTRAL).warnings == ()


def test_a_shadow_across_the_reference_is_said():
    picture = plain("#7a3220")
    ImageDraw.Draw(picture).rectangle((144, 0, 192, 96), fill="#404040")

    assert Warn.UNEVEN in sampled(picture, PATCH, NEUTRAL).warnings


def test_a_patch_of_several_colours_is_said():
    picture = plain("#7a3220")
    ImageDraw.Draw(picture).rectangle((0, 0, 48, 96), fill="#e0cd96")

    assert Warn.PATCHY in sampled(picture, PATCH, NEUTRAL).warnings


def test_a_tiny_patch_is_said():
    assert Warn.SMALL in sampled(plain("#7a3220"), (20, 20, 8, 8), NEUTRAL).warnings


def test_a_blurred_picture_is_said():
    from PIL import ImageFilter

    picture = plain("#7a3220", "#c0c0c0").resize((960, 480)).filter(ImageFilter.GaussianBlur(12))

    found = sampled(picture, (300, 100, 150, 200), (560, 100, 300, 200))

    assert Warn.BLURRED in found.warnings


def test_a_freshly_moulted_animal_is_said():
    found = sampled(plain("#7a3220"), PATCH, NEUTRAL, moulted=True)

    assert found.warnings == (Warn.MOULTED,)


@pytest.mark.parametrize(
    ("patch", "neutral"),
    [((900, 900, 50, 50), NEUTRAL), (PATCH, (-90, 0, 40, 40))],
    ids=["patch outside", "reference outside"],
)
def test_a_box_outside_the_picture_is_refused(patch, neutral):
    with pytest.raises(PictureError, match="outside the picture"):
        sampled(plain("#7a3220"), patch, neutral)


def test_a_black_thing_is_no_reference():
    with pytest.raises(PictureError, match="black"):
        sampled(plain("#7a3220", "#000000"), PATCH, NEUTRAL)


def test_blown_out_pixels_do_not_count():
    picture = plain("#7a3220")
    ImageDraw.Draw(picture).rectangle((40, 40, 60, 60), fill="#ffffff")

    found = sampled(picture, PATCH, NEUTRAL, reference=Neutral.OTHER)

    assert Warn.CLIPPED in found.warnings
    assert rgb_of_hex(found.hex) == pytest.approx(rgb_of_hex("#7a3220"), abs=0.005)
