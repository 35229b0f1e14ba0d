"""Drawings as SVG text."""

from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.figures.drawing import Dot, Line, Part, Patch, Words, group, placed
from idkey.figures.geometry import ellipse, moved, straight
from idkey.figures.ink import CONTEXT, HALO, UNKNOWN, skin
from idkey.figures.svg import Sheet, number, path, svg
from tests.figures.outline_reader import outline

SHEET = Sheet(width=100, height=80, title="A <thing> & its title")
SVG = "{http://www.w3.org/2000/svg}"


@given(st.floats(-1000, 1000))
def test_a_number_keeps_two_places_and_no_needless_signs(value: float):
    text = number(value)

    assert float(text) == pytest.approx(value, abs=0.00501)
    assert "e" not in text
    assert text in {"0"} or not text.endswith((".", ".0"))


@given(st.lists(st.builds(complex, st.floats(-500, 500), st.floats(-500, 500)), min_size=3))
def test_a_path_reads_back_as_it_was_drawn(points: list[complex]):
    text = f'<path id="x" d="{path(straight(points))}"/>'

    corners = outline(text, "x")[::24]

    assert corners == pytest.approx(points, abs=0.011)


def test_a_drawing_is_sound_xml_with_its_title_and_groups():
    part = Part(outline=ellipse(50 + 40j, 30), skin=skin(CONTEXT), name="body")
    drawing = svg(SHEET, [group(part, name="animal")])

    root = ElementTree.fromstring(drawing)  # noqa: S314 - our own text

    assert root.find(f"{SVG}title").text == "A <thing> & its title"
    assert [g.get("id") for g in root.iter(f"{SVG}g")] == [None, "animal"]
    assert [p.get("id") for p in root.iter(f"{SVG}path") if p.get("id")] == ["body"]


def test_parts_get_a_halo_below_everything():
    drawing = svg(SHEET, [Part(outline=ellipse(50 + 40j, 30), skin=skin(CONTEXT))])

    assert drawing.index(HALO) < drawing.index(CONTEXT)


def test_an_unknown_colour_is_hatched_and_has_no_light():
    drawing = svg(SHEET, [Part(outline=ellipse(50 + 40j, 30), skin=UNKNOWN)])

    assert UNKNOWN.detail in drawing
    assert UNKNOWN.light not in drawing


def test_a_drawing_elsewhere_keeps_its_weights_and_letters():
    items = group(
        Line(outline=straight((0j, 5 + 0j), closed=False), colour="#111111", weight=2.5),
        Words(text="A", at=1 + 1j, size=9, colour="#222222"),
        Dot(at=2 + 2j, radius=1.5, colour="#333333"),
        Patch(outline=ellipse(5 + 5j, 2), colour="#444444", opacity=0.5),
    )

    drawing = svg(SHEET, [placed(items, moved(10 + 20j))])

    assert 'stroke-width="2.5"' in drawing
    assert 'x="11" y="21" font-family="sans-serif" font-size="9"' in drawing
    assert 'cx="12" cy="22" r="1.5"' in drawing
    assert 'fill-opacity="0.5"' in drawing
    assert "M10 20c" in drawing


def test_an_empty_outline_leaves_no_empty_path():
    speck = Part(outline=ellipse(50 + 40j, 0.4), skin=UNKNOWN)

    assert 'd=""' not in svg(SHEET, [speck])
