"""Contrast is measured as printed, and both schemes keep to it."""

from collections.abc import Callable
from itertools import combinations

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from idkey.app.library.coverage_bar import draw_ground
from idkey.app.parts.colours import (
    DARK,
    GRAPHIC_CONTRAST,
    LIGHT,
    TEXT_CONTRAST,
    Colours,
    contrast,
    luminance,
)
from idkey.app.parts.theme import Scheme, Theme
from idkey.app.workshop.audit_delegate import draw_weight
from idkey.app.workshop.audit_rows import Weight
from idkey.app.workshop.matrix_delegate import draw_ground as draw_cell
from idkey.app.workshop.matrix_face import Face
from idkey.app.workshop.matrix_face import Ground as CellGround
from idkey.engine.coverage import Ground

WCAG = "WCAG 2.2, definitions of relative luminance and contrast ratio"
OKABE_ITO = "Okabe & Ito 2008, Color Universal Design"
both = pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])

GROUNDS = ("ground", "surface", "raised", "accent_soft", "hazard_soft", "permit_soft", "doubt_soft")
INKS = ("ink", "soft", "accent", "hazard", "permit", "doubt")
PAIRS = [(ink, ground) for ink in INKS for ground in GROUNDS]
PAIRS += [("on_accent", "accent"), ("raised", "ink"), ("plate_ink", "plate")]
PAIRS += [("paper_ink", "paper"), ("paper_soft", "paper")]


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [
        pytest.param("#000000", "#FFFFFF", 21.0, id="WCAG 2.2: black on white is 21"),
        pytest.param("#FFFFFF", "#FFFFFF", 1.0, id="WCAG 2.2: a colour on itself is 1"),
        pytest.param("#767676", "#FFFFFF", 4.5422, id="WCAG 2.2: #767676 just passes 4.5"),
        pytest.param("#777777", "#FFFFFF", 4.4781, id="WCAG 2.2: #777777 just fails 4.5"),
        pytest.param("#949494", "#FFFFFF", 3.0335, id="WCAG 2.2: #949494 just passes 3"),
        pytest.param("#959595", "#FFFFFF", 2.9953, id="WCAG 2.2: #959595 fails 3 unrounded"),
        pytest.param("#595959", "#FFFFFF", 7.0047, id="WCAG 2.2: #595959 just passes 7"),
    ],
)
def test_contrast_as_wcag_2_2_defines_it(one: str, other: str, ratio: float):
    assert contrast(one, other) == pytest.approx(ratio, abs=5e-5), WCAG
    assert contrast(other, one) == contrast(one, other)


@pytest.mark.parametrize(
    ("name", "colour", "on_white", "on_black"),
    [
        ("orange", "#E69F00", 2.25, 9.32),
        ("sky blue", "#56B4E9", 2.31, 9.10),
        ("bluish green", "#009E73", 3.42, 6.14),
        ("yellow", "#F0E442", 1.32, 15.88),
        ("blue", "#0072B2", 5.19, 4.05),
        ("vermillion", "#D55E00", 3.87, 5.43),
        ("reddish purple", "#CC79A7", 3.06, 6.86),
    ],
)
def test_colours_of_okabe_and_ito_2008(name: str, colour: str, on_white: float, on_black: float):
    assert contrast(colour, "#FFFFFF") == pytest.approx(on_white, abs=0.005), f"{OKABE_ITO}: {name}"
    assert contrast(colour, "#000000") == pytest.approx(on_black, abs=0.005), f"{OKABE_ITO}: {name}"


@both
@pytest.mark.parametrize(("ink", "ground"), PAIRS, ids=[f"{i} on {g}" for i, g in PAIRS])
def test_every_text_can_be_read_wcag_2_2_criterion_1_4_3(colours: Colours, ink: str, ground: str):
    assert contrast(getattr(colours, ink), getattr(colours, ground)) >= TEXT_CONTRAST


@both
@pytest.mark.parametrize("ground", GROUNDS)
def test_every_edge_of_a_control_can_be_seen_wcag_2_2_criterion_1_4_11(
    colours: Colours, ground: str
):
    assert contrast(colours.outline, getattr(colours, ground)) >= GRAPHIC_CONTRAST


@both
def test_the_four_tones_differ_in_lightness_or_in_shape_and_word(colours: Colours):
    tones = {colours.accent, colours.hazard, colours.permit, colours.doubt}

    assert len({round(luminance(tone), 4) for tone in tones}) == 4


def drawn(draw: Callable[[QPainter, QRectF], None], ground: str) -> QImage:
    """What is drawn on a ground, in shades of grey, as somebody sees it who sees no colours."""
    image = QImage(32, 32, QImage.Format.Format_RGB32)
    image.fill(QColor(ground))
    painter = QPainter(image)
    draw(painter, QRectF(4, 4, 24, 24))
    painter.end()
    return image.convertToFormat(QImage.Format.Format_Grayscale8)


def signs(theme: Theme) -> dict[str, dict[str, QImage]]:
    """Every family of signs that are told apart by their shape, on the ground they stand on."""
    faces = {
        "print": Face(ground=CellGround.PRINT),
        "memory": Face(ground=CellGround.MEMORY),
        "practice": Face(ground=CellGround.PRACTICE),
        "several": Face(ground=CellGround.MEMORY, several=True),
        "lacking": Face(ground=CellGround.MEMORY, lacking=True),
    }
    colours = theme.colours
    return {
        "cells of the matrix": {
            name: drawn(lambda p, box, f=face: draw_cell(p, box, f, theme), colours.raised)
            for name, face in faces.items()
        },
        "what to mend": {
            one: drawn(lambda p, box, w=one: draw_weight(p, box, w, theme), colours.surface)
            for one in Weight
        },
        "coverage of a key": {
            one: drawn(lambda p, box, g=one: draw_ground(p, box, g, theme), colours.surface)
            for one in Ground
        },
    }


@pytest.mark.parametrize("scheme", [Scheme.LIGHT, Scheme.DARK])
def test_signs_differ_without_colour_and_stand_out_wcag_2_2_criteria_1_4_1_and_1_4_11(
    theme: Theme, scheme: Scheme
):
    theme.choose(scheme, 100)
    try:
        families = signs(theme)
    finally:
        theme.choose(Scheme.LIGHT, 100)

    for family, images in families.items():
        for (name, one), (other, two) in combinations(images.items(), 2):
            differ = sum(
                abs(one.pixelColor(x, y).red() - two.pixelColor(x, y).red()) > 40
                for x in range(32)
                for y in range(32)
            )
            assert differ > 12, f"{family}: {name} and {other}"
        for name, one in images.items():
            ground = one.pixelColor(0, 0).name()
            most = max(contrast(one.pixelColor(x, y).name(), ground)
                       for x in range(32) for y in range(32))  # fmt: skip
            assert most >= GRAPHIC_CONTRAST or name is Ground.EMPTY, f"{family}: {name}"
