"""Colour arithmetic against print, and its laws."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from idkey.engine.colour import (
    WHITE_D65,
    ciede2000,
    hex_of_rgb,
    lab_of_hex,
    lab_of_linear,
    lab_of_rgb,
    linear_of_rgb,
    neutralised,
    rgb_of_hex,
    rgb_of_lab,
    rgb_of_linear,
)

# Sharma, Wu & Dalal 2005, Color Res. Appl. 30(1): 21-30, Table 1: pair, L a b, L a b, dE00.
SHARMA_TABLE_1 = """\
1,50.0000,2.6772,-79.7751,50.0000,0.0000,-82.7485,2.0425
2,50.0000,3.1571,-77.2803,50.0000,0.0000,-82.7485,2.8615
3,50.0000,2.8361,-74.0200,50.0000,0.0000,-82.7485,3.4412
4,50.0000,-1.3802,-84.2814,50.0000,0.0000,-82.7485,1.0000
5,50.0000,-1.1848,-84.8006,50.0000,0.0000,-82.7485,1.0000
6,50.0000,-0.9009,-85.5211,50.0000,0.0000,-82.7485,1.0000
7,50.0000,0.0000,0.0000,50.0000,-1.0000,2.0000,2.3669
8,50.0000,-1.0000,2.0000,50.0000,0.0000,0.0000,2.3669
9,50.0000,2.4900,-0.0010,50.0000,-2.4900,0.0009,7.1792
10,50.0000,2.4900,-0.0010,50.0000,-2.4900,0.0010,7.1792
11,50.0000,2.4900,-0.0010,50.0000,-2.4900,0.0011,7.2195
12,50.0000,2.4900,-0.0010,50.0000,-2.4900,0.0012,7.2195
13,50.0000,-0.0010,2.4900,50.0000,0.0009,-2.4900,4.8045
14,50.0000,-0.0010,2.4900,50.0000,0.0010,-2.4900,4.8045
15,50.0000,-0.0010,2.4900,50.0000,0.0011,-2.4900,4.7461
16,50.0000,2.5000,0.0000,50.0000,0.0000,-2.5000,4.3065
17,50.0000,2.5000,0.0000,73.0000,25.0000,-18.0000,27.1492
18,50.0000,2.5000,0.0000,61.0000,-5.0000,29.0000,22.8977
19,50.0000,2.5000,0.0000,56.0000,-27.0000,-3.0000,31.9030
20,50.0000,2.5000,0.0000,58.0000,24.0000,15.0000,19.4535
21,50.0000,2.5000,0.0000,50.0000,3.1736,0.5854,1.0000
22,50.0000,2.5000,0.0000,50.0000,3.2972,0.0000,1.0000
23,50.0000,2.5000,0.0000,50.0000,1.8634,0.5757,1.0000
24,50.0000,2.5000,0.0000,50.0000,3.2592,0.3350,1.0000
25,60.2574,-34.0099,36.2677,60.4626,-34.1751,39.4387,1.2644
26,63.0109,-31.0961,-5.8663,62.8187,-29.7946,-4.0864,1.2630
27,61.2901,3.7196,-5.3901,61.4292,2.2480,-4.9620,1.8731
28,35.0831,-44.1164,3.7933,35.0232,-40.0716,1.5901,1.8645
29,22.7233,20.0904,-46.6940,23.0331,14.9730,-42.5619,2.0373
30,36.4612,47.8580,18.3852,36.2715,50.5065,21.2231,1.4146
31,90.8027,-2.0831,1.4410,91.1528,-1.6435,0.0447,1.4441
32,90.9257,-0.5406,-0.9208,88.6381,-0.8985,-0.7239,1.5381
33,6.7747,-0.2908,-2.4247,5.8714,-0.0985,-2.2286,0.6377
34,2.0776,0.0795,-1.1350,0.9033,-0.0636,-0.5514,0.9082
"""
PAIRS = tuple(tuple(map(float, row.split(","))) for row in SHARMA_TABLE_1.split())
CHANNEL = st.floats(min_value=0, max_value=1)
RGB = st.tuples(CHANNEL, CHANNEL, CHANNEL)
LAB = st.tuples(st.floats(0, 100), st.floats(-120, 120), st.floats(-120, 120))


@pytest.mark.parametrize(
    "row", PAIRS, ids=[f"Sharma_Wu_Dalal_2005_table_1_pair_{int(row[0])}" for row in PAIRS]
)
def test_ciede2000_agrees_with_the_printed_difference(row: tuple[float, ...]):
    # Pair 14 lies on a 180 degree hue boundary: the last bit of the hue decides between these.
    printed = (4.8045, 4.7461) if row[0] == 14 else (row[7],)

    found = float(ciede2000(row[1:4], row[4:7]))

    assert min(abs(found - value) for value in printed) < 1e-4


def test_one_call_does_all_pairs_at_once():
    table = np.array(PAIRS)

    found = ciede2000(table[:, 1:4], table[:, 4:7])

    others = table[:, 0] != 14
    assert np.abs(found - table[:, 7])[others].max() < 1e-4


@given(LAB, LAB)
def test_a_difference_is_the_same_both_ways_and_nought_to_itself(one, two):
    assert float(ciede2000(one, two)) == pytest.approx(float(ciede2000(two, one)), abs=1e-6)
    assert float(ciede2000(one, one)) == pytest.approx(0, abs=1e-9)


@given(RGB)
def test_rgb_survives_the_way_through_lab(rgb):
    assert rgb_of_lab(lab_of_rgb(rgb)) == pytest.approx(np.array(rgb), abs=1e-7)


@given(st.integers(0, 0xFFFFFF).map(lambda n: f"#{n:06x}"))
def test_hex_survives_the_way_through_numbers(text):
    assert hex_of_rgb(rgb_of_hex(text)) == text


@given(CHANNEL)
def test_a_grey_has_no_chroma(level):
    assert lab_of_rgb((level,) * 3)[1:] == pytest.approx(np.zeros(2), abs=1e-9)


@pytest.mark.parametrize(
    ("text", "lab"),
    [
        # CIE 15:2004: the white point has L* = 100, black 0.
        pytest.param("#ffffff", (100, 0, 0), id="CIE_15_2004_white"),
        pytest.param("#000000", (0, 0, 0), id="CIE_15_2004_black"),
        # Lindbloom B., "RGB/XYZ/Lab calculator", sRGB D65; printed to four places.
        pytest.param("#ff0000", (53.2408, 80.0925, 67.2032), id="sRGB_red"),
        pytest.param("#00ff00", (87.7347, -86.1827, 83.1793), id="sRGB_green"),
        pytest.param("#0000ff", (32.2970, 79.1875, -107.8602), id="sRGB_blue"),
    ],
)
def test_primaries_have_their_known_lab(text, lab):
    assert lab_of_hex(text) == pytest.approx(np.array(lab), abs=2e-3)


@pytest.mark.parametrize("text", ["", "red", "#12345", "#12345g", "123456", "#1234567"])
def test_what_is_no_colour_is_refused_with_the_way_to_write_it(text):
    with pytest.raises(ValueError, match="write it as #rrggbb"):
        rgb_of_hex(text)


@given(st.tuples(*[st.floats(0.05, 1)] * 3), st.floats(0.1, 0.9))
def test_the_reference_itself_becomes_neutral_and_keeps_or_takes_its_lightness(light, share):
    kept = lab_of_linear(neutralised(light, light))
    placed = lab_of_linear(neutralised(light, light, share))

    assert kept[1:] == pytest.approx(np.zeros(2), abs=1e-6)
    assert kept[0] == pytest.approx(lab_of_linear(light)[0], abs=1e-6)
    assert placed == pytest.approx(lab_of_linear((share,) * 3), abs=1e-6)


def test_a_tinted_lamp_is_taken_out_of_a_picture():
    patches = np.array([lab_of_hex(c) for c in ("#1c1b1a", "#6b3a24", "#d9b04c", "#e8e2d2")])
    true = linear_of_rgb(rgb_of_lab(patches))
    lamp = np.array([1.25, 1.0, 0.62])
    grey = np.array([0.18, 0.18, 0.18])

    mended = lab_of_linear(neutralised(true * lamp, grey * lamp, 0.18))

    untouched = ciede2000(lab_of_linear(true * lamp), patches)
    assert ciede2000(mended, patches).max() < 3
    assert ciede2000(mended, patches).max() < untouched.max() / 3


def test_a_black_reference_is_refused():
    with pytest.raises(ValueError, match="choose a lighter one"):
        neutralised((0.2, 0.2, 0.2), (0, 0, 0))


@given(RGB)
def test_light_survives_the_curve(rgb):
    assert rgb_of_linear(linear_of_rgb(rgb)) == pytest.approx(np.array(rgb), abs=1e-6)


def test_the_white_point_is_d65():
    # CIE 15:2004, table T.3: D65, 2 degree observer.
    assert pytest.approx(np.array((0.95047, 1.0, 1.08883)), abs=1e-4) == WHITE_D65
