"""A patch that cannot show a fine surface is told apart from one that can."""

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFilter

from idkey.photo.intake import read_bytes
from idkey.photo.quality import SHARP_PX, Fault, cropped, edge_px, fitness
from tests.photo.pictures import saved

PATCH = (150, 150, 300, 300)


def granules(size: int = 600, gap: int = 9, ground: int = 70) -> Image.Image:
    """A hand with granules of a few pixels, on a light ground."""
    chance = np.random.default_rng(5)
    image = Image.new("L", (2 * size, 2 * size), 215)
    draw = ImageDraw.Draw(image)
    draw.ellipse((100, 100, 2 * size - 100, 2 * size - 100), fill=ground)
    for y in range(200, 2 * size - 200, 2 * gap):
        for x in range(200, 2 * size - 200, 2 * gap):
            a, b = x + int(chance.integers(-4, 5)), y + int(chance.integers(-4, 5))
            draw.ellipse((a - 6, b - 6, a + 6, b + 6), fill=ground - 20)
            draw.ellipse((a - 6, b - 6, a + 3, b + 3), fill=ground + 60)
    return image.resize((size, size), Image.Resampling.LANCZOS).convert("RGB")


def smooth(ground: int = 70) -> Image.Image:
    """A hand without granules; its outline crosses the patch's surroundings."""
    image = Image.new("L", (600, 600), 215)
    ImageDraw.Draw(image).ellipse((120, 120, 480, 480), fill=ground)
    return image.filter(ImageFilter.GaussianBlur(0.7)).convert("RGB")


def shot(image: Image.Image, blur: float = 0.0, noise: float = 3.0) -> Image.Image:
    """What a phone makes of it."""
    soft = image.filter(ImageFilter.GaussianBlur(blur)) if blur else image
    grain = np.random.default_rng(6).normal(0, noise, (image.height, image.width, 1))
    levels = (np.asarray(soft, dtype=float) + grain).clip(0, 255).astype(np.uint8)
    return read_bytes(saved(Image.fromarray(levels), "JPEG", quality=88)).image


@pytest.mark.parametrize("picture", [granules(), smooth()], ids=["granules", "smooth"])
def test_a_sharp_well_lit_patch_shows_a_surface(picture: Image.Image):
    found = fitness(shot(picture), PATCH)

    assert found.faults == ()
    assert found.shows_surface


@pytest.mark.parametrize("blur", [3, 5, 8])
@pytest.mark.parametrize("picture", [granules(), smooth()], ids=["granules", "smooth"])
def test_a_blurred_patch_does_not_show_a_surface(picture: Image.Image, blur: float):
    found = fitness(shot(picture, blur), PATCH)

    assert set(found.faults) & {Fault.BLURRED, Fault.UNJUDGED}
    assert not found.shows_surface


def test_the_width_of_edges_grows_with_blur():
    parts = [shot(smooth(), blur).crop((60, 60, 300, 300)) for blur in (0, 1, 2, 3, 5)]

    widths = [edge_px(part, 3.0) for part in parts]

    assert all(width is not None for width in widths)
    assert widths == sorted(widths)
    assert widths[0] < SHARP_PX < widths[3]


@pytest.mark.parametrize("blur", [1.5, 2.5, 4.0])
def test_an_edge_blurred_by_a_bell_is_two_and_a_half_deviations_wide(blur: float):
    """A step through a bell has the slope contrast / (s sqrt(2 pi)); smoothing adds a little."""
    step = np.zeros((200, 200))
    step[:, 100:] = 180
    soft = Image.fromarray(step.astype(np.uint8)).filter(ImageFilter.GaussianBlur(blur))

    width = edge_px(soft, 0.0)

    assert width == pytest.approx(np.sqrt(2 * np.pi) * np.hypot(blur, 0.9), rel=0.12)


def test_a_picture_without_any_edge_is_not_judged():
    found = fitness(shot(Image.new("RGB", (600, 600), (90, 90, 90))), PATCH)

    assert found.faults == (Fault.UNJUDGED,)
    assert found.edge_px is None


@pytest.mark.parametrize(
    ("picture", "patch", "fault"),
    [
        (smooth(), (200, 200, 60, 60), Fault.SMALL),
        (smooth(ground=4), PATCH, Fault.DARK),
        (smooth(ground=255), PATCH, Fault.GLARE),
    ],
    ids=["too small", "too dark", "blown out"],
)
def test_what_else_hides_a_surface_is_said(picture: Image.Image, patch, fault: Fault):
    assert fault in fitness(shot(picture, noise=1.0), patch).faults


def test_noise_that_looks_like_granules_is_said():
    found = fitness(shot(smooth(), noise=14), PATCH)

    assert Fault.GRAINY in found.faults


def test_a_box_is_cut_to_the_picture():
    assert cropped(smooth(), (-50, 580, 100, 100)).size == (50, 20)


def test_a_box_outside_the_picture_is_refused():
    with pytest.raises(ValueError, match="outside"):
        cropped(smooth(), (700, 0, 10, 10))


def test_a_part_too_small_for_an_edge_is_not_judged():
    assert edge_px(Image.new("RGB", (20, 20)), 1.0) is None
